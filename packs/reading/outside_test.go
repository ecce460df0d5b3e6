package reading

import (
	"os"
	"strconv"
	"strings"
	"testing"

	"matchmark/packs/units"
)

// row is one line of the file of outside values.
type row struct {
	number, inputs, expected, unit, tolerance, source string
}

func outside(t *testing.T, what string) []row {
	t.Helper()
	data, err := os.ReadFile("../../testdata/outside/units.txt")
	if err != nil {
		t.Fatal(err)
	}
	var out []row
	for _, line := range strings.Split(string(data), "\n") {
		f := strings.Split(line, " | ")
		if len(f) != 10 || strings.HasPrefix(line, "#") || f[2] != what {
			continue
		}
		out = append(out, row{f[1], f[3], f[4], f[5], f[6], f[7] + ", " + f[8] + " (" + f[9] + ")"})
	}
	if len(out) == 0 {
		t.Fatalf("no row of kind %q", what)
	}
	return out
}

func size(t testing.TB, text string) units.Quantity {
	t.Helper()
	q, err := units.ParseQuantity(text)
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return q
}

func limit(t testing.TB, text string) *Limit {
	t.Helper()
	l, fault := Parse(text)
	if fault != nil {
		t.Fatalf("%s: %s", text, fault.Message)
	}
	return l
}

// near reports whether got is the expected number of a row.
func (r row) near(t *testing.T, got units.Quantity) bool {
	t.Helper()
	want, tolerance := size(t, r.expected+" "+r.unit), size(t, r.tolerance+" "+r.unit)
	return got.Unit == want.Unit && got.Number.Sub(want.Number).Abs().Cmp(tolerance.Number) <= 0
}

// Pairs of numbers as published tables print them are refused, and the right
// number named.
func TestPublishedFaultsAreCaught(t *testing.T) {
	for _, r := range outside(t, "caught") {
		_, fault := Parse(r.inputs)
		if fault == nil {
			t.Errorf("%s: %q was taken\nsource: %s", r.number, r.inputs, r.source)
			continue
		}
		right := size(t, strings.Trim(fault.Help[0], "()"))
		if !r.near(t, right) {
			t.Errorf("%s: %q: right is %s, want %s ± %s %s\nsource: %s", r.number, r.inputs, right.Text(), r.expected, r.tolerance, r.unit, r.source)
		}
	}
	for _, r := range outside(t, "caught row") {
		var rows []*Limit
		for _, text := range strings.Split(r.inputs, " ; ") {
			rows = append(rows, limit(t, text))
		}
		at, fault := CheckTable(rows)
		if fault == nil || at != 1 {
			t.Errorf("%s: %q was taken\nsource: %s", r.number, r.inputs, r.source)
			continue
		}
		if right := size(t, fault.Help[0]); !r.near(t, right) {
			t.Errorf("%s: right is %s, want %s %s\nsource: %s", r.number, right.Text(), r.expected, r.unit, r.source)
		}
	}
}

// The same pairs put right are taken.
func TestPublishedPairsPutRight(t *testing.T) {
	for _, typed := range []string{
		"about 273.2 F rise (151.8 C rise)", "at most 0.006 in (0.152 mm)", "about 0.3700 in (9.398 mm)", "about 0.0035 in (0.0889 mm)",
		"about 0.2344 in (5.954 mm)", "at most 12.000 in (304.80 mm)", "about 7.4915 in (190.284 mm)", "about 0.0025 in (0.0635 mm)",
		"at most 275 °F (135 °C)", "0.046 to 0.056 in (1.17 to 1.42 mm)", // the last from TM 55-2210-223-34 §3-62, READ
	} {
		if _, fault := Parse(typed); fault != nil {
			t.Errorf("%q: %s", typed, fault.Message)
		}
	}
	even := []*Limit{limit(t, "at most 0.050 mm"), limit(t, "at most 0.060 mm"), limit(t, "at most 0.080 mm"), limit(t, "at most 0.400 mm")}
	if at, fault := CheckTable(even); fault != nil {
		t.Errorf("row %d of an even table: %s", at, fault.Message)
	}
}

// Means of data sets whose rounding errors are known.
func TestMeansOfReferenceData(t *testing.T) {
	for _, r := range outside(t, "mean") {
		f := strings.Split(r.inputs, " ; ")
		pair := strings.Split(f[1], ", ")
		times, err := strconv.Atoi(f[2])
		if err != nil {
			t.Fatal(err)
		}
		first, a, b := size(t, f[0]), size(t, pair[0]), size(t, pair[1])
		readings := []*units.Quantity{&first}
		for range times {
			readings = append(readings, &a, &b)
		}
		l := limit(t, "mean "+r.expected+" to 20000000"+map[bool]string{true: ".0"}[strings.Contains(r.expected, ".")]+" mm")
		j := l.Judge(readings, Env{})
		if len(j.Findings) != 1 || j.Findings[0].Value == nil || !r.near(t, *j.Findings[0].Value) {
			t.Errorf("%s: got %+v, want %s\nsource: %s", r.number, j.Findings, r.expected, r.source)
		} else if j.Verdict != In {
			t.Errorf("%s: the mean on its own limit is not in", r.number)
		}
	}
}

// A rise on paper shows the numbers of the outside table and warns of the printed
// wrong ones.
func TestRiseOnPaper(t *testing.T) {
	p := onPaper(limit(t, "at most 134.0 C rise").Words())
	if !strings.Contains(p, "241.2 °F") || !strings.Contains(p, "never 273.2") {
		t.Errorf("at most 134.0 C rise prints %q, want 241.2 °F, never 273.2\nsource: TM 55-2210-223-34 p. 3-247 step j", p)
	}
}
