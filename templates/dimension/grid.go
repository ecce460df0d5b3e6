package dimension

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// gridTables are the ways to set rows and columns of positions, as they are written and turned:
// each row with the columns of each side, and each row with a row a side.
func gridTables(c *block.Composer, d *job.Dim, sides []Side, rows, cols []string) []layout.Block {
	n, m, names := len(cols), len(sides), sideNames(c, d, sides)
	var out []layout.Block
	add := func(down, across []string, at func(r, k int) int) {
		var wide, deep []string
		for _, s := range names {
			wide = append(wide, spokenBefore(s, across)...)
		}
		for _, r := range down {
			for _, s := range names {
				deep = append(deep, r+c.W.Common.Colon+s)
			}
		}
		w := len(across)
		out = append(out,
			boxTable{down, wide, layout.Sub, 0, func(r, k int) spot { return spot{at(r, k%w), k / w} }}.set(c, d, sides),
			boxTable{deep, across, layout.Caption, 0, func(r, k int) spot { return spot{at(r/m, k), r % m} }}.set(c, d, sides))
	}
	add(rows, cols, func(r, k int) int { return r*n + k })
	add(cols, rows, func(r, k int) int { return k*n + r })
	return out
}

// foldedGrid has a row a name and the columns of positions, in groups of rows beside each other.
func foldedGrid(c *block.Composer, d *job.Dim, sides []Side, groups int) layout.Block {
	down, across := d.Positions.Rows, spokenBefore(sideNames(c, d, sides)[0], d.Positions.Cols)
	deep := (len(down) + groups - 1) / groups
	var out []layout.Block
	for from := 0; from < len(down); from += deep {
		t := boxTable{down[from:min(from+deep, len(down))], across, layout.Sub, 0, func(r, k int) spot { return spot{(from+r)*len(across) + k, 0} }}
		out = append(out, t.set(c, d, sides))
	}
	return layout.Beside(layout.GapX, out...)
}
