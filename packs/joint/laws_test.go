package joint_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/joint"
	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// bolts are threads with classes of both standards.
var bolts = []struct{ thread, class string }{
	{"M6", "8.8"}, {"M12", "10.9"}, {"M12x1.25", "9.8"}, {"M16", "8.8"}, {"M20", "12.9"}, {"M36", "5.6"},
	{"1/4-28", "grade 8"}, {"1/2-13", "grade 5"}, {"1-1/4-7", "grade 2"},
}

// drawn is a joint tightened to a share of proof.
func drawn(t *rapid.T) joint.Spec {
	b := rapid.SampledFrom(bolts).Draw(t, "bolt")
	k := fmt.Sprintf("0.%02d", rapid.IntRange(10, 40).Draw(t, "K"))
	share := fmt.Sprint(rapid.IntRange(10, 100).Draw(t, "percent"))
	scatter := joint.Scatter{Percent: units.Whole(int64(rapid.IntRange(0, 35).Draw(t, "scatter"))), Source: "drawn"}
	return joint.Spec{
		Thread: parse(t, b.thread), Class: b.class, Count: rapid.IntRange(1, 60).Draw(t, "count"),
		Preload: &joint.Target{Percent: n(t, share)}, Friction: nutFactor(t, k), Scatter: &scatter,
	}
}

func TestTorqueGrowsWithFriction(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawn(t)
		low := raw(t, compute(t, s))
		more := s.Friction.NutFactor.Add(*n(t, "0.01"))
		s.Friction = &joint.Friction{NutFactor: &more, Source: "drawn"}
		if high := raw(t, compute(t, s)); high <= low {
			t.Fatalf("torque %g N·m, with more friction %g", low, high)
		}
	})
}

// The torque that is told to be set never gives more than the preload wanted, and at one
// torque less friction means more stress.
func TestStressIsOnTheSafeSide(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawn(t)
		wanted := compute(t, s)
		s.Torque, s.Preload = wanted.Torque, nil
		r := compute(t, s)
		if r.Stress > wanted.Stress*(1+1e-9) {
			t.Fatalf("set to %s the stress is %g, wanted %g MPa", wanted.Torque.Text(), r.Stress, wanted.Stress)
		}
		if r.Preload.Low > r.Preload.Aim || r.Preload.Aim > r.Preload.High || r.StressHigh < r.Stress {
			t.Fatalf("the band is %+v", r.Preload)
		}
		more := s.Friction.NutFactor.Add(*n(t, "0.01"))
		s.Friction = &joint.Friction{NutFactor: &more, Source: "drawn"}
		if again := compute(t, s); again.Stress >= r.Stress {
			t.Fatalf("more friction, and the stress goes from %g to %g MPa", r.Stress, again.Stress)
		}
	})
}

// What is told is rounded once, to three figures, and never to the unsafe side.
func TestToldIsDirected(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := compute(t, drawn(t))
		exact := map[joint.ToldCode]struct {
			value float64
			up    bool
		}{
			joint.ToldProofLoad:   {float64(r.ProofLoad), false},
			joint.ToldPreload:     {float64(r.Preload.Aim), false},
			joint.ToldPreloadLow:  {float64(r.Preload.Low), false},
			joint.ToldPreloadHigh: {float64(r.Preload.High), true},
			joint.ToldClamp:       {float64(r.Clamp), false},
			joint.ToldStress:      {float64(r.Stress) * 1e6, true},
			joint.ToldStressHigh:  {float64(r.StressHigh) * 1e6, true},
		}
		for _, told := range r.Told() {
			e, known := exact[told.Code]
			if !known {
				continue
			}
			for _, v := range []*units.Quantity{&told.Value, told.Other} {
				base := units.Newton
				if v.Unit.Dimension() == units.Pressure {
					base = units.Kilopascal
				}
				c, err := v.Convert(base)
				if err != nil {
					t.Fatal(err)
				}
				got, _ := c.Number.Rat().Float64()
				if base == units.Kilopascal {
					got *= 1000
				}
				off := got/e.value - 1
				if e.up && (off < -2e-9 || off > 0.0101) || !e.up && (off > 2e-9 || off < -0.0101) {
					t.Fatalf("figure %d is told as %s, exact %g", told.Code, v.Text(), e.value)
				}
			}
		}
	})
}

// drawnLayout is a layout of any shape with a method that it takes.
func drawnLayout(t *rapid.T) joint.Layout {
	l := joint.Layout{Shape: joint.Shape(rapid.IntRange(1, 5).Draw(t, "shape")), Method: joint.InTurn}
	mm := func(name string) thread.Mm { return thread.Mm(rapid.IntRange(200, 3000).Draw(t, name)) }
	other := []joint.Method{joint.Crosswise, joint.Outward, joint.InTurn}
	switch l.Shape {
	case joint.Circle:
		l.Count, l.Diameter, l.First = rapid.IntRange(1, 72).Draw(t, "n"), mm("diameter"), joint.Degree(rapid.IntRange(0, 90).Draw(t, "first"))
		l.Anticlockwise = rapid.Bool().Draw(t, "anticlockwise")
		l.Method = rapid.SampledFrom([]joint.Method{joint.Crosswise, joint.InTurn}).Draw(t, "method")
		return l
	case joint.Rectangle:
		l.Along, l.Across = rapid.IntRange(2, 16).Draw(t, "along"), rapid.IntRange(2, 8).Draw(t, "across")
	case joint.Oval:
		l.Count = rapid.IntRange(2, 40).Draw(t, "n")
	case joint.SplitLine:
		l.Along, l.Rows = rapid.IntRange(1, 20).Draw(t, "along"), rapid.IntRange(1, 2).Draw(t, "rows")
		other = other[1:]
	case joint.Positions:
		for i := range rapid.IntRange(1, 20).Draw(t, "n") {
			l.Places = append(l.Places, joint.Point{X: thread.Mm(100 * i), Y: thread.Mm(rapid.IntRange(0, 500).Draw(t, "y"))})
		}
	}
	l.Width = mm("width")
	l.Length = l.Width + mm("longer")
	l.Method = rapid.SampledFrom(other).Draw(t, "method")
	return l
}

func pattern(t tester, l joint.Layout) joint.Pattern {
	t.Helper()
	p, err := l.Pattern()
	if err != nil {
		t.Fatalf("%+v: %v", l, err)
	}
	return p
}

func TestOrderIsAPermutation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := pattern(t, drawnLayout(t))
		sorted := slices.Clone(p.Order)
		slices.Sort(sorted)
		for i, k := range sorted {
			if k != i+1 {
				t.Fatalf("order %v", p.Order)
			}
		}
		if len(sorted) != len(p.Places) {
			t.Fatalf("%d places, %d in order", len(p.Places), len(sorted))
		}
		back := p.Loosening()
		slices.Reverse(back)
		if !slices.Equal(back, p.Order) {
			t.Fatalf("loosening %v is not the order %v backward", p.Loosening(), p.Order)
		}
		for place, rank := range p.Ranks() {
			if p.Order[rank-1] != place+1 {
				t.Fatalf("place %d is told as number %d of %v", place+1, rank, p.Order)
			}
		}
		given := joint.Layout{Shape: joint.Positions, Places: p.Places, Order: p.Order}
		if again := pattern(t, given); !slices.Equal(again.Order, p.Order) {
			t.Fatalf("a maker's order %v became %v", p.Order, again.Order)
		}
	})
}

// apart is the angle between two places seen from the middle, degrees.
func apart(a, b joint.Point) float64 {
	d := math.Abs(math.Atan2(float64(a.Y), float64(a.X))-math.Atan2(float64(b.Y), float64(b.X))) * 180 / math.Pi
	return math.Min(d, 360-d)
}

// On a circle each second one is opposite the one before it, as near as the count lets
// it be, and with a count in fours the pair after it is a quarter turn on.
func TestOppositeFollowEachOther(t *testing.T) {
	for count := 2; count <= 100; count++ {
		p := pattern(t, joint.Layout{Shape: joint.Circle, Method: joint.Crosswise, Count: count, Diameter: 800})
		place := func(i int) joint.Point { return p.Places[p.Order[i]-1] }
		off := 1e-6
		if count%2 == 1 {
			off = 180/float64(count) + 1e-6
		}
		for i := 0; i+1 < count; i += 2 {
			if a := apart(place(i), place(i+1)); 180-a > off {
				t.Fatalf("%d bolts: numbers %d and %d are %g° apart", count, i+1, i+2, a)
			}
			if count%4 == 0 && i%4 == 0 {
				if a := apart(place(i), place(i+2)); math.Abs(a-90) > 1e-6 {
					t.Fatalf("%d bolts: numbers %d and %d are %g° apart", count, i+1, i+3, a)
				}
			}
		}
	}
}

// From the middle outward: no fastener is nearer to the middle than one before it, and
// on two rows the second of each pair is the one opposite.
func TestMiddleOutward(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := drawnLayout(t)
		if l.Shape == joint.Circle {
			return
		}
		l.Method = joint.Outward
		p := pattern(t, l)
		w, h := p.Size()
		last := -1.0
		for _, k := range p.Order {
			at := math.Abs(float64(p.Places[k-1].X))
			if h > w {
				at = math.Abs(float64(p.Places[k-1].Y))
			}
			if at < last-0.5 {
				t.Fatalf("%+v: place %d at %g mm comes after %g mm", l, k, at, last)
			}
			last = math.Max(at, last)
		}
		if l.Shape != joint.SplitLine || l.Rows != 2 {
			return
		}
		for i := 0; i+1 < len(p.Order); i += 2 {
			a, b := p.Places[p.Order[i]-1], p.Places[p.Order[i+1]-1]
			if math.Hypot(float64(a.X+b.X), float64(a.Y+b.Y)) > 1e-6 {
				t.Fatalf("%+v: %v is followed by %v", l, a, b)
			}
		}
	})
}

// Whatever is left out, nothing breaks: drafts and broken input reach every sheet.
func TestHolesDoNotBreak(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawn(t)
		hole := func(name string) bool { return rapid.Bool().Draw(t, name) }
		if hole("thread") {
			s.Thread = nil
		}
		if hole("class") {
			s.Class = ""
		}
		if hole("friction") {
			s.Friction = nil
		}
		if hole("factor") {
			s.Friction = &joint.Friction{Source: "x", Thread: n(t, "0.1")}
		}
		if hole("scatter") {
			s.Scatter = nil
		}
		if hole("preload") {
			s.Preload = &joint.Target{}
		}
		if hole("torque") {
			s.Preload, s.Torque = nil, &joint.Setting{}
		}
		if hole("stages") {
			s.Stages = []joint.Stage{{}, {Kind: joint.Turn}, {Kind: joint.SlackenAll}, {Kind: joint.LastRound}, {Kind: joint.AgainAfter}}
		}
		r, _ := joint.Compute(s)
		r.Told()
	})
}
