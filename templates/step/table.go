package step

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
)

// A table is one step at many places: a row a place, with its number, where its parts
// go or come from, the readings and who did it. What is alike at all places is told
// once, above the rows; what differs stands in the row of its place.
type table struct {
	*block.Composer
	steps    []*job.Step
	sameText bool
	columns  []column
	grid     block.Grid
}

// A column is the readings of one mark, found or set, a box a row.
type column struct {
	back  bool
	dims  []*job.Dim
	limit string             // of all rows, empty where they differ or there is none
	told  []dimension.Told   // of all rows
	own   [][]dimension.Told // of each row
	copy  bool               // the value found is copied beside it
}

// Table sets one step at many places as a table.
func Table(c *block.Composer, steps []*job.Step) []layout.Piece {
	t := &table{Composer: c, steps: steps, sameText: alike(steps, func(st *job.Step) string { return Text(c, st) })}
	for i := range steps[0].Measure {
		t.columns = append(t.columns, t.column(false, func(st *job.Step) *job.Dim { return st.Measure[i] }))
	}
	for i := range steps[0].Set {
		t.columns = append(t.columns, t.column(true, func(st *job.Step) *job.Dim { return st.Set[i] }))
	}
	t.setGrid()
	out := t.head()
	var rows []layout.Row
	for i := range steps {
		rows = append(rows, t.row(i))
	}
	out = append(out, t.grid.Table.Pieces(rows)...)
	for i := len(out) - len(rows) + 1; i < len(out); i++ {
		out[i].Led = true
	}
	var empty []job.Emptied // what must be empty after all rows stands in one line
	for _, st := range steps {
		empty = append(empty, st.Empty...)
	}
	if len(empty) > 0 {
		out[len(out)-1].KeepNext = true
		out = append(out, layout.Piece{Block: emptyLine(c, empty), Gap: 1})
	}
	return out
}

// alike reports whether all steps give the same text.
func alike(steps []*job.Step, of func(*job.Step) string) bool {
	return !slices.ContainsFunc(steps, func(st *job.Step) bool { return of(st) != of(steps[0]) })
}

// column gathers the readings of one column, and parts what is told of all of them
// from what is told of some.
func (t *table) column(back bool, of func(*job.Step) *job.Dim) column {
	k := column{back: back}
	var all [][]dimension.Told
	same := true
	for _, st := range t.steps {
		d := of(st)
		k.dims = append(k.dims, d)
		k.copy = k.copy || back && d.FoundAt != nil
		all = append(all, dimension.TableLines(t.Composer, d, back))
		same = same && dimension.TableLimit(t.Composer, d, back) == dimension.TableLimit(t.Composer, k.dims[0], back)
	}
	if same {
		k.limit = dimension.TableLimit(t.Composer, k.dims[0], back)
	}
	everywhere := func(x dimension.Told) bool {
		return !slices.ContainsFunc(all, func(list []dimension.Told) bool { return !says(list, x.Key) })
	}
	for i, list := range all {
		k.own = append(k.own, nil)
		for _, x := range list {
			switch {
			case !everywhere(x):
				k.own[i] = append(k.own[i], x)
			case i == 0:
				k.told = append(k.told, x)
			}
		}
	}
	return k
}

func says(list []dimension.Told, key string) bool {
	return slices.ContainsFunc(list, func(x dimension.Told) bool { return x.Key == key })
}

// setGrid makes the columns. A limit that all rows have stands in the head, which is
// repeated on each page.
func (t *table) setGrid() {
	w, first := t.W, t.steps[0]
	cols := []block.Column{block.Col(w.Common.Number, 15), block.Col(w.Step.Place, 0)}
	if len(first.Fit) > 0 {
		cols = append(cols, block.Col(w.Common.CountOut, t.Composer.Box(layout.RoleCount, "", first.At).W+3))
	}
	for _, k := range t.columns {
		d, caption := k.dims[0], w.Common.AsFound
		var width, copied layout.Mm
		for i, x := range k.dims {
			width = max(width, t.boxes(k, i, 0).W)
			copied = max(copied, dimension.Box(t.Composer, x, dimension.Side{}, "", true).W)
		}
		if k.copy {
			cols = append(cols, block.Col(d.Base+" "+caption, copied+3))
		}
		if k.back {
			caption = w.Common.AsLeft
		}
		head := d.Base + " " + caption
		if k.limit != "" {
			head += w.Common.Colon + k.limit
		}
		cols = append(cols, block.Col(head, width+3))
	}
	t.grid = t.Grid(append(cols, block.Col(w.Common.Initials, 21))...)
}

// head is what stands above the rows: cautions, the numbers, what is done and what is
// told of the readings.
func (t *table) head() []layout.Piece {
	var out []layout.Piece
	done := map[*job.Caution]bool{}
	for _, st := range t.steps {
		for _, n := range st.Cautions {
			if !done[n] {
				done[n] = true
				out = append(out, layout.Piece{Block: t.Caution(n), Gap: 2, KeepNext: true})
			}
		}
	}
	first := t.steps[0]
	head := t.Words(layout.StepNo, first.No+"–"+t.steps[len(t.steps)-1].No)
	if t.sameText {
		runs := append(common(t.Composer, first), layout.T(layout.Body, Text(t.Composer, first)))
		runs = append(runs, second(t.Composer, first)...)
		head = layout.Above(0.5, head, t.Para(t.Span-block.NumberWidth, runs, layout.ParaOpts{Ref: first.At}))
	}
	out = append(out, wordsOf(first, layout.Piece{Block: head.Pad(0, 0, 1, 0), Gap: 2, KeepNext: true}))
	for _, k := range t.columns {
		if len(k.told) == 0 {
			continue
		}
		base := t.Words(layout.Strong, k.dims[0].Base)
		var lines []layout.Block
		for _, x := range k.told {
			lines = append(lines, x.Set(t.Span-block.NumberWidth))
		}
		about := layout.Beside(0, base.Fill(block.NumberWidth, base.H, 0, 0), layout.Above(0.5, lines...))
		out = append(out, layout.Piece{Block: about.Pad(0, 0, 1, 0), KeepNext: true})
	}
	return out
}

// row is the step at one place.
func (t *table) row(i int) layout.Row {
	c, g, st := t.Composer, t.grid, t.steps[i]
	where := layout.Above(0.3, t.place(i)...)
	for _, d := range st.Recall {
		where = where.Anchored("left " + d.Mark)
	}
	cells := []layout.Block{g.Text(0, layout.StepNo, st.No, st.At).Heading(3).Anchored("step " + st.No), where}
	if len(t.steps[0].Fit) > 0 {
		var counts []layout.Block
		for range groupByPlace(st.Fit, func(m *job.Move) job.Where { return m.From }) {
			counts = append(counts, c.Box(layout.RoleCount, "", st.At))
		}
		cells = append(cells, layout.Above(layout.GapY, counts...))
	}
	column := len(cells)
	for _, k := range t.columns {
		d, anchor := k.dims[i], "found "
		if k.copy {
			from := c.W.Common.CopyFound.With(c.Page("found " + d.Mark))
			cells = append(cells, layout.Above(0.3, g.Text(column, layout.Caption, from, d.At), dimension.Box(c, d, dimension.Side{Copied: true, When: job.AsFound}, "", true)))
			column++
		}
		if k.back {
			anchor = "left "
		}
		cells = append(cells, dimension.Anchored(t.boxes(k, i, g.Table.Room(column)), d, anchor))
		column++
	}
	return g.Row(st.At, append(cells, c.Box(layout.RoleInitials, "", st.At))...)
}

// boxes are the box of one reading in a row, its limit above it where it differs by
// place, its verdict below. Without a width the limit is left out.
func (t *table) boxes(k column, i int, width layout.Mm) layout.Block {
	d := k.dims[i]
	when := job.AsFound
	if k.back {
		when = job.AsLeft
	}
	out := []layout.Block{dimension.Box(t.Composer, d, dimension.Side{When: when}, "", true)}
	if limit := dimension.TableLimit(t.Composer, d, k.back); limit != "" && k.limit == "" && width > 0 {
		out = append([]layout.Block{t.Para(width, []layout.Run{layout.T(layout.SubBold, limit)}, layout.ParaOpts{Ref: d.At})}, out...)
	}
	return layout.Above(1.5, append(out, block.FlowRow(dimension.TableVerdict(t.Composer, d, k.back), tickRoom))...)
}

// tickRoom is the widest that the boxes of a verdict stand beside each other in a row.
const tickRoom layout.Mm = 42

// common is what stands before the words of a step in a table: on the bench, how many
// people. The place stands in the row.
func common(c *block.Composer, st *job.Step) []layout.Run {
	s := *st
	s.Place = s.Section.Place
	return state(c, &s)
}

// place are the lines of a row: its place, what moves, and all that the other places
// have otherwise.
func (t *table) place(i int) []layout.Block {
	c, g, st := t.Composer, t.grid, t.steps[i]
	room := g.Table.Room(1)
	out := []layout.Block{g.Text(1, layout.Strong, placeOf(st), st.At)}
	if !t.sameText && (st.Do != "" || len(st.Fit)+len(st.Set) == 0) { // else the row shows what it fits and sets
		runs := append(common(c, st), layout.T(layout.Body, Text(c, st)))
		runs = append(runs, second(c, st)...)
		out = append(out, c.Para(room, runs, layout.ParaOpts{Ref: st.At}))
	}
	out = append(out, goneLines(c, st, room)...)
	out = append(out, hangingLines(c, st, room)...)
	out = append(out, without(c, st, room)...)
	out = append(out, removalRun(c, st).lines(room)...)
	for _, m := range groupByPlace(st.Fit, func(m *job.Move) job.Where { return m.From }) {
		out = append(out, moveLine(c, fetchVerb(c, m), m, room, false))
		out = append(out, g.Text(1, layout.SubBold, strings.Join(renewals(c, m.moves), " · "), m.at))
	}
	for _, d := range st.Recall {
		out = append(out, g.Text(1, layout.Body, c.W.Dimension.CompareWith.With(d.Mark+"  "+d.What, c.Page("found "+d.Mark)), d.At))
	}
	if st.Undoes != nil || st.Back {
		out = append(out, notedBack(c, st, room)...)
	}
	for _, text := range laidTexts(c, st) {
		out = append(out, notedTick(c, st, room, text))
	}
	if st.Note != "" {
		out = append(out, g.Text(1, layout.Body, block.Together(st.Note), st.At))
	}
	if st.Missed != "" {
		out = append(out, g.Text(1, layout.SubBold, missed(c, st).Text, st.At))
	}
	for _, k := range t.columns {
		if text := dimension.LastText(c, k.dims[i]); text != "" {
			out = append(out, g.Text(1, layout.Sub, text, st.At))
		}
		for n, x := range k.own[i] {
			if n == 0 && len(t.columns) > 1 {
				out = append(out, g.Text(1, layout.SubBold, k.dims[i].Base, st.At))
			}
			out = append(out, x.Set(room))
		}
	}
	return append(out, g.Text(1, layout.Sub, note(c, st), st.At))
}
