package reading

import (
	"strings"
	"testing"

	"matchmark/packs/units"
)

// TestRungs: the lines of ladders as they stand on paper.
func TestRungs(t *testing.T) {
	t.Parallel()
	mm := func(before, after, boxes int) Given {
		return Given{Box: Box{Before: before, After: after, Unit: units.Millimetre}, Boxes: boxes}
	}
	given := map[Mark]Given{
		"D1": mm(2, 2, 1), "D2": mm(2, 2, 1), "D3": mm(2, 2, 3), "D4": mm(1, 2, 8), "D5": mm(3, 1, 1),
		"D7": {Box: Box{Form: Fraction, Before: 1, Denominator: 16, Unit: units.Inch}, Boxes: 1},
		"D8": {Box: Box{Form: Fraction, Before: 1, Denominator: 32, Unit: units.Inch}, Boxes: 1},
		"D9": {Box: Box{Before: 2, After: 0, Unit: units.Celsius}, Boxes: 1},
		"":   mm(1, 2, 1),
	}
	for _, c := range []struct{ name, formula, lines, result string }{
		{"a difference and a constant", "D1 - D2 + 0.08 mm", "D1 ▢ / − D2 ▢ / + 0.08 mm / = ▢", "3.2 ±"},
		{"half of a reading has a decimal more", "half of D1", "D1 ▢ ÷ 2 = ▢", "2.3"},
		{"a percentage is a factor", "70 % of D1", "D1 ▢ × 0.7 = ▢", "2.3"},
		{"a mean of three is rounded", "mean of D3", "sum D3 ▢ + ▢ + ▢ = ▢ ÷ 3 = ▢ rounded", "2.3"},
		{"of many readings the sum is copied", "mean of D4", "sum of D4 ▢ ÷ 8 = ▢ rounded", "1.3"},
		{"two marks together", "mean of D1 and D2 - 0.02 mm", "sum D1 ▢ + D2 ▢ = ▢ ÷ 2 = ▢ / − 0.02 mm / = ▢", "2.3 ±"},
		{"spread", "spread of D4", "largest of D4 ▢ − smallest of D4 ▢ = ▢", "1.2"},
		{"a rate per length", "0.5 mm per m of D5", "D5 ▢ × 0.0005 = ▢ rounded", "1.4"},
		{"a rate for each of another reading", "0.002 mm per D2 of D1", "D1 ▢ ÷ D2 ▢ × 0.002 = ▢ rounded", "1.4"},
		{"a rate per inch of a reading in millimetres", "0.0005 in per in of D5", "D5 ▢ × 0.0005 ÷ 25.4 = ▢ rounded", "1.5"},
		{"brackets first, called by a letter", "half of (D1 - D2)", "D1 ▢ / − D2 ▢ / = ▢ a / a ÷ 2 = ▢", "2.3 ±"},
		{"a bracket round the whole", "(D1 + D2)", "D1 ▢ / + D2 ▢ / = ▢", "3.2"},
		{"one reading alone", "D1", "D1 ▢", "2.2"},
		{"fractions stay fractions", "D7 + D8", "D7 ▢ / + D8 ▢ / = ▢", "2 of 32"},
		{"half of a fraction", "half of D7", "D7 ▢ ÷ 2 = ▢", "1 of 32"},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			v, fault := ParseFormula(c.formula)
			if fault != nil {
				t.Fatal(fault.Message)
			}
			rungs, box, err := v.Rungs(func(m Mark) Given { return given[m] })
			if err != nil {
				t.Fatal(err)
			}
			var lines []string
			for _, r := range rungs {
				line := []string{[]string{"", "+", "−", "="}[r.Sign], English(r.Parts, "▢"), r.Name}
				lines = append(lines, strings.Join(strings.Fields(strings.Join(line, " ")), " "))
			}
			if got := strings.ReplaceAll(strings.Join(lines, " / "), "\u00a0", " "); got != c.lines {
				t.Errorf("lines\n%s\nwant\n%s", got, c.lines)
			}
			result := units.Whole(int64(box.Before)).Text() + "." + units.Whole(int64(box.After)).Text()
			if box.Form == Fraction {
				result = units.Whole(int64(box.Before)).Text() + " of " + units.Whole(box.Denominator).Text()
			}
			if box.Signed {
				result += " ±"
			}
			if result != c.result {
				t.Errorf("box %s, want %s", result, c.result)
			}
		})
	}
	for _, c := range []struct{ formula, says string }{
		{"D1 - D9", "one is in mm and the other in °C"},
		{"D1 + D7", "one is in mm and the other in in"},
		{"mean of D1 and D9", "D1 is in mm and D9 in °C"},
		{"D3 - D1", "D3 has 3 readings: write mean of D3"},
		{"1.5 x D7", "not multiplied by hand"},
		{"mean of D7 and D8 and D7", "not divided by hand"},
		{"0.5 mm per m of D9", "not a length"},
	} {
		v, fault := ParseFormula(c.formula)
		if fault != nil {
			t.Fatal(c.formula, fault.Message)
		}
		if _, _, err := v.Rungs(func(m Mark) Given { return given[m] }); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %v, want %q", c.formula, err, c.says)
		}
	}
}

// What is rounded up on its way takes more room than what it came from: 0.04 × 99.99 is
// 4.000 in its box, and two and a half of that are 10.000.
func TestRoundedResultsHaveRoom(t *testing.T) {
	v, fault := ParseFormula("1.5 x (0.04 mm per D2 of D1) + 0.04 mm per D2 of D1")
	if fault != nil {
		t.Fatal(fault)
	}
	two := Given{Box: Box{Before: 2, After: 2, Unit: units.Millimetre}, Boxes: 1}
	_, box, err := v.Rungs(func(Mark) Given { return two })
	if err != nil || box.Before != 2 {
		t.Errorf("room for %d figures before the point, want 2 (%v)", box.Before, err)
	}
}
