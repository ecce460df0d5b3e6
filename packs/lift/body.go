package lift

// What is computed: mass and centre of gravity of a body from its sections.
// Symbols: m mass of a section (kg), x its centre from the end face (mm), t its
// tolerance; M sum of m; X centre of gravity.
//
//	M = sum m        X = sum(m x) / sum(m)
//
// Tolerance: each section may be heavier or lighter by t, all in the worst way
// at once. M is off by sum(m t) at most; for X the sections on one side are taken
// heavy and those on the other light, which is the exact extreme of a quotient
// of sums (it is reached at a corner, and the corner turns at X itself).
// Source: exact statics.
// Refused: no section; cuts that leave nothing.

import "math"

// A Body is what Weigh found.
type Body struct {
	Mass Kg
	// MassTolerance is the most the mass may be off, both ways.
	MassTolerance Kg
	// CoG is measured along the axis from the end face of the sections.
	CoG Mm
	// CoGLow and CoGHigh bound it when every section is off in the worst way.
	CoGLow, CoGHigh Mm
	// Masses of the sections in their order, a cut negative.
	Masses  []Kg
	Working []Working
}

// Weigh adds up sections that lie on one axis. The error is Refusals.
func Weigh(sections []Section) (Body, error) {
	var rs Refusals
	if len(sections) == 0 {
		rs = append(rs, *refuse("sections", "list them from one end face, or write the mass", "there is no section to weigh"))
	}
	for i, s := range sections {
		rs = append(rs, s.check(i)...)
	}
	if len(rs) > 0 {
		return Body{}, rs
	}
	var b Body
	ms, xs, ts := make([]float64, len(sections)), make([]float64, len(sections)), make([]float64, len(sections))
	var total, moment, slop float64
	for i, s := range sections {
		m, x := s.weigh()
		if s.Cut {
			m = -m
		}
		ms[i], xs[i], ts[i] = m, x, float64(s.Tolerance)
		total += m
		moment += m * x
		slop += math.Abs(m) * ts[i]
		b.Masses = append(b.Masses, Kg(m))
		b.Working = append(b.Working, sectionWorking(s, m, x))
	}
	if total-slop <= 0 {
		return Body{}, Refusals{*refuse("sections", "look at the cuts and at the tolerances", "the sections come to %v ± %s, which may leave nothing", Kg(total), Kg(slop).Up())}
	}
	b.Mass, b.MassTolerance = Kg(total), Kg(slop)
	b.CoG = Mm(moment / total)
	b.CoGLow = Mm(extremeCentre(ms, xs, ts, moment/total, -1))
	b.CoGHigh = Mm(extremeCentre(ms, xs, ts, moment/total, 1))
	b.Working = append(b.Working, Working{
		What: "mass and centre of gravity of the sections", Formula: "M = sum m; X = sum(m x)/M", Source: statics,
		Figures: []Figure{figUp("M", total, "kg").told(), fig("sum m x", moment, "kg mm"), fig("X", moment/total, "mm"),
			fig("X low", float64(b.CoGLow), "mm"), fig("X high", float64(b.CoGHigh), "mm")},
	})
	return b, nil
}

// extremeCentre moves the centre from start as far as the tolerances allow to
// the side: +1 away from the end face, -1 toward it.
func extremeCentre(ms, xs, ts []float64, start, side float64) float64 {
	x := start
	// Each pass moves x further to the side; a section changes camp at most once.
	for range len(ms) + 1 {
		var sum, moment float64
		for i, m := range ms {
			k := 1 - ts[i]
			if (xs[i]-x)*side*m > 0 {
				k = 1 + ts[i]
			}
			sum += m * k
			moment += m * k * xs[i]
		}
		next := moment / sum
		if (next-x)*side <= 0 {
			break
		}
		x = next
	}
	return x
}

func sectionWorking(s Section, m, x float64) Working {
	w := Working{What: s.Name, Source: "volume of a solid of revolution"}
	switch s.Shape {
	case Blades:
		w.Formula = "m = n × mass of one"
		w.Source = "count and mass of one as given"
		w.Figures = []Figure{fig("n", float64(s.Count), ""), figUp("one", float64(s.Each), "kg")}
	case Cone:
		w.Formula = "m = rho pi L/12 (D1² + D1 D2 + D2²) - rho pi/4 d² L"
		w.Figures = []Figure{fig("D1", float64(s.Outer), "mm"), fig("D2", float64(s.OuterFar), "mm"), fig("d", float64(s.Bore), "mm"),
			fig("L", float64(s.Length), "mm"), fig("rho", float64(s.Density), "kg/m³")}
	default:
		w.Formula = "m = rho pi/4 (D² - d²) L"
		w.Figures = []Figure{fig("D", float64(s.Outer), "mm"), fig("d", float64(s.Bore), "mm"),
			fig("L", float64(s.Length), "mm"), fig("rho", float64(s.Density), "kg/m³")}
	}
	w.Figures = append(w.Figures, figUp("m", m, "kg"), fig("x", x, "mm"))
	return w
}
