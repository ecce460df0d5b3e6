package def

import "matchmark/packs/source"

// A Heat is one joint that is opened by heat: what is heated, what it sits on,
// how tight, how hot it may get, and how it is done.
type Heat struct {
	Mark         Text
	What         Varying
	Each         []Text
	Fit          Varying // designation, as 120 H7/r6
	Interference Varying // range, as 0.015 to 0.065 mm
	Diameter     Varying // of the joint, where no designation gives it
	Sizes        Sizes   // bore and seat as measured earlier
	Read         Readings
	Hub          Hub
	Shaft        Shaft
	Neighbours   []*Neighbour
	NothingNear  Text // why nothing beside it has to be protected
	Air          Text // temperature of the parts and the air at the start
	Grip         Grip
	Pull         HeatPull
	PutOn        HeatPutOn
	FireWatch    Text
	Note         Text
	Applies
}

// Sizes are a bore and a seat as measured, with the temperatures of the parts.
type Sizes struct {
	At                         source.Pos
	Bore, Seat, BoreAt, SeatAt Text
}

// Readings are the dimensions that read bore and seat on this job.
type Readings struct {
	At         source.Pos
	Bore, Seat Text
}

// A Hub is what is heated.
type Hub struct {
	At              source.Pos
	Part            Text
	Material        Text
	Outside, Length Varying
	Kind            Text // sort of part, for its highest temperature
	AtMost, Source  Text // the site's or the maker's own highest temperature
	Yield           Text
}

// A Shaft is what the heated part sits on.
type Shaft struct {
	At                  source.Pos
	Part                Text
	Material            Text
	Bore, Behind, Front Varying
}

// A Neighbour is a part beside a heated one that must stay cool.
type Neighbour struct {
	At           source.Pos
	What         Text
	Away         Text
	Kind         Text
	AtMost       Text
	Source       Text
	KeptCool     Text // how it is kept cool
	MeasuredWith Text
}

// A Grip is what friction and smoothing a joint is reckoned with.
type Grip struct {
	At                              source.Pos
	Holding, Pulling                Text
	Smoothing, HubRough, ShaftRough Text
}

// A HeatPull is how a hub is drawn off hot.
type HeatPull struct {
	At                source.Pos
	By                Text
	Net, Depth        Text
	Clearance, Rise   Text
	Longest           Text
	Puller, PullsWith Text
	Shield            Text
	IfStuck           Text
}

// A HeatPutOn is how a part is put on hot.
type HeatPutOn struct {
	At              source.Pos
	By              Text
	Net, Oven       Text
	Clearance, Rise Text
	HeatTo          Text
	Chill           Text
	Coolant, Room   Text
}
