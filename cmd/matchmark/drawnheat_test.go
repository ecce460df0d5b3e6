package main

import (
	"fmt"
	"slices"
	"strings"

	"pgregory.net/rapid"
)

// drawnHeat is the text of a definition with one heat.
func drawnHeat(t *rapid.T) string {
	inch := rapid.Bool().Draw(t, "inch")
	length := func(name string, low, high int) string {
		v := rapid.IntRange(low, high).Draw(t, name)
		if inch {
			return fmt.Sprintf("%.2f in", float64(v)/25.4)
		}
		return fmt.Sprintf("%d mm", v)
	}
	fine := func(name string, low, high float64) string {
		v := rapid.Float64Range(low, high).Draw(t, name)
		if inch {
			return fmt.Sprintf("%.4f in", v/25.4)
		}
		return fmt.Sprintf("%.3f mm", v)
	}
	degrees := func(name string, low, high int) string {
		v := rapid.IntRange(low, high).Draw(t, name)
		if inch {
			return fmt.Sprintf("%d °F", v*9/5+32)
		}
		return fmt.Sprintf("%d °C", v)
	}
	d := rapid.IntRange(60, 160).Draw(t, "diameter")
	diameter, outside := fmt.Sprintf("%d mm", d), fmt.Sprintf("%d mm", d*rapid.IntRange(140, 200).Draw(t, "wall")/100)
	if inch {
		diameter, outside = fmt.Sprintf("%.2f in", float64(d)/25.4), fmt.Sprintf("%.2f in", float64(d)*1.7/25.4)
	}
	least, greatest := fine("least", 0.0003*float64(d), 0.0004*float64(d)), fine("greatest", 0.0005*float64(d), 0.0008*float64(d))
	least, _, _ = strings.Cut(least, " ")
	parts := []string{
		"    what: Hub", "    interference: " + least + " to " + greatest, "    diameter: " + diameter,
		"    hub: {part: hub, material: carbon steel, outside: " + outside + ", length: " + length("length", 60, 150) + ", at-most: " + degrees("most", 230, 300) + ", source: site rule, yield: 400 MPa}",
		"    shaft: {part: shaft, material: carbon steel, behind: " + length("behind", 300, 700) + ", yield: 350 MPa}",
		"    neighbours: [{what: Cover, away: " + length("away", 60, 200) + ", at-most: " + degrees("near", 110, 140) + ", source: site rule, kept-cool: wet cloth}]",
		"    grip: {holding: 0.12, pulling: 0.24, smoothing: none, decided-by: works engineer, because: dry and clean steel}",
	}
	if rapid.Bool().Draw(t, "works") {
		parts = append(parts, fmt.Sprintf("    at-work: {coldest: %s, hottest: %s, hub-over: 3 C rise, rpm: %d}", degrees("coldest", 0, 15), degrees("hottest", 30, 70), rapid.IntRange(100, 1800).Draw(t, "rpm")))
	}
	if rapid.Bool().Draw(t, "pulled") {
		parts = append(parts, "    pull: {by: torch, clearance: "+fine("clearance", 0.01, 0.03)+", longest: 15 min, puller: Three-arm puller, shield: split sheet}")
	}
	on := "    put-on: {by: oven, oven: " + degrees("oven", 190, 220) + ", clearance: " + fine("on", 0.04, 0.08) + "}"
	if rapid.Bool().Draw(t, "chilled") {
		on = "    put-on: {by: induction, chill: dry ice, coolant: 20 kg, room: 4000 m3, clearance: " + fine("on", 0.02, 0.05) + "}"
	}
	parts = append(parts, on)
	steps := []string{"  - {step: off, do: Draw the hub off., remove: [hub], into: bench}", "  - {step: back, do: Put it on., fit: [hub], heat: [H1]}"}
	if slices.ContainsFunc(parts, func(p string) bool { return strings.HasPrefix(p, "    pull:") }) {
		steps[0] = "  - {step: off, do: Draw the hub off., remove: [hub], into: bench, heat: [H1], permit: [hot-work]}"
	}
	return "pack: 1\nequipment: {tag: P-03, name: Pump}\njob: {number: WO-1, title: Hub, revision: A, issued: 2026-03-02}\n" +
		"parts:\n  shaft: {name: Shaft}\n  hub: {name: Hub}\npermits:\n  hot-work: {what: Hot work permit}\nheats:\n  H1:\n" +
		strings.Join(parts, "\n") + "\nsteps:\n" + strings.Join(steps, "\n") + "\n"
}
