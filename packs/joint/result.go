package joint

import (
	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// A Result is what Compute found.
type Result struct {
	Spec      Spec
	Strength  Strength
	Area      thread.Mm2 // stress area
	ProofLoad Newton     // of one fastener
	Ultimate  Newton     // of one fastener; 0 where the class is not told

	NutFactor Ratio // 0 for a tensioner
	// Torque is what the wrench is set to, as written or as worked out for the preload;
	// nil for a tensioner.
	Torque *Setting
	// Pull is the force of a tensioner while it pulls.
	Pull *Band
	// Preload of one fastener: from the least setting with all its scatter to the most.
	Preload Band
	// Clamp is the least that all fasteners press together with; 0 without a count.
	Clamp Newton

	// Stress is that in the stress area at the highest setting, without scatter, and
	// Share of the proof stress; the High ones count the scatter in.
	Stress, StressHigh MPa
	Share, ShareHigh   Ratio

	Rounds   []Round
	Cautions []Caution
	Assumes  []Assumption
	Workings []Working

	usFirst bool // the planner wrote pounds
}

// A CautionCode says what a person must look at; the sheet words it.
type CautionCode uint8

// The cautions.
const (
	NearProof        CautionCode = iota // more than 90 % of the proof stress at the highest setting
	ScatterOverProof                    // over proof if the scatter goes all one way
	NoScatter                           // the scatter is not known, the band is only that of the setting
	NoCount                             // no count, so no clamping force of the whole
	NoRetained                          // what a tensioner's nut keeps of the pull is not told
	LeftHanded                          // the thread is left-hand
	Unlisted                            // the standard of the thread does not pair the pitch with the diameter
	AngleGoverns                        // the last tightening is by angle, and the preload is not that of the torque
	BreaksLooseHigh                     // it must break loose with more than it is tightened with
	ForNowHigh                          // what holds for a time is tighter than the last torque
	TorqueAfterAngle                    // a torque comes again after an angle, which it cannot show
)

// A Caution is a result that a person must look at before the work starts.
type Caution struct {
	Code    CautionCode
	Field   string
	Message string
	format  string
	args    []any
}

// In gives the message in the language of the paper.
func (c Caution) In(t units.Tongue) string { return worded(t, units.ForPaper, c.format, c.args) }

// An Assumption is something the computation takes for granted and the sheet must say.
type Assumption uint8

// The assumptions.
const (
	TensionOnly     Assumption = iota // no twist or bending of the shank
	AllAlike                          // every fastener has the same friction
	NoNeighbour                       // what a bolt loses when the next one is tightened is not counted
	RoomTemperature                   // strength and friction are those of a room
)

// A Round is one time that the fasteners are gone round: one column of ticks.
type Round struct {
	Stage   int // which of Spec.Stages, from 0; -1 where none were written
	Kind    StageKind
	Way     Way
	Setting *Setting  // of Tighten, and of what comes again: the figure to set
	Share   Ratio     // of the last torque
	Stress  Ratio     // at the highest setting, as a share of proof; 0 after an angle
	Angle   Degree    // of Turn and BackOff
	Travel  thread.Mm // what that angle moves the nut on its thread
	Repeat  int       // 0 the first time, 1 after all were slackened, and so on
}

// A Way is how the fasteners are gone round.
type Way uint8

// The ways.
const (
	InPattern Way = iota // in the order of the pattern
	Backward             // in that order backward
	Around               // one after the other round the joint
)

// A Figure is one number of a working: its symbol, its value and the unit.
type Figure struct {
	Symbol string
	Value  Ratio
	Unit   string
	// Told is what it is called among the figures that are told, rounded; 0 for one that
	// is not told.
	Told ToldCode
}

// as is a figure that is told.
func (f Figure) as(code ToldCode) Figure { f.Told = code; return f }

// A Working is one formula with the numbers that went through it.
type Working struct {
	What    string
	Formula string
	Source  string
	Figures []Figure // inputs, then the result
}

func fig(symbol string, value float64, unit string) Figure {
	return Figure{Symbol: symbol, Value: Ratio(value), Unit: unit}
}

// A ToldCode names a figure for the sheet.
type ToldCode uint8

// The figures that are told.
const (
	NotTold ToldCode = iota
	ToldArea
	ToldProofStress
	ToldProofLoad
	ToldTorque
	ToldPull
	ToldPreload
	ToldPreloadLow
	ToldPreloadHigh
	ToldClamp
	ToldStress
	ToldShare
	ToldStressHigh
	ToldShareHigh
)

// Told is one figure ready for paper, to three figures in its safe direction, in the
// unit of the planner and, where there is one, in the other.
type Told struct {
	Code  ToldCode
	Value units.Quantity
	Other *units.Quantity
	How   units.Rounding // the side to which it is rounded
}

// Told lists the figures of the result for paper. A torque as written is not in it: it
// prints as it was written.
func (r Result) Told() []Told {
	var out []Told
	tell := func(code ToldCode, value float64, base, metric, us units.Unit, how units.Rounding) {
		if value == 0 {
			return
		}
		t := Told{Code: code, Value: in(value, base, metric, how), How: how}
		if us != units.None {
			other := in(value, base, us, how)
			if r.usFirst {
				t.Value, other = other, t.Value
			}
			t.Other = &other
		}
		out = append(out, t)
	}
	force := func(code ToldCode, f Newton, how units.Rounding) {
		tell(code, float64(f), units.Newton, units.Kilonewton, units.PoundForce, how)
	}
	stress := func(code ToldCode, s MPa, how units.Rounding) {
		tell(code, float64(s), units.Megapascal, units.Megapascal, units.PSI, how)
	}
	share := func(code ToldCode, s Ratio) {
		tell(code, 100*float64(s), units.Percent, units.Percent, units.None, units.Up)
	}
	tell(ToldArea, float64(r.Area), units.SquareMillimetre, units.SquareMillimetre, units.SquareInch, units.Nearest)
	stress(ToldProofStress, r.Strength.Proof, units.Down)
	force(ToldProofLoad, r.ProofLoad, units.Down)
	if r.Torque != nil && r.Spec.Torque == nil {
		tell(ToldTorque, float64(newtonMetres(r.Torque.aim())), units.NewtonMetre, units.NewtonMetre, units.PoundFoot, units.Down)
	}
	if r.Pull != nil {
		force(ToldPull, r.Pull.Aim, units.Down)
	}
	force(ToldPreload, r.Preload.Aim, units.Down)
	force(ToldPreloadLow, r.Preload.Low, units.Down)
	force(ToldPreloadHigh, r.Preload.High, units.Up)
	force(ToldClamp, r.Clamp, units.Down)
	stress(ToldStress, r.Stress, units.Up)
	share(ToldShare, r.Share)
	if r.ShareHigh > r.Share {
		stress(ToldStressHigh, r.StressHigh, units.Up)
		share(ToldShareHigh, r.ShareHigh)
	}
	return out
}

// OtherTorque gives a torque that is aimed at in the other unit, to the nearest of three figures:
// lb-ft for N·m and N·m for lb-ft or lb-in. ok is false for what is no torque.
func OtherTorque(q units.Quantity) (other units.Quantity, ok bool) {
	return otherTorque(q, units.Nearest)
}

// OtherTorqueMost is OtherTorque for a torque that must not be passed, and so down: the upper end
// of a range.
func OtherTorqueMost(q units.Quantity) (other units.Quantity, ok bool) {
	return otherTorque(q, units.Down)
}

// OtherTorqueLeast is OtherTorque for a torque that must be reached, and so up: the lower
// end of a range, or what must hold before a fastener breaks loose.
func OtherTorqueLeast(q units.Quantity) (other units.Quantity, ok bool) {
	return otherTorque(q, units.Up)
}

func otherTorque(q units.Quantity, how units.Rounding) (other units.Quantity, ok bool) {
	if q.Unit.Dimension() != units.Torque {
		return other, false
	}
	to := units.PoundFoot
	if q.Unit != units.NewtonMetre {
		to = units.NewtonMetre
	}
	return in(float64(newtonMetres(q)), units.NewtonMetre, to, how), true
}

func (a *account) caution(code CautionCode, field, message string, args ...any) {
	a.r.Cautions = append(a.r.Cautions, Caution{code, field, worded(nil, asTyped, message, args), message, args})
}

func (a *account) work(what, formula, source string, figures ...Figure) {
	a.r.Workings = append(a.r.Workings, Working{what, formula, source, figures})
}
