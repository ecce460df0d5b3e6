package fit

import "fmt"

// maxInterference is the greatest interference computed with, as a share of the
// diameter. Practice is 0.5 to 1.5 ‰ for hubs (Bloch) and little over 2 ‰ for
// fits driven on with oil; beyond 5 ‰ a decimal has slipped.
const maxInterference = 0.005

// check refuses a joint that cannot be computed, the first fault in the order a
// reader would look.
func (in Press) check() error {
	for _, rule := range []func() error{in.checkSeat, in.checkSizes, in.checkMaterials, in.checkInterference, in.checkFriction, in.checkSmoothing, in.checkService, in.checkTorque} {
		if err := rule(); err != nil {
			return err
		}
	}
	return nil
}

// wrong makes a *FieldError.
func wrong(field, format string, args ...any) error {
	return &FieldError{Field: field, Problem: fmt.Sprintf(format, args...)}
}

func (in Press) checkSeat() error {
	switch in.Seat {
	case "", Straight:
		return nil
	case Taper:
		return wrong("Seat", "a tapered seat: its interference is what it is pushed up by, and its hub slides off once it lets go; work it by the maker's procedure")
	case ShrinkDisc:
		return wrong("Seat", "a shrink disc: it grips by its screws and not by an interference; take what it holds from its maker's sheet")
	}
	return wrong("Seat", "seat %q: straight, taper or shrink disc is wanted", in.Seat)
}

func (in Press) checkTorque() error {
	if !(in.Torque >= 0 && in.Torque <= 1e9) {
		return wrong("Torque", "torque in the shaft %g N·m: 0 (not known) up to 1000000000 is wanted", in.Torque)
	}
	return nil
}

func (in Press) checkSizes() error {
	switch {
	case !(in.Joint > 0 && in.Joint <= 3150):
		return wrong("Joint", "joint diameter %g mm: over 0 up to 3150 mm is wanted", in.Joint)
	case !(in.HubOutside > in.Joint && in.HubOutside <= 10*in.Joint):
		return wrong("HubOutside", "hub outside diameter %g mm: it must be greater than the joint diameter %g mm, and not over ten times it", in.HubOutside, in.Joint)
	case !(in.ShaftBore >= 0 && in.ShaftBore < in.Joint):
		return wrong("ShaftBore", "bore in the shaft %g mm: it must be smaller than the joint diameter %g mm; write 0 for a solid shaft", in.ShaftBore, in.Joint)
	case !(in.Length > 0 && in.Length <= 10*in.Joint):
		return wrong("Length", "length in contact %g mm: over 0 and not over ten times the joint diameter %g mm is wanted", in.Length, in.Joint)
	}
	return nil
}

func (in Press) checkMaterials() error {
	for _, m := range []struct {
		field, name string
		Elastic
	}{{"Hub", "hub", in.Hub}, {"Shaft", "shaft", in.Shaft}} {
		switch {
		case !(m.E >= 1 && m.E <= 700):
			return wrong(m.field+".E", "modulus of elasticity of the %s %g GPa: 1 to 700 GPa is wanted", m.name, m.E)
		case !(m.Poisson > 0 && m.Poisson < 0.5):
			return wrong(m.field+".Poisson", "Poisson's ratio of the %s %g: over 0 and under 0.5 is wanted", m.name, m.Poisson)
		case m.Density != 0 && !(m.Density >= 1000 && m.Density <= 25000):
			return wrong(m.field+".Density", "density of the %s %g kg/m³: 1000 to 25000 is wanted", m.name, m.Density)
		case !(m.Yield >= 0 && m.Yield <= 5000):
			return wrong(m.field+".Yield", "yield stress of the %s %g MPa: 0 (not known) to 5000 MPa is wanted", m.name, m.Yield)
		}
	}
	return nil
}

func (in Press) checkInterference() error {
	limit := Micron(maxInterference*1000) * Micron(in.Joint)
	switch {
	case !(in.Greatest > 0):
		return wrong("Greatest", "greatest interference %g µm: the parts do not grip, there is nothing to compute", in.Greatest)
	case in.Greatest > limit:
		return wrong("Greatest", "greatest interference %g µm on %g mm is over 5 µm in each mm: no elastic fit; look for a slipped decimal", in.Greatest, in.Joint)
	case !(in.Least <= in.Greatest):
		return wrong("Least", "least interference %g µm is over the greatest %g µm: change them round", in.Least, in.Greatest)
	case in.Least < -limit:
		return wrong("Least", "least interference %g µm on %g mm is a clearance over 5 µm in each mm: look for a slipped decimal", in.Least, in.Joint)
	}
	return nil
}

func (in Press) checkFriction() error {
	switch {
	case !(in.Holding > 0 && in.Holding < 1):
		return wrong("Holding", "friction for holding %g: over 0 and under 1 is wanted, and on the low side for these surfaces", in.Holding)
	case !(in.Pulling > 0 && in.Pulling < 1):
		return wrong("Pulling", "friction for pulling %g: over 0 and under 1 is wanted, and on the high side for these surfaces", in.Pulling)
	case in.Pulling <= in.Holding:
		return wrong("Pulling", "friction for pulling %g is not above that for holding %g: a puller is chosen with a high value, holding is proved with a low one", in.Pulling, in.Holding)
	}
	return nil
}

func (in Press) checkSmoothing() error {
	s := in.Smoothing
	switch {
	case s.Rule < NoLoss || s.Rule > LossFour:
		return wrong("Smoothing.Rule", "smoothing loss not stated: say none, 0.8 of the roughness heights (DIN 7190:2001) or 0.4 (DIN 7190-1:2017)")
	case s.Rule == NoLoss:
		return nil
	case !(s.HubRz > 0 && s.HubRz <= 100):
		return wrong("Smoothing.HubRz", "roughness height of the bore %g µm: over 0 up to 100 µm is wanted", s.HubRz)
	case !(s.ShaftRz > 0 && s.ShaftRz <= 100):
		return wrong("Smoothing.ShaftRz", "roughness height of the seat %g µm: over 0 up to 100 µm is wanted", s.ShaftRz)
	}
	return nil
}
