package packs

import (
	"matchmark/packs/job"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/source"
)

// fireWatch reads how long the fire watch stays, where it is not as on the site.
func (r *heatReader) fireWatch() {
	r.heat.FireWatch = r.b.job.Site.FireWatch
	if t := r.def.FireWatch; t.Written() {
		if q, ok := r.b.quantity(t, usualFireWatch); ok {
			r.b.readFireWatch(t, q, &r.heat.FireWatch)
		}
	}
}

// words sees that no text of a heat asks for asbestos.
func (r *heatReader) words() {
	d := r.def
	all := []source.Text{d.Note, d.NothingNear, d.Pull.Shield, d.Pull.IfStuck, d.Pull.Puller}
	for _, n := range d.Neighbours {
		all = append(all, n.What, n.KeptCool)
	}
	for _, t := range all {
		if strings.Contains(strings.ToLower(t.Value), "asbestos") {
			r.b.problems.Add(t.At, "asbestos", r.heat.Mark+": asbestos is never used as a shield or a cloth",
				"use aluminium or steel sheet, mineral wool, calcium silicate board or a vermiculite cloth",
				"old cloth of unknown make counts as asbestos until it is tested")
		}
	}
}

// resolveHeats ties a step to the heats that it names, and tells whether the part
// is drawn off there or put on.
func (b *builder) resolveHeats(st *job.Step, ds *def.Step) {
	for _, t := range ds.Heat {
		for _, h := range b.heatsAt(t, st.Place) {
			switch off, on := h.MovedBy(st); {
			case off:
				b.heatAt(t, h, st, &h.PulledAt, "drawn off")
			case on:
				b.heatAt(t, h, st, &h.PutOnAt, "put on")
			default:
				b.problems.Add(t.At, "heat-which", h.Mark+" can be drawn off and put on, and this step does neither with "+h.PartName(),
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
