package lift

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Any temperature outside the band that is told stops the lift, any inside does not.
func TestSlingsHoldWithinTheirBandOfHeat(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		p := good()
		for i := range p.Legs {
			p.Legs[i].Sling.Fibre = rapid.SampledFrom([]Fibre{WireRope, Chain, Web, RoundSling, NaturalRope}).Draw(t, "fibre")
			p.Legs[i].Sling.Polyester = rapid.Bool().Draw(t, "polyester")
			if rapid.Bool().Draw(t, "by its maker") {
				from := Celsius(rapid.Float64Range(-80, 150).Draw(t, "from"))
				p.Legs[i].Sling.Holds = &MakersBand{Temperatures{from, from + Celsius(rapid.Float64Range(0, 300).Draw(t, "width"))}, "tag"}
			}
		}
		low := Celsius(rapid.Float64Range(-80, 250).Draw(t, "low"))
		p.Temperatures = &Temperatures{Low: low, High: low + Celsius(rapid.Float64Range(0, 100).Draw(t, "over"))}
		r := mustCompute(t, p)
		hottest := Celsius(400)
		p.pieces(func(_ string, s Sling) { hottest = min(hottest, s.holds().most()) }, func(_ string, h Hardware) { hottest = min(hottest, h.holds().most()) })
		out := p.Temperatures.Low < r.Heat.Low || p.Temperatures.High > hottest
		if cautioned(r, TooHotOrCold) != out || r.Heat.LowPiece == "" || r.Heat.HighPiece == "" {
			t.Fatalf("%v to %v in a band of %+v: %+v", p.Temperatures.Low, p.Temperatures.High, r.Heat, r.Cautions)
		}
	})
	p := good()
	p.Temperatures = &Temperatures{Low: 30, High: 20}
	if no := refusalOf(t, p); no.Field != "temperatures" {
		t.Errorf("refused at %s", no.Field)
	}
}

// Within the band of its maker a piece carries all of its rating and outside nothing, whatever is
// usual for its kind; a band upside down or from nowhere is refused.
func TestTheMakersBandGoesFirst(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		kind      Fibre
		low, high Celsius // of the gear
		stopped   bool
	}{{Chain, 10, 300, false}, {Chain, 10, 300.1, true}, {Chain, -10.1, 20, true}, {Chain, -10, 20, false}, {WireRope, 10, 300, false}, {Web, 10, 300, false}} {
		p := good()
		p.Temperatures = &Temperatures{Low: x.low, High: x.high}
		for i := range p.Legs {
			p.Legs[i].Sling.Fibre, p.Legs[i].Sling.Holds = x.kind, &MakersBand{Temperatures{-10, 300}, "tag"}
			for k := range p.Legs[i].Gear {
				p.Legs[i].Gear[k].Holds = &MakersBand{Temperatures{-10, 300}, "tag"}
			}
		}
		for i := range p.TopGear {
			p.TopGear[i].Holds = &MakersBand{Temperatures{-10, 300}, "tag"}
		}
		r := compute(t, p)
		if cautioned(r, TooHotOrCold) != x.stopped || !strings.HasSuffix(r.Heat.HighPiece, " (tag)") {
			t.Errorf("%+v: %+v %+v", x, r.Heat, r.Cautions)
		}
		for _, c := range r.Components {
			for _, less := range c.Reductions {
				if less.Source == hotSource {
					t.Errorf("%+v: %s carries %v of its rating", x, c.Name, less.Factor)
				}
			}
		}
	}
	for _, bad := range []MakersBand{{Temperatures{300, -10}, "tag"}, {Temperatures{-10, 300}, ""}, {Temperatures{-10, 540}, "tag"}, {Temperatures{Celsius(math.NaN()), 300}, "tag"}} {
		p := good()
		p.Legs[0].Sling.Holds = &bad
		if no := refusalOf(t, p); no.Field != "legs[0].sling.holds" {
			t.Errorf("%+v: refused at %s", bad, no.Field)
		}
	}
}

// Chain above 200 °C carries less of its rating. ASME B30.9, table 9-1.8.1-1, grade 100, reduction of
// the rating while at the temperature: 400 °F 15 %, 500 °F 25 %, 600 °F 30 %, 700 °F 40 %, 800 °F
// 50 %. EN 818-4 leaves 90 % to 300 °C and 75 % to 400 °C, never less, and gives nothing above.
// Whatever stands between two rows has lost at least what the cooler and counts as the hotter one.
func TestHotChainCarriesLess(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		high        Celsius
		left        float64
		spent, stop bool
	}{
		{200, 1, false, false}, {200.5, 0.75, false, false}, {fahrenheit(400), 0.75, false, false}, {fahrenheit(450), 0.75, false, false}, {fahrenheit(500), 0.75, true, false}, {fahrenheit(501), 0.7, true, false},
		{300, 0.7, true, false}, {fahrenheit(600), 0.7, true, false}, {fahrenheit(650), 0.6, true, false}, {fahrenheit(700), 0.6, true, false}, {372, 0.5, true, false}, {400, 0.5, true, false}, {401, 1, true, true},
	} {
		p := good()
		for i := range p.Legs {
			p.Legs[i].Sling.Fibre, p.Legs[i].Gear = Chain, nil
		}
		p.TopGear = nil
		cold := component(t, compute(t, p), "legs[0].sling").Allowed
		p.Temperatures = &Temperatures{Low: 10, High: x.high}
		r := compute(t, p)
		near(t, "a chain leg, hot", float64(component(t, r, "legs[0].sling").Allowed), float64(cold)*x.left, 1e-9)
		if cautioned(r, TooHotOrCold) != x.stop || r.Heat.Spent != x.spent {
			t.Errorf("at %v stopped %t, want %t; spent %t, want %t", x.high, !x.stop, x.stop, r.Heat.Spent, x.spent)
		}
	}
	// No share that is left is more than a row at or below its temperature leaves.
	for _, row := range []struct{ f, lost float64 }{{400, 15}, {500, 25}, {600, 30}, {700, 40}} {
		for _, r := range hotChain {
			if r.upTo >= fahrenheit(row.f) && float64(r.left) > 1-row.lost/100+1e-12 {
				t.Errorf("to %v %v is left, by the table at most %v", r.upTo, r.left, 1-row.lost/100)
			}
		}
	}
}

// The shares of hot chain are for what belongs to it: a link, a ring or a hook. Whatever else is
// pulled in line, a shackle and an eyebolt, and a hook that hangs on rope, stay at 200 °C.
func TestOnlyWhatIsOfChainIsLiftedWithHot(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		kind    HardwareKind
		ofChain bool
		stop    bool
	}{{InLine, true, false}, {Hook, true, false}, {InLine, false, true}, {Hook, false, true}, {Shackle, true, true}, {ShoulderEyebolt, true, true}} {
		p := good()
		for i := range p.Legs {
			p.Legs[i].Sling.Fibre = Chain
			p.Legs[i].Gear = []Hardware{{Name: "piece", Kind: x.kind, Rated: 9000, Mass: 1, Axis: Point{Z: 1}, OfChain: x.ofChain}}
			if x.kind == Hook {
				p.Legs[i].Gear[0].Seat = Saddle
			}
		}
		for i := range p.TopGear {
			p.TopGear[i].Kind, p.TopGear[i].OfChain = InLine, true
		}
		cold := compute(t, p)
		p.Temperatures = &Temperatures{Low: 10, High: 300}
		r := compute(t, p)
		if cautioned(r, TooHotOrCold) != x.stop {
			t.Errorf("%+v: cautions %+v", x, r.Cautions)
		}
		for _, field := range []string{"legs[0].sling", "legs[1].gear[0]", "topgear[0]"} {
			if !x.stop {
				near(t, field+", hot", float64(component(t, r, field).Allowed), float64(component(t, cold, field).Allowed)*0.7, 1e-9)
			}
		}
	}
}
