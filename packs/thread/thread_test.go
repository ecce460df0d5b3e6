package thread

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestDesignationsAsWritten(t *testing.T) {
	for _, c := range []struct {
		in, out    string
		lead       Mm
		left, list bool
	}{
		{"M24", "M24", 3, false, true},
		{"M24x3", "M24", 3, false, true},
		{"M90x2", "M90x2", 2, false, true},
		{"M 90 × 2 left-hand", "M90x2 LH", 2, true, true},
		{"M135x3-6H LH", "M135x3-6H LH", 3, true, true},
		{"M90x2LH", "M90x2 LH", 2, true, true},
		{"M6-5g6g", "M6-5g6g", 1, false, true},
		{"M30x2 RH", "M30x2", 2, false, true},
		{"M12X1.75", "M12", 1.75, false, true},
		{"M100x1.5", "M100x1.5", 1.5, false, false}, // permitted by ISO 261 to 150 mm, not in its table
		{"M16xPh3P1.5", "M16xPh3P1.5", 3, false, true},
		{"M16xPh4P2", "M16xPh4P2", 4, false, true},
		{"Tr 40x7", "Tr 40x7", 7, false, true},
		{"Tr40x14 (P7) LH", "Tr 40x14 (P7) LH", 14, true, true},
		{"TR 40x14P7", "Tr 40x14 (P7)", 14, false, true},
		{"Tr 220x4", "Tr 220x4", 4, false, true},
		{"3/4-10 UNC", "3/4-10 UNC", 2.54, false, true},
		{"3/4-10 UNC-2A LH", "3/4-10 UNC-2A LH", 2.54, true, true},
		{`3/4"-16`, "3/4-16 UNF", 25.4 / 16, false, true},
		{"0.75-16 UNRF", "3/4-16 UNF", 25.4 / 16, false, true},
		{"3/4-16 UN", "3/4-16 UNF", 25.4 / 16, false, true},
		{"1 1/8 - 7", "1-1/8-7 UNC", 25.4 / 7, false, true},
		{"1-1/8-8 8UN", "1-1/8-8 UN", 25.4 / 8, false, true},
		{"1-8", "1-8 UNC", 25.4 / 8, false, true},
		{"2-56", "#2-56 UNC", 25.4 / 56, false, true},
		{"2-4-1/2", "2-4.5 UNC", 25.4 / 4.5, false, true},
		{"2-4 1/2 UNC", "2-4.5 UNC", 25.4 / 4.5, false, true},
		{"No. 10-32", "#10-32 UNF", 25.4 / 32, false, true},
		{"#10-24 UNC", "#10-24 UNC", 25.4 / 24, false, true},
		{"#10-28 UNS", "#10-28 UNS", 25.4 / 28, false, false},
		{"1-14 UNS", "1-14 UNS", 25.4 / 14, false, false},
		{"1-5/8-12 UN", "1-5/8-12 UN", 25.4 / 12, false, false},
		{"1.563-18 NS", "1.563-18 UNS", 25.4 / 18, false, false},
	} {
		t.Run(c.in, func(t *testing.T) {
			th := parse(t, c.in)
			if th.String() != c.out || math.Abs(float64(th.Lead()-c.lead)) > 1e-9 || th.LeftHand != c.left || th.Listed != c.list {
				t.Errorf("read as %s, lead %g mm, left %v, listed %v; want %s, %g, %v, %v",
					th, th.Lead(), th.LeftHand, th.Listed, c.out, c.lead, c.left, c.list)
			}
			back := parse(t, th.String())
			if back.String() != th.String() || back.Lead() != th.Lead() {
				t.Errorf("%s is read back as %s", th, back)
			}
		})
	}
}

func TestWhatIsRefused(t *testing.T) {
	for _, c := range []struct{ in, says string }{
		{"", "no thread known here"},
		{"bolt", "no thread known here"},
		{"m24", "capital"},
		{"M12x1,75", "decimal comma"},
		{"M12-1.75", "an x and the pitch"},
		{"M12x", "an x and the pitch"},
		{"M90", "no coarse pitch"},
		{"M90", "6, 4, 3 and 2 mm"},
		{"M90x5", "6, 4, 3 and 2 mm"},
		{"M90x1", "no pitch 1 mm"},
		{"M24x2.5", "known are 3, 2, 1.5 and 1 mm"},
		{"M24x0", "no pitch 0 mm"},
		{"M13", "M12 and M14"},
		{"M0.9", "M1 and larger"},
		{"M310x6", "M300 and smaller"},
		{"M16xPh4P1.5", "no whole number"},
		{"M16xPh3P0", "no whole number"},
		{"M250x1.5", "no pitch 1.5 mm"},
		{"Tr 40x14", "2 starts of 7 mm write Tr 40x14 (P7)"},
		{"Tr 40x15 (P7)", "no whole number"},
		{"Tr 40x14 (P5)", "no pitch 5 mm"},
		{"Tr 41x7", "no Tr 41"},
		{"tr 40x7", "capital"},
		{"3/4-11", "3/4-10 UNC and 3/4-16 UNF"},
		{"3/4-16 UNC", "3/4-10 UNC and 3/4-16 UNF"},
		{"1-1/8-8 UNC", "1-1/8-8 UN"},
		{"3/4", "no thread known here"},
		{"3/4-0", "over 0"},
		{"13/15-10", "no size 13/15"},
		{"3/4-10 BSW", "pipe and Whitworth"},
		{"3/4-10 UNX", "no series known here"},
		{"1-1/8-7 UN-UN", "no series known here"},
		{"G 1/2", "pipe and Whitworth"},
		{"1/2-14 NPT", "pipe and Whitworth"},
		{"10-28 UNS", "number 10 or 10 in"},
		{"1-13 UN", "any other is UNS"},
		{"5/4-12 UNS", "no thread"},
		{"1/4-90 UNS", "no thread"},
		{"1/4-8 UNS", "no thread"},
		{"90-8 UNS", "no thread"},
	} {
		t.Run(c.in, func(t *testing.T) {
			th, err := Parse(c.in)
			if err == nil {
				t.Fatalf("read as %s, want a refusal that says %q", th, c.says)
			}
			if !strings.Contains(err.Error(), c.says) {
				t.Errorf("says %q, want it to say %q", err, c.says)
			}
		})
	}
	if _, err := parse(t, "Tr 40x7").StressArea(); err == nil {
		t.Error("a trapezoidal thread is given a stress area")
	}
	for _, flats := range []int{0, 1, 73} {
		if _, err := parse(t, "M24").PerFlat(flats); err == nil {
			t.Errorf("a nut with %d flats is accepted", flats)
		}
	}
}

// TestTravelLaws draws threads: turns and travel undo each other, six flats are one
// turn, and the diameters nest.
func TestTravelLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		row := rapid.SampledFrom(metricTable).Draw(t, "row")
		th, err := Parse(fmt.Sprintf("M%sx%s", short(row.diameter), short(rapid.SampledFrom(row.fine).Draw(t, "pitch"))))
		if err != nil {
			t.Fatal(err)
		}
		travel := Mm(rapid.Float64Range(-50, 50).Draw(t, "travel"))
		if back := th.Travel(th.Turns(travel)); math.Abs(float64(back-travel)) > 1e-9 {
			t.Fatalf("%s: %g mm is %g turns is %g mm", th, travel, th.Turns(travel), back)
		}
		flat, err := th.PerFlat(6)
		if err != nil || math.Abs(float64(6*flat-th.Lead())) > 1e-9 {
			t.Fatalf("%s: six flats of %g mm against a lead of %g, %v", th, flat, th.Lead(), err)
		}
		a, err := th.StressArea()
		if err != nil {
			t.Fatal(err)
		}
		if !(th.MinorDiameter() < a.Diameter && a.Diameter < th.PitchDiameter() && th.PitchDiameter() < th.Diameter) {
			t.Fatalf("%s: minor %g, stress %g, pitch %g, nominal %g mm do not nest", th, th.MinorDiameter(), a.Diameter, th.PitchDiameter(), th.Diameter)
		}
	})
}

func ExampleParse() {
	nut, err := Parse("M90x2 LH")
	if err != nil {
		fmt.Println(err)
		return
	}
	flat, err := nut.PerFlat(6)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s: one flat = %.2f mm, 0.50 mm = %.2f turn\n", nut, flat, nut.Turns(0.5))
	_, err = Parse("M90x5")
	fmt.Println(err)
	// Output:
	// M90x2 LH: one flat = 0.33 mm, 0.50 mm = 0.25 turn
	// "M90x5": ISO 261 has no pitch 5 mm for M90; known are 6, 4, 3 and 2 mm
}
