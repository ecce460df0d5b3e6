package heat

import (
	"strconv"
	"strings"
)

// Properties of materials over temperature.
//
// Symbols: T temperature in °C; e(T) free elongation since 20 °C, no unit;
// c(T) specific heat, J/kg K; k(T) conductivity, W/m K; rho density, kg/m³.
// Sources: with each material. Validity: From to To of the material; a heating
// that would leave this range is refused. Elongation is counted from 20 °C, the
// temperature at which drawings state sizes (ISO 1).

// A Curve is a polynomial in degrees Celsius, lowest power first: a material
// with one flat value fills the first place only.
type Curve [4]float64

// at evaluates the curve.
func (c *Curve) at(t float64) float64 {
	return c[0] + t*(c[1]+t*(c[2]+t*c[3]))
}

// integral is the integral of the curve from 0 °C to t.
func (c *Curve) integral(t float64) float64 {
	return t * (c[0] + t*(c[1]/2+t*(c[2]/3+t*c[3]/4)))
}

// A Material is what a part is made of. Its curves are only good From..To.
type Material struct {
	Name       string
	Density    KgPerM3
	Elongation Curve // free elongation since 20 °C, no unit
	Specific   Curve // specific heat, J/kg K
	Conducts   Curve // conductivity, W/m K
	Young      MPa   // modulus of elasticity, cold
	Poisson    Number
	Brittle    bool // cracks instead of yielding: thermal shock is judged
	From, To   Celsius
	Source     string // where the figures come from; "memory" marks what was not read
}

// MaterialNamed finds a material of the table, without regard to capitals. It
// refuses a name that is not there, listing those that are.
func MaterialNamed(name string) (Material, error) {
	for _, m := range materials {
		if strings.EqualFold(m.Name, strings.TrimSpace(name)) {
			return m, nil
		}
	}
	names := make([]string, len(materials))
	for i, m := range materials {
		names[i] = strconv.Quote(m.Name) // one of them has a comma
	}
	instead := "write one of " + strings.Join(names, ", ")
	if strings.TrimSpace(name) == "" {
		return Material{}, refuse("Material", instead, "the material is missing, and its growth cannot be guessed")
	}
	return Material{}, refuse("Material", instead, "no properties are known for material %q", name)
}

// Materials returns the table, in the order in which it should be offered.
func Materials() []Material { return append([]Material(nil), materials...) }

// WithExpansion returns the material with one flat coefficient of expansion in
// place of its curve, and the source of that figure added: a site value, or
// one for a cautious plan.
func (m Material) WithExpansion(alpha PerKelvin, source string) Material {
	m.Elongation = flatExpansion(float64(alpha))
	m.Source += "; expansion " + source
	return m
}

// flatExpansion is the elongation curve of a constant coefficient.
func flatExpansion(alpha float64) Curve { return Curve{-alpha * float64(sizedAt), alpha} }

// strain is the free elongation since 20 °C.
func (m *Material) strain(t float64) float64 { return m.Elongation.at(t) }

// Alpha is the mean coefficient of expansion between two temperatures.
func (m Material) Alpha(from, to Celsius) PerKelvin { return PerKelvin(m.alpha(from, to)) }

// alpha is the mean coefficient between two temperatures.
func (m *Material) alpha(from, to Celsius) float64 {
	a, b := float64(from), float64(to)
	if a == b {
		b += 1
	}
	return (m.strain(b) - m.strain(a)) / (b - a)
}

// check refuses a material without properties, or with ones no metal has.
func (m *Material) check() error {
	if m.Name == "" {
		return refuse("Name", "write one of the names of the table, or give the properties with their source",
			"the material is missing, and its growth cannot be guessed")
	}
	if !(m.From >= -273 && m.To > m.From && m.To < 3000 && m.From < 100 && m.To > sizedAt) {
		return refuse("To", "say from and to which temperature they are good",
			"the properties of %v have no range", m.Name)
	}
	t := float64(sizedAt)
	err := firstOf(
		positive("Density", "the density of "+m.Name, float64(m.Density), "kg/m³"),
		positive("Specific", "the specific heat of "+m.Name, m.Specific.at(t), "J/kg K"),
		positive("Conducts", "the conductivity of "+m.Name, m.Conducts.at(t), "W/m K"),
		positive("Young", "the modulus of elasticity of "+m.Name, float64(m.Young), "MPa"),
		positive("Elongation", "the expansion of "+m.Name, m.alpha(sizedAt, 100), "1/K"),
		m.plausible(sizedAt), m.plausible(m.From), m.plausible(m.To),
	)
	if err != nil {
		return err
	}
	if !(m.Poisson > 0 && m.Poisson < 0.5) {
		return refuse("Poisson", "give the ratio of the material, over 0 and under 0.5", "Poisson's ratio of %v is %v", m.Name, float64(m.Poisson))
	}
	return nil
}

// plausible refuses properties that no metal has at a temperature.
func (m *Material) plausible(at Celsius) error {
	t := float64(at)
	for _, p := range []struct {
		field, what     string
		is, least, most float64
		unit            string
	}{
		{"Density", "a density", float64(m.Density), 1000, 25000, "kg/m³"},
		{"Specific", "a specific heat", m.Specific.at(t), 80, 2000, "J/kg K"},
		{"Conducts", "a conductivity", m.Conducts.at(t), 3, 500, "W/m K"},
		{"Young", "a modulus of elasticity", float64(m.Young), 10e3, 700e3, "MPa"},
		{"Elongation", "an expansion", m.alpha(at, at+10), 1e-6, 40e-6, "1/K"},
	} {
		if !(p.is >= p.least && p.is <= p.most) {
			return refuse(p.field, "look for a slip of the decimal point or of the unit", "%v of %v %v is not that of a metal", p.what, p.is, p.unit)
		}
	}
	return nil
}

// covers refuses a temperature outside the range of the curves.
func (m *Material) covers(field string, t Celsius) error {
	if !(t >= m.From && t <= m.To) {
		return refuse(field, "choose a material whose data reach that far, or another way",
			"%v lies outside %v to %v, where the data of %v are good", t, m.From, m.To, m.Name)
	}
	return nil
}
