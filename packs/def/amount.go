package def

import (
	"strings"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// How much may stand behind a key
//
// A key whose example is one amount takes more than nothing: a part weighs something, a step
// takes time, an instrument has a smallest step. The table says at a key where nothing is as
// good (noneOrMore), or where less than nothing is (anySign), as at places along an axis. A
// temperature has any sign. Nothing here is finer or larger than what is met on machines that
// are taken apart by hand: a point or a unit has slipped (common practice, no source).

// AmountCodes are the codes of amounts that a key does not take, whatever it is for.
var AmountCodes = []string{"less-than-none", "beyond-machines"}

// A bound says which amounts a key takes.
type bound uint8

const (
	overNone   bound = iota // more than nothing
	noneOrOver              // nothing or more
	anyAmount               // less than nothing as well
)

// noneOrMore says that nothing is an amount of a key like any other.
func (k key[T]) noneOrMore() key[T] { k.least = noneOrOver; return k }

// anySign says that a key takes amounts of any sign: places, and limits, which are read elsewhere.
func (k key[T]) anySign() key[T] { k.least = anyAmount; return k }

// oneAmount is an example of one amount alone, or of several in a list.
var oneAmount = phrase.Of(`^\[?-?[0-9./]+( ?[^0-9, ]+)?(, -?[0-9./]+ ?[^0-9, ]+)*\]?$`)

// takesAmount reports whether one amount stands behind a key.
func (e *entry) takesAmount() bool {
	switch e.form {
	case decimalForm:
		return true
	case textForm, varyingForm, listForm:
		return e.allowed == nil && oneAmount.MatchString(e.example)
	}
	return false
}

// leading is the number that an amount begins with.
var leadingNumber = phrase.Of(`^[-+−]?[0-9][0-9./]*(?:\s|$|°)`)

// amount tells of an amount that is nothing, or less, behind a key that takes none such, and of
// one beyond all machines. What is no amount is left to who reads it.
func (r *reader) amount(e *entry, t source.Text) {
	number := strings.TrimSpace(leadingNumber.FindString(t.Value))
	if number == "" || strings.Contains(t.Value, " to ") {
		return
	}
	q, err := units.ParseQuantity(t.Value)
	below := strings.ContainsAny(number[:1], "-−")
	none := strings.Trim(number, "+-−0./°") == ""
	switch d := q.Unit.Dimension(); {
	case err == nil && d == units.Temperature:
	case e.least != anyAmount && below && !none:
		r.add(t.At, "less-than-none", e.name+" is "+quote(t.Value)+", and less than nothing it cannot be", "for example "+e.name+": "+e.blank())
		return
	case e.least == overNone && none:
		r.add(t.At, "less-than-none", e.name+" is "+quote(t.Value)+", which is nothing", "for example "+e.name+": "+e.blank(), "or leave "+e.name+": out")
		return
	}
	if err == nil && q.Number.Sign() != 0 && beyond(q) {
		r.add(t.At, "beyond-machines", e.name+" is "+quote(t.Value)+", which no machine has: a slipped point, or another unit?", "for example "+e.name+": "+e.blank())
	}
}

// A metSpan is from where to where amounts of one dimension are met.
type metSpan struct{ least, most string }

// met are the spans of what is met on machines.
var met = map[units.Dimension]metSpan{
	units.Length: {"0.00001 mm", "1000 m"}, units.Mass: {"0.1 g", "5000 t"}, units.Force: {"0.001 N", "100000 kN"}, units.Torque: {"0.001 N·m", "100000000 N·m"},
	units.Pressure: {"0.001 kPa", "10000 MPa"}, units.Time: {"0.1 s", "10000 h"}, units.Power: {"1 W", "100000 kW"}, units.Angle: {"0.001°", "3600°"},
	units.Temperature: {"", "3000 °C"}, units.Rise: {"", "3000 C rise"}, units.Area: {"0.01 mm2", "1000 m2"}, units.Volume: {"0.000001 m3", "1000000 m3"}, units.Ratio: {"0.001 %", "10000 %"}, units.Speed: {"0.001 mm/s", "1000 mm/s"},
}

// beyond reports whether an amount is none that is met on machines.
func beyond(q units.Quantity) bool {
	s, known := met[q.Unit.Dimension()]
	if !known {
		return false
	}
	q.Number = q.Number.Abs()
	compare := func(end string) (int, bool) {
		e, err := units.ParseQuantity(end)
		if err != nil {
			return 0, false
		}
		c, err := q.Cmp(e)
		return c, err == nil
	}
	if c, ok := compare(s.most); ok && c > 0 {
		return true
	}
	c, ok := compare(s.least)
	return ok && c < 0
}
