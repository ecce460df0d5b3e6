package lift

// What is computed: what shackles, eyebolts and other gear may carry at the angle
// at which they are pulled. Printed ladders are never interpolated: between two
// rungs the worse one counts.
// Sources: shackle side load 100 % in line, 70 % at 45°, 50 % at 90°: makers'
// shackle precautions, three agreeing. They also allow at most 120° between legs
// in one bow, which legs of 30° and more from horizontal cannot pass. Shouldered
// eyebolt by the angle from its axis: 100 % to 5°, 80 % at 15°, 65 % at 30° (eyebolt angular-load note), 25 % from 45° on (metric machinery
// eyebolt table; the note prints 30 % at 45°, the lower one is taken). Hooks: 100 %
// in the saddle, 86, 80 and 70 % at the stations outward, about 40 % at the tip
// (course notes); no hook is meant to be loaded there, so the lift is stopped too.
// Validity: shoulder seated, plane of the eye in line with the pull, thread in by
// 1.5 diameters in steel; one leg to an eye.
// Refused: side pull on a plain eyebolt; an angle over the last rung; a maker's
// ladder without its source.

// HardwareKind says how a piece of gear minds its angle of pull.
type HardwareKind int

// The kinds of gear. The zero HardwareKind is refused.
const (
	// InLine gear is always pulled in line: links, rings, turnbuckles.
	InLine HardwareKind = iota + 1
	// Shackle is reduced by OffLine.
	Shackle
	// ShoulderEyebolt is reduced by the angle between Axis and the leg.
	ShoulderEyebolt
	// PlainEyebolt takes no side pull.
	PlainEyebolt
	// Hook is reduced by Seat.
	Hook
)

// A HookSeat says where in a hook the load sits.
type HookSeat int

// The seats, from the saddle to the tip in four stations. The zero HookSeat is
// refused for a hook. A hook loaded anywhere but in its saddle stops the lift.
const (
	Saddle HookSeat = iota + 1
	QuarterOut
	HalfOut
	ThreeQuartersOut
	Tip
)

// Hardware is one piece of gear in a pull line.
type Hardware struct {
	Name  string
	Kind  HardwareKind
	Rated Kg
	Basis Basis
	// OffLine is the angle of pull out of a shackle's own line, 0 when it is free
	// to turn into line.
	OffLine Degree
	// Axis is the direction an eyebolt's thread points out of the load.
	Axis Point
	// Seat is where the load sits in a Hook.
	Seat HookSeat
	// Thread is the diameter of an eyebolt's thread; 0 where it is not known.
	Thread Mm
	// Ladder is the maker's own, from the smallest angle, and replaces ours.
	Ladder       []Rung
	LadderSource string
	// Holds is the maker's own band of temperatures, nil for that of the kind.
	Holds *MakersBand
	// OfChain says that it is a link, ring or hook of a chain sling, which the shares of hot chain
	// are for.
	OfChain bool
	Mass    Kg
}

// A Rung is the share of the rating that is left up to an angle off line or off
// the axis.
type Rung struct {
	UpTo Degree
	Left Ratio
}

// upright: within 5° of vertical counts as vertical, 29 CFR 1910.184(b).
const upright Degree = 5

var (
	shackleLadder = []step{{0, 1}, {45, 0.7}, {90, 0.5}}
	// eyeboltList is the angular-load note as printed; eyeboltLadder holds it to what
	// the metric table leaves at 45°, from the last rung before that on.
	eyeboltList   = []step{{5, 1}, {15, 0.8}, {30, 0.65}, {45, 0.30}, {90, 0.25}}
	eyeboltLadder = heldTo(eyeboltList, 30, eyeboltAt45)
	plainLadder   = []step{{5, 1}}
	hookLadder    = []Ratio{1, 0.86, 0.80, 0.70, 0.40}
)

// eyeboltAt45 is what the metric machinery eyebolt table leaves at 45°.
const eyeboltAt45 Ratio = 0.25

// heldTo gives a ladder whose rungs past an angle leave no more than most.
func heldTo(ladder []step, past Degree, most Ratio) []step {
	var out []step
	for _, s := range ladder {
		if s.upTo > past {
			s.factor = min(s.factor, most)
		}
		out = append(out, s)
	}
	return out
}

// reductions lists the factors on the rating when pulled along u, a unit vector
// in the load's frame.
func (h Hardware) reductions(field string, u vec) ([]Reduction, *Refusal) {
	var ladder []step
	var angle Degree
	why, source := "", ""
	switch h.Kind {
	case InLine:
		return nil, nil
	case Hook:
		if h.Seat < Saddle || h.Seat > Tip {
			return nil, refuse(field+".seat", "say whether it sits in the saddle", "nothing says where in hook %q the load sits", h.Name)
		}
		if h.Seat == Saddle {
			return nil, nil
		}
		return []Reduction{{say("load out of the saddle"), hookLadder[h.Seat-Saddle], "Hanford rigging course TR244C, hooks, as quoted by study notes"}}, nil
	case Shackle:
		ladder, angle = shackleLadder, h.OffLine
		why, source = "side load", "shackle side-load table, makers' precautions"
		if !finite(float64(angle)) || angle < 0 || angle > 90 {
			return nil, refuse(field+".offline", "write 0 in line to 90 square to it", "shackle %q is pulled %g° off line", h.Name, float64(angle))
		}
	case ShoulderEyebolt, PlainEyebolt:
		axis := vecOf(h.Axis)
		if !finite(axis.x, axis.y, axis.z) || axis.size() == 0 {
			return nil, refuse(field+".axis", "write the way its thread points out, up is 0, 0, 1", "the axis of eyebolt %q is not given", h.Name)
		}
		angle = angleBetween(axis, u)
		ladder, why, source = eyeboltLadder, "angle from the bolt axis", "eyebolt angular-load tables, the lower of two"
		if h.Kind == PlainEyebolt {
			ladder, source = plainLadder, "plain eyebolts axially only, WAC 296-155-56110"
		}
	default:
		return nil, refuse(field+".kind", "say what it is", "%q is no known kind of gear", h.Name)
	}
	if len(h.Ladder) > 0 {
		own, no := h.own(field)
		if no != nil {
			return nil, no
		}
		ladder, source = own, h.LadderSource
	}
	left, ok := rung(ladder, angle)
	if !ok {
		return nil, refuse(field+".kind", "use gear made for that pull, such as a swivel eye, or steeper legs", "%q is pulled %s off its axis and is rated up to %s", h.Name, angle.Up(), ladder[len(ladder)-1].upTo.Down())
	}
	at := say("%s %s", why, angle)
	if len(h.Ladder) > 0 {
		at = say("%s (%s)", at, source) // a table that no rigger knows by heart
	}
	return []Reduction{{at, left, source}}, nil
}

// own turns the maker's ladder into ours.
func (h Hardware) own(field string) ([]step, *Refusal) {
	if h.LadderSource == "" {
		return nil, refuse(field+".laddersource", "name the maker's table", "the reductions of %q have no source", h.Name)
	}
	var out []step
	for i, r := range h.Ladder {
		rising := i == 0 || r.UpTo > h.Ladder[i-1].UpTo && r.Left <= h.Ladder[i-1].Left
		if !finite(float64(r.UpTo), float64(r.Left)) || r.UpTo < 0 || r.Left <= 0 || r.Left > 1 || !rising {
			return nil, refuse(field+".ladder", "go from the smallest angle up, each with the same share or less, none above 100 %", "step %d of %q leaves %s up to %v", i+1, h.Name, r.Left.PercentDown(), r.UpTo)
		}
		out = append(out, step{r.UpTo, r.Left})
	}
	return out, nil
}
