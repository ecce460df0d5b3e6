package heat

import (
	"math"

	"matchmark/packs/units"
)

// The rise that frees a shrink fit.
//
//	D   joint diameter at 20 °C, mm
//	d   interference on the diameter at 20 °C, mm
//	s   clearance wanted between hot hub and shaft, mm
//	e_h, e_s  free elongation of hub and shaft since 20 °C, no unit
//	T_h, T_s  temperature of hub and shaft, °C
//
//	D (e_h(T_h) - e_s(T_s)) = d + s;  with flat, equal coefficients of
//	expansion a:  T_h - T_s = (d + s)/(a D)
//
// Source: Bloch, Improving Machinery Reliability, eq. 3-12, p. 218 (the shaft's
// own temperature is added to the rise). Validity: each part evenly warm; temperatures within the material
// data. Refused: no interference, no sizes, unknown material, a hub that would
// have to be hotter than its data reach.

// Basis tells what an interference comes from.
type Basis string

// Measured is an interference from bore and seat measured and corrected to
// 20 °C; Greatest is the largest that the fit allows.
const (
	Measured Basis = "measured"
	Greatest Basis = "greatest of the fit"
)

// A Fit is the joint: Diameter and Interference at 20 °C, both on the diameter,
// and the Clearance wanted on top, so that the hub slides instead of being torn
// off. Clearance zero frees it by a hair only, and is allowed.
type Fit struct {
	Diameter     Mm
	Interference Mm
	Basis        Basis
	Clearance    Mm
	Seat         Seat
}

// A Seat is the form of the joint.
type Seat string

// Straight is a plain cylinder, and the zero value means the same. Taper and
// ShrinkDisc are refused, because heat is not how they are worked.
const (
	Straight   Seat = "straight"
	Taper      Seat = "taper"
	ShrinkDisc Seat = "shrink disc"
)

// Check refuses the seats that this computation does not hold for.
func (s Seat) Check() error {
	switch s {
	case "", Straight:
		return nil
	case Taper:
		return refuseAs("taper", "Seat", "draw it and push it up by the maker's procedure, with oil pressure where there is a port; on drawing, a nut stays on the end to catch the hub",
			"a hub on a taper lets go all at once and jumps, and its interference is what it was pushed up by: this computation is for plain cylinders")
	case ShrinkDisc:
		return refuseAs("shrink-disc", "Seat", "slacken the screws of the disc by the maker's procedure, a little each, round and round",
			"a shrink disc grips from outside by its screws: heat would only grow disc and hub, and may draw its temper")
	}
	return refuse("Seat", `write "straight", "taper" or "shrink disc"`, "%q is no form of seat known here", string(s))
}

// opening is how much the free bore must be larger than the free seat.
func (f Fit) opening() Mm { return f.Interference + f.Clearance }

func (f Fit) check() error {
	err := firstOf(
		positive("Diameter", "the joint diameter", float64(f.Diameter), "mm"),
		notNegative("Clearance", "the clearance", float64(f.Clearance), "mm"),
		f.Seat.Check(),
		f.Diameter.check("Diameter", "the joint diameter"),
	)
	if err != nil {
		return err
	}
	if f.Interference == 0 || math.IsNaN(float64(f.Interference)) {
		return refuse("Interference", "give the measured sizes of bore and seat, or the fit, as 120 H7/r6",
			"the interference is missing")
	}
	if f.Interference < 0 {
		return refuse("Interference", "look for rust, a key or a set screw instead of heating",
			"%v of interference is a clearance: heat does not free this fit", fine(f.Interference))
	}
	// Real shrink fits lie near a thousandth; ten times that is a slip of the
	// decimal point or of the unit.
	if !(f.Interference <= f.Diameter/100) {
		return refuse("Interference", "write millimetres on the diameter; 76 µm is 0.076 mm",
			"%v on %v diameter is more than any hub can stand", Mm(f.Interference), f.Diameter)
	}
	if f.Clearance > f.Diameter/100 {
		return refuse("Clearance", "look for a slip of the decimal point or of the unit",
			"%v of clearance on %v diameter cannot be reached by heat", f.Clearance, f.Diameter)
	}
	if f.Basis != Measured && f.Basis != Greatest {
		return refuse("Basis", `say "measured" or "greatest of the fit"`, "what the interference comes from is missing")
	}
	return nil
}

// A Free is how hot the hub must be over the shaft.
type Free struct {
	Opening Mm         // interference and clearance
	Hub     Celsius    // hub temperature at the shaft temperature given
	Rise    KelvinRise // hub over shaft
	Working Working
}

// Rise computes the hub temperature that opens the fit while the whole shaft
// stays at shaftAt. In a hot pull the shaft warms as well: then it is the
// difference that counts, and Pull.Plan shows whether it is ever reached.
func Rise(f Fit, hub, shaft Material, shaftAt Celsius) (Free, error) {
	if err := f.check(); err != nil {
		return Free{}, within("Fit", err)
	}
	err := firstOf(within("Hub", hub.check()), within("Shaft", shaft.check()),
		temperature("ShaftAt", "the shaft", shaftAt))
	if err != nil {
		return Free{}, err
	}
	if err := shaft.covers("ShaftAt", shaftAt); err != nil {
		return Free{}, err
	}
	return rise(f, &hub, shaft.strain(float64(shaftAt)), shaftAt)
}

// rise is Rise for a shaft whose elongation is known, as that of a cooled one.
func rise(f Fit, hub *Material, shaftStrain float64, shaftAt Celsius) (Free, error) {
	need := float64(f.opening()/f.Diameter) + shaftStrain
	t, err := hub.heatedTo(need)
	if err != nil {
		return Free{}, err
	}
	return Free{
		Opening: f.opening(), Hub: t, Rise: t.over(shaftAt),
		Working: Working{
			Formula: "rise = (interference + clearance) / (expansion x diameter)",
			Source:  "Bloch, Improving Machinery Reliability, eq. 3-12",
			Terms: []Term{
				{"interference", Number(f.Interference), "mm", units.Nearest},
				{"clearance", Number(f.Clearance), "mm", units.Nearest},
				{"diameter", Number(f.Diameter), "mm", units.Nearest},
				{"shaft", Number(shaftAt), "°C", units.Nearest},
				{"hub expansion, mean", Number(hub.alpha(sizedAt, t) * 1e6), "µm/m K", units.Nearest},
				{"rise", Number(t.over(shaftAt)), "K", units.Up},
			},
		},
	}, nil
}

// heatedTo finds the temperature at which the free elongation is e. The curves
// rise everywhere in their range, so halving is enough; 60 halvings reach the
// last digit.
func (m *Material) heatedTo(e float64) (Celsius, error) {
	low, high := float64(m.From), float64(m.To)
	if e > m.strain(high) {
		return 0, refuse("Fit.Interference",
			"cool the shaft, or use a hydraulic or mechanical puller",
			"the hub would have to be hotter than %v, where the data of %v end", m.To, m.Name)
	}
	if e < m.strain(low) {
		return 0, refuse("ShaftAt", "warm the hub to the temperature of the shop first",
			"the hub would be colder than %v, where the data of %v begin", m.From, m.Name)
	}
	for range 60 {
		mid := (low + high) / 2
		if m.strain(mid) < e {
			low = mid
		} else {
			high = mid
		}
	}
	return Celsius((low + high) / 2), nil
}

// CheckRise refuses a rise that does not fit the two temperatures written
// beside it, by more than 2 K. A rise that equals the hub temperature was
// counted from zero instead of from the shaft.
func CheckRise(written KelvinRise, hub, shaft Celsius) error {
	right := hub.over(shaft)
	if math.Abs(float64(written-right)) <= 2 {
		return nil
	}
	if math.Abs(float64(written)-float64(hub)) <= 2 {
		return refuse("Rise", "write the rise counted from the shaft, or the temperature of the hub, not one for the other",
			"a rise of %v is the temperature of the hub; over the shaft at %v it is %v", written, shaft, right)
	}
	return refuse("Rise", "a rise is the temperature of the hub less that of the shaft",
		"a rise of %v does not fit a hub of %v on a shaft of %v, which is %v", written, hub, shaft, right)
}

// ClearanceAt is the clearance that a rise of the hub over the shaft gives, for a
// maker who writes the rise and not the clearance; the fit's own Clearance is not
// used. It refuses a rise that does not even open the interference.
func ClearanceAt(f Fit, hub, shaft Material, over KelvinRise, shaftAt Celsius) (Mm, error) {
	f.Clearance = 0
	if err := f.check(); err != nil {
		return 0, within("Fit", err)
	}
	hot := shaftAt + Celsius(over)
	err := firstOf(within("Hub", hub.check()), within("Shaft", shaft.check()),
		positive("Rise", "the rise of the hub over the shaft", float64(over), "K"),
		hub.covers("Rise", hot), shaft.covers("ShaftAt", shaftAt))
	if err != nil {
		return 0, err
	}
	clearance := f.Diameter*Mm(hub.strain(float64(hot))-shaft.strain(float64(shaftAt))) - f.Interference
	if clearance <= 0 {
		return 0, refuse("Rise", "write the clearance instead, and leave the rise to be worked out",
			"a rise of %v does not open %v of interference", over, fine(f.Interference))
	}
	return clearance, nil
}
