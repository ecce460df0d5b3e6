package lift

// What is computed: what a load does to the floor under the pieces that it is set
// down on.
// Symbols: W load with its tolerance, kg; k dynamic factor; q share of the load on
// the piece that carries most; A area of one piece on the floor, m²; p pressure.
//
//	p = W g k q / A, g = 9.80665 m/s²
//
// Source: force over area; 1 kgf/m² = 9.80665 Pa (NIST SP 811, appendix B.8).
// Validity: the piece spreads its load evenly, so it has to be stiff and lie full.
// Refused: pieces without a size; several pieces without the share of the one that
// carries most, which may stand over a corner; a share under an even split.

// A Floor is what a load is laid down on.
type Floor struct {
	// Rated load of the floor.
	Rated Kilopascal
	// Pieces under the load, all alike, with length and width on the floor.
	Pieces        int
	Length, Width Mm
	// Most is the share of the load on the piece that carries most; 0 for one piece.
	Most Ratio
}

// A FloorResult is what the floor feels.
type FloorResult struct {
	// Pressure under the piece that carries most.
	Pressure Kilopascal
	// Used is Pressure over the rated load of the floor; over 1 it is overloaded.
	Used    Ratio
	Working Working
}

// LayDown works out the pressure of a load of that mass, at its heaviest, on the
// floor. The error is Refusals, their fields those of Floor in lower case.
func LayDown(mass Kg, dynamic Ratio, f Floor) (FloorResult, error) {
	c := &checker{}
	c.positive("mass", "the mass of the load", "kg", float64(mass))
	c.positive("rated", "what the floor carries", "kN/m²", float64(f.Rated))
	c.positive("length", "the length of a piece", "mm", float64(f.Length))
	c.positive("width", "the width of a piece", "mm", float64(f.Width))
	if !finite(float64(dynamic)) || dynamic < 1 {
		c.refuse("dynamic", "write the factor by the site's rules, not under 1", "the dynamic factor is %g", float64(dynamic))
	}
	most := f.Most
	switch {
	case f.Pieces < 1:
		c.refuse("pieces", "write how many pieces it stands on", "the load stands on %d pieces", f.Pieces)
	case f.Pieces == 1 && most == 0:
		most = 1
	case f.Pieces == 1:
		c.refuse("most", "leave it out", "one piece carries all, and a share of %s is given", most.Percent())
	case most == 0:
		c.refuse("most", "write the share of the piece that carries most, as it stands; two of four may carry nearly all", "the load stands on %d pieces and nothing says what the worst one carries", f.Pieces)
	case !finite(float64(most)) || most < 1/Ratio(f.Pieces)-1e-9 || most > 1:
		c.refuse("most", "write the share of the piece that carries most", "of %d pieces one cannot carry %s at most", f.Pieces, most.Percent())
	}
	if len(c.rs) > 0 {
		return FloorResult{}, c.rs
	}
	area := float64(f.Length) * float64(f.Width) * 1e-6
	p := float64(mass.Newton()) * float64(dynamic) * float64(most) / area / 1000
	return FloorResult{Pressure: Kilopascal(p), Used: Ratio(p / float64(f.Rated)), Working: Working{
		What: "pressure on the floor", Formula: "p = W g k q / A", Source: "force over area",
		Figures: []Figure{figUp("W", float64(mass), "kg"), figUp("k", float64(dynamic), ""), figUp("q", float64(most), ""), figDown("A", area, "m²"), figUp("p", p, "kN/m²").told()},
	}}, nil
}
