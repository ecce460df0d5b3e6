package job

import (
	"slices"
	"strconv"

	"matchmark/packs/heat"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A Section is a run of steps under one heading, at one place.
type Section struct {
	At    source.Pos
	No    string // "3", or "R2" in putting back
	Title string // as written, for all its places
	Name  string // at this place
	Place Place
	Back  bool // printed on the reassembly sheet
	Steps []*Step

	HoursSoFar, CrewSoFar *units.Number // until it is done: elapsed, and times people; nil if none of its steps says

	Unreversed bool       // told to be put back by nothing
	Reverse    []Reversal // the sections that are put back here, in the order written
}

// A Reversal is a section named in a reverse: line, at all its places.
type Reversal struct {
	At       source.Pos
	Name     string
	Sections []*Section
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

	Measure      []*Dim // boxes as found
	Set          []*Dim // boxes as left
	Remove       []*Move
	Fit          []*Move
	ForNow       []*Move // put on for a while
	TakeOut      []*Move // what was put on for a while comes out again
	LeftOut      []LeftOut
	Loosen       []Fastening
	Tighten      []Fastening
	Bench        bool // done on the bench, not at the machine
	People       int  // how many it takes, 0 if not said
	Cautions     []*Caution
	Said         []*Caution // of these, those that the author names or the words call for
	Heats        []*Heat    // what is drawn off or put on hot here
	Align        []*Alignment
	Hold         *Hold
	Missed       string
	Note         string     // a remark below what is done
	Marks        []*Part    // get a mark across their joint
	Meet         []*Part    // go on here, or have met what they join, by the marks that a step above has made
	Stacks       []*Stack   // whose order is written down
	Laid         []*Stack   // put together here, in the order written down above
	Judge        []*Set     // all of which go back or are renewed
	WayRound     []WayRound // which side of a part faces what
	Check        string     // role that checks as well
	Photo        bool
	OnHook       string // what a heavy part hangs on where no lift sheet is made
	After        []Dep
	AfterAt      source.Pos // of the after: line, zero where none is written
	AfterNothing bool       // the author says that nothing has to come before it
	Verbs        []Verb     // in the order written
	Binds        []Bind     // why it comes after earlier steps, the nearest first
	Free         *Free      // where it may be moved, nil if it may not
	Recall       []*Dim     // only recorded by the step that it undoes
	Empty        []Emptied  // must be empty when the step is done

	Lifts        []*Lift
	SetDown      []*Lift     // whose load stands again when the step is done
	UnderLoad    source.Text // what is put under a load that hangs before a hand goes in
	Seen         []Seen      // what is looked at and found so
	Hangs        []*Lift     // that earlier steps have left hanging, and that it does not make
	GoesOn       []*Lift     // that it makes, with a load that hangs already
	FromUnder    []string    // what was put under those loads and comes out again first
	LeftBehind   []string    // what was put under them and comes out again when they stand elsewhere
	LeftHanging  []*Lift     // that it makes and leaves hanging
	Shut         []*Opening  // seen clean by an earlier step, covered by a load that comes to stand here
	Lock, Unlock []*Isolation
	UnlockForNow []*Isolation // for a test
	LockAgain    []*Isolation
	// What stands open and which guards are off while it is unlocked for a test.
	OpenMeanwhile []*Opening
	OffMeanwhile  []*Part
	Permits       []*Permit
	HandBack      []*Permit // that end here
	Open, Close   []*Opening
	ToolCount     bool // tools are counted
	CountAll      bool // every container is counted on the list of counts

	// Planned for the step, and until it is done: elapsed, and times people; nil if not said.
	Hours, HoursSoFar, CrewSoFar *units.Number

	From      []Fetch     // where the author says that parts come from
	PutBack   source.Text // what its put-back row says
	Mirror    Mirror      // of its put-back row
	Without   []Without   // of a put-back row: guards of its step that it has not
	NoCaution []NoCaution // built-in notes that the author leaves out

	Branching
}

// A Fetch is one place that a step says its parts come from.
type Fetch struct {
	Text source.Text
	From Where
}

// A NoCaution is a built-in note that a step leaves out, with the reason.
type NoCaution struct {
	At      source.Pos
	Caution *Caution
	Reason  string
}

// A Seen is a state that is looked at and found so before the work goes on.
type Seen struct {
	At   source.Pos
	What string
}

// A LeftOut is a part that a step leaves out, to be put back later.
type LeftOut struct {
	At   source.Pos
	Part *Part
}

// An Emptied is a container that must be empty when a step is done.
type Emptied struct {
	At source.Pos
	In *Container
}

// A Dep is a step that must come before, with its reason.
type Dep struct {
	At     source.Pos
	Step   *Step
	Reason string
}

// LoadAbove reports whether a load hangs on the hook while a step is done: one that earlier
// steps have left hanging or with which it goes on, or its own, on a hook for which no lift sheet is made.
func (s *Step) LoadAbove() bool { return len(s.Hangs)+len(s.GoesOn) > 0 || s.OnHook != "" }

// BeyondRow names what a step has that does not go into a row of a table, empty if
// there is nothing: a row has moves, readings of one number, and initials.
func (s *Step) BeyondRow() string {
	switch {
	case s.If != nil, s.OnlyIf != nil, s.Until != nil, s.Later != "":
		return "is done only if, again or later"
	case s.Hold != nil:
		return "has a hold"
	case len(s.Lifts)+len(s.SetDown)+len(s.Heats)+len(s.Align) > 0, s.UnderLoad.Value != "":
		return "lifts, heats or aligns"
	case s.Locks(), len(s.Permits)+len(s.HandBack)+len(s.Open)+len(s.Close) > 0, s.ToolCount, s.CountAll:
		return "locks, opens or closes something"
	case len(s.ForNow)+len(s.TakeOut)+len(s.LeftOut)+len(s.Loosen)+len(s.Tighten) > 0:
		return "loosens, tightens or fits something for now"
	case len(s.Marks)+len(s.Stacks)+len(s.Laid)+len(s.Meet)+len(s.WayRound)+len(s.Seen) > 0 || s.Photo || s.Check != "" || s.Hours != nil:
		return "writes down more than readings"
	case len(s.Judge) > 0:
		return "decides about a matched set"
	case s.OnHook != "":
		return "says what a load hangs on"
	case len(s.Measure) > maxTabled:
		return "reads " + strconv.Itoa(len(s.Measure)) + " dimensions as found where a row takes " + strconv.Itoa(maxTabled)
	case len(s.Set) > 1:
		return "sets " + strconv.Itoa(len(s.Set)) + " dimensions where a row takes 1"
	}
	for _, d := range append(append([]*Dim{}, s.Measure...), s.Set...) {
		if d.Positions.Boxes() > 1 || d.Box.Form != reading.Digits || d.ByHand() {
			return "reads " + d.Mark + ", which is more than one number"
		}
	}
	return ""
}

// HeatsWith reports whether a step heats something in one of the ways given, any
// way if none is.
func (st *Step) HeatsWith(ways ...heat.Means) bool {
	for _, h := range st.Heats {
		if len(ways) == 0 || slices.Contains(ways, h.way(st)) {
			return true
		}
	}
	return false
}

// Chills reports whether a step puts a part on a cooled shaft.
func (st *Step) Chills() bool {
	return slices.ContainsFunc(st.Heats, func(h *Heat) bool { return h.PutOnAt == st && h.PutOn != nil && h.PutOn.Coolant != "" })
}

// Makes books a lift at a step.
func (s *Step) Makes(l *Lift) {
	s.Lifts = append(s.Lifts, l)
	l.Steps = append(l.Steps, s)
}

// Idle reports whether a step moves, loosens and tightens nothing.
func (s *Step) Idle() bool {
	return len(s.Remove)+len(s.Fit)+len(s.ForNow)+len(s.TakeOut)+len(s.Loosen)+len(s.Tighten) == 0
}

// Readies reports whether a step moves, loosens and measures nothing: as the first
// of a job it makes the machine safe.
func (s *Step) Readies() bool {
	return len(s.Remove)+len(s.Fit)+len(s.Loosen)+len(s.Measure)+len(s.Set)+len(s.ForNow) == 0
}

// Locks reports whether a step locks or unlocks an isolation: no other step may
// pass it.
func (s *Step) Locks() bool {
	return len(s.Lock)+len(s.Unlock)+len(s.UnlockForNow)+len(s.LockAgain) > 0
}

// Name is how messages speak of a step.
func (s *Step) Name() string {
	if s.Key == "" {
		return s.No
	}
	return s.No + " (" + s.Place.Mark(s.Key) + ")"
}
