package lift

// What is computed: mass and centre of one section of a body of revolution.
// Symbols: D outer diameter, d bore (mm); L length (mm); rho density (kg/m³);
// m mass (kg); c centre from the near face (mm).
//
//	cylinder  m = rho pi/4 (D² - d²) L                     c = L/2
//	frustum   m = rho pi L/12 (D1² + D1 D2 + D2²)          c = (L/4)(D1² + 2 D1 D2 + 3 D2²)/(D1² + D1 D2 + D2²)
//	blades    m = n × mass of one, all in one plane        c = 0
//
// Source: volumes and centroids of solids of revolution, any handbook of
// mechanics; steel bar coefficient 0.0061654 D² kg/m agrees.
// Validity: sections on one axis, square faces; a cone may have a straight bore.
// Refused: a diameter, length, density or count that is not above zero, a bore
// not smaller than the outside, a solid with a bore, a tolerance of 100 % or more.

import (
	"fmt"
	"math"
)

// A Shape says how a Section is measured.
type Shape int

// The shapes. The zero Shape is refused.
const (
	// Solid is a plain cylinder: Outer, Length; At is its near face.
	Solid Shape = iota + 1
	// Hollow is a cylinder with a Bore; At is its near face.
	Hollow
	// Cone is a frustum from Outer at the near face to OuterFar, a straight Bore allowed.
	Cone
	// Disc is a cylinder, Bore allowed, whose At is its MIDDLE plane.
	Disc
	// Blades are Count equal pieces of mass Each, all at the plane At.
	Blades
)

// A Section is one piece of a body of revolution.
type Section struct {
	Name  string
	Shape Shape
	// At is measured along the axis from the one end face the author chose: to the
	// near face of the section, for Disc and Blades to the middle plane.
	At              Mm
	Length          Mm
	Outer, OuterFar Mm
	Bore            Mm
	Count           int
	Each            Kg
	// Density is not used for Blades.
	Density Density
	// Tolerance of the section's mass, both ways: 0.05 is ±5 %.
	Tolerance Ratio
	// Cut takes the section away: keyways, holes, a counterbore.
	Cut bool
}

// weigh gives the mass, without its sign, and the centre from the end face.
func (s Section) weigh() (mass, at float64) {
	const toMetres = 1e-9 // cubic millimetre to cubic metre
	rho := float64(s.Density) * toMetres
	d1, d2, b, l := float64(s.Outer), float64(s.OuterFar), float64(s.Bore), float64(s.Length)
	x := float64(s.At)
	switch s.Shape {
	case Cone:
		q := d1*d1 + d1*d2 + d2*d2
		whole := rho * math.Pi * l / 12 * q
		c := l / 4 * (d1*d1 + 2*d1*d2 + 3*d2*d2) / q
		hole := rho * math.Pi / 4 * b * b * l
		mass = whole - hole
		return mass, x + (whole*c-hole*l/2)/mass
	case Blades:
		return float64(s.Count) * float64(s.Each), x
	case Disc:
		return rho * math.Pi / 4 * (d1*d1 - b*b) * l, x
	default:
		return rho * math.Pi / 4 * (d1*d1 - b*b) * l, x + l/2
	}
}

// check gives what is wrong with the section as number i of its list.
func (s Section) check(i int) Refusals {
	var rs Refusals
	field := func(name string) string { return fmt.Sprintf("sections[%d].%s", i, name) }
	positive := func(name string, v float64, unit string) {
		if !finite(v) || v <= 0 {
			rs = append(rs, *refuse(field(name), "write it above zero", "%s of section %q is %v", name, s.Name, given(v, unit)))
		}
	}
	if !finite(float64(s.At)) {
		rs = append(rs, *refuse(field("at"), "measure it from the end face", "section %q has no place on the axis", s.Name))
	}
	if !finite(float64(s.Tolerance)) || s.Tolerance < 0 || s.Tolerance >= 1 {
		rs = append(rs, *refuse(field("tolerance"), "write it between 0 and 100 %", "tolerance of section %q is %g %%", s.Name, 100*float64(s.Tolerance)))
	}
	switch s.Shape {
	case Blades:
		positive("count", float64(s.Count), "pieces")
		positive("each", float64(s.Each), "kg")
		return rs
	case Solid, Hollow, Cone, Disc:
	default:
		return append(rs, *refuse(field("shape"), "write solid, hollow, cone, disc or blades", "section %q has no shape", s.Name))
	}
	positive("outer", float64(s.Outer), "mm")
	positive("length", float64(s.Length), "mm")
	positive("density", float64(s.Density), "kg/m³")
	least := s.Outer
	if s.Shape == Cone {
		positive("outerfar", float64(s.OuterFar), "mm")
		least = min(s.Outer, s.OuterFar)
	}
	switch {
	case !finite(float64(s.Bore)) || s.Bore < 0 || s.Bore > 0 && s.Bore >= least:
		rs = append(rs, *refuse(field("bore"), "write a bore smaller than the outside", "bore of section %q is %v in an outside of %v", s.Name, s.Bore, least))
	case s.Shape == Solid && s.Bore > 0:
		rs = append(rs, *refuse(field("bore"), "call it hollow, or leave the bore out", "section %q is solid and has a bore of %v", s.Name, s.Bore))
	case s.Shape == Hollow && s.Bore == 0:
		rs = append(rs, *refuse(field("bore"), "write the bore, or call it solid", "section %q is hollow and has no bore", s.Name))
	}
	return rs
}
