package lift

import (
	"bufio"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// outsideRow is one line of testdata/outside: a value that this program did not
// make, with where it comes from.
type outsideRow struct {
	key, kind, inputs, unit, how, source string
	want, within                         []float64
	relative                             bool
}

// in reads the input called name; a missing one fails the test.
func (r outsideRow) in(t *testing.T, name string) float64 {
	t.Helper()
	for _, f := range strings.Fields(r.inputs) {
		if k, v, _ := strings.Cut(f, "="); k == name {
			x, err := strconv.ParseFloat(v, 64)
			if err != nil {
				t.Fatalf("%s: input %s: %v", r.key, name, err)
			}
			return x
		}
	}
	t.Fatalf("%s: no input %s in %q", r.key, name, r.inputs)
	return 0
}

// compare checks got against the row, and shows the source where it differs.
func (r outsideRow) compare(t *testing.T, got ...float64) {
	t.Helper()
	if len(got) != len(r.want) {
		t.Fatalf("%s: got %d values, want %d", r.key, len(got), len(r.want))
	}
	for i, w := range r.want {
		tol := r.within[min(i, len(r.within)-1)]
		if r.relative {
			tol *= math.Abs(w) / 100
		}
		tol += 1e-12 * math.Abs(w) // an exact figure is exact but for rounding
		if math.IsNaN(got[i]) || math.Abs(got[i]-w) > tol {
			t.Errorf("%s %s %s: got %.6g, want %.6g ± %.3g %s\nsource (%s): %s", r.key, r.kind, r.inputs, got[i], w, tol, r.unit, r.how, r.source)
		}
	}
}

func numbers(t *testing.T, text string) []float64 {
	t.Helper()
	var out []float64
	for _, part := range strings.Split(text, "/") {
		x, err := strconv.ParseFloat(strings.TrimSpace(part), 64)
		if err != nil {
			t.Fatalf("%q: %v", text, err)
		}
		out = append(out, x)
	}
	return out
}

// outsideRows reads one file of values.
func outsideRows(t *testing.T, name string) []outsideRow {
	t.Helper()
	f, err := os.Open(filepath.Join("..", "..", "testdata", "outside", name))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	var rows []outsideRow
	for s := bufio.NewScanner(f); s.Scan(); {
		line := s.Text()
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		c := strings.Split(line, " | ")
		if len(c) != 8 {
			t.Fatalf("%s: %d columns in %q", name, len(c), line)
		}
		r := outsideRow{key: c[0], kind: c[1], inputs: strings.TrimSpace(c[2]), unit: c[5], how: c[6], source: c[7]}
		r.want = numbers(t, c[3])
		tol, relative := strings.CutSuffix(c[4], "%")
		r.within, r.relative = numbers(t, tol), relative
		rows = append(rows, r)
	}
	return rows
}

// runOutside runs every row of a file through the check of its kind; a kind
// without a check, or a check without a row, fails.
func runOutside(t *testing.T, name string, checks map[string]func(*testing.T, outsideRow)) {
	seen := map[string]bool{}
	for _, r := range outsideRows(t, name) {
		check, ok := checks[r.kind]
		if !ok {
			t.Errorf("%s: nothing checks %q", r.key, r.kind)
			continue
		}
		seen[r.kind] = true
		t.Run(r.key+" "+r.kind, func(t *testing.T) { check(t, r) })
	}
	for kind := range checks {
		if !seen[kind] {
			t.Errorf("no row for %q", kind)
		}
	}
}
