package def

import (
	"unicode/utf8"

	"matchmark/packs/source"
)

// Text is one scalar as it was typed, without the quotes round it, with its
// place. Of the keys that take yes or no the Value is "yes" or "no" however it
// was typed. A Text whose At is zero was not written, or stands where a problem
// has been reported.
//
// At is the place of the first letter of the text, inside its quotes, and its
// Width that of the text in the file. What stands behind an anchor has the place
// where it was typed, not where an alias repeats it: there it is put right.
type Text struct {
	Value string
	At    source.Pos
}

// Written reports whether the key stood in the file.
func (t Text) Written() bool { return !t.At.IsZero() }

// Part gives the place of width runes of the text from rune offset (from 0) on.
// Where the text in the file is not the value letter by letter (it runs over
// several lines, or has escapes in quotes), and where the part lies outside the
// text, it gives the place of the whole.
func (t Text) Part(offset, width int) source.Pos {
	n := utf8.RuneCountInString(t.Value)
	if t.At.Width != n || offset < 0 || width < 0 || offset+width > n {
		return t.At
	}
	at := t.At
	at.Col += offset
	at.Width = max(width, 1)
	return at
}

// A Varying is a value that may differ by place, group, option value or serial
// range: either one scalar (One) or one map from a name to a scalar, never
// deeper. The name "others" stands for all that are not named.
type Varying struct {
	One Text
	By  []Named
	At  source.Pos
}

// Written reports whether the key stood in the file.
func (v Varying) Written() bool { return !v.At.IsZero() }

// A Named is one entry of a map from a name to a scalar.
type Named struct{ Name, Value Text }

// A Face is a part and one of its faces, as in {lock-nut: outer face}.
type Face struct{ Part, Face Text }

// A Count is a part named in a list of a step, with the number of pieces when
// fewer than all are meant: lock-nut, or {screw: 6}.
type Count struct {
	Part Text
	N    Text
}

// A Definition is one equipment file as written: every scalar with its place,
// nothing decided, no defaults filled in. Maps keep the order of the file.
type Definition struct {
	At          source.Pos
	Pack        Text
	Equipment   Equipment
	Job         Order
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
}

// Equipment is the machine on the bench.
type Equipment struct {
	At                                       source.Pos
	Tag, Name, Serial, Maker, Type, Location Text
}

// Order is the job: it may stand in the definition or in a job file.
type Order struct {
	At                                              source.Pos
	Number, Title, Revision, Issued, Scope, Planner Text
}

// A Group is a set of places that a thing repeats over, as the two ends.
type Group struct {
	Name                    Text // as "end"; its place is the key of the group
	Places                  []*Place
	CountedFrom, ViewedFrom Text // for all places of the group
}

// A Place is one of a group, as DE.
type Place struct {
	Key              Text // as "DE"
	Name, ViewedFrom Text
}

// An Option is something that a machine may have or lack, or that is one of
// several builds.
type Option struct {
	Key          Text
	What, Fitted Text
	Builds       []Named // each with the machines that have it
	Chosen       Text    // one of the builds
}

// A Part is anything that is named, moved, counted or measured against.
type Part struct {
	Key    Text
	Name   Varying
	Each   []Text // groups of places that it repeats over
	Of     Text   // the assembly it belongs to
	Count  Varying
	Thread Varying // designation, as M90x2
	Hand   Varying // left or right
	Flats  Text    // of a nut: flats or slots
	Fit    Varying // designation, as 120 H7/r6
	Mass   Varying // quantity, as 36 kg
	Renew  Text    // always, as set, never, if ...
	Set    Text    // matched set mark
	Holds  Text    // what it holds back: spring, pressure
	Aid    Text    // "yes": it is no part of the machine and must be out again at the end
	Moves  Text    // "1 turn gives 0.75 mm" for adjusters without a thread
	Note   Text
	Applies
	Adjusting
}

// An Instrument is what a reading is taken with.
type Instrument struct {
	Key          Text
	Name         Text
	Range, Reads Text // as "0 to 150 mm", "0.02 mm"
	Number       Text
}

// A Dimension is one thing to measure, with what its reading must be.
type Dimension struct {
	Mark             Text
	What             Varying
	Each             []Text
	Kind             Text // chooses the picture: stand-off, gap, diameter, float, runout, ...
	From, To         Face
	Of               Face // the part read, when it is a reading of one part alone
	At               Positions
	With             Varying // state in which it is measured
	ViewedFrom       Varying
	Pushed           Varying // which way the moving part is pushed
	Load             Varying // force or torque that acts meanwhile
	Plane            Varying // plane or line it is read in
	State            Text    // cold or hot; the temperature is written beside it
	OnThe            Text    // diameter or radius
	Warm             Text    // material, when the part may be read warm
	By               Text    // instrument
	Found            Varying // how the as-found box is written
	Left             Varying // what must stand at closing
	Reuse            Varying // how far an old part may go back
	Repair           Varying
	Over, Under, Out Varying // what to do when it is not in
	Source           Varying // document, table, page of the limit
	Says             []Says  // what sources say that differ
	Adjust           Text    // part that sets it
	LostBy           []Text  // steps or parts that destroy it beyond its faces
	WhyCoarse        Text    // why a coarse instrument will do
	Sign             Text    // "yes": the reading can be negative
	Nominal          Varying // size expected, for the width of the box
	Spare            Text    // boxes left free for readings decided on the day
	Critical         Text    // "no": not on the sheet of critical dimensions
	Note             Text
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
	Every, Rows Text
}

// An Axis is one list of positions with a name: {station: [A, B]}.
type Axis struct {
	Name   Text
	Values []Text
}

// A Says is what one of several sources says of a limit that they do not agree on.
type Says struct {
	At     source.Pos
	Source Text
	Text   Text // as the source prints it
	Used   Text // "yes", or the hold at which this one was chosen
	Note   Text
	Applies
}

// A Container is anything numbered that parts are kept in.
type Container struct {
	Mark    Text
	Name    Varying
	Kind    Text // bag, box, tray, crate
	Each    []Text
	Pockets []Text
	Keep    Varying // dry, oiled, wrapped, upright, ...
	Note    Varying
	Applies
}

// A BigPart is a part with a tag of its own and no container.
type BigPart struct {
	Mark    Text
	Part    Text
	Each    []Text
	Keep    Varying
	Support Varying // what it lies on
	Applies
}

// A Spot is a place on the floor where a big part is laid down.
type Spot struct {
	Mark                 Text
	What, Floor, Support Text
}

// A Set is a matched set: parts that only fit each other.
type Set struct {
	Mark     Text
	What     Varying
	Each     []Text
	Why      Text
	JudgedBy []Text // readings of which one that is out renews them all
}

// A Stack is an order of parts from a named side outward.
type Stack struct {
	Mark  Text
	What  Varying
	Each  []Text
	From  Varying // the side that counting begins at
	Order []Text  // one text for all, or one for each piece
	Count Text    // of pieces, where Order is one text
}

// A Joint is a group of fasteners tightened together.
type Joint struct {
	Mark                       Text
	What                       Varying
	Parts                      []Text
	Each                       []Text
	Torque                     Varying
	Stages                     []Text
	Lubricant, Pattern, Source Text
	Says                       []Says // what sources say that differ
	Applies
}

// A Hold is a point where work stops, or may stop, for a named person.
type Hold struct {
	Mark     Text
	Kind     Text // hold or witness
	What     Text // what must have been seen
	Releases Text // role of who releases it
}

// A Caution is a hazard note of the definition.
type Caution struct {
	Key                         Text
	Signal                      Text // danger, warning, caution, notice
	Signs                       []Text
	Hazard, Result, Avoid, Rule Text
}

// An Opening is a hole that dirt or tools can fall into.
type Opening struct {
	Key      Text
	What     Text
	Each     []Text
	Cover    Text
	Enclosed Text // yes: a person can go in
	Applies
}

// A Section is a run of steps under one heading, or an order to put earlier
// sections back (Reverse).
type Section struct {
	At      source.Pos
	Name    Varying
	Each    []Text
	Steps   []*Step
	Reverse []Text
	Applies
}

// A Step is one act at the machine.
type Step struct {
	At      source.Pos
	Key     Text
	After   After
	Do      Varying
	Where   Text // bench, or at the machine
	Each    []Text
	Measure []Text
	Set     []Text
	Remove  []Count
	Fit     []Count
	Into    Into
	From    []Text
	ForNow  []Count // fitted for now, to be taken out again
	TakeOut []Count // taken out again
	LeftOut []Text  // parts that are left out here and fitted later
	Loosen  []Text
	Tighten []Text
	Open    []Text
	Close   []Text
	Empty   []Text // containers that must be empty after this step
	Lift    []Text // lifts that are made
	Hold    Text
	Heat    []Text
	Caution []Text
	// MatchMarks are the parts that get a mark across their joint, Stacks the
	// orders written down before they come apart.
	MatchMarks []Text
	Stacks     []Text
	Judge      []Text // matched sets that go back or are renewed as a whole
	Missed     Varying
	Back       Varying
	// BackCaution are the cautions of the generated put-back row.
	BackCaution []Text
	// NoCaution are the built-in cautions left out, each with the reason.
	NoCaution []Named
	WayRound  []WayRound
	Photo     Text
	Check     Text // who checks as well
	Hours     Text
	People    Text // how many it takes
	OnHook    Text // what a heavy part hangs on, without a lift sheet
	Note      Varying
	Lock      []Text // isolations
	Unlock    []Text
	Permit    []Text  // papers that must be there
	ToolCount Text    // yes: tools are counted
	CountAll  Text    // yes: every container is counted
	Otherwise Varying // what is done instead where the step does not apply
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
	To  Text
	For []Named
}

// A WayRound says which side of a part faces what: {part: seal, mark: lip,
// faces: oil}.
type WayRound struct{ Part, Mark, Faces Text }
