package lift

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/units"
)

// printedNumber reads back the first number of a text.
func printedNumber(t interface{ Fatalf(string, ...any) }, text string) float64 {
	x, err := strconv.ParseFloat(regexp.MustCompile(`-?[0-9]+(\.[0-9]+)?`).FindString(text), 64)
	if err != nil {
		t.Fatalf("no number in %q", text)
	}
	return x
}

// Every figure of the working, every load, rating and share of every piece, is on
// its own side of the exact value: none that is needed under it, none that is left
// over it. Lifts drawn by chance, with and without a bar.
func TestEveryFigureIsOnItsSide(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		var p Plan
		if rapid.Bool().Draw(t, "bar") {
			p = drawnBar(t, rapid.SampledFrom([]Rig{Spreader, Beam}).Draw(t, "rig"))
			p.Bar.LeastAngle, p.Bar.MayBend = 45, 5000
		} else {
			p = drawnBridle(t, rapid.IntRange(2, 4).Draw(t, "legs"))
		}
		p.Dynamic = Ratio(rapid.Float64Range(1, 1.4).Draw(t, "dynamic"))
		p.Load.CoGTolerance = Point{X: 7, Y: 3, Z: 5}
		p = rate(p, rapid.Float64Range(100, 1e5).Draw(t, "rated"))
		p.Headroom = &Headroom{HighHook: 9000, PassOver: 1200.4, Underside: 333.3, Stack: 111.7}
		p.Load.Outline = box(Point{X: -900, Y: -500, Z: -333.3}, Point{X: 900, Y: 500, Z: 200})
		r := mustCompute(t, p)
		side := func(what, text string, exact float64, toward units.Rounding) {
			off := printedNumber(t, text) - exact
			slack := 2e-11*math.Abs(exact) + 1e-9
			if toward == units.Up && off < -slack || toward == units.Down && off > slack {
				t.Fatalf("%s: %g is printed as %s", what, exact, text)
			}
		}
		for _, w := range r.Working {
			for _, f := range w.Figures {
				side(w.What+" "+f.Symbol, f.Text(), float64(f.Amount), f.Toward)
			}
		}
		for _, c := range r.Components {
			side(c.Name+" load", c.Load.Up().String(), float64(c.Load), units.Up)
			side(c.Name+" allowed", c.Allowed.Down().String(), float64(c.Allowed), units.Down)
			side(c.Name+" used", c.Used.Percent().String(), 100*float64(c.Used), units.Up)
			for _, x := range c.Reductions {
				side(c.Name+" "+x.Because(Units{}), x.Factor.Factor().String(), float64(x.Factor), units.Down)
			}
		}
		for _, l := range r.Legs {
			side(l.Name+" pull", l.Tension.Up().String(), float64(l.Tension), units.Up)
			side(l.Name+" angle", l.Angle.Down().String(), float64(l.Angle), units.Down)
		}
		side("tilt", r.Tilt.Most.Up().String(), float64(r.Tilt.Most), units.Up)
		side("spare", r.Headroom.Spare.Down().String(), float64(r.Headroom.Spare), units.Down)
		side("dynamic", r.Dynamic.FactorUp().String(), float64(r.Dynamic), units.Up)
		sideOfMessages(t, r)
	})
}

// overloaded reads the two numbers of an overload: what a piece carries, and may carry.
var overloaded = regexp.MustCompile(`carries ([0-9.]+) kg and may carry ([0-9.]+) kg`)

// sideOfMessages reads the numbers out of the cautions.
func sideOfMessages(t *rapid.T, r *Result) {
	byField := map[string]Component{}
	for _, c := range r.Components {
		byField[c.Field] = c
	}
	for _, c := range r.Cautions {
		m := overloaded.FindStringSubmatch(c.Message)
		if m == nil {
			continue
		}
		is, may := byField[c.Field], 0.0
		carries, _ := strconv.ParseFloat(m[1], 64)
		may, _ = strconv.ParseFloat(m[2], 64)
		if carries < float64(is.Load)*(1-1e-11) || may > float64(is.Allowed)*(1+1e-11) {
			t.Fatalf("%s for %g of %g", c.Message, is.Load, is.Allowed)
		}
	}
}

// The words of an amount: coarse as a rigger reads a scale, on the safe side.
func TestAmountsInWords(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ got, want string }{
		{Kg(548.2).Up().String(), "549 kg"}, {Kg(548.9).Down().String(), "548 kg"}, {Kg(99.91).Up().String(), "100 kg"}, {Kg(99.96).Down().String(), "99.9 kg"},
		{Kg(12.31).Up().String(), "12.4 kg"}, {Kg(0).Up().String(), "0.0 kg"}, {Kg(1000).Up().String(), "1000 kg"}, {Kg(math.NaN()).Up().String(), "no number"},
		{Mm(-30.4).Down().String(), "-31 mm"}, {Mm(30.4).Up().String(), "31 mm"}, {Degree(2.04).Up().String(), "2.1°"}, {Degree(29.96).Down().String(), "29.9°"},
		{Degree(1e-13).Up().String(), "0.0°"}, {Ratio(0.7500000000000001).Percent().String(), "75 %"}, {Ratio(0.7501).Percent().String(), "76 %"},
		{Ratio(0.869).Factor().String(), "0.86"}, {Ratio(1.101).FactorUp().String(), "1.11"}, {Ratio(0.7501).PercentDown().String(), "75 %"}, {Kilopascal(63.81).Up().String(), "63.9 kN/m²"},
		{Mm(2007.25).String(), "2007.3 mm"}, {Kg(12).String(), "12 kg"},
	} {
		if c.got != c.want {
			t.Errorf("got %q, want %q", c.got, c.want)
		}
	}
}

// No help offers a number for what has to be weighed, measured or looked up.
func TestHelpOffersNoNumberToBeMeasured(t *testing.T) {
	t.Parallel()
	measured := []string{"load.mass", "load.cog", "load.cogtolerance", "rated", "chokeangle", "spread", "around", "rope", "offline", "leastangle", "dynamic", "criticalat",
		"highhook", "passover", "stack", "lengtherror", "heavierpart", "temperatures", "maypress", "maybend", "toplugs", "length", "mass"}
	seen := 0
	for path, change := range omissions(full()) {
		p := full()
		change(&p)
		var all Refusals
		r, err := Compute(p)
		if err != nil {
			all = err.(Refusals)
		} else {
			all = r.Unanswered
		}
		for _, no := range all {
			for _, m := range measured {
				if !strings.HasSuffix(no.Field, m) {
					continue
				}
				seen++
				// 90° is told as what a pull straight up is called.
				if help := strings.ReplaceAll(no.Help, "90° is", ""); regexp.MustCompile(`[0-9]`).MatchString(help) {
					t.Errorf("without %s: %s: %s", path, no.Field, no.Help)
				}
			}
		}
	}
	if seen < 10 {
		t.Errorf("only %d helps were looked at", seen)
	}
}
