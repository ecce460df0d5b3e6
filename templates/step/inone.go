package step

import (
	"cmp"
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
)

// together is one step at several places below one head: what is said and read alike is
// printed once, the readings of like places stand in one block, and what is moved, ticked
// and signed stands in a row of each place under its own number.
type together struct {
	*block.Composer
	steps []*job.Step
	// common are the parts of the small line that are true at all places.
	common []string
	half   bool // in half the width
	room   bool // the head has room for the box for readings not taken
	reason bool // it has that box
}

// InOne sets one step at several places below one head. The groups of its pieces are
// counted from 0; there are as many as places.
func InOne(c *block.Composer, steps []*job.Step) []layout.Piece {
	t := &together{Composer: c, steps: steps}
	for _, x := range noteParts(c, steps[0]) {
		if !slices.ContainsFunc(steps, func(st *job.Step) bool { return !slices.Contains(noteParts(c, st), x) }) {
			t.common = append(t.common, x)
		}
	}
	t.room = t.reasonHasRoom()
	t.reason = t.room && t.asksReason()
	out := t.head()
	for i := range out {
		out[i].KeepNext = true
	}
	head := len(out) - 1
	out = append(out, t.acts()...)
	out[head].MayPart = Height(out) > Together && t.sameText() // else the head says nothing of what is done
	var empty []job.Emptied
	for _, st := range steps {
		empty = append(empty, unticked(st)...)
	}
	if len(empty) > 0 {
		out = append(out, layout.Piece{Block: emptyLine(c, empty), Gap: 1})
	}
	apart(out)
	out[len(out)-1].KeepNext = true
	for i := range out[1:] {
		// A page may begin with the row of a place, though what is done stands above all rows.
		out[i+1].Group = max(out[i+1].Group, out[i].Group)
		out[i+1].Led = out[i+1].Group > out[i].Group
	}
	gap := closingGap(out[len(out)-1].Block, 1)
	return append(out, layout.Piece{Block: c.Rule(layout.Inner).Tagged(steps[0].At), Gap: gap, Closes: true, Group: len(steps) - 1})
}

// NumberOfAll is the number that stands for like steps together, as 3.1–3.4.
func NumberOfAll(steps []*job.Step) string {
	return steps[0].No + "–" + steps[len(steps)-1].No
}

// AllContinued says on the page that like steps go on to which ones they are.
func AllContinued(c *block.Composer, steps []*job.Step, line Running) *layout.Block {
	all := *steps[0]
	all.No, all.Place = NumberOfAll(steps), all.Section.Place
	b := c.Fixed(continuedKey{steps[0], line, true}, func() layout.Block { return continuedLine(c, &all, line) })
	return &b
}

// acts are what the steps do, in the order in which their author wrote the verbs: readings
// of all places in their blocks, and between them what each place moves and ticks.
func (t *together) acts() []layout.Piece {
	var out []layout.Piece
	lines := make([][]run, len(t.steps))
	var above []layout.Block // before the rows: how the bolts are numbered
	signed := false
	flush := func() {
		if !slices.ContainsFunc(lines, func(rs []run) bool { return len(rs) > 0 }) {
			return
		}
		for _, b := range above {
			out = append(out, layout.Piece{Block: b.At(block.NumberWidth, 0), Gap: 1, KeepNext: true})
		}
		if signed {
			out = append(out, t.placeRows(lines)...)
		} else {
			out = append(out, t.signedRows(lines)...)
		}
		lines, above, signed = make([][]run, len(t.steps)), nil, true
	}
	noted := t.noted()
	first := t.steps[0]
	back := first.Undoes != nil || first.Back
	for _, v := range withClosing(first, first.VerbOrder()) {
		if notedBefore(v, first) && !back {
			lines, noted = withNoted(lines, noted), nil
		}
		if kind, dims := t.readings(v); len(dims) > 0 {
			flush()
			out = append(out, t.readingPieces(kind, dims)...)
			continue
		}
		if v == job.DoTighten {
			orders, told := t.jointOrders()
			above = append(above, orders...)
			if told {
				for i, st := range t.steps {
					lines[i] = append(lines[i], t.ticksOf(st))
				}
				continue
			}
		}
		for i, st := range t.steps {
			if r := linesOf(t.Composer, st, v); r.lines != nil {
				lines[i] = append(lines[i], r)
			}
		}
		if laysAt(v, first) {
			lines = withNoted(lines, t.laid())
		}
		if back && v == job.DoFit && len(first.Fit) > 0 {
			lines, noted = withNoted(lines, noted), nil
		}
	}
	lines = withNoted(lines, noted)
	flush()
	if !signed {
		out = append(t.signedRows(lines), out...)
	}
	return out
}

// readingPieces are the blocks of readings of all places. A page may end between boxes and the
// reason that one of them is empty, rather than that there is a page more; never between a
// reading and what takes it away for good.
func (t *together) readingPieces(kind dimension.Kind, dims []*job.Dim) []layout.Piece {
	blocks, row := dimension.Blocks(t.Composer, dims, kind, t.steps[0].At, t.room)
	out := runPieces(t.Composer, run{blocks: blocks, reason: row})
	gone := kind == dimension.Found && lost(dims)
	for i := range out {
		out[i].MayPart = out[i].MayPart && !gone
		out[i].KeepNext = out[i].KeepNext || gone
		if gone {
			out[i].Block.SetPartings(nil)
		}
	}
	return out
}

// notedBefore reports whether what a step notes in taking apart is written down before
// one of its verbs.
func notedBefore(v job.Verb, st *job.Step) bool {
	return v == job.DoRemove || v == job.DoMark && len(st.Marks) > 0 || v == job.DoStack && len(st.Stacks) > 0
}

// lost reports whether one of the readings is taken away for good by its own step.
func lost(ds []*job.Dim) bool {
	return slices.ContainsFunc(ds, func(d *job.Dim) bool { return d.LastChance != nil && d.LastChance == d.FoundAt })
}

// noted are the runs of what each step notes beside readings.
func (t *together) noted() []run {
	var out []run
	for _, st := range t.steps {
		of := func(c *block.Composer) []layout.Block { return noted(c, st) }
		out = append(out, run{blocks: of(t.Composer), noted: of})
	}
	return out
}

// laid are the runs of the marks that meet and the stacks that each step puts together among
// steps that take apart.
func (t *together) laid() []run {
	var out []run
	for _, st := range t.steps {
		of := func(c *block.Composer) []layout.Block { return laid(c, st) }
		out = append(out, run{blocks: of(t.Composer), ticks: true, noted: of})
	}
	return out
}

// withNoted puts what is noted behind the lines of each place.
func withNoted(lines [][]run, noted []run) [][]run {
	for i, r := range noted {
		if len(r.blocks) > 0 {
			lines[i] = append(lines[i], r)
		}
	}
	return lines
}

// readings are the dimensions that the steps read by one verb, like ones after each other.
func (t *together) readings(v job.Verb) (dimension.Kind, []*job.Dim) {
	list := map[job.Verb]func(*job.Step) []*job.Dim{
		job.DoMeasure: func(st *job.Step) []*job.Dim { return st.Measure },
		job.DoSet:     func(st *job.Step) []*job.Dim { return st.Set },
		job.DoRecall:  func(st *job.Step) []*job.Dim { return st.Recall },
	}[v]
	if list == nil {
		return 0, nil
	}
	var bases []string
	var all []*job.Dim
	for _, st := range t.steps {
		for _, d := range list(st) {
			if !slices.Contains(bases, d.Base) {
				bases = append(bases, d.Base)
			}
			all = append(all, d)
		}
	}
	slices.SortStableFunc(all, func(a, b *job.Dim) int {
		return cmp.Compare(slices.Index(bases, a.Base), slices.Index(bases, b.Base))
	})
	return map[job.Verb]dimension.Kind{job.DoMeasure: dimension.Found, job.DoSet: dimension.Left, job.DoRecall: dimension.Recall}[v], all
}
