package block

import (
	"matchmark/layout"
)

// RuleLine is the sentence at the top of a sheet that says how it is filled in, beside the
// title where the sheet goes on where another ends.
func (c *Composer) RuleLine(sentence string) layout.Piece {
	return c.RuleRuns(layout.T(layout.Body, sentence))
}

// RuleRuns is the same of runs of text.
func (c *Composer) RuleRuns(runs ...layout.Run) layout.Piece {
	alone := c.Para(c.Span, runs, layout.ParaOpts{}).Pad(0, 0, underTitle, 0)
	if c.Title != "" {
		line := c.TitleLine(c.Title, runs...)
		line.AtTop = &alone // at the top of a page the title stands in its head
		return line
	}
	return layout.Piece{Block: alone, KeepNext: true}
}

// TitleLine is the title of a sheet that goes on where the one before it ends, on a plate
// like that at the head of the page, with a sentence beside it or none.
func (c *Composer) TitleLine(title string, runs ...layout.Run) layout.Piece {
	const high, between = titlePlate, 3
	plate := c.TitlePlate(title)
	text := layout.Block{}
	if len(runs) > 0 {
		text = c.Para(c.Span-plate.W-between, runs, layout.ParaOpts{})
	}
	at := max(high, text.H+overRule)
	line := layout.Drawn(c.Span, at, layout.Item{Y: at - layout.Heavy/2, Shape: layout.Line{DX: c.Span, Weight: layout.Heavy}})
	b := layout.Overlay(line, plate.At(0, at-high), text.At(plate.W+between, min((at-text.H)/2, at-overRule-text.H)))
	under := underTitle
	if at > high { // a high title takes no more for the room above its rule
		under -= 0.3
	}
	return layout.Piece{Block: b.Pad(0, 0, under, 0), Gap: 2, KeepNext: true}
}

// underTitle is the room below the title of a sheet, and below its first sentence.
const underTitle layout.Mm = 1.4

// overRule is the room below the last line of that sentence, so that it does not stand on the rule.
const overRule layout.Mm = 0.85

// titlePlate is the height of the plate of a title in the flow.
const titlePlate layout.Mm = 7

// TitlePlate is the title of a sheet in the flow, white on black.
func (c *Composer) TitlePlate(title string) layout.Block {
	plate := c.Words(layout.StepNo.In(layout.White), title).Heading(1).Pad(0, 3, 0, 3)
	return plate.Fill(plate.W, titlePlate, 0.5, 0.5).Border(layout.Rect{Fill: layout.Black, Radius: 1})
}

// Headed is the heading of a thing that a sheet tells of, on a heavy line, and the same
// without the line, as it is drawn again on each page the thing runs on to: there it stands
// below the line of the head of the page.
func (c *Composer) Headed(runs []layout.Run, ref layout.Ref) (first, again layout.Block) {
	text := c.Para(c.Span, runs, layout.ParaOpts{Ref: ref})
	return layout.Above(0.4, text, c.Rule(layout.Heavy)).Pad(0.2, 0, 0.2, 0), text.Pad(0, 0, 1, 0)
}
