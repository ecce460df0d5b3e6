package thread

import (
	"fmt"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// outside reads the rows of one kind from the file of outside values, each cut at
// its bars, without the kind.
func outside(t *testing.T, kind string) [][]string {
	t.Helper()
	data, err := os.ReadFile("../../testdata/outside/thread.txt")
	if err != nil {
		t.Fatal(err)
	}
	var rows [][]string
	for _, l := range strings.Split(string(data), "\n") {
		if f := strings.Split(l, " | "); f[0] == kind {
			rows = append(rows, f[1:])
		}
	}
	if len(rows) == 0 {
		t.Fatalf("no rows of kind %s", kind)
	}
	return rows
}

func num(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

func parse(t *testing.T, s string) Thread {
	t.Helper()
	th, err := Parse(s)
	if err != nil {
		t.Fatal(err)
	}
	return th
}

func area(t *testing.T, th Thread) float64 {
	t.Helper()
	a, err := th.StressArea()
	if err != nil {
		t.Fatal(err)
	}
	return float64(a.Area)
}

func TestAgainstOutsideValues(t *testing.T) {
	for _, r := range outside(t, "check") {
		id, what, in, want, unit, tol := r[0], r[1], r[2], r[3], r[4], r[5]
		name, _, _ := strings.Cut(in, ":")
		var got []float64
		switch {
		case strings.HasPrefix(what, "Tensile stress area, coarse"):
			got = []float64{area(t, parse(t, name))}
		case strings.HasPrefix(what, "Tensile stress area, unified"):
			got = []float64{area(t, parse(t, name)) / 25.4 / 25.4}
		case what == "Travel per hex flat":
			flat, err := parse(t, name).PerFlat(6)
			if err != nil {
				t.Fatal(err)
			}
			got = []float64{float64(flat)}
			if unit == "in" {
				got[0] = float64(flat.Inch())
			}
		case strings.HasPrefix(what, "Turns and flats"):
			turns := float64(parse(t, "M64x4").Turns(0.25))
			got = []float64{turns, turns * 6}
		case id == "F201":
			got = []float64{float64(parse(t, name).PitchDiameter())}
		default:
			t.Errorf("%s is not used", id)
			continue
		}
		for i, w := range strings.Split(want, "/") {
			if math.Abs(got[i]-num(t, w)) > num(t, tol) {
				t.Errorf("%s %s: got %g, want %s ± %s %s; source: %s, %s; %s", id, in, got[i], w, tol, unit, r[6], r[7], r[8])
			}
		}
	}
}

func TestMetricTableIsISO261(t *testing.T) {
	rows := outside(t, "iso261")
	if len(rows) != len(metricTable) {
		t.Errorf("%d diameters, GB/T 193-2003 has %d", len(metricTable), len(rows))
	}
	coarse := map[string]string{}
	for _, r := range outside(t, "coarse") {
		coarse[r[0]] = r[1]
	}
	for i, r := range rows {
		row := metricTable[i]
		pitches := row.fine
		if row.coarse != 0 {
			pitches = append([]Mm{row.coarse}, row.fine...)
		}
		var words []string
		for _, p := range pitches {
			words = append(words, short(p))
			th := parse(t, "M"+r[0]+"x"+short(p))
			if !th.Listed || th.Pitch != p {
				t.Errorf("M%sx%s is read as %+v", r[0], short(p), th)
			}
		}
		if short(row.diameter) != r[0] || strings.Join(words, " ") != r[1] {
			t.Errorf("M%s: %v, GB/T 193-2003 has M%s: %s", short(row.diameter), words, r[0], r[1])
		}
		if want := coarse[r[0]]; want != "" && want != short(row.coarse) || want == "" && row.coarse != 0 {
			t.Errorf("M%s: coarse pitch %s, FreeCAD's table has %q", r[0], short(row.coarse), want)
		}
	}
}

func TestUnifiedTableIsASMEB11(t *testing.T) {
	rows := outside(t, "unified")
	listed := 0
	for _, r := range unifiedTable {
		for _, tpi := range []float64{r.unc, r.unf} {
			if tpi > 0 {
				listed++
			}
		}
	}
	if listed != len(rows) {
		t.Errorf("%d threads in UNC and UNF, the printed tables have %d", listed, len(rows))
	}
	for _, r := range rows {
		th := parse(t, r[1])
		if string(th.Series) != r[0] || !th.Listed {
			t.Errorf("%s is read as %s, printed under %s", r[1], th, r[0])
		}
		if d2 := float64(th.PitchDiameter().Inch()); math.Abs(d2-num(t, r[2])) > 0.00006 {
			t.Errorf("%s: pitch diameter %.5f in, printed %s", r[1], d2, r[2])
		}
		if r[3] == "-" {
			continue
		}
		// The tables print three or four digits.
		if a, want := area(t, th)/25.4/25.4, num(t, r[3]); math.Abs(a-want) > 0.005*want {
			t.Errorf("%s: stress area %.5f in², printed %s", r[1], a, r[3])
		}
	}
}

func TestTrapezoidalTableIsISO2902(t *testing.T) {
	for i, r := range outside(t, "trapezoidal") {
		var words []string
		for _, p := range trapezoidalTable[i].pitches {
			words = append(words, short(p))
		}
		if got := short(trapezoidalTable[i].diameter) + " " + strings.Join(words, " "); got != r[0]+" "+r[1] {
			t.Errorf("Tr %s, printed %s %s", got, r[0], r[1])
		}
	}
	for _, r := range outside(t, "trapdim") {
		th := parse(t, r[0])
		if float64(th.PitchDiameter()) != num(t, r[1]) || float64(th.MinorDiameter()) != num(t, r[2]) {
			t.Errorf("%s: d2 %g, D1 %g mm, printed %s, %s (roymech.org, ISO 2904)", th, th.PitchDiameter(), th.MinorDiameter(), r[1], r[2])
		}
	}
}

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
