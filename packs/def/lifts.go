package def

import "matchmark/packs/source"

// A Lift is one load to be lifted, with all that is known of it and of the gear
// it hangs on. A point is a list of three lengths, x, y and z, from the origin
// that the author names.
type Lift struct {
	Mark  Text
	What  Text
	Parts []Text // what hangs together
	Rig   Text   // bridle, spreader, beam, two hooks, by hand

	Origin       Text // where x, y and z are measured from, and which way they run
	Mass         Text
	MassFrom     Text // weighed, drawing, computed, estimated
	MassSource   Text
	MassWithin   Text // a mass or a share in %
	Centre       []Text
	CentreWithin []Text // one length for all ways, or three
	Sections     []*MassSection
	SectionsFrom []Text // where their end face stands
	Size         LoadSize
	Ends         []*LoadEnd
	MayPress     Text

	RatedBy    Text // EN or US
	Legs       []*Leg
	TopLegs    []*Leg
	Bar        Text
	Bail       Text
	TopGear    []Text
	HookHeight Text
	Aim        Text
	FourLegs   Text // two carry, three of four, matched slings
	Skew       Text
	DecidedBy  Text
	Because    Text
	Dynamic    Text
	MaxTilt    Text
	LegError   Text

	Grips []*Handhold // of a lift by hand

	Crane       Text
	SecondCrane Text
	SignedPlan  Text
	PassOver    Text
	Stack       Text

	Trial    Text
	LayDown  Text
	Footing  Footing
	Supports []Text
	Crew     []Text
	Stops    []Text
	Note     Text
	Applies
}

// LoadSize is the box that the load fills, from its least x, y and z to its
// largest.
type LoadSize struct {
	At       source.Pos
	From, To []Text
}

// A LoadEnd is a point of the machine at which its level is looked at.
type LoadEnd struct {
	Name  Text
	Point []Text
}

// A Leg is one sling from a pick upward, with what it takes hold by.
type Leg struct {
	Name    Text
	Pick    []Text
	Takes   Text // what it takes hold of
	Sling   Text // a piece of gear
	Hitch   Text // straight, choker, basket
	Choke   Text // angle in the choke
	Spread  Text // angle between the parts of a basket, or parallel
	Around  Text // diameter that a basket bears on
	Length  Text
	Gear    []Text
	OffLine Text   // angle of pull off the line of its shackles
	Axis    []Text // the way its eyebolt points out: up, or three numbers
}

// A Handhold is where one person takes hold of a load that is lifted by hand.
type Handhold struct {
	Name Text
	Pick []Text
}

// Footing is what a load stands on where it is laid down.
type Footing struct {
	At                          source.Pos
	Pieces, Length, Width, Most Text
}

// A MassSection is one piece of a body of revolution that is weighed by
// reckoning.
type MassSection struct {
	At                                               source.Pos
	What, Shape, From, Length, Outer, OuterFar, Bore Text
	Count, Each, Material, Density, Within, Cut      Text
}

// A Gear is one kind of piece that a load hangs on: sling, shackle, eyebolt,
// bar.
type Gear struct {
	Key                        Text
	What, Kind, Rated, RatedBy Text
	Mass, Rope, Tucked         Text
	LeftAt                     []Text // the maker's own shares by angle
	LeftSource                 Text
	Length, Rise               Text // of a bar
}

// A Crane is what a load is lifted with.
type Crane struct {
	Key                          Text
	What, Rated, Block, HighHook Text
}
