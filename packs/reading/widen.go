package reading

import (
	"math/big"

	"matchmark/packs/units"
)

// A limit told in two units whose bracket allows more than the line before it.
//
// A converted limit is rounded inward, the upper down and the lower up: 11 ± 0.3 mm is
// 0.444/0.422 in, not 0.445/0.421 (note to ASME Y14.5 and IEEE 268, read in a summary).
// What passes a limit by a hundredth of the band is let go; common practice, no source,
// and half of what ISO 370 lets pass. A limit with one end has no band to measure by and is
// not looked at.

// keptOfBand is the share of the band that a bracket may allow more.
var keptOfBand = big.NewRat(1, 100)

// A Widened is a bracket that allows more than the limit before it.
type Widened struct {
	Low, High units.Quantity // of the bracket, in the unit before it
	More      units.Quantity // the most that it allows beyond one end
	Inward    string         // the bracket rounded inward, as it is typed
}

// Widened tells by how much the bracket of a test allows more than the test; ok is false
// where it does not, or is nearer than a hundredth of the band.
func (t *Test) Widened() (w Widened, ok bool) {
	if t.Other == nil || t.Rule != Range && t.Rule != Nominal {
		return Widened{}, false
	}
	low, high, known := t.Limits()
	oLow, oHigh, also := t.Other.Limits()
	if !known || !also || low == nil || high == nil || oLow == nil || oHigh == nil {
		return Widened{}, false
	}
	a, err := oLow.Convert(t.Unit)
	b, err2 := oHigh.Convert(t.Unit)
	if err != nil || err2 != nil {
		return Widened{}, false
	}
	band := high.Number.Sub(low.Number).Rat()
	below, above := low.Number.Sub(a.Number).Rat(), b.Number.Sub(high.Number).Rat()
	more := below
	if above.Cmp(below) > 0 {
		more = above
	}
	if band.Sign() <= 0 || new(big.Rat).Quo(more, band).Cmp(keptOfBand) <= 0 {
		return Widened{}, false
	}
	return Widened{Low: a, High: b, More: quantity(units.Exact(more, 0), t.Unit), Inward: inward(*low, *high, *oLow, *oHigh)}, true
}

// inward is a band in the unit of another, rounded inward to its decimals.
func inward(low, high, likeLow, likeHigh units.Quantity) string {
	from, err := low.Convert(likeLow.Unit)
	to, err2 := high.Convert(likeHigh.Unit)
	if err != nil || err2 != nil {
		return ""
	}
	decimals := max(likeLow.Number.Decimals(), likeHigh.Number.Decimals())
	return from.Round(decimals, units.Up).Number.Text() + " to " + to.Round(decimals, units.Down).Text()
}
