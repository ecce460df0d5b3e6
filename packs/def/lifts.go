package def

import "matchmark/packs/source"

// A Lift is one load to be lifted, with all that is known of it and of the gear
// it hangs on. A point is a list of three lengths, x, y and z, from the origin
// that the author names.
type Lift struct {
	Mark  source.Text
	What  source.Text
	Parts []source.Text // what hangs together
	Rig   source.Text   // bridle, spreader, beam, two hooks, by hand

	Origin       source.Text // where x, y and z are measured from, and which way they run
	Mass         source.Text
	MassFrom     source.Text // weighed, drawing, computed, estimated
	MassSource   source.Text
	MassWithin   source.Text // a mass or a share in %
	Centre       []source.Text
	CentreWithin []source.Text // one length for all ways, or three
	Sections     []*MassSection
	SectionsFrom []source.Text // where their end face stands
	Size         LoadSize
	Ends         []*LoadEnd
	MayPress     source.Text

	RatedBy    source.Text // EN or US
	Points     []*LiftingPoint
	Legs       []*Leg
	TopLegs    []*Leg
	Bar        source.Text
	Bail       source.Text
	TopGear    []source.Text
	HookHeight source.Text
	Aim        source.Text
	FourLegs   source.Text // two carry, three of four, matched slings
	Skew       source.Text
	DecidedBy  source.Text
	Because    source.Text
	Dynamic    source.Text
	MaxTilt    source.Text
	LegError   source.Text

	Grips []*Handhold // of a lift by hand

	Crane       source.Text
	SecondCrane source.Text
	UpendedOn   source.Text // a leg
	Tackle      Tackle
	SignedPlan  source.Text
	PassOver    source.Text
	Stack       source.Text
	Heat        source.Text // coldest to hottest of slings and gear

	Trial    source.Text
	LayDown  source.Text
	Footing  Footing
	Supports []source.Text
	Crew     []source.Text
	// TrialStops are met at the trial lift, Stops going up, StopsIn coming down.
	TrialStops, Stops, StopsIn []source.Text
	Note                       source.Text
	Applies
}

// LoadSize is the box that the load fills, from its least x, y and z to its
// largest.
type LoadSize struct {
	At       source.Pos
	From, To []source.Text
}

// A LoadEnd is a point of the machine at which its level is looked at.
type LoadEnd struct {
	Name  source.Text
	Point []source.Text
}

// A LiftingPoint is what a leg takes hold of on the load, by the words of takes:.
type LiftingPoint struct {
	Name                    source.Text
	Rated, Flattest, Source source.Text
	Turns                   source.Text // rated all the way round
}

// A Tackle is a tackle of blocks between the crane and the gear above the legs.
type Tackle struct {
	At                                  source.Pos
	Parts, Sheaves, Hauled              source.Text
	Mass, Rope, MovingBlock, UpperBlock source.Text
}

// A Leg is one sling from a pick upward, with what it takes hold by.
type Leg struct {
	Name    source.Text
	Pick    []source.Text
	Takes   source.Text // what it takes hold of
	Sling   source.Text // a piece of gear
	Hitch   source.Text // straight, choker, basket
	Choke   source.Text // angle in the choke
	Spread  source.Text // angle between the parts of a basket, or parallel
	Around  source.Text // diameter that a basket bears on
	Heavier source.Text // share of the part of a basket that carries more
	Turns   source.Text // whether the load is turned in its basket
	Length  source.Text
	Gear    []source.Text
	OffLine source.Text   // angle of pull off the line of its shackles
	Axis    []source.Text // the way its eyebolt points out: up, or three numbers
}

// A Handhold is where one person takes hold of a load that is lifted by hand.
type Handhold struct {
	Name source.Text
	Pick []source.Text
}

// Footing is what a load stands on where it is laid down.
type Footing struct {
	At                          source.Pos
	Pieces, Length, Width, Most source.Text
}

// A MassSection is one piece of a body of revolution that is weighed by
// reckoning.
type MassSection struct {
	At                                               source.Pos
	What, Shape, From, Length, Outer, OuterFar, Bore source.Text
	Count, Each, Material, Density, Within, Cut      source.Text
}

// A Gear is one kind of piece that a load hangs on: sling, shackle, eyebolt,
// bar.
type Gear struct {
	Key                        source.Text
	What, Kind, Rated, RatedBy source.Text
	Mass, Rope, Tucked, Fibre  source.Text
	Seat, Thread               source.Text   // of a hook, of an eyebolt
	LeftAt                     []source.Text // the maker's own shares by angle
	LeftSource                 source.Text
	Heat, HeatSource           source.Text // the maker's own band of temperatures
	Length, Rise               source.Text // of a bar
	Ends                       []source.Text
	Flattest, TopLugs          source.Text // of a spreader
	MayPress, LugRise, MayBend source.Text
}

// A Crane is what a load is lifted with.
type Crane struct {
	Key                          source.Text
	What, Rated, Block, HighHook source.Text
}
