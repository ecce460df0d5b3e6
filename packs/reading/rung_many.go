package reading

import (
	"math/big"
	"slices"
	"strconv"

	"matchmark/packs/units"
)

// many writes several readings taken together.
func (p *pen) many(it *Item) ([]Part, figure) {
	n, box := p.together(it.Marks)
	f := figureOf(box)
	one := func(w Word, f figure) []Part {
		return append([]Part{word(w)}, append(names(it.Marks), Part{Blank: BlankReading, Mark: it.Marks[0], Index: WholeOf(w), Box: f.Box})...)
	}
	switch it.Kind {
	case LargestOf:
		return one(WordLargestOf, f), f
	case SmallestOf:
		return one(WordSmallestOf, f), f
	case SpreadOf:
		spread := f
		if f.Signed {
			spread.most = new(big.Rat).Add(f.most, f.most)
			spread = spread.sized()
		}
		spread.Signed, spread.Unit = false, f.Unit.RiseUnit()
		parts := append(one(WordLargestOf, f), lit("−"))
		return append(append(parts, one(WordSmallestOf, f)...), result(spread, false)...), spread
	}
	sum := f
	sum.most = new(big.Rat).Mul(f.most, big.NewRat(int64(max(n, 1)), 1))
	sum = sum.sized()
	parts := one(WordSumOf, sum)
	if n <= fewBoxes && (len(it.Marks) > 1 || !p.given(it.Marks[0]).Summed) {
		parts = append(append([]Part{word(WordSum)}, p.each(it.Marks)...), result(sum, false)...)
	}
	if it.Kind == SumOf {
		return parts, sum
	}
	mean, rounded := p.divided(sum, max(n, 1))
	parts = append(parts, lit("÷\u00a0"+strconv.Itoa(n)))
	return append(parts, result(mean, rounded)...), mean
}

// together counts the readings of several marks and gives a box that takes any of
// them.
func (p *pen) together(marks []Mark) (n int, box Box) {
	for i, m := range marks {
		g := p.given(m)
		n += g.Boxes
		if i == 0 {
			box = g.Box
			continue
		}
		if g.Box.Unit != box.Unit || (g.Box.Form == Fraction) != (box.Form == Fraction) {
			p.fail(string(marks[0]) + " is in " + box.Unit.Text() + " and " + string(m) + " in " + g.Box.Unit.Text() + ": they are not taken together by hand")
		}
		box.Before, box.After = max(box.Before, g.Box.Before), max(box.After, g.Box.After)
		box.Denominator, box.Signed = max(box.Denominator, g.Box.Denominator), box.Signed || g.Box.Signed
	}
	return n, box
}

// names lists marks, with "and" between them.
func names(marks []Mark) []Part {
	var out []Part
	for i, m := range marks {
		if i > 0 {
			out = append(out, word(WordAnd))
		}
		out = append(out, Part{Text: string(m), Mark: m})
	}
	return out
}

// each writes every reading of the marks with a box of its own and plus between.
func (p *pen) each(marks []Mark) []Part {
	var out []Part
	for _, m := range marks {
		g := p.given(m)
		for i := range g.Boxes {
			if len(out) > 0 {
				out = append(out, lit("+"))
			}
			if i == 0 {
				out = append(out, Part{Text: string(m), Mark: m})
			}
			out = append(out, Part{Blank: BlankReading, Mark: m, Index: i + 1, Box: g.Box})
		}
	}
	return out
}

// WholeOf is the Index of a blank that takes one number made of all readings, the
// largest, the smallest or the sum of them: a number below zero, a different one
// for each word.
func WholeOf(w Word) int { return -1 - slices.Index(wholeWords, w) }

var wholeWords = []Word{WordLargestOf, WordSmallestOf, WordSumOf}

// notByHand says why a fraction is not multiplied or divided on paper.
func (f figure) notByHand(how string) string {
	if f.Unit == units.Turn {
		return "a fraction of a turn is not " + how + " by hand: record to 0.01 turn"
	}
	return "a fraction of an inch is not " + how + " by hand: measure in decimals of an inch"
}
