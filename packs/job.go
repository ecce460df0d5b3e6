package packs

import (
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// A Job is one definition decided: repeated over its places, numbered, ordered,
// computed. Where a problem stands it has a hole (a nil, an empty text) and can
// still be walked.
type Job struct {
	Files     source.Files // all inputs, for showing the lines of problems
	Equipment Equipment
	Order     Order
	Site      Site
	Choices   []*Choice    // what this machine has of each option
	Hours     units.Number // planned for all steps
	Digest    string       // first 8 hex digits of the SHA-256 of all inputs and the format number

	Places     []Place // that things repeat over, each of its group alone
	Parts      []*Part
	Dims       []*Dim
	Containers []*Container
	Spots      []*Spot
	Sets       []*Set
	Joints     []*Joint
	Stacks     []*Stack
	Holds      []*Hold
	Heats      []*Heat
	Cautions   []*Caution
	Spared     []*Spared // hazard notes that the author leaves out
	Isolations []*Isolation
	Permits    []*Permit
	Openings   []*Opening
	Supplies   Supplies
	Deferred   []*Deferred // work that waits until the machine has run
	Lifts      []*Lift
	Sections   []*Section // in the order of work, strip-down and put-back
	Tags       []*Tag     // in the order of their numbers, n of N
}

// Equipment is the machine that the pack is for.
type Equipment struct {
	At                                       source.Pos // of the tag
	Tag, Name, Serial, Maker, Type, Location string
}

// Order is the job that the pack is printed for. Issued is the date printed.
type Order struct {
	At                                              source.Pos // of the number
	Number, Title, Revision, Issued, Scope, Planner string
}

// A Place is one of the places that a thing repeats over, as the drive end; the
// zero Place stands for a thing that does not repeat.
type Place struct {
	Label      string   // as printed after the slash: DE, 3-inlet
	Keys       []string // the place of each group, as DE
	Groups     []string // the group of each key, as end
	Name       string   // "drive end"
	ViewedFrom string

	CountedFrom string // where the counting of its group starts, empty if not said
}

// A Part is one part at one place.
type Part struct {
	At     source.Pos
	Key    string // as written, without its place
	Place  Place
	Name   string
	Count  int // pieces at this place, 1 or more
	Thread *thread.Thread
	Left   bool // left-hand thread
	Flats  int  // flats or slots of a nut, 0 if not said
	Mass   *units.Quantity
	Renew  string // as written: "always", "as set", "never", or a condition; empty if reused
	Holds  string // what it holds back: spring, pressure or weight
	Aid    bool   // no part of the machine, as a guide stud: must be out again at the end
	Set    *Set
	Of     *Part    // the assembly that it comes off with
	Joints []*Joint // the joints that it is a fastener of

	Off  []*Move // how its pieces come off, in the order of work; none if they never do
	Back []*Move // how they go back

	Marked   *Step      // where it gets a mark across its joint, nil if it gets none
	WayRound []WayRound // which sides of it face what

	Movement   *Movement  // what turning it moves, for an adjuster without a thread
	LeaveAlone string     // why it is not turned
	Shims      *ShimStock // what there is to make up a thickness from
}

// A Where is where a removed part is kept: in a container, on a lay-down spot, on
// the bench, or scrapped.
type Where struct {
	Container *Container
	Pocket    string
	Spot      *Spot
	Bench     bool
	Scrap     bool
}

// A Move is a number of pieces of a part taken off or put back at a step, for
// good or for now.
type Move struct {
	At   source.Pos
	Step *Step
	Part *Part
	N    int
	To   Where // for a part taken off
	From Where // for a part put back; where the old one lies, if a new one goes on
	New  bool  // a new part goes on and the old one is scrapped
	Undo *Move // for a part put back, how these pieces came off
}

// A Face is one face of a part.
type Face struct {
	Part *Part
	Name string
}

// A Dim is one dimension at one place.
type Dim struct {
	At               source.Pos
	Mark             string // D7/DE
	Base             string // D7
	Place            Place
	What             string
	Kind             string
	From, To         Face
	Of               Face
	Positions        Positions
	State            State
	ViewedFrom       string
	By               *Instrument
	Found            *reading.Limit   // how the as-found box is written, if said
	Left             *reading.Limit   // what must stand at closing, nil if only found
	FoundBy, LeftBy  []*reading.Limit // one a name of Positions.Names where they differ; Left is then the first of them
	Reuse, Repair    *reading.Limit   // how far an old part may go back, and be mended
	Box              reading.Box      // the write-in box of one reading
	Warm             *Warm            // correction to 20 °C, nil if none is wanted
	Spare            int              // boxes left free
	Over, Under, Out string
	Source           string
	Says             []Saying // sources that differ
	Note             string
	Critical         bool    // stands on the sheet of critical dimensions
	LastChance       *Step   // the step that destroys it, nil if none does
	lostAt           []*Step // all steps that destroy it
	hangsOn          []*Part // the parts that must be in their place
	oneSided         bool    // said to be set only, and not measured as found

	Merged []*Dim // of a merged one: the dimensions it stands for, in the order of its boxes
	In     *Dim   // the merged one that prints it, nil if it prints itself
	Sheet  bool   // its boxes stand on a sheet of their own
	// CountedFrom is where the counting of the places of a merged one starts.
	CountedFrom string

	zones map[*reading.Limit]string

	Adjuster *Part           // the part that sets it
	PerTurn  *units.Quantity // what one turn of the adjuster moves it
	PerFlat  *units.Quantity // what one flat of the adjuster moves it
	BackOff  *BackOff        // how far the adjuster is turned back after it touches
	Shims    *Shimmed        // the shims that it is the thickness of

	FoundAt *Step // where it is measured before parting
	LeftAt  *Step // where it is set in putting back

	Worked
}

// Judged reports whether a reading of the dimension is in or out of a limit for
// closing, and not only recorded or near something.
func (d *Dim) Judged() bool {
	if d.Left == nil {
		return false
	}
	switch d.Left.Kind {
	case reading.MustBe, reading.NoneAllowed:
		return true
	case reading.Measured:
		for _, t := range d.Left.Tests {
			if t.Rule != reading.About {
				return true
			}
		}
	}
	return false
}

// An Instrument is what a reading is taken with.
type Instrument struct {
	At                source.Pos
	Key, Name, Number string
	Low, High, Reads  *units.Quantity // range and smallest reading
}

// A Container is one numbered thing that parts are kept in, at one place.
type Container struct {
	At      source.Pos
	Mark    string // C2/DE
	Base    string
	Place   Place
	Name    string
	Kind    string
	Keep    string
	Pockets []string
	In      []*Move // what goes in, in the order of work
	Out     []*Move // what comes out
}

// A Spot is a place on the floor for big parts.
type Spot struct {
	At                   source.Pos
	Mark                 string
	What, Floor, Support string
}

// A Set is one matched set at one place.
type Set struct {
	At      source.Pos
	Mark    string // S1/DE
	Base    string
	Place   Place
	What    string
	Why     string
	Members []*Part

	JudgedBy []*Dim // of which one that is out renews all pieces
	JudgedAt *Step  // where that is decided
}

// A Hold is a point where work stops (a hold) or may stop (a witness point) for
// a named person.
type Hold struct {
	At       source.Pos
	Mark     string
	Witness  bool
	What     string
	Releases string
	Step     *Step // where it stands
}

// A Caution is a hazard note, with the steps before which it stands.
type Caution struct {
	At                          source.Pos
	Key                         string
	Signal                      string // danger, warning, caution, notice
	Signs                       []string
	Hazard, Result, Avoid, Rule string
	Steps                       []*Step
	Short                       string // what stands before a step in place of Avoid, if it is long
	Builtin                     bool   // not of the definition
}

// A Section is a run of steps under one heading, at one place.
type Section struct {
	At    source.Pos
	No    string // "3", or "R2" in putting back
	Name  string
	Place Place
	Back  bool // printed on the reassembly sheet
	Steps []*Step
}

// A Step is one act at the machine, at one place.
type Step struct {
	At      source.Pos
	No      string // "3.2", or "R2.4" in putting back
	Key     string
	Place   Place
	Section *Section
	Index   int // its place in the order of work, from 0
	Do      string
	Back    bool  // a row of the reassembly sheet
	Undoes  *Step // for a generated put-back row, the step that it reverses

	Measure  []*Dim // boxes as found
	Set      []*Dim // boxes as left
	Remove   []*Move
	Fit      []*Move
	ForNow   []*Move // put on for a while
	TakeOut  []*Move // what was put on for a while comes out again
	LeftOut  []*Part // left out here, put back later
	Loosen   []Fastening
	Tighten  []Fastening
	Bench    bool // done on the bench, not at the machine
	People   int  // how many it takes, 0 if not said
	Cautions []*Caution
	Heats    []*Heat // what is drawn off or put on hot here
	Hold     *Hold
	Missed   string
	Marks    []*Part    // get a mark across their joint
	Stacks   []*Stack   // whose order is written down
	Judge    []*Set     // all of which go back or are renewed
	WayRound []WayRound // which side of a part faces what
	Check    string     // role that checks as well
	Photo    bool
	OnHook   string // what a heavy part hangs on where no lift sheet is made
	After    []Dep
	Binds    []Bind       // why it comes after earlier steps, the nearest first
	Free     *Free        // where it may be moved, nil if it may not
	Recall   []*Dim       // only recorded by the step that it undoes
	Empty    []*Container // must be empty when the step is done

	Lifts        []*Lift
	Lock, Unlock []*Isolation
	Permits      []*Permit
	Open, Close  []*Opening
	ToolCount    bool // tools are counted
	CountAll     bool // every container is counted on the list of counts

	Hours, HoursSoFar *units.Number // planned for the step, and until it is done; nil if not said

	Branching
}

// A Dep is a step that must come before, with its reason.
type Dep struct {
	At     source.Pos
	Step   *Step
	Reason string
}

// A TagKind is what a tag is hung or stuck on.
type TagKind int

const (
	// HangTag is tied on with wire and has a stub to tear off.
	HangTag TagKind = iota
	// BoxLabel is stuck on a box.
	BoxLabel
	// BagLabel is stuck on a bag.
	BagLabel
)

// A Tag is one label: for a container, a pocket of one, a big part, or scrap.
type Tag struct {
	At        source.Pos
	Mark      string // C2/DE
	Base      string // C2
	Detail    string // the place, and the pocket if it is one: DE, DE/springs
	PlaceName string // drive end
	Kind      TagKind
	N, Of     int    // n of N
	Code      string // text of the QR code and key of the register
	Container *Container
	Pocket    string
	Part      *Part           // for a big part
	Scrap     bool            // the bag for parts that do not go back
	Mass      *units.Quantity // of a big part, or of what is in a heavy container
	// MassAtLeast says that the mass of some parts in it is not known.
	MassAtLeast bool
	Name        string
	Keep        string
	Support     string
	In          []*Move
	Out         []*Move
	Sets        []*Set
	Spare       bool // a blank for what is found on the day: X1
}

// Tagged counts the things that have a tag, spares left out: the N of n of N.
func (j *Job) Tagged() int {
	n := 0
	for _, t := range j.Tags {
		if !t.Spare {
			n++
		}
	}
	return n
}
