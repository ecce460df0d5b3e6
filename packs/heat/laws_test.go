package heat

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// joint draws a hub on a shaft of flat properties, so that the laws below are
// those of the equations, not of a steel that conducts less when hot.
func joint(t *rapid.T) Pull {
	m := flat(rapid.Float64Range(20, 60).Draw(t, "k"), 7850, 480, rapid.Float64Range(10e-6, 18e-6).Draw(t, "alpha"))
	d := rapid.Float64Range(40, 300).Draw(t, "diameter")
	return Pull{
		Fit:     Fit{Diameter: Mm(d), Interference: Mm(d * rapid.Float64Range(0.0003, 0.0012).Draw(t, "interference per mm")), Basis: Measured, Clearance: 0},
		Hub:     Hub{Outside: Mm(d * rapid.Float64Range(1.3, 2.5).Draw(t, "outside")), Length: Mm(d * rapid.Float64Range(0.5, 1.5).Draw(t, "length")), Material: m, Start: 20},
		Shaft:   Shaft{Behind: Mm(rapid.Float64Range(100, 1000).Draw(t, "behind")), Material: m, Start: 20},
		Contact: Contact{Touching: Conductance(rapid.Float64Range(500, 30000).Draw(t, "joint")), TouchUntil: Mm(d)},
		Source:  Source{Means: Torch},
		Air:     Surroundings{20, 10},
		Skin:    Limit{At: 300, Source: "test"},
		Longest: 900,
	}
}

// heatedFor is a pull after so many seconds of so many watts.
func heatedFor(t *rapid.T, p *Pull, power, seconds float64) *bodies {
	b := newBodies(&p.Hub, &p.Shaft, p.Fit, p.Contact, p.Air, usualGrid)
	b.putPower(power, 0)
	clock := newStepper(b, usualGrid)
	for b.clock < seconds {
		if !clock.step() {
			t.Fatal("no solution")
		}
	}
	return b
}

func TestMoreInterferenceNeedsMoreRise(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		p := joint(t)
		p.Hub.Material, _ = MaterialNamed("carbon steel")
		more := p.Fit
		more.Interference *= Mm(rapid.Float64Range(1.01, 2).Draw(t, "more"))
		a, err := Rise(p.Fit, p.Hub.Material, p.Shaft.Material, 20)
		if err != nil {
			t.Fatal(err)
		}
		b, err := Rise(more, p.Hub.Material, p.Shaft.Material, 20)
		if err != nil {
			t.Fatal(err)
		}
		if b.Rise <= a.Rise {
			t.Fatalf("%v mm needs %v K, %v mm only %v K", p.Fit.Interference, a.Rise, more.Interference, b.Rise)
		}
		// The rise found does open the bore by what was asked.
		m := &p.Hub.Material
		if got := p.Fit.Diameter * Mm(m.strain(float64(a.Hub))-p.Shaft.Material.strain(20)); math.Abs(float64(got-a.Opening)) > 1e-9 {
			t.Fatalf("%v °C open %v mm, want %v", a.Hub, got, a.Opening)
		}
	})
}

func TestTwiceThePowerOpensAtMostTwice(t *testing.T) {
	t.Parallel()
	checkSome(t, 30, func(t *rapid.T) {
		p := joint(t)
		power := rapid.Float64Range(1e3, 30e3).Draw(t, "power")
		seconds := rapid.Float64Range(10, 600).Draw(t, "seconds")
		once := heatedFor(t, &p, power, seconds).opening()
		twice := heatedFor(t, &p, 2*power, seconds).opening()
		if twice > 2*once*(1+1e-6) || twice <= once {
			t.Fatalf("%.0f W open %.4g mm, twice as much %.4g mm", power, once*1000, twice*1000)
		}
	})
}

// A shaft with a bore is a smaller sink: at one power it keeps the hub closed
// for longer, or for good. Its quasi-steady opening, for a shaft so thin that it
// takes no heat, is alpha D P/(2 pi k L) times
// 1/4 - a²/(R²-a²) (R²/(R²-a²) ln(R/a) - 1/2), against 1/4 for a solid one.
func TestAHollowShaftOpensNoMore(t *testing.T) {
	t.Parallel()
	checkSome(t, 30, func(t *rapid.T) {
		p := joint(t)
		power := rapid.Float64Range(1e3, 30e3).Draw(t, "power")
		seconds := rapid.Float64Range(10, 600).Draw(t, "seconds")
		solid := heatedFor(t, &p, power, seconds).opening()
		p.Shaft.Bore = p.Fit.Diameter * Mm(rapid.Float64Range(0.2, 0.9).Draw(t, "bore"))
		if hollow := heatedFor(t, &p, power, seconds).opening(); hollow > solid*(1+1e-3) {
			t.Fatalf("solid %.4g mm, hollow %.4g mm", solid*1000, hollow*1000)
		}
	})
}

func TestAThinShaftLevelsOffWhereTheFormulaSays(t *testing.T) {
	t.Parallel()
	m := flat(48, 7850, 480, 12e-6)
	b := newBodies(&Hub{Outside: 300, Length: 150, Material: m, Start: 20}, &Shaft{Bore: 149.9, Material: m, Start: 20}, Fit{Diameter: 150, Interference: 1, Basis: Measured, Clearance: 0},
		Contact{Perfect: true}, Surroundings{20, 0}, grid{hub: 60, shaft: 4, along: 1, step: 0.0005, growth: 1.05})
	b.putPower(20e3, 0)
	clock := newStepper(b, usualGrid)
	for b.clock < 3000 {
		clock.step()
	}
	a, r := 0.075, 0.150
	w := r*r - a*a
	want := 12e-6 * 0.15 * 20e3 / (2 * math.Pi * 48 * 0.15) * (0.25 - a*a/w*(r*r/w*math.Log(r/a)-0.5))
	near(t, "opening over a shaft of nothing", b.opening(), want, 0.01*want)
}

// Each input that a planner might think does not matter does.
func TestDiameterJointAndShaftChangeTheResult(t *testing.T) {
	t.Parallel()
	checkSome(t, 15, func(t *rapid.T) {
		p := joint(t)
		power := rapid.Float64Range(1e3, 30e3).Draw(t, "power")
		// Long enough for the heat to have reached the shaft and its end.
		seconds := 0.5 * math.Pow(p.Hub.Outside.metres()/2, 2) * 7850 * 480 / p.Hub.Material.Conducts.at(20)
		base := heatedFor(t, &p, power, seconds)
		differs := func(what string, got, was, share float64) {
			if math.Abs(got-was) < share*math.Abs(was) {
				t.Fatalf("%s changes nothing: %.6g", what, got)
			}
		}
		q := p
		q.Hub.Outside *= 1.1
		differs("hub outside", heatedFor(t, &q, power, seconds).skin()-20, base.skin()-20, 1e-3)
		q = p
		q.Contact.Touching *= 2
		closer := heatedFor(t, &q, power, seconds)
		differs("joint", closer.opening(), base.opening(), 1e-4)
		if closer.opening() > base.opening() {
			t.Fatalf("a better joint opens more: %.4g against %.4g mm", closer.opening()*1000, base.opening()*1000)
		}
		// How long the shaft is shows once the heat has got to the end of a short
		// one: much under a short thick hub, little under a long thin one.
		q, short := p, p
		q.Shaft.Behind, short.Shaft.Behind = 1000, 20
		long, stub := heatedFor(t, &q, power, seconds), heatedFor(t, &short, power, seconds)
		differs("shaft length", stub.opening(), long.opening(), 1e-6)
		if stub.opening() > long.opening() {
			t.Fatalf("a stub takes more heat than a long shaft: %.4g against %.4g mm", stub.opening()*1000, long.opening()*1000)
		}
	})
}

// An outcome of Plan is a plan or a refusal with field, reason and way out, for
// any joint at all; a plan keeps its promises.
func TestAPlanIsSoundOrRefused(t *testing.T) {
	t.Parallel()
	checkSome(t, 12, func(t *rapid.T) {
		p := joint(t)
		p.Fit.Clearance = usualClearance(p.Fit.Diameter) * Mm(rapid.Float64Range(0, 1).Draw(t, "clearance"))
		p.Contact.TouchUntil = p.Fit.Clearance
		p.Neighbours = []Neighbour{{"bearing", 60, Limit{At: 100, Source: "test"}}}
		plan, err := p.Plan()
		if err != nil {
			if r, ok := err.(*Refusal); !ok || r.Field == "" || r.Why == "" || r.Instead == "" {
				t.Fatalf("refused without field, reason or way out: %v", err)
			}
			return
		}
		if plan.Hottest > p.Skin.At || plan.Free > p.Longest || plan.Free < plan.Parts || plan.Stays < 0 {
			t.Fatalf("hottest %v, free %v, parts %v, stays %v", plan.Hottest, plan.Free, plan.Parts, plan.Stays)
		}
		last := plan.Course[0]
		for _, m := range plan.Course[1:] {
			if m.At <= last.At || m.Heating && m.Skin < last.Skin-1e-6 {
				t.Fatalf("course goes back at %v s", m.At)
			}
			last = m
		}
	})
}
