package main

import (
	"fmt"
	"math"
	"os"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"pgregory.net/rapid"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/packs/units"
	"matchmark/templates"
)

// A side is the side to which a figure of a lift is printed.
type side int

const (
	atLeast side = iota // loads, shares used, tilts, heights needed
	atMost              // ratings, what is left, angles of legs
	nearest             // places and lengths that are made
)

// sides are the sides of the fields of a lift that are not loads, by their names. Common
// practice, no source: loads and what is needed up, what may be carried and what is left
// down; the flatter leg pulls more, so its angle goes down.
var sides = map[string]side{
	"Rated": atMost, "Allowed": atMost, "MayCarry": atMost, "Team": atMost, "Ends": atMost, "TopLugs": atMost, "MayPress": atMost, "MovingBlock": atMost,
	"UpperBlock": atMost, "Rope": atMost, "Low": atMost, "Spare": atMost, "Angle": atMost, "Flattest": atMost, "CriticalAt": atMost, "High": atLeast,
	"X": nearest, "Y": nearest, "Z": nearest, "Length": nearest, "Shorten": nearest, "Bail": nearest,
}

// An exact is one figure of a lift as it was worked out, in the unit in which it is
// printed.
type exact struct {
	path  string
	value float64
	side  side
}

// exacts lists all figures of a lift by the unit in which they are printed. The factors
// are those of NIST SP 811, appendix B.8.
func exacts(l *job.Lift) map[string][]exact {
	out := map[string][]exact{}
	kg, mm := 1.0, 1.0
	if l.PoundsUsed {
		kg = 1 / 0.45359237
	}
	if l.InchesUsed {
		mm = 1 / 25.4
	}
	add := func(path, unit string, v float64, s side) { out[unit] = append(out[unit], exact{path, v, s}) }
	book := func(path, name string, v float64, kind reflect.Type) {
		s := sides[name]
		if strings.Contains(path, "CoGTolerance") {
			s = atLeast
		}
		switch kind {
		case reflect.TypeFor[lift.Kg]():
			add(path, l.WeightUnit(), v*kg, s)
		case reflect.TypeFor[lift.Mm]():
			add(path, l.LengthUnit(), v*mm, s)
		case reflect.TypeFor[lift.Degree]():
			add(path, "°", v, s)
		case reflect.TypeFor[lift.Ratio]():
			add(path, "%", 100*v, s)
		case reflect.TypeFor[lift.Kilopascal]():
			if l.PoundsUsed {
				add(path, "lb/ft²", v*1000/(0.45359237*9.80665/(0.3048*0.3048)), s)
			} else {
				add(path, "kN/m²", v, s)
			}
		}
	}
	var walk func(path, name string, v reflect.Value)
	walk = func(path, name string, v reflect.Value) {
		switch v.Kind() {
		case reflect.Pointer:
			if !v.IsNil() {
				walk(path, name, v.Elem())
			}
		case reflect.Struct:
			if f, ok := v.Interface().(lift.Figure); ok {
				// A working is told in kilograms and millimetres, each figure to its own side.
				add(path, f.Unit, float64(f.Amount), map[units.Rounding]side{units.Up: atLeast, units.Down: atMost, units.Nearest: nearest}[f.Toward])
			}
			for i := range v.NumField() {
				if f := v.Type().Field(i); f.IsExported() {
					walk(path+"."+f.Name, f.Name, v.Field(i))
				}
			}
		case reflect.Slice, reflect.Array:
			for i := range v.Len() {
				walk(fmt.Sprintf("%s[%d]", path, i), name, v.Index(i))
			}
		case reflect.Float64:
			book(path, name, v.Float(), v.Type())
		}
	}
	for _, x := range []struct {
		name string
		v    any
	}{{"plan", l.Plan}, {"result", l.Result}, {"hands", l.HandPlan}, {"shares", l.HandResult}, {"floor", l.Floor}, {"body", l.Body}, {"trial", l.Trial}} {
		walk(x.name, strings.ToUpper(x.name[:1])+x.name[1:], reflect.ValueOf(x.v))
	}
	// What the author wrote is printed as it is.
	own := append(slices.Clone(l.Stops), l.Note)
	if l.LayDown != nil {
		own = append(own, l.LayDown.Floor)
	}
	for _, a := range printedAmounts(strings.Join(own, " ")) {
		add("as written", a.unit, a.value, nearest)
	}
	load := l.Load()
	book("heaviest", "", float64(load.Mass+load.MassTolerance), reflect.TypeFor[lift.Kg]())
	// The picture has the distances of the picks from the plumb line.
	scene := lift.Scene{}
	if l.Result != nil {
		scene = l.Result.Drawing
		book("press on the bar", "", float64(l.Result.Press)*float64(l.Result.Dynamic), reflect.TypeFor[lift.Kg]())
	}
	for _, p := range scene.Picks {
		book("distance", "X", math.Abs(float64(p.X-scene.CoG.X)), reflect.TypeFor[lift.Mm]())
		book("distance", "Y", math.Abs(float64(p.Y-scene.CoG.Y)), reflect.TypeFor[lift.Mm]())
	}
	return out
}

// constants are amounts on a lift sheet that are no figures of the lift.
var constants = regexp.MustCompile(`60° is the aim|under 45°|to 45° from vertical|over 45° to 60° from vertical|off its axis|off line|angle from the bolt axis [0-9.]+°`)

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
		good, near := false, ""
		for _, x := range known[a.unit] {
			off, slack := a.value-x.value, 1e-9*math.Abs(x.value)+1e-7
			if math.Abs(off) > a.step+slack {
				continue
			}
			near += fmt.Sprintf(" %s %.6f", x.path, x.value)
			switch x.side {
			case atLeast:
				good = good || off >= -slack
			case atMost:
				good = good || off <= slack
			default:
				good = good || math.Abs(off) <= a.step/2+slack
			}
		}
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
	for _, f := range liftFiles(t) {
		jb, pack := loadedLift(t, f)
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
	faces := pdf.NewFaces()
	seen := 0
	rapid.Check(t, func(t *rapid.T) {
		text := drawnLift(t)
		jb, problems := packs.Load(fstest.MapFS{"x.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "x.yaml"})
		pack, misfits := templates.Compose(jb, templates.Options{Paper: layout.Letter, Draft: problems.Errors() > 0}, faces, problems)
		if len(misfits) > 0 {
			t.Fatalf("%v\n%s", misfits, text)
		}
		l := jb.Lifts[0]
		if !l.Computed() {
			t.Fatalf("no figures: %v\n%s", problems, text)
		}
		seen += checkFigures(t, text, l, liftText(pack, l))
	})
	if seen < 1000 {
		t.Errorf("only %d amounts were looked at", seen)
	}
}

// drawnLift writes a definition with one lift, its numbers by chance.
func drawnLift(t *rapid.T) string {
	pounds, inches := rapid.Bool().Draw(t, "pounds"), rapid.Bool().Draw(t, "inches")
	kg := func(low, high float64, name string) string {
		x := rapid.Float64Range(low, high).Draw(t, name)
		if pounds {
			return fmt.Sprintf("%.3f lb", x/0.45359237)
		}
		return fmt.Sprintf("%.3f kg", x)
	}
	mm := func(low, high float64, name string) string {
		x := rapid.Float64Range(low, high).Draw(t, name)
		if inches {
			return fmt.Sprintf("%.4f in", x/25.4)
		}
		return fmt.Sprintf("%.3f mm", x)
	}
	fixed := func(x float64) string { return mm(x, x, "fixed") }
	basis := rapid.SampledFrom([]string{"EN", "US"}).Draw(t, "basis")
	rig := rapid.SampledFrom([]string{"bridle", "spreader", "beam"}).Draw(t, "rig")
	half := rapid.Float64Range(400, 900).Draw(t, "half")
	var b strings.Builder
	line := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
	line("pack: 1\nequipment: {tag: P-1, name: Pump}\njob: {number: WO-1, revision: A, issued: 2026-05-04, title: Lift}")
	line("lay-down: {Y1: {what: Floor, floor: 20 kN/m2}}\ngear:")
	line("  sling: {what: Chain sling, kind: chain, rated: %s, mass: %s}", kg(300, 4000, "sling"), kg(1, 9, "sling mass"))
	line("  shackle: {what: Shackle, kind: shackle, rated: %s, mass: %s}", kg(300, 4000, "shackle"), kg(1, 3, "shackle mass"))
	line("  bar: {what: Bar, kind: %s, rated: %s, mass: %s, length: %s%s}", map[bool]string{true: "beam", false: "spreader"}[rig == "beam"],
		kg(800, 4000, "bar"), kg(20, 90, "bar mass"), fixed(2*half), map[string]string{"beam": ", rise: " + fixed(300)}[rig])
	line("cranes: {c: {what: Crane, rated: %s, block: %s, high-hook: %s}}", kg(1000, 9000, "crane"), kg(10, 90, "block"), mm(7000, 9000, "hook"))
	line("lifts:\n  L1:\n    what: Load\n    rig: %s\n    origin: middle\n    mass: %s\n    mass-from: weighed\n    mass-source: scale\n    mass-within: %s", rig, kg(60, 2500, "mass"), kg(1, 9, "within"))
	line("    centre: [%s, %s, %s]", mm(-90, 90, "x"), fixed(0), mm(-500, -300, "z"))
	line("    centre-within: [%s, %s, %s]", mm(1, 20, "dx"), mm(1, 5, "dy"), mm(1, 20, "dz"))
	line("    size: {from: [%s, %s, %s], to: [%s, %s, %s]}", fixed(-950), fixed(-500), mm(-900, -600, "low"), fixed(950), fixed(500), fixed(50))
	line("    ends: {A: {point: [%s, %s, %s]}, B: {point: [%s, %s, %s]}}\n    rated-by: %s", fixed(-930), fixed(0), fixed(-200), fixed(930), fixed(0), fixed(-200), basis)
	line("    lifting-points: {lug: {rated: %s, flattest: 30°, source: drawing 7}}\n    legs:", kg(300, 3000, "lug"))
	length := ""
	if rig != "bridle" {
		length = ", length: " + mm(900, 1500, "drop")
	}
	for i, name := range []string{"A", "B"} {
		at := half * float64(2*i-1)
		line("      %s: {pick: [%s, %s, %s], takes: lug, sling: sling, hitch: straight, gear: [shackle]%s}", name, fixed(at), fixed(0), fixed(0), length)
	}
	switch rig {
	case "bridle":
		line("    hook-height: %s", mm(900, 2500, "hook height"))
	case "spreader":
		line("    top-legs: {C: {sling: sling, hitch: straight}, D: {sling: sling, hitch: straight}}\n    aim: %d°\n    bar: bar", rapid.IntRange(40, 70).Draw(t, "aim"))
	default:
		line("    bar: bar")
	}
	line("    leg-error: %s\n    max-tilt: 15°\n    decided-by: R. Ashdown\n    because: drawn\n    crane: c\n    pass-over: %s\n    stack: %s", mm(1, 9, "leg error"), mm(500, 1500, "pass over"), mm(100, 400, "stack"))
	line("    lay-down: Y1\n    footing: {pieces: 2, length: %s, width: %s, most: 60 %%}\n    crew: [person in charge]\nsteps:\n  - {step: all, do: Lift it., lift: [L1]}", mm(800, 1300, "foot"), mm(200, 400, "wide"))
	return b.String()
}

// loadedLift loads and composes a definition of the project.
func loadedLift(t *testing.T, file string) (*job.Job, *templates.Pack) {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	jb, problems := packs.Load(fstest.MapFS{"x.yaml": {Data: data}}, packs.Inputs{Definition: "x.yaml"})
	pack, misfits := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), problems)
	if problems.Errors() > 0 || len(misfits) > 0 {
		t.Fatalf("%s: %v %v", file, problems, misfits)
	}
	return jb, pack
}
