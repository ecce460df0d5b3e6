package heat

import (
	"fmt"
	"math"
	"strings"

	"matchmark/packs/units"
)

// Words of refusals, warnings and assumptions in the units of the job.
//
// A saying keeps its figures with their types, so that one and the same message can
// be written in millimetres and °C or in inches and °F. A figure that must be reached
// is rounded up, one that must not be passed or is promised is rounded down, all
// others to the nearest.

// Units is how a message writes its figures; the zero value is metric.
type Units struct {
	Inch       bool // lengths in inches, forces in lbf, stresses in psi
	Fahrenheit bool
	Tongue     units.Tongue // the language; nil is English
}

// A saying is a message with its figures.
type saying struct {
	format string
	args   []any
}

func say(format string, args ...any) saying { return saying{format, args} }

// in writes the message; figures take the verb %v, and bring their unit.
func (s saying) in(u Units) string {
	if len(s.args) == 0 {
		return units.Said(u.Tongue, s.format)
	}
	args := make([]any, len(s.args))
	for i, a := range s.args {
		args[i] = u.write(a)
	}
	return fmt.Sprintf(units.Said(u.Tongue, s.format), args...)
}

// A fine length is an interference, an opening or a clearance.
type fine Mm

// A minutes is a time told in minutes.
type minutes Second

// A directed figure is rounded to one side.
type directed struct {
	figure any
	round  units.Rounding
}

// up is for a figure that must be reached, down for one that must not be passed or
// is promised.
func up(figure any) directed   { return directed{figure, units.Up} }
func down(figure any) directed { return directed{figure, units.Down} }

// A form is how a kind of figure is written: worked out in one unit, told in metric or
// in the other, each with its decimals and its name.
type form struct {
	in          units.Unit
	metric, own units.Unit
	md, od      int // decimals; -2 for full hundreds
	m, o        string
	fahrenheit  bool // the other unit comes with °F, not with inches
}

var (
	fineForm   = form{units.Millimetre, units.Millimetre, units.Inch, 3, 4, "mm", "in", false}
	lengthForm = form{units.Millimetre, units.Millimetre, units.Inch, 1, 2, "mm", "in", false}
	pointForm  = form{units.Celsius, units.Celsius, units.Fahrenheit, 0, 0, "°C", "°F", true}
	riseForm   = form{units.KelvinRise, units.KelvinRise, units.FahrenheitRise, 0, 0, "K", "F°", true}
	forceForm  = form{units.Newton, units.Kilonewton, units.PoundForce, 0, -2, "kN", "lbf", false}
	stressForm = form{units.Megapascal, units.Megapascal, units.PSI, 0, -2, "MPa", "psi", false}
	powerForm  = form{units.Watt, units.Kilowatt, units.Kilowatt, 1, 1, "kW", "kW", false}
	secondForm = form{units.Second, units.Second, units.Second, 0, 0, "s", "s", false}
	minuteForm = form{units.Second, units.Minute, units.Minute, 0, 0, "min", "min", false}
)

// write turns a figure into words, on paper with the decimal mark; what is no figure stays
// as it is.
func (u Units) write(a any) any {
	text, ok := u.figure(a)
	switch {
	case ok && u.Tongue != nil:
		return units.ForPaper(text)
	case ok:
		return text
	}
	switch v := a.(type) {
	case saying:
		return v.in(u)
	case float64: // a number without unit
		if u.Tongue != nil {
			return units.Figure(v)
		}
	case string: // a fixed word, or a name that a person gave
		return units.Said(u.Tongue, v)
	}
	return a
}

// figure writes a figure with its unit; ok is false for what is none.
func (u Units) figure(a any) (text string, ok bool) {
	round := units.Nearest
	if d, ok := a.(directed); ok {
		a, round = d.figure, d.round
	}
	switch v := a.(type) {
	case fine:
		return u.form(float64(v), fineForm, round), true
	case Mm:
		return u.form(float64(v), lengthForm, round), true
	case Celsius:
		return u.form(float64(v), pointForm, round), true
	case KelvinRise:
		return u.form(float64(v), riseForm, round), true
	case Newton:
		return u.form(float64(v), forceForm, round), true
	case MPa:
		return u.form(float64(v), stressForm, round), true
	case Watt:
		return u.form(float64(v), powerForm, round), true
	case Second:
		return u.form(float64(v), secondForm, round), true
	case minutes:
		return u.form(float64(v), minuteForm, round), true
	case Conductance:
		return decimals(float64(v), 0, round) + " W/m²K", true
	}
	return "", false
}

// form writes a figure in its form.
func (u Units) form(v float64, f form, round units.Rounding) string {
	to, n, name := f.metric, f.md, f.m
	if f.fahrenheit && u.Fahrenheit || !f.fahrenheit && u.Inch {
		to, n, name = f.own, f.od, f.o
	}
	q, ok := units.ComputedAs(v, f.in, to)
	if !ok {
		return fmt.Sprint(v) + " " + f.m
	}
	return plain(q.Number, n, round) + " " + name
}

// decimals writes a number that has no unit here with so many decimals.
func decimals(v float64, n int, round units.Rounding) string {
	q, ok := units.Computed(v, units.None)
	if !ok {
		return fmt.Sprint(v)
	}
	return plain(q.Number, n, round)
}

// plain writes a number with so many decimals, -2 for full hundreds. A value that has
// decimals and would read as none is written with three figures.
func plain(x units.Number, n int, round units.Rounding) string {
	if n < 0 {
		hundred := units.Whole(100)
		return x.Quo(hundred).Round(0, round).Mul(hundred).Text()
	}
	if f, _ := x.Rat().Float64(); n >= 1 && f != 0 && math.Abs(f) < math.Pow(10, float64(-n)) {
		n = 2 - int(math.Floor(math.Log10(math.Abs(f))))
	}
	s := x.Round(n, round).Text()
	if n == 1 {
		s = strings.TrimSuffix(s, ".0")
	}
	return s
}
