package heat

import (
	"math"
	"testing"
)

// All heat is accounted for, with properties that change with temperature, a
// joint that opens, losses and heat running off both ways.
func TestTheHeatBalanceCloses(t *testing.T) {
	t.Parallel()
	p := stormPump(t)
	p.Shaft.Front, p.Shaft.Bore = 80, 30
	p.Contact = Contact{Touching: 4000}
	p.Source = Source{Means: Induction, Net: 24e3, Depth: 4}
	b := newBodies(&p.Hub, &p.Shaft, p.Fit, p.Contact, p.Air, usualGrid)
	b.putPower(24e3, 0.004)
	clock := newStepper(b, usualGrid)
	check := func(phase string) {
		t.Helper()
		if u := b.unbalanced(); u > 1e-6 {
			t.Errorf("%s: %.2g of the heat is not accounted for", phase, u)
		}
	}
	for b.clock < 80 {
		clock.step()
	}
	near(t, "heat put in", b.in, 24e3*b.clock, 24e3*b.clock*1e-12)
	check("heating")
	if b.opening() < 0.076e-3 {
		t.Fatalf("joint still closed after %.0f s: %.3f mm", b.clock, b.opening()*1000)
	}
	b.putPower(0, 0)
	clock.restart()
	for b.clock < 4000 {
		clock.step()
	}
	check("cooling")
	if b.lost < 0.01*b.in {
		t.Errorf("lost %.0f of %.0f J in an hour", b.lost, b.in)
	}
}

// The error falls with the square of the ring and of the step.
func TestRingsAndStepsConvergeToTheSeries(t *testing.T) {
	t.Parallel()
	const bi, fo = 2, 0.3
	series := convective(bi, 30)
	worst := func(cells, steps int) float64 {
		cyl := newCylinder(cells, 1, 0, bi*50/0.1, 0)
		cyl.runs(t, fo, steps)
		w := 0.0
		for i, got := range cyl.t {
			w = math.Max(w, math.Abs(got-series(fo, cyl.at(i))))
		}
		return w
	}
	if c, f := worst(20, 3000), worst(40, 3000); c/f < 3.4 || f > 5e-4 {
		t.Errorf("20 rings %.2g, 40 rings %.2g: ratio %.2f, want about 4", c, f, c/f)
	}
	if c, f := worst(300, 10), worst(300, 20); c/f < 3 || f > 2e-3 {
		t.Errorf("10 steps %.2g, 20 steps %.2g: ratio %.2f, want about 4", c, f, c/f)
	}
}

// The grid in use is within a percent, for stresses and windows within two, of one twice as fine in
// radius, length and time, in what the sheet prints; temperatures over the start.
func TestTheUsualGridIsFineEnough(t *testing.T) {
	t.Parallel()
	fine := grid{hub: 20, shaft: 16, along: 16, step: usualGrid.step / 2, growth: 1.03}
	for name, change := range map[string]func(*Pull){
		"cautious contact": func(*Pull) {},
		"joint opens":      func(p *Pull) { p.Contact.TouchUntil = 0 },
		"real contact":     func(p *Pull) { p.Contact = Contact{Touching: 3000} },
		"short hub":        func(p *Pull) { p.Hub.Length, p.Source.Net, p.Shaft.Front = 50, 9e3, 200 },
		"large and slow": func(p *Pull) {
			p.Fit.Diameter, p.Hub.Outside, p.Hub.Length, p.Fit.Interference = 300, 480, 300, 0.19
			p.Source.Net, p.Skin.At = 60e3, 250
		},
	} {
		p := stormPump(t)
		p.Source.Net = 24e3
		change(&p)
		a := planned(t, p)
		b := Plan{Net: p.Source.Net, Workable: p.workable()}
		if err := p.follow(&b, fine); err != nil {
			t.Fatal(name, err)
		}
		same := func(what string, got, want, tol float64) {
			t.Helper()
			near(t, name+", "+what, got, want, tol*want)
		}
		same("parts", float64(a.Parts), float64(b.Parts), 0.01)
		same("free", float64(a.Free), float64(b.Free), 0.01)
		same("stays", float64(a.Stays), float64(b.Stays), 0.02)
		same("skin rise", float64(a.Skin-20), float64(b.Skin-20), 0.01)
		same("bore rise", float64(a.Bore-20), float64(b.Bore-20), 0.02)
		same("wall", float64(a.Wall.Difference), float64(b.Wall.Difference), 0.02)
		same("stress", float64(a.Wall.AtSkin), float64(b.Wall.AtSkin), -0.02)
		same("neighbour rise", float64(a.Neighbours[0].IfStuck-20), float64(b.Neighbours[0].IfStuck-20), 0.02)
		s := search{pull: &p, grid: fine}
		if !s.try(float64(a.Band.Least)*1.02).frees || s.try(float64(a.Band.Least)*0.97).frees {
			t.Errorf("%s: the least power is %.0f W, and not within 3 %% of the fine grid's", name, float64(a.Band.Least))
		}
		if !s.try(float64(a.Band.Most)*0.98).frees || s.try(float64(a.Band.Most)*1.03).frees {
			t.Errorf("%s: the most power is %.0f W, and not within 3 %% of the fine grid's", name, float64(a.Band.Most))
		}
	}
}

// A long shaft held warm loses heat like a fin with an insulated tip:
// T = Ta + (Tb - Ta) cosh(m (L - x))/cosh(m L), m² = h U/(k A).
// Incropera, Fundamentals of Heat and Mass Transfer, Table 3.4, case B.
func TestAShaftLosesHeatLikeAFin(t *testing.T) {
	t.Parallel()
	m := flat(50, 7850, 480, 12e-6)
	b := newBodies(&Hub{Outside: 120, Length: 100, Material: m, Start: 20}, &Shaft{Behind: 800, Material: m, Start: 20}, Fit{Diameter: 60, Interference: 0.05, Basis: Measured, Clearance: 0},
		Contact{Perfect: true}, Surroundings{20, 25}, grid{hub: 10, shaft: 10, along: 6, step: 0.0004, growth: 1.05})
	b.putPower(400, 0)
	clock := newStepper(b, usualGrid)
	clock.cap = 1e4
	for b.clock < 2e6 {
		clock.smooth = 1
		clock.step()
	}
	mm := math.Sqrt(25 * 2 / (50 * 0.03)) // h 2 pi r/(k pi r²)
	base := b.along(0) - 20
	for _, x := range []float64{0.05, 0.15, 0.4, 0.8} {
		want := base * math.Cosh(mm*(0.8-x)) / math.Cosh(mm*0.8)
		near(t, "fin", b.along(x)-20, want, 0.005*base)
	}
	// What runs off is lost by the shaft beyond the hub.
	lost := 0.0
	for _, st := range b.stations[b.to:] {
		outer := st.cell + b.nShaft - 1
		lost += b.air[outer] * (b.t[outer] - 20)
	}
	near(t, "heat run off", lost, 50*math.Pi*0.03*0.03*mm*math.Tanh(mm*0.8)*base, 0.01*lost)
}

// Thermal stress of a tube with steady flow through its wall, warm outside:
// Timoshenko and Goodier, Theory of Elasticity, long cylinder with a hole (also
// Roark, Formulas for Stress and Strain), from memory. b/a = 2, E = 200 GPa,
// nu = 0.3, alpha = 12e-6, 100 K over the wall.
func TestStressOfASteadyWallIsThatOfTheHandbook(t *testing.T) {
	t.Parallel()
	m := flat(50, 7850, 480, 12e-6)
	p := stormPump(t)
	p.Hub.Material = m
	a, r := 0.06, 0.12
	b := newBodies(&Hub{Outside: 240, Length: 150, Material: m, Start: 20}, &Shaft{Material: m, Start: 20}, Fit{Diameter: 120, Interference: 0.05, Basis: Measured, Clearance: 0},
		Contact{Perfect: true}, Surroundings{20, 0}, grid{hub: 200, shaft: 10, along: 1})
	// The steady profile, carried on into the shaft, with the flow that makes it.
	for i := range b.t {
		x := middle(b.span(&Shaft{}, i))
		b.t[i] = 20 + 100*math.Log(x/a)/math.Log(r/a)
	}
	b.skinPower[0] = 50 * 2 * math.Pi * 0.15 * 100 / math.Log(r/a)
	var plan Plan
	p.wall(&plan, b, 0)
	ln := math.Log(r / a)
	factor := 200e3 * 12e-6 * 100 / (2 * 0.7 * ln)
	near(t, "bore", float64(plan.Wall.AtBore), factor*(2*r*r/(r*r-a*a)*ln-1), 0.1)
	near(t, "skin", float64(plan.Wall.AtSkin), -factor*(1-2*a*a/(r*r-a*a)*ln), 0.1)
}

func BenchmarkPlan(b *testing.B) {
	p := stormPump(b)
	for b.Loop() {
		if _, err := p.Plan(); err != nil {
			b.Fatal(err)
		}
	}
}

// One solve: one power heated until free.
func BenchmarkSolve(b *testing.B) {
	p := stormPump(b)
	s := search{pull: &p, grid: usualGrid}
	for b.Loop() {
		s.try(24e3)
	}
}
