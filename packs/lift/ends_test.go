package lift

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// asked reports whether the result asks for the field before the lift.
func asked(r *Result, field string) bool {
	for _, no := range r.Unanswered {
		if no.Field == field {
			return true
		}
	}
	return false
}

// booked reports whether the field has a component.
func booked(r *Result, field string) bool {
	for _, c := range r.Components {
		if c.Field == field {
			return true
		}
	}
	return false
}

// By hand: 1000 kg with the centre a quarter of the way from A hangs with 750 kg at
// A. A beam rated 1200 kg carries the whole with 83 % and its end with 750/600, which
// is 125 %; the sheet told 83 %.
func TestABeamIsHeldAtItsEnds(t *testing.T) {
	t.Parallel()
	for _, rig := range []Rig{Beam, Spreader} {
		p := rotor(rig)
		p.Load.Mass, p.Load.CoG.X, p.Bar.Rated = 1000, -280, 1200
		r := compute(t, p)
		near(t, "whole", float64(component(t, r, "bar").Used), 1000.0/1200, 1e-9)
		near(t, "end over A", float64(component(t, r, "bar.ends[0]").Used), 750.0/600, 1e-9)
		near(t, "end over B", float64(component(t, r, "bar.ends[1]").Used), 250.0/600, 1e-9)
		if !cautioned(r, Overloaded) {
			t.Error("an end over its half rating: no caution")
		}
		p.Bar.Ends = [2]Kg{800, 400}
		near(t, "end by its own rating", float64(component(t, compute(t, p), "bar.ends[0]").Used), 750.0/800, 1e-9)
	}
}

// Whatever the load under a bar, each end is held against no more than its own
// rating, with the most that its drop pulls by design.
func TestEveryEndOfABarIsHeld(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		p := drawnBar(t, rapid.SampledFrom([]Rig{Spreader, Beam}).Draw(t, "rig"))
		p.Bar.Rated = Kg(rapid.Float64Range(100, 30000).Draw(t, "rated"))
		p.Dynamic = Ratio(rapid.Float64Range(1, 2).Draw(t, "dynamic"))
		p.Load.CoGTolerance.X = Mm(rapid.Float64Range(0, 30).Draw(t, "within"))
		if rapid.Bool().Draw(t, "by end") {
			p.Bar.Ends = [2]Kg{Kg(rapid.Float64Range(100, 20000).Draw(t, "end A")), Kg(rapid.Float64Range(100, 20000).Draw(t, "end B"))}
		}
		r := mustCompute(t, p)
		for i := range 2 {
			may := p.Bar.Rated / 2
			if p.Bar.Ends[i] > 0 {
				may = p.Bar.Ends[i]
			}
			drop := r.Legs[len(p.TopLegs)+i]
			over := drop.High*Kg(r.Dynamic) > may*(1+1e-9)
			found := false
			for _, c := range r.Cautions {
				found = found || c.Code == Overloaded && c.Stop && c.Field == []string{"bar.ends[0]", "bar.ends[1]"}[i]
			}
			if over != found {
				t.Fatalf("end %d pulls %g of %g, and the lift is stopped: %v", i, drop.High*Kg(r.Dynamic), may, found)
			}
		}
	})
}

// A spreader is rated for legs of an angle: flatter ones press it more than its plate
// means. By hand: 1020 kg at 45° press it with 510 kg, at 60° with 510/tan 60 = 294 kg.
func TestASpreaderIsHeldByTheLegsAboveIt(t *testing.T) {
	t.Parallel()
	p := rotor(Spreader)
	p.Load.CoG.X, p.Aim = 0, 45
	if r := compute(t, p); !asked(r, "bar.leastangle") || booked(r, "bar.maypress") {
		t.Errorf("a spreader of which no angle is known: %+v", r.Unanswered)
	}
	p.Bar.LeastAngle = 60
	r := compute(t, p)
	if !cautioned(r, BarTooFlat) || asked(r, "bar.leastangle") {
		t.Errorf("legs of 45° over a spreader for 60°: cautions %+v", r.Cautions)
	}
	near(t, "pressed", float64(component(t, r, "bar.maypress").Used), 510/(1000/math.Tan(math.Pi/3)), 1e-9)
	near(t, "top lugs", float64(component(t, r, "bar.toplugs[0]").Used), 510*math.Sqrt2/(1000/math.Sin(math.Pi/3)), 1e-9)
	p.Aim = 60
	r = compute(t, p)
	if cautioned(r, BarTooFlat) {
		t.Error("legs of 60° over a spreader for 60°: stopped")
	}
	near(t, "pressed at 60°", float64(component(t, r, "bar.maypress").Used), 0.51, 1e-9)
	near(t, "top lugs at 60°", float64(component(t, r, "bar.toplugs[1]").Used), 0.51, 1e-9)
	p.Bar.LeastAngle, p.Bar.MayPress, p.Bar.TopLugs = 0, 400, 700
	r = compute(t, p)
	near(t, "pressed by its own figure", float64(component(t, r, "bar.maypress").Used), 510/math.Tan(math.Pi/3)/400, 1e-9)
	near(t, "lugs by their own", float64(component(t, r, "bar.toplugs[1]").Used), 510/math.Sin(math.Pi/3)/700, 1e-9)
	// Lugs 100 mm over the middle line bend it by press × 100 mm, and its own 60 kg by
	// w s/8.
	p.Bar.LugRise, p.Bar.Mass = 100, 60
	if !asked(compute(t, p), "bar.maybend") {
		t.Error("lugs over the middle line, and nothing asks what the bar may be bent with")
	}
	p.Bar.MayBend = 2000
	r = compute(t, p)
	moment := (float64(r.Press)*100 + 60*1120/8) / 1000 * standardGravity
	near(t, "bent", float64(component(t, r, "bar.maybend").Used), moment/2000, 1e-9)
}

// A beam with its bail in the middle is bent as by the load in its middle, W s/4, and
// by its own weight (the row of TestBeamBending by hand).
func TestABeamIsHeldAgainstBending(t *testing.T) {
	t.Parallel()
	p := rotor(Beam)
	p.Load.CoG.X, p.Bar.Mass = 0, 100
	near(t, "by its rating", float64(component(t, compute(t, p), "bar.maybend").Used), 1020.0/2000, 1e-9)
	p.Bar.MayBend = 3000
	near(t, "by its own figure", float64(component(t, compute(t, p), "bar.maybend").Used), (1020*1.12/4+100*1.12/8)*standardGravity/3000, 1e-9)
}

// A lug without a rating stood on the sheet as if it could carry anything.
func TestLiftingPointsAreHeldOrAskedFor(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		p := drawnBridle(t, rapid.IntRange(2, 4).Draw(t, "legs"))
		p.Dynamic = Ratio(rapid.Float64Range(1, 1.5).Draw(t, "dynamic"))
		i := rapid.IntRange(0, len(p.Picks)-1).Draw(t, "pick")
		known := rapid.Bool().Draw(t, "known")
		if known {
			p.Picks[i].Point = &LiftingPoint{What: "lug", Rated: Kg(rapid.Float64Range(10, 60000).Draw(t, "rated")), Source: "drawing 7",
				LeastAngle: Degree(rapid.Float64Range(30, 90).Draw(t, "least"))}
		}
		r := mustCompute(t, p)
		field := []string{"picks[0].point", "picks[1].point", "picks[2].point", "picks[3].point"}[i]
		if asked(r, field) == known || booked(r, field) != known {
			t.Fatalf("known %v: %+v", known, r.Unanswered)
		}
		if !known {
			return
		}
		k := p.Picks[i].Point
		stopped, flat := false, false
		for _, c := range r.Cautions {
			stopped = stopped || c.Field == field && c.Code == Overloaded && c.Stop
			flat = flat || c.Field == field && c.Code == PointTooFlat && c.Stop
		}
		if over := r.Legs[i].Design > k.Rated*(1+1e-9); over != stopped {
			t.Fatalf("pulled %g of %g, stopped %v", r.Legs[i].Design, k.Rated, stopped)
		}
		if lean := r.Legs[i].Flattest < min(k.LeastAngle, 85)-1e-6; lean && !flat {
			t.Fatalf("pulled at %v, rated for %v, and not stopped", r.Legs[i].Flattest, k.LeastAngle)
		}
	})
	// A sling round the load, and a leg that ends in an eyebolt, need none.
	p := good()
	p.Legs[0].Sling.Hitch, p.Legs[0].Sling.ChokeAngle = Choker, 130
	p.Legs[1].Gear = append(p.Legs[1].Gear, Hardware{Name: "eye", Kind: ShoulderEyebolt, Rated: 9000, Axis: Point{Z: 1}})
	if r := compute(t, p); asked(r, "picks[0].point") || asked(r, "picks[1].point") {
		t.Errorf("asked for: %+v", r.Unanswered)
	}
	for _, c := range []struct {
		field string
		point LiftingPoint
	}{
		{"picks[0].point.rated", LiftingPoint{LeastAngle: 60, Source: "plate"}},
		{"picks[0].point.leastangle", LiftingPoint{Rated: 1000, Source: "plate"}},
		{"picks[0].point.source", LiftingPoint{Rated: 1000, LeastAngle: 60}},
	} {
		p := good()
		p.Picks[0].Point = &c.point
		if no := refusalOf(t, p); no.Field != c.field {
			t.Errorf("refused at %s, want %s", no.Field, c.field)
		}
	}
}

// A hook is loaded in its saddle; anywhere else it stops the lift.
func TestHooksAreLoadedInTheirSaddle(t *testing.T) {
	t.Parallel()
	for _, seat := range []HookSeat{Saddle, QuarterOut, HalfOut, ThreeQuartersOut, Tip} {
		p := good()
		p.Legs[0].Gear = append(p.Legs[0].Gear, Hardware{Name: "sling hook", Kind: Hook, Rated: 3000, Seat: seat})
		r := compute(t, p)
		if cautioned(r, OffSaddle) != (seat != Saddle) {
			t.Errorf("seat %d: cautions %+v", seat, r.Cautions)
		}
	}
	p := good()
	p.Legs[0].Gear = append(p.Legs[0].Gear, Hardware{Name: "sling hook", Kind: Hook, Rated: 3000})
	if no := refusalOf(t, p); no.Field != "legs[0].gear[1].seat" {
		t.Errorf("a hook without a seat: refused at %s", no.Field)
	}
}

// The parts of a basket that leans do not share evenly, and no share named lowers
// that: what is left only falls, whatever is written.
func TestUnlikePartsOfABasket(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		s := Sling{Name: "s", Rated: 1000, Fibre: Web, Hitch: Basket, Spread: Degree(rapid.Float64Range(1, 100).Draw(t, "spread")),
			Turns: rapid.Bool().Draw(t, "turns")}
		lean := Degree(rapid.Float64Range(0, 59).Draw(t, "lean"))
		plain, no := s.basket("sling", US, 1000)
		if no != nil {
			t.Fatal(no)
		}
		least, no := s.reductions("sling", US, 1000, lean)
		if no != nil {
			t.Fatal(no)
		}
		s.HeavierPart = Ratio(rapid.Float64Range(0.5, 0.99).Draw(t, "heavier"))
		told, no := s.reductions("sling", US, 1000, lean)
		if no != nil {
			t.Fatal(no)
		}
		if product(told) > product(least)+1e-12 || product(least) > product(plain)+1e-12 || lean > upright && product(least) > product(plain)*0.5/0.55+1e-12 {
			t.Fatalf("plain %g, leaning by %v %g, with %g in one part %g", product(plain), lean, product(least), s.HeavierPart, product(told))
		}
	})
	p := good()
	p.Legs[0].Sling.Hitch, p.Legs[0].Sling.Parallel, p.Legs[0].Sling.Fibre = Basket, true, Web
	near(t, "a basket in a bridle", float64(component(t, compute(t, p), "legs[0].sling").Allowed), 3000*2*0.5/0.55, 1e-9)
	p.Legs[0].Sling.HeavierPart = 0.4
	if no := refusalOf(t, p); no.Field != "legs[0].sling.heavierpart" {
		t.Errorf("refused at %s", no.Field)
	}
}

// What to look at before use carries the rule's own figures.
func TestLooksCarryTheirFigures(t *testing.T) {
	t.Parallel()
	p := good()
	p.Legs[0].Gear = []Hardware{{Name: "eye", Kind: ShoulderEyebolt, Rated: 9000, Axis: Point{Z: 1}, Thread: 20}, {Name: "hook", Kind: Hook, Rated: 9000, Seat: Saddle}}
	p.Legs[1].Sling.Rope, p.Crane.Rated = 16, 2600
	r := compute(t, p)
	for _, want := range []string{"thread in by 30 mm or more, spacer no thicker than 1 mm", "more than 15 % or twisted by more than 10.0°", "thimbles of 48 mm or more"} {
		found := false
		for _, l := range r.Looks {
			found = found || strings.Contains(l.What, want)
		}
		if !found {
			t.Errorf("nothing says %q: %+v", want, r.Looks)
		}
	}
}
