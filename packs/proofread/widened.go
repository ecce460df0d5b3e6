package proofread

import (
	"matchmark/packs/job"
	"matchmark/packs/units"
)

// checkWidened tells of limits whose bracket, in the other unit, allows more than the
// line before it: whoever reads it off an instrument in that unit passes a bad part.
func (b *proofreader) checkWidened(d *job.Dim, lines []written) {
	for _, x := range lines {
		for i := range x.limit.Tests {
			w, ok := x.limit.Tests[i].Widened()
			if !ok || !x.text.Written() {
				continue
			}
			digits := func(q units.Quantity, how units.Rounding) string { return q.Round(4, how).Text() }
			b.Problems.Warn(x.text.At, "dual-widens", d.Base+": the bracket is "+digits(w.Low, units.Nearest)+" to "+digits(w.High, units.Nearest)+
				", and allows "+digits(w.More, units.Up)+" more than the limit before it", "rounded inward: ("+w.Inward+")", "if the source prints it like this, use says: and write which one is used")
		}
	}
}
