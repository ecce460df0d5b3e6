package dimension

import (
	"strings"
	"testing"
)

// The number on a pinion is only recorded, as found and as left: "to be left record" was
// printed beside it.
func TestWhatIsOnlyRecordedTwiceIsNotLeftRecord(t *testing.T) {
	t.Parallel()
	jb, c := starter("bevel-gearbox.yaml", 184)
	recorded := 0
	for _, d := range jb.Dims {
		p := limitOf(c, d, false, true)
		for _, line := range p.leftOn(c, d) {
			if strings.Contains(line, "to be left record") {
				t.Errorf("%s: %q", d.Mark, line)
			}
			if strings.Contains(line, "record as left too") {
				recorded++
			}
		}
	}
	if recorded != 1 {
		t.Errorf("%d readings are told as recorded twice; want that of D9 alone", recorded)
	}
}
