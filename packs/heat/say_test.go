package heat

import (
	"errors"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// A figure that must be reached is never printed lower than it is, one that is promised
// or must not be passed never higher, in either system of units.
func TestFiguresAreRoundedToTheSafeSide(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64Range(1e-4, 5000).Draw(t, "v")
		for _, c := range []struct {
			figure any
			exact  float64
			u      Units
		}{
			{fine(v / 1000), v / 1000, Units{}}, {fine(v / 1000), v / 1000 / 25.4, Units{Inch: true}},
			{Mm(v), v, Units{}}, {Mm(v), v / 25.4, Units{Inch: true}},
			{Celsius(v), v, Units{}}, {Celsius(v), v*9/5 + 32, Units{Fahrenheit: true}},
			{KelvinRise(v), v, Units{}}, {KelvinRise(v), v * 9 / 5, Units{Fahrenheit: true}},
			{Newton(v * 1000), v, Units{}}, {Newton(v * 1000), v * 1000 / 4.4482216152605, Units{Inch: true}},
			{MPa(v), v, Units{}}, {MPa(v), v / 0.006894757293168, Units{Inch: true}},
			{Watt(v * 1000), v, Units{}}, {Second(v), v, Units{}}, {minutes(v * 60), v, Units{}},
		} {
			read := func(d directed) float64 {
				text := say("%v", d).in(c.u)
				number, _, _ := strings.Cut(text, " ")
				x, err := strconv.ParseFloat(number, 64)
				if err != nil {
					t.Fatalf("%q has no number", text)
				}
				return x
			}
			hair := 1e-8 * math.Max(1, c.exact)
			if x := read(up(c.figure)); x < c.exact-hair {
				t.Fatalf("%T %v must be reached and reads %v", c.figure, c.exact, x)
			}
			if x := read(down(c.figure)); x > c.exact+hair {
				t.Fatalf("%T %v is promised and reads %v", c.figure, c.exact, x)
			}
		}
	})
}

var metricWord = regexp.MustCompile(`\d (mm|°C|K|kN|MPa)\b`)

// "No heat opens the hub" names interference, ceiling and power in the units of the job
// and which of them would have to be otherwise; what it names does it.
func TestNoHeatSaysWhatWouldHaveToChange(t *testing.T) {
	t.Parallel()
	asked := 0
	checkSome(t, 6, func(t *rapid.T) {
		p := pulledJoint(t)
		p.Skin.At = Celsius(rapid.Float64Range(90, 140).Draw(t, "ceiling"))
		_, err := p.Plan()
		var r *Refusal
		if !errors.As(err, &r) || r.Code != "no-heat" {
			return
		}
		asked++
		in := r.In(Units{Inch: true, Fahrenheit: true})
		for _, text := range []string{in.Why, in.Instead} {
			if m := metricWord.FindString(text); m != "" {
				t.Fatalf("in inches: %q in %q", m, text)
			}
		}
		if !strings.Contains(in.Why, " in of interference") || !strings.Contains(in.Why, "°F") && !strings.Contains(in.Why, " in 900 s") {
			t.Fatalf("interference or ceiling is not named: %q", in.Why)
		}
		for _, c := range r.Changes {
			q := p
			switch {
			case math.IsNaN(float64(c.Must)):
				continue
			case c.Code == "interference":
				q.Fit.Interference = Mm(c.Must)
			case c.Code == "ceiling":
				q.Skin.At = Celsius(c.Must)
			}
			s := search{pull: &q, grid: usualGrid}
			if mid, _ := s.firstThatFrees(); !mid.frees {
				t.Fatalf("%s %v does not do: %v", c.Code, c.Must, r)
			}
		}
	})
	t.Logf("%d refusals", asked)
}

// Assumptions and warnings are written in the units of the job as well.
func TestAPlanIsWordedInTheUnitsOfTheJob(t *testing.T) {
	t.Parallel()
	p := stormPump(t)
	plan := planned(t, p)
	u := Units{Inch: true, Fahrenheit: true}
	for _, w := range plan.Warnings {
		if m := metricWord.FindString(w.In(u).Says); m != "" {
			t.Errorf("%s: %q in %q", w.Code, m, w.In(u).Says)
		}
	}
	for _, a := range plan.Assumptions {
		if m := metricWord.FindString(a.In(u).Says); m != "" {
			t.Errorf("%s: %q in %q", a.Code, m, a.In(u).Says)
		}
		if a.In(Units{}).Says != a.Says {
			t.Errorf("%s is not metric at first", a.Code)
		}
	}
}
