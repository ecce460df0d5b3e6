package thread

import (
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
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
