package reading

import (
	"strings"
	"testing"

	"matchmark/packs/units"
)

// The counts of digits for 420.70 and 0.05 are those of the shop-form rule that a
// box has as many cells as the number has characters; how far a box reaches beyond
// its limits is common practice, no source.
func TestBoxFor(t *testing.T) {
	for _, c := range []struct {
		limits string // parted by ;
		hint   string // nominal ; high ; reads
		want   Box
		fault  string
	}{
		{"420.65 to 420.75 mm", "", Box{Before: 3, After: 2, Unit: units.Millimetre}, ""},
		{"at most 0.05 mm", "", Box{Before: 1, After: 2, Unit: units.Millimetre}, ""},
		{"0.05 to 0.12 mm", "", Box{Before: 1, After: 2, Unit: units.Millimetre}, ""},
		{"9.95 to 9.98 mm", "", Box{Before: 2, After: 2, Unit: units.Millimetre}, ""}, // a reading that is out needs the second digit
		{"at least 59.5 mm", "", Box{Before: 3, After: 1, Unit: units.Millimetre}, ""},
		{"at least 4.0 mm", "", Box{Before: 1, After: 1, Unit: units.Millimetre}, ""},
		{"-0.04 to +0.04 mm", "", Box{Before: 1, After: 2, Signed: true, Unit: units.Millimetre}, ""},
		{"0.00 +/- 0.05 mm", "", Box{Before: 1, After: 2, Signed: true, Unit: units.Millimetre}, ""},
		{"8.0 +0.5/-0 mm", "", Box{Before: 1, After: 1, Unit: units.Millimetre}, ""},
		{"3/16 +/- 1/32 in", "", Box{Form: Fraction, Before: 1, Unit: units.Inch, Denominator: 32}, ""},
		{"20 to 60 °C and spread at most 10 C rise", "", Box{Before: 3, Unit: units.Celsius}, ""},
		{"exactly 8 pcs", "", Box{Before: 2, Unit: units.Pieces}, ""},
		{"as found +/- 0.10 mm", "", Box{}, "nothing tells how many digits"},
		{"as found +/- 0.10 mm", "2.4 mm", Box{Before: 1, After: 2, Unit: units.Millimetre}, ""},
		{"as found +/- 0.10 mm", "; 150 mm ; 0.02 mm", Box{Before: 3, After: 2, Unit: units.Millimetre}, ""},
		{"as found +/- 0.10 mm", "; 6 in ; 0.001 in", Box{Before: 3, After: 2, Unit: units.Millimetre}, ""},
		{"record to 0.01 mm", "; 100 mm", Box{Before: 3, After: 2, Unit: units.Millimetre}, ""},
		{"record to 0.01 mm ; 0.30 to 0.60 mm", "", Box{Before: 1, After: 2, Unit: units.Millimetre}, ""},
		{"record", "; 150 mm ; 0.02 mm", Box{Before: 3, After: 2, Unit: units.Millimetre}, ""},
		{"record", "25.00 mm", Box{Before: 2, After: 2, Unit: units.Millimetre}, ""},
		{"record", "", Box{}, "tells the unit"},
		{"about D2", "25.0 mm", Box{Before: 2, After: 1, Unit: units.Millimetre}, ""},
		{"at most 25 % of D6", "1 mm ; ; 0.01 mm", Box{Before: 1, After: 2, Unit: units.Millimetre}, ""},
		{"D1 - D2 +/- 0.03 mm", "-0.5 mm", Box{Before: 1, After: 2, Signed: true, Unit: units.Millimetre}, ""},
		{"0.05 to 0.12 mm ; at most 0.200 mm", "", Box{Before: 1, After: 3, Unit: units.Millimetre}, ""},
		{"0.05 to 0.12 mm ; at most 0.008 in", "", Box{}, "one limit is in mm and another in in"},
		{"0.05 to 0.12 mm ; must be free", "", Box{}, "one limit asks for a number and another for a tick"},
		{"0.05 to 0.12 mm", "5 N", Box{}, "is a force, not a length"},
		{"none", "", Box{Form: Ticks}, ""},
		{"sketch", "", Box{Form: Grid}, ""},
		{"words", "", Box{Form: Line}, ""},
		{"choose A or B ; as found", "", Box{Form: Ticks}, ""},
	} {
		var limits []*Limit
		for _, s := range strings.Split(c.limits, " ; ") {
			limits = append(limits, limit(t, s))
		}
		var h Hint
		for i, s := range strings.Split(c.hint, ";") {
			if s = strings.TrimSpace(s); s != "" {
				q := size(t, s)
				*[]**units.Quantity{&h.Nominal, &h.High, &h.Reads}[i] = &q
			}
		}
		got, err := BoxFor(append(limits, nil), h)
		if c.fault != "" {
			if err == nil || !strings.Contains(err.Error(), c.fault) {
				t.Errorf("%q, hint %q: %+v, %v; want the error %q", c.limits, c.hint, got, err, c.fault)
			}
			continue
		}
		if err != nil || got != c.want {
			t.Errorf("%q, hint %q: %+v, %v; want %+v", c.limits, c.hint, got, err, c.want)
		}
	}
}

func TestBand(t *testing.T) {
	for typed, want := range map[string]string{
		"0.05 to 0.12 mm": "0.07 mm", "80.00 +0.02/-0.00 mm": "0.02 mm", "as found +/- 0.10 mm": "0.20 mm", "80 +/- 5 °C": "10 C rise",
		"mean 1.10 to 1.40 mm and spread at most 0.10 mm": "0.10 mm", "45.000 -0.025/-0.050 mm": "0.025 mm", "3/16 +/- 1/32 in": "1/16 in",
		"at most 0.15 mm": "", "at least 4.0 mm": "", "D1 to D2": "", "record": "",
	} {
		got, ok := limit(t, typed).Band()
		if ok != (want != "") || ok && got.Text() != want {
			t.Errorf("%q: band %s, %v; want %q", typed, got.Text(), ok, want)
		}
	}
}

func TestAnswers(t *testing.T) {
	for typed, want := range map[string]string{
		"none": "none some", "must be free": "yes no", "yes or no": "yes no", "choose A or size B": "A size B", "tick": "yes", "0.05 to 0.12 mm": "",
	} {
		var got []string
		for _, a := range limit(t, typed).Answers() {
			got = append(got, a.Phrase+a.Word.English())
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%q: answers %q, want %q", typed, got, want)
		}
	}
}
