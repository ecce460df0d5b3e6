package jointsheet

import (
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/packs/units"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// A torque that bolts are held with for a while had one tick at its step and none on the sheet,
// where a bolt that was left out is seen. It has one a bolt for each time, above those of the
// tightening that stays, which are as many as before; where fewer bolts are on than the joint
// has, they have the tick of the step alone.
func TestAHeldTorqueHasItsTicks(t *testing.T) {
	t.Parallel()
	exactly := func(n int64) *joint.Setting {
		s := joint.Exactly(units.Quantity{Number: units.Whole(n), Unit: units.NewtonMetre})
		return &s
	}
	const bolts = 6
	for _, x := range []struct{ places, times, on, want int }{
		{1, 0, bolts, bolts}, {1, 1, bolts, 2 * bolts}, {1, 2, bolts, 3 * bolts}, {1, 1, bolts - 2, bolts}, {2, 1, bolts, 4 * bolts}, {3, 2, bolts, 9 * bolts},
	} {
		jb := &job.Job{Sections: []*job.Section{{}}}
		var g []*job.Joint
		for at := range x.places {
			j := &job.Joint{Base: "J1", Mark: "J1/" + string(rune('A'+at)), Torque: "45 N·m", Parts: []*job.Part{{Count: bolts}}}
			j.Place.Name = "end " + string(rune('A'+at))
			j.Rounds = []joint.Round{{Kind: joint.Tighten, Setting: exactly(45)}}
			for range x.times {
				st := &job.Step{No: "1.1", Tighten: []job.Fastening{{Joint: j, Final: j, On: x.on, Held: exactly(15)}}}
				jb.Sections[0].Steps = append(jb.Sections[0].Steps, st)
			}
			g = append(g, j)
			jb.Sections[0].Steps = append(jb.Sections[0].Steps, &job.Step{No: "1.2", Tighten: []job.Fastening{{Joint: j}}})
		}
		c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
		ticks := 0
		for _, b := range placeTicks(c, g) {
			for _, item := range b.Items() {
				if item.Role == layout.RoleTick {
					ticks++
				}
			}
		}
		if ticks != x.want {
			t.Errorf("%d places, held %d times, %d bolts on: %d ticks, want %d", x.places, x.times, x.on, ticks, x.want)
		}
	}
}
