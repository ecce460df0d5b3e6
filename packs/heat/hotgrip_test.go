package heat

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// planeGrips reports whether the plane, touching all round, has gripped somewhere along its
// seat after so many seconds on the shaft.
func planeGrips(r *Refit, hot Celsius, seconds float64) (grips bool, lags float64) {
	hub := r.Hub
	hub.Start = hot
	p := Pull{Fit: r.Fit, Hub: hub, Shaft: r.Shaft, Contact: Contact{Perfect: true}, Air: r.Air}
	ref := newPlane(&p, math.Min(0.05*hub.Outside.metres(), hub.Length.metres()/8))
	ref.run(seconds)
	lags, _ = ref.openings()
	return lags < r.Fit.Interference.metres(), lags
}

// A hot hub was told to grip no sooner than its net of rings says, and its ends cool before
// its middle: the plane grips no sooner than told.
func TestAHotHubGripsNoSoonerThanTold(t *testing.T) {
	t.Parallel()
	base := stormPump(t)
	checkSome(t, 60, func(t *rapid.T) {
		draw := func(name string, from, to float64) float64 { return rapid.Float64Range(from, to).Draw(t, name) }
		d := draw("diameter", 50, 250)
		r := Refit{
			Fit: Fit{Diameter: Mm(d), Interference: Mm(d * draw("interference", 0.0002, 0.001)), Basis: Greatest, Clearance: Mm(d * draw("clearance", 0.0002, 0.001))},
			Hub: base.Hub, Shaft: base.Shaft, Air: Surroundings{20, Conductance(draw("film", 5, 15))}, Limit: Limit{At: 390, Source: "site"},
		}
		r.Hub.Outside, r.Hub.Length = Mm(d*draw("outside", 1.35, 2.2)), Mm(d*draw("length", 0.3, 1.5))
		r.Hub.Material, _ = MaterialNamed(rapid.SampledFrom(metals).Draw(t, "hub"))
		r.Shaft.Material, _ = MaterialNamed(rapid.SampledFrom(metals).Draw(t, "shaft"))
		r.Shaft.Behind, r.Shaft.Front, r.Shaft.Bore = 0, 0, 0
		if rapid.Bool().Draw(t, "goes on behind") {
			r.Shaft.Behind = Mm(d * draw("behind", 0.3, 2))
		}
		if rapid.Bool().Draw(t, "bored") {
			r.Shaft.Bore = Mm(d * draw("bore", 0.1, 0.5))
		}
		got, err := r.Plan()
		if err != nil {
			t.Skip(err)
		}
		if sooner, lags := planeGrips(&r, got.SetTo, float64(got.GripsSoonest)); sooner {
			t.Fatalf("told to grip after %v s at the soonest, and before that the plane is %.1f of %.1f µm open", got.GripsSoonest, lags*1e6, float64(r.Fit.Interference)*1000)
		}
	})
}

// Without its fifth the least time would be told too long: a bronze hub on a cast shaft that
// ends with it has gripped at one end a twentieth before the net of rings says.
func TestAHotHubGripsAtItsEndsFirst(t *testing.T) {
	t.Parallel()
	r := Refit{
		Fit: Fit{Diameter: 121, Interference: 0.0472, Basis: Greatest, Clearance: 0.1053},
		Hub: Hub{Outside: 250.5, Length: 136.7, Start: 20}, Shaft: Shaft{Start: 20}, Air: Surroundings{20, 13}, Limit: Limit{At: 390, Source: "site"},
	}
	r.Hub.Material, _ = MaterialNamed("tin bronze")
	r.Shaft.Material, _ = MaterialNamed("grey cast iron")
	got, err := r.Plan()
	if err != nil {
		t.Fatal(err)
	}
	net := float64(got.GripsSoonest) / endsGrip
	if grips, lags := planeGrips(&r, got.SetTo, 0.95*net); !grips {
		t.Errorf("the net grips after %.0f s, and a twentieth before that the plane is still %.1f µm open over 47.2", net, lags*1e6)
	}
}

// Of a hub of stainless steel on a shaft that grows less a fifth was too little: both come down
// together, the hub from its ends, and it has gripped a third before the net of rings says.
func TestAPoorlyConductingHubGripsAtItsEndsLongBefore(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		hub, shaft string
		bore       Mm
	}{{"stainless steel 316", "grey cast iron", 0}, {"stainless steel 304", "carbon steel", 125}} {
		r := Refit{
			Fit: Fit{Diameter: 250, Interference: 0.05, Basis: Greatest, Clearance: 0.25},
			Hub: Hub{Outside: 550, Length: 375, Start: 20}, Shaft: Shaft{Start: 20, Bore: x.bore}, Air: Surroundings{20, 15}, Limit: Limit{At: 390, Source: "site"},
		}
		r.Hub.Material, _ = MaterialNamed(x.hub)
		r.Shaft.Material, _ = MaterialNamed(x.shaft)
		got, err := r.Plan()
		if err != nil {
			t.Fatal(err)
		}
		told := float64(got.GripsSoonest)
		if grips, lags := planeGrips(&r, got.SetTo, told); grips {
			t.Errorf("%s on %s: told to grip after %.0f s at the soonest, and the plane is %.1f µm open by then", x.hub, x.shaft, told, lags*1e6)
		}
		if grips, lags := planeGrips(&r, got.SetTo, told/poorEndsGrip*endsGrip); !grips {
			t.Errorf("%s on %s: a fifth would do, the plane is still %.1f µm open", x.hub, x.shaft, lags*1e6)
		}
	}
}

// A thin ring with little clearance on an aluminium shaft grips within the first second, and
// the net told 0.15 s where the plane had gripped: no time is told then.
func TestAThinRingGripsAtOnce(t *testing.T) {
	t.Parallel()
	base := stormPump(t)
	r := Refit{
		Fit: Fit{Diameter: 50, Interference: 0.05, Basis: Greatest, Clearance: 0.0122},
		Hub: base.Hub, Shaft: base.Shaft, Air: Surroundings{20, 5}, Limit: Limit{At: 390, Source: "site"},
	}
	r.Hub.Outside, r.Hub.Length = 110, 15
	r.Shaft.Material, _ = MaterialNamed("aluminium 2024")
	r.Shaft.Behind, r.Shaft.Front, r.Shaft.Bore = 0, 0, 0
	got, err := r.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if grips, _ := planeGrips(&r, got.SetTo, 0.15); !grips || got.GripsSoonest != 0 {
		t.Errorf("told to grip after %v s at the soonest; in the plane it has gripped after 0.15 s: %v", got.GripsSoonest, grips)
	}
}
