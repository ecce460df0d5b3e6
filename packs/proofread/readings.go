package proofread

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// Least numbers of instrument steps in a tolerance band: below the first a
// reading tells too little and is refused, below the second it is doubtful.
// The second is the usual rule of ten of gauging: common practice, no source.
const (
	fewSteps  = 4
	fineSteps = 10
)

// checkReadings sees that each limit can be judged with the instrument named, and
// that the limits of one dimension go together.
func (b *proofreader) checkReadings() {
	for _, dd := range b.Def.Dimensions {
		for _, d := range b.Dims[dd.Mark.Value] {
			at := d.LimitPos()
			b.checkInstrument(d, dd, at)
			b.checkLimits(d, dd)
		}
	}
}

// checkInstrument compares the tolerance band and the size with what the
// instrument reads.
func (b *proofreader) checkInstrument(d *job.Dim, dd *def.Dimension, at source.Pos) {
	if d.By == nil || d.Left == nil {
		return
	}
	if reads := d.By.Reads; reads != nil {
		for _, l := range d.LeftLimits() {
			if band, ok := l.Band(); ok {
				b.checkSteps(d, dd, at, band, *reads)
			}
		}
	}
	for _, t := range d.Tests() {
		low, high, _ := t.Limits()
		for _, q := range []*units.Quantity{low, high, t.About()} {
			if q == nil || t.Group == reading.Spread || t.Group == reading.Sum {
				continue
			}
			if outside(*q, d.By.Low, d.By.High) {
				b.Problems.Add(at, "out-of-range", d.Mark+": "+q.Text()+" is outside the range of "+d.By.Name+", "+d.By.Low.Text()+" to "+d.By.High.Text(),
					"name an instrument that reaches it, or put the range right")
				return
			}
		}
	}
}

// checkSteps counts the steps of the instrument in the band.
func (b *proofreader) checkSteps(d *job.Dim, dd *def.Dimension, at source.Pos, band, reads units.Quantity) {
	step, err := reads.Convert(band.Unit)
	if err != nil {
		b.Problems.Add(at, "other-unit", d.Mark+" is in "+band.Unit.Text()+", but "+d.By.Name+" reads in "+reads.Unit.Text(), "name an instrument for "+band.Unit.Text())
		return
	}
	if step.Number.Sign() <= 0 {
		b.Problems.Add(at, "reads", d.By.Name+" reads to "+reads.Text()+", which is no step", "reads: 0.02 mm")
		return
	}
	steps := band.Number.Quo(step.Number)
	message := d.Mark + ": the limits are " + band.Text() + " apart and " + d.By.Name + " reads to " + reads.Text()
	help := []string{"name a finer instrument", "or say why it will do: why-coarse: read by estimate between the marks"}
	switch {
	case dd.WhyCoarse.Written():
	case steps.Cmp(units.Whole(fewSteps)) < 0:
		b.Problems.Add(at, "too-coarse", message+", under 4 steps", help...)
	case steps.Cmp(units.Whole(fineSteps)) < 0:
		b.Problems.Warn(at, "coarse", message+", under 10 steps", help...)
	}
}

// outside reports whether a size lies outside a range; one in another sort of
// unit does not compare.
func outside(q units.Quantity, low, high *units.Quantity) bool {
	if low == nil || high == nil {
		return false
	}
	// A dial or feeler reads differences, signs left out.
	q.Number = q.Number.Abs()
	below, err := q.Cmp(*low)
	if err != nil {
		return false
	}
	above, _ := q.Cmp(*high)
	return below < 0 && low.Number.Sign() > 0 && q.Number.Sign() != 0 || above > 0
}
