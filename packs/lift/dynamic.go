package lift

// What is taken: the factor on all loads for the hoist's own movement, and the
// site figures that a plan may leave to a published value.
// Sources: GL Noble Denton 0027/ND rev 11, table 5-1, single crane in air, onshore
// (written for marine work, so a choice and not a rule for plant hoists); the same,
// 5.3.2, largest tilt 2°. 10 mm for the length of a leg is common practice, no
// source.

const (
	dynamicSource          = "GL Noble Denton 0027/ND rev 11, table 5-1, onshore single crane"
	publishedTilt   Degree = 2
	usualLengthSlip Mm     = 10
)

// onshoreDynamic gives the published factor for a gross weight.
func onshoreDynamic(gross float64) float64 {
	switch {
	case gross <= 100e3:
		return 1.10
	case gross <= 1000e3:
		return 1.05
	default:
		return 1.03
	}
}

// dynamic gives the plan's factor, or the published one, with its source.
func (p *Plan) dynamic(gross float64) (float64, string) {
	if p.Dynamic != 0 {
		return float64(p.Dynamic), "the plan"
	}
	return onshoreDynamic(gross), dynamicSource
}

func (p *Plan) maxTilt() Degree {
	if p.MaxTilt != 0 {
		return p.MaxTilt
	}
	return publishedTilt
}

func (p *Plan) lengthError() Mm {
	if p.LengthError != 0 {
		return p.LengthError
	}
	return usualLengthSlip
}
