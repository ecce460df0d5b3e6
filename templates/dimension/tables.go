package dimension

import (
	"cmp"
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// A spot is one box of a table of boxes: which reading, from 0, and of which side; one
// of no reading is left empty.
type spot struct{ at, side int }

// noSpot is where a table has no box.
var noSpot = spot{at: -1}

// A boxTable is readings of several sides in rows and columns: the names of the columns
// stand once above them, those of the rows before their boxes.
type boxTable struct {
	rows, cols []string
	label      layout.Style // of the names of the rows
	heads      int          // lines of the names of the columns at the most, 0 for as many as the boxes leave
	spot       func(row, col int) spot
}

// labelLines is in how many lines the name of a row may stand: no higher than its boxes.
func labelLines(st layout.Style) int {
	return int(boxHeight / st.Lead)
}

// boxHeight is the least height of a value box.
const boxHeight layout.Mm = 9

// set sets a table.
func (t boxTable) set(c *block.Composer, d *job.Dim, sides []Side) layout.Block {
	boxes := make([][]layout.Block, len(t.rows))
	widths := make([]layout.Mm, len(t.cols))
	for r := range t.rows {
		for k := range t.cols {
			var b layout.Block
			if s := t.spot(r, k); s != noSpot {
				b = Box(c, d, sides[s.side].on(s.at), "", false)
			}
			boxes[r] = append(boxes[r], b)
			widths[k] = max(widths[k], b.W)
		}
	}
	if t.heads > 0 {
		for k, name := range t.cols {
			widths[k] = max(widths[k], foldedWidth(c, layout.Caption, []string{name}, t.heads))
		}
	}
	labelW := foldedWidth(c, t.label, t.rows, labelLines(t.label))
	out := []layout.Block{layout.Bottom(layout.GapX, heads(c, d, t.cols, widths)...)}
	before := layout.Mm(0)
	if labelW > 0 {
		before = labelW + labelGap
		out[0] = out[0].At(before, 0)
	}
	var rows []layout.Block
	for r, name := range t.rows {
		row := cells(boxes[r], widths)
		if before > 0 {
			row = layout.Middle(labelGap, rowLabel(c, d, t.label, name, labelW), row)
		}
		rows = append(rows, row)
	}
	return layout.Above(headGap, append(out, layout.Above(layout.GapY, rows...))...)
}

// Room behind the name of a row, and below the heads of columns.
const (
	labelGap layout.Mm = 1.5
	headGap  layout.Mm = 0.4
)

// heads are the names of columns, each in the width of its column, which grows for a word
// that is wider.
func heads(c *block.Composer, d *job.Dim, names []string, widths []layout.Mm) []layout.Block {
	out := make([]layout.Block, 0, len(names))
	for k, n := range names {
		widths[k] = max(widths[k], longestWord(c, layout.Caption, n))
		head := layout.Space(widths[k], 0)
		if n != "" {
			head = c.Para(widths[k], []layout.Run{layout.T(layout.Caption, n)}, layout.ParaOpts{Ref: d.At})
			head.W = widths[k]
		}
		out = append(out, head)
	}
	return out
}

// cells are boxes in their columns.
func cells(boxes []layout.Block, widths []layout.Mm) layout.Block {
	row := make([]layout.Block, 0, len(boxes))
	for k, b := range boxes {
		if b.Empty() {
			row = append(row, layout.Space(widths[k], 1))
			continue
		}
		row = append(row, b.Fill(widths[k], b.H, 0, 0))
	}
	return layout.Bottom(layout.GapX, row...)
}

// rowLabel is the name of a row in the width of all names.
func rowLabel(c *block.Composer, d *job.Dim, st layout.Style, name string, width layout.Mm) layout.Block {
	b := c.Para(width, []layout.Run{layout.T(st, name)}, layout.ParaOpts{Ref: d.At})
	b.W = width
	return b
}

// foldedWidth is the least width in which names stand in so many lines each.
func foldedWidth(c *block.Composer, st layout.Style, names []string, lines int) layout.Mm {
	const step = 1
	w := layout.Mm(0)
	for _, n := range names {
		w = max(w, longestWord(c, st, n))
	}
	if w == 0 {
		return 0
	}
	space := c.Width(st, "x x") - c.Width(st, "xx") // alone it has no width
	for _, n := range names {
		words := wordWidths(c, st, n)
		for whole := c.Width(st, n); w < whole && linesIn(words, space, w) > lines; {
			w += step
		}
	}
	return w + 0.1
}

// linesIn is in how many lines words stand in a width.
func linesIn(words []layout.Mm, space, width layout.Mm) int {
	lines, used := 1, layout.Mm(0)
	for _, w := range words {
		if used > 0 && used+space+w > width {
			lines, used = lines+1, 0
		}
		if used > 0 {
			used += space
		}
		used += w
	}
	return lines
}

// longestWord is the width of the longest word of a text, which is not parted.
func longestWord(c *block.Composer, st layout.Style, text string) layout.Mm {
	most := layout.Mm(0)
	for word := range strings.SplitSeq(text, " ") {
		most = max(most, c.Width(st, word))
	}
	return most
}

// wordWidths are the widths of the words of a text.
func wordWidths(c *block.Composer, st layout.Style, text string) []layout.Mm {
	var out []layout.Mm
	for word := range strings.SplitSeq(text, " ") {
		out = append(out, c.Width(st, word))
	}
	return out
}

// sideTables are the boxes of one or several sides at several places in tables, the lowest first: those of all ways
// of which no other is as low and as narrow.
func sideTables(c *block.Composer, d *job.Dim, sides []Side) []layout.Block {
	names := PositionNames(d.Positions)
	all := []layout.Block{positionRows(c, d, sides, names, 1, 0)}
	for bands := 1; bands <= 3 && bands <= (len(names)+1)/2; bands++ {
		all = append(all, sideRows(c, d, sides, names, bands))
	}
	for groups := 2; groups <= 3 && groups <= len(names); groups++ {
		all = append(all, positionRows(c, d, sides, names, groups, 0), positionRows(c, d, sides, names, groups, 2))
		if groups < len(names) {
			all = append(all, namedAbove(c, d, sides, names, groups))
		}
	}
	if p := d.Positions; len(p.Rows) > 0 && len(p.Cols) > 0 {
		all = append(all, gridTables(c, d, sides, p.Rows, p.Cols)...)
		if len(sides) == 1 {
			for groups := 2; groups <= 3 && groups < len(p.Rows); groups++ {
				all = append(all, foldedGrid(c, d, sides, groups))
			}
		}
	}
	return leastOf(all)
}

// leastOf are blocks of which no other is as low and as narrow, the lowest first.
func leastOf(all []layout.Block) []layout.Block {
	const hair = 0.05
	slices.SortStableFunc(all, func(a, b layout.Block) int { return cmp.Compare(a.H, b.H) })
	var out []layout.Block
	for _, b := range all {
		if len(out) == 0 || b.W < out[len(out)-1].W-hair {
			out = append(out, b)
		}
	}
	return out
}

// tableIn is which table is taken: that which is asked for, or the first after it that goes into
// the width.
func tableIn(tables []layout.Block, n int, width layout.Mm) int {
	for n < len(tables)-1 && tables[n].W > width {
		n++
	}
	return min(n, len(tables)-1)
}

// positionRows has a row a position and a column a side, in groups beside each other; the names
// of its columns take so many lines at the most, if any number is given.
func positionRows(c *block.Composer, d *job.Dim, sides []Side, names []string, groups, heads int) layout.Block {
	deep := inGroups(d.Positions, (len(names)+groups-1)/groups)
	var out []layout.Block
	for from := 0; from < len(names); from += deep {
		t := boxTable{names[from:min(from+deep, len(names))], sideNames(c, d, sides), layout.Sub, heads, func(r, k int) spot { return spot{from + r, k} }}
		out = append(out, t.set(c, d, sides))
	}
	return layout.Beside(layout.GapX, out...)
}

// sideRows has a row a side and a column a position, in bands below each other.
func sideRows(c *block.Composer, d *job.Dim, sides []Side, names []string, bands int) layout.Block {
	across := inGroups(d.Positions, (len(names)+bands-1)/bands)
	var out []layout.Block
	for from := 0; from < len(names); from += across {
		part := names[from:min(from+across, len(names))]
		t := boxTable{sideNames(c, d, sides), part, layout.Caption, 0, func(r, k int) spot { return spot{from + k, r} }}
		out = append(out, t.set(c, d, sides))
	}
	return layout.Above(bandGap, out...)
}

// inGroups is how many positions go on from one line to the next where so many would fill them
// alike: as many as hold whole rows of positions, so that no plane is cut in two.
func inGroups(p job.Positions, n int) int {
	if len(p.Rows) == 0 || len(p.Cols) == 0 {
		return n
	}
	return (n + len(p.Cols) - 1) / len(p.Cols) * len(p.Cols)
}

// bandGap is the room between two bands of a table: more than between its rows, so that the
// names belong to the row below them.
const bandGap layout.Mm = 2

// namedAbove has a row a position with its name above it and a column a side, in groups
// beside each other.
func namedAbove(c *block.Composer, d *job.Dim, sides []Side, names []string, groups int) layout.Block {
	deep := inGroups(d.Positions, (len(names)+groups-1)/groups)
	var out []layout.Block
	for from := 0; from < len(names); from += deep {
		widths := make([]layout.Mm, len(sides))
		var rows [][]layout.Block
		for i := from; i < min(from+deep, len(names)); i++ {
			var row []layout.Block
			for k, s := range sides {
				b := Box(c, d, s.on(i), "", false)
				row = append(row, b)
				widths[k] = max(widths[k], b.W)
			}
			rows = append(rows, row)
		}
		group := layout.Bottom(layout.GapX, heads(c, d, sideNames(c, d, sides), widths)...)
		for i, row := range rows {
			name := textLine(c, d, layout.Sub, names[from+i])
			gap := layout.Mm(1.5)
			if i == 0 {
				gap = headGap
			}
			group = layout.Above(gap, group, layout.Above(headGap, name, cells(row, widths)))
		}
		out = append(out, group)
	}
	return layout.Beside(layout.GapX, out...)
}

// spokenBefore are names, each before the same word.
func spokenBefore(word string, names []string) []string {
	var out []string
	for _, n := range names {
		out = append(out, spoken(n, word))
	}
	return out
}

// sideNames are the captions of sides with the unit.
func sideNames(c *block.Composer, d *job.Dim, sides []Side) []string {
	var out []string
	for _, s := range sides {
		out = append(out, withUnit(c, d, s.caption))
	}
	return out
}
