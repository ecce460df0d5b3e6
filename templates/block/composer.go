package block

import (
	"matchmark/layout"
	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/templates/words"
)

// A Composer sets the blocks of one job on sheets of one width.
type Composer struct {
	*layout.Setter
	Job *job.Job
	W   *words.Catalogue
	// Other is the second language of the paper, nil for none.
	Other *Second
	// Span is the width between the margins.
	Span layout.Mm
	// Title is that of a sheet which goes on where another ends: it stands beside the
	// sentence that rules the sheet. Empty for others.
	Title string
	// Pages are the pages of anchors, from the pass before; nil in the first.
	Pages map[string]int
	// Printed are those of the paper that was filled by hand, which go before Pages in what is
	// printed filled; nil else.
	Printed map[string]int
	// Thick says that most page numbers will have three digits: what is set for as many in
	// the first pass need not be set again in the next.
	Thick bool
	// Later, if not nil, lets page numbers be put in when all is placed.
	Later *Later
	// Kept holds what was set in the passes before, nil to set all anew.
	Kept *Kept
	// Filled is what came back on paper, for a pack that is printed filled; nil for one
	// to be filled by hand.
	Filled *filled.Result
	// Last is what was read at the last outages, nil if that is not known.
	Last *filled.History
}

// New is a composer of a job for sheets of a width, which keeps what it sets from pass to
// pass.
func New(m layout.Measurer, pen layout.Pen, j *job.Job, w *words.Catalogue, span layout.Mm) *Composer {
	return &Composer{Setter: layout.NewSetter(m, pen), Job: j, W: w, Span: span, Kept: NewKept()}
}

// CellPad is the room between the frame of a block and what stands in it.
const CellPad layout.Mm = 2

// Heading is the heading of a part of a sheet.
func (c *Composer) Heading(text string) layout.Block {
	return layout.Above(0.8, c.Words(layout.Strong, text).Heading(3), c.Rule(layout.Rule))
}

// Rule is a line over the whole width.
func (c *Composer) Rule(weight layout.Mm) layout.Block {
	return layout.Drawn(c.Span, weight, layout.Item{Y: weight / 2, Shape: layout.Line{DX: c.Span, Weight: weight}})
}

// NumberWidth is the width of the column of step numbers, with the boxes for hours below
// them. What belongs to a step stands to its right.
const NumberWidth layout.Mm = 17
