package def

import (
	"strings"
	"testing"

	"matchmark/packs/source"
)

// TestEveryAmountIsBounded: "hours: 0" and "reads: -1 bar" were taken in silence. Each key of the
// table that takes a number is tried with nothing, with less, and with a slipped unit; what has
// no sense there is told at its place.
func TestEveryAmountIsBounded(t *testing.T) {
	tried, seen := 0, map[*entry]bool{}
	for _, s := range shapes() {
		for _, e := range s.entries() {
			whole := e.form == numberForm || e.form == varyingCountForm
			if seen[e] || !whole && !e.takesAmount() {
				continue
			}
			seen[e], tried = true, tried+1
			first, _, _ := strings.Cut(strings.Trim(e.example, "[]"), ",")
			number := digits.FindString(first)
			unit := strings.TrimPrefix(first, number)
			hot := strings.HasSuffix(unit, "°C")
			for _, x := range []struct {
				value string
				told  bool
			}{
				{first, false}, {number + unit, false},
				{"0" + unit, whole || !hot && e.least == overNone},
				{"0.0" + unit, whole || !hot && e.least == overNone},
				{"-1" + unit, whole || !hot && e.least != anyAmount || e.form == decimalForm},
				{"-0.5" + unit, whole || !hot && e.least != anyAmount || e.form == decimalForm},
				{"1000000000000" + unit, whole || unit != ""},
				{"0.0000000001" + unit, whole || unit != "" && !hot},
				{"NaN", whole || e.form == decimalForm},
				{"some", whole || e.form == decimalForm},
			} {
				r := &reader{}
				r.check(e, source.Text{Value: x.value, At: source.Pos{File: "a.yaml", Line: 3, Col: 7, Width: len(x.value)}})
				if told := len(r.problems) > 0; told != x.told {
					t.Errorf("%s.%s: %s: told %v, want %v: %v", s.title(), e.name, x.value, told, x.told, r.problems)
				}
				for _, p := range r.problems {
					if p.Pos.Line != 3 || p.Pos.Col != 7 || p.Severity != source.Error {
						t.Errorf("%s.%s: %s is told at %v", s.title(), e.name, x.value, p.Pos)
					}
				}
			}
		}
	}
	if tried < 140 {
		t.Errorf("%d keys take a number; the table had more", tried)
	}
}
