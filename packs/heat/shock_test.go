package heat

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// ironJoint is a hub of grey iron with a light fit.
func ironJoint(t testing.TB) Pull {
	p := stormPump(t)
	iron, err := MaterialNamed("grey cast iron")
	if err != nil {
		t.Fatal(err)
	}
	p.Hub.Material, p.Hub.Strength = iron, 250
	p.Fit.Interference, p.Fit.Clearance, p.Contact.TouchUntil = 0.030, 0.010, 0.010
	p.Source.Means, p.ColdHoop = Induction, 15
	return p
}

// Grey iron was heated by torch like steel, and no word said of thermal shock.
func TestGreyIronHasItsOwnRule(t *testing.T) {
	t.Parallel()
	p := ironJoint(t)
	p.Source.Means = Torch
	_, err := p.Plan()
	refusedAt(t, err, "Source.Means", "thermal shock")
	p.Source.Means, p.ColdHoop = Induction, 0
	_, err = p.Plan()
	refusedAt(t, err, "ColdHoop", "thermal shock")
	p.ColdHoop, p.Hub.Strength = 40, 0
	_, err = p.Plan()
	refusedAt(t, err, "Hub.Strength", "it may have 33 MPa")

	p = ironJoint(t)
	p.Hub.Strength, p.Fit.Interference = 100, 0.026
	plan := planned(t, p)
	steel := p
	steel.Hub.Material.Brittle = false
	if fast := planned(t, steel); plan.Band.Most >= fast.Band.Most {
		t.Errorf("iron may have %v W, a metal that yields %v W", plan.Band.Most, fast.Band.Most)
	}
	named := false
	for _, w := range plan.Warnings {
		named = named || w.Code == "thermal-shock"
	}
	if !named {
		t.Error("the plan of an iron hub does not name thermal shock")
	}
	p.Source.Net = plan.Band.Most * 5 / 4
	_, err = p.Plan()
	refusedAt(t, err, "Hub.Strength", "a third of its strength")

	s := ovenJob(t)
	s.Hub.Material = p.Hub.Material
	if _, err := s.Plan(); err != nil {
		t.Errorf("an oven warms iron slowly enough: %v", err)
	}
	s.Source = Source{Means: Torch, Net: 1000}
	_, err = s.Plan()
	refusedAt(t, err, "Source.Means", "thermal shock")
	s.Source = Source{Means: Induction, Net: 40e3}
	_, err = s.Plan()
	refusedAt(t, err, "Source.Net", "thermal shock")
	r, err := Refit{Fit: Fit{Diameter: 120, Interference: 0.03, Basis: Greatest, Clearance: 0.06}, Hub: p.Hub, Shaft: p.Shaft, Air: p.Air, Limit: p.Skin}.Plan()
	if err != nil || len(r.Warnings) != 1 || r.Warnings[0].Code != "thermal-shock" {
		t.Errorf("putting an iron hub on: %v, warnings %v", err, r.Warnings)
	}
}

// No pull of iron that is planned passes a third of its strength, whatever the joint;
// the tension is worked out here from the profile of the plane.
func TestNoPlannedPullCracksIron(t *testing.T) {
	t.Parallel()
	base := ironJoint(t)
	tried := 0
	checkSome(t, 12, func(t *rapid.T) {
		p := base
		p.Hub.Strength = MPa(rapid.Float64Range(150, 400).Draw(t, "strength"))
		p.Hub.Outside = Mm(rapid.Float64Range(180, 260).Draw(t, "outside"))
		p.Fit.Interference = Mm(rapid.Float64Range(0.015, 0.05).Draw(t, "interference"))
		s := search{pull: &p, grid: usualGrid}
		mid, _ := s.firstThatFrees()
		if !mid.frees {
			return
		}
		tried++
		most := s.edgeFrom(mid, 1.6)
		ref := newPlane(&p, meshOf(&p))
		ref.power = most.power
		m := &p.Hub.Material
		for ref.clock < most.at {
			ref.run(math.Min(most.at, ref.clock+most.at/20))
			i := (ref.from + ref.to) / 2
			mean := ref.mean(i, ref.shaft, len(ref.ro), m.strain)
			tension := m.Young * MPa((mean-m.strain(ref.t[i][ref.shaft]))/(1-float64(m.Poisson)))
			lags, _ := ref.openings()
			tension += p.ColdHoop * MPa(math.Max(0, 1-lags/p.Fit.Interference.metres()))
			if tension > p.Hub.Strength/3*1.03 {
				t.Fatalf("%.0f W pull the bore with %.1f MPa after %.0f s of %.1f allowed", most.power, tension, ref.clock, p.Hub.Strength/3)
			}
		}
	})
	if tried < 2 {
		t.Errorf("only %d pulls were planned", tried)
	}
}

func TestOtherSeatsAreRefusedWithTheirReason(t *testing.T) {
	t.Parallel()
	for seat, says := range map[Seat]string{Taper: "lets go all at once", ShrinkDisc: "by its screws", "conical": "write"} {
		p := stormPump(t)
		p.Fit.Seat = seat
		_, err := p.Plan()
		refusedAt(t, err, "Fit.Seat", says)
		_, err = Refit{Fit: p.Fit, Hub: p.Hub, Shaft: p.Shaft, Air: p.Air, Limit: p.Skin}.Plan()
		refusedAt(t, err, "Fit.Seat", says)
	}
	p := stormPump(t)
	p.Fit.Seat = Straight
	planned(t, p)
}
