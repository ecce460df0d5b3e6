package reading

import (
	"math/big"

	"matchmark/packs/units"
)

// Ladder gives the lines of boxes by which a person works the value out, inputs
// first; none for a value of sizes alone, and for "as found" by itself, which is
// one box. Brackets come first, each under a letter of its own. unitOf is as for
// Words.
func (v *Value) Ladder(unitOf func(Mark) units.Unit) [][]Part {
	if v.constant() || len(v.Terms) == 1 && v.Terms[0].By == ByNothing && v.Terms[0].Item.simple() {
		return nil
	}
	if only := &v.Terms[0]; len(v.Terms) == 1 && only.By == ByNothing && only.Item.Kind == Bracket {
		return only.Item.Value.Ladder(unitOf) // a bracket round the whole
	}
	l := ladder{unitOf: unitOf}
	l.value(v)
	return l.lines
}

// simple reports whether an item is one box and no sum.
func (it *Item) simple() bool { return it.Kind == Reading || it.Kind == Found }

// A ladder grows line by line.
type ladder struct {
	lines   [][]Part
	letters int
	unitOf  func(Mark) units.Unit
}

// value writes the lines of one sum.
func (l *ladder) value(v *Value) {
	names := make([]string, len(v.Terms))
	for i := range v.Terms {
		names[i] = l.brackets(&v.Terms[i].Item)
	}
	for i := range v.Terms {
		t := &v.Terms[i]
		var line []Part
		switch {
		case i > 0 && t.Minus:
			line = append(line, lit("−"))
		case i > 0:
			line = append(line, lit("+"))
		}
		line = append(line, l.item(&t.Item, names[i])...)
		switch t.By {
		case ByNumber:
			line = append(line, lit("×\u00a0"+t.Number.Print()))
		case ByPercent:
			// 70 % is × 0.70: two decimals more than the percentage has.
			line = append(line, lit("×\u00a0"+units.Exact(t.Number.Quo(units.Whole(100)).Rat(), t.Number.Decimals()+2).Print()))
		case ByHalf:
			line = append(line, lit("×\u00a00.5"))
		}
		if t.By != ByNothing && len(v.Terms) > 1 && t.Item.Kind != Size {
			line = append(line, lit("="), Part{Blank: BlankResult})
		}
		l.lines = append(l.lines, line)
	}
	l.result(v)
}

// result ends a sum: on a line of its own below several, behind a single one.
func (l *ladder) result(v *Value) {
	equals := []Part{lit("="), {Blank: BlankResult}}
	if len(v.Terms) > 1 {
		l.lines = append(l.lines, equals)
		return
	}
	last := len(l.lines) - 1
	l.lines[last] = append(l.lines[last], equals...)
}

// brackets writes the lines of a bracket inside an item and gives its letter.
func (l *ladder) brackets(it *Item) string {
	if it.Of != nil {
		return l.brackets(it.Of)
	}
	if it.Kind != Bracket {
		return ""
	}
	l.value(it.Value)
	name := string(rune('a' + l.letters%26))
	l.letters++
	last := len(l.lines) - 1
	l.lines[last] = append(l.lines[last], lit(name))
	return name
}

// item writes the boxes of one item.
func (l *ladder) item(it *Item, name string) []Part {
	switch it.Kind {
	case Size:
		return []Part{lit(it.Size.Print())}
	case Reading:
		return []Part{lit(string(it.Marks[0])), {Blank: BlankReading, Mark: it.Marks[0]}}
	case Found:
		return []Part{word(WordFound), {Blank: BlankFound}}
	case Bracket:
		return []Part{lit(name)}
	case Rate:
		return append(l.item(it.Of, name), l.rate(it)...)
	}
	out := []Part{word(manyOf[it.Kind])}
	for _, m := range it.Marks {
		out = append(out, lit(string(m)), Part{Blank: BlankReading, Mark: m})
	}
	return append(out, lit("="), Part{Blank: BlankResult})
}

// rate tells a rate as a factor on the reading as it is written: 0.5 mm per m of
// a reading in mm is × 0.5 ÷ 1000.
func (l *ladder) rate(it *Item) []Part {
	from := units.None
	switch {
	case it.Of.Kind == Size:
		from = it.Of.Size.Unit
	case l.unitOf != nil && len(it.Of.Marks) > 0:
		from = l.unitOf(it.Of.Marks[0])
	}
	by := lit("×\u00a0" + it.Size.Print())
	if from == it.PerUnit {
		return []Part{by}
	}
	one, err := units.Quantity{Number: units.Whole(1), Unit: from}.Convert(it.PerUnit)
	if from == units.None || err != nil {
		return []Part{word(WordToldIn), lit(it.PerUnit.Print()), by}
	}
	r := one.Number.Rat()
	if r.Cmp(big.NewRat(1, 1)) < 0 {
		return []Part{by, lit("÷\u00a0" + units.Exact(r.Inv(r), 0).Print())}
	}
	return []Part{by, lit("×\u00a0" + one.Number.Print())}
}
