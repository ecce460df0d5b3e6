package reading

import (
	"strings"
	"testing"
)

// A unit that is not known is never answered with one that differs in its prefix or is of another
// kind: 2 MV is no 2 mV, and 12 ms no 12 mm. The prefixes are those of the SI.
func TestNoUnitIsOfferedAThousandTimesOff(t *testing.T) {
	t.Parallel()
	for typed, never := range map[string]string{"2 MV": "mV", "3 kHz": "3 Hz", "5 GPa": "5 MPa", "12 ms": "12 mm", "12 mg": "12 mm", "3 pF": "°F", "500 V DC": "°C"} {
		_, faults := Parse("at most " + typed)
		if faults == nil {
			t.Errorf("%s is read", typed)
			continue
		}
		for _, h := range faults.Help {
			if !strings.HasPrefix(h, "one of: ") && strings.Contains(h, never) {
				t.Errorf("%s: helped with %q", typed, h)
			}
		}
	}
}
