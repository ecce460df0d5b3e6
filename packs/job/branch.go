package job

import (
	"matchmark/packs/reading"
	"matchmark/packs/source"
)

// Branching says when a step is done: only if, again until, all places in one
// table, or later.
type Branching struct {
	If        *Asked     // nil for a step that is always done
	Otherwise string     // what is done instead, empty for nothing
	Until     *Asked     // what ends a step that is done over and over
	Tries     int        // how often at most
	EachTry   []TryAct   // what every try after the first does
	StillOut  string     // what is done when the last try is no good either
	TableAt   source.Pos // of as-table:
	Table     bool       // printed in one table with the same step at other places
	Alike     bool       // printed below one head with the same step at other places
	Later     string     // when it is done, for a step that waits: after 48 h of running
	OnlyIf    *Step      // for a put-back row: done only where this step was done
}

// A TryAct is one thing that a further try does: a reading, a joint that is tightened, or
// words to tick. One of the three is filled.
type TryAct struct {
	At    source.Pos
	Dim   *Dim
	Joint *Joint
	Words string
}

// An Asked is a question, or a reading that is looked at.
type Asked struct {
	At    source.Pos
	Wrote source.Text
	Cond  *reading.Condition
	Dim   *Dim // of a reading
	Left  bool // the reading left, not that found
}

// A Deferred is work that waits until the machine has run.
type Deferred struct {
	At    source.Pos
	When  string // after 48 h of running
	Step  *Step  // the step that waits, nil for a joint
	Joint *Joint // the joint that is tightened again
}

// maxTabled is how many readings go into one row.
const maxTabled = 3

// NotInTable says why a step cannot be a row of a table, empty if it can.
func (s *Step) NotInTable() string {
	if s.Place.Label == "" {
		return "does not repeat over places"
	}
	return s.BeyondRow()
}

// NotAlike says why a step cannot be printed below one head with the same step at other
// places, empty if it can.
func (s *Step) NotAlike() string {
	switch {
	case s.Place.Label == "":
		return "does not repeat over places"
	case s.If != nil, s.OnlyIf != nil, s.Until != nil, s.Later != "":
		return "is done only if, again or later"
	case s.Hold != nil:
		return "has a hold"
	case len(s.Lifts)+len(s.SetDown)+len(s.Align) > 0, s.UnderLoad.Value != "", s.OnHook != "":
		return "lifts or aligns"
	case s.Locks(), len(s.Permits)+len(s.HandBack) > 0, s.ToolCount, s.CountAll:
		return "locks something or counts all"
	case len(s.Judge) > 0:
		return "decides about a matched set"
	}
	return ""
}
