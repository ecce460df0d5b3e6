package def

import "matchmark/packs/source"

// A Heat is one joint that is opened by heat: what is heated, what it sits on,
// how tight, how hot it may get, and how it is done.
type Heat struct {
	Mark         source.Text
	What         Varying
	Each         []source.Text
	Fit          Varying // designation, as 120 H7/r6
	Interference Varying // range, as 0.015 to 0.065 mm
	Diameter     Varying // of the joint, where no designation gives it
	Sizes        Sizes   // bore and seat as measured earlier
	Read         Readings
	Hub          Hub
	Shaft        Shaft
	Neighbours   []*Neighbour
	NothingNear  source.Text // why nothing beside it has to be protected
	Air          source.Text // temperature of the parts and the air at the start
	Grip         Grip
	AtWork       AtWork
	SeatForm     source.Text // straight, taper or shrink disc
	Pull         HeatPull
	PutOn        HeatPutOn
	FireWatch    source.Text
	Note         source.Text
	Applies
}

// Sizes are a bore and a seat as measured, with the temperatures of the parts.
type Sizes struct {
	At                         source.Pos
	Bore, Seat, BoreAt, SeatAt source.Text
}

// Readings are the dimensions that read bore and seat on this job.
type Readings struct {
	At         source.Pos
	Bore, Seat source.Text
}

// A Hub is what is heated.
type Hub struct {
	At              source.Pos
	Part            source.Text
	Material        source.Text
	Outside, Length Varying
	Kind            source.Text // sort of part, for its highest temperature
	AtMost, Source  source.Text // the site's or the maker's own highest temperature
	Yield           source.Text
	Strength        source.Text // tensile strength of a brittle part
}

// A Shaft is what the heated part sits on.
type Shaft struct {
	At                  source.Pos
	Part                source.Text
	Material            source.Text
	Bore, Behind, Front Varying
	Yield, Torque       source.Text // torque that it carries under the heated part
}

// A Neighbour is a part beside a heated one that must stay cool.
type Neighbour struct {
	At           source.Pos
	What         source.Text
	Away         source.Text
	Kind         source.Text
	AtMost       source.Text
	Source       source.Text
	KeptCool     source.Text // how it is kept cool
	MeasuredWith source.Text
}

// A Grip is what friction and smoothing a joint is reckoned with.
type Grip struct {
	At                              source.Pos
	DecidedBy, Because              source.Text // who answers for the frictions, and why
	Holding, Pulling                source.Text
	Smoothing, HubRough, ShaftRough source.Text
}

// An AtWork is where a joint works: the temperatures of the shaft under the hub, how
// much hotter one of the two gets than the other, and the speed.
type AtWork struct {
	At                 source.Pos
	Coldest, Hottest   source.Text
	HubOver, ShaftOver source.Text
	RPM                source.Text
}

// A HeatPull is how a hub is drawn off hot.
type HeatPull struct {
	At                source.Pos
	By                source.Text
	Net, Depth        source.Text
	Clearance, Rise   source.Text
	Longest           source.Text
	Workable          source.Text // time from heat off to off the seat
	WorkableBecause   source.Text
	Puller, PullsWith source.Text
	Shield            source.Text
	IfStuck           source.Text
}

// A HeatPutOn is how a part is put on hot.
type HeatPutOn struct {
	At              source.Pos
	By              source.Text
	Net, Oven       source.Text
	Clearance, Rise source.Text
	HeatTo          source.Text
	Chill           source.Text
	Coolant, Room   source.Text
}
