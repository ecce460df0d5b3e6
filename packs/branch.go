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
			st.Table, st.TableAt = ds.AsTable.Value == "yes", ds.AsTable.At
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
		b.checkBound(t, c, d)
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
