package lift

import (
	"math"
	"strings"
	"testing"
)

// good is a plan with nothing wrong and gear in all its pull lines.
func good() Plan {
	p := bare(2000, Point{X: 100, Z: -300}, Point{X: -800}, Point{X: 800})
	p.HookHeight = 1800
	p.Load.CoGTolerance = Point{X: 40}
	p.Load.MassTolerance = 100
	p.Dynamic = 1.1
	p.Crane = Crane{Name: "station crane", Rated: 5000, Block: 50}
	p.Load.Outline = box(Point{X: 100, Z: -700}, Point{X: 100, Z: 50}) // no corner that a tilt would lower
	p.Headroom = &Headroom{HighHook: 6000, PassOver: 1500, Underside: 700, Stack: 300}
	for i := range p.Legs {
		p.Legs[i].Sling.Rated, p.Legs[i].Sling.Mass = 3000, 5
		p.Legs[i].Gear = []Hardware{{Name: "shackle", Kind: Shackle, Rated: 3250, Mass: 1}}
	}
	p.TopGear = []Hardware{{Name: "ring", Kind: InLine, Rated: 5000, Mass: 4}}
	return p
}

func TestPlansAreRefused(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name, field string
		change      func(*Plan)
	}{
		{"no mass", "load.mass", func(p *Plan) { p.Load.Mass = 0 }},
		{"mass that is no number", "load.mass", func(p *Plan) { p.Load.Mass = Kg(math.NaN()) }},
		{"mass without a source", "load.source", func(p *Plan) { p.Load.Source = 0 }},
		{"no centre of gravity", "load.cog", func(p *Plan) { p.Load.CoG = nil }},
		{"centre of gravity past a pick", "load.cog", func(p *Plan) { p.Load.CoG.X = 801 }},
		{"centre of gravity above two picks", "load.cog", func(p *Plan) { p.Load.CoG.Z = 1 }},
		{"centre of gravity beside two picks on one level with it", "load.cog", func(p *Plan) { p.Load.CoG.Y, p.Load.CoG.Z = 5, 0 }},
		{"tolerance that passes a pick", "load.cogtolerance", func(p *Plan) { p.Load.CoGTolerance.X = 701 }},
		{"tolerance below zero", "load.cogtolerance.x", func(p *Plan) { p.Load.CoGTolerance.X = -1 }},
		{"no rig", "rig", func(p *Plan) { p.Rig = 0 }},
		{"no basis", "basis", func(p *Plan) { p.Basis = AsPlan }},
		{"no picks", "picks", func(p *Plan) { p.Picks, p.Legs = nil, nil }},
		{"two picks at one place", "picks[1]", func(p *Plan) { p.Picks[1] = p.Picks[0] }},
		{"picks one above the other", "load.cog", func(p *Plan) { p.Picks[1].At = Point{X: -800, Z: 500} }},
		{"a leg too few", "legs", func(p *Plan) { p.Legs = p.Legs[:1] }},
		{"unrated sling", "legs[1].sling.rated", func(p *Plan) { p.Legs[1].Sling.Rated = 0 }},
		{"sling of the other basis", "legs[1].sling.basis", func(p *Plan) { p.Legs[1].Sling.Basis = EN }},
		{"sling of nothing", "legs[0].sling.fibre", func(p *Plan) { p.Legs[0].Sling.Fibre = 0 }},
		{"no hitch", "legs[0].sling.hitch", func(p *Plan) { p.Legs[0].Sling.Hitch = 0 }},
		{"unrated shackle", "legs[0].gear[0].rated", func(p *Plan) { p.Legs[0].Gear[0].Rated = 0 }},
		{"shackle of the other basis", "legs[0].gear[0].basis", func(p *Plan) { p.Legs[0].Gear[0].Basis = EN }},
		{"gear of no kind", "topgear[0].kind", func(p *Plan) { p.TopGear[0].Kind = 0 }},
		{"nothing says how long the legs are", "hookheight", func(p *Plan) { p.HookHeight = 0 }},
		{"both a height and an aim", "aim", func(p *Plan) { p.Aim = 60 }},
		{"both lengths and a height", "hookheight", func(p *Plan) { p.Legs[0].Length = 2000 }},
		{"hook under the picks", "hookheight", func(p *Plan) { p.HookHeight = -100 }},
		{"legs under 30°", "legs[0]", func(p *Plan) { p.HookHeight = 400 }},
		{"aim under 30°", "aim", func(p *Plan) { p.Aim = 20 }},
		{"legs too short to reach", "legs[0]", func(p *Plan) { p.HookHeight, p.Legs[0].Length, p.Legs[1].Length = 0, 850, 1500 }},
		{"one leg far longer than the other and the span", "legs[0]", func(p *Plan) { p.HookHeight, p.Legs[0].Length, p.Legs[1].Length = 0, 4000, 1500 }},
		{"dynamic factor under one", "dynamic", func(p *Plan) { p.Dynamic = 0.9 }},
		{"no threshold", "criticalat", func(p *Plan) { p.CriticalAt = 0 }},
		{"no crane", "crane.rated", func(p *Plan) { p.Crane.Rated = 0 }},
		{"sharing on two legs", "sharing", func(p *Plan) { p.Sharing, p.DecidedBy, p.Reason = ThreeOfFour, "A. Person", "x" }},
		{"choke angle on a straight sling", "legs[0].sling.chokeangle", func(p *Plan) { p.Legs[0].Sling.ChokeAngle = 135 }},
		{"spread on a straight sling", "legs[0].sling.spread", func(p *Plan) { p.Legs[0].Sling.Parallel = true }},
		{"side pull on a ring", "topgear[0].offline", func(p *Plan) { p.TopGear[0].OffLine = 10 }},
		{"bar without a bar", "bar", func(p *Plan) { p.Bar.Mass = 10 }},
		{"second crane on one hook", "secondcrane", func(p *Plan) { p.SecondCrane.Rated = 100 }},
		{"skew factor without skew", "skewfactor", func(p *Plan) { p.SkewFactor = 1.25 }},
		{"no high hook", "headroom.highhook", func(p *Plan) { p.Headroom.HighHook = 0 }},
	} {
		p := good()
		c.change(&p)
		no := refusalOf(t, p)
		if no.Field != c.field {
			t.Errorf("%s: refused at %s, want %s (%s)", c.name, no.Field, c.field, no.Message)
		}
		if no.Help == "" || no.Message == "" || strings.HasSuffix(no.Error(), ".") {
			t.Errorf("%s: says %q", c.name, no.Error())
		}
	}
}

// Everything wrong as written is told at once.
func TestAllFaultsAtOnce(t *testing.T) {
	t.Parallel()
	p := good()
	p.Load.Mass, p.Load.CoG, p.Legs[0].Sling.Rated = 0, nil, 0
	_, err := Compute(p)
	if got := strings.Count(err.Error(), "\n"); got != 2 {
		t.Errorf("got %d line ends, want 2:\n%v", got, err)
	}
}

func TestFourLegConventionsNeedAName(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		field  string
		change func(*Plan)
	}{
		{"decidedby", func(p *Plan) { p.DecidedBy = "" }},
		{"reason", func(p *Plan) { p.Reason = "" }},
		{"skewfactor", func(p *Plan) { p.SkewFactor = 0 }},
		{"sharing", func(p *Plan) { p.Picks[2].At = Point{X: 900, Y: 450} }}, // a dent in the outline
	} {
		p := rectangle(1000, 0.4, 0.4)
		p.Sharing, p.SkewFactor, p.DecidedBy, p.Reason = Skew, 1.25, "A. Person", "matched slings"
		p.Load.CoGTolerance = Point{X: 1, Y: 1, Z: 1}
		c.change(&p)
		if no := refusalOf(t, p); no.Field != c.field {
			t.Errorf("refused at %s, want %s: %s", no.Field, c.field, no.Message)
		}
	}
}

// A third leg that carries nothing, or pushes, is slack.
func TestSlackLegsAreRefused(t *testing.T) {
	t.Parallel()
	p := bare(1000, Point{Z: -400}, Point{X: 1000}, Point{X: -500, Y: 800}, Point{X: -500, Y: -800})
	for i, l := range []Mm{2000, 2200, 1900} {
		p.Legs[i].Length = l
	}
	compute(t, p)
	p.Legs[0].Length = 4000
	if no := refusalOf(t, p); no.Field != "legs[0]" || !strings.Contains(no.Message, `"A" hangs slack`) {
		t.Errorf("%s: %s", no.Field, no.Message)
	}
	p = bare(1000, Point{Z: -400}, Point{X: 1500}, Point{X: -1500}, Point{Y: 1200})
	p.HookHeight = 2000
	if no := refusalOf(t, p); no.Field != "load.cog" {
		t.Errorf("centre on the line of two of three picks: %s: %s", no.Field, no.Message)
	}
}
