package align_test

import (
	"fmt"

	"matchmark/packs/align"
	"matchmark/packs/units"
)

// A motor on rim and face dials, the bracket on the motor's hub: what each pair of feet is
// raised by, in line for line.
func ExampleSetup_Work() {
	of := func(text string) *units.Quantity {
		q, err := units.ParseQuantity(text)
		if err != nil {
			fmt.Println(err)
		}
		return &q
	}
	s := align.Setup{
		Method: align.RimFace, Unit: units.Millimetre, Reads: of("0.01 mm"), DialsOn: align.Stationary, FaceDiameter: of("200 mm"), Sag: of("0.03 mm"),
		Feet: []align.Foot{{Name: "front", At: of("250 mm")}, {Name: "rear", At: of("750 mm")}},
	}
	readings := map[align.Reading]units.Quantity{}
	for dial, four := range map[align.Dial][4]string{align.Rim: {"0", "-0.06", "-0.26", "-0.20"}, align.Face: {"0", "0.03", "0.08", "0.05"}} {
		for i, at := range []align.Clock{align.Top, align.Right, align.Bottom, align.Left} {
			readings[align.Reading{Dial: dial, At: at}] = *of(four[i] + " mm")
		}
	}
	r, err := s.Work(readings)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range r.Moves {
		fmt.Println(m.Foot, "up", s.Told(m.Up).Text(), "right", s.Told(m.Right).Text())
	}
	fmt.Println("rim closes to", s.Told(r.Checks[0].Sum).Text())
	// Output:
	// front up 0.20 mm right 0.10 mm
	// rear up 0.40 mm right 0.15 mm
	// rim closes to 0.00 mm
}
