package step

import (
	"cmp"
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
	"matchmark/templates/jointsheet"
)

// together is one step at several places below one head: what is said and read alike is
// printed once, the readings of like places stand in one block, and what is moved, ticked
// and signed stands in a row of each place under its own number.
type together struct {
	*block.Composer
	steps []*job.Step
	// common are the parts of the small line that are true at all places.
	common []string
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
	out := t.head()
	for i := range out {
		out[i].KeepNext = true
	}
	head := len(out) - 1
	out = append(out, t.acts()...)
	out[head].MayPart = Height(out) > Together
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
		// A page may well begin with the row of a place.
		out[i+1].Group = max(out[i+1].Group, out[i].Group)
	}
	return append(out, layout.Piece{Block: c.Rule(layout.Inner).Tagged(steps[0].At), Gap: 1.4, Closes: true, Group: len(steps) - 1})
}

// NumberOfAll is the number that stands for like steps together, as 3.1–3.4.
func NumberOfAll(steps []*job.Step) string {
	return steps[0].No + "–" + steps[len(steps)-1].No
}

// AllContinued says on the page that like steps go on to which ones they are.
func AllContinued(c *block.Composer, steps []*job.Step, line Running) *layout.Block {
	all := *steps[0]
	all.No, all.Place = NumberOfAll(steps), all.Section.Place
	return ContinuedLine(c, &all, line)
}

// noteParts are the parts of the small line of a step, and from where its place is seen
// and counted if its section does not tell.
func noteParts(c *block.Composer, st *job.Step) []string {
	var out []string
	if st.Place.CountedFrom != st.Section.Place.CountedFrom {
		out = append(out, c.W.Common.CountedFrom.With(st.Place.CountedFrom))
	}
	if st.Place.ViewedFrom != st.Section.Place.ViewedFrom {
		out = append(out, c.W.Common.SeenFrom.With(st.Place.ViewedFrom))
	}
	if text := note(c, st); text != "" {
		out = append(out, strings.Split(text, " · ")...)
	}
	return out
}

// head is what stands above the rows: cautions, the numbers, what is done.
func (t *together) head() []layout.Piece {
	out := cautionsOf(t.Composer, t.steps)
	first := t.steps[0]
	runs := []layout.Run{layout.T(layout.StepNo, NumberOfAll(t.steps)), layout.T(layout.Body, "   ")}
	runs = append(runs, common(t.Composer, first)...)
	if t.sameText() {
		runs = append(runs, layout.T(layout.Body, Text(t.Composer, first)))
		runs = append(runs, second(t.Composer, first)...)
	} else {
		runs = append(runs, layout.T(layout.Strong, t.names(t.steps)))
	}
	if first.Missed != "" && alike(t.steps, func(st *job.Step) string { return st.Missed }) {
		runs = append(runs, layout.T(layout.Body, "  "), missed(t.Composer, first))
	}
	if len(t.common) > 0 {
		runs = append(runs, layout.T(layout.Sub, "   "+strings.Join(t.common, " · ")))
	}
	para := t.Para(t.Span, runs, layout.ParaOpts{Ref: first.At})
	return append(out, layout.Piece{Block: para.Pad(0, 0, 0.5, 0), Gap: cmp.Or(gapAfter(out), 1.5)})
}

func gapAfter(ps []layout.Piece) layout.Mm {
	if len(ps) == 0 {
		return 2
	}
	return 0
}

// cautionsOf are the hazard notes of several steps, each once.
func cautionsOf(c *block.Composer, steps []*job.Step) []layout.Piece {
	var out []layout.Piece
	var told []string
	for _, st := range steps {
		for _, n := range st.Cautions {
			if slices.Contains(told, n.Key) {
				continue
			}
			told = append(told, n.Key)
			note := c.Caution(n)
			if stoodBefore(steps[0], n) {
				note = c.CautionAgain(n)
			}
			out = append(out, layout.Piece{Block: note.Tagged(st.At), KeepNext: true})
		}
	}
	if len(out) > 0 {
		out[0].Gap = cautionGap
	}
	return out
}

func missed(c *block.Composer, st *job.Step) layout.Run {
	return layout.Run{Text: c.W.Step.EasilyMissed.With(st.Missed), Style: layout.Strong, Deco: layout.Inverse}
}

func (t *together) sameText() bool {
	return alike(t.steps, func(st *job.Step) string { return Text(t.Composer, st) })
}

// names are the places of steps, in one line.
func (t *together) names(steps []*job.Step) string {
	var out []string
	for _, st := range steps {
		out = append(out, placeOf(st))
	}
	return strings.Join(out, " · ")
}

// placeOf names the place of a step as its row does.
func placeOf(st *job.Step) string {
	return cmp.Or(ownPlace(st), st.Place.Label)
}

// signBoxes are the boxes in the row of a place: who did it when, and how long it took.
func (t *together) signBoxes(st *job.Step) layout.Block {
	c := t.Composer
	if st.Hours == nil {
		return signColumn(c, st, false)
	}
	return signColumn(c, st, false, c.WideBox(layout.RoleWords, block.NumberWidth-2, 1, c.W.Step.Hours, st.At))
}

// placeLines are the place of a step and what is said of it alone.
func (t *together) placeLines(st *job.Step, width layout.Mm) []layout.Block {
	c := t.Composer
	runs := []layout.Run{layout.T(layout.Strong, placeOf(st))}
	if !t.sameText() {
		runs = append(runs, layout.T(layout.Body, "  "+Text(c, st)))
		runs = append(runs, second(c, st)...)
	}
	if st.Missed != "" && !alike(t.steps, func(st *job.Step) string { return st.Missed }) {
		runs = append(runs, layout.T(layout.Body, "  "), missed(c, st))
	}
	var own []string
	for _, x := range noteParts(c, st) {
		if !slices.Contains(t.common, x) {
			own = append(own, x)
		}
	}
	if len(own) > 0 {
		runs = append(runs, layout.T(layout.Sub, "   "+strings.Join(own, " · ")))
	}
	lines := []layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: st.At})}
	if st.Note != "" {
		lines = append(lines, c.Para(width, remark(c, st), layout.ParaOpts{Ref: st.At}))
	}
	lines = append(lines, lastLines(c, st, width)...)
	lines = append(lines, hangingLines(c, st, width)...)
	for _, x := range st.Without {
		lines = append(lines, c.Para(width, []layout.Run{layout.T(layout.Sub, without(c, st, x))}, layout.ParaOpts{Ref: x.At}))
	}
	return lines
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
	for _, v := range first.VerbOrder() {
		if notedBefore(v, first) && !back {
			lines, noted = withNoted(lines, noted), nil
		}
		if kind, dims := t.readings(v); len(dims) > 0 {
			flush()
			for _, b := range dimension.Blocks(t.Composer, dims, kind, first.At, false) {
				out = append(out, layout.Piece{Block: b, Gap: 1, KeepNext: kind == dimension.Found && lost(dims)})
			}
			continue
		}
		if v == job.DoTighten {
			var how func(layout.Mm) []layout.Block
			if t.sameJoints() {
				how = t.howTight
			}
			pics, all := jointsheet.Orders(t.Composer, first, t.Span-block.NumberWidth, how)
			above = append(above, pics...)
			if how != nil {
				if !all {
					above = append(above, how(t.Span-block.NumberWidth)...)
				}
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

// notedBefore reports whether what a step notes in taking apart is written down before
// one of its verbs.
func notedBefore(v job.Verb, st *job.Step) bool {
	return v == job.DoRemove || v == job.DoMark && len(st.Marks) > 0 || v == job.DoStack && len(st.Stacks) > 0
}

// lost reports whether one of the readings is taken away for good by its own step.
func lost(ds []*job.Dim) bool {
	return slices.ContainsFunc(ds, func(d *job.Dim) bool { return d.LastChance != nil && d.LastChance == d.FoundAt })
}

// noted are the blocks of what each step notes beside readings.
func (t *together) noted() [][]layout.Block {
	var out [][]layout.Block
	for _, st := range t.steps {
		out = append(out, noted(t.Composer, st))
	}
	return out
}

// withNoted puts what is noted behind the lines of each place.
func withNoted(lines [][]run, noted [][]layout.Block) [][]run {
	for i, bs := range noted {
		if len(bs) > 0 {
			lines[i] = append(lines[i], run{blocks: bs})
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

// signedRows are the rows of the places with the boxes of who did it: the number, the
// place, what is said of it alone, and what is done there first.
func (t *together) signedRows(lines [][]run) []layout.Piece {
	var out []layout.Piece
	for i, st := range t.steps {
		number := t.Line(block.NumberWidth, []layout.Run{layout.T(layout.StepNo, st.No)}, layout.ParaOpts{Ref: st.At}).Heading(3)
		boxes := t.signBoxes(st)
		width := t.Span - block.NumberWidth - boxes.W - textGap
		text := t.placeLines(st, width)
		n := inRow(lines[i])
		beside := layout.Above(1, append(text, runLines(lines[i][:n], width)...)...)
		full := layout.Above(1, text...)
		below := t.piecesOf(t.Composer, lines[i][:n])
		if max(full.H, boxes.H)+Height(below) < max(beside.H, boxes.H) {
			beside = full
		} else {
			below = nil
		}
		beside.W = width
		row := layout.Beside(0, number, beside, layout.Space(textGap, 1), boxes)
		out = append(out, layout.Piece{Block: row.Anchored("step " + st.No), Gap: layout.GapY, Group: i})
		for _, p := range append(below, t.piecesOf(t.Composer, lines[i][n:])...) {
			out[len(out)-1].KeepNext = true
			p.Group = i
			out = append(out, p)
		}
	}
	return out
}

// piecesOf are the pieces of runs, in the column of the boxes, low lines beside each other.
func (t *together) piecesOf(c *block.Composer, rs []run) []layout.Piece {
	var out []layout.Piece
	lines := map[int]bool{}
	for _, r := range rs {
		for _, p := range runPieces(c, r) {
			lines[len(out)] = r.lines != nil || r.ticks
			out = append(out, p)
		}
	}
	return inOneRow(c, out, lines)
}

// label is the number of a step with its place below it, in the column of the numbers.
func (t *together) label(st *job.Step) layout.Block {
	opts := layout.ParaOpts{Ref: st.At}
	place := t.Para(block.NumberWidth-1, []layout.Run{layout.T(layout.Sub, ownLabel(st))}, opts)
	return layout.Above(0, t.Line(block.NumberWidth, []layout.Run{layout.T(layout.StepNo, st.No)}, opts).Heading(3), place)
}

// ownLabel is the label of a step's place, without that of its section.
func ownLabel(st *job.Step) string {
	return strings.TrimPrefix(st.Place.Label, st.Section.Place.Label+"-")
}

// placeRows are the rows of the places with what is done there later, each with its number;
// short ones two beside each other.
func (t *together) placeRows(lines [][]run) []layout.Piece {
	units := func(c *block.Composer) (out []layout.Block, high layout.Mm, wide bool) {
		for i, rs := range lines {
			if len(rs) == 0 {
				continue
			}
			var blocks []layout.Block
			for _, p := range t.piecesOf(c, rs) {
				if len(blocks) > 0 {
					p.Block = p.Block.Pad(p.Gap, 0, 0, 0)
				}
				blocks = append(blocks, p.Block)
			}
			unit := layout.Overlay(t.label(t.steps[i]), layout.Above(0, blocks...))
			wide = wide || unit.W > c.Span+0.01 || len(unit.Misfits) > 0
			unit.W = c.Span
			out, high = append(out, unit), high+unit.H+1
		}
		return out, high, wide
	}
	rows, high, _ := units(t.Composer)
	half := *t.Composer
	half.Span = (t.Span - textGap) / 2
	if two, h, wide := units(&half); !wide && h/2 < high {
		rows = nil
		for i := 0; i < len(two); i += 2 {
			rows = append(rows, layout.Beside(textGap, two[i:min(i+2, len(two))]...))
		}
	}
	var out []layout.Piece
	for _, b := range rows {
		out = append(out, layout.Piece{Block: b, Gap: 1.5})
	}
	return out
}
