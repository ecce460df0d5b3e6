package lift

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// box gives the corners of a load from one corner to the opposite one.
func box(a, b Point) []Point {
	var out []Point
	for _, x := range []Mm{a.X, b.X} {
		for _, y := range []Mm{a.Y, b.Y} {
			for _, z := range []Mm{a.Z, b.Z} {
				out = append(out, Point{x, y, z})
			}
		}
	}
	return out
}

// onTwo is a load on two hooks, on its picks, with both legs 1500 mm.
func onTwo(cog, a, b Point) Plan {
	p := bare(910, cog, a, b)
	p.Picks[0].Name, p.Picks[1].Name = "flange", "bell"
	p.Rig = TwoHooks
	p.Legs[0].Length, p.Legs[1].Length = 1500, 1500
	p.LengthError = 0.001
	p.Crane, p.SecondCrane = Crane{Name: "bay", Rated: 3200}, Crane{Name: "hoist", Rated: 1600}
	return p
}

// column is a pump column that is laid down on two hooks, one low by up to 15°.
func column() Plan {
	p := onTwo(Point{X: 1700}, Point{X: 300, Z: 160}, Point{X: 3000, Z: 160})
	p.MaxTilt, p.DecidedBy, p.Reason = 15, "R. Ashdown", "it is laid down from upright"
	p.Load.Outline = box(Point{X: -60, Y: -360, Z: -360}, Point{X: 3400, Y: 360, Z: 360})
	p.Headroom = &Headroom{HighHook: 8000, SecondHighHook: 7000, PassOver: 600, Underside: 360, Stack: 200}
	return p
}

// A column on two hooks printed a needed height of 2830 mm: the lean was taken about the centre
// of gravity, and without ends not at all. Plane geometry: with the flange hook low, the corner
// at x = -60 lies 3060 mm from the bell pick along the column and 520 mm under it, and with the
// bell hook low that at 3400 lies 3100 mm from the flange pick:
// 3060 sin 15° = 792, 3100 sin 15° = 802, 520 cos 15° = 502.
func TestHookOverTheHighEndOfALeaningLoad(t *testing.T) {
	t.Parallel()
	sin, cos := math.Sincos(15 * math.Pi / 180)
	overBell, overFlange := 600+3060*sin+520*cos+1500+200, 600+3100*sin+520*cos+1500+200
	r := compute(t, column())
	if r.Headroom.Over != "bell" {
		t.Errorf("the hook over %s has the least to spare", r.Headroom.Over)
	}
	near(t, "needed over the bell", float64(r.Headroom.Needed), overBell, 0.1)
	sum := 600 + 360 + 200 + r.Headroom.LowEnd + r.Headroom.Above + r.Headroom.Legs
	near(t, "the parts of it", float64(sum), float64(r.Headroom.Needed), 1e-6)
	p := column()
	p.Headroom.HighHook = 3500
	r = compute(t, p)
	if r.Headroom.Over != "flange" {
		t.Errorf("the hook over %s has the least to spare", r.Headroom.Over)
	}
	near(t, "needed over the flange", float64(r.Headroom.Needed), overFlange, 0.1)
	// Ends at the same places change nothing, with an outline or without its length.
	p.Load.Span = &Span{NameA: "A", NameB: "B", A: Point{X: -60}, B: Point{X: 3400}}
	near(t, "with ends", float64(compute(t, p).Headroom.Needed), overFlange, 0.1)
	p.Load.Outline = nil
	near(t, "with ends alone", float64(compute(t, p).Headroom.Needed), overFlange, 0.1)
	p.Load.Span = nil
	if no := refusalOf(t, p); no.Field != "load.outline" {
		t.Errorf("without ends and size: %s", no.Field)
	}
	p = column()
	p.Headroom.SecondHighHook = 0
	if no := refusalOf(t, p); no.Field != "headroom.secondhighhook" {
		t.Errorf("without the height of the second hook: %s", no.Field)
	}
}

// A hoist that goes 3.1 m or 3.35 m high passed in silence, and of two hooks nothing said which
// was too low.
func TestTheHookThatIsTooLowIsNamed(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		high, second Mm
		over         []string
	}{
		{8000, 7000, nil}, {8000, 3100, []string{`"bell"`}}, {8000, 3350, []string{`"bell"`}}, {3100, 7000, []string{`"flange"`}}, {3100, 2800, []string{`"flange"`, `"bell"`}},
		{3604, 3593, []string{`"flange"`, `"bell"`}}, {3605, 3595, nil},
	} {
		p := column()
		p.Headroom.HighHook, p.Headroom.SecondHighHook = c.high, c.second
		var told []string
		for _, x := range compute(t, p).Cautions {
			if x.Code == NoReach {
				told = append(told, x.Message)
			}
		}
		if len(told) != len(c.over) {
			t.Fatalf("hooks at %v and %v: told %q", c.high, c.second, told)
		}
		for i, over := range c.over {
			if !strings.Contains(told[i], "the hook over "+over+" ") {
				t.Errorf("hooks at %v and %v: %s", c.high, c.second, told[i])
			}
		}
	}
}

// A leg that is longer than the other counts at its own hook: level but for the 2° that are
// allowed where nothing is written. Plane geometry, the corners 900 mm from the middle.
func TestTheLongerLegCountsAtItsHook(t *testing.T) {
	t.Parallel()
	p := onTwo(Point{X: 35}, Point{X: -560}, Point{X: 560})
	p.Load.Outline = box(Point{X: -900, Y: -300, Z: -300}, Point{X: 900, Y: 300, Z: 300})
	p.Headroom = &Headroom{HighHook: 6000, SecondHighHook: 8000, PassOver: 1000, Underside: 300, Stack: 200}
	p.Legs[0].Length = 2600
	sin, cos := math.Sincos(2 * math.Pi / 180)
	near(t, "needed", float64(compute(t, p).Headroom.Needed), 1000+1460*sin+300*cos+2600+200, 0.1)
}

// No lean that is allowed takes more than is told, and one takes as much: the corners of a load
// turned about one of its picks in steps of a hundredth of the lean, each by the matrix of a
// rotation in the plane of the picks.
func TestHookroomAgainstTurnedCorners(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		num := func(low, high float64, what string) float64 { return rapid.Float64Range(low, high).Draw(t, what) }
		span := num(600, 4000, "span")
		cog := Point{X: Mm(span * num(0.35, 0.65, "at")), Z: -Mm(num(50, 500, "depth"))}
		turn := num(0, 2*math.Pi, "plan")
		s, c := math.Sincos(turn)
		inPlan := func(p Point) Point {
			return Point{X: Mm(c*float64(p.X) - s*float64(p.Y)), Y: Mm(s*float64(p.X) + c*float64(p.Y)), Z: p.Z}
		}
		under := num(0, 900, "under")
		corners := box(Point{X: -Mm(num(0, 1500, "before")), Y: -Mm(num(10, 800, "left")), Z: -Mm(under)},
			Point{X: Mm(span + num(0, 1500, "behind")), Y: Mm(num(10, 800, "right")), Z: Mm(num(10, 400, "top"))})
		p := onTwo(inPlan(cog), Point{}, inPlan(Point{X: Mm(span)}))
		for _, o := range corners {
			p.Load.Outline = append(p.Load.Outline, inPlan(o))
		}
		tilt := num(0.5, 15, "tilt")
		p.MaxTilt, p.DecidedBy, p.Reason = Degree(tilt), "R. Ashdown", "it is laid down"
		p.Legs[0].Length, p.Legs[1].Length = Mm(num(500, 3000, "leg A")), Mm(num(500, 3000, "leg B"))
		first := rapid.Bool().Draw(t, "first")
		p.Headroom = &Headroom{HighHook: 90000, SecondHighHook: 90000, PassOver: 1000, Underside: Mm(under), Stack: 100}
		pick, leg, over := span, float64(p.Legs[1].Length), "bell"
		if first {
			pick, leg, over = 0, float64(p.Legs[0].Length), "flange"
			p.Headroom.HighHook = 20000
		} else {
			p.Headroom.SecondHighHook = 20000
		}
		r, err := Compute(p)
		if err != nil {
			t.Skip(err)
		}
		if r.Headroom.Over != over {
			t.Fatalf("the hook over %s has the least to spare", r.Headroom.Over)
		}
		most := math.Inf(-1)
		for k := -100; k <= 100; k++ {
			sin, cos := math.Sincos(tilt * float64(k) / 100 * math.Pi / 180)
			for _, o := range corners {
				// How far the corner lies under the pick when turned about it.
				most = max(most, -(sin*(float64(o.X)-pick) + cos*float64(o.Z)))
			}
		}
		want := 1000 + most + leg + 100
		if got := float64(r.Headroom.Needed); got < want-1e-6 || got > want+0.5 {
			t.Fatalf("needs %.2f mm, turned corners take %.2f", got, want)
		}
	})
}

// A load rolls about the line of its picks when its centre of gravity lies to the side within
// the tolerance, by atan(20/100), and a corner 360 mm out hangs low by it as well.
func TestHookroomCountsTheRoll(t *testing.T) {
	t.Parallel()
	p := column()
	p.Load.CoG.Z = 60
	p.Load.CoGTolerance.Y = 20
	roll := math.Atan(20.0 / 100)
	sin, cos := math.Sincos(15 * math.Pi / 180)
	want := 600 + 3060*sin + cos*(520*math.Cos(roll)+360*math.Sin(roll)) + 1500 + 200
	near(t, "needed", float64(compute(t, p).Headroom.Needed), want, 0.1)
}
