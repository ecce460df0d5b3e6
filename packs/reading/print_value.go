package reading

import (
	"matchmark/packs/units"
)

// words tells a value in a line. A sum of several is told by its ladder; the line
// says only that it is worked out.
func (v *Value) words() []Part {
	if v.constant() {
		unit := units.None
		v.each(func(it *Item) {
			if it.Kind == Size && unit == units.None {
				unit = it.Size.Unit
			}
		})
		return []Part{lit(quantity(v.sum(), unit).Print())}
	}
	if len(v.Terms) > 1 || v.Terms[0].Item.Kind == Bracket {
		return []Part{word(WordWorkedOut)}
	}
	t := &v.Terms[0]
	of := t.Item.words()
	switch t.By {
	case ByNumber:
		return append([]Part{lit(t.Number.Print() + "\u00a0×")}, of...)
	case ByPercent:
		return said(WordOf, []Part{lit(t.Number.Print() + "\u00a0%")}, of)
	case ByHalf:
		return said(WordHalfOf, of)
	}
	return of
}

// words tells an item in a line.
func (it *Item) words() []Part {
	switch it.Kind {
	case Size:
		return []Part{lit(it.Size.Print())}
	case Reading:
		return []Part{lit(string(it.Marks[0]))}
	case Found:
		return []Part{word(WordAsFound)}
	case Bracket:
		if sum, ok := it.Value.signs(); ok {
			return []Part{lit("(" + sum + ")")}
		}
		return []Part{word(WordWorkedOut)}
	case Rate:
		of, size := it.Of.words(), []Part{lit(it.Size.Print())}
		switch {
		case of[0].Word == WordWorkedOut:
			return of // how stands on its ladder
		case it.PerMark != "":
			return said(WordForEach, size, []Part{{Text: string(it.PerMark), Mark: it.PerMark}}, of)
		}
		return said(WordInEach, size, []Part{lit(it.PerUnit.Print())}, of)
	}
	return said(manyOf[it.Kind], listed(it.Marks, func(m Mark) Part { return lit(string(m)) }))
}

// signs writes a sum that is told by signs alone: D1 − D2; ok is false where it takes
// words, as a mean.
func (v *Value) signs() (text string, ok bool) {
	for i, t := range v.Terms {
		switch {
		case t.Minus:
			text += "\u00a0− "
		case i > 0:
			text += "\u00a0+ "
		}
		if t.By == ByNumber {
			text += t.Number.Print() + "\u00a0×\u00a0"
		}
		switch {
		case t.By == ByPercent, t.By == ByHalf:
			return "", false
		case t.Item.Kind == Size:
			text += t.Item.Size.Print()
		case t.Item.Kind == Reading:
			text += string(t.Item.Marks[0])
		default:
			return "", false
		}
	}
	return text, true
}

// listed joins marks, each written by one.
func listed(marks []Mark, one func(Mark) Part) []Part {
	var out []Part
	for i, m := range marks {
		if i == 0 {
			out = []Part{one(m)}
			continue
		}
		out = said(WordAnd, out, []Part{one(m)})
	}
	return out
}
