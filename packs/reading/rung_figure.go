package reading

import (
	"math/big"

	"matchmark/packs/units"
)

// A figure is a number on the way: its box, and how large it can get, without
// sign.
type figure struct {
	Box
	most *big.Rat
	val  *big.Rat // what it is, nil where that is not known
}

// blank is the box of a figure with what stands in it.
func (f figure) blank(kind Blank) Part { return Part{Blank: kind, Box: f.Box, Value: f.value()} }

// value is the number as it is written into the box, nil if it is not known.
func (f figure) value() *units.Number {
	if f.val == nil {
		return nil
	}
	n := units.Exact(f.val, f.After)
	if f.Form == Fraction {
		n = units.Parts(f.val, f.Denominator)
	} else {
		n = n.Round(f.After, units.Nearest)
	}
	return &n
}

// written is the figure as it goes on from its box: rounded as that is, so that it may be
// a little larger than before. 1.5 times 3.9996, and that once more, is 10.000 in boxes.
func (f figure) written(rounded bool) figure {
	if !rounded {
		return f
	}
	if f.val != nil {
		f.val = f.value().Rat()
	}
	if f.Form != Fraction {
		f.most = units.Exact(f.most, f.After).Round(f.After, units.Up).Rat()
		f = f.sized()
	}
	return f
}

// with gives the figure a value worked out from those of two; none if one is not known.
func (f figure) with(op func(z, x, y *big.Rat) *big.Rat, a, b *big.Rat) figure {
	f.val = nil
	if a != nil && b != nil {
		f.val = op(new(big.Rat), a, b)
	}
	return f
}

// sized gives a figure with the digits before the point that it takes.
func (f figure) sized() figure {
	f.Before = units.Exact(f.most, 0).Figures()
	return f
}

// figureOf is what can be written into a box: nines in every place.
func figureOf(b Box) figure {
	ten := func(n int) *big.Int { return new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(n)), nil) }
	most := new(big.Rat).SetInt(ten(max(b.Before, 1)))
	return figure{Box: b, most: most.Sub(most, new(big.Rat).SetFrac(big.NewInt(1), ten(max(b.After, 0))))}
}

// result is the end of a line: the sign, the box, and whether it is rounded.
func result(f figure, rounded bool) []Part {
	out := []Part{lit("="), f.blank(BlankResult)}
	if rounded {
		out = append(out, word(WordRounded))
	}
	return out
}

// boxOf is the box that a size would have.
func boxOf(q units.Quantity) Box {
	b := Box{Before: q.Number.Figures(), After: q.Number.Decimals(), Signed: q.Number.Sign() < 0, Unit: q.Unit}
	if d := q.Number.Denominator(); d > 0 {
		b.Form, b.Denominator = Fraction, d
	}
	return b
}
