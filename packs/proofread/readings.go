package proofread

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
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
			b.checkOneSided(d, dd)
			b.checkSignPasses(d, dd)
			b.checkOtherWay(d, dd)
		}
	}
}

// checkInstrument compares unit, tolerance band and sizes of a reading with what its
// instrument reads.
func (b *proofreader) checkInstrument(d *job.Dim, dd *def.Dimension, at source.Pos) {
	if d.By == nil || !b.checkScale(d, dd) {
		return
	}
	if reads := d.By.Reads; reads != nil {
		for _, l := range d.LeftLimits() {
			if band, ok := l.Band(); ok {
				b.checkSteps(d, dd, at, band, *reads)
			}
		}
	}
	b.checkRange(d, dd)
}

// checkSteps counts the steps of the instrument in the band.
func (b *proofreader) checkSteps(d *job.Dim, dd *def.Dimension, at source.Pos, band, reads units.Quantity) {
	if band.Unit.Dimension() == units.Rise {
		reads.Unit = reads.Unit.RiseUnit() // the step of a thermometer is a difference of two temperatures
	}
	step, err := reads.Convert(band.Unit)
	if err != nil {
		return // another sort of unit, told by checkScale
	}
	if step.Number.Sign() <= 0 {
		return // told where it is written
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
