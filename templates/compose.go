package templates

import (
	"matchmark/packs/job"
	"strconv"

	"matchmark/layout"
	"matchmark/packs/source"
)

// Options say how a pack is to be set.
type Options struct {
	Paper layout.Paper
	Pen   layout.Pen
	Draft bool // stamp every page, for a pack that is printed in spite of errors
}

// A Pack is all paper of one job, ready to be painted.
type Pack struct {
	Pages    *layout.Doc // the pack
	Tags     *layout.Doc // tags and labels
	TagCount int

	retag func(keep func(mark string) bool) // sets only some of the tags
}

// A kind of sheet: its name, for choosing it, its title in the catalogue, and
// the function that sets its flow. What belongs in the list is every sheet of
// the pack that is bound, in the order in which it is bound; tags are apart.
type kind struct {
	name     string
	title    func(words) string
	flow     func(*composer) []layout.Piece
	handover bool // work stops and starts on this sheet
}

func kinds() []kind {
	return []kind{
		{"front", func(w words) string { return w.front }, front, false},
		{"cautions", func(w words) string { return w.cautions }, cautions, false},
		{"isolations", func(w words) string { return w.isolations }, isolations, false},
		{"gather", func(w words) string { return w.gather }, gather, false},
		{"traveler", func(w words) string { return w.traveler }, traveler, true},
		{"readings", func(w words) string { return w.dims.sheet }, readings, false},
		{"critical", func(w words) string { return w.dims.critical }, critical, false},
		{"dimensions", func(w words) string { return w.dims.index }, index, false},
		{"lifts", func(w words) string { return w.lift }, lifts, false},
		{"heats", func(w words) string { return w.heats }, heats, false},
		{"holds", func(w words) string { return w.holds }, holds, false},
		{"openings", func(w words) string { return w.openings }, openings, false},
		{"reassembly", func(w words) string { return w.reassembly }, reassembly, true},
		{"found", func(w words) string { return w.foundToday }, foundToday, false},
		{"register", func(w words) string { return w.register }, register, false},
		{"counts", func(w words) string { return w.counts }, counts, false},
		{"signatures", func(w words) string { return w.signatures }, signatures, false},
		{"deviations", func(w words) string { return w.deviations }, deviations, false},
		{"close-out", func(w words) string { return w.closeOut }, closeOut, false},
	}
}

// A composer sets one job on one paper.
type composer struct {
	*layout.Setter
	job   *job.Job
	w     words
	paper layout.Paper
	width layout.Mm // between the margins
	warn  source.Problems
	draft bool

	pages map[string]int    // pages of anchors, from the pass before
	sheet map[string][2]int // first and last page of each sheet, from the pass before
	total int               // pages of the pack, from the pass before
	// boxesOn counts the boxes of each role on each sheet, from the pass before.
	boxesOn map[string]map[string]int
}

// Compose sets the job on paper. The problems are of text, boxes and signs that
// do not fit, each at the line of the definition it came from; warnings are
// those found before, to be printed on the front sheet.
func Compose(job *job.Job, o Options, m layout.Measurer, warnings source.Problems) (*Pack, source.Problems) {
	w, _ := o.Paper.Inner()
	c := &composer{Setter: layout.NewSetter(m, o.Pen), job: job, w: english, paper: o.Paper, width: w, warn: warnings, draft: o.Draft}
	set, _ := layout.Settle(func(known map[string]int, total int) *layout.Pages {
		c.pages, c.total = known, total
		pages := layout.Paginate(o.Paper, c.sheets())
		c.sheet, c.boxesOn = sheetPages(pages.Frames), boxesBySheet(pages.Frames)
		return pages
	})
	pack := &Pack{Pages: c.doc(set.Frames, set.Outline)}
	// Tags have one size, and are written on at a bench: their boxes do not grow
	// for gloves.
	c.Setter = layout.NewSetter(m, layout.Pen{})
	pack.retag = func(keep func(string) bool) { c.tags(pack, keep) }
	return pack, problems(job, set.Misfits, c.tags(pack, func(string) bool { return true }))
}

// sheets sets the flow of every sheet.
func (c *composer) sheets() []layout.Sheet {
	var out []layout.Sheet
	for _, k := range kinds() {
		c := c.across(k)
		pieces := k.flow(c)
		if len(pieces) == 0 {
			continue
		}
		title := k.title(c.w)
		out = append(out, layout.Sheet{
			Name: k.name, Title: title, Pieces: pieces,
			Head:      func(page, total int) layout.Block { return c.head(title, page, total) },
			Foot:      func(page, total int) layout.Block { return c.foot(k.handover) },
			Landscape: lyingSheets[k.name],
		})
	}
	return out
}

// lyingSheets are set across the page.
var lyingSheets = map[string]bool{"readings": true, "critical": true}

// across is the composer for a sheet: a sheet that lies has another width.
func (c *composer) across(k kind) *composer {
	if !lyingSheets[k.name] {
		return c
	}
	turned := *c
	turned.width, _ = c.paper.Turned().Inner()
	return &turned
}

// doc puts frames into a document with the job's title and date.
func (c *composer) doc(frames []layout.Frame, outline []layout.Entry) *layout.Doc {
	if c.draft {
		c.stamp(frames)
	}
	o, e := c.job.Order, c.job.Equipment
	return &layout.Doc{
		Title:   o.Number + " " + fill(c.w.revision, o.Revision) + ": " + e.Tag + " " + e.Name,
		Subject: o.Title, Lang: c.w.lang, Date: o.Issued, Pages: frames, Outline: outline,
	}
}

// sheetPages finds the first and last page of each sheet.
func sheetPages(frames []layout.Frame) map[string][2]int {
	out := map[string][2]int{}
	for i, f := range frames {
		span, ok := out[f.Sheet]
		if !ok {
			span[0] = i + 1
		}
		span[1] = i + 1
		out[f.Sheet] = span
	}
	return out
}

// page is the page of an anchor as printed. In the first pass, when no page is
// known yet, it has the width of two digits.
func (c *composer) page(anchor string) string {
	if n, ok := c.pages[anchor]; ok {
		return strconv.Itoa(n)
	}
	return "00"
}
