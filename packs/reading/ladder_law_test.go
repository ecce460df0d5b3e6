package reading

import (
	"math/big"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/units"
)

// A writer does a ladder the way a person does: it knows the signs, the numbers
// and the boxes that are printed, and nothing of formulas. slack is by how much
// its rounded boxes may have moved the result.
type writer struct {
	t      *rapid.T
	values map[Mark][]*big.Rat
	letter map[string]pencil
}

type pencil struct{ v, slack *big.Rat }

func zero() pencil { return pencil{new(big.Rat), new(big.Rat)} }

func (w *writer) ladder(rungs []Rung) pencil {
	total := zero()
	for _, r := range rungs {
		x := w.line(r.Parts)
		switch r.Sign {
		case NoSign:
			total = x
		case Plus:
			total = pencil{new(big.Rat).Add(total.v, x.v), new(big.Rat).Add(total.slack, x.slack)}
		case Minus:
			total = pencil{new(big.Rat).Sub(total.v, x.v), new(big.Rat).Add(total.slack, x.slack)}
		case Equals:
			w.fits(r.Parts[0].Box, total, false)
		}
		if r.Name != "" {
			w.letter[r.Name] = total
		}
	}
	return total
}

// line does one line from left to right.
func (w *writer) line(parts []Part) pencil {
	cur := zero()
	sign := "+"
	take := func(x pencil) {
		switch sign {
		case "÷":
			cur = pencil{new(big.Rat).Quo(cur.v, x.v), new(big.Rat).Quo(cur.slack, x.v)}
		case "−":
			x.v = new(big.Rat).Neg(x.v)
			fallthrough
		case "+":
			cur = pencil{new(big.Rat).Add(cur.v, x.v), new(big.Rat).Add(cur.slack, x.slack)}
		}
		sign = "" // the next one needs a sign
	}
	for i, p := range parts {
		text := strings.ReplaceAll(strings.ReplaceAll(p.Text, "\u00a0", " "), "−", "-")
		switch {
		case p.Blank == BlankReading:
			take(pencil{w.reading(p), new(big.Rat)})
		case p.Blank == BlankResult:
			rounded := i+1 < len(parts) && parts[i+1].Word == WordRounded
			cur = w.fits(p.Box, cur, rounded)
		case p.Word != Literal || p.Mark != "" || p.Text == "=":
		case p.Text == "+" || p.Text == "−" || p.Text == "÷":
			sign = p.Text
		case strings.HasPrefix(text, "× "):
			f := rat(w.t, text[len("× "):])
			cur = pencil{new(big.Rat).Mul(cur.v, f), new(big.Rat).Mul(cur.slack, new(big.Rat).Abs(f))}
		case strings.HasPrefix(text, "÷ "):
			f := rat(w.t, text[len("÷ "):])
			cur = pencil{new(big.Rat).Quo(cur.v, f), new(big.Rat).Quo(cur.slack, f)}
		case len(text) == 1 && text[0] >= 'a':
			take(w.letter[text])
		default: // a size
			number, _, _ := strings.Cut(text, " ")
			take(pencil{rat(w.t, number), new(big.Rat)})
		}
	}
	return cur
}

// fits sees that a number goes into its box, and rounds it only where the line
// says so.
func (w *writer) fits(b Box, x pencil, rounded bool) pencil {
	n := units.Exact(x.v, 0)
	r := n.Round(b.After, units.Nearest)
	if rounded {
		half := new(big.Rat).SetFrac(big.NewInt(1), new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(b.After)), nil))
		half.Quo(half, big.NewRat(2, 1))
		x = pencil{r.Rat(), new(big.Rat).Add(x.slack, half)}
	} else if r.Cmp(n) != 0 {
		w.t.Fatalf("%s does not go into %d decimals", n.Text(), b.After)
	}
	if r.Figures() > b.Before {
		w.t.Fatalf("%s has more than %d figures before the point", r.Text(), b.Before)
	}
	if r.Sign() < 0 && !b.Signed {
		w.t.Fatalf("%s is below zero, and the box has no sign", r.Text())
	}
	return x
}

// reading is what is copied into a blank.
func (w *writer) reading(p Part) *big.Rat {
	all := w.values[p.Mark]
	switch p.Index {
	case 0:
		return all[0]
	case WholeOf(WordLargestOf), WholeOf(WordSmallestOf):
		best := all[0]
		for _, v := range all {
			if c := v.Cmp(best); c > 0 == (p.Index == WholeOf(WordLargestOf)) && c != 0 {
				best = v
			}
		}
		return best
	case WholeOf(WordSumOf):
		sum := new(big.Rat)
		for _, v := range all {
			sum.Add(sum, v)
		}
		return sum
	}
	return all[p.Index-1]
}

func rat(t interface{ Fatalf(string, ...any) }, s string) *big.Rat {
	r, ok := new(big.Rat).SetString(units.Plain(s))
	if !ok {
		t.Fatalf("%q is no number", s)
	}
	return r
}

func hundredths(t *rapid.T, name string, most int64) *big.Rat {
	return big.NewRat(rapid.Int64Range(0, most).Draw(t, name), 100)
}

// drawValue draws a formula as it is typed.
func drawValue(t *rapid.T, depth int) string {
	var b strings.Builder
	for i := range rapid.IntRange(1, 3).Draw(t, "terms") {
		if i > 0 {
			b.WriteString(rapid.SampledFrom([]string{" + ", " - "}).Draw(t, "sign"))
		}
		b.WriteString(rapid.SampledFrom([]string{"", "", "", "half of ", "70 % of ", "0.005 % of ", "1.5 x ", "0.3333 x "}).Draw(t, "factor"))
		items := []string{"D1", "D2", "mean of D3", "mean of D4", "mean of D1 and D2", "largest of D3", "smallest of D4", "spread of D4", "sum of D3", "sum of D4 and D1", "0.5 mm per m of D1", "0.25 mm per mm of largest of D4", "0.04 mm per D2 of D1"}
		if depth > 0 && rapid.Bool().Draw(t, "bracket") {
			b.WriteString("(" + drawValue(t, depth-1) + ")")
		} else if b.String() == "" || !strings.HasSuffix(b.String(), "of ") && !strings.HasSuffix(b.String(), "x ") {
			b.WriteString(rapid.SampledFrom(append(items, "0.08 mm", "2.50 mm")).Draw(t, "item"))
		} else {
			b.WriteString(rapid.SampledFrom(items).Draw(t, "item"))
		}
	}
	return b.String()
}

// TestLadderIsTheFormula: whoever does the printed ladder of a formula box by box
// gets what the formula gives, exactly, or as near as the boxes that the ladder
// itself calls rounded. The sum of the formula is done a second time here, from
// the printed signs alone, by math/big.
func TestLadderIsTheFormula(t *testing.T) {
	t.Parallel()
	given := map[Mark]Given{
		"D1": {Box: Box{Before: 2, After: 2, Unit: units.Millimetre}, Boxes: 1},
		"D2": {Box: Box{Before: 2, After: 2, Unit: units.Millimetre}, Boxes: 1},
		"D3": {Box: Box{Before: 2, After: 2, Unit: units.Millimetre}, Boxes: 3},
		"D4": {Box: Box{Before: 2, After: 2, Unit: units.Millimetre}, Boxes: 8},
	}
	rapid.Check(t, func(t *rapid.T) {
		text := drawValue(t, 2)
		v, fault := ParseFormula(text)
		if fault != nil {
			t.Skip(text) // a size alone, or two decimals
		}
		rungs, box, err := v.Rungs(func(m Mark) Given { return given[m] })
		if err != nil {
			t.Fatalf("%s: %v", text, err)
		}
		w := &writer{t: t, values: map[Mark][]*big.Rat{}, letter: map[string]pencil{}}
		for _, m := range []Mark{"D1", "D2", "D3", "D4"} {
			for range given[m].Boxes {
				n := hundredths(t, string(m), 9999)
				if m == "D2" && n.Cmp(big.NewRat(1, 1)) < 0 {
					n.SetInt64(1) // it is divided by: the box has room for one of one or more
				}
				w.values[m] = append(w.values[m], n)
			}
		}
		w.values["D4+D1"] = append(append([]*big.Rat{}, w.values["D4"]...), w.values["D1"]...)
		// "sum of D4 and D1" and its like: the blank of the whole names the first.
		got := w.ladder(joined(rungs, w))
		want, err := v.Work(Env{Readings: func(m Mark) []*units.Quantity {
			var out []*units.Quantity
			for _, r := range w.values[m] {
				out = append(out, &units.Quantity{Number: units.Exact(r, 2), Unit: units.Millimetre})
			}
			return out
		}})
		if err != nil {
			t.Fatalf("%s: %v", text, err)
		}
		off := new(big.Rat).Sub(got.v, want.Number.Rat())
		if off.Abs(off).Cmp(got.slack) > 0 {
			t.Fatalf("%s: the ladder gives %s, the formula %s (slack %s)", text, got.v.FloatString(8), want.Text(), got.slack.FloatString(8))
		}
		if box.Unit != units.Millimetre {
			t.Fatalf("%s is in %s", text, box.Unit.Text())
		}
	})
}

// joined names the readings of several marks together where a blank takes one
// number of all of them.
func joined(rungs []Rung, w *writer) []Rung {
	for i := range rungs {
		for k := 1; k < len(rungs[i].Parts); k++ {
			p := &rungs[i].Parts[k]
			if p.Blank == BlankReading && p.Index < 0 && p.Mark == "D4" && strings.Contains(English(rungs[i].Parts[k-1:k], ""), "D4 and D1") {
				p.Mark = "D4+D1"
			}
		}
	}
	return rungs
}
