package packs

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// readStamped takes over where a number stands on a part, and what one of it is.
func (b *builder) readStamped(d *job.Dim, dd *def.Dimension) {
	d.Stamped = b.faceAt(dd.StampedOn, d.Place)
	if !dd.OneIs.Written() {
		return
	}
	if d.Stamped.Part == nil {
		b.problems.Add(dd.OneIs.At, "one-of-what", d.Mark+" says what one is, but not where the number stands", "stamped-on: {wheel: rim}")
		return
	}
	if q, ok := b.quantity(dd.OneIs, "0.01 mm"); ok {
		if q.Number.Sign() <= 0 {
			b.problems.Add(dd.OneIs.At, "one-of-what", "one is "+q.Text()+": a step is more than nothing", "one-is: 0.01 mm")
			return
		}
		d.OneIs = &q
		d.Number = reading.Box{Before: stampedFigures, Signed: true}
		most := q.Number.Mul(units.Whole(999))
		d.Box = reading.Box{Before: most.Figures(), After: q.Number.Decimals(), Signed: true, Unit: q.Unit}
	}
}

// stampedFigures is how many figures a number stamped on a part may have: common
// practice, no source.
const stampedFigures = 3

// oldNumber sees that the number stamped on a part that is renewed is read off the
// new one before it is used.
func (b *builder) oldNumber(d *job.Dim) {
	p := d.Stamped.Part
	if p == nil || d.FoundAt == nil {
		return
	}
	for _, m := range p.Back {
		if m.New && d.FoundAt.Index < m.Step.Index && (d.LeftAt == nil || d.LeftAt.Index < m.Step.Index) {
			b.problems = append(b.problems, source.Problem{
				Pos: b.measuredPos(d), Severity: source.Error, Code: "old-number",
				Message: d.Mark + " is read off the old " + p.Name + " at " + d.FoundAt.Name() + ", and a new one goes on at " + m.Step.Name(),
				Help:    []string{"read the number of the new one: set: [" + d.Base + "] at the step that fits it"},
				See:     []source.Also{{Pos: m.At, What: "the new one goes on here"}},
			})
		}
	}
}
