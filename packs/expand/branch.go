package expand

import (
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/phrase"
	"matchmark/packs/reading"
	"matchmark/packs/source"
)

// readBranches reads when each step is done, once all steps and readings are known.
func (b *builder) readBranches() {
	for _, s := range b.Job.Sections {
		for _, st := range s.Steps {
			ds := b.StepDefs[st]
			if ds == nil {
				continue
			}
			st.Later = ds.Later.Value
			st.Table, st.TableAt = ds.AsTable.Value == "yes", ds.AsTable.At
			if when := b.Chosen.Conditions[ds]; when.Written() {
				st.If = b.condition(when, st)
				st.Otherwise = names.ValueAt(st.Place, ds.Otherwise)
			}
			b.readLoop(st, ds)
		}
	}
}

// condition reads a condition as seen from a step.
func (b *builder) condition(t source.Text, st *job.Step) *job.Asked {
	c, fault := reading.ParseCondition(t.Value)
	if fault != nil {
		b.Fault(t, fault)
		return nil
	}
	a := &job.Asked{At: t.At, Wrote: t, Cond: c}
	if c.Ask == reading.AskPerson {
		return a
	}
	at := t.PlaceOf(string(c.Mark))
	dims := b.DimsAt(source.Text{Value: string(c.Mark), At: at}, st.Place)
	if len(dims) > 1 {
		b.Problems.Add(at, "which-place", string(c.Mark)+" is read at several places", "name one: "+dims[0].Mark)
	}
	if len(dims) != 1 {
		return nil
	}
	a.Dim = dims[0]
	return a
}

// readLoop reads until when a step is done again.
func (b *builder) readLoop(st *job.Step, ds *def.Step) {
	if !ds.Until.Written() {
		for _, t := range append([]source.Text{ds.Tries, ds.StillOut}, ds.EachTry...) {
			if t.Written() {
				b.Problems.Add(t.At, "no-until", "nothing says until when this step is done again", "for example until: D7 is in limits")
				return
			}
		}
		return
	}
	if !ds.Tries.Written() || !ds.StillOut.Written() {
		b.Problems.Add(ds.Until.At, "no-end", "a step that is done again needs an end: how often at most, and what then", "for example tries: 4", "for example still-out: tell the engineer")
	}
	st.Until = b.condition(ds.Until, st)
	st.StillOut = names.ValueAt(st.Place, def.Varying{One: ds.StillOut, At: ds.StillOut.At})
	if n, ok := names.WholeNumber(ds.Tries); ok {
		if n < 2 || n > maxTries {
			b.Problems.Add(ds.Tries.At, "no-end", "tries: "+ds.Tries.Value+"; from 2 to 8 have their boxes on paper", "for example tries: 4")
			n = 2
		}
		st.Tries = n
	}
	b.readTry(st, ds.EachTry)
	if u := st.Until; u != nil && u.Dim != nil && !slices.Contains(st.Measure, u.Dim) && !slices.Contains(st.Set, u.Dim) {
		b.Problems.Add(ds.Until.At, "not-read-here", u.Dim.Mark+" ends this step, and the step does not read it", "set: ["+u.Dim.Base+"]")
	}
}

// markOfTry is what stands for a reading or a joint in a list of what a try does.
var markOfTry = phrase.Of(`^[DJ][1-9][0-9]*(/.+)?$`)

// readTry reads what every try after the first does.
func (b *builder) readTry(st *job.Step, list []source.Text) {
	for _, t := range list {
		switch {
		case !markOfTry.MatchString(t.Value):
			st.EachTry = append(st.EachTry, job.TryAct{At: t.At, Words: t.Value})
		case t.Value[0] == 'D':
			for _, d := range b.DimsAt(t, st.Place) {
				if b.mayBeTried(st, d, t) {
					st.EachTry = append(st.EachTry, job.TryAct{At: t.At, Dim: d})
				}
			}
		default:
			for _, f := range b.fastenings([]source.Text{t}, st) {
				st.EachTry = append(st.EachTry, job.TryAct{At: t.At, Joint: f.Joint})
			}
		}
	}
}

// mayBeTried sees that a reading can stand in the list of what a try does: not the one that ends
// the step, which has its box in every try, and none that is worked out, which has it wherever a
// try reads what it is worked out from.
func (b *builder) mayBeTried(st *job.Step, d *job.Dim, t source.Text) bool {
	switch {
	case st.Until != nil && st.Until.Dim == d:
		b.Problems.Add(t.At, "not-in-a-try", d.Mark+" ends this step: every try has its box without being told, and would have two", "take "+t.Value+" out of each-try:")
	case d.Wrote.Formula.Written():
		b.Problems.Add(t.At, "not-in-a-try", d.Mark+" is worked out by formula:, and has its box in every try that reads what it is worked out from", "name the readings that it is worked out from",
			"take "+t.Value+" out of each-try:, and keep it in set: or measure: of the step")
	default:
		return true
	}
	return false
}

// maxTries is the most tries that have boxes on paper.
const maxTries = 8
