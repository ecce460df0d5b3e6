package expand

import (
	"slices"
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// maxStack is the most pieces of one stack: a step stands on one sheet, with a box for each
// piece, and with 90 of one kind it was 38 mm too high for A4.
const maxStack = 60

// readStacks repeats every stack over its places.
func (b *builder) readStacks() {
	b.Stacks = map[string][]*job.Stack{}
	for _, ds := range b.Def.Stacks {
		places := b.Over(ds.Each)
		b.CheckVarying(ds.What, "what is stacked", places)
		b.CheckVarying(ds.From, "the side that counting begins at", places)
		order, pieces := b.stackOrder(ds)
		for _, pl := range places {
			s := &job.Stack{Mark: pl.Mark(ds.Mark.Value), Base: ds.Mark.Value, Place: pl, What: names.ValueAt(pl, ds.What), From: names.ValueAt(pl, ds.From), Order: order, Pieces: pieces}
			b.Stacks[s.Base] = append(b.Stacks[s.Base], s)
			b.Job.Stacks = append(b.Job.Stacks, s)
		}
	}
}

// stackOrder reads the order: one text with a count, or one text for each piece.
func (b *builder) stackOrder(ds *def.Stack) (order string, pieces []string) {
	list := names.Texts(ds.Order)
	n := len(list)
	if ds.Count.Written() {
		if c, ok := names.WholeNumber(ds.Count); ok {
			n = c
		}
	}
	switch {
	case len(list) == 0:
		return "", nil
	case n > maxStack:
		at := ds.Count.At
		if !ds.Count.Written() {
			at = ds.Order[0].At
		}
		b.Problems.Add(at, "count", strconv.Itoa(n)+" pieces: a stack has at most "+strconv.Itoa(maxStack)+", a box for each on the sheet of its step",
			"make two stacks of it, each with a step of its own that takes its pieces off",
			"or, where a pattern repeats, write the order of one, and in what: how many there are",
			"or, if all lie alike, take it out: count: at the part is enough")
		return "", nil
	case len(list) == 1 && !ds.Count.Written():
		b.Problems.Add(ds.Order[0].At, "no-count", "the order of "+ds.Mark.Value+" is one text, and it is not said how many pieces there are",
			"for example count: 6", "or one text for each piece: order: [ring, ring, lantern]")
		return "", nil
	case len(list) > 1 && len(list) != n:
		b.Problems.Add(ds.Count.At, "count", ds.Mark.Value+" has "+ds.Count.Value+" pieces, but its order names "+strconv.Itoa(len(list)), "put one of them right")
		return "", nil
	case len(list) == 1:
		return list[0], make([]string, n)
	}
	return "", list
}

// resolveNoted ties each step to what is noted down at it beside readings: match
// marks, orders of stacks, which way round a part goes.
func (b *builder) resolveNoted() {
	for _, s := range b.Job.Sections {
		for _, st := range s.Steps {
			ds := b.StepDefs[st]
			for _, m := range ds.MatchMarks {
				for _, p := range b.PartsAt(m.Part, st.Place) {
					b.noteMark(st, p)
					b.noteAcross(st, p, m)
				}
			}
			for _, t := range ds.Stacks {
				b.noteStack(st, t)
			}
			for _, w := range ds.WayRound {
				for _, p := range b.PartsAt(w.Part, st.Place) {
					round := job.WayRound{Part: p, Mark: w.Mark.Value, Faces: w.Faces.Value}
					st.WayRound = append(st.WayRound, round)
					p.WayRound = append(p.WayRound, round)
				}
			}
		}
	}
	b.acrossInPairs()
	for _, ds := range b.Def.Stacks {
		for _, s := range b.Stacks[ds.Mark.Value] {
			if s.Step == nil {
				b.Problems.Add(ds.Mark.At, "not-noted", "no step writes down the order of "+s.Mark, "stacks: ["+s.Base+"] at the step before it comes apart")
				break
			}
		}
	}
}

// noteStack ties a step to the stacks it names; each is written down once, and ticked off
// where a later step puts it together.
func (b *builder) noteStack(st *job.Step, t source.Text) {
	key, label, named := names.Cut(t.Value)
	all, ok := b.Stacks[key]
	if !ok {
		b.Unknown(t, "stack", names.KnownTo(b.Index, b.Stacks), "stacks")
		return
	}
	for _, k := range names.Pick(b.Index, t, "stack", all, func(k *job.Stack) job.Place { return k.Place }, st.Place, label, named) {
		if k.Step == nil {
			k.Step = st
			st.Stacks = append(st.Stacks, k)
		} else if b.laidBy(st, k) {
			st.Laid = append(st.Laid, k)
		} else {
			b.stackTwice(st, k, t)
		}
	}
}

// laidBy reports whether a step fits a piece of a stack: a part that is called as one of its
// pieces, that comes off where its order is written down, or, where nothing does, below that.
func (b *builder) laidBy(st *job.Step, k *job.Stack) bool {
	return slices.ContainsFunc(st.Fit, func(m *job.Move) bool {
		p := m.Part
		switch {
		case !p.Place.Agrees(k.Place):
			return false
		case slices.ContainsFunc(k.Pieces, p.IsCalled):
			return true
		case len(k.Step.Remove) > 0:
			return slices.ContainsFunc(k.Step.Remove, func(x *job.Move) bool { return x.Part == p })
		}
		return slices.ContainsFunc(p.Off, func(x *job.Move) bool { return b.above(k.Step, x.Step) })
	})
}

// above reports whether one step stands above another.
func (b *builder) above(upper, lower *job.Step) bool {
	seen := false
	for _, s := range b.Job.Sections {
		for _, st := range s.Steps {
			if st == lower {
				return seen
			}
			seen = seen || st == upper
		}
	}
	return false
}

// stackTwice tells of a stack whose order is written down already, at a step that does not put
// it together.
func (b *builder) stackTwice(st *job.Step, k *job.Stack, t source.Text) {
	message, help := "the order of "+k.Mark+" is written down by two steps", []string{"take it out of one of them"}
	if len(st.Fit) > 0 {
		message = "the order of " + k.Mark + " is written down above, and none of its pieces is fitted here"
		help = []string{"take it out here, and name it at the step that fits its pieces"}
	}
	b.Problems = append(b.Problems, source.Problem{
		Pos: t.At, Severity: source.Error, Code: "twice", Message: message, Help: help,
		See: []source.Also{{Pos: k.Step.At, What: "the first of them"}},
	})
}
