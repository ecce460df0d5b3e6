package templates

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/stock"
)

// leastModule is the smallest square of a code that a hand scanner reads from oily or
// creased paper: 0.6 mm (needs of the storeroom, common practice, no source).
const leastModule layout.Mm = 0.6

// code is the QR code of a tag with squares of leastModule, or the next whole dots of the
// stock's printer. Its side follows from the length of the text and from its level.
func (c *composer) code(t *job.Tag, s stock.Stock) layout.Block {
	module := layout.Mm(s.Dots(stock.Mm(leastModule)))
	if c.levelQ || s.Use == stock.Bag { // what is in a bag needs the room more
		return c.QRModules(t.Code, module, t.At)
	}
	return c.QRHigh(t.Code, module, t.At)
}

// spelled is the text of a tag's code to be read and typed by a person. A long number
// breaks between any two signs, a short one only between its fields.
func (c *composer) spelled(t *job.Tag, width layout.Mm, o layout.ParaOpts) layout.Block {
	o.Ref = t.At
	st := layout.Caption.With(layout.Mono)
	return c.Para(width, []layout.Run{layout.T(st, c.Breakable(st, width, t.Code))}, o)
}

// codeWithText is the code of a tag with the same text below it.
func (c *composer) codeWithText(t *job.Tag, s stock.Stock) layout.Block {
	code := c.code(t, s)
	width := code.W + 4
	return layout.Above(0, code.Center(width), c.spelled(t, width, layout.ParaOpts{Align: layout.Centered}))
}

// noBreak keeps a text of several words on one line.
func noBreak(text string) string { return strings.ReplaceAll(text, " ", "\u00a0") }
