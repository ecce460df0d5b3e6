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
// The face may differ by place or build: {hub: {A: jaw 1, B: jaw 2}}.
type Face struct {
	Part source.Text
	Face Varying
}

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
	Starts, HoursADay                               source.Text
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
