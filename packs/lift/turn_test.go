package lift

import (
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// vessel is a vessel 10 m long, its head pick on the axis, its tail pick 600 mm above it as
// it lies, 9 m apart; 5 m from the head to its centre of gravity.
func vessel() Plan {
	p := onTwo(Point{}, Point{X: -5000}, Point{X: 4000, Z: 600})
	p.Load.Mass, p.Picks[0].Name, p.Picks[1].Name = 9000, "head", "tail"
	for i := range p.Legs {
		p.Legs[i].Name, p.Legs[i].Sling.Rated = p.Picks[i].Name, 20000
	}
	p.Crane.Rated, p.SecondCrane.Rated = 20000, 20000
	p.Load.Outline = box(Point{X: -5200, Y: -700, Z: -700}, Point{X: 4800, Y: 700, Z: 700})
	p.Headroom = &Headroom{HighHook: 20000, SecondHighHook: 20000, PassOver: 500, Underside: 700, Stack: 300}
	p.MaxTilt, p.Turn = 0.001, &Turn{}
	return p
}

// The tail hook, by moments about the head pick with the load at an angle x, worked by hand:
// T = W 5000 cos x / (9000 cos x + 600 sin x).
//
//	x = 0    9000 · 5000 / 9000                               = 5000 kg
//	x = 45°  9000 · 5000 / 9600                               = 4687.5 kg
//	x = 60°  9000 · 2500 / (4500 + 519.615)                   = 4482.4 kg
//	x = 75°  9000 · 1294.10 / (2329.37 + 579.56)              = 4003.8 kg
//	x = 90°  nothing: all of it hangs from the head
func TestTurnedLoadByMomentsAboutTheOtherHook(t *testing.T) {
	t.Parallel()
	r := compute(t, vessel())
	for _, c := range []struct{ at, tail float64 }{{0, 5000}, {45, 4687.5}, {60, 4482.41}, {75, 4003.85}, {90, 0}} {
		i := slices.IndexFunc(r.Turn.Rows, func(x TurnRow) bool { return math.Abs(float64(x.Angle)-c.at) < 1e-6 })
		if i < 0 {
			t.Fatalf("no row at %g°: %+v", c.at, r.Turn.Rows)
		}
		row := r.Turn.Rows[i]
		near(t, "tail hook", float64(row.Lower), c.tail, 0.1)
		near(t, "head hook", float64(row.Upper), 9000-c.tail, 0.1)
		near(t, "pull from the load's level", float64(row.Pull), 90-c.at, 1e-6)
		sin, cos := math.Sincos(c.at * math.Pi / 180)
		near(t, "head over tail", float64(row.Higher), 9000*sin-600*cos, 1e-6)
		near(t, "hooks apart", float64(row.Apart), 9000*cos+600*sin, 1e-6)
	}
	if r.Turn.Lean > 1e-6 || r.Turn.Past {
		t.Errorf("it leans %v, past %v", r.Turn.Lean, r.Turn.Past)
	}
	// Each hook carries its worst: the head all of it, the tail what it has as the load lies.
	near(t, "head leg", float64(r.Legs[0].High), 9000, 1e-6)
	near(t, "tail leg", float64(r.Legs[1].High), 5000, 1)
	// Upright, the head pick stands 9800 mm over the foot; no point of the load is farther from
	// it than the foot's edge, hypot(9800, 700) mm, as it is passed on the way.
	near(t, "height of the head hook", float64(r.Headroom.Needed), 500+math.Hypot(9800, 700)+1500+300, 1)
	if o := r.OtherHeadroom; o == nil || o.Over != "tail" || o.Spare < r.Headroom.Spare {
		t.Errorf("the other hook: %+v", o)
	}
}

// A pick that is off the line through the centre of gravity leaves the load leaning:
// tan(lean) = offset / distance, by hand.
func TestTurnedLoadLeansByItsPick(t *testing.T) {
	t.Parallel()
	p := vessel()
	p.Picks[0].At.Z, p.MaxTilt = 250, 3
	r := compute(t, p)
	lean := math.Atan2(250, 5000) * 180 / math.Pi
	near(t, "lean", float64(r.Turn.Lean), lean, 1e-6)
	near(t, "all on the head from", float64(r.Turn.Free), 90-lean, 1e-6)
	p.MaxTilt = 2
	if r = compute(t, p); !slices.ContainsFunc(r.Cautions, func(c Caution) bool { return c.Code == OutOfLevel && c.Stop && c.Field == "turn" }) {
		t.Errorf("a lean of %.2f° over 2° passed", lean)
	}
	p = vessel() // below the axis: it goes past upright before the tail is slack
	p.Picks[0].At.Z, p.Picks[1].At.Z, p.MaxTilt = -100, 600, 3
	r = compute(t, p)
	if !r.Turn.Past || r.Turn.Free < 91 {
		t.Errorf("free at %v, past %v", r.Turn.Free, r.Turn.Past)
	}
}

// A lug that is rated for a pull across it is not rated for one along the load, a trunnion is.
func TestPadsOfATurnedLoadArePulledAllTheWayRound(t *testing.T) {
	t.Parallel()
	p := vessel()
	p.Picks[0].Point = &LiftingPoint{What: "lug", Rated: 20000, LeastAngle: 45, Source: "drawing"}
	flat := func(r *Result) bool {
		return slices.ContainsFunc(r.Cautions, func(c Caution) bool { return c.Code == PointTooFlat && c.Stop })
	}
	if !flat(compute(t, p)) {
		t.Error("a lug that is pulled along the load passed")
	}
	p.Picks[0].Point.Turns = true
	if flat(compute(t, p)) {
		t.Error("a trunnion is refused")
	}
	// An eyebolt square to the axis is pulled square to its own at the end: a quarter is left.
	p = vessel()
	p.Legs[0].Gear = []Hardware{{Name: "eye", Kind: ShoulderEyebolt, Rated: 20000, Axis: Point{Z: 1}}}
	near(t, "eyebolt", float64(component(t, compute(t, p), "legs[0].gear[0]").Allowed), 5000, 1e-6)
	// A basket turns in its bight: 67.5 % in one part.
	p = vessel()
	p.Legs[1].Sling.Fibre, p.Legs[1].Sling.Hitch, p.Legs[1].Sling.Parallel = RoundSling, Basket, true
	near(t, "basket", float64(component(t, compute(t, p), "legs[1].sling").Allowed), 2*20000*0.5/0.675, 1e-6)
}

func TestTurnsAreRefused(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name, field string
		change      func(*Plan)
	}{
		{"no leg is uppermost", "turn.upper", func(p *Plan) { p.Turn.Upper = -1 }},
		{"a leg that there is not", "turn.upper", func(p *Plan) { p.Turn.Upper = 2 }},
		{"no headroom", "headroom", func(p *Plan) { p.Headroom = nil }},
		{"one hook", "turn", func(p *Plan) { p.Rig, p.SecondCrane, p.HookHeight = Bridle, Crane{}, 0 }},
		{"points of the load upright", "picks", func(p *Plan) { p.Picks[0].At = Point{X: 3900, Z: 9000} }},
	} {
		p := vessel()
		c.change(&p)
		if no := refusalOf(t, p); no.Field != c.field {
			t.Errorf("%s: refused at %s, %s", c.name, no.Field, no.Message)
		}
	}
	// A pair of trunnions under a bar was told to be called two hooks, which it is not.
	for _, rig := range []Rig{Beam, Spreader} {
		p := rotor(rig)
		p.Turn = &Turn{Upper: 0}
		if no := refusalOf(t, p); no.Field != "turn" || !strings.Contains(no.Message, "under a lifting bar hangs from three points") || strings.Contains(no.Help, "two hooks") {
			t.Errorf("%v: refused at %s, %s; %s", rig, no.Field, no.Message, no.Help)
		}
	}
	p := vessel()
	p.Headroom.HighHook = 12000
	if r := compute(t, p); !slices.ContainsFunc(r.Cautions, func(c Caution) bool { return c.Code == NoReach && strings.Contains(c.Message, `"head"`) }) {
		t.Error("a hook that is too low for the load upright passed")
	}
}

// Whatever the picks: both shares make up the weight, the upper one grows all the way, at its
// end the centre of gravity is plumb under the upper pick, and the moments about any point are
// nothing, forces put up by their own places and not by the formula.
func TestATurnedLoadIsInBalance(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		draw := func(what string, a, b float64) float64 { return rapid.Float64Range(a, b).Draw(t, what) }
		upper := vec{-draw("ux", 500, 3000), draw("uy", -50, 50), draw("uz", 0, 400)}
		lower := vec{draw("lx", 500, 3000), draw("ly", -50, 50), draw("lz", 0, 400)}
		g := vec{draw("gx", -300, 300), draw("gy", -40, 40), -draw("gz", 1, 300)}
		u := newUpend(upper, lower, g)
		if u.down.z > -0.5 || u.b <= 0 || u.b >= u.s {
			t.Skip("not a load that lies on two hooks")
		}
		last := math.Inf(-1)
		for i := range 11 {
			x := u.free() * float64(i) / 10
			up, ahead := u.up(x)
			k := u.share(x)
			if k < last-1e-9 {
				t.Fatalf("the upper share falls from %g to %g", last, k)
			}
			last = k
			if side := up.cross(ahead); math.Abs(g.sub(lower).dot(side)-upper.sub(lower).dot(side)) > 1e-6*u.s {
				t.Fatal("the centre of gravity is not in the plane of the legs")
			}
			if m := k*upper.dot(ahead) + (1-k)*lower.dot(ahead) - g.dot(ahead); math.Abs(m) > 1e-6*u.s {
				t.Fatalf("turned %g of its way a moment of %g mm is left", float64(i)/10, m)
			}
		}
		up, _ := u.up(u.free())
		if d := upper.sub(g).unit(); d.dot(up) < 1-1e-9 {
			t.Fatal("at the end it does not hang plumb under the upper pick")
		}
	})
}

// Two cranes 25 m apart, a load whose lift points stand 10 m and 14 m over its centre of gravity,
// 12 m and 13 m from it, and that may be off by 0.9 m and 0.8 m, one end high by 3°. Source: GL
// Noble Denton 0027/ND rev 11, appendix B.1.2, formulae and the values of its example; the
// shares worked by hand from these. Of picks at two heights the hooks were once taken as level
// with the line of the picks and not with the load.
func TestTwoCranesWithOneEndHigh(t *testing.T) {
	t.Parallel()
	sin, cos := math.Sincos(3 * math.Pi / 180)
	one, two := vec{-12000, 0, 10000}, vec{13000, 0, 14000}
	first := newUpend(one, two, vec{-900, 0, -800})
	near(t, "crane 1, its end high", first.share(radians(3)), (14.8*sin+13.9*cos)/(25*cos+4*sin), 1e-9)
	near(t, "the same by hand", first.share(radians(3)), 0.58214, 5e-6)
	second := newUpend(two, one, vec{900, 0, -800})
	near(t, "crane 2, its end high", second.share(radians(3)), (10.8*sin+12.9*cos)/(25*cos-4*sin), 1e-9)
	near(t, "the same by hand", second.share(radians(3)), 0.54319, 5e-6)
	p := onTwo(Point{}, Point{X: -12000, Z: 10000}, Point{X: 13000, Z: 14000})
	p.Load.Mass, p.MaxTilt = 1000, 3
	r := compute(t, p)
	near(t, "crane 1 with either end high", float64(r.Legs[0].High), 1000*(14*sin+13*cos)/(25*cos+4*sin), 0.05)
	near(t, "crane 2 with either end high", float64(r.Legs[1].High), 1000*(10*sin+12*cos)/(25*cos-4*sin), 0.05)
	if r.Tilt.Total > 1e-6 {
		t.Errorf("level on two hooks it is told to hang %v out of level", r.Tilt.Total)
	}
}

// Within the band of its centre of gravity the tail hook carries most with the centre of
// gravity in the plumb plane of the picks, at its foot end and 10 mm low, worked by hand at an
// angle x: T = W ((5000 + 50) cos x + 10 sin x) / (9000 cos x + 600 sin x).
//
//	x = 0    9000 · 5050 / 9000                    = 5050 kg
//	x = 75°  9000 · 1316.69 / 2908.93              = 4073.7 kg
//	x = 90°  9000 · 10 / 600                       = 150 kg
func TestTurnedLoadWithinItsBand(t *testing.T) {
	t.Parallel()
	p := vessel()
	p.Load.CoGTolerance, p.MaxTilt = Point{X: 50, Y: 10, Z: 10}, 5
	r := compute(t, p)
	for _, at := range []float64{0, 15, 30, 45, 60, 75, 90} {
		i := slices.IndexFunc(r.Turn.Rows, func(x TurnRow) bool { return math.Abs(float64(x.Angle)-at) < 1e-6 })
		sin, cos := math.Sincos(at * math.Pi / 180)
		worst := 0.0
		for _, dz := range []float64{-10, 10} {
			worst = max(worst, 9000*(5050*cos+dz*sin)/(9000*cos+600*sin))
		}
		near(t, "tail hook at most", float64(r.Turn.Rows[i].Lower), worst, 0.05)
	}
	// Slack from tan(90 - x) = -z/(5000 ± 50) on: 10 mm low is past upright.
	past := math.Atan2(10, 4950) * 180 / math.Pi
	near(t, "slack at most", float64(r.Turn.FreeMost), 90+past, 0.002)
	near(t, "slack at least", float64(r.Turn.FreeLeast), 90-past, 0.002)
	if !r.Turn.Past {
		t.Error("past upright within its band, and not told")
	}
}

// The tail rope of a pick 100 mm within the size, 1500 mm long, worked by hand: its hook comes
// below the face that it left at cos x = 100/1500.
func TestTurnedLoadIsToldWhereItsLegLiesAgainstIt(t *testing.T) {
	t.Parallel()
	p := vessel()
	told := func(p Plan) string {
		for _, c := range compute(t, p).Cautions {
			if strings.Contains(c.Message, "within the size") {
				return c.Message
			}
		}
		return ""
	}
	from := math.Acos(100/float64(p.Legs[1].Length)) * 180 / math.Pi
	if want := Degree(from).Down().String(); !strings.Contains(told(p), want) {
		t.Errorf("from %.2f°, want %s: %q", from, want, told(p))
	}
	p.Picks[1].At.Z = 800
	if got := told(p); got != "" {
		t.Errorf("clear of it by 100 mm: %q", got)
	}
}
