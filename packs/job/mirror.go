package job

import (
	"slices"

	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A Mirror is what the generated put-back row of a step has of its own. The guards
// of the step stand at the row as well: cautions and permits of the mirror come on
// top, its hold and its check stand in place of those of the step.
type Mirror struct {
	Missed   source.Text // easily missed in putting back, At zero where nothing is written
	Seen     []Seen      // looked at when the row is done, or before it is begun
	First    bool        // these are ticked before anything goes back
	Cautions []*Caution
	Permits  []*Permit
	Hold     *Hold
	Check    string
	Hours    *units.Number // planned for it, nil if none are written
	People   int           // how many it takes, 0 if not said
	Without  []Without     // what the author leaves out
	At       source.Pos    // of the first of these keys
}

// A Guard is a kind of thing that guards a step.
type Guard int

// The guards of a step that stand at its put-back row too.
const (
	GuardCaution Guard = iota
	GuardPermit
	GuardHold
	GuardCheck
)

// A Without is a kind of guard that a put-back row has not, and why.
type Without struct {
	At     source.Pos
	Guard  Guard
	Reason string
}

// Leaves reports whether the author leaves a kind of guard out.
func (m *Mirror) Leaves(g Guard) bool {
	for _, w := range m.Without {
		if w.Guard == g {
			return true
		}
	}
	return false
}

// HasGuard reports whether a step has a guard of a kind.
func (s *Step) HasGuard(g Guard) bool {
	switch g {
	case GuardCaution:
		return len(s.Cautions) > 0
	case GuardPermit:
		return len(s.Permits) > 0
	case GuardHold:
		return s.Hold != nil
	}
	return s.Check != ""
}

// Spares lists the cautions of the step that a put-back row undoes and that it has not
// itself: those of the definition if there are any, for the built-in ones stand by what a
// row does.
func (s *Step) Spares() []*Caution {
	var own, builtin []*Caution
	for _, note := range s.Undoes.Cautions {
		switch {
		case slices.Contains(s.Cautions, note):
		case note.Builtin:
			builtin = append(builtin, note)
		default:
			own = append(own, note)
		}
	}
	if len(own) == 0 {
		return builtin
	}
	return own
}

// SparePermits lists the permits of the step that a put-back row undoes and that it does not
// ask for itself.
func (s *Step) SparePermits() []*Permit {
	return slices.DeleteFunc(slices.Clone(s.Undoes.Permits), func(p *Permit) bool { return slices.Contains(s.Permits, p) })
}

// MissedBack is what is easily missed in putting back what a step takes apart: what
// the author says for that, else what is easily missed at the step.
func (s *Step) MissedBack() string {
	if s.Mirror.Missed.At.IsZero() {
		return s.Missed
	}
	return s.Mirror.Missed.Value
}
