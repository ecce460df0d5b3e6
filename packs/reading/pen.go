package reading

import (
	"errors"
	"math/big"
	"strconv"

	"matchmark/packs/units"
)

// A pen writes a ladder line by line.
type pen struct {
	given   func(Mark) Given
	rungs   []Rung
	letters int
	err     error
}

func (p *pen) fail(text string) {
	if p.err == nil {
		p.err = errors.New(text)
	}
}

// sum writes the lines of one sum and gives what can come out.
func (p *pen) sum(v *Value) figure {
	if only := &v.Terms[0]; len(v.Terms) == 1 && only.By == ByNothing && only.Item.Kind == Bracket {
		return p.sum(only.Item.Value) // a bracket round the whole
	}
	names, inner := make([]string, len(v.Terms)), make([]figure, len(v.Terms))
	for i := range v.Terms {
		if b := v.Terms[i].Item.bracket(); b != nil {
			inner[i] = p.sum(b)
			names[i] = string(rune('a' + p.letters%26))
			p.letters++
			p.rungs[len(p.rungs)-1].Name = names[i]
		}
	}
	var total figure
	for i := range v.Terms {
		r := Rung{}
		switch {
		case i > 0 && v.Terms[i].Minus:
			r.Sign = Minus
		case i > 0:
			r.Sign = Plus
		}
		parts, f := p.term(&v.Terms[i], names[i], inner[i])
		r.Parts = parts
		if i == 0 {
			total = f
		} else {
			total = p.join(total, f, v.Terms[i].Minus)
		}
		p.rungs = append(p.rungs, r)
	}
	if len(v.Terms) > 1 {
		p.rungs = append(p.rungs, Rung{Sign: Equals, Parts: []Part{total.blank(BlankResult)}})
	}
	return total
}

// bracket is the value in brackets that an item is of, nil if it is of none.
func (it *Item) bracket() *Value {
	for it.Of != nil {
		it = it.Of
	}
	if it.Kind == Bracket {
		return it.Value
	}
	return nil
}

// join is what comes out of a sum or difference of two.
func (p *pen) join(a, b figure, minus bool) figure {
	if a.Unit.RiseUnit() != b.Unit.RiseUnit() {
		p.fail("one is in " + a.Unit.Text() + " and the other in " + b.Unit.Text() + ": a sum by hand takes one unit")
		return a
	}
	out := a.with((*big.Rat).Add, a.val, b.val)
	if minus {
		out = a.with((*big.Rat).Sub, a.val, b.val)
	}
	switch {
	case minus && a.Unit.Dimension() == units.Temperature && b.Unit == a.Unit:
		out.Unit = a.Unit.RiseUnit()
	case !minus && b.Unit.Dimension() == units.Temperature:
		out.Unit = b.Unit
	}
	if (a.Form == Fraction) != (b.Form == Fraction) {
		if a.After > 0 || b.After > 0 {
			p.fail("one is a fraction and the other a decimal: a sum by hand takes one form")
		}
		out.Form = Fraction
	}
	out.Denominator = max(a.Denominator, b.Denominator)
	out.After = max(a.After, b.After)
	out.Signed = a.Signed || b.Signed || minus
	switch {
	case !minus || a.Signed || b.Signed:
		out.most = new(big.Rat).Add(a.most, b.most)
	case b.most.Cmp(a.most) > 0:
		out.most = b.most
	}
	return out.sized()
}

// term writes the boxes of one term, the last of them that of the whole term.
func (p *pen) term(t *Term, name string, inner figure) ([]Part, figure) {
	parts, f := p.item(&t.Item, name, inner)
	var factor units.Number
	switch t.By {
	case ByNothing:
		return parts, f
	case ByHalf:
		f, _ = p.divided(f, 2)
		return append(append(parts, lit("÷\u00a02")), result(f, false)...), f
	case ByNumber:
		factor = t.Number
	case ByPercent:
		// 70 % is × 0.7.
		factor = units.Exact(t.Number.Quo(units.Whole(100)).Rat(), 0)
	}
	parts = append(parts, lit("×\u00a0"+factor.Print()))
	f, rounded := p.times(f, factor)
	return append(parts, result(f, rounded)...), f
}

// times is what comes out of a reading times a factor.
func (p *pen) times(f figure, factor units.Number) (out figure, rounded bool) {
	if f.Form == Fraction {
		p.fail(f.notByHand("multiplied"))
		return f, false
	}
	out = f
	out.After = f.After + factor.Decimals()
	if most := f.After + moreDecimals; out.After > most || factor.Denominator() > 0 {
		out.After, rounded = most, true
	}
	out.most = new(big.Rat).Mul(f.most, factor.Abs().Rat())
	out.Signed = f.Signed || factor.Sign() < 0
	out = out.with((*big.Rat).Mul, f.val, factor.Rat())
	return out.sized().written(rounded), rounded
}

// divided is what comes out of a reading divided by a small whole number.
func (p *pen) divided(f figure, n int) (out figure, rounded bool) {
	f.most = new(big.Rat).Quo(f.most, big.NewRat(int64(n), 1))
	f = f.with((*big.Rat).Quo, f.val, big.NewRat(int64(n), 1)).sized()
	if f.Form == Fraction {
		if n > 2 {
			p.fail(f.notByHand("divided"))
		}
		f.Denominator *= int64(n)
		return f, false
	}
	// One decimal more takes the half and the fifth exactly, and any other mean to
	// a tenth of what the instrument tells apart.
	f.After++
	rounded = n != 1 && n != 2 && n != 5 && n != 10
	return f.written(rounded), rounded
}

// item writes the boxes of what a factor stands before.
func (p *pen) item(it *Item, name string, inner figure) ([]Part, figure) {
	switch it.Kind {
	case Size:
		return []Part{lit(it.Size.Print())}, figure{Box: boxOf(it.Size), most: it.Size.Number.Abs().Rat(), val: it.Size.Number.Rat()}
	case Reading:
		g := p.given(it.Marks[0])
		if g.Boxes > 1 && !g.Once {
			p.fail(string(it.Marks[0]) + " has " + strconv.Itoa(g.Boxes) + " readings: write mean of " + string(it.Marks[0]) + ", or largest or smallest of it")
		}
		f := figureOf(g.Box)
		f.val = g.one()
		copied := f.blank(BlankReading)
		copied.Mark = it.Marks[0]
		return []Part{{Text: string(it.Marks[0]), Mark: it.Marks[0]}, copied}, f
	case Found:
		g := p.given("")
		f := figureOf(g.Box)
		f.val = g.one()
		return []Part{word(WordFound), f.blank(BlankFound)}, f
	case Bracket:
		return []Part{lit(name)}, inner
	case Rate:
		return p.rate(it, name, inner)
	}
	return p.many(it)
}

// rate writes a rate on a reading as that is written: 0.5 mm per m of a reading in
// mm is × 0.0005; per inch of one in mm, which has no end as a decimal, × 0.5 ÷ 25.4.
func (p *pen) rate(it *Item, name string, inner figure) ([]Part, figure) {
	parts, f := p.item(it.Of, name, inner)
	if it.PerMark != "" {
		return p.perReading(it, parts, f)
	}
	one, err := units.Quantity{Number: units.Whole(1), Unit: f.Unit}.Convert(it.PerUnit)
	if err != nil {
		p.fail(it.Size.Text() + " per " + it.PerUnit.Text() + " of a reading in " + f.Unit.Text() + ": " + err.Error())
		return parts, f
	}
	factor := units.Exact(it.Size.Number.Mul(one.Number).Rat(), 0)
	out, rounded := p.times(f, factor)
	if _, ends := factor.Rat().FloatPrec(); ends {
		parts = append(parts, lit("×\u00a0"+factor.Print()))
	} else {
		by := units.Exact(new(big.Rat).Inv(one.Number.Rat()), 0)
		parts = append(parts, lit("×\u00a0"+it.Size.Number.Print()), lit("÷\u00a0"+by.Print()))
		out.After, rounded = max(f.After, it.Size.Number.Decimals())+1, true
		out = out.with((*big.Rat).Mul, f.val, factor.Rat()).written(true)
	}
	out.Unit = it.Size.Unit
	return append(parts, result(out, rounded)...), out
}

// perReading writes a rate for each so much as another reading is: 0.002 in per D2 of
// D1 is D1 ÷ D2 × 0.002. The box has room for a D2 of one or more.
func (p *pen) perReading(it *Item, parts []Part, f figure) ([]Part, figure) {
	by, g := p.item(&Item{Kind: Reading, Marks: []Mark{it.PerMark}}, "", figure{})
	switch {
	case f.Form == Fraction || g.Form == Fraction:
		p.fail(f.notByHand("divided"))
	case f.Unit != g.Unit:
		p.fail(it.Size.Text() + " per " + string(it.PerMark) + ": one is in " + g.Unit.Text() + " and the other in " + f.Unit.Text() + ", and a person divides in one unit")
	}
	out := f
	out.most = new(big.Rat).Mul(f.most, it.Size.Number.Abs().Rat())
	out.After, out.Unit, out.Signed = it.Size.Number.Decimals()+1, it.Size.Unit, f.Signed || it.Size.Number.Sign() < 0
	if i := len(by) - 1; by[i].Index == 0 && p.given(it.PerMark).Boxes <= 1 {
		by[i].Index = 1 // its box says whose reading it takes
	}
	parts = append(append(parts, lit("÷")), by...)
	out = out.with((*big.Rat).Mul, f.val, it.Size.Number.Rat())
	if v := g.val; v == nil || v.Sign() <= 0 {
		out.val = nil
	} else {
		out = out.with((*big.Rat).Quo, out.val, v)
	}
	out = out.sized().written(true)
	return append(append(parts, lit("×\u00a0"+it.Size.Number.Print())), result(out, true)...), out
}
