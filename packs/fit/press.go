package fit

// Interference fits: pressure, stresses, and what the joint holds.
//
//	D_F, D_o, D_i   joint, hub outside, shaft bore diameter (0 = solid); mm
//	L               length in contact; mm
//	d               interference on diameter; mm
//	E, nu           modulus of elasticity; MPa, and Poisson's ratio, h hub, s shaft
//	p               pressure in the joint; MPa
//	mu              friction
//
//	p       = d / (D_F (K_h/E_h + K_s/E_s))
//	K_h     = (D_o² + D_F²)/(D_o² - D_F²) + nu_h
//	K_s     = (D_F² + D_i²)/(D_F² - D_i²) - nu_s
//	hub at its bore      hoop p (D_o² + D_F²)/(D_o² - D_F²), radial -p,
//	                     equivalent (von Mises) p sqrt(3 + c⁴)/(1 - c²), c = D_F/D_o
//	shaft, solid         hoop and radial -p, equivalent p
//	shaft, bored         hoop at its bore -2 p D_F²/(D_F² - D_i²), which is also the equivalent
//	F       = pi D_F L p mu          axial force to move it
//	T       = F D_F/2                torque it carries
//	d_hold  = d - f (Rz_h + Rz_s)    interference left when the ridges are pressed flat
//
// At work the interference is another one: temperature and speed are in service.go.
//
// Source: Lamé's thick rings in plane stress, the form of DIN 7190-1 and of the
// machine-design handbooks (Shigley, Norton, Niemann); axial force and the high
// friction for puller sizing from Bloch, Improving Machinery Reliability, eq 3-13.
// The equivalent stress at the hub's bore is from memory. Plane strain would give
// 8 to 9 % more pressure.
//
// Valid: elastic, hub and shaft equally long, a straight seat, no end effects. Refused:
// sizes that do not nest, tapers and shrink discs, interference over 5 ‰ of the
// diameter, one friction for both purposes, a smoothing loss left unsaid; holding
// figures where the least interference is gone, the hub or shaft yields, nobody stands
// behind the friction, or unlike metals have no temperature at which they work.

import (
	"fmt"
	"math"
)

// Elastic is what the pressure needs to know of a material.
type Elastic struct {
	E       GPa   // 1 to 700
	Poisson Ratio // over 0 and under 0.5
	Yield   MPa   // 0 where it is not known: nothing is then said about yielding
	// Alpha is the mean expansion over the temperatures of the service, and Density
	// that for its speed; both are used with a Service only.
	Alpha   PerKelvin
	Density KgPerM3
}

// SmoothingRule says how much of the interference is lost when the ridges of the
// two surfaces are pressed flat. The editions of DIN 7190 differ, so it has no
// default.
type SmoothingRule int

// The rules in use, as a share of the summed roughness heights Rz, on diameter.
const (
	_         SmoothingRule = iota
	NoLoss                  // no loss, as for ground and fine-turned faces already fitted once
	LossEight               // 0.8: DIN 7190:1988 and :2001
	LossFour                // 0.4: DIN 7190-1:2017
)

// Smoothing is the smoothing loss as stated. The heights are 0 to 100 µm and are
// not used with NoLoss.
type Smoothing struct {
	Rule    SmoothingRule
	HubRz   Micron
	ShaftRz Micron
}

// Press is one interference fit. Least and Greatest are the limits of the
// interference on diameter at 20 °C, or the same measured value twice.
type Press struct {
	Joint      Mm // D_F
	HubOutside Mm // D_o, where the hub is thinnest
	ShaftBore  Mm // D_i, 0 for a solid shaft
	Length     Mm // L, in contact
	Hub, Shaft Elastic
	Least      Micron // may be below zero: a pair that can be loose
	Greatest   Micron
	Holding    Ratio // friction that is surely there: low, to prove what it holds
	Pulling    Ratio // friction that may be there: high, to choose a puller
	Friction   Claim // who stands behind both frictions, and why
	Smoothing  Smoothing
	Seat       Seat
	Service    *Service    // where it works; nil when not told: then cold and at rest
	Torque     NewtonMetre // that the shaft carries under the hub; 0 when not told
}

// A Claim is who stands behind a figure that nobody has measured on this joint, and
// what it rests on.
type Claim struct{ By, Reason string }

// A Seat is the form of the joint; the zero value is straight.
type Seat string

// Straight is a plain cylinder. Taper and ShrinkDisc are refused.
const (
	Straight   Seat = "straight"
	Taper      Seat = "taper"
	ShrinkDisc Seat = "shrink disc"
)

// Contact is the joint at one interference.
type Contact struct {
	Interference    Micron // on diameter, as used
	Pressure        MPa
	HubHoop         MPa   // at the hub's bore, tension
	HubEquivalent   MPa   // von Mises at the hub's bore
	ShaftHoop       MPa   // at the shaft's bore, or all through a solid shaft; compression is negative
	ShaftEquivalent MPa   // von Mises there, with the shear of the torque where one is given
	HubUse          Ratio // HubEquivalent over the hub's yield; 0 where the yield is not known
	ShaftUse        Ratio // the same for the shaft
}

// Grip is what a joint carries or what moves it.
type Grip struct {
	Axial  Newton
	Torque NewtonMetre
}

// Pressed is the computed joint. Loosest is at the least interference less the
// smoothing loss, Tightest at the greatest with no loss, both cold and at rest. For
// the paper, what it holds is rounded down, what pulls it apart and every stress up.
type Pressed struct {
	Loosest, Tightest Contact
	Hold              Grip   // where it works, with the holding friction; zero where HoldRefused speaks
	HoldRefused       Reason // why no holding figure can be given
	Unbacked          Reason // why the frictions must not be used as they are; empty when somebody stands behind them
	AtWork            *Work  // nil when no service is told: then Hold is cold and at rest
	Pull              Grip   // at Tightest with the pulling friction; too high, never too low, once Tightest yields
	ShaftShear        MPa    // of the torque that the shaft carries; 0 when it is not told
	Working           []Step
}

// Solve computes the joint. Its error is a *FieldError.
func (in Press) Solve() (Pressed, error) {
	if err := in.check(); err != nil {
		return Pressed{}, err
	}
	var out Pressed
	loss, lossStep := in.loss()
	out.ShaftShear = Shear(in.Torque, in.Joint, in.ShaftBore)
	out.Tightest = in.contact(in.Greatest)
	out.Loosest = Contact{Interference: in.Least - loss}
	out.Working = append(out.Working, lossStep, in.pressureStep("greatest", out.Tightest))
	out.Pull = in.grip(out.Tightest.Pressure, in.Pulling)
	out.Working = append(out.Working, in.gripStep("force to pull it apart", out.Tightest.Pressure, in.Pulling, out.Pull))
	_, out.Unbacked = in.unbacked()
	if out.Loosest.Interference > 0 {
		out.Loosest = in.contact(out.Loosest.Interference)
	}
	holds := out.Loosest
	if in.Service != nil {
		out.AtWork = in.work(out.Loosest.Interference)
		holds = out.AtWork.Loosest
	}
	if out.HoldRefused = in.holdsNot(&out, holds, loss); out.HoldRefused.Told() {
		return out, nil
	}
	out.Hold = in.grip(holds.Pressure, in.Holding)
	out.Working = append(out.Working, in.pressureStep("least", holds), in.gripStep("force it holds", holds.Pressure, in.Holding, out.Hold))
	return out, nil
}

// holdsNot says why no holding figure can be given, and nothing when one can.
func (in Press) holdsNot(out *Pressed, holds Contact, loss Micron) Reason {
	switch {
	case out.Loosest.Interference <= 0:
		return because("the least interference %s µm less %s µm smoothing loss leaves nothing that grips", fmt.Sprintf("%.4g", in.Least), fmt.Sprintf("%.4g", loss))
	case out.Loosest.HubUse > 1 || out.Loosest.ShaftUse > 1:
		return because("at the least interference the part already yields, and the elastic pressure would promise too much")
	case in.Service == nil && in.unlike():
		return because("hub and shaft are of unlike metals and grip otherwise warm than cold: say from and to which temperature they work")
	case holds.Interference <= 0:
		return out.AtWork.gone()
	case holds.HubUse > 1 || holds.ShaftUse > 1:
		return because("where it works the part yields, and the elastic pressure would promise too much")
	case out.Unbacked.Told():
		return out.Unbacked
	}
	return Reason{}
}

// contact works out pressure and stresses at one interference, at rest.
func (in Press) contact(interference Micron) Contact { return in.spinning(interference, 0) }

// spinning is contact at a speed, in radians a second; the interference is that which
// is left at that speed.
func (in Press) spinning(interference Micron, omega float64) Contact {
	joint, outside, bore := float64(in.Joint), float64(in.HubOutside), float64(in.ShaftBore)
	hubRing := (outside*outside + joint*joint) / (outside*outside - joint*joint)
	shaftRing := (joint*joint + bore*bore) / (joint*joint - bore*bore)
	compliance := (hubRing+float64(in.Hub.Poisson))/(float64(in.Hub.E)*1000) +
		(shaftRing-float64(in.Shaft.Poisson))/(float64(in.Shaft.E)*1000)
	p := float64(interference) / 1000 / (joint * compliance)

	hubHoop := p*hubRing + in.Hub.spun(omega, joint/2, outside/2)
	hubEquivalent := math.Sqrt(hubHoop*hubHoop + hubHoop*p + p*p)
	shaftHoop := -p + in.Shaft.spunSolid(omega, joint/2)
	if bore > 0 {
		shaftHoop = -2*p*joint*joint/(joint*joint-bore*bore) + in.Shaft.spun(omega, bore/2, joint/2)
	}
	shear := float64(Shear(in.Torque, in.Joint, in.ShaftBore))
	shaftEquivalent := math.Sqrt(shaftHoop*shaftHoop + 3*shear*shear)
	return Contact{
		Interference:    interference,
		Pressure:        MPa(p),
		HubHoop:         MPa(hubHoop),
		HubEquivalent:   MPa(hubEquivalent),
		ShaftHoop:       MPa(shaftHoop),
		ShaftEquivalent: MPa(shaftEquivalent),
		HubUse:          use(hubEquivalent, in.Hub.Yield),
		ShaftUse:        use(shaftEquivalent, in.Shaft.Yield),
	}
}

// use gives stress over yield, 0 for a yield that is not known.
func use(stress float64, yield MPa) Ratio {
	if yield <= 0 {
		return 0
	}
	return Ratio(stress / float64(yield))
}

// grip gives force and torque at one pressure and friction.
func (in Press) grip(p MPa, mu Ratio) Grip {
	force := math.Pi * float64(in.Joint) * float64(in.Length) * float64(p) * float64(mu)
	return Grip{Axial: Newton(force), Torque: NewtonMetre(force * float64(in.Joint) / 2 / 1000)}
}

// loss gives the smoothing loss on diameter and its line of working.
func (in Press) loss() (Micron, Step) {
	factor := map[SmoothingRule]Ratio{LossEight: 0.8, LossFour: 0.4}[in.Smoothing.Rule]
	lost := Micron(0)
	if factor > 0 {
		lost = Micron(factor) * (in.Smoothing.HubRz + in.Smoothing.ShaftRz)
	}
	source := map[SmoothingRule]string{
		NoLoss: "stated: no loss", LossEight: "DIN 7190:2001", LossFour: "DIN 7190-1:2017",
	}[in.Smoothing.Rule]
	return lost, Step{
		Formula: "s = f (Rz_h + Rz_s)",
		Source:  source,
		In: []Value{
			{"f", "smoothing factor", Number(factor), ""},
			{"Rz_h", "roughness height of the bore", Number(in.Smoothing.HubRz), "µm"},
			{"Rz_s", "roughness height of the seat", Number(in.Smoothing.ShaftRz), "µm"},
		},
		Out: Value{"s", "smoothing loss", Number(lost), "µm"},
	}
}

// pressureStep is the line of working for the pressure at one interference.
func (in Press) pressureStep(which string, c Contact) Step {
	return Step{
		Formula: "p = d / (D_F (K_h/E_h + K_s/E_s)), K_h = (D_o²+D_F²)/(D_o²-D_F²)+nu_h, K_s = (D_F²+D_i²)/(D_F²-D_i²)-nu_s",
		Source:  "Lamé, plane stress",
		In: []Value{
			{"d", which + " interference on diameter", Number(c.Interference), "µm"},
			{"D_F", "joint diameter", Number(in.Joint), "mm"},
			{"D_o", "hub outside diameter", Number(in.HubOutside), "mm"},
			{"D_i", "bore in the shaft", Number(in.ShaftBore), "mm"},
			{"E_h", "modulus of elasticity of the hub", Number(in.Hub.E), "GPa"},
			{"nu_h", "Poisson's ratio of the hub", Number(in.Hub.Poisson), ""},
			{"E_s", "modulus of elasticity of the shaft", Number(in.Shaft.E), "GPa"},
			{"nu_s", "Poisson's ratio of the shaft", Number(in.Shaft.Poisson), ""},
		},
		Out: Value{"p", "pressure in the joint", Number(c.Pressure), "MPa"},
	}
}

// gripStep is the line of working for one force.
func (in Press) gripStep(name string, p MPa, mu Ratio, g Grip) Step {
	return Step{
		Formula: "F = pi D_F L p mu, T = F D_F/2",
		Source:  "Bloch, Improving Machinery Reliability, eq 3-13",
		In: []Value{
			{"D_F", "joint diameter", Number(in.Joint), "mm"},
			{"L", "length in contact", Number(in.Length), "mm"},
			{"p", "pressure in the joint", Number(p), "MPa"},
			{"mu", "friction", Number(mu), ""},
		},
		Out: Value{"F", name, Number(g.Axial), "N"},
	}
}
