package fit

import (
	"fmt"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
)

// outsideRow is one line of a file of outside values: its kind and its fields.
type outsideRow struct {
	line   int
	fields []string
}

// outside reads the rows of one kind from testdata/outside.
func outside(t *testing.T, file, kind string) []outsideRow {
	t.Helper()
	data, err := os.ReadFile("../../testdata/outside/" + file)
	if err != nil {
		t.Fatal(err)
	}
	var rows []outsideRow
	for i, l := range strings.Split(string(data), "\n") {
		f := strings.Split(l, " | ")
		if f[0] == kind {
			rows = append(rows, outsideRow{i + 1, f[1:]})
		}
	}
	if len(rows) == 0 {
		t.Fatalf("%s has no rows of kind %s", file, kind)
	}
	return rows
}

// The fields of a check row after its kind.
const (
	number = iota
	what
	inputs
	expected
	unit
	tolerances
	source
	place
	howKnown
)

// blame says where an expected value comes from.
func (r outsideRow) blame() string {
	return r.fields[number] + " " + r.fields[what] + "; source: " + r.fields[source] + ", " + r.fields[place] + "; " + r.fields[howKnown]
}

// num reads a number of an outside file.
func num(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(strings.TrimSpace(s), 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// microns turns a printed deviation into nanometres.
func microns(t *testing.T, s string) Nanometre {
	t.Helper()
	return Nanometre(math.Round(num(t, s) * 1000))
}

// within compares one computed value with a row's.
func (r outsideRow) within(t *testing.T, got, want float64) {
	t.Helper()
	tol := num(t, r.fields[tolerances])
	if math.IsNaN(got) || math.Abs(got-want) > tol {
		t.Errorf("got %g, want %g ± %g %s: %s", got, want, tol, r.fields[unit], r.blame())
	}
}

func TestLimitsAgainstOutsideValues(t *testing.T) {
	limits, others := 0, 0
	for _, r := range outside(t, "iso286.txt", "check") {
		in, want := r.fields[inputs], r.fields[expected]
		switch {
		case strings.HasPrefix(r.fields[what], "ISO 286 limit deviations"), strings.HasPrefix(r.fields[what], "ISO 286 special case"):
			limits++
			z, err := Parse(in)
			if err != nil {
				t.Errorf("%v: %s", err, r.blame())
				continue
			}
			upper, lower, _ := strings.Cut(want, "/")
			if z.Upper != microns(t, upper) || z.Lower != microns(t, lower) {
				t.Errorf("%s: got %g/%g, want %s µm: %s", in, z.Upper.Micron(), z.Lower.Micron(), want, r.blame())
			}
		case strings.HasPrefix(r.fields[what], "Fit "):
			others++
			designation, _, _ := strings.Cut(in, ":")
			f, err := ParseFit(designation)
			if err != nil {
				t.Fatal(err)
			}
			greatest, least, _ := strings.Cut(want, "/")
			if f.GreatestInterference() != microns(t, greatest) || f.LeastInterference() != microns(t, least) {
				t.Errorf("%s: got %d/%d nm, want %s µm: %s", designation, f.GreatestInterference(), f.LeastInterference(), want, r.blame())
			}
		case r.fields[number] == "F087":
			others++
			r.within(t, toleranceFactor(math.Sqrt(30*50)), num(t, want))
		case r.fields[number] == "F088":
			others++
			r.within(t, stepMean(mainEnds, 0), num(t, want))
		case r.fields[number] == "F089":
			others++
			r.within(t, itMicrons[6][4]-itMicrons[5][4], num(t, want))
		case r.fields[number] == "F090", r.fields[number] == "F091":
			others++
			letter, size := "f", Nanometre(24)*millimetre
			if r.fields[number] == "F091" {
				letter, size = "d", 60*millimetre
			}
			z, err := Lookup(size, letter, 7)
			if err != nil {
				t.Fatal(err)
			}
			r.within(t, -float64(z.Upper.Micron()), num(t, want))
			i := step(size, mainEnds)
			r.within(t, formulas[letter].raw(stepMean(mainEnds, i), 0), num(t, want))
		default:
			t.Errorf("line %d is not used: %s", r.line, r.blame())
		}
	}
	if limits != 85 || others != 6 {
		t.Errorf("%d limits and %d other values were compared, want 85 and 6", limits, others)
	}
}

// TestTablesAgainstSecondTable compares every entry of our tables, typed letter by
// letter, with a table that was typed size by size from another source.
func TestTablesAgainstSecondTable(t *testing.T) {
	// What the second table itself misprints; the file lists each of them with its
	// proof, and TestMisprintsAreRight holds us to the right value.
	known := map[string]string{
		"IT9 1600": "210", "J6 10": "6", "D7 140": "16", "D7 160": "16", "D7 180": "16",
	}
	compared, misprints := 0, 0
	for i, r := range outside(t, "iso286.txt", "it") {
		f := strings.Fields(r.fields[0])
		if int(num(t, f[0])) != mainEnds[i] {
			t.Fatalf("line %d: step to %s, want %d", r.line, f[0], mainEnds[i])
		}
		for g, printed := range f[1:] {
			compared++
			switch key := fmt.Sprintf("IT%d %d", g+1, mainEnds[i]); {
			case itMicrons[g][i] == num(t, printed):
			case known[key] == printed:
				misprints++
			default:
				t.Errorf("line %d: IT%d to %d mm is %g, the second table has %s", r.line, g+1, mainEnds[i], itMicrons[g][i], printed)
			}
		}
	}
	letters := strings.Fields("a b c cd d e ef f fg g k m n p r s t u v x y z za zb zc j5 j7 j8 J6 J7 J8 D3 D4 D5 D6 D7 D8")
	for i, r := range outside(t, "iso286.txt", "dev") {
		f := strings.Fields(r.fields[0])
		if int(num(t, f[0])) != fineEnds[i] {
			t.Fatalf("line %d: step to %s, want %d", r.line, f[0], fineEnds[i])
		}
		for k, letter := range letters {
			printed := "-"
			if k+1 < len(f) {
				printed = f[k+1]
			}
			got := tabulated(t, letter, Nanometre(fineEnds[i])*millimetre)
			if printed != "-" {
				compared++
			}
			switch key := fmt.Sprintf("%s %d", letter, fineEnds[i]); {
			case got == printed:
			case known[key] == printed:
				misprints++
			default:
				t.Errorf("line %d: %s to %d mm is %s, the second table has %s", r.line, letter, fineEnds[i], got, printed)
			}
		}
	}
	if compared != 1390 || misprints != len(known) {
		t.Errorf("%d entries were compared with %d known misprints, want 1390 with %d", compared, misprints, len(known))
	}
}

// tabulated gives our value the way the second table prints it: signed, with a
// dash where there is none. j5 and the like carry their grade; D3 to D8 are deltas.
func tabulated(t *testing.T, key string, size Nanometre) string {
	t.Helper()
	letter, grade := strings.TrimRight(key, "0123456789"), 6
	if digits := key[len(letter):]; digits != "" {
		grade = int(num(t, digits))
	}
	if letter == "D" {
		if i := step(size, mainEnds); i > 0 && size <= deltaEnd {
			return strconv.FormatFloat(itMicrons[grade-1][i]-itMicrons[grade-2][i], 'f', -1, 64)
		}
		if size <= deltaEnd {
			return "0" // the standard gives no delta up to 3 mm
		}
		return "-"
	}
	z, err := Lookup(size, letter, grade)
	if err != nil {
		return "-"
	}
	d := z.Lower
	if letter[0] <= 'h' && letter != "j" && !z.Hole() || letter == "J" {
		d = z.Upper
	}
	return strconv.FormatFloat(float64(d.Micron()), 'f', -1, 64)
}

func TestHolesAgainstPrintedTable(t *testing.T) {
	compared := 0
	for _, r := range outside(t, "iso286.txt", "hole") {
		class := strings.Fields(r.fields[0])
		values := strings.Fields(r.fields[1])
		ends := fineEnds
		if len(values) == 13 {
			ends = mainEnds
		}
		for i, printed := range values {
			z, err := Lookup(Nanometre(ends[i])*millimetre, class[0], int(num(t, class[1])))
			switch {
			case printed == "-" && err == nil:
				t.Errorf("line %d: %s is defined, the printed table has none", r.line, z)
			case printed == "-":
			case err != nil:
				t.Errorf("line %d: %v", r.line, err)
			case z.Upper != microns(t, printed):
				t.Errorf("line %d: %s: ES %g µm, printed %s", r.line, z, z.Upper.Micron(), printed)
			}
			compared++
		}
	}
	if compared < 400 {
		t.Errorf("only %d entries compared", compared)
	}
}

func TestMisprintsAreRight(t *testing.T) {
	for _, r := range outside(t, "iso286.txt", "misprint") {
		designation, which, printed, right := r.fields[1], r.fields[2], r.fields[3], r.fields[4]
		z, err := Parse(designation)
		if err != nil {
			t.Errorf("%v", err)
			continue
		}
		got := z.Upper
		if which == "lower" {
			got = z.Lower
		}
		if got == microns(t, printed) || got != microns(t, right) {
			t.Errorf("%s: %s deviation %g µm, want %s and not the misprint %s of %s (%s)",
				designation, which, got.Micron(), right, printed, r.fields[5], r.fields[6])
		}
	}
}

// A housing bore told in inches: the size is the millimetres of the zone over 25.4.
func TestHousingInInches(t *testing.T) {
	for _, r := range outside(t, "iso286.txt", "housing") {
		z, err := Parse(r.fields[inputs])
		if err != nil {
			t.Fatal(err)
		}
		want := strings.Split(r.fields[expected], "/")
		r.within(t, float64(z.Max())/1e6/25.4, num(t, want[0]))
		r.within(t, float64(z.Min())/1e6/25.4, num(t, want[1]))
	}
}
