package job

import (
	"matchmark/packs/lift"
	"matchmark/packs/source"
	"matchmark/packs/units"
	"math"
	"math/big"
	"slices"
	"strconv"
)

// Load is what is known of the load, however it is lifted.
func (l *Lift) Load() lift.Load { return l.Plan.Load }

// TakesOf is what a leg of the result takes hold of; empty for legs over a bar.
func (l *Lift) TakesOf(i int) string {
	if i -= len(l.Plan.TopLegs); i < 0 {
		return ""
	}
	return l.Takes[i]
}

// levelSlack is the tilt that nobody can see or measure, which counts as level.
const levelSlack lift.Degree = 0.05

// OutOfLevel reports whether a tilt has to be told.
func (l *Lift) OutOfLevel() bool { return l.Result.Tilt.Total >= levelSlack }

// LowSide names the side that hangs low, by the way in which the origin's axes run.
func (l *Lift) LowSide() string {
	t := l.Result.Tilt
	axis, way := "x", t.AlongX
	if math.Abs(float64(t.AlongY)) > math.Abs(float64(t.AlongX)) {
		axis, way = "y", t.AlongY
	}
	if way < 0 {
		return "\u2212" + axis
	}
	return "+" + axis
}

// EvenSplit reports whether four legs are counted otherwise than by an even split
// that the layout has.
func (l *Lift) EvenSplit() bool {
	legs := l.Result.Legs
	return len(legs) == 4 && legs[0].Even > 0 && l.Plan.Sharing == lift.TwoCarry
}

// LoadDigits is how many figures the load on the hook may have, with room for
// one that is heavier than thought.
func (l *Lift) LoadDigits() int {
	x := float64(l.Result.HookLoad)
	if l.PoundsUsed {
		x /= 0.45359237
	}
	return len(strconv.Itoa(int(2 * x)))
}

// Ends names the two ends at which the level is looked at: those of the machine, or
// the first and last pick.
func (l *Lift) Ends() []string {
	if s := l.Load().Span; s != nil {
		return []string{s.NameA, s.NameB}
	}
	picks := l.Plan.Picks
	if len(picks) < 2 {
		return nil
	}
	return []string{picks[0].Name, picks[len(picks)-1].Name}
}

// Weight prints a mass, or a tension as the weight of one, in the unit in which
// the mass of the lift is written: whole kilograms or pounds from 100 up, tenths
// below.
func (l *Lift) Weight(k lift.Kg) string {
	if l.PoundsUsed {
		return printed(float64(k), units.Kilogram, units.Pound)
	}
	return printed(float64(k), units.Kilogram, units.Kilogram)
}

// Length prints a length in whole millimetres, or in tenths of an inch where the
// lift is written in inches.
func (l *Lift) Length(m lift.Mm) string {
	if l.InchesUsed {
		return measured(float64(m), units.Millimetre, units.Inch).Round(1, units.Nearest).Print()
	}
	return measured(float64(m), units.Millimetre, units.Millimetre).Round(0, units.Nearest).Print()
}

// WeightUnit is the unit of Weight, LengthUnit that of Length.
func (l *Lift) WeightUnit() string {
	if l.PoundsUsed {
		return units.Pound.Print()
	}
	return units.Kilogram.Print()
}

// LengthUnit is the unit of Length.
func (l *Lift) LengthUnit() string {
	if l.InchesUsed {
		return units.Inch.Print()
	}
	return units.Millimetre.Print()
}

// measured is an amount worked out, in another unit.
func measured(x float64, from, to units.Unit) units.Quantity {
	q := units.Quantity{Number: units.Exact(new(big.Rat).SetFloat64(x), 0), Unit: from}
	q, err := q.Convert(to)
	if err != nil {
		panic(err) // both are units of one dimension
	}
	return q
}

// printed rounds to whole units from 100 up and to tenths below.
func printed(x float64, from, to units.Unit) string {
	q := measured(x, from, to)
	v, _ := q.Number.Rat().Float64()
	if math.Abs(v) >= 99.95 {
		return q.Round(0, units.Nearest).Print()
	}
	return q.Round(1, units.Nearest).Print()
}

// PressureText prints the load on the floor under the piece that carries most, in
// kN/m² or for a lift in pounds in lb/ft².
func (l *Lift) PressureText() string {
	if l.PoundsUsed {
		return printed(float64(l.Floor.Pressure), units.Kilopascal, units.PoundPerSquareFoot)
	}
	n := units.Exact(new(big.Rat).SetFloat64(float64(l.Floor.Pressure)), 0).Round(1, units.Nearest)
	return n.Print() + "\u00a0kN/m²"
}

// A Lift is one load that is lifted, worked out. Result, or HandResult for a lift
// by hand, is nil where it cannot be computed; Because then says why.
type Lift struct {
	At         source.Pos
	Mark, What string
	Parts      []*Part
	ByHand     bool

	Origin, MassSource, SignedPlan, Note string

	Plan       lift.Plan
	Result     *lift.Result
	HandPlan   lift.HandPlan
	HandResult *lift.HandResult
	Body       *lift.Body // where mass or centre of gravity come from sections
	Because    []string

	Size                   bool         // the outline of the plan is the box that the load fills
	Gear                   []LiftedGear // each piece once, in the order of the components
	Takes                  []string     // what each leg takes hold of
	Trial                  lift.Mm
	LayDown                *Spot
	Floor                  *lift.FloorResult
	Supports, Crew, Stops  []string
	Steps                  []*Step // that make the lift, in the order of work
	PoundsUsed, InchesUsed bool
}

// LiftedGear is one piece of gear in a lift and how many of its kind there are.
type LiftedGear struct {
	What string
	N    int
}

// Carries reports whether a part hangs on the lift: one of its parts, or a part of
// one of them. A lift that names no parts carries
// whatever is moved with it.
func (l *Lift) Carries(p *Part) bool {
	return len(l.Parts) == 0 || slices.ContainsFunc(l.Parts, func(q *Part) bool { return p == q || p.Within(q) })
}

// MovedBy reports whether a step takes off or puts back something that hangs on the
// lift.
func (l *Lift) MovedBy(st *Step) bool {
	carried := func(m *Move) bool { return l.Carries(m.Part) }
	return slices.ContainsFunc(st.Remove, carried) || slices.ContainsFunc(st.Fit, carried)
}

// NoBefore is the number of the last step above another that makes the lift, empty
// if none does: where a load was raised that hangs at that other step.
func (l *Lift) NoBefore(st *Step) string {
	no := ""
	for _, x := range l.Steps {
		if x.Index < st.Index {
			no = x.No
		}
	}
	return no
}
