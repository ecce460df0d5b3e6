package job

import (
	"maps"
	"slices"
	"strings"
	"testing"
)

// The readings by which an engineer releases a hold stood on no sheet of critical dimensions.
func TestDeciding(t *testing.T) {
	for what, want := range map[string]string{
		"Engineer has seen the readings D4 to D6 of both ends, D2 and D8": "D2 D4 D5 D6 D8",
		"Ingenieur hat D10 bis D12 gesehen":                               "D10 D11 D12",
		"Coupling locked":                                                 "",
		"D6 to D4 is none":                                                "",
		// A mark of more digits than a number holds was counted up to without end.
		"Readings D99999999999999999999 seen":       "",
		"Readings D4 to D99999999999999999999 seen": "D4",
	} {
		j := &Job{Holds: []*Hold{{What: what}}}
		if got := strings.Join(slices.Sorted(maps.Keys(j.Deciding())), " "); got != want {
			t.Errorf("%q: %q, want %q", what, got, want)
		}
	}
}
