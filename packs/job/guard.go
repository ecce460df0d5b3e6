package job

import (
	"slices"

	"matchmark/packs/source"
)

// A Hold is a point where work stops (a hold) or may stop (a witness point) for
// a named person.
type Hold struct {
	At       source.Pos
	Mark     string
	Witness  bool
	What     string
	Releases string
	Step     *Step // where it stands
	Again    *Step // the put-back row at which it is released once more, nil if none
}

// A Caution is a hazard note, with the steps before which it stands.
type Caution struct {
	At                          source.Pos
	Key                         string
	Signal                      string // danger, warning, caution, notice
	Signs                       []string
	Hazard, Result, Avoid, Rule string
	Steps                       []*Step
	Short                       string   // what stands before a step in place of Avoid, if it is long
	Builtin                     bool     // not of the definition
	FullIn                      *Caution // the note whose text in full holds for this one too, or nil
}

// A Spared is a built-in hazard note that an author has left out of a step, with
// the reason given for it.
type Spared struct {
	At     source.Pos
	Note   *Caution
	Step   *Step
	Reason string
}

// An Isolation is one point where the machine is cut off from its energy, with
// the steps that lock it and take the lock off for good, and all times that it is
// locked.
type Isolation struct {
	At                           source.Pos
	Key                          string
	No                           int // its line on the sheet, from 1
	Point, Energy, State, Proved string
	LockedAt, UnlockedAt         *Step
	Periods                      []LockPeriod // in the order of work
}

// A LockPeriod is one time that an isolation is locked. A step is nil where the
// definition does not name it.
type LockPeriod struct {
	Locked, Unlocked *Step
	Again            bool // locked again after a test
	ForNow           bool // unlocked for a test
}

// A Permit is a paper of the site, with the steps that are not begun without it.
type Permit struct {
	At         source.Pos
	Key        string
	What, Note string
	For        []string // what it allows, by the author's word: of the kinds below, or none of them
	Steps      []*Step
}

// What a permit may allow besides plain work.
const (
	ForEntry   = "entry"
	ForHotWork = "hot work"
	ForLifting = "lifting"
)

// Allows reports whether the author says that a permit allows a kind of work, and whether he
// says anything: if not, its words tell.
func (p *Permit) Allows(kind string) (allows, said bool) {
	return slices.Contains(p.For, kind), len(p.For) > 0
}

// An Opening is one hole that dirt or tools can fall into, at one place.
type Opening struct {
	At                 source.Pos
	Key                string
	Place              Place
	What, Cover        string
	Enclosed           bool // a person can go in
	OpenedAt, ClosedAt *Step
	ShutAt             *Step // where what covers it comes to stand, if it hangs when ClosedAt is done
}

// CoveredBy reports whether a step puts on what came off where an opening was opened.
func (o *Opening) CoveredBy(st *Step) bool {
	return o.OpenedAt != nil && slices.ContainsFunc(st.Fit, func(m *Move) bool { return AnyOf(o.OpenedAt.Remove, m.Part) })
}

// Mark is the key of an opening with its place.
func (o *Opening) Mark() string { return o.Place.Mark(o.Key) }

// HotWork is the key of the built-in note for flame and sparks; after a step that
// carries it a fire watch stays.
const HotWork = "hot-work"

// ConfinedSpace is the key of the built-in note for a space that a person goes into; somebody
// stands outside as long as one is in it.
const ConfinedSpace = "confined-space"
