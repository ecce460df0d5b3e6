package lift

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// handled is a load between grips, with no tolerance.
func handled(mass, may float64, cog Point, grips ...Point) HandPlan {
	p := HandPlan{Load: Load{Mass: Kg(mass), Source: Weighed, CoG: &cog, CoGTolerance: Point{X: 1e-6}}, MayCarry: Kg(may)}
	for i, g := range grips {
		p.Grips = append(p.Grips, Pick{Name: string(rune('A' + i)), At: g})
	}
	return p
}

func byHand(t *testing.T, p HandPlan) *HandResult {
	t.Helper()
	r, err := Carry(p)
	if err != nil {
		t.Fatalf("refused: %v", err)
	}
	return r
}

func TestHandsOutside(t *testing.T) {
	t.Parallel()
	runOutside(t, "lift-hands.txt", map[string]func(*testing.T, outsideRow){
		"team": func(t *testing.T, r outsideRow) {
			grips := []Point{{X: -1}, {X: 1, Y: -1}, {X: 1, Y: 1}}[:int(r.in(t, "people"))]
			if len(grips) == 2 {
				grips[1].Y = 0
			}
			r.compare(t, float64(byHand(t, handled(1, r.in(t, "each"), Point{}, grips...)).Team))
		},
		"two people": func(t *testing.T, r outsideRow) {
			p := handled(r.in(t, "W"), 1e6, Point{}, Point{X: Mm(-r.in(t, "a"))}, Point{X: Mm(r.in(t, "b"))})
			got := byHand(t, p).Shares
			r.compare(t, float64(got[0]), float64(got[1]))
		},
		"pressure": func(t *testing.T, r outsideRow) {
			side := Mm(1000 * math.Sqrt(r.in(t, "area")))
			got, err := LayDown(Kg(r.in(t, "mass")), 1, Floor{Rated: 1, Pieces: 1, Length: side, Width: side})
			if err != nil {
				t.Fatal(err)
			}
			r.compare(t, float64(got.Pressure))
		},
	})
}

// Forces and moments of what people carry close about any point (Newton's first).
func TestHandsBalance(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string) Mm { return Mm(rapid.Float64Range(-800, 800).Draw(t, name)) }
		a, b, c := Point{X: draw("ax"), Y: draw("ay")}, Point{X: draw("bx"), Y: draw("by")}, Point{X: draw("cx"), Y: draw("cy")}
		if nearlyInLine(a, b, c) {
			t.Skip("the three grips lie nearly in one line")
		}
		u, v := rapid.Float64Range(0.05, 0.45).Draw(t, "u"), rapid.Float64Range(0.05, 0.45).Draw(t, "v")
		g := Point{X: a.X + Mm(u)*(b.X-a.X) + Mm(v)*(c.X-a.X), Y: a.Y + Mm(u)*(b.Y-a.Y) + Mm(v)*(c.Y-a.Y)}
		r, err := Carry(handled(60, 100, g, a, b, c))
		if err != nil {
			t.Fatal(err)
		}
		var sum, mx, my float64
		for i, p := range []Point{a, b, c} {
			w := float64(r.Shares[i])
			sum, mx, my = sum+w, mx+w*float64(p.X-g.X), my+w*float64(p.Y-g.Y)
		}
		if math.Abs(sum-60) > 1e-9 || math.Abs(mx) > 1e-6 || math.Abs(my) > 1e-6 {
			t.Fatalf("sum %g, moments %g and %g", sum, mx, my)
		}
	})
}

// nearlyInLine asks whether the height of a triangle over its longest side is under a
// fiftieth of it, by the angle at the longest side's ends (sine).
func nearlyInLine(a, b, c Point) bool {
	pts := []Point{a, b, c}
	for i := range pts {
		from, to, third := pts[i], pts[(i+1)%3], pts[(i+2)%3]
		long := math.Hypot(float64(to.X-from.X), float64(to.Y-from.Y))
		short := math.Hypot(float64(third.X-from.X), float64(third.Y-from.Y))
		other := math.Hypot(float64(third.X-to.X), float64(third.Y-to.Y))
		if long < short || long < other {
			continue
		}
		angle := math.Atan2(float64(third.Y-from.Y), float64(third.X-from.X)) - math.Atan2(float64(to.Y-from.Y), float64(to.X-from.X))
		return short*math.Abs(math.Sin(angle)) < long/50
	}
	return false
}

// setThree puts three people at a load.
func setThree(a, b, c Point) func(*HandPlan) {
	return func(p *HandPlan) {
		p.Grips = []Pick{{Name: "A", At: a}, {Name: "B", At: b}, {Name: "C", At: c}}
		p.Load.CoG = &Point{X: (a.X + b.X + c.X) / 3, Y: (a.Y + b.Y + c.Y) / 3}
	}
}

// Three people along a pipe, one of them a millimetre off the line: their shares were
// printed, and hung on that millimetre. In inches they hung on the last digit of a float.
func TestHandsNearlyInLineAreRefused(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		length, turn := rapid.Float64Range(200, 3000).Draw(t, "length"), rapid.Float64Range(0, 2*math.Pi).Draw(t, "turn")
		along, off := rapid.Float64Range(0.05, 0.95).Draw(t, "along"), rapid.Float64Range(-0.06, 0.06).Draw(t, "off")
		at := func(x, y float64) Point {
			return Point{X: Mm(length * (x*math.Cos(turn) - y*math.Sin(turn))), Y: Mm(length * (x*math.Sin(turn) + y*math.Cos(turn)))}
		}
		if math.Abs(math.Abs(off)-0.02) < 1e-9 {
			t.Skip("on the bound")
		}
		p := handled(30, 100, at((1+along)/3, off/3), at(0, 0), at(1, 0), at(along, off))
		p.Load.CoGTolerance = Point{}
		_, err := Carry(p)
		if near := math.Abs(off) < 0.02; near != (err != nil && strings.Contains(err.Error(), "of one line")) {
			t.Fatalf("%g of the length off the line: %v", off, err)
		}
	})
}

func TestHandsAreRefused(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name, field string
		change      func(*HandPlan)
	}{
		{"no mass", "load.mass", func(p *HandPlan) { p.Load.Mass = 0 }},
		{"no centre of gravity", "load.cog", func(p *HandPlan) { p.Load.CoG = nil }},
		{"centre of gravity past a grip", "load.cog", func(p *HandPlan) { p.Load.CoG.X = 400 }},
		{"four people", "grips", func(p *HandPlan) { p.Grips = append(p.Grips, p.Grips[0], p.Grips[1]) }},
		{"three in one line", "grips", func(p *HandPlan) { p.Grips = append(p.Grips, p.Grips[0]); p.Grips[2].At = Point{X: 100} }},
		{"three in a slanting line, in inches", "grips", setThree(Point{X: -3.9 * 25.4, Y: -7.8 * 25.4}, Point{X: 3.9 * 25.4, Y: 7.8 * 25.4}, Point{X: 1.3 * 25.4, Y: 2.6 * 25.4})},
		{"three nearly in one line", "grips", setThree(Point{X: -300}, Point{X: 300}, Point{X: 100, Y: 1})},
		{"two of three in one place", "grips", setThree(Point{X: -300}, Point{X: 300}, Point{X: 300})},
		{"nobody", "grips", func(p *HandPlan) { p.Grips = nil }},
		{"no limit", "maycarry", func(p *HandPlan) { p.MayCarry = 0 }},
		{"one of them carries too much", "grips[1]", func(p *HandPlan) { p.Load.CoG.X = 150 }},
		{"too much within the tolerance", "grips[0]", func(p *HandPlan) { p.Load.CoGTolerance.X = 150 }},
	} {
		p := handled(30, 20, Point{}, Point{X: -300}, Point{X: 300})
		byHand(t, p)
		c.change(&p)
		_, err := Carry(p)
		var rs Refusals
		if !errors.As(err, &rs) || rs[0].Field != c.field {
			t.Errorf("%s: got %v, want a refusal at %s", c.name, err, c.field)
		}
	}
}

// Over the guide for a team, work stops unless a named person decides otherwise.
func TestOverTheTeam(t *testing.T) {
	t.Parallel()
	p := handled(38, 25, Point{}, Point{X: -300}, Point{X: 300})
	r := byHand(t, p)
	if len(r.Cautions) != 1 || !r.Cautions[0].Stop {
		t.Fatalf("38 kg for two who may carry 25 kg each: %v", r.Cautions)
	}
	p.DecidedBy, p.Reason = "the supervisor", "two steps to the bench"
	r = byHand(t, p)
	if len(r.Cautions) != 1 || r.Cautions[0].Stop || !strings.Contains(r.Cautions[0].Message, "the supervisor") {
		t.Errorf("decided by a person: %v", r.Cautions)
	}
}

func TestFloorsAreRefused(t *testing.T) {
	t.Parallel()
	good := Floor{Rated: 20, Pieces: 4, Length: 1200, Width: 150, Most: 0.5}
	for _, c := range []struct {
		name, field string
		change      func(*Floor)
	}{
		{"no rating", "rated", func(f *Floor) { f.Rated = 0 }},
		{"no pieces", "pieces", func(f *Floor) { f.Pieces = 0 }},
		{"no width", "width", func(f *Floor) { f.Width = 0 }},
		{"no share", "most", func(f *Floor) { f.Most = 0 }},
		{"a share under the even one", "most", func(f *Floor) { f.Most = 0.2 }},
		{"a share of one piece", "most", func(f *Floor) { f.Pieces = 1 }},
	} {
		f := good
		if _, err := LayDown(1000, 1.1, f); err != nil {
			t.Fatal(err)
		}
		c.change(&f)
		_, err := LayDown(1000, 1.1, f)
		var rs Refusals
		if !errors.As(err, &rs) || rs[0].Field != c.field {
			t.Errorf("%s: got %v, want a refusal at %s", c.name, err, c.field)
		}
	}
}
