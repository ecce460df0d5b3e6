package main

import (
	"fmt"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/packs/units"
	"matchmark/templates"
)

// sides are the sides of the fields of a lift that are not loads, by their names. Common
// practice, no source: loads and what is needed up, what may be carried and what is left
// down; the flatter leg pulls more, so its angle goes down.
var sides = map[string]side{
	"Rated": atMost, "Allowed": atMost, "MayCarry": atMost, "Team": atMost, "Ends": atMost, "TopLugs": atMost, "MayPress": atMost, "MovingBlock": atMost,
	"UpperBlock": atMost, "Rope": atMost, "Low": atMost, "Spare": atMost, "Angle": atMost, "Flattest": atMost, "CriticalAt": atMost, "High": atLeast,
	"X": eitherSide, "Y": eitherSide, "Z": eitherSide, "Length": eitherSide, "Shorten": eitherSide, "Bail": eitherSide,
	// Of a turn: where the hooks stand is gone to, the flatter pull is the worse one, the leg
	// is slack from the angle on and at most from FreeMost on.
	"Higher": eitherSide, "Apart": eitherSide, "Pull": atMost, "Free": atMost, "FreeLeast": atMost, "FreeMost": atLeast, "Against": atMost, "Lean": atLeast, "MostLean": atLeast,
}

// A ledger books the figures of one lift by the unit in which they are printed.
type ledger struct {
	l   *job.Lift
	out map[string][]exact
}

// exacts lists all figures of a lift by the unit in which they are printed.
func exacts(l *job.Lift) map[string][]exact {
	b := ledger{l, map[string][]exact{}}
	for _, x := range []struct {
		name string
		v    any
	}{{"plan", l.Plan}, {"result", l.Result}, {"hands", l.HandPlan}, {"shares", l.HandResult}, {"floor", l.Floor}, {"body", l.Body}, {"trial", l.Trial}} {
		b.walk(x.name, "", reflect.ValueOf(x.v))
	}
	b.derived()
	return b.out
}

// derived books what is printed and stands in no field.
func (b ledger) derived() {
	l := b.l
	// What the author wrote is printed as it is.
	own := append(slices.Concat(l.TrialStops, l.Stops, l.StopsIn), l.Note)
	if l.LayDown != nil {
		own = append(own, l.LayDown.Floor)
	}
	for _, a := range printedAmounts(strings.Join(own, " ")) {
		b.add("as written", a.unit, a.value, eitherSide)
	}
	b.book("heaviest", "", reflect.ValueOf(l.Load().Mass+l.Load().MassTolerance))
	if l.Result == nil {
		return
	}
	b.fromRules()
	b.book("press on the bar", "", reflect.ValueOf(l.Result.Press*lift.Kg(l.Result.Dynamic)))
	// The picture has the distances of the picks from the plumb line.
	scene := l.Result.Drawing
	for _, p := range scene.Picks {
		b.book("distance", "X", reflect.ValueOf(max(p.X-scene.CoG.X, scene.CoG.X-p.X)))
		b.book("distance", "Y", reflect.ValueOf(max(p.Y-scene.CoG.Y, scene.CoG.Y-p.Y)))
	}
}

// fromRules books the figures that a rule gives and that are printed with its source.
func (b ledger) fromRules() {
	p := b.l.Plan
	if p.MaxTilt > 2 { // GL Noble Denton 0027/ND rev 11, 5.3.2
		b.add("published tilt", "°", 2, eitherSide)
	}
	for _, leg := range slices.Concat(p.Legs, p.TopLegs) {
		if leg.Sling.Hitch == lift.Basket && (leg.Sling.Turns || p.Turn != nil) {
			b.add("heavier part of a basket that is turned: half of 1.35", "%", 67.5, atLeast)
		}
		for _, h := range leg.Gear {
			b.eyebolt(h)
		}
	}
	for _, h := range p.TopGear {
		b.eyebolt(h)
	}
}

// eyebolt books how far an eyebolt is in: 1.5 diameters or more, by a spacer of a sixteenth of
// it at most. WAC 296-155-56110(2)(c), DOE-STD-1090-96 12.4.
func (b ledger) eyebolt(h lift.Hardware) {
	if h.Thread <= 0 {
		return
	}
	for _, x := range []struct {
		of   float64
		name string
	}{{1.5, "High"}, {1.0 / 16, "Spare"}} { // a least and a most, by the side of their names
		b.book("thread", x.name, reflect.ValueOf(lift.Mm(x.of*float64(h.Thread))))
	}
}

func (b ledger) add(path, unit string, v float64, s side) {
	b.out[unit] = append(b.out[unit], exact{path, v, s})
}

// book adds one figure in the unit of its kind. The factors are those of NIST SP 811,
// appendix B.8.
func (b ledger) book(path, name string, v reflect.Value) {
	s, l := sides[name], b.l
	if strings.Contains(path, "CoGTolerance") {
		s = atLeast
	}
	switch x := v.Interface().(type) {
	case lift.Kg:
		if l.PoundsUsed {
			x /= 0.45359237
		}
		b.add(path, l.WeightUnit(), float64(x), s)
	case lift.Mm:
		if l.InchesUsed {
			x /= 25.4
		}
		b.add(path, l.LengthUnit(), float64(x), s)
	case lift.Degree:
		b.add(path, "°", float64(x), s)
	case lift.Ratio:
		b.add(path, "%", 100*float64(x), s)
	case lift.Kilopascal:
		if l.PoundsUsed {
			b.add(path, "lb/ft²", float64(x)*1000/(0.45359237*9.80665/(0.3048*0.3048)), s)
		} else {
			b.add(path, "kN/m²", float64(x), s)
		}
	}
}

// walk books every figure within a value.
func (b ledger) walk(path, name string, v reflect.Value) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			b.walk(path, name, v.Elem())
		}
	case reflect.Struct:
		if f, ok := v.Interface().(lift.Figure); ok {
			// A working is told in kilograms and millimetres, each figure to its own side.
			b.add(path, f.Unit, float64(f.Amount), map[units.Rounding]side{units.Up: atLeast, units.Down: atMost, units.Nearest: eitherSide}[f.Toward])
		}
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.IsExported() {
				b.walk(path+"."+f.Name, f.Name, v.Field(i))
			}
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			b.walk(fmt.Sprintf("%s[%d]", path, i), name, v.Index(i))
		}
	case reflect.Float64:
		b.book(path, name, v)
	}
}

// constants are amounts on a lift sheet that are no figures of the lift.
var constants = regexp.MustCompile(`60° is the aim|55 % in one|under 45°|to 45° from vertical|over 45° to 60° from vertical|off its axis|off line|angle from the bolt axis [0-9.]+°|more than 15 % or twisted by more than 10.0°`)

// withoutNames takes the names of gear out of a sheet, in which sizes stand.
func withoutNames(l *job.Lift, sheet string) string {
	names := []string{}
	if l.Result != nil {
		for _, c := range l.Result.Components {
			names = append(names, c.Name)
		}
	}
	// The longest first: one may be part of another.
	slices.SortFunc(names, func(a, b string) int { return len(b) - len(a) })
	for _, n := range names {
		sheet = strings.ReplaceAll(sheet, n, "")
	}
	return sheet
}

// checkFigures compares every amount on the sheet of a lift with what was worked out.
func checkFigures(t interface{ Errorf(string, ...any) }, where string, l *job.Lift, sheet string) int {
	text := constants.ReplaceAllString(withoutNames(l, sheet), "")
	known := exacts(l)
	n := 0
	for _, a := range printedAmounts(text) {
		if a.unit == "°C" || a.unit == "°F" {
			continue // the bands of the tables are whole degrees in °C
		}
		n++
		good, near := standsFor(a, known[a.unit])
		if !good {
			t.Errorf("%s: %s is printed as %s for%s", where, l.Mark, a.text, near)
		}
	}
	return n
}

// TestLiftFiguresOfTheProject: each amount on the lift sheets of the starters and the
// good definitions stands for a figure of the lift, on its safe side: printed were 908 kg
// for a pull of 908.3 kg and 2205 lb for a rating of 1 t.
func TestLiftFiguresOfTheProject(t *testing.T) {
	longTest(t)
	t.Parallel()
	n := 0
	for _, f := range ownWith(t, 8, "lifts") {
		jb, pack := composedFile(t, f, templates.Options{Paper: layout.A4})
		for _, l := range jb.Lifts {
			n += checkFigures(t, f, l, liftText(pack, l))
		}
	}
	if n < 400 {
		t.Errorf("only %d amounts were looked at", n)
	}
}

// TestLiftFiguresOfAnyLift: the same for lifts drawn by chance, in kilograms and
// millimetres, in pounds and inches, and in both at once.
func TestLiftFiguresOfAnyLift(t *testing.T) {
	t.Parallel()
	seen := 0
	rapid.Check(t, func(t *rapid.T) {
		text := drawnLift(t)
		d := drafted(text, layout.Letter)
		if len(d.misfits) > 0 {
			t.Fatalf("%v\n%s", d.misfits, text)
		}
		l := d.jb.Lifts[0]
		if !l.Computed() {
			t.Fatalf("no figures: %v\n%s", d.problems, text)
		}
		seen += checkFigures(t, text, l, liftText(d.pack, l))
	})
	if seen < 1000 {
		t.Errorf("only %d amounts were looked at", seen)
	}
}
