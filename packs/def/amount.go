package def

import (
	"strings"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// How much may stand behind a key
//
// A key whose example is one amount takes more than nothing: a part weighs something, an
// instrument has a smallest step. The table says at a key where nothing is as good (noneOrMore),
// where less than nothing is (anySign), as at places along an axis, and where the example only
// looks like an amount (freeText): a size that may be a catalogue number. A temperature has any
// sign. What is far finer or larger than is met on machines that are taken apart by hand is
// asked about: a point or a unit may have slipped (common practice, no source).

// AmountCodes are the codes of amounts that a key does not take, whatever it is for.
var AmountCodes = []string{"less-than-none", "beyond-machines"}

// A bound says which amounts a key takes.
type bound uint8

const (
	overNone   bound = iota // more than nothing
	noneOrOver              // nothing or more
	anyAmount               // less than nothing as well
	noAmount                // words, though the example looks like an amount
)

// noneOrMore says that nothing is an amount of a key like any other.
func (k key[T]) noneOrMore() key[T] { k.least = noneOrOver; return k }

// anySign says that a key takes amounts of any sign: places, and limits, which are read elsewhere.
func (k key[T]) anySign() key[T] { k.least = anyAmount; return k }

// freeText says that a key takes words, whatever its example looks like.
func (k key[T]) freeText() key[T] { k.least = noAmount; return k }

// oneAmount is an example of one amount alone, or of several in a list.
var oneAmount = phrase.Of(`^\[?-?[0-9./]+( ?[^0-9, ]+)?(, -?[0-9./]+ ?[^0-9, ]+)*\]?$`)

// takesAmount reports whether one amount stands behind a key.
func (e *entry) takesAmount() bool {
	switch {
	case e.least == noAmount:
		return false
	case e.form == decimalForm:
		return true
	case e.form == textForm, e.form == varyingForm, e.form == listForm:
		return e.allowed == nil && oneAmount.MatchString(e.example)
	}
	return false
}

// takesWords are the words of the reference for what a key takes at the least; none of a
// temperature, which has any sign.
func (e *entry) takesWords() string {
	if q, err := units.ParseQuantity(e.example); err == nil && q.Unit.Dimension() == units.Temperature {
		return ""
	}
	return [...]string{overNone: ", more than 0", noneOrOver: ", 0 or more", anyAmount: ""}[e.least]
}

// leadingNumber is the number that an amount begins with.
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
	example := "for example " + e.name + ": " + e.blank()
	if err == nil && q.Unit != units.None {
		example = "for example " + e.name + ": … " + q.Unit.Text()
	}
	switch d := q.Unit.Dimension(); {
	case err == nil && d == units.Temperature:
	case e.least != anyAmount && below && !none:
		r.add(t.At, "less-than-none", e.name+" is "+quote(t.Value)+", and less than nothing it cannot be", example)
		return
	case e.least == overNone && none:
		r.add(t.At, "less-than-none", e.name+" is "+quote(t.Value)+", which is nothing", example, "or leave "+e.name+": out")
		return
	}
	if err == nil && q.Number.Sign() != 0 && beyond(q) {
		r.warn(t.At, "beyond-machines", e.name+" is "+quote(t.Value)+", which is met on no machine: a slipped point, or another unit?", example)
	}
}

// A metSpan is from where to where amounts of one dimension are met.
type metSpan struct{ least, most string }

// met are the spans of what is met on machines, the finest step of an instrument and the length
// of a coil of cable counted in, with room to spare at both ends.
var met = map[units.Dimension]metSpan{
	units.Length: {"0.00000001 mm", "100000 m"}, units.Mass: {"0.0001 g", "100000 t"}, units.Force: {"0.000001 N", "1000000 kN"}, units.Torque: {"0.000001 N·m", "1000000000 N·m"},
	units.Pressure: {"0.000000001 kPa", "100000 MPa"}, units.Time: {"0.0001 s", "1000000 h"}, units.Power: {"0.001 W", "10000000 kW"}, units.Angle: {"0.0000001°", "36000000°"},
	units.Temperature: {"", "10000 °C"}, units.Rise: {"", "10000 C rise"}, units.Area: {"0.000001 mm2", "1000000 m2"}, units.Volume: {"0.000000001 m3", "1000000000 m3"}, units.Ratio: {"0.000001 %", "1000000 %"}, units.Speed: {"0.000001 mm/s", "1000000 mm/s"},
	units.Resistance: {"0.0001 microhm", "10000 teraohm"}, units.Current: {"0.000001 µA", "1000 kA"}, units.Voltage: {"0.0001 mV", "2000 kV"}, units.Frequency: {"0.0001 Hz", "1000000000 Hz"},
	units.Rotation: {"0.0001 rpm", "1000000 rpm"}, units.Flow: {"0.000001 l/h", "1000000 m3/h"},
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
