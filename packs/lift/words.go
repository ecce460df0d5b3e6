package lift

import (
	"fmt"
	"strings"

	"matchmark/packs/units"
)

// Units are the units in which amounts are worded: those in which the lift is
// written. The zero Units are kilograms, kN/m², millimetres and degrees Celsius.
type Units struct {
	Pounds, Inches, Fahrenheit bool
	// Paper writes for paper: number and unit held together, a true minus sign.
	Paper bool
	// Tongue has the language of the sentences; nil is English.
	Tongue units.Tongue
}

// of gives the unit in which an amount of a unit is worded.
func (u Units) of(unit units.Unit) units.Unit {
	switch {
	case unit == units.Kilogram && u.Pounds:
		return units.Pound
	case unit == units.Kilopascal && u.Pounds:
		return units.PoundPerSquareFoot
	case unit == units.Millimetre && u.Inches:
		return units.Inch
	case unit == units.Celsius && u.Fahrenheit:
		return units.Fahrenheit
	}
	return unit
}

// Words are an amount and the side to which it is rounded when it is put into the
// unit in which it is told. An amount that a person gave has none: it is quoted.
type Words struct {
	amount float64
	unit   units.Unit
	to     units.Rounding // Up or Down; Nearest for a size and for what was given
	fine   bool           // as fine as a person writes it
	// decimals are those of an amount that has one unit only; nil for all others.
	decimals *int
}

// Fine words the amount as fine as a person writes it, on the side chosen: a tenth of
// a kilogram, a pound or a millimetre, a thousandth of an inch.
func (w Words) Fine() Words { w.fine = true; return w }

const noNumber = "no number"

// String words the amount in kilograms, millimetres or degrees Celsius.
func (w Words) String() string { return w.In(Units{}) }

// In words the amount in the units of a lift.
func (w Words) In(u Units) string {
	q, ok := w.quantity(u)
	if !ok {
		return noNumber
	}
	var text string
	switch rounded := w.round(q); {
	case u.Paper && w.decimals == nil:
		text = rounded.Print()
	case u.Paper:
		text = units.ForPaper(rounded.Text())
	default:
		text = rounded.Text()
	}
	// What stands on a floor is told in the unit of the floor's plate.
	return strings.Replace(text, units.Kilopascal.Text(), "kN/m²", 1)
}

// quantity gives the amount in the unit in which it is told. ok is false for what is no
// ordinary number.
func (w Words) quantity(u Units) (q units.Quantity, ok bool) {
	q, ok = units.Computed(w.amount, w.unit)
	to := u.of(w.unit)
	if !ok || to == w.unit {
		return q, ok
	}
	q, err := q.Convert(to)
	if err != nil {
		return q, false
	}
	// What was typed as 320 lb comes back as 320 lb, and is not rounded up to 321.
	x, _ := q.Number.Rat().Float64()
	return units.Computed(x, to)
}

// round leaves as many decimals as a rigger reads off a scale or a tape.
func (w Words) round(q units.Quantity) units.Quantity {
	switch {
	case w.decimals != nil:
		return q.Round(*w.decimals, w.to)
	case w.fine:
		return fine(q, w.to)
	}
	switch q.Unit {
	case units.Millimetre, units.Celsius, units.Fahrenheit:
		return q.Round(0, w.to)
	case units.Inch, units.Kilopascal:
		return q.Round(1, w.to)
	}
	tenths := q.Round(1, w.to)
	if tenths.Number.Abs().Cmp(units.Whole(100)) < 0 {
		return tenths
	}
	return q.Round(0, w.to)
}

// fine leaves a tenth, of an inch a thousandth, and finer where that would leave
// nothing; noughts at the end are dropped.
func fine(q units.Quantity, to units.Rounding) units.Quantity {
	decimals := 1
	if q.Unit == units.Inch {
		decimals = 3
	}
	r := q.Round(decimals, to)
	for ; r.Number.Sign() == 0 && q.Number.Sign() != 0 && decimals < 12; decimals++ {
		r = q.Round(decimals+1, to)
	}
	for d := r.Number.Decimals(); d > 0 && r.Number.Cmp(r.Number.Round(d-1, units.Nearest)) == 0; d-- {
		r = r.Round(d-1, units.Nearest)
	}
	return r
}

// A phrase is a sentence with the amounts that stand in it, which are worded when it
// is known in which units.
type phrase struct {
	format string
	args   []any
}

func say(format string, args ...any) phrase { return phrase{format, args} }

func (p phrase) String() string { return p.in(Units{}) }

func (p phrase) in(u Units) string {
	args := make([]any, len(p.args))
	for i, a := range p.args {
		switch x := a.(type) {
		case phrase:
			args[i] = x.in(u)
		case Words:
			args[i] = x.In(u)
		case interface{ Given() Words }: // a Degree too
			args[i] = x.Given().In(u)
		case string: // a fixed word, or a name that a person gave
			args[i] = units.Said(u.Tongue, x)
		case float64:
			args[i] = u.figure(x)
		default:
			args[i] = a
		}
	}
	return fmt.Sprintf(units.Said(u.Tongue, p.format), args...)
}

// figure is a plain number, with the decimal mark for paper.
func (u Units) figure(x float64) any {
	if u.Paper {
		return units.Figure(x)
	}
	return x
}

// given is an amount whose unit is named, as a person wrote it.
func given(amount float64, unit string) any {
	switch unit {
	case "kg":
		return Kg(amount)
	case "mm":
		return Mm(amount)
	case "kN/m²":
		return Kilopascal(amount)
	}
	return say("%g %s", amount, unit)
}
