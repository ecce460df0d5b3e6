package lift

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// drawnBar is a load under a spreader or a beam with picks at one level.
func drawnBar(t *rapid.T, rig Rig) Plan {
	num := func(low, high float64, what string) float64 { return rapid.Float64Range(low, high).Draw(t, what) }
	span := num(600, 3000, "span")
	cog := Point{X: Mm(span * num(0.3, 0.7, "at")), Z: -Mm(num(20, 600, "depth"))}
	p := bare(num(100, 20000, "mass"), cog, Point{}, Point{X: Mm(span)})
	p.Rig = rig
	p.Bar = Bar{Name: "bar", Length: Mm(span), Rated: 1e6, Mass: Kg(num(0, 300, "bar mass"))}
	for i := range p.Legs {
		p.Legs[i].Length = Mm(num(500, 3000, "drop"))
	}
	p.Legs[1].Length = p.Legs[0].Length
	if rig == Beam {
		p.Bar.Rise = Mm(num(100, 600, "rise"))
		return p
	}
	p.TopLegs = []Leg{straight("top A", 0), straight("top B", 0)}
	p.Aim = Degree(num(45, 75, "aim"))
	return p
}

// The tilt that is judged is not passed anywhere within the tolerances: wherever
// the centre of gravity lies in its box, with one leg off by no more than it may be.
func TestNothingWithinTheTolerancesTiltsMore(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		num := func(low, high float64, what string) float64 { return rapid.Float64Range(low, high).Draw(t, what) }
		var p Plan
		if rapid.Bool().Draw(t, "bar") {
			p = drawnBar(t, rapid.SampledFrom([]Rig{Spreader, Beam}).Draw(t, "rig"))
		} else {
			p = drawnInHand(t, rapid.IntRange(2, 4).Draw(t, "legs"), rapid.SampledFrom([]float64{0, 30}).Draw(t, "far"))
		}
		p.Load.CoGTolerance = Point{X: Mm(num(0, 40, "tx")), Y: Mm(num(0, 40, "ty")), Z: Mm(num(0, 40, "tz"))}
		p.LengthError = Mm(num(1, 30, "error"))
		r := mustCompute(t, p)
		if r.Tilt.Most < r.Tilt.Within || r.Tilt.Within < r.Tilt.Total {
			t.Fatalf("tilts out of order: %+v", r.Tilt)
		}
		// The same load hung again, off somewhere within the tolerances.
		tol := p.Load.CoGTolerance
		at := *p.Load.CoG
		at.X += tol.X * Mm(num(-1, 1, "dx"))
		at.Y += tol.Y * Mm(num(-1, 1, "dy"))
		at.Z += tol.Z * Mm(num(-1, 1, "dz"))
		off := p.LengthError * Mm(num(-1, 1, "off"))
		s, no := p.settle()
		if no != nil {
			t.Fatal(no)
		}
		longer := make([]float64, len(s.frame.sloping()))
		if n := len(longer); n > 0 {
			longer[rapid.IntRange(0, n-1).Draw(t, "leg")] = float64(off)
		}
		up, no := s.frame.lean(vecOf(at), longer)
		if no != nil {
			t.Fatalf("not held: %v", no)
		}
		if got := angleBetween(up, zUp); got > r.Tilt.Most+1e-6 {
			t.Fatalf("off by %v at %v it hangs %g° out of level, and %g° is told; plan %+v", off, at, got, r.Tilt.Most, p.Load)
		}
	})
}

// A rotor hung level on two legs may roll when its centre of gravity is not quite on
// its axis. The sheet said "hangs 0.0° out of level, 2.4° within the tolerance", and
// told the planner to change the legs.
func TestTheCauseOfATiltIsNamed(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name, field, says string
		change            func(*Plan)
	}{
		{"legs as planned", "legs", "with everything as planned it hangs", func(p *Plan) {
			p.HookHeight, p.Legs[0].Length, p.Legs[1].Length = 0, 2100, 1850
		}},
		{"centre of gravity", "load.cogtolerance", "the cause is the tolerance of its centre of gravity", func(p *Plan) { p.Load.CoGTolerance.X = 100 }},
		{"centre of gravity, and a leg that adds a little", "load.cogtolerance", "mm makes it", func(p *Plan) { p.Load.CoGTolerance.X = 70 }},
		{"length of one leg", "lengtherror", "the cause is one leg long or short by 60 mm", func(p *Plan) { p.LengthError = 60 }},
	} {
		p := good()
		c.change(&p)
		found := false
		for _, x := range compute(t, p).Cautions {
			if x.Code != OutOfLevel {
				continue
			}
			found = true
			if x.Field != c.field || !strings.Contains(x.Message, c.says) || !x.Stop || x.Help == "" {
				t.Errorf("%s: at %s: %s; %s", c.name, x.Field, x.Message, x.Help)
			}
		}
		if !found {
			t.Errorf("%s: not out of level", c.name)
		}
	}
	// A beam hung by the wrong hole.
	beam := rotor(Beam)
	beam.Load.CoG.Z, beam.Bar.Bail = -80, 500
	for _, x := range compute(t, beam).Cautions {
		if x.Code == OutOfLevel && x.Field != "bar.bail" {
			t.Errorf("a beam: at %s: %s", x.Field, x.Message)
		}
	}
}

// By hand: two legs, picks 1600 mm apart, the hook 1800 mm over them and the centre
// 300 mm below: ± 40 mm swings it by atan(40/2100) = 1.09°, and a leg 10 mm long by
// L e/(s (h + g)) = 2012.5 × 10/(1600 × 2100) rad = 0.34° (F7 of the formulas read
// beside the outside values). 1.09° stood on paper as the most.
func TestTiltOfBothByHand(t *testing.T) {
	t.Parallel()
	r := compute(t, good())
	near(t, "most", float64(r.Tilt.Most), 1.091+0.343, 0.01)
	if got := r.Tilt.Most.Up().String(); got != "1.5°" {
		t.Errorf("told as %s", got)
	}
}
