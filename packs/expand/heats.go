package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// resolveHeats ties a step to the heats that it names, and tells whether the part
// is drawn off there or put on.
func (b *builder) resolveHeats(st *job.Step, ds *def.Step) {
	for _, t := range ds.Heat {
		for _, h := range b.HeatsAt(t, st.Place) {
			switch off, on := h.MovedBy(st); {
			case off:
				b.heatAt(t, h, st, &h.PulledAt, "drawn off")
			case on:
				b.heatAt(t, h, st, &h.PutOnAt, "put on")
			default:
				b.Problems.Add(t.At, "heat-which", h.Mark+" can be drawn off and put on, and this step does neither with "+h.PartName(),
					"remove: or fit: the part here", "or name "+h.Base+" at the step that does")
			}
		}
	}
}

// heatAt gives a heat to a step, one for each direction.
func (b *builder) heatAt(t source.Text, h *job.Heat, st *job.Step, by **job.Step, what string) {
	if claimed(b, t, by, st, h.Mark+" is "+what) {
		st.Heats = append(st.Heats, h)
	}
}
