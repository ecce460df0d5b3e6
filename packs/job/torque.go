package job

import (
	"matchmark/packs/joint"
	"matchmark/packs/units"
)

// A Torque is one that a joint is tightened to, from a least to a most, in N·m or
// lb-ft, with its text as printed.
type Torque struct {
	Low, High units.Quantity
	Text      string
}

// Torques lists the torques that a joint is tightened to, one after the other: for a
// while, at the end, and in the stages on the way. What a tensioner pulls is none.
func (j *Joint) Torques() []Torque {
	settings := []*joint.Setting{j.Spec.ForNow, j.Spec.Torque}
	for _, s := range j.Spec.Stages {
		if s.Kind == joint.Tighten {
			settings = append(settings, s.Setting)
		}
	}
	var out []Torque
	for _, s := range settings {
		if s != nil && s.High.Unit.Dimension() == units.Torque {
			out = append(out, Torque{s.Low, s.High, s.Text()})
		}
	}
	return out
}
