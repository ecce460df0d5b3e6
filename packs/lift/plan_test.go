package lift

import (
	"errors"
	"fmt"
	"math"
	"testing"
)

// straight is a straight sling leg of ample rating.
func straight(name string, length float64) Leg {
	return Leg{Name: name, Length: Mm(length), Sling: Sling{Name: "sling " + name, Rated: 1e7, Fibre: WireRope, Hitch: Straight}}
}

// bare is a bridle with nothing but a mass: no dynamic factor, no gear weight.
func bare(mass float64, cog Point, picks ...Point) Plan {
	p := Plan{
		Load: Load{Mass: Kg(mass), Source: Weighed, CoG: &cog}, Rig: Bridle, Basis: US,
		Dynamic: 1, DecidedBy: "A. Person", Reason: "statics alone", CriticalAt: 0.75, Crane: Crane{Name: "crane", Rated: 1e8},
	}
	for i, k := range picks {
		name := string(rune('A' + i))
		p.Picks = append(p.Picks, Pick{Name: name, At: k})
		p.Legs = append(p.Legs, straight(name, 0))
	}
	return p
}

// twoLegs hangs a load with the hook hA and hB above picks a and b away from the
// centre of gravity, which lies far below.
func twoLegs(w, a, b, hA, hB float64) Plan {
	p := bare(w, Point{}, Point{X: Mm(-a), Z: 0}, Point{X: Mm(b), Z: Mm(hA - hB)})
	p.Load.CoG.Z = -Mm(max(hA, hB))
	p.HookHeight = Mm(hA)
	return p
}

// inHand gives a bridle on level picks with the lengths given.
func inHand(w float64, cog Point, lengths []float64, picks ...Point) Plan {
	p := bare(w, cog, picks...)
	for i, l := range lengths {
		p.Legs[i].Length = Mm(l)
	}
	return p
}

func compute(t *testing.T, p Plan) *Result {
	t.Helper()
	r, err := Compute(p)
	if err != nil {
		t.Fatalf("refused: %v", err)
	}
	return r
}

// refused runs a plan that must be refused and gives the first reason.
func refusalOf(t *testing.T, p Plan) Refusal {
	t.Helper()
	r, err := Compute(p)
	var rs Refusals
	if err == nil || !errors.As(err, &rs) || len(rs) == 0 {
		t.Fatalf("not refused: %+v, %v", r, err)
	}
	return rs[0]
}

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if math.IsNaN(got) || math.Abs(got-want) > within {
		t.Errorf("%s: got %.9g, want %.9g ± %.3g", what, got, want, within)
	}
}

// component finds a component by its field.
func component(t *testing.T, r *Result, field string) Component {
	t.Helper()
	var all []string
	for _, c := range r.Components {
		if c.Field == field {
			return c
		}
		all = append(all, fmt.Sprintf("%q", c.Field))
	}
	t.Fatalf("no component %q among %v", field, all)
	return Component{}
}

// cautioned reports whether the result carries the caution.
func cautioned(r *Result, code CautionCode) bool {
	for _, c := range r.Cautions {
		if c.Code == code {
			return true
		}
	}
	return false
}
