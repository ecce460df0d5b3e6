package lift_test

import (
	"fmt"

	"matchmark/packs/lift"
)

// A rotor on two slings to one hook: the lengths that hang it level, and what the
// legs carry.
func ExampleCompute() {
	sling := lift.Sling{Name: "round sling", Rated: 2000, Fibre: lift.RoundSling, Hitch: lift.Straight}
	plan := lift.Plan{
		Load: lift.Load{Mass: 1200, Source: lift.Weighed, CoG: &lift.Point{X: 100, Z: -50}, CoGTolerance: lift.Point{X: 10, Y: 5, Z: 10}},
		Rig:  lift.Bridle, Basis: lift.EN,
		Picks:      []lift.Pick{{Name: "near", At: lift.Point{X: -500}}, {Name: "far", At: lift.Point{X: 500}}},
		Legs:       []lift.Leg{{Name: "near", Sling: sling}, {Name: "far", Sling: sling}},
		HookHeight: 1500, Dynamic: 1.1, CriticalAt: 0.75,
		Crane: lift.Crane{Name: "shop crane", Rated: 3200},
	}
	r, err := lift.Compute(plan)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, l := range r.Legs {
		fmt.Printf("%s: %v long, %s from horizontal, %s\n", l.Name, l.Length, l.Angle.Down(), l.Tension.Up())
	}
	fmt.Println("weakest:", r.Components[r.Weakest].Name, r.Components[r.Weakest].Used.Percent())
	// Output:
	// near: 1615.5 mm long, 68.1° from horizontal, 517 kg
	// far: 1552.4 mm long, 75.0° from horizontal, 746 kg
	// weakest: bridle as a whole 48 %
}
