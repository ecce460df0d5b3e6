package fit

import (
	"fmt"
	"math"
	"strings"
)

// A joint where it works: warm or cold, and turning.
//
//	d_20       interference at 20 °C and at rest; mm
//	a_h, a_s   mean expansion of hub and shaft; 1/K
//	T_h, T_s   their temperatures; °C
//	rho, w     density; kg/m³, and speed; rad/s
//	R, a, b    hub outside, joint, and shaft bore radius; m
//
//	d_T  = d_20 + D_F (a_s (T_s - 20) - a_h (T_h - 20))
//	d_w  = d_T - 2 (u_h - u_s)
//	u_h  = a rho_h w² ((3 + nu_h) R² + (1 - nu_h) a²)/(4 E_h)
//	u_s  = a rho_s w² ((1 - nu_s) a² + (3 + nu_s) b²)/(4 E_s)
//
// and of the speed alone the hoop stress at the bore of a ring is
// rho w² ((3 + nu) R² + (1 - nu) a²)/4, at the centre of a solid shaft
// rho w² (3 + nu) a²/8, which is its radial stress as well. Torque in the shaft:
//
//	tau = 16 T D_F / (pi (D_F⁴ - D_i⁴))
//
// Source: rotating disks of constant thickness, Timoshenko and Goodier, Theory of
// Elasticity, from memory; the same in Shigley, eq 3-55, from memory; torque: Bloch,
// Improving Machinery Reliability, p. 218. Valid: elastic, one temperature in each
// part, -20 to 100 °C, where one expansion and the cold moduli will do. Refused: beyond
// that; a service without expansions, or a speed without densities.

// A Service is where a joint works.
type Service struct {
	// Coldest and Hottest are those of the shaft under the hub, running or at rest.
	Coldest, Hottest Celsius
	// HubOver is how much hotter than its shaft the hub gets at most, ShaftOver the
	// other way round.
	HubOver, ShaftOver KelvinRise
	Speed              PerMinute // the highest; 0 for a joint that does not turn
}

// Work is a joint where it works. Loosest is the least grip over the service, with the
// smoothing loss taken off, Tightest the greatest stress.
type Work struct {
	Loosest, Tightest Contact
	// Hub and Shaft are their temperatures, and Speed the turns, at which it grips
	// least.
	Hub, Shaft Celsius
	Speed      PerMinute
	FromHeat   Micron // what the temperatures take off the interference; below zero they add
	FromSpeed  Micron // what the speed takes off it
}

// gone says that nothing grips where the joint works.
func (w *Work) gone() Reason {
	hub, shaft := fmt.Sprintf("%.0f", w.Hub), fmt.Sprintf("%.0f", w.Shaft)
	if w.Speed > 0 {
		return because("with the hub at %s °C on a shaft of %s °C at %s turns a minute nothing is left of the interference that grips", hub, shaft, fmt.Sprintf("%.0f", w.Speed))
	}
	return because("with the hub at %s °C on a shaft of %s °C nothing is left of the interference that grips", hub, shaft)
}

// Shear gives the shear stress at the outside of a shaft from a torque; 0 without one.
func Shear(torque NewtonMetre, outside, bore Mm) MPa {
	d, b := float64(outside), float64(bore)
	return MPa(16 * float64(torque) * 1000 * d / (math.Pi * (d*d*d*d - b*b*b*b)))
}

// TorqueAt gives the torque that brings a shaft to a shear stress.
func TorqueAt(shear MPa, outside, bore Mm) NewtonMetre {
	return NewtonMetre(float64(shear) / float64(Shear(1, outside, bore)))
}

// Backed refuses frictions that nobody stands behind: one that was copied from a hint
// is no friction of this joint. Its error is a *FieldError.
func (in Press) Backed() error {
	if field, why := in.unbacked(); why.Told() {
		return &FieldError{Field: field, Problem: why.String()}
	}
	return nil
}

// unbacked says why nobody stands behind the frictions, and at which field.
func (in Press) unbacked() (field string, why Reason) {
	holding, pulling := fmt.Sprintf("%g", in.Holding), fmt.Sprintf("%g", in.Pulling)
	switch {
	case strings.TrimSpace(in.Friction.By) == "":
		return "Friction.By", because("nobody stands behind the frictions %s for holding and %s for pulling: name who gives them", holding, pulling)
	case strings.TrimSpace(in.Friction.Reason) == "":
		return "Friction.Reason", because("%s gives the frictions %s for holding and %s for pulling without a reason: say what they rest on, a test, the maker's sheet, a standard", in.Friction.By, holding, pulling)
	}
	return "", Reason{}
}

// unlike tells whether hub and shaft are of two metals.
func (in Press) unlike() bool {
	return in.Hub.E != in.Shaft.E || in.Hub.Poisson != in.Shaft.Poisson || in.Hub.Alpha != in.Shaft.Alpha
}

// spun is the hoop stress at the bore of a ring from its speed alone, in MPa; radii in
// mm.
func (m Elastic) spun(omega, inner, outer float64) float64 {
	nu := float64(m.Poisson)
	return float64(m.Density) * omega * omega / 4 * ((3+nu)*outer*outer + (1-nu)*inner*inner) * 1e-12
}

// spunSolid is the stress at the centre of a solid shaft from its speed alone, in MPa.
func (m Elastic) spunSolid(omega, outer float64) float64 {
	return float64(m.Density) * omega * omega / 8 * (3 + float64(m.Poisson)) * outer * outer * 1e-12
}

// throws is what a speed takes off the interference, in micrometres on the diameter.
func (in Press) throws(omega float64) Micron {
	a, b, r := float64(in.Joint)/2, float64(in.ShaftBore)/2, float64(in.HubOutside)/2
	nu := float64(in.Shaft.Poisson)
	hub := a * in.Hub.spun(omega, a, r) / (float64(in.Hub.E) * 1000)
	shaft := a * float64(in.Shaft.Density) * omega * omega / 4 * ((1-nu)*a*a + (3+nu)*b*b) * 1e-12 / (float64(in.Shaft.E) * 1000)
	return Micron(2 * (hub - shaft) * 1000)
}

// work goes through the corners of the service; loosest is the least interference, cold
// and at rest, less the smoothing loss.
func (in Press) work(loosest Micron) *Work {
	s := in.Service
	omega := float64(s.Speed) * math.Pi / 30
	thrown := in.throws(omega)
	out := &Work{}
	first := true
	for _, shaft := range []Celsius{s.Coldest, s.Hottest} {
		for _, over := range []KelvinRise{s.HubOver, 0, -s.ShaftOver} {
			hub := shaft + Celsius(over)
			heat := Micron(1000 * float64(in.Joint) * (float64(in.Hub.Alpha)*float64(hub-20) - float64(in.Shaft.Alpha)*float64(shaft-20)))
			for _, spin := range []struct {
				speed PerMinute
				takes Micron
				omega float64
			}{{0, 0, 0}, {s.Speed, thrown, omega}} {
				if left := loosest - heat - spin.takes; first || left < out.Loosest.Interference {
					out.Loosest = in.spinning(left, spin.omega)
					out.Hub, out.Shaft, out.Speed = hub, shaft, spin.speed
					out.FromHeat, out.FromSpeed = heat, spin.takes
				}
				tight := in.spinning(in.Greatest-heat-spin.takes, spin.omega)
				out.Tightest = harder(out.Tightest, tight)
				first = false
			}
		}
	}
	return out
}

// harder takes the greater stress of each part.
func harder(a, b Contact) Contact {
	out := a
	if b.HubEquivalent > a.HubEquivalent {
		out.Interference, out.Pressure = b.Interference, b.Pressure
		out.HubHoop, out.HubEquivalent, out.HubUse = b.HubHoop, b.HubEquivalent, b.HubUse
	}
	if b.ShaftEquivalent > a.ShaftEquivalent {
		out.ShaftHoop, out.ShaftEquivalent, out.ShaftUse = b.ShaftHoop, b.ShaftEquivalent, b.ShaftUse
	}
	return out
}

// checkService refuses a service that cannot be computed.
func (in Press) checkService() error {
	s := in.Service
	if s == nil {
		return nil
	}
	for _, m := range []struct {
		field, name string
		Elastic
	}{{"Hub", "hub", in.Hub}, {"Shaft", "shaft", in.Shaft}} {
		switch {
		case !(m.Alpha >= 1e-6 && m.Alpha <= 50e-6):
			return wrong(m.field+".Alpha", "expansion of the %s %g 1/K: over 0.000001 and under 0.00005 is wanted where a temperature of work is told", m.name, m.Alpha)
		case s.Speed > 0 && m.Density == 0:
			return wrong(m.field+".Density", "density of the %s: it is wanted where a speed is told, 1000 to 25000 kg/m³", m.name)
		}
	}
	switch {
	case !(s.Coldest >= -20 && s.Coldest <= s.Hottest):
		return wrong("Service.Coldest", "the joint works from %g °C to %g °C: write the coldest first, not under -20 °C; below that one expansion will not do", s.Coldest, s.Hottest)
	case !(s.HubOver >= 0 && s.HubOver <= 120):
		return wrong("Service.HubOver", "hub hotter than its shaft by %g K: 0 to 120 is wanted", s.HubOver)
	case !(s.ShaftOver >= 0 && s.ShaftOver <= 120):
		return wrong("Service.ShaftOver", "shaft hotter than its hub by %g K: 0 to 120 is wanted", s.ShaftOver)
	case !(s.Hottest <= 100 && float64(s.Hottest)+float64(s.HubOver) <= 100):
		return wrong("Service.Hottest", "the joint works at up to %g °C, its hub %g K above that: over 100 °C cold moduli and one expansion promise too much; have it computed with the data for that temperature", s.Hottest, s.HubOver)
	case !(float64(s.Coldest)-float64(s.ShaftOver) >= -20):
		return wrong("Service.ShaftOver", "the hub would be at %g °C: not under -20 °C is wanted", float64(s.Coldest)-float64(s.ShaftOver))
	case !(s.Speed >= 0 && s.Speed <= 100000):
		return wrong("Service.Speed", "speed %g 1/min: 0 up to 100000 is wanted", s.Speed)
	}
	return nil
}
