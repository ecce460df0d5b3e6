package packs

import (
	"matchmark/packs/job"
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// readBranches reads when each step is done, once all steps and readings are known.
func (b *builder) readBranches() {
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			ds := b.stepDefs[st]
			if ds == nil {
				continue
			}
			st.Later = ds.Later.Value
			st.Table = ds.AsTable.Value == "yes"
			if when := b.chosen.Conditions[ds]; when.Written() {
				st.If = b.condition(when, st)
				st.Otherwise = valueAt(st.Place, ds.Otherwise)
			}
			b.readLoop(st, ds)
		}
	}
}

// condition reads a condition as seen from a step.
func (b *builder) condition(t source.Text, st *job.Step) *job.Asked {
	c, fault := reading.ParseCondition(t.Value)
	if fault != nil {
		b.fault(t, fault)
		return nil
	}
	a := &job.Asked{At: t.At, Cond: c}
	if c.Ask == reading.AskPerson {
		return a
	}
	at := markPos(t, string(c.Mark))
	dims := b.dimsAt(source.Text{Value: string(c.Mark), At: at}, st.Place)
	if len(dims) > 1 {
		b.problems.Add(at, "which-place", string(c.Mark)+" is read at several places", "name one: "+dims[0].Mark)
	}
	if len(dims) != 1 {
		return nil
	}
	a.Dim = dims[0]
	if !b.canBeAsked(t, a) {
		return nil
	}
	return a
}

// canBeAsked sees that the reading of a condition can be looked at in this way.
func (b *builder) canBeAsked(t source.Text, a *job.Asked) bool {
	c, d := a.Cond, a.Dim
	digits := d.Box.Form == reading.Digits || d.Box.Form == reading.Fraction
	switch c.Ask {
	case reading.AskIn, reading.AskOut:
		if !d.Judged() {
			b.problems.Add(t.At, "no-verdict", d.Mark+" has no limit that it could be in or out of", "left: 0.05 to 0.12 mm, at "+d.Base, d.Base+" is over 0.12 mm")
			return false
		}
	case reading.AskOver, reading.AskUnder:
		bound := boundUnit(c)
		switch {
		case len(c.Value.Marks()) > 0:
			b.problems.Add(t.At, "two-readings", "a condition compares one reading with a size: "+t.Value, "make the difference a dimension of its own (formula: D3 - D4), and ask about that")
			return false
		case !digits:
			b.problems.Add(t.At, "not-a-number", d.Mark+" is answered, not measured: it is neither over nor under", d.Base+" is "+answerOf(d))
			return false
		case d.Box.Unit != units.None && bound != units.None && bound != d.Box.Unit:
			b.problems.Add(t.At, "two-units", d.Mark+" is in "+d.Box.Unit.Text()+" and the condition in "+bound.Text(), "write the condition in "+d.Box.Unit.Text())
			return false
		}
	case reading.AskState:
		if known := answersOf(d); !slices.Contains(known, c.State) {
			help := d.Base + " is over 0.50 mm"
			if len(known) > 0 {
				help = "its answers: " + strings.Join(known, ", ")
			}
			b.problems.Add(t.At, "no-answer", source.Quote(c.State)+" is no answer that "+d.Mark+" can have", help)
			return false
		}
	}
	return true
}

// boundUnit is the unit of the size that a reading is over or under.
func boundUnit(c *reading.Condition) units.Unit {
	for _, t := range c.Value.Terms {
		if t.Item.Kind == reading.Size || t.Item.Kind == reading.Rate {
			return t.Item.Size.Unit
		}
	}
	return units.None
}

// answersOf lists the answers that a dimension can have, as they are typed.
func answersOf(d *job.Dim) []string {
	l := d.Left
	if l == nil {
		l = d.Found
	}
	if l == nil {
		return nil
	}
	var out []string
	for _, a := range l.Answers() {
		out = append(out, a.Typed())
	}
	return out
}

func answerOf(d *job.Dim) string { return append(answersOf(d), "…")[0] }

// readLoop reads until when a step is done again.
func (b *builder) readLoop(st *job.Step, ds *def.Step) {
	if !ds.Until.Written() {
		for _, t := range []source.Text{ds.Tries, ds.StillOut} {
			if t.Written() {
				b.problems.Add(t.At, "no-until", "nothing says until when this step is done again", "until: D7 is in limits")
				return
			}
		}
		return
	}
	if !ds.Tries.Written() || !ds.StillOut.Written() {
		b.problems.Add(ds.Until.At, "no-end", "a step that is done again needs an end: how often at most, and what then", "tries: 4", "still-out: tell the engineer")
	}
	st.Until = b.condition(ds.Until, st)
	st.StillOut = valueAt(st.Place, def.Varying{One: ds.StillOut, At: ds.StillOut.At})
	if n, ok := wholeNumber(ds.Tries); ok {
		if n < 2 || n > maxTries {
			b.problems.Add(ds.Tries.At, "no-end", "tries: "+ds.Tries.Value+"; from 2 to 8 have their boxes on paper", "tries: 4")
			n = 2
		}
		st.Tries = n
	}
	if u := st.Until; u != nil && u.Dim != nil && !slices.Contains(st.Measure, u.Dim) && !slices.Contains(st.Set, u.Dim) {
		b.problems.Add(ds.Until.At, "not-read-here", u.Dim.Mark+" ends this step, and the step does not read it", "set: ["+u.Dim.Base+"]")
	}
}

// maxTries is the most tries that have boxes on paper.
const maxTries = 8

// checkBranches sees that what decides is known by then, that no reading is taken
// for granted whose step may be left out, and that what waits stands at the end.
func (b *builder) checkBranches() {
	var last *job.Step // that is not for later
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			if st.Later == "" {
				last = st
			}
			if st.Undoes != nil && st.Undoes.If != nil {
				st.OnlyIf = st.Undoes
			}
		}
	}
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			if a := st.If; a != nil && a.Dim != nil {
				b.checkDecided(st, a)
			}
			if u := st.Until; u != nil && u.Dim != nil {
				u.Left = slices.Contains(st.Set, u.Dim)
			}
			if st.Later != "" && last != nil && st.Index < last.Index && st.Undoes == nil {
				b.problems = append(b.problems, source.Problem{
					Pos: st.At, Severity: source.Error, Code: "not-last",
					Message: "step " + st.Name() + " waits (" + st.Later + "), and " + last.Name() + " comes after it and does not wait",
					Help:    []string{"move it to the end"}, See: []source.Also{{Pos: last.At, What: "this one does not wait"}},
				})
			}
		}
	}
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			b.checkTabled(st)
		}
	}
	for _, d := range b.job.Dims {
		b.checkGranted(d, d.FoundAt, d.FoundWork)
		b.checkGranted(d, d.LeftAt, d.LeftWork)
	}
	b.readDeferred()
}

// checkDecided finds the reading that decides whether a step is done.
func (b *builder) checkDecided(st *job.Step, a *job.Asked) {
	found := a.Dim.FoundAt != nil && a.Dim.FoundAt.Index < st.Index
	left := a.Dim.LeftAt != nil && a.Dim.LeftAt.Index < st.Index
	if !found && !left {
		p := source.Problem{
			Pos: a.At, Severity: source.Error, Code: "taken-later",
			Message: st.Name() + " is decided by " + a.Dim.Mark + ", which is not read before it",
			Help:    []string{"measure " + a.Dim.Base + " at a step above " + st.No},
		}
		if at := a.Dim.FoundAt; at != nil {
			p.See = []source.Also{{Pos: at.At, What: "read here"}}
		}
		b.problems = append(b.problems, p)
	}
	a.Left = left && (!found || a.Dim.LeftAt.Index > a.Dim.FoundAt.Index)
}

// checkGranted sees that no sum takes a reading whose step may be left out, unless
// it is left out in the same case.
func (b *builder) checkGranted(d *job.Dim, st *job.Step, w job.Working) {
	if st == nil {
		return
	}
	uses := func(l *job.Ladder) {
		if l == nil {
			return
		}
		for _, u := range l.Uses {
			for _, in := range u.Dims {
				from := in.FoundAt
				if u.Left {
					from = in.LeftAt
				}
				if from == nil || from.If == nil || st.If != nil && st.If.Cond.Text() == from.If.Cond.Text() && st.If.Dim == from.If.Dim {
					continue
				}
				b.problems = append(b.problems, source.Problem{
					Pos: st.At, Severity: source.Error, Code: "may-be-missing",
					Message: d.Mark + " at " + st.Name() + " needs " + in.Mark + ", which is read only if " + from.If.Cond.Text(),
					Help:    []string{"read it always, or give this step the same if:"},
					See:     []source.Also{{Pos: from.If.At, What: "read only if this is so"}},
				})
			}
		}
	}
	uses(w.Formula)
	for _, l := range w.Limits {
		uses(l.At)
		uses(l.Low)
		uses(l.High)
	}
}

// checkTabled sees that a step printed in a table has only what goes into one, and
// lets its put-back row be printed so where that has no more either.
func (b *builder) checkTabled(st *job.Step) {
	if st.Undoes != nil {
		st.Table = st.Undoes.Table && st.BeyondRow() == ""
		return
	}
	if !st.Table {
		return
	}
	what := st.BeyondRow()
	if len(b.stepDefs[st].Each) == 0 && st.Place.Label == "" {
		what = "does not repeat over places"
	}
	if what != "" && b.steps[st.Key][0] == st { // told once for all places
		b.problems.Add(b.stepDefs[st].AsTable.At, "not-in-a-table", "step "+st.Name()+" "+what+", and a row of a table has no room for that",
			"take as-table: out, or make a step of its own for it")
	}
	st.Table = what == ""
}

// readDeferred lists the work that waits until the machine has run: the steps that
// say so, and the joints that are tightened again.
func (b *builder) readDeferred() {
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			if st.Later != "" && st.Undoes == nil {
				b.job.Deferred = append(b.job.Deferred, &job.Deferred{At: st.At, When: st.Later, Step: st})
			}
		}
	}
	for _, j := range b.job.Joints {
		for _, t := range j.Stages {
			if when, ok := strings.CutPrefix(t, "again after "); ok {
				b.job.Deferred = append(b.job.Deferred, &job.Deferred{At: j.At, When: "after " + when, Joint: j})
			}
		}
	}
}
