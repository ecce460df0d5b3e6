package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// readings sees that every dimension is measured before it is destroyed, and set
// when all that it hangs on is back and tight.
func (r *report) readings() {
	for _, d := range r.job.Dims {
		hangs := walk.HangsOn(d)
		r.measured(d, hangs)
		r.set(d, hangs)
	}
}

// measured sees that a dimension is measured before the act that destroys it.
func (r *report) measured(d *job.Dim, hangs []*job.Part) {
	e, lost := r.walk.Measured(d), r.walk.Losses(d)
	if e == nil || len(lost) == 0 || e.Index < lost[0].Index {
		return
	}
	first := lost[0]
	help := []string{"measure it at or before " + first.Step.No}
	if first.Step == e.Step {
		help = []string{"write measure: above it: a step is done in the order in which it is written"}
	}
	if d.Of.Part != nil && slices.Contains(hangs, d.Of.Part) {
		help = append(help, "or, if it is read with the part off: lost-by: nothing")
	}
	r.problems.AddWith(e.At, "too-late", d.Mark+" is measured at "+e.Step.Name()+", after "+first.Step.Name()+" has parted its faces", first.At, first.How, help...)
}

// set sees that a dimension is set when all pieces that it lies between are back and
// tight. What comes off later still is in its place then, as a casing that is
// jacked up level before it is lifted; so is what is on for now, as a hub that is
// tried cold before it is heated. On the bench only what belongs to the assembly
// there counts.
func (r *report) set(d *job.Dim, hangs []*job.Part) {
	e := r.walk.Set(d)
	if e == nil {
		return
	}
	if e.Step.Bench {
		hangs = slices.DeleteFunc(slices.Clone(hangs), func(p *job.Part) bool { return p.Of == nil })
	}
	for _, p := range hangs {
		if now, _ := r.walk.Now(p, e); now > 0 {
			continue
		}
		for _, m := range p.Back {
			off, back := r.walk.Moved(m.Undo), r.walk.Moved(m)
			if back != nil && back.Index > e.Index && (off == nil || off.Index < e.Index) {
				r.problems.AddWith(e.At, "too-early", d.Mark+" is set at "+e.Step.Name()+", before "+p.Name+" is back at "+m.Step.Name(), m.At, "put back here",
					"set it at or after "+m.Step.No)
			}
		}
	}
	for _, x := range r.walk.Events[e.Index:] {
		if x.Verb == job.DoTighten && overlap(x.Grip.Parts(), hangs) {
			r.problems.AddWith(e.At, "too-early", d.Mark+" is set at "+e.Step.Name()+", before "+x.Grip.Mark()+" is tight at "+x.Step.Name(), x.At, "tightened here",
				"set it at or after "+x.Step.No)
		}
	}
}

func overlap(a, b []*job.Part) bool {
	return slices.ContainsFunc(a, func(p *job.Part) bool { return slices.Contains(b, p) })
}
