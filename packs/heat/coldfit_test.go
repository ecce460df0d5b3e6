package heat

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func coldJob(t testing.TB) ColdFit {
	p := stormPump(t)
	return ColdFit{
		Fit: Fit{Diameter: 120, Interference: 0.076, Basis: Greatest, Clearance: 0.05},
		Hub: p.Hub, Shaft: p.Shaft, Air: p.Air, By: LiquidNitrogen, Limit: p.Skin,
	}
}

// A cooled shaft was given no time: it warms from the moment it is out. By hand, as one
// lump in 24 W/m²K: half of the room of 0.1486 mm is gone when 0.0743 of 0.2246 mm are
// back, m c/(h A) ln(213.15/142.6), c half of that of steel between; the faces count.
func TestACooledShaftHasItsTimes(t *testing.T) {
	t.Parallel()
	c := coldJob(t)
	got, err := c.Plan()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "room", float64(got.Room), 0.2246-0.076, 2e-4)
	start := float64(LiquidNitrogen.reaches())
	warm := 20 - (20-start)*(0.2246-0.0743)/0.2246
	heats := 0.5 * (c.Shaft.Material.Specific.integral(warm) - c.Shaft.Material.Specific.integral(start)) / (warm - start)
	area := math.Pi*0.12*0.15 + 2*math.Pi*0.06*0.06
	lump := 7850 * math.Pi * 0.06 * 0.06 * 0.15 * heats / (24 * area) * math.Log((20-start)/(20-warm))
	near(t, "carry against a lump", float64(got.Carry), lump, 0.05*lump)
	if !(0 < got.GripsSoonest && got.GripsSoonest < got.Grips) {
		t.Errorf("grips after %v to %v", got.GripsSoonest, got.Grips)
	}
	if got.SetTo != 20 || got.HubHeated {
		t.Errorf("the hub is heated to %v", got.SetTo)
	}
	c.Limit.At, c.Fit.Interference, c.Fit.Clearance = 60, 0.25, 0.1
	_, err = c.Plan()
	refusedAt(t, err, "Limit.At", "even on a shaft cooled in liquid nitrogen")
}

// The plane, told the truth about the shaft as far as it is known (its whole heat
// capacity at least three quarters, the mean expansion), grips no sooner.
func TestACooledShaftGripsNoSoonerThanTold(t *testing.T) {
	t.Parallel()
	base := coldJob(t)
	checkSome(t, 40, func(t *rapid.T) {
		c := base
		c.By = rapid.SampledFrom([]Coolant{DryIce, LiquidNitrogen}).Draw(t, "by")
		c.Fit.Diameter = Mm(rapid.Float64Range(50, 200).Draw(t, "diameter"))
		c.Hub.Outside = c.Fit.Diameter * Mm(rapid.Float64Range(1.4, 2.2).Draw(t, "outside"))
		c.Hub.Length = c.Fit.Diameter * Mm(rapid.Float64Range(0.5, 1.5).Draw(t, "length"))
		c.Fit.Interference = c.Fit.Diameter * Mm(rapid.Float64Range(0.0002, 0.0006).Draw(t, "interference"))
		c.Fit.Clearance = c.Fit.Diameter / 3000
		got, err := c.Plan()
		if err != nil {
			t.Skip(err) // the longest hubs take too long to come to one temperature
		}
		if got.GripsSoonest > got.Grips || got.Carry <= 0 {
			t.Fatalf("grips after %v to %v, carry %v", got.GripsSoonest, got.Grips, got.Carry)
		}
		shaft := c.cold(got.Contraction, 0.75)
		hub := c.Hub
		hub.Start = got.SetTo
		p := Pull{Fit: c.Fit, Hub: hub, Shaft: shaft, Contact: Contact{Perfect: true}, Air: c.Air}
		ref := newPlane(&p, 0.04*hub.Outside.metres())
		ref.run(float64(got.GripsSoonest))
		if lags, _ := ref.openings(); lags < c.Fit.Interference.metres() {
			t.Fatalf("told to grip after %v s at the soonest, and before that the plane is %.1f of %.1f µm open", got.GripsSoonest, lags*1e6, float64(c.Fit.Interference)*1000)
		}
	})
}
