package heat_test

import (
	"fmt"

	"matchmark/packs/heat"
)

func ExamplePull_Plan() {
	steel, err := heat.MaterialNamed("carbon steel")
	if err != nil {
		fmt.Println(err)
		return
	}
	pull := heat.Pull{
		Fit:        heat.Fit{Diameter: 120, Interference: 0.050, Basis: heat.Measured, Clearance: 0.040},
		Hub:        heat.Hub{Outside: 210, Length: 150, Material: steel, Start: 20},
		Shaft:      heat.Shaft{Behind: 600, Material: steel, Start: 20},
		Contact:    heat.Contact{Perfect: true, TouchUntil: 0.040},
		Source:     heat.Source{Means: heat.Torch},
		Air:        heat.Surroundings{Air: 20, Film: 12},
		Skin:       heat.Limit{At: 200, Source: "site rule"},
		Neighbours: []heat.Neighbour{{Name: "DE bearing", Distance: 85, Limit: heat.Limit{At: 100, Source: "site rule"}}},
		Longest:    900,
	}
	plan, err := pull.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("works from %.0f to %.0f kW net\n", plan.Band.Least/1000, plan.Band.Most/1000)
	for _, p := range plan.Band.Pace {
		fmt.Printf("the skin must pass %.0f °C by %.0f s\n", p.Skin, p.By)
	}
	fmt.Printf("with %.0f kW free after %.0f s, for %.0f s\n", plan.Net/1000, plan.Free, plan.Stays)
	pull.Source.Net = 5000
	_, err = pull.Plan()
	fmt.Println(err)
	// Output:
	// works from 12 to 51 kW net
	// the skin must pass 112 °C by 60 s
	// the skin must pass 158 °C by 120 s
	// with 25 kW free after 36 s, for 34 s
	// 5 kW net opens the hub by 0.037 mm of the 0.090 mm needed and no more, because the shaft grows as fast: use at least 12.3 kW net, or draw it with a hydraulic or mechanical puller, or cut it off
}
