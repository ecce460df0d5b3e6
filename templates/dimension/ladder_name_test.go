package dimension

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
)

// A sum in one line had no name at its result where the reading that it takes stood before it: the
// boxes below that add to the target said it of a figure that was called so nowhere. In any width the
// result of each sum carries its name.
func TestTheResultOfASumHasItsName(t *testing.T) {
	t.Parallel()
	const name = "target"
	tested, oneLine := 0, 0
	for _, file := range []string{"bevel-gearbox.yaml", "storm-pump.yaml", "triplex-pump.yaml", "exhaust-fan.yaml"} {
		jb, c := starter(file, 180)
		for _, d := range jb.Dims {
			for _, work := range []job.Working{d.FoundWork, d.LeftWork} {
				for _, l := range work.Limits {
					if l.At == nil {
						continue
					}
					if len(l.At.Rungs) == 1 {
						oneLine++
					}
					for _, width := range []layout.Mm{80, 120, 174} {
						if text := textOf([]layout.Block{rungs(c, d, l.At, ladderEnd{name: name}, width)}); strings.Count(" "+text+" ", " "+name+" ") != 1 {
							t.Errorf("%s %s in %.0f mm: the result is not called the target once: %s", file, d.Mark, width, text)
						}
					}
					tested++
				}
			}
		}
	}
	if tested == 0 || oneLine == 0 {
		t.Errorf("%d sums, %d of them in one line", tested, oneLine)
	}
}
