package joint_test

import (
	"fmt"

	"matchmark/packs/joint"
	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// Twelve M20 bolts of class 8.8 on a bolt circle, oiled: what 370 N·m does to them, and
// their order.
func ExampleCompute() {
	bolt, err := thread.Parse("M20")
	if err != nil {
		fmt.Println(err)
		return
	}
	torque, _ := units.ParseQuantity("370 N·m")
	k, _ := units.ParseNumber("0.17")
	set := joint.Exactly(torque)
	scatter, _ := joint.ScatterOf("lubricated")
	r, err := joint.Compute(joint.Spec{
		Thread: &bolt, Class: "8.8", Count: 12, Torque: &set, Scatter: &scatter,
		Friction: &joint.Friction{NutFactor: &k, Source: "oil, maker's sheet 4"},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, told := range r.Told() {
		switch told.Code {
		case joint.ToldPreload, joint.ToldShare, joint.ToldShareHigh:
			fmt.Println(told.Value.Text())
		}
	}
	p, err := joint.Layout{Shape: joint.Circle, Method: joint.Crosswise, Count: 12, Diameter: 460}.Pattern()
	fmt.Println(p.Order, err)
	// Output:
	// 108 kN
	// 74.1 %
	// 92.6 %
	// [1 7 4 10 2 8 5 11 3 9 6 12] <nil>
}
