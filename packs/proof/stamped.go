package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkStamped sees that no number stamped on a part that goes is taken for that of
// the one that stays.
func (r *report) checkStamped() {
	for _, d := range r.job.Dims {
		r.oldNumber(d)
	}
}

// oldNumber sees that the number stamped on a part that is renewed is read off the
// new one before it is used.
func (r *report) oldNumber(d *job.Dim) {
	p := d.Stamped.Part
	if p == nil || d.FoundAt == nil {
		return
	}
	for _, m := range p.Back {
		if m.New && d.FoundAt.Index < m.Step.Index && (d.LeftAt == nil || d.LeftAt.Index < m.Step.Index) {
			r.problems = append(r.problems, source.Problem{
				Pos: d.FoundPos(), Severity: source.Error, Code: "old-number",
				Message: d.Mark + " is read off the old " + p.Name + " at " + d.FoundAt.Name() + ", and a new one goes on at " + m.Step.Name(),
				Help:    []string{"read the number of the new one: set: [" + d.Base + "] at the step that fits it"},
				See:     []source.Also{{Pos: m.At, What: "the new one goes on here"}},
			})
		}
	}
}

// stamped binds the step that reads a number to those that move the part it is
// stamped on.
func (b *binder) stamped() {
	for _, d := range b.job.Dims {
		for _, st := range []*job.Step{d.FoundAt, d.LeftAt} {
			if st != nil {
				b.stands(d.Stamped.Part, st)
			}
		}
	}
}
