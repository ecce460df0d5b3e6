package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// readStamped takes over where a number stands on a part, and what one of it is.
func (b *builder) readStamped(d *job.Dim, dd *def.Dimension) {
	d.Stamped = b.FaceAt(dd.StampedOn, d.Place)
	if !dd.OneIs.Written() {
		return
	}
	if d.Stamped.Part == nil {
		b.Problems.Add(dd.OneIs.At, "one-of-what", d.Mark+" says what one is, but not where the number stands", "for example stamped-on: {wheel: rim}")
		return
	}
	if q, ok := b.Quantity(dd.OneIs, "… mm"); ok {
		if q.Number.Sign() <= 0 {
			b.Problems.Add(dd.OneIs.At, "one-of-what", "one is "+q.Text()+": a step is more than nothing", "for example one-is: … mm")
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
