package joint

import (
	"fmt"

	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// A Spec is one joint: Count fasteners of one thread, all tightened alike. Torque or
// Preload says how tight, one of the two.
type Spec struct {
	Thread *thread.Thread
	Class  string // "8.8", "grade 5"; empty where Proof is stated
	Proof  *Proof // in place of the class
	Count  int    // fasteners of the joint; 0 is not told

	// Torque is what the manual says: a torque (90 +/- 10 lb-ft), or in its place the
	// pressure (1150 bar) or the force (640 kN) of a tensioner.
	Torque *Setting
	// Preload is wanted, and the torque for it is worked out.
	Preload *Target

	Friction  *Friction // for every torque
	Scatter   *Scatter  // nil is not known, and is told
	Tensioner *Tensioner

	Stages []Stage // empty: straight to the torque, once round

	BreaksLoose *units.Quantity // the least torque that it must break loose with
	ForNow      *Setting        // a torque for a time: held for a reading, or parts on trial
}

// Proof is the proof stress of a bolt that no class tells, with its source.
type Proof struct {
	Stress units.Quantity // MPa or psi
	Source string
}

// A Setting is how tight one wrench or pump is set: from Low to High, which may be the
// same. Aim is the figure between them if one was written. All have one unit: of torque,
// force or pressure, or per cent of the last torque in a Stage.
type Setting struct {
	Low, High units.Quantity
	Aim       *units.Quantity
}

// Exactly is a setting of one figure.
func Exactly(q units.Quantity) Setting { return Setting{Low: q, High: q, Aim: &q} }

// Between is a setting from a least to a most.
func Between(low, high units.Quantity) Setting { return Setting{Low: low, High: high} }

// PlusMinus is a setting with a tolerance in the same unit: 90 +/- 10 lb-ft.
func PlusMinus(q units.Quantity, tolerance units.Number) Setting {
	return Setting{
		Low:  units.Quantity{Number: q.Number.Sub(tolerance), Unit: q.Unit},
		High: units.Quantity{Number: q.Number.Add(tolerance), Unit: q.Unit},
		Aim:  &q,
	}
}

// Text writes the setting as it is typed.
func (s Setting) Text() string { return s.in(nil, asTyped) }

// in writes the setting in a language, its numbers written by write.
func (s Setting) in(t units.Tongue, write func(number string) string) string {
	between := func() string {
		return fmt.Sprintf(units.Said(t, "%s to %s"), write(s.Low.Number.Text()), write(s.High.Text()))
	}
	switch {
	case s.Aim == nil:
		return between()
	case s.Low.Number.Cmp(s.High.Number) == 0:
		return write(s.Aim.Text())
	}
	up, down := s.High.Number.Sub(s.Aim.Number), s.Aim.Number.Sub(s.Low.Number)
	if up.Cmp(down) == 0 {
		return write(s.Aim.Number.Text()) + " +/- " + write(units.Quantity{Number: up, Unit: s.Aim.Unit}.Text())
	}
	return between()
}

// aim gives the figure aimed at: the middle where none was written.
func (s Setting) aim() units.Quantity {
	if s.Aim != nil {
		return *s.Aim
	}
	return units.Quantity{Number: s.Low.Number.Add(s.High.Number).Quo(units.Whole(2)), Unit: s.Low.Unit}
}

// A Target is a wanted preload: so many per cent of the proof load, a force, or a stress
// in the stress area; one of the three.
type Target struct {
	Percent *units.Number
	Force   *units.Quantity
	Stress  *units.Quantity
	Source  string
}

// A Tensioner pulls the bolt with a fluid and the nut is run down.
type Tensioner struct {
	Area units.Quantity // mm2, cm2 or in2: what the pressure acts on
	// Retained is what stays of the pull when the nut takes it over, per cent; nil is
	// not known, and is told.
	Retained *units.Number
	Source   string
}

// A StageKind is what one stage of a tightening does.
type StageKind uint8

// The kinds of stage.
const (
	Tighten      StageKind = iota // to Setting, going round the pattern
	ByHand                        // run down by hand
	Turn                          // on by Angle
	BackOff                       // back by Angle
	SlackenAll                    // all loose again, the order backward
	LastRound                     // in turn, at the last setting, until no nut moves
	AgainAfter                    // the last setting again after Hours
	AgainRunning                  // the last setting again after the machine has run
	FurtherTry                    // the last setting again, in a further try of a step, by Repeat; no stage that is written
)

// A Stage is one stage of a tightening.
type Stage struct {
	Kind    StageKind
	Setting *Setting        // of Tighten
	Angle   *units.Quantity // of Turn and BackOff, degrees or turns
	Hours   *units.Quantity // of AgainAfter
}
