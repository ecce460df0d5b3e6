package main

import (
	"fmt"
	"strings"

	"pgregory.net/rapid"
)

// A liftDraw writes a definition with one lift, its numbers by chance.
type liftDraw struct {
	*rapid.T
	strings.Builder
	pounds, inches bool
}

// kg and mm draw an amount and write it in the units of the lift.
func (d *liftDraw) kg(low, high float64, name string) string {
	x := rapid.Float64Range(low, high).Draw(d.T, name)
	if d.pounds {
		return fmt.Sprintf("%.3f lb", x/0.45359237)
	}
	return fmt.Sprintf("%.3f kg", x)
}

func (d *liftDraw) mm(low, high float64, name string) string {
	return d.fixed(rapid.Float64Range(low, high).Draw(d.T, name))
}

// fixed writes a length.
func (d *liftDraw) fixed(x float64) string {
	if d.inches {
		return fmt.Sprintf("%.4f in", x/25.4)
	}
	return fmt.Sprintf("%.3f mm", x)
}

func (d *liftDraw) line(format string, args ...any) { fmt.Fprintf(d, format+"\n", args...) }

// drawnLift draws one.
func drawnLift(t *rapid.T) string {
	d := &liftDraw{T: t, pounds: rapid.Bool().Draw(t, "pounds"), inches: rapid.Bool().Draw(t, "inches")}
	basis := rapid.SampledFrom([]string{"EN", "US"}).Draw(t, "basis")
	rig := rapid.SampledFrom([]string{"bridle", "spreader", "beam"}).Draw(t, "rig")
	half := rapid.Float64Range(400, 900).Draw(t, "half")
	d.line("pack: 1\nequipment: {tag: P-1, name: Pump}\njob: {number: WO-1, revision: A, issued: 2026-05-04, title: Lift}")
	d.line("lay-down: {Y1: {what: Floor, floor: 20 kN/m2}}\ngear:")
	d.line("  sling: {what: Chain sling, kind: chain, rated: %s, mass: %s}", d.kg(300, 4000, "sling"), d.kg(1, 9, "sling mass"))
	d.line("  shackle: {what: Shackle, kind: shackle, rated: %s, mass: %s}", d.kg(300, 4000, "shackle"), d.kg(1, 3, "shackle mass"))
	d.line("  bar: {what: Bar, kind: %s, rated: %s, mass: %s, length: %s%s}", map[bool]string{true: "beam", false: "spreader"}[rig == "beam"],
		d.kg(800, 4000, "bar"), d.kg(20, 90, "bar mass"), d.fixed(2*half), map[string]string{"beam": ", rise: " + d.fixed(300)}[rig])
	d.line("cranes: {c: {what: Crane, rated: %s, block: %s, high-hook: %s}}", d.kg(1000, 9000, "crane"), d.kg(10, 90, "block"), d.mm(7000, 9000, "hook"))
	d.line("lifts:\n  L1:\n    what: Load\n    rig: %s\n    origin: middle\n    mass: %s\n    mass-from: weighed\n    mass-source: scale\n    mass-within: %s", rig, d.kg(60, 2500, "mass"), d.kg(1, 9, "within"))
	d.line("    centre: [%s, %s, %s]", d.mm(-90, 90, "x"), d.fixed(0), d.mm(-500, -300, "z"))
	d.line("    centre-within: [%s, %s, %s]", d.mm(1, 20, "dx"), d.mm(1, 5, "dy"), d.mm(1, 20, "dz"))
	d.line("    size: {from: [%s, %s, %s], to: [%s, %s, %s]}", d.fixed(-950), d.fixed(-500), d.mm(-900, -600, "low"), d.fixed(950), d.fixed(500), d.fixed(50))
	d.line("    ends: {A: {point: [%s, %s, %s]}, B: {point: [%s, %s, %s]}}\n    rated-by: %s", d.fixed(-930), d.fixed(0), d.fixed(-200), d.fixed(930), d.fixed(0), d.fixed(-200), basis)
	d.line("    lifting-points: {lug: {rated: %s, flattest: 30°, source: drawing 7}}\n    legs:", d.kg(300, 3000, "lug"))
	length := ""
	if rig != "bridle" {
		length = ", length: " + d.mm(900, 1500, "drop")
	}
	for i, name := range []string{"A", "B"} {
		at := half * float64(2*i-1)
		d.line("      %s: {pick: [%s, %s, %s], takes: lug, sling: sling, hitch: straight, gear: [shackle]%s}", name, d.fixed(at), d.fixed(0), d.fixed(0), length)
	}
	switch rig {
	case "bridle":
		d.line("    hook-height: %s", d.mm(900, 2500, "hook height"))
	case "spreader":
		d.line("    top-legs: {C: {sling: sling, hitch: straight}, D: {sling: sling, hitch: straight}}\n    aim: %d°\n    bar: bar", rapid.IntRange(40, 70).Draw(t, "aim"))
	default:
		d.line("    bar: bar")
	}
	d.line("    leg-error: %s\n    max-tilt: 15°\n    decided-by: R. Ashdown\n    because: drawn\n    crane: c\n    pass-over: %s\n    stack: %s", d.mm(1, 9, "leg error"), d.mm(500, 1500, "pass over"), d.mm(100, 400, "stack"))
	d.line("    lay-down: Y1\n    footing: {pieces: 2, length: %s, width: %s, most: 60 %%}\n    crew: [person in charge]\nsteps:\n  - {step: all, do: Lift it., lift: [L1]}", d.mm(800, 1300, "foot"), d.mm(200, 400, "wide"))
	return d.String()
}
