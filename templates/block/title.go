package block

import (
	"matchmark/layout"
)

// RuleLine is the sentence at the top of a sheet that says how it is filled in, beside the
// title where the sheet goes on where another ends.
func (c *Composer) RuleLine(sentence string) layout.Piece {
	if c.Title != "" {
		line := c.TitleLine(c.Title, sentence)
		alone := c.sentence(sentence) // at the top of a page the title stands in its head
		line.AtTop = &alone
		return line
	}
	return layout.Piece{Block: c.sentence(sentence), KeepNext: true}
}

func (c *Composer) sentence(s string) layout.Block {
	return c.Para(c.Span, []layout.Run{layout.T(layout.Body, s)}, layout.ParaOpts{}).Pad(0, 0, 2, 0)
}

// TitleLine is the title of a sheet that goes on where the one before it ends, on a plate
// like that at the head of the page, with a sentence beside it or none.
func (c *Composer) TitleLine(title, sentence string) layout.Piece {
	const high, between = titlePlate, 3
	plate := c.TitlePlate(title)
	text := layout.Block{}
	if sentence != "" {
		text = c.Para(c.Span-plate.W-between, []layout.Run{layout.T(layout.Body, sentence)}, layout.ParaOpts{})
	}
	at := max(high, text.H+0.5)
	line := layout.Drawn(c.Span, at, layout.Item{Y: at - layout.Heavy/2, Shape: layout.Line{DX: c.Span, Weight: layout.Heavy}})
	b := layout.Overlay(line, plate.At(0, at-high), text.At(plate.W+between, (at-text.H)/2))
	return layout.Piece{Block: b.Pad(0, 0, 2, 0), Gap: 3.5, KeepNext: true}
}

// titlePlate is the height of the plate of a title in the flow.
const titlePlate layout.Mm = 7

// TitlePlate is the title of a sheet in the flow, white on black.
func (c *Composer) TitlePlate(title string) layout.Block {
	plate := c.Words(layout.StepNo.In(layout.White), title).Heading(1).Pad(0, 3, 0, 3)
	return plate.Fill(plate.W, titlePlate, 0.5, 0.5).Border(layout.Rect{Fill: layout.Black, Radius: 1})
}
