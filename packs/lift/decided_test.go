package lift

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// What is easily taken too lightly is computed only with a person and a reason, and
// then told with the name; without them it is refused or asked for.
func TestNothingIsTakenLightly(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		p := good()
		p.DecidedBy, p.Reason = "", ""
		p.Load.CoGTolerance = Point{X: 40, Y: 5, Z: 5}
		light := ""
		switch rapid.IntRange(0, 4).Draw(t, "what") {
		case 0:
			p.Dynamic, light = Ratio(rapid.Float64Range(1, 1.0999).Draw(t, "dynamic")), "dynamic"
		case 1:
			p.Load.Source, p.Load.MassTolerance, light = Estimated, 0, "load.masstolerance"
		case 2:
			p.Load.CoGTolerance, light = Point{}, "load.cogtolerance"
		case 3:
			p.Load.CoGTolerance.Y, light = 0, "load.cogtolerance.y"
		}
		who := rapid.SampledFrom([]string{"", " ", "R. Ashdown"}).Draw(t, "who")
		why := rapid.SampledFrom([]string{"", " ", "hand chain hoist, weighed twice"}).Draw(t, "why")
		p.DecidedBy, p.Reason = who, why
		r, err := Compute(p)
		decided := named(who, why)
		told := err != nil && strings.HasPrefix(err.Error(), light+":")
		if err == nil && light != "" {
			for _, c := range r.Cautions {
				told = told || decided && c.Field == light && strings.Contains(c.Message, who) && strings.Contains(c.Message, why)
			}
			told = told || !decided && asked(r, light)
		}
		if light == "" && (err != nil || len(r.Unanswered) != 2) { // its two lifting points
			t.Fatalf("nothing is taken lightly: %v", err)
		}
		if light != "" && (!told || decided && err != nil) {
			t.Fatalf("%s, decided by %q because %q: %v", light, who, why, err)
		}
	})
	// People who lift by hand are told the same.
	h := handled(30, 20, Point{}, Point{X: -300}, Point{X: 300})
	h.Load.CoGTolerance = Point{}
	if _, err := Carry(h); err == nil || !strings.Contains(err.Error(), "load.cogtolerance") {
		t.Errorf("by hand, the centre of gravity exact: %v", err)
	}
	h.Load.Mass, h.DecidedBy, h.Reason = 24, "R. Ashdown", "a bar of one diameter"
	if r := byHand(t, h); len(r.Cautions) != 1 || !strings.Contains(r.Cautions[0].Message, "R. Ashdown") {
		t.Errorf("decided by a person: %+v", r.Cautions)
	}
	h.DecidedBy, h.Reason = "", ""
	h.Load.CoGTolerance, h.Load.Source = Point{X: 10}, Estimated
	if _, err := Carry(h); err == nil || !strings.Contains(err.Error(), "load.masstolerance") {
		t.Errorf("by hand, an estimate: %v", err)
	}
}
