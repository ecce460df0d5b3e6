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
		whole := f.blank(BlankReading)
		whole.Mark, whole.Index = it.Marks[0], WholeOf(w)
		return append(said(w, names(it.Marks)), whole)
	}
	low, high, total := p.taken(it.Marks, n)
	switch it.Kind {
	case LargestOf:
		f.val = high
		return one(WordLargestOf, f), f
	case SmallestOf:
		f.val = low
		return one(WordSmallestOf, f), f
	case SpreadOf:
		spread := f.with((*big.Rat).Sub, high, low)
		if f.Signed {
			spread.most = new(big.Rat).Add(f.most, f.most)
			spread = spread.sized()
		}
		spread.Signed, spread.Unit = false, f.Unit.RiseUnit()
		largest, smallest := f, f
		largest.val, smallest.val = high, low
		parts := append(one(WordLargestOf, largest), lit("−"))
		return append(append(parts, one(WordSmallestOf, smallest)...), result(spread, false)...), spread
	}
	sum := f
	sum.val = total
	sum.most = new(big.Rat).Mul(f.most, big.NewRat(int64(max(n, 1)), 1))
	sum = sum.sized()
	parts := one(WordSumOf, sum)
	if n <= fewBoxes && (len(it.Marks) > 1 || !p.given(it.Marks[0]).Summed) {
		parts = append(append([]Part{word(WordTotal)}, p.each(it.Marks)...), result(sum, false)...)
	}
	if it.Kind == SumOf {
		return parts, sum
	}
	mean, rounded := p.divided(sum, max(n, 1))
	parts = append(parts, lit("÷\u00a0"+strconv.Itoa(n)))
	return append(parts, result(mean, rounded)...), mean
}

// taken gives the least and the largest of the n readings of several marks, and their
// sum; nil where one of them is not known.
func (p *pen) taken(marks []Mark, n int) (low, high, sum *big.Rat) {
	var all []*big.Rat
	for _, m := range marks {
		g := p.given(m)
		for i := range g.Boxes {
			v := g.nth(i)
			if v == nil {
				return nil, nil, nil
			}
			all = append(all, v)
		}
	}
	if len(all) == 0 || len(all) != n {
		return nil, nil, nil
	}
	low, high, sum = all[0], all[0], new(big.Rat)
	for _, v := range all {
		sum.Add(sum, v)
		if v.Cmp(low) < 0 {
			low = v
		}
		if v.Cmp(high) > 0 {
			high = v
		}
	}
	return low, high, sum
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
	return listed(marks, func(m Mark) Part { return Part{Text: string(m), Mark: m} })
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
			copied := figure{Box: g.Box, val: g.nth(i)}.blank(BlankReading)
			copied.Mark, copied.Index = m, i+1
			out = append(out, copied)
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
