package filled_test

import (
	"fmt"
	"math/big"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// TestLaddersByPen: the values that are typed into the boxes of a ladder are those that a
// person gets who works its printed lines with a pen: what is copied, divided, multiplied,
// rounded to the box, added up. The lines are read here from their words alone.
func TestLaddersByPen(t *testing.T) {
	sums := 0
	for _, name := range []string{"storm-pump.yaml", "triplex-pump.yaml", "bevel-gearbox.yaml"} {
		jb := starter(t, name)
		rapid.Check(t, func(rt *rapid.T) {
			text := map[string]string{}
			for key, q := range randomValues(rt, jb) {
				text[key] = q.Text()
			}
			v, _ := filled.Merge([]*filled.File{filled.Read("readings.csv", typed(t, jb, ',', text), jb)})
			r := filled.Work(jb, v)
			for _, d := range jb.Dims {
				for _, w := range []job.Working{d.FoundWork, d.LeftWork} {
					for _, l := range ladders(w) {
						for at := range max(d.Positions.Boxes(), 1) {
							if byPen(rt, name+" "+d.Mark+" "+l.Text, r.Rungs(l, at)) {
								sums++
							}
						}
					}
				}
			}
		})
	}
	if sums < 100 {
		t.Errorf("only %d sums were worked through", sums)
	}
}

func ladders(w job.Working) []*job.Ladder {
	var out []*job.Ladder
	for _, l := range append([]job.LimitLadder{{At: w.Formula}}, w.Limits...) {
		for _, one := range []*job.Ladder{l.At, l.Low, l.High} {
			if one != nil {
				out = append(out, one)
			}
		}
	}
	return out
}

// byPen works the lines of a ladder as they are printed and holds each box against what
// stands in it; false where not all readings are there.
func byPen(t *rapid.T, name string, rungs []reading.Rung) bool {
	total, named := new(big.Rat), map[string]*big.Rat{}
	for _, r := range rungs {
		cur, op := new(big.Rat), "+"
		put := func(v *big.Rat) {
			switch op {
			case "−":
				cur.Sub(cur, v)
			case "÷":
				cur.Quo(cur, v)
			default:
				cur.Add(cur, v)
			}
			op = "+"
		}
		if r.Sign == reading.Equals {
			cur.Set(total)
		}
		for _, p := range r.Parts {
			switch {
			case p.Blank != reading.NoBlank && p.Value == nil:
				return false
			case p.Blank == reading.BlankReading || p.Blank == reading.BlankFound:
				put(p.Value.Rat())
			case p.Blank == reading.BlankResult:
				want := units.Exact(cur, 0)
				if p.Box.Form == reading.Digits {
					want = want.Round(p.Box.After, units.Nearest)
				}
				if p.Value.Cmp(want) != 0 {
					t.Errorf("%s: a box holds %s, by pen it is %s", name, p.Value.Text(), want.Text())
				}
				cur = p.Value.Rat()
			case p.Mark != "":
			case named[p.Text] != nil:
				put(named[p.Text])
			default:
				op = literal(cur, p.Text, op)
			}
		}
		switch r.Sign {
		case reading.Minus:
			total.Sub(total, cur)
		case reading.Equals:
			total = new(big.Rat)
		default:
			total.Add(total, cur)
		}
		if r.Name != "" {
			named[r.Name], total = cur, new(big.Rat)
		}
	}
	return true
}

// literal does what a printed sign says to the number so far, and gives the operation
// that waits for the next box.
func literal(cur *big.Rat, text, op string) string {
	text = units.Pointed(strings.ReplaceAll(text, "\u00a0", " "))
	var n string
	for _, sign := range []string{"× ", "÷ "} {
		if _, err := fmt.Sscanf(text, sign+"%s", &n); err == nil {
			v, ok := new(big.Rat).SetString(strings.Replace(n, "−", "-", 1))
			if !ok {
				return op
			}
			if sign == "× " {
				cur.Mul(cur, v)
			} else {
				cur.Quo(cur, v)
			}
			return op
		}
	}
	switch text {
	case "+", "−", "÷":
		return text
	case "=":
		return op
	}
	if v, ok := new(big.Rat).SetString(strings.Replace(strings.Fields(text + " x")[0], "−", "-", 1)); ok {
		if op == "−" {
			cur.Sub(cur, v)
		} else {
			cur.Add(cur, v)
		}
	}
	return "+"
}
