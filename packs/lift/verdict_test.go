package lift

import (
	"math"
	"testing"
)

// Every figure of one lift by hand: two legs, picks ±800, hook 1800 above, the
// centre 100 toward B ± 40; formulas of two legs with level picks, exact statics.
func TestVerdictByHand(t *testing.T) {
	t.Parallel()
	p := good()
	r := compute(t, p)
	const w = 2000 + 100 + 2*5 + 2*1
	near(t, "gross", float64(r.Gross), w, 1e-9)
	near(t, "hook load", float64(r.HookLoad), w+4+50, 1e-9)
	near(t, "crane", float64(r.CraneShare), (w+54)*1.1/5000, 1e-12)
	tb := w * 900 * math.Hypot(700, 1800) / (1600 * 1800)
	near(t, "tension in B", float64(r.Legs[1].Tension), tb, 1e-6)
	// The hook and the lengths stay; with the centre 40 nearer B the load tilts and B
	// carries more, by about 40/1600 of the weight.
	rise := float64(r.Legs[1].High) - tb
	if share := rise / w; share < 0.02 || share > 0.035 {
		t.Errorf("40 mm nearer moves %.4f of the weight, want about 0.025", share)
	}
	near(t, "design", float64(r.Legs[1].Design), 1.1*float64(r.Legs[1].High), 1e-9)
	sling := component(t, r, "legs[1].sling")
	near(t, "sling", float64(sling.Used), float64(r.Legs[1].Design)/3000, 1e-12)
	if r.Components[r.Weakest].Field != "crane" && r.Components[r.Weakest].Used < sling.Used {
		t.Errorf("weakest %+v", r.Components[r.Weakest])
	}
	// A leg of 2012.5 mm that is 10 mm long stands 10 x 2012.5/1800 higher: left out, the
	// hook stood 11 mm too low on paper.
	long := 10 * math.Hypot(900, 1800) / 1800
	near(t, "hook needed", float64(r.Headroom.Needed), 1500+700+1800+long+300, 1e-6)
	near(t, "spare", float64(r.Headroom.Spare), 6000-4300-long, 1e-6)
	// A pendulum: 40 mm sideways at 2100 under the hook, with the legs as they are.
	near(t, "most tilt within the tolerance", float64(r.Tilt.Within), float64(degrees(math.Atan(40.0/2100))), 1e-6)
}

func TestCautions(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name   string
		code   CautionCode
		change func(*Plan)
	}{
		{"sling too weak", Overloaded, func(p *Plan) { p.Legs[1].Sling.Rated = 1000 }},
		{"crane too small", Overloaded, func(p *Plan) { p.Crane.Rated = 2000 }},
		{"ring too weak", Overloaded, func(p *Plan) { p.TopGear[0].Rated = 2000 }},
		{"load that takes little press", Overloaded, func(p *Plan) { p.Load.MayPress = 300 }},
		{"roof too low", NoReach, func(p *Plan) { p.Headroom.HighHook = 4000 }},
		{"headroom left out", NoHeadroom, func(p *Plan) { p.Headroom = nil }},
		{"wide tolerance", OutOfLevel, func(p *Plan) { p.Load.CoGTolerance.X = 200 }},
		{"low hook", FlatLeg, func(p *Plan) { p.HookHeight = 800 }},
		{"hook lower than the aim", BelowAim, func(p *Plan) { p.HookHeight = 1200 }},
		{"long slings on close picks", TouchyLength, func(p *Plan) {
			p.Picks[0].At.X, p.Picks[1].At.X, p.HookHeight = -100, 300, 2500
		}},
		{"centre near a pick", NearlySlack, func(p *Plan) { p.Load.CoG.X = 740 }},
		{"estimate without a tolerance", LooseMass, func(p *Plan) { p.Load.Source, p.Load.MassTolerance = Estimated, 0 }},
		{"loose mass near the crane's limit", LooseMass, func(p *Plan) { p.Load.MassTolerance, p.Crane.Rated = 300, 3000 }},
		{"centre without a tolerance", LooseCentre, func(p *Plan) { p.Load.CoGTolerance = Point{} }},
		{"weightless gear", NoGearWeight, func(p *Plan) {
			for i := range p.Legs {
				p.Legs[i].Sling.Mass, p.Legs[i].Gear[0].Mass = 0, 0
			}
			p.TopGear = nil
		}},
		{"near the crane's limit", CriticalLift, func(p *Plan) { p.Crane.Rated = 3100 }},
	} {
		if p := good(); cautioned(compute(t, p), c.code) {
			t.Errorf("%s: the good plan has it already", c.name)
		}
		p := good()
		c.change(&p)
		if r := compute(t, p); !cautioned(r, c.code) {
			t.Errorf("%s: no caution %s among %+v", c.name, c.code, r.Cautions)
		}
	}
	high := rectangle(1000, 0.5, 0.5)
	high.Load.CoG.Z = 50
	if !cautioned(compute(t, high), HighCentre) {
		t.Error("centre above four picks: no caution")
	}
	named := quadAt(1000, 60)
	if !cautioned(compute(t, named), NamedSharing) {
		t.Error("three of four: no caution")
	}
	slack := rectangle(1000, 0.5, 0.5)
	slack.HookHeight = 0
	for i, l := range []Mm{3200, 3200, 3200, 3230} {
		slack.Legs[i].Length = l
	}
	if r := compute(t, slack); !cautioned(r, SlackLeg) {
		t.Errorf("one long leg of four: no caution among %+v", r.Cautions)
	}
}

// A leg given and the other to be chosen: the height comes from the one in hand.
func TestOneLegInHand(t *testing.T) {
	t.Parallel()
	p := good()
	p.HookHeight = 0
	p.Legs[0].Length = 2000
	r := compute(t, p)
	h := math.Sqrt(2000*2000 - 900*900)
	near(t, "the other leg", float64(r.Legs[1].Length), math.Hypot(700, h), 1e-6)
	if r.Legs[0].Chosen || !r.Legs[1].Chosen {
		t.Errorf("chosen: %v %v", r.Legs[0].Chosen, r.Legs[1].Chosen)
	}
	near(t, "tilt", float64(r.Tilt.Total), 0, 1e-6)
}

// One leg over a centre that lies 30 beside the pick and 400 below: a pendulum.
func TestOneLeg(t *testing.T) {
	t.Parallel()
	p := bare(145, Point{X: 30, Z: -400}, Point{})
	p.Legs[0].Length = 1000
	r := compute(t, p)
	near(t, "tilt", float64(r.Tilt.Total), float64(degrees(math.Atan(30.0/400))), 1e-9)
	near(t, "+x end down", float64(r.Tilt.AlongX), float64(degrees(math.Atan(30.0/400))), 1e-9)
	near(t, "tension", float64(r.Legs[0].Tension), 145, 1e-9)
	p.Load.CoG.Z = 10
	if no := refusalOf(t, p); no.Field != "load.cog" {
		t.Errorf("centre above the pick: refused at %s", no.Field)
	}
}

// An eyebolt in the top of a load is reduced by the lean of its leg, and a maker's
// ladder stands in for ours.
func TestEyeboltUnderALeaningLeg(t *testing.T) {
	t.Parallel()
	p := flatPlan(1000, 55)
	p.Legs[0].Gear = []Hardware{{Name: "eyebolt", Kind: ShoulderEyebolt, Rated: 2000, Axis: Point{Z: 1}}}
	p.Legs[1].Gear = []Hardware{{Name: "collar eye", Kind: ShoulderEyebolt, Rated: 2000, Axis: Point{Z: 1},
		Ladder: []Rung{{0, 1}, {45, 0.7}}, LadderSource: "maker's sheet"}}
	r := compute(t, p)
	near(t, "35° off the axis", float64(component(t, r, "legs[0].gear[0]").Allowed), 500, 1e-9)
	near(t, "maker's ladder", float64(component(t, r, "legs[1].gear[0]").Allowed), 1400, 1e-9)
}

// An EN bridle is held to its band and to each leg; with a steep centred lift the
// band is the tighter (1.4 against 2 sin 80°).
func TestENBridleAsAWhole(t *testing.T) {
	t.Parallel()
	p := rate(flatPlan(1000, 80), 1000)
	p.Basis = EN
	r := compute(t, p)
	near(t, "whole", float64(component(t, r, "legs").Used), 1/1.4, 1e-12)
	near(t, "leg", float64(component(t, r, "legs[0].sling").Used), 0.5/math.Sin(radians(80)), 1e-12)
	if r.Components[r.Weakest].Field != "legs" {
		t.Errorf("weakest %q", r.Components[r.Weakest].Name)
	}
	p.Basis = US
	for _, c := range compute(t, p).Components {
		if c.Field == "legs" {
			t.Error("a US bridle is rated by an EN band")
		}
	}
}

// The tolerance works to both sides, and an eyebolt counts at the widest lean that it
// brings: sideways it rolls the load, and a rung further down is reached.
func TestBandTakesTheWorseEnd(t *testing.T) {
	t.Parallel()
	p := bare(1000, Point{Z: -1000}, Point{X: -260}, Point{X: 260})
	p.HookHeight = 1000 // 14.6° from upright
	p.Load.CoGTolerance = Point{X: 30}
	p.Legs[0].Gear = []Hardware{{Name: "eyebolt", Kind: ShoulderEyebolt, Rated: 2000, Axis: Point{Z: 1}}}
	r := compute(t, p)
	near(t, "eyebolt, rung of 15°", float64(component(t, r, "legs[0].gear[0]").Allowed), 1600, 1e-9)
	a, b := r.Legs[0], r.Legs[1]
	near(t, "the two legs alike, low", float64(a.Low), float64(b.Low), 1e-6)
	near(t, "the two legs alike, high", float64(a.High), float64(b.High), 1e-6)
	if a.Low >= a.Tension || a.High <= a.Tension {
		t.Errorf("band %g to %g does not enclose %g", a.Low, a.High, a.Tension)
	}
	if len(r.Drawing.Band) != 2 || r.Drawing.Band[0].X != -30 || r.Drawing.Band[1].X != 30 {
		t.Errorf("band drawn at %v", r.Drawing.Band)
	}
	p.Load.CoGTolerance = Point{Y: 100}
	r = compute(t, p)
	near(t, "eyebolt, rung of 30°", float64(component(t, r, "legs[0].gear[0]").Allowed), 1300, 1e-9)
	near(t, "roll", float64(r.Tilt.Within), float64(degrees(math.Atan(100.0/1000))), 1e-6)
}

// A basket round a body under its hook: the tangents at a reach of 1500.
func TestBasketSpreadFromTheReach(t *testing.T) {
	t.Parallel()
	p := rotor(TwoHooks)
	p.SecondCrane = p.Crane
	p.Legs[0].Sling = Sling{Name: "basket", Rated: 1000, Fibre: Web, Hitch: Basket, Around: 750}
	r := compute(t, p)
	near(t, "750 round", float64(component(t, r, "legs[0].sling").Allowed), 2000*math.Sqrt(1-0.0625), 1e-6)
}

// The working shows the numbers of the result.
func TestWorkingShowsTheResult(t *testing.T) {
	t.Parallel()
	r := compute(t, good())
	got := map[string]float64{}
	for _, w := range r.Working {
		if w.Formula == "" || w.Source == "" {
			t.Errorf("%q has formula %q and source %q", w.What, w.Formula, w.Source)
		}
		for _, f := range w.Figures {
			got[w.Names(nil)+"/"+f.Symbol] = float64(f.Amount)
		}
	}
	for what, want := range map[string]float64{
		"gross weight on the legs/W":             2112,
		"dynamic factor/k":                       1.1,
		"leg A: length and angle/h":              1800,
		"leg A: length and angle/d":              900,
		"leg B: tension/T":                       float64(r.Legs[1].Tension.Newton()),
		"tilt by a wrong leg length/e":           10,
		"hook load/hook load":                    2166,
		"hook height needed/needed":              4300 + 10*math.Hypot(900, 1800)/1800,
		"press between the picks/C":              float64(r.Press.Newton()),
		"leg A: length and angle/factor":         math.Hypot(900, 1800) / 1800,
		"tilt/most within tolerance":             float64(r.Tilt.Within),
		"tilt/most with one leg off":             float64(r.Tilt.Most),
		"tilt by a wrong leg length/tilt":        float64(r.ErrorTilt),
		"leg B: tension/upright share":           float64(r.Legs[1].Vertical),
		"gross weight on the legs/gear":          12,
		"hook height needed/spare":               1700 - 10*math.Hypot(900, 1800)/1800,
		"leg B: tension/design":                  float64(r.Legs[1].Design),
		"gross weight on the legs/mass":          2000,
		"hook load/gear above":                   4,
		"hook height needed/stack":               300,
		"gross weight on the legs/bar":           0,
		"hook height needed/hook above the load": 1800,
	} {
		near(t, what, got[what], want, 1e-6)
	}
}
