package lift

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func weigh(t *testing.T, sections ...Section) Body {
	t.Helper()
	b, err := Weigh(sections)
	if err != nil {
		t.Fatalf("refused: %v", err)
	}
	return b
}

// steppedRotor is the shaft of the outside example, with a disc and a hub.
func steppedRotor() []Section {
	return []Section{
		{Name: "journal", Shape: Solid, At: 0, Length: 300, Outer: 120, Density: 7850},
		{Name: "barrel", Shape: Solid, At: 300, Length: 1320, Outer: 200, Density: 7850},
		{Name: "far journal", Shape: Solid, At: 1620, Length: 250, Outer: 120, Density: 7850},
		{Name: "end", Shape: Solid, At: 1870, Length: 150, Outer: 100, Density: 7850},
		{Name: "disc", Shape: Disc, At: 1160, Length: 120, Outer: 600, Bore: 200, Density: 7850},
		{Name: "hub", Shape: Hollow, At: 1870, Length: 150, Outer: 250, Bore: 100, Density: 7850},
	}
}

func TestMassesAgainstOutsideValues(t *testing.T) {
	const poundsPerCubicFoot = 0.45359237 / (0.3048 * 0.3048 * 0.3048) // kg/m³, exact by definition
	material := func(t *testing.T, name string) Material {
		t.Helper()
		m, ok := MaterialNamed(name)
		if !ok {
			t.Fatalf("no material %q", name)
		}
		return m
	}
	cylinder := func(t *testing.T, r outsideRow) Section {
		return Section{Shape: Disc, Outer: Mm(r.in(t, "outer")), Bore: Mm(r.in(t, "bore")), Length: Mm(r.in(t, "length")), Density: 7850}
	}
	runOutside(t, "lift-masses.txt", map[string]func(*testing.T, outsideRow){
		"density": func(t *testing.T, r outsideRow) { r.compare(t, float64(material(t, r.inputs).Density)) },
		"density range": func(t *testing.T, r outsideRow) {
			m := material(t, r.inputs)
			r.compare(t, float64(m.Low), float64(m.High))
			if m.Density < m.Low || m.Density > m.High {
				t.Errorf("%s: %g lies outside %g to %g", m.Name, m.Density, m.Low, m.High)
			}
		},
		"density of water": func(t *testing.T, r outsideRow) {
			r.compare(t, float64(material(t, r.inputs).Density)/poundsPerCubicFoot)
		},
		"cylinder": func(t *testing.T, r outsideRow) { r.compare(t, float64(weigh(t, cylinder(t, r)).Mass)) },
		// One foot of bar of one inch, in pounds.
		"bar coefficient, inch": func(t *testing.T, r outsideRow) {
			b := weigh(t, Section{Shape: Solid, Outer: 25.4, Length: 304.8, Density: Density(490 * poundsPerCubicFoot)})
			r.compare(t, float64(b.Mass)/0.45359237)
		},
		"frustum": func(t *testing.T, r outsideRow) {
			b := weigh(t, Section{Shape: Cone, Outer: Mm(r.in(t, "outer")), OuterFar: Mm(r.in(t, "far")), Length: Mm(r.in(t, "length")), Density: 7850})
			r.compare(t, float64(b.Mass), float64(b.CoG))
		},
		"stepped rotor":        func(t *testing.T, r outsideRow) { r.compare(t, float64(weigh(t, steppedRotor()...).Mass)) },
		"stepped rotor centre": func(t *testing.T, r outsideRow) { r.compare(t, float64(weigh(t, steppedRotor()...).CoG)) },
	})
}

// A cut section takes away what the same section adds: a solid less its bore is
// the hollow one (composite bodies, any handbook of mechanics).
func TestCutEqualsHollow(t *testing.T) {
	t.Parallel()
	hollow := weigh(t, Section{Shape: Hollow, At: 50, Length: 400, Outer: 300, Bore: 100, Density: 7850})
	cut := weigh(t, Section{Shape: Solid, At: 50, Length: 400, Outer: 300, Density: 7850},
		Section{Shape: Solid, At: 50, Length: 400, Outer: 100, Density: 7850, Cut: true})
	near(t, "mass", float64(cut.Mass), float64(hollow.Mass), 1e-9)
	near(t, "centre", float64(cut.CoG), float64(hollow.CoG), 1e-9)
	blades := weigh(t, Section{Shape: Blades, At: 200, Count: 60, Each: 1.5})
	near(t, "blades", float64(blades.Mass), 90, 1e-12)
}

// The bounds of the centre against every corner of the tolerances, tried one by one.
func TestCentreBoundsAreTheCorners(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 6).Draw(t, "n")
		var ss []Section
		for range n {
			ss = append(ss, Section{Shape: Blades, Count: 1, At: Mm(rapid.Float64Range(0, 3000).Draw(t, "at")),
				Each: Kg(rapid.Float64Range(1, 500).Draw(t, "each")), Tolerance: Ratio(rapid.Float64Range(0, 0.3).Draw(t, "tol"))})
		}
		b, err := Weigh(ss)
		if err != nil {
			t.Fatal(err)
		}
		low, high := math.Inf(1), math.Inf(-1)
		for corner := range 1 << n {
			var m, mx float64
			for i, s := range ss {
				k := float64(s.Each) * (1 - float64(s.Tolerance))
				if corner>>i&1 == 1 {
					k = float64(s.Each) * (1 + float64(s.Tolerance))
				}
				m, mx = m+k, mx+k*float64(s.At)
			}
			low, high = min(low, mx/m), max(high, mx/m)
		}
		if math.Abs(float64(b.CoGLow)-low) > 1e-6 || math.Abs(float64(b.CoGHigh)-high) > 1e-6 {
			t.Fatalf("got %g to %g, want %g to %g", b.CoGLow, b.CoGHigh, low, high)
		}
	})
}

func TestSectionsAreRefused(t *testing.T) {
	t.Parallel()
	good := Section{Name: "s", Shape: Hollow, Length: 100, Outer: 200, Bore: 50, Density: 7850}
	for _, c := range []struct {
		name, field string
		change      func(*Section)
	}{
		{"no shape", "sections[0].shape", func(s *Section) { s.Shape = 0 }},
		{"no density", "sections[0].density", func(s *Section) { s.Density = 0 }},
		{"no length", "sections[0].length", func(s *Section) { s.Length = 0 }},
		{"bore as wide as the outside", "sections[0].bore", func(s *Section) { s.Bore = 200 }},
		{"solid with a bore", "sections[0].bore", func(s *Section) { s.Shape = Solid }},
		{"hollow without a bore", "sections[0].bore", func(s *Section) { s.Bore = 0 }},
		{"cone without its far diameter", "sections[0].outerfar", func(s *Section) { s.Shape = Cone }},
		{"blades without a mass", "sections[0].each", func(s *Section) { s.Shape, s.Count = Blades, 60 }},
		{"outside that is no number", "sections[0].outer", func(s *Section) { s.Outer = Mm(math.NaN()) }},
		{"tolerance of 100 %", "sections[0].tolerance", func(s *Section) { s.Tolerance = 1 }},
		{"nothing left after a cut", "sections", func(s *Section) { s.Cut = true }},
	} {
		s := good
		c.change(&s)
		_, err := Weigh([]Section{s})
		rs, ok := err.(Refusals)
		if !ok || rs[0].Field != c.field {
			t.Errorf("%s: got %v, want a refusal at %s", c.name, err, c.field)
		}
	}
	if _, err := Weigh(nil); err == nil {
		t.Error("no section: not refused")
	}
}
