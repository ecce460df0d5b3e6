package lift

// A Rig says how the load hangs from the crane.
type Rig int

// The rigs. The zero Rig is refused.
const (
	// Bridle is one to four legs from one hook to the picks.
	Bridle Rig = iota + 1
	// Spreader is a bar between two top legs, with an upright drop from each end
	// to a pick. The bar is pressed lengthwise, not bent.
	Spreader
	// Beam is a lifting beam hung from one bail, with an upright drop from each
	// end to a pick. The beam is bent.
	Beam
	// TwoHooks is an upright leg from each of two hooks to its pick.
	TwoHooks
)

// A Basis is the family of standards by which gear is rated and reduced. A plan
// has one; the two are never mixed.
type Basis int

const (
	// AsPlan, on a piece of gear, means that it bears no other basis than the plan's.
	AsPlan Basis = iota
	// US rates each leg and takes the angle by its sine.
	US
	// EN rates each leg, and the bridle as a whole by the band of its angle.
	EN
)

// A MassSource says where the mass of the load comes from.
type MassSource int

// The sources of a mass. The zero MassSource is refused.
const (
	Weighed MassSource = iota + 1
	Drawing
	Computed
	Estimated
)

// A Plan is everything known before the lift. Weights of gear that are not
// given count as nothing and are noted as a Caution.
type Plan struct {
	Load  Load
	Rig   Rig
	Basis Basis
	// Picks are where the legs (or drops) take hold, in the load's own frame; two
	// for Spreader, Beam and TwoHooks, one to four for Bridle.
	Picks []Pick
	// Legs go with the picks, one each: the legs of a Bridle or of TwoHooks, the
	// drops of a Spreader or Beam. Lengths of a Bridle are all given, or one given
	// and the others 0 to be chosen, or all 0 and a hook height or an aim given.
	// The two drops of a Spreader or Beam are given and equal.
	Legs []Leg
	// TopLegs are the two legs above a Spreader, with lengths as for a Bridle.
	TopLegs []Leg
	// Bar is the Spreader or Beam.
	Bar Bar
	// TopGear hangs between the legs and the crane hook: rings, links, shackles.
	// Each carries the whole load. Not used by TwoHooks.
	TopGear []Hardware
	// HookHeight of the legs' top bearing point above z = 0 of the load; 0 if not
	// chosen. Aim is the angle the flattest leg shall have instead; 0 if not chosen.
	HookHeight Mm
	Aim        Degree
	Sharing    Sharing
	SkewFactor Ratio
	// DecidedBy and Reason are needed for any Sharing but TwoCarry.
	DecidedBy, Reason string
	// Dynamic factor on all loads, at least 1; 0 takes the published onshore figure.
	Dynamic Ratio
	// MaxTilt the load may hang out of level; 0 takes the published 2°.
	MaxTilt Degree
	// LengthError is how far one leg may be off its length against the others; 0
	// takes 10 mm.
	LengthError Mm
	// Crane is the hoist; SecondCrane the one over Picks[1] with TwoHooks.
	Crane, SecondCrane Crane
	// Tackle hangs from the crane and carries the gear above the legs; nil for a load
	// on the crane's own hook. Its Mass, Dynamic and Anchor are filled in here.
	Tackle *Tackle
	// CriticalAt is the site's threshold of a critical lift, as a share of what the
	// crane may lift: over 0, at most 1.
	CriticalAt Ratio
	// Headroom is nil where it is not looked at.
	Headroom *Headroom
	// Turn is nil for a load that keeps its position.
	Turn *Turn
	// Temperatures that slings and gear come to; nil where they are not known, and the
	// band within which all hold is then told alone.
	Temperatures *Temperatures
}

// A Load is what hangs.
type Load struct {
	Mass   Kg
	Source MassSource
	// MassTolerance is added to the mass before anything is computed.
	MassTolerance Kg
	// CoG is nil where it is not known, and the lift is then refused.
	CoG *Point
	// CoGTolerance each way along x, y and z.
	CoGTolerance Point
	// Span is the length over which a tilt is told; nil for none.
	Span *Span
	// Outline are points of the load that a drawing shows; they weigh nothing.
	Outline []Point
	// MayPress is the force along the line of the picks that the load can take
	// between them; 0 where it is not known.
	MayPress Kg
}

// A Span is the machine's own length between two named points.
type Span struct {
	NameA, NameB string
	A, B         Point
}

// A Pick is a point of the load where a leg takes hold.
type Pick struct {
	Name string
	At   Point
	// Point is what the leg takes hold of; nil where that is not known, or where the
	// sling goes round the load.
	Point *LiftingPoint
}

// A Leg is a sling with the gear in its pull line.
type Leg struct {
	Name string
	// Length between the bearing points, everything between them counted; of a
	// basket, from the hook to the axis of what it goes round.
	Length Mm
	Sling  Sling
	// Gear carries what the leg carries: shackle, eyebolt, hook, turnbuckle.
	Gear []Hardware
}

// A Bar is a spreader or a lifting beam.
type Bar struct {
	Name string
	// Length between the two pins the drops hang from; equal to the distance of
	// the picks, or near enough to leave the drops within 1° of upright.
	Length Mm
	Mass   Kg
	// Rated load under the bar.
	Rated Kg
	Basis Basis
	// Ends are what each end may carry, over Picks[0] and Picks[1]; 0 takes half of
	// Rated.
	Ends [2]Kg
	// LeastAngle from horizontal is the flattest of a Spreader's top legs for which it
	// is rated; 0 where that is not known. TopLugs is then the rating of each lug on
	// top along its leg, and MayPress what the bar may be pressed with lengthwise.
	LeastAngle        Degree
	TopLugs, MayPress Kg
	// LugRise is how far the top lugs stand over the middle line of a Spreader;
	// MayBend is the largest bending of the bar, 0 where that is not known.
	LugRise Mm
	MayBend NewtonMetre
	// Bail of a Beam, along it from the end over Picks[0]; 0 hangs it where the
	// load is level. Rise of the bail above the line of the end pins.
	Bail, Rise Mm
}

// A Crane is the hoist on the day.
type Crane struct {
	Name string
	// Rated at the radius and reach of this lift, all deductions made.
	Rated Kg
	// Block counts against Rated where the chart says so.
	Block Kg
}

// Headroom holds the heights above the floor.
type Headroom struct {
	// HighHook is the highest the crane hook's bearing point goes; SecondHighHook that of
	// the second crane, of TwoHooks.
	HighHook, SecondHighHook Mm
	// PassOver is the height the lowest point of the load has to clear, margin
	// included.
	PassOver Mm
	// Underside of the load below z = 0 of its frame.
	Underside Mm
	// Stack of gear between the legs' top bearing point and the crane hook.
	Stack Mm
}
