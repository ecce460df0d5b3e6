package dimension

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/shim"
	"matchmark/templates/block"
)

// shimBoxes sets a pack of shims: the leaves one by one with their sum, a row a side; and
// apart what each leaf is made of or marked with, and in putting back whether the old pack
// stays.
func (k content) shimBoxes(d *job.Dim, sides []Side, width layout.Mm) (rows []layout.Block, last layout.Block) {
	c := k.Composer
	sides = slices.DeleteFunc(slices.Clone(sides), func(s Side) bool { return s.signed }) // the difference is that of the sums
	if d.Shims.Stock.Stock.Pick {
		if len(sides) > 1 {
			last = oldPackStays(c, d, 0)
		}
		return []layout.Block{pickBoxes(c, d, sides, width)}, last
	}
	set := once(k.tried.leaves, d, func() leafSet {
		pieces, below := leafRows(c, d, sides)
		return leafSet{leafTableOf(c, d, sides), pieces, below}
	})
	if set.table.rows.W <= width {
		return []layout.Block{set.table.rows}, set.table.below(c, d, sides, width)
	}
	for _, row := range set.pieces {
		rows = append(rows, block.FlowRow(row, width))
	}
	return rows, block.FlowRow(set.below, width)
}

// A leafSet is the leaves of a pack, in a table and as pieces with those below them, to be set
// in any width.
type leafSet struct {
	table  leafTable
	pieces [][]layout.Block
	below  []layout.Block
}

// oldPackStays is the box to tick where the old pack goes back, its words in lines of a
// width; of no width in one line.
func oldPackStays(c *block.Composer, d *job.Dim, width layout.Mm) layout.Block {
	tick := c.Tick(layout.Body, "", d.At)
	if width == 0 {
		return c.Tick(layout.Body, c.W.Shims.OldPackStays, d.At)
	}
	const gap = 1.2
	words := c.Para(width-tick.W-gap, []layout.Run{layout.T(layout.Sub, c.W.Shims.OldPackStays)}, layout.ParaOpts{Ref: d.At})
	return layout.Beside(gap, tick, words)
}

// Widths of the box for a leaf's material or mark, and of that for whether the old pack
// stays, in lines, at the least and at the most.
const (
	leastMaterial layout.Mm = 22
	leastOldPack  layout.Mm = 22
	widestOldPack layout.Mm = 40
)

// stockText says what shims there are.
func stockText(c *block.Composer, d *job.Dim) string {
	s := d.Shims.Stock.Stock
	var list []string
	for _, l := range s.Leaves {
		text := l.Thickness.Print()
		if l.Count > 0 {
			text = strconv.Itoa(l.Count) + " × " + text
		}
		list = append(list, text)
	}
	all := strings.Join(list, ", ") + "\u00a0" + s.Unit.Print()
	text := c.W.Shims.LeavesInHand.With(d.Shims.Part.Name, all, strconv.Itoa(s.Most))
	if s.Pick {
		text = c.W.Shims.OneOfSet.With(d.Shims.Part.Name, all)
	}
	return text
}

// A packTable is the table that rounds to what there is, and whether what to do with a figure
// that it has not stands in what its last column leaves.
type packTable struct {
	rows layout.Block
	told bool
}

// packTable sets that table in as many columns as go beside each other, each as wide as its
// rows.
func (k content) packTable(width layout.Mm) layout.Block {
	c, d := k.Composer, k.d()
	var table packTable
	for columns := 1; columns <= len(d.Shims.Rows); columns++ {
		one := once(k.tried.packTables, columns, func() packTable { return packColumns(c, d, columns) })
		if columns > 1 && one.rows.W > width {
			break
		}
		table = one
	}
	if table.told {
		return table.rows
	}
	return layout.Above(1, table.rows, outsideTable(c, d, width))
}

// outsideTable says what to do with a figure that the table has not.
func outsideTable(c *block.Composer, d *job.Dim, width layout.Mm) layout.Block {
	return c.Para(width, []layout.Run{layout.T(layout.Sub, c.W.Shims.OutsideTable)}, layout.ParaOpts{Ref: d.At})
}

// packColumns are the rows of the table in so many columns.
func packColumns(c *block.Composer, d *job.Dim, columns int) packTable {
	const between = 4
	deep := (len(d.Shims.Rows) + columns - 1) / columns
	var blocks []layout.Block
	for from := 0; from < len(d.Shims.Rows); from += deep {
		blocks = append(blocks, packColumn(c, d, d.Shims.Rows[from:min(from+deep, len(d.Shims.Rows))]))
	}
	last := &blocks[len(blocks)-1]
	outside := outsideTable(c, d, last.W)
	free := blocks[0].H - last.H - outside.H
	told := len(blocks) > 1 && free >= -0.01
	if told {
		*last = layout.Above(max(min(free, 1), 0), *last, outside)
	}
	return packTable{layout.Beside(between, blocks...), told}
}

// packColumn is one column of the table, with its head.
func packColumn(c *block.Composer, d *job.Dim, rows []shim.Row) layout.Block {
	const gap = 1.8
	cells := [][3]string{{c.W.Shims.WorkedOut, c.W.Shims.Pack, c.W.Shims.Leaves}}
	for _, r := range rows {
		cells = append(cells, [3]string{r.From.Print() + "\u00a0– " + r.To.Print(), r.Pack.Thickness.Print(), strings.ReplaceAll(packText(r.Pack), "\u00a0", "")})
	}
	styles := func(i int) [3]layout.Style {
		if i == 0 {
			return [3]layout.Style{layout.Caption, layout.Caption, layout.Caption}
		}
		return [3]layout.Style{layout.Sub, layout.SubBold, layout.Sub}
	}
	var w [3]layout.Mm
	for i, row := range cells {
		for k, text := range row {
			w[k] = max(w[k], c.Width(styles(i)[k], text)+0.2)
		}
	}
	var lines []layout.Block
	for i, row := range cells {
		var line []layout.Block
		for k, text := range row {
			line = append(line, c.Line(w[k], []layout.Run{layout.T(styles(i)[k], text)}, layout.ParaOpts{Ref: d.At, Role: rolePack}))
		}
		lines = append(lines, layout.Beside(gap, line...))
	}
	return layout.Above(0, lines...)
}

// rolePack is on the texts of the table of packs.
const rolePack = "pack"

// packText is a pack as a sum of its leaves.
func packText(p shim.Pack) string {
	var out []string
	for _, l := range p.Leaves {
		text := l.Thickness.Print()
		if l.Count > 1 {
			text = strconv.Itoa(l.Count) + "\u00a0×\u00a0" + text
		}
		out = append(out, text)
	}
	return strings.Join(out, "\u00a0+\u00a0")
}

// pickBoxes sets a box to tick for each of a graded set, for every side, and the box
// of the one that is on.
func pickBoxes(c *block.Composer, d *job.Dim, sides []Side, width layout.Mm) layout.Block {
	var out []layout.Block
	for _, s := range sides {
		row := []layout.Block{Box(c, d, s, s.caption, true)}
		for _, l := range d.Shims.Stock.Stock.Leaves {
			if !s.Copied {
				row = append(row, c.Tick(layout.Body, l.Thickness.Print(), d.At))
			}
		}
		out = append(out, block.FlowRow(row, width))
	}
	return layout.Above(layout.GapY, out...)
}

// adjustNotes say how the adjuster of a dimension is used: what a turn moves, how
// far to back off, or that it is left alone.
func adjustNotes(c *block.Composer, d *job.Dim, back bool) []string {
	w, p := c.W, d.Adjuster
	if p == nil || p.LeaveAlone != "" {
		return nil
	}
	name := p.Name
	if p.Thread != nil {
		name += " (" + p.Thread.String() + ")"
	}
	var out []string
	if back && d.PerTurn != nil && (d.PerFlat == nil || d.Kind == "threads") {
		sentence := w.Shims.OneTurn
		if d.Kind == "threads" {
			sentence = w.Shims.OneThread
		}
		out = append(out, sentence.With(name, d.PerTurn.Print()))
	}
	if m := p.Movement; back && m != nil && m.Thick != nil && m.Gives.Unit.Dimension() == d.Box.Unit.Dimension() {
		sentence, by := w.Shims.ShimsMove, *m.Gives
		if by.Number.Sign() < 0 {
			sentence, by.Number = w.Shims.ShimsLess, by.Number.Neg()
		}
		out = append(out, sentence.With(m.Thick.Print(), name, by.Print()))
	}
	if back && d.PerFlat != nil {
		out = append(out, w.Shims.OneFlat.With(name, d.PerFlat.Print()))
	}
	return out
}

// movement is what its maker says the adjuster of a dimension moves, nil if nothing.
func movement(d *job.Dim) *job.Movement {
	if d.Adjuster == nil {
		return nil
	}
	return d.Adjuster.Movement
}

// adjustItems are the boxes of whoever turns the adjuster: how far it has to go, in
// flats or turns, and whether it was backed off; nothing where there is nothing to
// turn.
func adjustItems(c *block.Composer, d *job.Dim, before bool) []layout.Block {
	if d.Adjuster == nil {
		return nil
	}
	var row []layout.Block
	one, what := d.PerFlat, c.W.Shims.Flats
	if one == nil {
		one, what = d.PerTurn, c.W.Shims.Turns
	}
	n := layout.Number{Before: d.Box.Before, After: d.Box.After, Sign: true, Ref: d.At}
	toGo := nameBefore(c, d, c.W.Shims.ToGo, c.Value(n))
	if !before {
		n.Caption = c.W.Shims.ToGo
		toGo = c.Value(n)
	}
	if m := d.Adjuster.Movement; m != nil && m.Thick != nil && m.Gives.Unit == d.Box.Unit {
		more := layout.Number{Before: max(d.Box.Before, m.Thick.Number.Figures()), After: max(m.Thick.Number.Decimals(), 0), Sign: true, Unit: m.Thick.Unit.Print(), Caption: c.W.Shims.MoreShims, Ref: d.At}
		row = append(row, layout.Bottom(2, toGo, sumWords(c, "÷ "+m.Gives.Number.Print()+" × "+m.Thick.Number.Print()+" =", d).Pad(0, 0, 2.2, 0), c.Value(more)))
	}
	if one != nil && one.Unit == d.Box.Unit {
		n := layout.Number{Before: 2, After: 1, Unit: what, Ref: d.At}
		row = append(row, layout.Bottom(2, toGo, sumWords(c, "÷ "+one.Print()+" =", d).Pad(0, 0, 2.2, 0), c.Value(n)))
	}
	if tick := backedOff(c, d); !tick.Empty() {
		row = append(row, tick)
	}
	return row
}

// backedOff is the box to tick for an adjuster that is turned back after it touches,
// nothing where it is not.
func backedOff(c *block.Composer, d *job.Dim) layout.Block {
	bo := d.BackOff
	if bo == nil {
		return layout.Block{}
	}
	text := c.W.Shims.BackOff.With(bo.Text)
	if bo.Low != nil {
		moved := bo.Low.Print()
		if bo.High != nil {
			moved = bo.Low.Number.Print() + "\u00a0– " + bo.High.Print()
		}
		text += " (" + moved + ")"
	}
	return c.Tick(layout.Body, text, d.At)
}
