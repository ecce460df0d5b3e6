package fit

import (
	"fmt"
	"strings"
	"testing"
)

func TestDesignationsAsWritten(t *testing.T) {
	for _, c := range []struct{ in, max, min string }{
		{"Ø130 m6", "130.040", "130.015"}, // demo limits, the same in ISO 286-2 tables for m6
		{"130m6", "130.040", "130.015"},
		{"⌀ 130 mm m6", "130.040", "130.015"},
		{"dia. 110 k6", "110.025", "110.003"},
		{"10 js6", "10.0045", "9.9955"},
		{"5 js2", "5.00075", "4.99925"},
		{"30.001 H7", "30.026", "30.001"},
		{"0.5 H7", "0.510", "0.500"},
		{"3150 H7", "3150.210", "3150.000"},
		{"2 K9", "2.000", "1.975"},
		{"600 N9", "599.956", "599.781"},
	} {
		t.Run(c.in, func(t *testing.T) {
			z, err := Parse(c.in)
			if err != nil {
				t.Fatal(err)
			}
			if got := z.Max().Decimal(); got != c.max {
				t.Errorf("upper limit %s mm, want %s", got, c.max)
			}
			if got := z.Min().Decimal(); got != c.min {
				t.Errorf("lower limit %s mm, want %s", got, c.min)
			}
		})
	}
}

func TestWhatIsRefused(t *testing.T) {
	for _, c := range []struct{ in, says string }{
		{"", "no size"},
		{"m6", "no size"},
		{"130", "no letter with a grade"},
		{"130 6", "no letter with a grade"},
		{"130 m", "no letter with a grade"},
		{"130,5 m6", "decimal comma"},
		{"1.5 in H7", "millimetres"},
		{`3/4" H7`, "millimetres"},
		{"1.2.3 H7", "no size in millimetres"},
		{"130.0000001 H7", "six decimals"},
		{"99999999 H7", "no size in millimetres"},
		{"0 H7", "over 0 up to 3150"},
		{"3150.001 H7", "over 0 up to 3150"},
		{"130 m0", "gauges"},
		{"130 m01", "gauges"},
		{"130 m06", "no grade"},
		{"130 m19", "1 to 18"},
		{"130 m6x", "no grade"},
		{"130 i7", "no letter of ISO 286"},
		{"130 O7", "no letter of ISO 286"},
		{"130 abc7", "no letter of ISO 286"},
		{"130 Zc8", "mixes capitals and small letters"},
		{"130 jS7", "mixes capitals and small letters"},
		{"120 H7/r6", "a bore and a shaft"},
		{"11 cd6", "up to 10 mm"},
		{"501 c11", "up to 500 mm"},
		{"500.001 v7", "over 14 up to 500 mm"},
		{"24 t6", "over 24 up to 3150 mm"},
		{"14 V7", "over 14 up to 500 mm"},
		{"18 y7", "over 18 up to 500 mm"},
		{"130 j8", "js8"},
		{"130 J9", "JS9"},
		{"501 j6", "up to 500 mm"},
		{"5 K9", "only for the grades to 8"},
		{"600 K9", "only for the grades to 8"},
		{"50 P2", "grades 1 and 2"},
		{"1 a11", "up to 1 mm"},
		{"1 B11", "up to 1 mm"},
		{"1 N9", "up to 1 mm"},
		{"1 h14", "up to 1 mm"},
	} {
		t.Run(c.in, func(t *testing.T) {
			z, err := Parse(c.in)
			if err == nil {
				t.Fatalf("read as %s %+v, want a refusal that says %q", z, z, c.says)
			}
			if !strings.Contains(err.Error(), c.says) {
				t.Errorf("says %q, want it to say %q", err, c.says)
			}
		})
	}
}

func TestFits(t *testing.T) {
	// Worked limits: ISO 286-2 values for H7, r6, g6, h6, k6 as the tables above prove them.
	for _, c := range []struct {
		in, kind        string
		greatest, least Nanometre // interference, µm
	}{
		{"120 H7/r6", "interference", 76, 19},
		{"Ø150 H7/s6", "interference", 125, 60},
		{"140 H7/g6", "clearance", -14, -79},
		{"150 H7/h6", "clearance", 0, -65},
		{"110 H7/k6", "transition", 25, -32},
	} {
		t.Run(c.in, func(t *testing.T) {
			f, err := ParseFit(c.in)
			if err != nil {
				t.Fatal(err)
			}
			if f.Kind() != c.kind || f.GreatestInterference() != c.greatest*micrometre || f.LeastInterference() != c.least*micrometre {
				t.Errorf("%s: %s, interference %d to %d nm; want %s, %d to %d µm",
					f, f.Kind(), f.LeastInterference(), f.GreatestInterference(), c.kind, c.least, c.greatest)
			}
			if f.LeastClearance() != -f.GreatestInterference() || f.GreatestClearance() != -f.LeastInterference() {
				t.Error("clearance is not interference turned round")
			}
		})
	}
	for in, says := range map[string]string{
		"120 H7":      "only one part",
		"120 r6/H7":   "bore stands first",
		"120 H7/R6":   "bore stands first",
		"120 H7/r6x":  "no grade",
		"120 Hx/r6":   "no letter with a grade",
		"20 H7/t6":    "over 24 up to 3150 mm",
		"120,0 H7/r6": "decimal comma",
	} {
		if _, err := ParseFit(in); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%s: %v, want a refusal that says %q", in, err, says)
		}
	}
}

func ExampleParse() {
	z, err := Parse("Ø130 m6")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(z, "is", z.Min().Decimal(), "to", z.Max().Decimal(), "mm")
	_, err = Parse("20 t6")
	fmt.Println(err)
	// Output:
	// Ø130 m6 is 130.015 to 130.040 mm
	// t6 at 20 mm: ISO 286 defines t only for sizes over 24 up to 3150 mm
}
