package templates

import (
	"matchmark/layout"
)

// sheetHead is the title of a sheet that goes on where the one before it ends, on a
// plate like that at the head of the page.
func (c *composer) sheetHead(title string) layout.Piece {
	const high = 7
	plate := c.Words(layout.StepNo.In(layout.White), title).Pad(0, 3, 0, 3)
	plate = plate.Fill(plate.W, high, 0.5, 0.5).Border(layout.Rect{Fill: layout.Black, Radius: 1})
	line := layout.Drawn(c.Span, high, layout.Item{Y: high - layout.Heavy/2, Shape: layout.Line{DX: c.Span, Weight: layout.Heavy}})
	return layout.Piece{Block: layout.Overlay(line, plate).Pad(0, 0, 2, 0), Gap: 6, KeepNext: true}
}

// widestTitles is the most that the titles of the sheets of a page may take on the plate
// at its head, in two lines.
const widestTitles layout.Mm = 52

// pageTitle is what stands on the plate of a page: the titles of the sheets that it
// carries, of many the first and the last. The one of the run in the first pass, when
// no page is known yet.
func (c *composer) pageTitle(of string, page int) string {
	names := c.names[page]
	if len(names) == 0 {
		return of
	}
	titles := map[string]string{}
	for _, k := range kinds() {
		titles[k.name] = k.title(c.W)
	}
	if len(names) == 1 {
		return titles[names[0]]
	}
	all := titles[names[0]]
	for _, n := range names[1:] {
		all += " · " + titles[n]
	}
	if c.plateText(all).H > 2*layout.Plate.Lead {
		return titles[names[0]] + " – " + titles[names[len(names)-1]]
	}
	return all
}

// plateText sets the text of a plate in one line, or if it must in two.
func (c *composer) plateText(text string) layout.Block {
	if c.Width(layout.Plate, text) <= widestTitles {
		return c.Words(layout.Plate, text)
	}
	return c.Para(widestTitles, []layout.Run{layout.T(layout.Plate, text)}, layout.ParaOpts{})
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
