package templates

import (
	"strings"

	"matchmark/layout"
)

// widestTitles is the most that the titles of the sheets of a page may take on the plate
// at its head: one line, or two smaller ones.
const widestTitles layout.Mm = 44

// pageTitle is what stands on the plate of a page: the titles of the sheets that it
// carries, a line each, of many the first and the last. The one of the run in the first pass, when
// no page is known yet.
func (c *composer) pageTitle(of string, page int) string {
	names := c.names[page]
	if len(names) == 0 {
		return of
	}
	if len(names) == 1 {
		return c.plates[names[0]]
	}
	between := " ·\n"
	if len(names) > 2 {
		between = " –\n"
	}
	return c.plates[names[0]] + between + c.plates[names[len(names)-1]]
}

// plateRoom is the room that a sheet keeps for its plate: where others may follow it,
// for the titles of several.
func plateRoom(name string) layout.Mm {
	all := kinds()
	for i, k := range all[:len(all)-1] {
		if k.name == name && (k.follows || all[i+1].follows) {
			return widestTitles + 8
		}
	}
	return 0
}

// plateText sets the title of a sheet, or those of the sheets that share a page, a line
// each in letters that let two go into the height of the head.
func (c *composer) plateText(text string) layout.Block {
	titles := strings.Split(text, "\n")
	if len(titles) == 1 && c.Width(layout.Plate, text) <= widestTitles {
		return c.Words(layout.Plate, text)
	}
	small := layout.Plate
	small.Size, small.Lead = layout.Strong.Size, layout.Strong.Lead
	var lines []layout.Block
	for _, t := range titles {
		lines = append(lines, c.Words(small, t))
	}
	return layout.Above(0, lines...)
}

// paged breaks the sheets of one pass into pages, and notes what the next pass prints of them.
// Nobody sees the pages of the first.
func (c *composer) paged(sheets []layout.Sheet, first bool) *layout.Pages {
	var pages *layout.Pages
	if first {
		pages = layout.Paged(c.paper, sheets)
	}
	if !first || len(pages.Frames) > mostPages {
		pages = layout.Paginate(c.paper, sheets)
	}
	c.sheet, c.names, c.boxesOn = sheetPages(pages.Frames), sheetsByPage(pages.Frames), pages.Boxes
	return pages
}

// sheetsByPage lists the sheets that each page carries.
func sheetsByPage(frames []layout.Frame) map[int][]string {
	out := map[int][]string{}
	for _, f := range frames {
		for _, p := range f.Parts {
			out[f.Number] = append(out[f.Number], p.Sheet)
		}
	}
	return out
}

// sheetPages finds the first and last page of each sheet.
func sheetPages(frames []layout.Frame) map[string][2]int {
	out := map[string][2]int{}
	for i, f := range frames {
		for _, p := range f.Parts {
			span, ok := out[p.Sheet]
			if !ok {
				span[0] = i + 1
			}
			span[1] = i + 1
			out[p.Sheet] = span
		}
	}
	return out
}

// anchored names the page that a piece comes to, at the top of it or not.
func anchored(p layout.Piece, name string) layout.Piece {
	p.Block = p.Block.Anchored(name)
	if p.AtTop != nil {
		top := p.AtTop.Anchored(name)
		p.AtTop = &top
	}
	return p
}
