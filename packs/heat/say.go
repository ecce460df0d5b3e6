package heat

import (
	"fmt"
	"math"
	"strings"
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
		return s.format
	}
	args := make([]any, len(s.args))
	for i, a := range s.args {
		args[i] = u.write(a)
	}
	return fmt.Sprintf(s.format, args...)
}

// A fine length is an interference, an opening or a clearance.
type fine Mm

// A minutes is a time told in minutes.
type minutes Second

// A directed figure is rounded to one side.
type directed struct {
	figure any
	round  func(float64) float64
}

// up is for a figure that must be reached, down for one that must not be passed or
// is promised.
func up(figure any) directed   { return directed{figure, math.Ceil} }
func down(figure any) directed { return directed{figure, math.Floor} }

// write turns a figure into words; what is no figure stays as it is.
func (u Units) write(a any) any {
	round := math.Round
	if d, ok := a.(directed); ok {
		a, round = d.figure, d.round
	}
	choose := func(metric bool, m string, mv float64, md int, i string, iv float64, id int) string {
		if metric {
			return decimals(mv, md, round) + " " + m
		}
		return decimals(iv, id, round) + " " + i
	}
	switch v := a.(type) {
	case fine:
		return choose(!u.Inch, "mm", float64(v), 3, "in", float64(v)/25.4, 4)
	case Mm:
		return choose(!u.Inch, "mm", float64(v), 1, "in", float64(v)/25.4, 2)
	case Celsius:
		return choose(!u.Fahrenheit, "°C", float64(v), 0, "°F", float64(v)*9/5+32, 0)
	case KelvinRise:
		return choose(!u.Fahrenheit, "K", float64(v), 0, "F°", float64(v)*9/5, 0)
	case Newton:
		return choose(!u.Inch, "kN", float64(v)/1000, 0, "lbf", float64(v)/4.4482216152605, -2)
	case MPa:
		return choose(!u.Inch, "MPa", float64(v), 0, "psi", float64(v)/0.006894757293168, -2)
	case Watt:
		return decimals(float64(v)/1000, 1, round) + " kW"
	case Second:
		return decimals(float64(v), 0, round) + " s"
	case minutes:
		return decimals(float64(v)/60, 0, round) + " min"
	case Conductance:
		return decimals(float64(v), 0, round) + " W/m²K"
	case saying:
		return v.in(u)
	}
	return a
}

// decimals writes a number with so many decimals, -2 for full hundreds. What lies a
// hair beyond a step from counting in binary is on the step. A value that has decimals
// and would read as none is written with three figures.
func decimals(v float64, n int, round func(float64) float64) string {
	if n >= 1 && v != 0 && math.Abs(v) < math.Pow(10, float64(-n)) {
		n = 2 - int(math.Floor(math.Log10(math.Abs(v))))
	}
	step := math.Pow(10, float64(-n))
	x := v / step
	if near := math.Round(x); math.Abs(x-near) <= 1e-9*math.Max(1, math.Abs(x)) {
		x = near
	}
	s := fmt.Sprintf("%.*f", max(n, 0), round(x)*step)
	if n == 1 {
		s = strings.TrimSuffix(s, ".0")
	}
	return s
}
