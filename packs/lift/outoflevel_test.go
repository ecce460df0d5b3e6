package lift

import (
	"math"
	"strings"
	"testing"
)

// A rotor whose centre of gravity lay beside the line of its two picks was told to hang from
// longer legs, and rolled as before. What is told is tried: the roll is atan(e/h) of any
// length of leg (statics), and less with picks higher above the centre of gravity.
func TestWhatHelpsIsToldByTheCause(t *testing.T) {
	t.Parallel()
	told := func(p Plan) (Tilt, string) {
		r := compute(t, p)
		for _, c := range r.Cautions {
			if c.Code == OutOfLevel {
				return r.Tilt, c.Help
			}
		}
		t.Fatalf("hangs %v out of level and is not told", r.Tilt.Most)
		return Tilt{}, ""
	}
	roll := func(p Plan, of func(Tilt) Degree, e, h float64, says string) {
		t.Helper()
		for _, hook := range []Mm{1800, 3600} {
			p.HookHeight = hook
			tilt, help := told(p)
			near(t, "roll", float64(of(tilt)), float64(degrees(math.Atan(e/h))), 1e-6)
			if !strings.Contains(help, says) || strings.Contains(help, "hang it from longer") {
				t.Errorf("a roll with the hook at %v: %s", hook, help)
			}
		}
	}
	total := func(x Tilt) Degree { return x.Total }
	within := func(x Tilt) Degree { return x.Within }
	p := good()
	p.Load.CoGTolerance, p.Load.CoG.Y, p.LengthError = Point{}, 40, 0.001
	roll(p, total, 40, 300, "no length of the legs stops a roll")
	p = good()
	p.Load.CoGTolerance, p.LengthError = Point{Y: 40}, 0.001
	roll(p, within, 40, 300, "longer legs do not stop a roll")

	// Along the line of the picks longer legs do help.
	p = good()
	p.Load.CoGTolerance, p.LengthError = Point{X: 100}, 0.001
	short, help := told(p)
	if !strings.Contains(help, "longer legs") || strings.Contains(help, "roll") {
		t.Errorf("a lean: %s", help)
	}
	p.HookHeight = 3000
	if long := compute(t, p).Tilt.Within; long >= short.Within {
		t.Errorf("with longer legs it hangs %v, with short ones %v", long, short.Within)
	}

	// From a single pick nothing but that pick helps.
	p = bare(500, Point{X: 60, Z: -400}, Point{})
	p.HookHeight = 1500
	if tilt, help := told(p); !strings.Contains(help, "take the pick over the centre of gravity") {
		t.Errorf("one pick hangs %v: %s", tilt.Total, help)
	}
}
