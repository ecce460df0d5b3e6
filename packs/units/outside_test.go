package units

import (
	"math/big"
	"os"
	"strings"
	"testing"
)

// row is one line of the file of outside values.
type row struct {
	number, what, inputs, expected, unit, tolerance, source string
}

// outside reads the rows of one kind.
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
		out = append(out, row{f[1], f[2], f[3], f[4], f[5], f[6], f[7] + ", " + f[8] + " (" + f[9] + ")"})
	}
	if len(out) == 0 {
		t.Fatalf("no row of kind %q", what)
	}
	return out
}

func number(t *testing.T, text string) Number {
	t.Helper()
	n, err := ParseNumber(text)
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return n
}

func TestConvertAgreesWithTables(t *testing.T) {
	for _, r := range outside(t, "convert") {
		q, err := ParseQuantity(r.inputs)
		if err != nil {
			t.Errorf("%s %s: %v", r.number, r.inputs, err)
			continue
		}
		to, width := LeadingUnit(r.unit)
		if width != len([]rune(r.unit)) {
			t.Errorf("%s: unit %q not read", r.number, r.unit)
			continue
		}
		got, err := q.Convert(to)
		if err != nil {
			t.Errorf("%s: %v", r.number, err)
			continue
		}
		off := got.Number.Sub(number(t, r.expected)).Abs()
		if off.Cmp(number(t, r.tolerance)) > 0 {
			t.Errorf("%s: %s is %s, want %s ± %s %s\nsource: %s", r.number, r.inputs, got.Round(9, Nearest).Text(), r.expected, r.tolerance, r.unit, r.source)
		}
		back, err := got.Convert(q.Unit)
		if err != nil || back.Number.Cmp(q.Number) != 0 {
			t.Errorf("%s: there and back %s, want %s exactly", r.number, back.Text(), q.Text())
		}
	}
}

func TestRoundAgreesWithStandard(t *testing.T) {
	for _, r := range outside(t, "round") {
		for _, sign := range []string{"", "-"} {
			got := number(t, sign+r.inputs).Round(1, Nearest)
			if want := sign + r.expected; got.Text() != want {
				t.Errorf("%s: %s%s rounds to %s, want %s\nsource: %s", r.number, sign, r.inputs, got.Text(), want, r.source)
			}
		}
	}
}

// Rounding inward never widens a band: common practice, and the point of it.
func TestRoundUpAndDown(t *testing.T) {
	for _, c := range []struct{ in, up, down string }{
		{"0.301", "0.31", "0.30"}, {"-0.301", "-0.30", "-0.31"}, {"0.30", "0.30", "0.30"}, {"0", "0.00", "0.00"},
	} {
		n := number(t, c.in)
		if got := n.Round(2, Up).Text(); got != c.up {
			t.Errorf("%s up: %s, want %s", c.in, got, c.up)
		}
		if got := n.Round(2, Down).Text(); got != c.down {
			t.Errorf("%s down: %s, want %s", c.in, got, c.down)
		}
	}
}

// math/big is the reference for the arithmetic of decimals.
func TestArithmeticIsExact(t *testing.T) {
	// 120.061 - 120.011 is 0.0499999999999972 in binary fractions.
	if got := number(t, "120.061").Sub(number(t, "120.011")).Text(); got != "0.050" {
		t.Errorf("120.061 - 120.011 = %s, want 0.050", got)
	}
	if got := number(t, "3/16").Add(number(t, "1-1/32")).Text(); got != "1-7/32" {
		t.Errorf("3/16 + 1-1/32 = %s, want 1-7/32", got)
	}
	a, _ := new(big.Rat).SetString("80.00")
	b, _ := new(big.Rat).SetString("0.02")
	if got := number(t, "80.00").Add(number(t, "+0.02")); got.Rat().Cmp(a.Add(a, b)) != 0 || got.Text() != "80.02" {
		t.Errorf("80.00 + 0.02 = %s", got.Text())
	}
}
