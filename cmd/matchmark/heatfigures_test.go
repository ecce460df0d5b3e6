package main

import (
	"fmt"
	"math"
	"os"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"pgregory.net/rapid"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/fit"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/units"
	"matchmark/templates"
)

// heatSides are the sides of the figures of a heat by the struct and the field in which
// they stand; what is not named is printed as it was written, to the nearest. Common
// practice, no source: what is needed, loads or is reached up, what is held, is left or
// lasts down. The step is what the paper rounds to, in the unit of the field.
var heatSides = map[string]side{
	"Plan.Stays": atMost, "Plan.Loose": atMost, "Plan.HeatOn": atMost, "Plan.Levels": atMost, "Plan.Free": atLeast,
	"Plan.Skin": atLeast, "Plan.Bore": atLeast, "Plan.Seat": atLeast, "Plan.Into": atLeast,
	"Band.Least": atLeast, "Band.Most": atMost, "Band.LeastFree": atLeast, "Band.MostFree": atLeast, "Pace.Skin": atLeast,
	"Free.Opening": atLeast, "Free.Rise": atLeast, "Free.Hub": atLeast, "Wall.Difference": atLeast, "Wall.AtBore": atLeast, "Wall.AtSkin": atLeast, "Wall.Use": atLeast,
	"Warmed.Greatest": atLeast, "Warmed.IfStuck": atLeast, "Warmed.At": atLeast, "Warmed.IfStuckAt": atLeast,
	"Refitted.SetTo": atLeast, "Refitted.Room": atMost, "Refitted.Carry": atMost, "Refitted.Grips": atMost, "Refitted.GripsSoonest": atMost,
	"ColdFitted.SetTo": atLeast, "ColdFitted.Room": atMost, "ColdFitted.Carry": atMost, "ColdFitted.Grips": atMost, "ColdFitted.GripsSoonest": atMost,
	"Chilled.Shaft": atMost, "Chilled.Contraction": atMost, "Soaked.After": atLeast,
	"HotFit.SetTo": atLeast, "HotFit.Oven": atMost, "HotPull.PullsWith": atMost, "HotPull.Longest": atMost, "HeatRung.UpTo": atMost, "HeatRung.SetTo": atLeast, "Workable.Time": atLeast,
	"HeatFit.Least": atMost, "HeatFit.Greatest": atLeast, "HeatFit.Counted": atLeast, "HeatFit.Torque": atLeast, "Limit.At": atMost,
	"Contact.Pressure": atLeast, "Contact.HubEquivalent": atLeast, "Contact.ShaftEquivalent": atLeast, "Contact.HubUse": atLeast, "Contact.ShaftUse": atLeast,
	"Contact.Interference": atMost, "Air.Oxygen": atMost, "Air.Carbonic": atLeast, "Air.MostIce": atMost, "Air.MostNitrogen": atMost,
	"Hold.Axial": atMost, "Hold.Torque": atMost, "Pull.Axial": atLeast,
}

// A heatLedger books the figures of one heat by the unit in which they are printed.
type heatLedger struct {
	h   *job.Heat
	out map[string][]exact
}

func heatExacts(h *job.Heat) map[string][]exact {
	b := heatLedger{h, map[string][]exact{}}
	b.walk("heat", "Heat", "", reflect.ValueOf(*h))
	if h.LimitKnown() {
		c := heat.InCelsius
		if h.Fahrenheit {
			c = heat.InFahrenheit
		}
		b.book("crayon", nearest, h.Limit.Crayon(c))
	}
	b.book("cool enough to touch", nearest, heat.Celsius(40))
	for _, c := range heat.TemperColours() {
		b.book("colour", atMost, c.From)
	}
	if p := h.Pull; p != nil && p.Plan != nil {
		b.book("loose, the heat off", atMost, p.Plan.Loose-p.Plan.HeatOn)
		for _, w := range append(p.Plan.Working, p.Plan.Need.Working) {
			b.terms(w)
		}
	}
	if p := h.PutOn; p != nil && p.Plan != nil {
		b.terms(p.Plan.Need.Working)
	}
	if p := h.PutOn; p != nil && p.Cold != nil {
		b.terms(p.Cold.Working)
	}
	return b.out
}

func (b heatLedger) terms(w heat.Working) {
	for _, x := range w.Terms {
		to := map[units.Rounding]side{units.Up: atLeast, units.Down: atMost, units.Nearest: nearest}[x.Toward]
		b.add("working "+x.Symbol, x.Unit, float64(x.Value), to)
	}
}

func (b heatLedger) add(path, unit string, v float64, s side) {
	b.out[unit] = append(b.out[unit], exact{path, v, s})
}

// book adds one figure in the unit of its kind. The factors are those of NIST SP 811,
// appendix B.8.
func (b heatLedger) book(path string, s side, v any) {
	inch, fahrenheit := b.h.Inch, b.h.Fahrenheit
	either := func(metric, other string, use bool, v, w float64) {
		if use {
			b.add(path, other, w, s)
		} else {
			b.add(path, metric, v, s)
		}
	}
	switch x := v.(type) {
	case heat.Mm:
		either("mm", "in", inch, float64(x), float64(x)/25.4)
	case fit.Micron:
		either("mm", "in", inch, float64(x)/1000, float64(x)/25400)
	case heat.Celsius:
		either("°C", "°F", fahrenheit, float64(x), float64(x)*9/5+32)
	case fit.Celsius:
		either("°C", "°F", fahrenheit, float64(x), float64(x)*9/5+32)
	case heat.KelvinRise:
		either("°C", "°F", fahrenheit, float64(x), float64(x)*9/5)
	case heat.Newton:
		either("kN", "lbf", inch, float64(x)/1000, float64(x)/4.4482216152605)
	case fit.Newton:
		either("kN", "lbf", inch, float64(x)/1000, float64(x)/4.4482216152605)
	case fit.NewtonMetre:
		either("N·m", "lb-ft", inch, float64(x), float64(x)/1.3558179483314)
	case heat.MPa:
		either("MPa", "psi", inch, math.Abs(float64(x)), math.Abs(float64(x))/0.006894757293168)
	case fit.MPa:
		either("MPa", "psi", inch, math.Abs(float64(x)), math.Abs(float64(x))/0.006894757293168)
	case heat.Watt:
		b.add(path, "kW", float64(x)/1000, s)
	case heat.Second:
		b.add(path, "s", float64(x), s)
	case heat.Joule:
		b.add(path, "MJ", float64(x)/1e6, s)
	case heat.Percent:
		b.add(path, "%", float64(x), s)
	case heat.Number:
		b.add(path, "%", 100*float64(x), s)
	case fit.Ratio:
		b.add(path, "%", 100*float64(x), s)
	}
}

// walk books every figure within a value; owner is the struct in which a field stands.
func (b heatLedger) walk(path, owner, name string, v reflect.Value) {
	switch v.Kind() {
	case reflect.Pointer:
		// Not into the machine: parts, steps and dimensions have figures of their own.
		if _, own := map[string]bool{"Plan": true, "Refitted": true, "ColdFitted": true, "Pressed": true, "Work": true, "Service": true, "HotPull": true, "HotFit": true, "Soaked": true, "Air": true}[v.Type().Elem().Name()]; own && !v.IsNil() {
			b.walk(path, owner, name, v.Elem())
		}
	case reflect.Struct:
		switch v.Type().Name() {
		case "Material", "Working", "Moment", "Pos", "Place":
			return
		}
		in := v.Type().Name()
		if in == "Grip" {
			in = name
		}
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.IsExported() {
				b.walk(path+"."+f.Name, in, f.Name, v.Field(i))
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			b.walk(fmt.Sprintf("%s[%d]", path, i), owner, name, v.Index(i))
		}
	case reflect.Float64:
		s, ok := heatSides[owner+"."+name]
		if !ok {
			s = nearest
		}
		b.book(path, s, v.Interface())
	}
}

// heatAmount is an amount as it stands on a heat sheet, clockTime a time of a watch in a
// sentence.
var (
	heatAmount = regexp.MustCompile(`([−-]?[0-9][0-9\x{a0}]*(?:\.[0-9]+)?)[ \x{a0}](mm|in|°C|°F|kN|lbf|N·m|lb-ft|MPa|psi|kW|MJ|%|min 30\x{a0}s|min|s|h)(?:[^A-Za-z·/²]|$)`)
	clockTime  = regexp.MustCompile(`(?:by|about|after|and|before) ([0-9]+):([0-9]{2})`)
)

// heatAmounts lists the amounts of a heat sheet; times are in seconds.
func heatAmounts(text string) []amount {
	var out []amount
	for _, m := range heatAmount.FindAllStringSubmatch(text, -1) {
		number := strings.NewReplacer("−", "-", "\u00a0", "").Replace(m[1])
		x, err := strconv.ParseFloat(number, 64)
		if err != nil {
			continue
		}
		_, decimals, _ := strings.Cut(number, ".")
		a := amount{text: m[0], unit: m[2], value: x, step: math.Pow(10, -float64(len(decimals)))}
		switch {
		case a.unit == "min" || a.unit == "h" || strings.HasPrefix(a.unit, "min 30"):
			per := map[string]float64{"min": 60, "h": 3600}[a.unit]
			if per == 0 {
				per, a.value = 60, a.value+0.5
			}
			a.value, a.step, a.unit = a.value*per, a.step*per, "s"
		case a.unit == "s":
			a.step = 5 // from ten seconds on, the paper has full fives
		case strings.Contains("°C °F", a.unit) && math.Mod(x, 5) == 0:
			a.step = 10 // what must be passed is told in full fives or tens
		case strings.Contains("kN lbf N·m lb-ft psi", a.unit):
			a.step = math.Max(a.step, math.Abs(x)/9) // two figures
		}
		out = append(out, a)
	}
	for _, m := range clockTime.FindAllStringSubmatch(text, -1) {
		minutes, _ := strconv.Atoi(m[1])
		seconds, _ := strconv.Atoi(m[2])
		out = append(out, amount{text: m[0], unit: "s", value: float64(60*minutes + seconds), step: 1})
	}
	return out
}

// heatConstants are amounts on a heat sheet that are no figures of the heat.
var heatConstants = regexp.MustCompile(`0\.6 % of the growth|1\.2 % of the growth|\(20 °C - coolant\)|20 to -78 °C`)

// checkHeatFigures compares every amount on the sheet of a heat with what was worked out.
func checkHeatFigures(t interface{ Errorf(string, ...any) }, where string, all []*job.Heat, h *job.Heat, sheet, own string) int {
	known := map[string][]exact{}
	for _, x := range all {
		if x.At == h.At { // the same heat at another place, on the same pages
			for unit, list := range heatExacts(x) {
				known[unit] = append(known[unit], list...)
			}
		}
	}
	for _, a := range heatAmounts(own) {
		known[a.unit] = append(known[a.unit], exact{"as written", a.value, nearest})
	}
	n := 0
	for _, a := range heatAmounts(heatConstants.ReplaceAllString(sheet, "")) {
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
			t.Errorf("%s: %s is printed as %s for%s", where, h.Mark, a.text, near)
		}
	}
	return n
}

// netPower is the power that an author writes.
var netPower = regexp.MustCompile(`net: [0-9.]+ kW`)

// writtenWords are the texts of a heat in which its author may write amounts.
func writtenWords(h *job.Heat) string {
	out := []string{h.Note, h.NothingNear, h.FireWatch.Print(), h.Limit.Source, h.What}
	for _, n := range h.Neighbours {
		out = append(out, n.KeptCool, n.MeasuredWith, n.Limit.Source)
	}
	if p := h.Pull; p != nil {
		out = append(out, p.Puller, p.Shield, p.IfStuck, p.Workable.Reason)
	}
	for _, st := range []*job.Step{h.PulledAt, h.PutOnAt} {
		if st == nil {
			continue
		}
		for _, c := range st.Cautions {
			out = append(out, c.Short, c.Avoid, c.Hazard)
		}
	}
	return strings.Join(out, " ")
}

// TestHeatFiguresOfTheProject: each amount on the heat sheets of the starters and the good
// definitions stands for a figure of the heat, on its safe side. Printed were 610 kN for a
// pull of 614 kN, and a window of 15 s for one of 14.8 s.
func TestHeatFiguresOfTheProject(t *testing.T) {
	longTest(t)
	t.Parallel()
	n := 0
	for _, f := range heatFiles(t) {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		n += checkHeatsOf(t, f, string(data), pdf.NewFaces())
	}
	if n < 300 {
		t.Errorf("only %d amounts were looked at", n)
	}
}

// checkHeatsOf composes a definition and looks at the figures of its heats.
func checkHeatsOf(t interface{ Errorf(string, ...any) }, where, text string, faces *pdf.Faces) int {
	jb, problems := packs.Load(fstest.MapFS{"x.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "x.yaml"})
	pack, misfits := templates.Compose(jb, templates.Options{Paper: layout.Letter, Draft: problems.Errors() > 0}, faces, problems)
	if len(misfits) > 0 {
		t.Errorf("%s: %v", where, misfits)
	}
	n := 0
	for _, h := range jb.Heats {
		if withoutHoles(h) {
			n += checkHeatFigures(t, where, jb.Heats, h, heatSheet(pack, h), writtenWords(h)+" "+strings.Join(netPower.FindAllString(text, -1), " "))
		}
	}
	return n
}

// TestHeatFiguresOfAnyHeat: the same for heats drawn by chance, in millimetres and °C and
// in inches and °F, with a shaft cooled or not, at work or not.
func TestHeatFiguresOfAnyHeat(t *testing.T) {
	longTest(t)
	t.Parallel()
	faces := pdf.NewFaces()
	seen := 0
	rapid.Check(t, func(t *rapid.T) {
		text := drawnHeat(t)
		seen += checkHeatsOf(t, text, text, faces)
	})
	if seen < 1000 {
		t.Errorf("only %d amounts were looked at", seen)
	}
}

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
