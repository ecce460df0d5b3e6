package lift

import "matchmark/packs/units"

// A Result is a computed lift. Tensions are static unless called design; design
// is static × Dynamic, at the worst end of the tolerances.
type Result struct {
	// Gross is what the legs carry: mass, its tolerance, slings and their gear, and
	// over a Spreader or under a Beam's bail the bar as well.
	Gross Kg
	// HookLoad adds the gear above the legs and the crane's block, and with a tackle
	// its mass and the pull on its line. With TwoHooks it is that of the crane used most.
	HookLoad Kg
	Dynamic  Ratio
	// HookHeight is that of the legs' top bearing point above z = 0 of the load,
	// along the plumb line.
	HookHeight Mm
	Legs       []LegResult
	Tilt       Tilt
	// LengthError and ErrorTilt: how far the load turns out of the position given
	// when one leg is long or short by that much, the worst leg.
	LengthError Mm
	ErrorTilt   Degree
	// Press is the largest pull of a leg along the horizontal, which the load has to
	// stand between its picks; with a Spreader it is the force in the bar.
	Press Kg
	// Bail is where along a Beam its bail stands, from the end over Picks[0].
	Bail       Mm
	Components []Component
	// Weakest is the index of the component used most.
	Weakest int
	// CraneShare is the design hook load over what the crane may lift, the larger
	// of two; Critical tells that it reaches the threshold or that two hooks lift.
	CraneShare Ratio
	// CraneName is the crane of HookLoad and CraneShare.
	CraneName string
	Critical  bool
	// Tackle is nil where the plan has none.
	Tackle *TackleResult
	// Turn is nil for a load that keeps its position.
	Turn *TurnResult
	// Headroom is nil where the plan gives none.
	Headroom *HeadroomResult
	// OtherHeadroom is that of the other hook of TwoHooks, nil for one hook.
	OtherHeadroom *HeadroomResult
	// Heat is the band of temperature within which all slings and gear hold.
	Heat HeatBand
	// Unanswered is what has to be known, or decided by a named person, before the
	// lift may be made, although its figures could be computed.
	Unanswered Refusals
	// Looks are what to look at on pieces of gear before use.
	Looks    []Look
	Cautions []Caution
	Working  []Working
	Drawing  Scene
}

// A Look is what to look at on one piece before use.
type Look struct {
	// Field is the path of its input, as in Refusal.
	Field, Name, What string
	say               phrase
}

// In tells what to look at in the units in which the lift is written.
func (k Look) In(u Units) string { return k.say.in(u) }

// A LegResult is one leg as it hangs.
type LegResult struct {
	Name string
	// Above tells a leg over a Spreader from a drop under it.
	Above bool
	// Length between bearing points; Chosen where it was computed here.
	Length Mm
	Chosen bool
	// Angle from horizontal, and the flattest within the tolerances.
	Angle, Flattest Degree
	// Tension with the centre of gravity as given; Low and High within its
	// tolerance; Design is High × Dynamic.
	Tension, Low, High, Design Kg
	// Even is the even split of four legs, which a rigid load does not keep to.
	Even Kg
	// Factor is tension per upright share, 1/sin of the angle.
	Factor Ratio
	// Vertical and Horizontal are the two parts of Tension.
	Vertical, Horizontal Kg
	// Slack is what a leg in hand has over; Shorten what levels the load.
	Slack, Shorten Mm
	// From the hook's end to the load's end, as it hangs.
	From, To Point
}

// A Tilt is how far the load hangs out of level.
type Tilt struct {
	Total Degree
	// AlongX is positive where the +x end is down, AlongY where the +y end is.
	AlongX, AlongY Degree
	// Within is the largest Total within the tolerance of the centre of gravity, with
	// the legs of the lengths stated; Most is that with one leg off as well, and is
	// what is held against Allowed.
	Within, Most Degree
	// Lower names the end of the span that is down and Drop by how much; Lower is
	// empty where no span is given or the span hangs level.
	Lower string
	Drop  Mm
	// MostDrop is the largest drop of either end, as for Most.
	MostDrop Mm
	// Allowed is the largest tilt the plan admits.
	Allowed Degree
}

// A Component is one piece in the chain from the load to the crane.
type Component struct {
	// Field is the path of its input, as in Refusal.
	Field, Name string
	// Load it carries by design, Rated as its tag says, Allowed after Reductions.
	Load, Rated, Allowed Kg
	Reductions           []Reduction
	// Used is Load over Allowed; over 1 is overloaded.
	Used Ratio
	name phrase
}

// Called is the name of a piece in the language of the paper.
func (c Component) Called(t units.Tongue) string { return c.name.in(Units{Tongue: t}) }

// HeadroomResult compares heights above the floor.
type HeadroomResult struct {
	// Over is the pick over which the hook stands, of TwoHooks; empty with one hook.
	Over string
	// Needed is the crane hook's height with the load just clear; Spare is what is
	// left under its highest place, negative when it does not reach. On two hooks both
	// are of the one that has less to spare, and so is Above, its height over the load.
	Needed, Spare, Above Mm
	// LowEnd and Legs are what of it an end, or a corner of the outline where no ends are
	// given, that hangs low and legs that are long take.
	LowEnd, Legs Mm
}

// A Caution is something a planner has to look at although the lift could be
// computed. Stop marks one with which the lift must not be made. Help says what
// to do about it, where that depends on the cause.
type Caution struct {
	Code    CautionCode
	Field   string
	Message string
	Help    string
	Stop    bool
	say     phrase
}

// In gives the message in the units in which the lift is written.
func (c Caution) In(u Units) string { return c.say.in(u) }

// warn builds a Caution.
func warn(code CautionCode, field, help string, stop bool, what phrase) Caution {
	return Caution{Code: code, Field: field, Message: what.String(), Help: help, Stop: stop, say: what}
}

// CautionCode tells cautions apart.
type CautionCode string

// The cautions.
const (
	Overloaded   CautionCode = "overloaded"
	NoReach      CautionCode = "no-reach"
	OutOfLevel   CautionCode = "out-of-level"
	FlatLeg      CautionCode = "flat-leg"
	BelowAim     CautionCode = "below-aim"
	TouchyLength CautionCode = "touchy-length"
	NearlySlack  CautionCode = "nearly-slack"
	SlackLeg     CautionCode = "slack-leg"
	HighCentre   CautionCode = "high-centre"
	LooseMass    CautionCode = "loose-mass"
	LooseCentre  CautionCode = "loose-centre"
	NoGearWeight CautionCode = "no-gear-weight"
	NoHeadroom   CautionCode = "no-headroom"
	NamedSharing CautionCode = "named-sharing"
	CriticalLift CautionCode = "critical"
	UnevenLegs   CautionCode = "uneven-legs"
	PointTooFlat CautionCode = "point-too-flat"
	BarTooFlat   CautionCode = "bar-too-flat"
	TooHotOrCold CautionCode = "too-hot-or-cold"
	OffSaddle    CautionCode = "off-saddle"
	Decided      CautionCode = "decided"
	Turning      CautionCode = "turning"
)

// A Scene holds the points of a scale drawing as the load hangs: z up, the centre
// of gravity where it is in the load's own frame, the hook straight above it (with a
// bar, above the common centre of both). The legs' ends are in LegResult.
type Scene struct {
	Hook, CoG Point
	// Band are the corners of the tolerance of the centre of gravity.
	Band  []Point
	Picks []Point
	// Bar are the ends of a Spreader or Beam, empty without one.
	Bar []Point
	// Outline are the points of the plan's outline.
	Outline []Point
	// Span are the two ends of the machine's span, empty without one.
	Span []Point
}
