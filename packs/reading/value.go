package reading

import (
	"math/big"
	"slices"

	"matchmark/packs/units"
)

// A Value is a sum of terms: 12.5 mm, D1 - D2 + 0.20 mm, 70 % of D9.
type Value struct{ Terms []Term }

// A Term is one summand. Minus tells that it is taken off.
type Term struct {
	Minus bool
	By    Factor
	// Number is what By multiplies with, as typed: 0.5 for 0.5 x D9, 70 for
	// 70 % of D9. It is 0 for ByNothing and ByHalf.
	Number units.Number
	Item   Item
}

// A Factor is how a term multiplies its item.
type Factor uint8

const (
	// ByNothing takes the item as it is.
	ByNothing Factor = iota
	// ByNumber multiplies by Number.
	ByNumber
	// ByPercent takes Number hundredths.
	ByPercent
	// ByHalf takes half.
	ByHalf
)

// An ItemKind is what an Item is.
type ItemKind uint8

const (
	// Size is a size of its own.
	Size ItemKind = iota
	// Reading is the reading of the one mark.
	Reading
	// Found is what was found here.
	Found
	// Bracket is a value in brackets.
	Bracket
	// Rate is Size for each PerUnit, or for each PerMark, of Of.
	Rate
	// MeanOf to SumOf take the readings of all the marks together.
	MeanOf
	// LargestOf is the largest of them.
	LargestOf
	// SmallestOf is the smallest of them.
	SmallestOf
	// SpreadOf is the largest less the smallest.
	SpreadOf
	// SumOf is their sum.
	SumOf
)

// An Item is what a term takes so many times.
type Item struct {
	Kind    ItemKind
	Size    units.Quantity // of Size and Rate
	PerUnit units.Unit     // of Rate, None where it is for each PerMark
	PerMark Mark           // of Rate: for each so much as this reading is, as for each diameter in a length
	Of      *Item          // of Rate
	Marks   []Mark         // of Reading one, of MeanOf to SumOf one or more
	Value   *Value         // of Bracket
}

// each calls f for the value's items, those inside brackets and rates too.
func (v *Value) each(f func(*Item)) {
	for i := range v.Terms {
		v.Terms[i].Item.each(f)
	}
}

func (it *Item) each(f func(*Item)) {
	f(it)
	if it.Of != nil {
		it.Of.each(f)
	}
	if it.PerMark != "" {
		f(&Item{Kind: Reading, Marks: []Mark{it.PerMark}})
	}
	if it.Value != nil {
		it.Value.each(f)
	}
}

// Marks lists the readings that the value needs, each once, as they come.
func (v *Value) Marks() []Mark { return v.appendMarks(nil) }

func (v *Value) appendMarks(out []Mark) []Mark {
	v.each(func(it *Item) {
		for _, m := range it.Marks {
			if !slices.Contains(out, m) {
				out = append(out, m)
			}
		}
	})
	return out
}

// Singles lists the readings that the value takes one at a time, not together with
// others as a mean.
func (v *Value) Singles() []Mark {
	var out []Mark
	v.each(func(it *Item) {
		if it.Kind == Reading && !slices.Contains(out, it.Marks[0]) {
			out = append(out, it.Marks[0])
		}
	})
	return out
}

// NeedsFound reports whether the value takes what was found in its own box.
func (v *Value) NeedsFound() bool { return v.needsFound() }

// JustFound reports whether the value is what was found and nothing else.
func (v *Value) JustFound() bool {
	return len(v.Terms) == 1 && v.Terms[0].By == ByNothing && v.Terms[0].Item.Kind == Found
}

func (v *Value) needsFound() bool {
	found := false
	v.each(func(it *Item) { found = found || it.Kind == Found })
	return found
}

// Share is how many hundredths of one reading the value is: 60 of 60 % of D10, 50 of
// half of D10; ok is false of any other value.
func (v *Value) Share() (percent units.Number, ok bool) {
	if len(v.Terms) != 1 || v.Terms[0].Minus || v.Terms[0].Item.Kind != Reading {
		return units.Number{}, false
	}
	switch t := v.Terms[0]; t.By {
	case ByPercent:
		return t.Number, true
	case ByHalf:
		return units.Whole(50), true
	case ByNumber:
		return t.Number.Mul(units.Whole(100)), true
	}
	return units.Number{}, false
}

// constant reports whether the value is made of sizes alone.
func (v *Value) constant() bool {
	all := true
	v.each(func(it *Item) { all = all && (it.Kind == Size || it.Kind == Bracket) })
	return all
}

// plain reports whether the value is one size and nothing else.
func (v *Value) plain() bool {
	return len(v.Terms) == 1 && v.Terms[0].By == ByNothing && v.Terms[0].Item.Kind == Size
}

// numbers lists the sizes that stand for themselves.
func (v *Value) numbers() []units.Number {
	var out []units.Number
	for _, t := range v.Terms {
		switch {
		case t.By != ByNothing:
		case t.Item.Kind == Size:
			out = append(out, t.Item.Size.Number)
		case t.Item.Kind == Bracket:
			out = append(out, t.Item.Value.numbers()...)
		}
	}
	return out
}

// sum works out a constant value.
func (v *Value) sum() units.Number {
	if v.plain() && !v.Terms[0].Minus {
		return v.Terms[0].Item.Size.Number // as typed
	}
	var total units.Number
	for _, t := range v.Terms {
		n := t.Item.Size.Number
		if t.Item.Kind == Bracket {
			n = t.Item.Value.sum()
		}
		n = t.multiply(n)
		if t.Minus {
			n = n.Neg()
		}
		total = total.Add(n)
	}
	return total
}

// multiply applies the factor of the term.
func (t *Term) multiply(n units.Number) units.Number {
	switch t.By {
	case ByNumber:
		return n.Mul(t.Number)
	case ByPercent:
		return n.Mul(t.Number).Quo(units.Whole(100))
	case ByHalf:
		return n.Mul(units.Exact(big.NewRat(1, 2), 1))
	}
	return n
}

// one makes a value of one size.
func one(n units.Number, u units.Unit) *Value {
	return &Value{Terms: []Term{{Item: Item{Kind: Size, Size: units.Quantity{Number: n, Unit: u}}}}}
}
