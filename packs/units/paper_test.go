package units

import (
	"fmt"
	"math/big"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// What is printed is the same number: read back with the comma or the point in the place
// of the mark it has the exact value.
func TestPrintedNumbersReadBack(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		top := rapid.Int64Range(-1e9, 1e9).Draw(rt, "digits")
		decimals := rapid.IntRange(0, 6).Draw(rt, "decimals")
		bottom := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(decimals)), nil)
		n := Exact(new(big.Rat).SetFrac(big.NewInt(top), bottom), decimals)
		comma := strings.ReplaceAll(n.Print(), string(DecimalMark), ",")
		if strings.ContainsAny(comma, ".") || strings.Count(comma, ",") > 1 {
			rt.Fatalf("%s prints as %s", n.Text(), comma)
		}
		back, ok := new(big.Rat).SetString(strings.NewReplacer(",", ".", "−", "-").Replace(comma))
		if !ok || back.Cmp(n.Rat()) != 0 || Plain(n.Print()) != n.Text() {
			rt.Fatalf("%s prints as %s, which reads %v, and typed %s", n.Text(), comma, back, Plain(n.Print()))
		}
	})
}

// A figure prints with its mark by any verb, a whole one without.
func TestFigure(t *testing.T) {
	for _, row := range []struct{ verb, want string }{{"%g", "0⎖25"}, {"%.1f", "0⎖2"}, {"%.0f", "0"}, {"%v", "0⎖25"}, {"%.4g", "0⎖25"}} {
		if got := fmt.Sprintf(row.verb, Figure(0.25)); got != row.want {
			t.Errorf("%s: got %s, want %s", row.verb, got, row.want)
		}
	}
}

// A mixed fraction is not parted: 1 7/16 with its 1 on the line above was read as 7/16.
func TestMixedFractionHoldsTogether(t *testing.T) {
	q, fault := ParseQuantity("1 7/16 in")
	if fault != nil {
		t.Fatal(fault)
	}
	if got := q.Print(); got != "1\u00a07/16\u00a0in" {
		t.Errorf("prints as %q", got)
	}
	if got := Plain(q.Number.Print()); got != "1 7/16" {
		t.Errorf("typed as %q", got)
	}
}
