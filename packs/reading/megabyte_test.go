package reading

import (
	"strings"
	"testing"
	"time"
)

// TestLongLines: a line of the language of limits of any length, up to 1 MB, is read in
// bounded time. A definition's own texts end at 5,000 letters; nothing here may lean on it.
func TestLongLines(t *testing.T) {
	for _, unit := range []string{"1", "(", "D1 + ", "mean of ", "1 mm to ", "+/- ", "- ", "D1/DE ", "(D1 - ", "0.05 mm or ", "choose a or ", "é", "\xff", "/", "1/", "at most 1 % of "} {
		for _, size := range []int{5_000, 1 << 20} {
			line := strings.Repeat(unit, size/len(unit))
			start := time.Now()
			Parse(line)
			ParseFormula(line)
			if took := time.Since(start); took > 10*time.Second {
				t.Errorf("%d letters of %q take %v", len(line), unit, took)
			}
		}
	}
}
