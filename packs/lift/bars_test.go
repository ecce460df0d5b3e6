package lift

import (
	"math"
	"testing"
)

// rotor is the demo pump's rotor with both brackets: 1,020 kg, the centre 35 mm
// toward DE of the middle of picks 560 mm either side, on the shaft's axis.
func rotor(rig Rig) Plan {
	cog := Point{X: 35}
	p := bare(1020, cog, Point{X: -560}, Point{X: 560})
	p.Picks[0].Name, p.Picks[1].Name = "NDE", "DE"
	p.Rig = rig
	if rig != TwoHooks {
		p.Bar = Bar{Name: "bar", Length: 1120, Rated: 2000}
	}
	p.Legs[0].Length, p.Legs[1].Length = 1500, 1500
	if rig == Beam {
		p.Bar.Rise = 120
	}
	if rig == Spreader {
		p.TopLegs = []Leg{straight("top NDE", 0), straight("top DE", 0)}
		p.Aim = 60
	}
	return p
}

// The shares were worked out apart from this program with the demo machine.
func TestRotorOnABeam(t *testing.T) {
	t.Parallel()
	r := compute(t, rotor(Beam))
	near(t, "NDE", float64(r.Legs[0].Tension), 478, 0.5)
	near(t, "DE", float64(r.Legs[1].Tension), 542, 0.5)
	near(t, "bail from the NDE end", float64(r.Bail), 595, 1e-9)
	near(t, "tilt", float64(r.Tilt.Total), 0, 1e-9)
	near(t, "hook over the picks", float64(r.HookHeight), 1620, 1e-9)
}

// A bail in the middle lets the heavy end down until the common centre hangs under
// it: tan = offset/depth of a pendulum (any handbook of mechanics).
func TestBeamHungOffCentreTilts(t *testing.T) {
	t.Parallel()
	p := rotor(Beam)
	p.Load.CoG.Z = -80
	p.Bar.Bail = 560
	p.Load.Span = &Span{NameA: "NDE", NameB: "DE", A: Point{X: -600}, B: Point{X: 600}}
	r := compute(t, p)
	phi := math.Atan(35.0 / (120 + 80))
	near(t, "tilt", float64(r.Tilt.Total), float64(degrees(phi)), 1e-9)
	near(t, "drop", float64(r.Tilt.Drop), 1200*math.Sin(phi), 1e-9)
	if r.Tilt.Lower != "DE" || !cautioned(r, OutOfLevel) {
		t.Errorf("%q down, cautions %v", r.Tilt.Lower, r.Cautions)
	}
	// The load's moment about the bail closes, arms as they hang.
	sum := 0.0
	for _, l := range r.Legs {
		sum += float64(l.Tension) * float64(l.To.X-r.Drawing.Hook.X)
	}
	near(t, "moment about the bail", sum/1020, 0, 1e-9)
	p.Load.CoG.Z, p.Bar.Rise = 0, 0
	if no := refusalOf(t, p); no.Field != "bar.rise" {
		t.Errorf("refused at %s, want bar.rise", no.Field)
	}
}

// A beam on one bail, load centred: M = W s/4 + w s/8 (simply supported beam, any
// handbook of strength of materials).
func TestBeamBending(t *testing.T) {
	t.Parallel()
	p := rotor(Beam)
	p.Load.CoG.X, p.Bar.Mass = 0, 100
	r := compute(t, p)
	for _, w := range r.Working {
		if w.What == "bending of the beam at its bail" {
			got := float64(w.Figures[len(w.Figures)-1].Amount)
			near(t, "bending", got, (1020*1.12/4+100*1.12/8)*standardGravity, 1e-9)
			return
		}
	}
	t.Error("the bending has no working")
}

// The spreader's top legs are two legs with the centre off the middle (RG030's
// formulas by hand): C = W a b/(s h), and the drops share by the lever rule.
func TestRotorUnderASpreader(t *testing.T) {
	t.Parallel()
	p := rotor(Spreader)
	p.Bar.Mass = 60
	r := compute(t, p)
	near(t, "NDE drop", float64(r.Legs[2].Tension), 1020*525.0/1120, 1e-9)
	near(t, "DE drop", float64(r.Legs[3].Tension), 1020*595.0/1120, 1e-9)
	w := 1080.0
	a := 1020.0/w*595 + 60.0/w*560
	b, h := 1120-a, a*math.Tan(math.Pi/3)
	near(t, "force in the bar", float64(r.Press), w*a*b/(1120*h), 1e-9)
	near(t, "top NDE", float64(r.Legs[0].Tension), w*b*math.Hypot(a, h)/(1120*h), 1e-9)
	near(t, "top DE", float64(r.Legs[1].Tension), w*a*math.Hypot(b, h)/(1120*h), 1e-9)
	near(t, "hook height", float64(r.HookHeight), 1500+h, 1e-9)
	near(t, "gross", float64(r.Gross), w, 1e-9)
	near(t, "bar's own use", float64(component(t, r, "bar").Used), 1020.0/2000, 1e-9)
	near(t, "tilt", float64(r.Tilt.Total), 0, 1e-9)
}

// Two hooks: W b/s level; with a tilt, b moves by g tan(phi), each hook at its worst
// (two-crane rule of statics).
func TestTwoHooks(t *testing.T) {
	t.Parallel()
	p := rotor(TwoHooks)
	p.Load.CoG.Z = -200
	p.MaxTilt = 3
	p.Crane, p.SecondCrane = Crane{Name: "north", Rated: 1000}, Crane{Name: "south", Rated: 1000}
	r := compute(t, p)
	shift := 200 * math.Tan(radians(3))
	near(t, "NDE", float64(r.Legs[0].Tension), 1020*(525+shift)/1120, 1e-6)
	near(t, "DE", float64(r.Legs[1].Tension), 1020*(595+shift)/1120, 1e-6)
	near(t, "the crane used most", float64(r.CraneShare), 1.020*(595+shift)/1120, 1e-9)
	if !r.Critical || r.Components[r.Weakest].Name != "south" {
		t.Errorf("critical %v, weakest %q", r.Critical, r.Components[r.Weakest].Name)
	}
	p.MaxTilt = 15
	p.Load.CoG.Z = -3000
	if no := refusalOf(t, p); no.Field != "maxtilt" {
		t.Errorf("refused at %s, want maxtilt", no.Field)
	}
}

func TestBarsAreRefused(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name, field string
		change      func(*Plan)
	}{
		{"drops not equal", "legs", func(p *Plan) { p.Legs[0].Length = 1400 }},
		{"no drop length", "legs", func(p *Plan) { p.Legs[0].Length = 0 }},
		{"picks not at one level", "picks", func(p *Plan) { p.Picks[0].At.Z = 40 }},
		{"bar much longer than the picks", "bar.length", func(p *Plan) { p.Bar.Length = 1300 }},
		{"bar without a rating", "bar.rated", func(p *Plan) { p.Bar.Rated = 0 }},
		{"three picks", "picks", func(p *Plan) {
			p.Picks = append(p.Picks, Pick{At: Point{Y: 300}})
			p.Legs = append(p.Legs, p.Legs[0])
		}},
		{"centre of gravity off the far end", "load.cog", func(p *Plan) { p.Load.CoG.X = 700 }},
	} {
		for _, rig := range []Rig{Beam, Spreader} {
			p := rotor(rig)
			c.change(&p)
			if no := refusalOf(t, p); no.Field != c.field {
				t.Errorf("%s: refused at %s, want %s", c.name, no.Field, c.field)
			}
		}
	}
	p := rotor(Spreader)
	p.TopLegs = nil
	if no := refusalOf(t, p); no.Field != "toplegs" {
		t.Errorf("no top legs: refused at %s", no.Field)
	}
	p = rotor(TwoHooks)
	p.SecondCrane = Crane{}
	if no := refusalOf(t, p); no.Field != "secondcrane.rated" {
		t.Errorf("one crane: refused at %s", no.Field)
	}
}

// A bar 20 mm longer than the picks are apart: the top legs go to its pins, the
// drops lean a little and press the bar; hook height and gear above count.
func TestSpreaderLongerThanThePicks(t *testing.T) {
	t.Parallel()
	p := rotor(Spreader)
	p.Load.CoG.X = 0
	p.Bar.Length = 1140
	p.Aim, p.HookHeight = 0, 2500
	for i := range p.TopLegs {
		p.TopLegs[i].Sling.Mass = 10
	}
	r := compute(t, p)
	const w = 1020 + 20
	near(t, "gross", float64(r.Gross), w, 1e-9)
	near(t, "hook height", float64(r.HookHeight), 2500, 1e-9)
	near(t, "top leg", float64(r.Legs[0].Length), math.Hypot(570, 1000), 1e-9)
	lean := math.Asin(10.0 / 1500)
	drop := 510 / math.Cos(lean)
	near(t, "drop", float64(r.Legs[2].Tension), drop, 1e-9)
	near(t, "force in the bar", float64(r.Press), w/2.0*570/1000+drop*math.Sin(lean), 1e-9)
	near(t, "bar as drawn", float64(r.Drawing.Bar[1].X-r.Drawing.Bar[0].X), 1140, 1e-9)
}
