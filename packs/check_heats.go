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

// heatAgain lets a put-back row put on hot what its step drew off hot, with the
// permits of that step, unless another step does.
func heatAgain(st, row *job.Step) {
	for _, h := range st.Heats {
		if _, on := h.MovedBy(row); !on || h.PutOn == nil || h.PutOnAt != nil {
			continue
		}
		h.PutOnAt = row
		row.Heats = append(row.Heats, h)
		for _, p := range st.Permits {
			p.Steps = append(p.Steps, row)
			row.Permits = append(row.Permits, p)
		}
	}
}

// checkHeats sees that every heat is done by a step, that what is drawn off hot
// goes back hot, and that the joint is measured while it is apart.
func (b *builder) checkHeats() {
	for _, h := range b.job.Heats {
		if h.Pull != nil && h.PulledAt == nil {
			b.problems.Add(h.At, "never-heated", h.Mark+" is drawn off at no step", "heat: ["+h.Base+"] at the step that removes "+h.PartName())
		}
		if h.PutOn != nil && h.PutOnAt == nil {
			b.problems.Add(h.At, "never-heated", h.Mark+" is put on at no step", "heat: ["+h.Base+"] at the step that fits "+h.PartName())
		}
		b.checkWayBack(h)
		b.checkRead(h)
	}
}

// checkWayBack sees that a part which came off hot does not go back cold.
func (b *builder) checkWayBack(h *job.Heat) {
	if h.Hub == nil || h.PulledAt == nil || h.PutOn != nil {
		return
	}
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			for _, m := range st.Fit {
				if m.Part == h.Hub {
					b.problems = append(b.problems, source.Problem{
						Pos: h.At, Severity: source.Error, Code: "back-cold",
						Message: h.Hub.Name + " is drawn off hot and goes back at " + st.Name() + ", and " + h.Mark + " does not say how hot",
						Help:    []string{"put-on: {by: oven, clearance: 0.10 mm}"},
						See:     []source.Also{{Pos: m.At, What: "goes back here"}},
					})
				}
			}
		}
	}
}

// checkRead sees that bore and seat are read while the joint is apart.
func (b *builder) checkRead(h *job.Heat) {
	for _, d := range []*job.Dim{h.Fit.Bore, h.Fit.Seat} {
		if d == nil || d.FoundAt == nil {
			continue
		}
		early := h.PulledAt != nil && d.FoundAt.Index <= h.PulledAt.Index
		late := h.PutOnAt != nil && d.FoundAt.Index >= h.PutOnAt.Index
		if early || late {
			b.problems.Add(b.measuredPos(d), "read-together", d.Mark+" is read at "+d.FoundAt.Name()+", while "+h.PartName()+" sits on its seat",
				"measure it after the part is drawn off and before it is put on")
		}
	}
}
