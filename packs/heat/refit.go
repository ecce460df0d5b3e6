package heat

import (
	"errors"
	"math"
)

// Putting a hub back: how hot, and for how long it stays wide enough.
//
// The temperature is that of rise.go for a shaft at the temperature of the
// shop. After that the hub cools twice: in the air while it is carried, and on
// the shaft, through the air in the gap when it hangs centred, or at once where
// it rests on the shaft. The two ways on the shaft bound the time to grip; the shorter is
// told a fifth shorter, of a hub that conducts poorly two fifths, for the ends of the hub cool
// before its middle (endsGrip).
// Source: the finite volumes of net.go. Refused: a hub that would pass its
// limit, with the cooled shaft as the way out where that is enough.

// A Refit is a hub, or the inner ring of a bearing, to be slid on hot. The
// start temperatures of hub and shaft are those of the parts as they lie there.
type Refit struct {
	Fit   Fit
	Hub   Hub
	Shaft Shaft
	Air   Surroundings
	Limit Limit // of the heated part
	// To is the temperature that it is heated to, where the maker gives one; 0 for
	// the one that is needed.
	To Celsius
}

// A Refitted is a refit computed.
type Refitted struct {
	Need Free
	// SetTo is the temperature to heat to: the one given, or else the one needed, up
	// to the next full 5 °C; Room the clearance there.
	SetTo Celsius
	Room  Mm
	Into  Joule // heat the hub takes, losses not counted
	// Carry is how long the hub may hang in the air until half of the clearance
	// is gone.
	Carry Second
	// Grips is how long after sliding on it grips when it hangs centred in the
	// air of the gap; GripsSoonest, a fifth or two shorter, when it touches all round from the start.
	Grips, GripsSoonest Second
	Assumptions         []Assumption
	Warnings            []Warning
}

// Plan computes the refit, or refuses it with the way out.
func (r Refit) Plan() (Refitted, error) {
	if err := within("Fit", r.Fit.check()); err != nil {
		return Refitted{}, err
	}
	err := firstOf(
		within("Hub", r.Hub.check(r.Fit.Diameter)),
		within("Shaft", r.Shaft.check(r.Fit.Diameter)),
		within("Air", r.Air.check()),
		r.Limit.check("Limit", "the heated part"),
		positive("Fit.Clearance", "the clearance for sliding the hub on", float64(r.Fit.Clearance), "mm"),
		positive("Air.Film", "the loss to the air", float64(r.Air.Film), "W/m²K"),
	)
	if err != nil {
		return Refitted{}, err
	}
	need, err := rise(r.Fit, &r.Hub.Material, r.Shaft.Material.strain(float64(r.Shaft.Start)), r.Shaft.Start)
	if err != nil {
		return Refitted{}, err
	}
	set := Celsius(5 * math.Ceil(float64(need.Hub)/5-1e-9))
	if r.To > 0 {
		set = r.To
		if r.To < need.Hub {
			return Refitted{}, refuse("To", "raise it, or lower the clearance",
				"%v does not open the joint far enough; that takes %v", down(r.To), up(need.Hub))
		}
	}
	if set <= r.Hub.Start {
		return Refitted{}, refuse("Hub.Start", "measure both at one temperature",
			"the hub at %v already slides on", r.Hub.Start)
	}
	if set > r.Limit.At {
		return Refitted{}, r.tooHot(set)
	}
	if err := r.Hub.Material.covers("Limit.At", set); err != nil {
		return Refitted{}, err
	}
	return r.inTime(need, set)
}

// tooHot refuses a hub above its limit and says what a cold shaft would do.
func (r *Refit) tooHot(set Celsius) error {
	instead := say("cool the shaft, or use a hydraulic press or fit")
	for _, by := range []Coolant{DryIce, LiquidNitrogen} {
		c, err := chill(r.Fit, r.Hub.Material, r.Shaft.Material, by, r.Air.Air)
		if err != nil || c.Hub > r.Limit.At {
			continue
		}
		instead = say("cool the shaft in %v, then the hub needs %v", string(by), up(c.Hub))
		break
	}
	return refuse("Limit.At", instead, "the hub must have %v to slide on, and may have %v (%v)",
		up(set), down(r.Limit.At), r.Limit.Source)
}

// inTime follows the hot hub in the air and on the shaft.
func (r *Refit) inTime(need Free, set Celsius) (Refitted, error) {
	hot := r.Hub
	hot.Start = set
	out := Refitted{Need: need, SetTo: set, Assumptions: r.assumptions()}
	if r.Hub.Material.Brittle {
		out.Warnings = append(out.Warnings, warn("thermal-shock", "Hub.Material",
			"%v cracks from quick or one-sided heat and cold (thermal shock): in an oven or by induction, slowly, and on the shaft it cools in still air, never with water", r.Hub.Material.Name))
	}
	shaft := Mm(r.Shaft.Material.strain(float64(r.Shaft.Start))) * r.Fit.Diameter
	out.Room = Mm(hot.Material.strain(float64(set)))*r.Fit.Diameter - shaft - r.Fit.Interference

	alone := newBodies(&hot, nil, r.Fit, Contact{Perfect: true}, r.Air, usualGrid)
	cold := newBodies(&r.Hub, nil, r.Fit, Contact{Perfect: true}, r.Air, usualGrid)
	out.Into = Joule(alone.heat() - cold.heat())

	half := (r.Fit.Interference + out.Room/2 + shaft).metres()
	touching := Contact{Perfect: true, TouchUntil: out.Room}
	var errs [3]error
	out.Carry, errs[0] = coolsTo(alone, half)
	out.Grips, errs[1] = coolsTo(newBodies(&hot, &r.Shaft, r.Fit, Contact{Perfect: true}, r.Air, usualGrid), r.Fit.Interference.metres())
	out.GripsSoonest, errs[2] = coolsTo(newBodies(&hot, &r.Shaft, r.Fit, touching, r.Air, usualGrid), r.Fit.Interference.metres())
	out.GripsSoonest = out.GripsSoonest.atTheEnds(r.toldShare())
	return out, errors.Join(errs[:]...)
}

// endsGrip is the share of the least time to grip that is told, of a hot hub and of a cooled
// shaft. Followed in a plane of length and radius a hub grips at one end before the net of
// rings says so: on a cooled shaft up to 15 % sooner where it is half as long as its bore is
// wide (TestACooledShaftGripsNoSoonerThanTold), a hot one up to 10 % sooner, long or short,
// where its shaft ends with it or its metals take heat unlike (TestAHotHubGripsNoSoonerThanTold).
// A hot hub of stainless steel, longer than its bore is wide, on a shaft that grows less than
// it does, has gripped at its ends up to 34 % sooner: of one that conducts as poorly less is told.
const endsGrip, poorEndsGrip = 0.8, 0.6

// poorConductor is the conductivity, in W/m K at 20 °C, under which a metal conducts poorly:
// stainless steels have 13 to 15, all other metals of the table 50 and more.
const poorConductor = 20

// toldShare is the share of the least time to grip that is told of a hot hub.
func (r *Refit) toldShare() float64 {
	if r.poorly() {
		return poorEndsGrip
	}
	return endsGrip
}

// poorly reports whether the hub conducts poorly.
func (r *Refit) poorly() bool { return r.Hub.Material.Conducts.at(20) < poorConductor }

// atTheEnds is the least time to grip that is told for that of the net: a share of it, down to a whole
// second. Of less than three seconds none is told: in so short a time the first cells of the
// net are too coarse to say when (tried in hotgrip_test.go), and nobody counts on it.
func (s Second) atTheEnds(part float64) Second {
	if told := math.Floor(float64(s) * part); told >= 3 {
		return Second(told)
	}
	return 0
}

// coolsTo is the time until the opening has fallen to a mark, in metres.
func coolsTo(b *bodies, mark float64) (Second, error) { return until(b, b.opening, mark) }

// until is the time until what is seen has fallen to a mark.
func until(b *bodies, sees func() float64, mark float64) (Second, error) {
	clock := newStepper(b, usualGrid)
	for b.clock < longestSoak {
		was, from := sees(), b.clock
		if was <= mark {
			return Second(from), nil
		}
		if !clock.step() {
			return 0, errDiverged()
		}
		if now := sees(); now <= mark {
			return Second(from + (b.clock-from)*share(was, now, mark)), nil
		}
	}
	return 0, refuse("Hub.Material", "look at the temperatures of hub, shaft and air",
		"the parts do not come to one temperature within %v", minutes(longestSoak))
}

func (r *Refit) assumptions() []Assumption {
	list := []Assumption{
		assume("even", "the hub is warm through when it leaves the heater"),
		assume("air", "hub and shaft lose %v to air of %v", r.Air.Film, r.Air.Air),
		assume("grip", "the times to grip lie between a hub that touches all round and one that hangs centred in its gap; the shorter is told a fifth shorter, for the ends of a hub cool first"),
	}
	if r.poorly() {
		list[2] = assume("grip", "the times to grip lie between a hub that touches all round and one that hangs centred in its gap; the shorter is told two fifths shorter, for the ends of a hub that conducts so poorly cool long before its middle")
	}
	list = append(list, ofMaterials(&r.Hub.Material, &r.Shaft.Material)...)
	return append(list, assumePlanning())
}
