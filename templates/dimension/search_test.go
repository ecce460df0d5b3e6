package dimension

import (
	"testing"

	"pgregory.net/rapid"

	"matchmark/layout"
)

// A block was taken for a width by 0.01 mm of slack and told as too wide by 0.001 mm when it was
// placed: what is taken is placed without a misfit, and what is not would be one.
func TestWhatIsTakenFitsWhenItIsPlaced(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		full := layout.Mm(rapid.Float64Range(20, 280).Draw(t, "full"))
		b := layout.Block{W: full + layout.Mm(rapid.Float64Range(-0.02, 0.02).Draw(t, "more")), H: 10}
		s := search{full: full, least: sized{empty: true}}
		s.try(done(b))
		if taken, over := !s.least.empty, len(b.Fill(full, 10, 0, 0).Misfits()); taken == (over > 0) {
			t.Fatalf("%v in %v is taken %t, with %d misfits", b.W, full, taken, over)
		}
	})
}
