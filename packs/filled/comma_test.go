package filled

import (
	"slices"
	"testing"

	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// What is helped to for a decimal comma was refused by the next run, for it had no unit.
func TestHelpForACommaHasItsUnit(t *testing.T) {
	b := job.Blank{Box: reading.Box{Unit: units.Newton, Before: 2, After: 1}}
	for typed, want := range map[string]string{"18,0": "18.0 N", "18,0 ": "18.0 N", "18,0 N": "18.0 N"} {
		_, fault := readNumber(b, typed, false)
		if fault == nil || !slices.Contains(fault.help, want) {
			t.Errorf("%q: %+v, want help %q", typed, fault, want)
			continue
		}
		if _, again := readNumber(b, want, false); again != nil {
			t.Errorf("%q is refused: %+v", want, again)
		}
	}
}
