package def

import (
	"matchmark/packs/source"
)

// A Varying is a value that may differ by place, group, option value or serial
// range: either one scalar (One) or one map from a name to a scalar, never
// deeper. The name "others" stands for all that are not named.
type Varying struct {
	One source.Text
	By  []Named
	At  source.Pos
}

// Written reports whether the key stood in the file.
func (v Varying) Written() bool { return !v.At.IsZero() }

// A Named is one entry of a map from a name to a scalar.
type Named struct{ Name, Value source.Text }

// A Face is a part and one of its faces, as in {lock-nut: outer face}.
type Face struct{ Part, Face source.Text }

// A Count is a part named in a list of a step, with the number of pieces when
// fewer than all are meant: lock-nut, or {screw: 6}.
type Count struct {
	Part source.Text
	N    source.Text
}

// A Definition is one equipment file as written: every scalar with its place,
// nothing decided, no defaults filled in. Maps keep the order of the file.
type Definition struct {
	// English are the English texts of those in another language, where they are written.
	English     map[string]string
	At          source.Pos
	Pack        source.Text
	Equipment   Equipment
	Job         Order
	Include     []source.Text // files beside this one
	Places      []*Group
	Options     []*Option
	Parts       []*Part
	Instruments []*Instrument
	Dimensions  []*Dimension
	Containers  []*Container
	BigParts    []*BigPart
	LayDown     []*Spot
	Sets        []*Set
	Stacks      []*Stack
	Joints      []*Joint
	Alignments  []*Alignment
	Heats       []*Heat
	Holds       []*Hold
	Cautions    []*Caution
	Openings    []*Opening
	Lifts       []*Lift
	Gear        []*Gear
	Cranes      []*Crane
	Isolations  []*Isolation
	Permits     []*Permit
	Tools       []*Supply
	Spares      []*Supply
	Consumables []*Supply
	Sections    []*Section
	Copied      map[string]*Copied // of the files that it uses, by what goes before their names
}

// Equipment is the machine on the bench.
type Equipment struct {
	At                                       source.Pos
	Tag, Name, Serial, Maker, Type, Location source.Text
}

// Order is the job: it may stand in the definition or in a job file.
type Order struct {
	At                                              source.Pos
	Number, Title, Revision, Issued, Scope, Planner source.Text
}

// A Group is a set of places that a thing repeats over, as the two ends.
type Group struct {
	Name                    source.Text // as "end"; its place is the key of the group
	Places                  []*Place
	CountedFrom, ViewedFrom source.Text // for all places of the group
}

// A Place is one of a group, as DE.
type Place struct {
	Key              source.Text // as "DE"
	Name, ViewedFrom source.Text
}

// An Option is something that a machine may have or lack, or that is one of
// several builds.
type Option struct {
	Key          source.Text
	What, Fitted source.Text
	Builds       []Named     // each with the machines that have it
	Chosen       source.Text // one of the builds
}

// A Part is anything that is named, moved, counted or measured against.
type Part struct {
	Key    source.Text
	Name   Varying
	Each   []source.Text // groups of places that it repeats over
	Of     source.Text   // the assembly it belongs to
	Behind []source.Text // parts that must be off before it can be moved
	Count  Varying
	Thread Varying     // designation, as M90x2
	Hand   Varying     // left or right
	Flats  source.Text // of a nut: flats or slots
	Fit    Varying     // designation, as 120 H7/r6
	Mass   Varying     // quantity, as 36 kg
	Renew  source.Text // always, as set, never, if ...
	Set    source.Text // matched set mark
	Holds  source.Text // what it holds back: spring, pressure
	Guard  source.Text // "yes": it keeps people from what moves or is live
	Aid    source.Text // "yes": it is no part of the machine and must be out again at the end
	Moves  source.Text // "1 turn gives 0.75 mm" for adjusters without a thread
	Note   source.Text
	Applies
	Adjusting
}

// An Instrument is what a reading is taken with.
type Instrument struct {
	Key          source.Text
	Name         source.Text
	Range, Reads source.Text // as "0 to 150 mm", "0.02 mm"
	Number       source.Text
}

// A Dimension is one thing to measure, with what its reading must be.
type Dimension struct {
	Mark             source.Text
	What             Varying
	Each             []source.Text
	Kind             source.Text // chooses the picture: stand-off, gap, diameter, float, runout, ...
	From, To         Face
	Of               Face // the part read, when it is a reading of one part alone
	At               Positions
	With             Varying // state in which it is measured
	ViewedFrom       Varying
	Pushed           Varying     // which way the moving part is pushed
	Load             Varying     // force or torque that acts meanwhile
	Plane            Varying     // plane or line it is read in
	State            source.Text // cold or hot; the temperature is written beside it
	OnThe            source.Text // diameter or radius
	Warm             source.Text // material, when the part may be read warm
	By               source.Text // instrument
	Found            Varying     // how the as-found box is written
	Left             Varying     // what must stand at closing
	Reuse            Varying     // how far an old part may go back
	Repair           Varying
	Over, Under, Out Varying       // what to do when it is not in
	Source           Varying       // document, table, page of the limit
	Says             []Says        // what sources say that differ
	Adjust           source.Text   // part that sets it
	LostBy           []source.Text // steps or parts that destroy it beyond its faces
	WhyCoarse        source.Text   // why a coarse instrument will do
	Sign             source.Text   // "yes": the reading can be negative
	Nominal          Varying       // size expected, for the width of the box
	Spare            source.Text   // boxes left free for readings decided on the day
	Critical         source.Text   // "no": not on the sheet of critical dimensions
	Note             source.Text
	Applies
	Worked
}

// Positions are the several places at which one dimension is read: a name
// ("clock"), a list, or a map of one or two lists (rows, columns). A log is read
// over and over instead: Every tells how often and Rows how many times, and the
// one axis what is read each time.
type Positions struct {
	At          source.Pos
	Axes        []Axis
	Every, Rows source.Text
}

// An Axis is one list of positions with a name: {station: [A, B]}.
type Axis struct {
	Name   source.Text
	Values []source.Text
}

// A Says is what one of several sources says of a limit that they do not agree on.
type Says struct {
	At     source.Pos
	Source source.Text
	Text   source.Text // as the source prints it
	Used   source.Text // "yes", or the hold at which this one was chosen
	Note   source.Text
	Applies
}

// A Container is anything numbered that parts are kept in.
type Container struct {
	Mark    source.Text
	Name    Varying
	Kind    source.Text // bag, box, tray, crate
	Each    []source.Text
	Pockets []source.Text
	Keep    Varying // dry, oiled, wrapped, upright, ...
	Note    Varying
	Applies
}

// A BigPart is a part with a tag of its own and no container.
type BigPart struct {
	Mark    source.Text
	Part    source.Text
	Each    []source.Text
	Keep    Varying
	Support Varying // what it lies on
	Applies
}

// A Spot is a place on the floor where a big part is laid down.
type Spot struct {
	Mark                 source.Text
	What, Floor, Support source.Text
}

// A Set is a matched set: parts that only fit each other.
type Set struct {
	Mark     source.Text
	What     Varying
	Each     []source.Text
	Why      source.Text
	JudgedBy []source.Text // readings of which one that is out renews them all
}

// A Stack is an order of parts from a named side outward.
type Stack struct {
	Mark  source.Text
	What  Varying
	Each  []source.Text
	From  Varying       // the side that counting begins at
	Order []source.Text // one text for all, or one for each piece
	Count source.Text   // of pieces, where Order is one text
}

// A Hold is a point where work stops, or may stop, for a named person.
type Hold struct {
	Mark     source.Text
	Kind     source.Text // hold or witness
	What     source.Text // what must have been seen
	Releases source.Text // role of who releases it
}

// A Caution is a hazard note of the definition.
type Caution struct {
	Key                         source.Text
	Signal                      source.Text // danger, warning, caution, notice
	Signs                       []source.Text
	Hazard, Result, Avoid, Rule source.Text
}

// An Opening is a hole that dirt or tools can fall into.
type Opening struct {
	Key      source.Text
	What     source.Text
	Each     []source.Text
	Cover    source.Text
	Enclosed source.Text // yes: a person can go in
	Applies
}

// A Section is a run of steps under one heading, or an order to put earlier
// sections back (Reverse).
type Section struct {
	At      source.Pos
	Name    Varying
	Each    []source.Text
	Steps   []*Step
	Reverse []source.Text
	Use     *Use // of another file, whose sections stand here; nil when they do
	Applies
}

// A Step is one act at the machine.
type Step struct {
	At      source.Pos
	Key     source.Text
	After   After
	Do      Varying
	Where   source.Text // bench, or at the machine
	Each    []source.Text
	Measure []source.Text
	Set     []source.Text
	Remove  []Count
	Fit     []Count
	Into    Into
	From    []source.Text
	ForNow  []Count       // fitted for now, to be taken out again
	TakeOut []Count       // taken out again
	LeftOut []source.Text // parts that are left out here and fitted later
	Loosen  []source.Text
	Tighten []source.Text
	Open    []source.Text
	Close   []source.Text
	Empty   []source.Text // containers that must be empty after this step
	Lift    []source.Text // lifts that are made
	SetDown []source.Text // lifts whose load stands again
	// UnderLoad is what is put under a load that hangs.
	UnderLoad source.Text
	Hold      source.Text
	Heat      []source.Text
	Align     []source.Text // alignments that are made
	Caution   []source.Text
	// MatchMarks are the parts that get a mark across their joint, Stacks the
	// orders written down before they come apart.
	MatchMarks []source.Text
	Stacks     []source.Text
	Judge      []source.Text // matched sets that go back or are renewed as a whole
	Missed     Varying
	Back       Varying
	// What the generated put-back row has of its own, or "none, because ...".
	BackMissed              Varying
	BackCaution, BackPermit []source.Text
	BackHold, BackCheck     source.Text
	BackHours               source.Text // how long it takes
	// NoCaution are the built-in cautions left out, each with the reason.
	NoCaution []Named
	WayRound  []WayRound
	Photo     source.Text
	Check     source.Text // who checks as well
	Hours     source.Text
	People    source.Text // how many it takes
	OnHook    source.Text // what a heavy part hangs on, without a lift sheet
	Note      Varying
	Lock      []source.Text // isolations
	Unlock    []source.Text
	// UnlockForNow and LockAgain are the isolations of a test in mid-job.
	UnlockForNow, LockAgain []source.Text
	Permit                  []source.Text // papers that must be there
	HandBack                []source.Text // permits that end here
	ToolCount               source.Text   // yes: tools are counted
	CountAll                source.Text   // yes: every container is counted
	Otherwise               Varying       // what is done instead where the step does not apply
	Applies
	Branching
}

// After says which steps must come before, each with its reason. An After that
// is written but empty says that nothing has to.
type After struct {
	At    source.Pos
	Steps []Named // Value: the reason, possibly not written
}

// Into says where removed parts go: one place for all (To), or one for each.
type Into struct {
	At  source.Pos
	To  source.Text
	For []Named
}

// A WayRound says which side of a part faces what: {part: seal, mark: lip,
// faces: oil}.
type WayRound struct{ Part, Mark, Faces source.Text }
