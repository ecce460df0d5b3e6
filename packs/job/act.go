package job

import (
	"slices"

	"matchmark/packs/source"
)

// A Verb is one kind of act of a step.
type Verb int

// The verbs, in the order in which a step does them where its author wrote none:
// what is looked at and written down comes before what parts it, and what goes on
// before what is tightened and set.
const (
	DoPermit       Verb = iota // a permit is asked for
	DoHold                     // a hold or witness point is released
	DoLock                     // an isolation is locked
	DoUnlock                   // an isolation is unlocked
	DoUnlockForNow             // an isolation is unlocked for a test
	DoLockAgain                // an isolation is locked again after a test
	DoMark                     // a part gets a mark across its joint
	DoStack                    // the order of a stack is written down
	DoRecall                   // a reading that was only recorded is looked up
	DoMeasure                  // a reading is taken as found
	DoJudge                    // a matched set is judged
	DoSee                      // a state is looked at and found so
	DoCountTools               // tools are counted
	DoCountAll                 // every container is counted
	DoOpen                     // an opening is opened
	DoLoosen                   // a joint or a part is loosened
	DoTakeOut                  // what was fitted for now comes out
	DoHeat                     // a part is heated, or its shaft cooled
	DoLift                     // a load is lifted
	DoRemove                   // pieces come off
	DoFit                      // pieces go back
	DoFitForNow                // pieces go on for a while
	DoLeaveOut                 // a part is left out, to go back later
	DoTighten                  // a joint or a part is tightened
	DoSet                      // a reading is taken as left
	DoClose                    // an opening is closed
	DoHandBack                 // a permit ends
	DoSetDown                  // a load that hung stands again
	DoEmpty                    // a container must be empty
	lastVerb
)

// undone gives the verb that undoes another.
var undone = map[Verb]Verb{
	DoMeasure: DoSet, DoRemove: DoFit, DoLoosen: DoTighten, DoOpen: DoClose, DoHeat: DoHeat, DoLift: DoLift,
}

// Undone lists the verbs that undo others, the last first. What was opened when all was off
// is closed when all is on, before it is tightened: a box to tick stands below its act.
func Undone(verbs []Verb) []Verb {
	var out []Verb
	for _, v := range slices.Backward(verbs) {
		if u, ok := undone[v]; ok {
			out = append(out, u)
		}
	}
	closed, fitted := slices.Index(out, DoClose), slices.Index(out, DoFit)
	if closed >= 0 && closed < fitted {
		out = slices.Insert(slices.Delete(out, closed, closed+1), fitted, DoClose)
	}
	return out
}

// An Act is one thing that a step does. Of what it is done to, one field is filled.
type Act struct {
	At      source.Pos // where the step names it, or the step
	Verb    Verb
	Dim     *Dim
	Move    *Move
	Grip    Fastening // for DoLoosen and DoTighten
	Part    *Part     // for DoMark and DoLeaveOut
	Stack   *Stack
	Set     *Set
	Opening *Opening
	Lock    *Isolation
	Permit  *Permit
	Hold    *Hold
	Lift    *Lift
	Heat    *Heat
	In      *Container // for DoEmpty
}

// Acts lists what a step does, in the order in which its author wrote the verbs.
// A permit comes first wherever it stands, for the step is not begun without it; a
// lift and a heat come before the first move, for they are how it is done, a heat and a
// routine lift where heat: and on-hook: stand, if that is earlier, and a lift of a load that no
// move of the step is of where lift: stands: it is let down before it is bolted; that a load
// stands again and a container is empty is seen at the end, and a hold comes last, for
// it is what the next step waits for.
func (s *Step) Acts() []Act {
	var out []Act
	for _, v := range s.VerbOrder() {
		out = append(out, s.acts(v)...)
	}
	return out
}

// VerbOrder lists all verbs in the order in which the step does them, those that
// it does not use included.
func (s *Step) VerbOrder() []Verb {
	order := append(make([]Verb, 0, lastVerb+3), DoPermit)
	done := [lastVerb]bool{DoPermit: true, DoHold: true, DoEmpty: true, DoHeat: true, DoLift: true, DoSetDown: true}
	add := func(v Verb) {
		if done[v] {
			return
		}
		done[v] = true
		order = append(order, v)
		if v == DoFit && !slices.Contains(s.Verbs, DoTighten) {
			// A put-back row tightens what it fits before it sets anything.
			done[DoTighten] = true
			order = append(order, DoTighten)
		}
	}
	moves := []Verb{DoTakeOut, DoRemove, DoFit, DoFitForNow}
	heated, hooked := false, false
	hook := func() {
		if !hooked {
			hooked = true
			order = append(order, DoLift)
		}
	}
	heat := func() {
		if !heated {
			heated = true
			order = append(order, DoHeat)
		}
	}
	hang := func() {
		heat()
		hook()
	}
	moved := slices.ContainsFunc(s.Verbs, func(v Verb) bool { return slices.Contains(moves, v) })
	for _, v := range s.Verbs {
		if v == DoLift && (len(s.Lifts) == 0 || !moved) {
			hook() // told where it is written: what is read on the hook, or done to a load let down, comes after it
		}
		if v == DoHeat {
			heat() // its limits are told before what is read while the part is hot
		}
		if slices.Contains(moves, v) && !s.aidsBeforeHook(v) {
			hang()
		}
		add(v)
	}
	if !moved {
		hang()
	}
	for v := range lastVerb {
		add(v)
	}
	return append(order, DoSetDown, DoEmpty, DoHold)
}

// aidsBeforeHook reports whether a verb moves aids alone and stands above lift: guide pins are
// in before the load hangs, and no load hangs on them.
func (s *Step) aidsBeforeHook(v Verb) bool {
	moves := s.ForNow
	if v == DoTakeOut {
		moves = s.TakeOut
	}
	return v != DoRemove && v != DoFit && slices.Index(s.Verbs, v) < slices.Index(s.Verbs, DoLift) &&
		!slices.ContainsFunc(moves, func(m *Move) bool { return !m.Part.Aid })
}

// acts lists what a step does under one verb.
func (s *Step) acts(v Verb) []Act {
	switch v {
	case DoMeasure:
		return each(s.Measure, func(d *Dim) Act { return Act{At: d.FoundPos(), Dim: d} }, v)
	case DoSet:
		return each(s.Set, func(d *Dim) Act { return Act{At: d.LeftPos(), Dim: d} }, v)
	case DoRecall:
		return each(s.Recall, func(d *Dim) Act { return Act{At: s.At, Dim: d} }, v)
	case DoRemove:
		return each(s.Remove, moved, v)
	case DoFit:
		return each(s.Fit, moved, v)
	case DoFitForNow:
		return each(s.ForNow, moved, v)
	case DoTakeOut:
		return each(s.TakeOut, moved, v)
	case DoLeaveOut:
		return each(s.LeftOut, func(l LeftOut) Act { return Act{At: l.At, Part: l.Part} }, v)
	case DoLoosen:
		return each(s.Loosen, gripped, v)
	case DoTighten:
		return each(s.Tighten, gripped, v)
	case DoMark:
		return each(s.Marks, func(p *Part) Act { return Act{At: s.At, Part: p} }, v)
	case DoStack:
		return each(s.Stacks, func(k *Stack) Act { return Act{At: s.At, Stack: k} }, v)
	case DoJudge:
		return each(s.Judge, func(m *Set) Act { return Act{At: s.At, Set: m} }, v)
	case DoSee:
		return each(s.Seen, func(x Seen) Act { return Act{At: x.At} }, v)
	case DoEmpty:
		return each(s.Empty, func(e Emptied) Act { return Act{At: e.At, In: e.In} }, v)
	}
	return s.guardActs(v)
}

// guardActs lists what a step does under a verb that keeps people safe.
func (s *Step) guardActs(v Verb) []Act {
	switch v {
	case DoPermit:
		return each(s.Permits, func(p *Permit) Act { return Act{At: s.At, Permit: p} }, v)
	case DoHold:
		if s.Hold != nil {
			return []Act{{At: s.At, Verb: v, Hold: s.Hold}}
		}
	case DoLock:
		return each(s.Lock, func(x *Isolation) Act { return Act{At: s.At, Lock: x} }, v)
	case DoUnlock:
		return each(s.Unlock, func(x *Isolation) Act { return Act{At: s.At, Lock: x} }, v)
	case DoUnlockForNow:
		return each(s.UnlockForNow, func(x *Isolation) Act { return Act{At: s.At, Lock: x} }, v)
	case DoLockAgain:
		return each(s.LockAgain, func(x *Isolation) Act { return Act{At: s.At, Lock: x} }, v)
	case DoHandBack:
		return each(s.HandBack, func(p *Permit) Act { return Act{At: s.At, Permit: p} }, v)
	case DoSetDown:
		return each(s.SetDown, func(l *Lift) Act { return Act{At: s.At, Lift: l} }, v)
	case DoOpen:
		return each(s.Open, func(o *Opening) Act { return Act{At: s.At, Opening: o} }, v)
	case DoClose:
		return each(s.Close, func(o *Opening) Act { return Act{At: s.At, Opening: o} }, v)
	case DoLift:
		return each(s.Lifts, func(l *Lift) Act { return Act{At: s.At, Lift: l} }, v)
	case DoHeat:
		return each(s.Heats, func(h *Heat) Act { return Act{At: s.At, Heat: h} }, v)
	case DoCountTools:
		if s.ToolCount {
			return []Act{{At: s.At, Verb: v}}
		}
	case DoCountAll:
		if s.CountAll {
			return []Act{{At: s.At, Verb: v}}
		}
	}
	return nil
}

func moved(m *Move) Act       { return Act{At: m.At, Move: m} }
func gripped(f Fastening) Act { return Act{At: f.At, Grip: f} }

// each makes an act of each thing of a list.
func each[T any](list []T, of func(T) Act, v Verb) []Act {
	out := make([]Act, len(list))
	for i, x := range list {
		out[i] = of(x)
		out[i].Verb = v
	}
	return out
}
