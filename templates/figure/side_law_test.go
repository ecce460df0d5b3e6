package figure

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/fit"
	"matchmark/packs/heat"
	"matchmark/packs/units"
)

// A printed amount is never on the unsafe side of the one that was worked out: what loads,
// is needed or must be reached not below it, what is held, is left, lasts or must not be
// passed not above it, in the units of either paper, and off by no more than its figures.
func TestPrintedAmountsKeepTheirSide(t *testing.T) {
	t.Parallel()
	sides := []struct {
		name     string
		up       bool
		unit     units.Unit // of what goes in
		from, to float64
		print    func(u Units, v float64) string
	}{
		{"interference needed", true, units.Millimetre, 0, 5, func(u Units, v float64) string { return u.InterferenceUp(heat.Mm(v)) }},
		{"interference left", false, units.Millimetre, 0, 5, func(u Units, v float64) string { return u.InterferenceDown(heat.Mm(v)) }},
		{"temperature reached", true, units.Celsius, -190, 600, func(u Units, v float64) string { return u.TempUp(heat.Celsius(v)) }},
		{"temperature not to pass", false, units.Celsius, -190, 600, func(u Units, v float64) string { return u.AtMost(heat.Celsius(v)) }},
		{"temperature to pass", true, units.Celsius, -190, 600, func(u Units, v float64) string { return u.AtLeast(heat.Celsius(v)) }},
		{"rise needed", true, units.KelvinRise, 0, 600, func(u Units, v float64) string { return u.Rise(heat.KelvinRise(v)) }},
		{"force needed", true, units.Newton, 1, 5e6, func(u Units, v float64) string { return u.ForceUp(v) }},
		{"force held", false, units.Newton, 1, 5e6, func(u Units, v float64) string { return u.ForceHeld(v) }},
		{"force of a tool", false, units.Newton, 1, 5e6, func(u Units, v float64) string { return u.ForceDown(v) }},
		{"torque held", false, units.NewtonMetre, 1, 1e5, func(u Units, v float64) string { return u.TorqueDown(v) }},
		{"torque carried", true, units.NewtonMetre, 1, 1e5, func(u Units, v float64) string { return u.TorqueUp(v) }},
		{"stress", true, units.Megapascal, 1, 900, func(u Units, v float64) string { return u.Stress(v) }},
		{"share used", true, units.Percent, 0, 200, func(_ Units, v float64) string { return PercentUp(v/100) + " %" }},
		{"power at least", true, units.Watt, 100, 1e5, func(_ Units, v float64) string { return Kilowatts(heat.Watt(v), units.Up) + " kW" }},
		{"power at most", false, units.Watt, 100, 1e5, func(_ Units, v float64) string { return Kilowatts(heat.Watt(v), units.Down) + " kW" }},
		{"time that it lasts", false, units.Second, 0, 40000, func(_ Units, v float64) string { return seconds(TimeDown(heat.Second(v))) }},
		{"time that it takes", true, units.Second, 0, 40000, func(_ Units, v float64) string { return seconds(TimeUp(heat.Second(v))) }},
		{"time of an act", true, units.Second, 0, 40000, func(_ Units, v float64) string { return seconds(TimeUpShort(heat.Second(v))) }},
		{"time on the watch", true, units.Second, 0, 40000, func(_ Units, v float64) string { return seconds(Clock(heat.Second(v))) }},
		{"turns a minute", true, units.None, 0, 20000, func(_ Units, v float64) string { return Turns(fit.PerMinute(v)) }},
		{"whole, at most", false, units.None, 0, 20000, func(_ Units, v float64) string { return WholeDown(v) }},
	}
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.SampledFrom(sides).Draw(t, "what")
		u := Units{Inch: rapid.Bool().Draw(t, "inch"), Fahrenheit: rapid.Bool().Draw(t, "fahrenheit")}
		v := rapid.Float64Range(x.from, x.to).Draw(t, "amount")
		text := x.print(u, v)
		got := readBack(t, text, x.unit)
		slack := 1e-9 * max(1, v) // what a reckoning is not trusted to
		if u.Inch {
			slack *= 25.4 // of what is reckoned in inches
		}
		if x.unit == units.Second {
			slack = 1e-6 * max(1, v/1000) // a watch is not trusted to a microsecond
		}
		if x.up && got < v-slack || !x.up && got > v+slack {
			t.Fatalf("%s: %v is printed as %s, which is %v", x.name, v, text, got)
		}
	})
}

// readBack reads a printed amount as a number of a unit.
func readBack(t *rapid.T, text string, unit units.Unit) float64 {
	plain := units.Plain(text)
	if unit == units.None {
		v, err := strconv.ParseFloat(strings.ReplaceAll(plain, " ", ""), 64)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	number, sign, _ := cutLast(plain)
	plain = strings.ReplaceAll(number, " ", "") + " " + sign
	q, err := units.ParseQuantity(plain)
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	if unit == units.KelvinRise {
		q.Unit = q.Unit.RiseUnit()
	}
	c, err := q.Convert(unit)
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	v, _ := c.Number.Rat().Float64()
	return v
}

// cutLast parts a text before its first letter or sign of a unit.
func cutLast(text string) (before, after string, found bool) {
	i := strings.IndexFunc(text, func(r rune) bool { return !strings.ContainsRune("0123456789.- ", r) })
	if i < 0 {
		return text, "", false
	}
	return strings.TrimSpace(text[:i]), text[i:], true
}

// seconds writes a printed time in seconds.
func seconds(text string) string {
	plain := units.Plain(text)
	if m, s, watch := strings.Cut(plain, ":"); watch {
		a, _ := strconv.Atoi(m)
		b, _ := strconv.Atoi(s)
		return fmt.Sprintf("%d s", 60*a+b)
	}
	total := 0.0
	words := strings.Fields(plain)
	for i := 0; i+1 < len(words); i += 2 {
		n, _ := strconv.ParseFloat(words[i], 64)
		total += n * map[string]float64{"h": 3600, "min": 60, "s": 1}[words[i+1]]
	}
	return fmt.Sprintf("%.6f s", total) // a sum of parts of hours, read back as typed
}
