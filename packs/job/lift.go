package job

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/lift"
	"matchmark/packs/source"
	"matchmark/packs/units"
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
	for _, leg := range l.Result.Legs { // of two hooks the one that is used less may carry more
		x = max(x, float64(leg.High))
	}
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

// Computed reports whether the lift has figures.
func (l *Lift) Computed() bool { return l.Result != nil || l.HandResult != nil }

// Cautions are those of the calculation, none where there is no result.
func (l *Lift) Cautions() []lift.Caution {
	switch {
	case l.HandResult != nil:
		return l.HandResult.Cautions
	case l.Result != nil:
		return l.Result.Cautions
	}
	return nil
}

// Reasons are why the lift must not be made by its sheet: why it cannot be computed,
// what is not known of it, and what is overloaded, out of reach or out of level. None
// for a lift that may be made.
func (l *Lift) Reasons(t source.Tongue) []string {
	var out []string
	for _, p := range l.Because {
		out = append(out, p.In(t))
	}
	if l.Result != nil {
		for _, no := range l.Result.Unanswered {
			out = append(out, no.In(l.PaperUnits(t)))
		}
	}
	for _, c := range l.Cautions() {
		if c.Stop {
			out = append(out, c.In(l.PaperUnits(t)))
		}
	}
	if l.Floor != nil && l.Floor.Used > 1 {
		says := units.Said(t, "it presses %s on the floor of %s, which carries %s")
		out = append(out, fmt.Sprintf(says, l.Print(l.Floor.Pressure.Up()), l.LayDown.Mark, l.LayDown.Floor))
	}
	return out
}

// HasTag reports whether a component is a piece of gear, which has a tag with its
// number: not a lug of the load, an end of a bar, or the bridle as a whole.
func (l *Lift) HasTag(c lift.Component) bool {
	switch field, _, _ := strings.Cut(c.Field, "["); field {
	case "picks", "load.maypress", "bar.ends", "bar.toplugs", "bar.maypress", "bar.maybend":
		return false
	case "legs", "toplegs":
		return strings.Contains(c.Field, "].")
	}
	return true
}

// Points are what the legs take hold of on the load and has a rating, each once.
func (l *Lift) Points() []lift.LiftingPoint {
	var out []lift.LiftingPoint
	for _, k := range l.Plan.Picks {
		if k.Point != nil && !slices.Contains(out, *k.Point) {
			out = append(out, *k.Point)
		}
	}
	return out
}

// Units are those in which the lift is told: the units in which it is written.
func (l *Lift) Units() lift.Units {
	return lift.Units{Pounds: l.PoundsUsed, Inches: l.InchesUsed, Fahrenheit: l.Fahrenheit}
}

// PaperUnits are the same for paper, in its language.
func (l *Lift) PaperUnits(t units.Tongue) lift.Units {
	u := l.Units()
	u.Paper, u.Tongue = true, t
	return u
}

// Print words an amount for paper in the units of the lift. Its side has been chosen
// where it was worded: loads up, what may be carried and what is left down.
func (l *Lift) Print(w lift.Words) string { return w.In(l.PaperUnits(nil)) }

// WeightUnit is the unit in which masses and pulls are told.
func (l *Lift) WeightUnit() string {
	if l.PoundsUsed {
		return units.Pound.Print()
	}
	return units.Kilogram.Print()
}

// LengthUnit is the unit in which lengths are told.
func (l *Lift) LengthUnit() string {
	if l.InchesUsed {
		return units.Inch.Print()
	}
	return units.Millimetre.Print()
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
	Because    []source.Problem

	Size           bool         // the outline of the plan is the box that the load fills
	Gear           []LiftedGear // each piece once, in the order of the components
	Takes          []string     // what each leg takes hold of
	Trial          lift.Mm
	LayDown        *Spot
	Floor          *lift.FloorResult
	Supports, Crew []string
	// Where it stops and is looked at besides the usual places: at the trial lift in its
	// place, going up out of it, coming down into it.
	TrialStops, Stops, StopsIn []string
	Steps                      []*Step // that make the lift, in the order of work
	PoundsUsed, InchesUsed     bool
	Fahrenheit                 bool
}

// UpendedOn names the leg from which the load hangs upright where two hooks turn it, empty
// where they do not, or where no leg is known.
func (l *Lift) UpendedOn() string {
	t := l.Plan.Turn
	if t == nil || t.Upper < 0 || t.Upper >= len(l.Plan.Legs) {
		return ""
	}
	return l.Plan.Legs[t.Upper].Name
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

// TakenOffBy reports whether a step takes off something that hangs on the lift, or takes out
// again what was fitted for a while.
func (l *Lift) TakenOffBy(st *Step) bool { return l.carriesOne(st.Remove) || l.carriesOne(st.TakeOut) }

// PutOnBy reports whether a step puts on something that hangs on the lift, for good or for a
// while.
func (l *Lift) PutOnBy(st *Step) bool { return l.carriesOne(st.Fit) || l.carriesOne(st.ForNow) }

// MovedBy reports whether a step takes off or puts on something that hangs on the lift.
func (l *Lift) MovedBy(st *Step) bool { return l.TakenOffBy(st) || l.PutOnBy(st) }

// carriesOne reports whether one of some moves is of something that hangs on the lift.
func (l *Lift) carriesOne(ms []*Move) bool {
	return slices.ContainsFunc(ms, func(m *Move) bool { return l.Carries(m.Part) })
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
