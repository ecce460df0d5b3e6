package templates

import (
	"matchmark/layout"
	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates/alignsheet"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
	"matchmark/templates/heatsheet"
	"matchmark/templates/jointsheet"
	"matchmark/templates/liftsheet"
	"matchmark/templates/words"
)

// Options say how a pack is to be set.
type Options struct {
	Paper layout.Paper
	Pen   layout.Pen
	Draft bool // stamp every page, for a pack that is printed in spite of errors
	Tags  TagOptions
	// Words are those of the sheets; nil for those of the job's language.
	Words *words.Catalogue
	// Second is the same job in a second language, printed small under the first; nil
	// for none.
	Second *job.Job

	// Filled prints the pack with the readings that came back, Last with those of
	// earlier outages beside the boxes; both nil for a pack to be filled by hand.
	Filled *filled.Result
	Last   *filled.History
	// Printed is the paper that was filled by hand: the pages that a filled pack tells are
	// those of it.
	Printed *Printed
	// Since puts change bars beside what is not as it was in an earlier revision; nil for
	// none.
	Since *job.Since
	// Stamps adds the list of what is struck into metal tags.
	Stamps bool
	// Duplex is for paper printed on both sides: sections of work begin on a page of odd
	// number, which lies on the right.
	Duplex bool
}

// A Pack is all paper of one job, ready to be painted.
type Pack struct {
	Pages    *layout.Doc // the pack
	Tags     *layout.Doc // tags and labels on pages of the paper
	Rolls    []Roll      // those on stocks of other sizes
	TagCount int
	Anchors  map[string]int // the pages of what is told by its page

	retag func(keep func(mark string) bool) // sets only some of the tags
}

// A kind of sheet: its name, for choosing it, its title in the catalogue, and
// the function that sets its flow. What belongs in the list is every sheet of
// the pack that is bound, in the order in which it is bound; tags are apart.
type kind struct {
	name     string
	title    func(*words.Catalogue) string
	flow     func(*composer) []layout.Piece
	handover bool // work stops and starts on this sheet
	follows  bool // it goes on where the sheet before it ends
	ruled    bool // it sets its title beside what it begins with, the sentence that rules it
}

func kinds() []kind {
	return []kind{
		{"front", func(w *words.Catalogue) string { return w.Front.Title }, front, false, false, false},
		{"steps", func(w *words.Catalogue) string { return w.AllSteps.Title }, allSteps, false, true, true},
		{"cautions", func(w *words.Catalogue) string { return w.Cautions.Title }, cautions, false, true, true},
		{"isolations", func(w *words.Catalogue) string { return w.Isolations.Title }, once(isolations), false, true, true},
		{"holds", func(w *words.Catalogue) string { return w.Holds.Title }, once(holds), false, true, true},
		{"openings", func(w *words.Catalogue) string { return w.Openings.Title }, once(openings), false, true, true},
		{"signatures", func(w *words.Catalogue) string { return w.Signatures.Title }, once(signatures), false, true, true},
		{"gather", func(w *words.Catalogue) string { return w.Gather.Title }, once(gather), false, true, true},
		{"register", func(w *words.Catalogue) string { return w.Register.Title }, once(register), false, true, true},
		{"counts", func(w *words.Catalogue) string { return w.Counts.Title }, once(counts), false, true, true},
		{"readings", func(w *words.Catalogue) string { return w.Readings.Title }, once(readings), false, false, false},
		{"traveler", func(w *words.Catalogue) string { return w.Traveler.Title }, traveler, true, false, false},
		{"reassembly", func(w *words.Catalogue) string { return w.Reassembly.Title }, reassembly, true, true, true},
		{"critical", func(w *words.Catalogue) string { return w.Critical.Title }, once(critical), false, true, true},
		{"dimensions", func(w *words.Catalogue) string { return w.Index.Title }, once(index), false, true, true},
		{"lifts", func(w *words.Catalogue) string { return w.Lift.Title }, ownPackage(liftsheet.Sheet), false, true, true},
		{"heats", func(w *words.Catalogue) string { return w.Heat.Title }, ownPackage(heatsheet.Sheet), false, true, true},
		{"tightening", func(w *words.Catalogue) string { return w.Tightening.Title }, ownPackage(jointsheet.Sheet), false, true, true},
		{"alignment", func(w *words.Catalogue) string { return w.Alignment.Title }, ownPackage(alignsheet.Sheet), false, true, true},
		{"found", func(w *words.Catalogue) string { return w.Found.Title }, once(foundToday), false, true, true},
		{"deviations", func(w *words.Catalogue) string { return w.Deviations.Title }, once(deviations), false, true, true},
		{"close-out", func(w *words.Catalogue) string { return w.CloseOut.Title }, closeOut, false, true, true},
		{stampSheet, func(w *words.Catalogue) string { return w.Stamps.Title }, once(stamps), false, false, true},
	}
}

// stampSheet is the name of the list for metal tags, which only a pack has that is asked
// for it.
const stampSheet = "stamps"

// bound are the kinds of sheets of a pack: one that is printed filled has the sheet of
// what came back behind all others, so that their pages keep their numbers.
func (c *composer) bound() []kind {
	out := kinds()
	if c.Filled != nil {
		out = append(out, kind{"filled", func(w *words.Catalogue) string { return w.Filled.Title }, cameBack, false, false, true})
	}
	return out
}

// once is a flow that hangs on nothing but the job and the page numbers that are asked for: it
// is set again where one of those is another. Not so is one that looks at the pages themselves, or
// at the sheets before it.
func once(flow func(*composer) []layout.Piece) func(*composer) []layout.Piece {
	return func(c *composer) []layout.Piece {
		return c.Once(c.own.Name, func() []layout.Piece { return cleared(flow(c)) })
	}
}

// ownPackage is the flow of a sheet that has a package of its own.
func ownPackage(flow func(*block.Composer) []layout.Piece) func(*composer) []layout.Piece {
	return once(func(c *composer) []layout.Piece { return flow(c.Composer) })
}

// A composer sets one job on one paper.
type composer struct {
	*block.Composer
	faces   layout.Measurer
	paper   layout.Paper
	tagging TagOptions
	warn    source.Problems
	draft   bool
	// written are the pages of the boxes on the paper that came back.
	written map[string]int

	duplex bool
	since  *job.Since
	// stamping says that the list of what is struck into metal tags is asked for.
	stamping bool
	levelQ   bool // codes of tags at level Q, for a label without room at level H

	plates map[string]string // the titles of sheets by their names
	sheet  map[string][2]int // first and last page of each sheet, from the pass before
	names  map[int][]string  // the sheets that each page carries, from the pass before
	total  int               // pages of the pack, from the pass before
	before []layout.Sheet    // those on whose last page a sheet goes on
	own    layout.Sheet      // the sheet that is being set, with its head and foot
	// boxesOn counts the boxes of each role on each sheet, from the pass before.
	boxesOn map[string]map[string]int
}

// Compose sets the job on paper. The problems are of text, boxes and signs that
// do not fit, each at the line of the definition it came from; warnings are
// those found before, to be printed on the front sheet.
func Compose(job *job.Job, o Options, m layout.Measurer, warnings source.Problems) (*Pack, source.Problems) {
	w, _ := o.Paper.Inner()
	if o.Words == nil {
		o.Words = inLanguage(job)
	}
	o.Pen.Comma = decimalComma(job, o.Words)
	inner := block.New(m, o.Pen, job, o.Words, w)
	inner.Filled, inner.Last, inner.Thick = o.Filled, o.Last, len(job.Steps()) >= block.ThickFrom
	c := &composer{
		Composer: inner, faces: m, paper: o.Paper, tagging: o.Tags, warn: warnings, draft: o.Draft, duplex: o.Duplex, since: o.Since, stamping: o.Stamps, plates: map[string]string{},
	}
	if o.Printed != nil {
		c.written, c.Printed = o.Printed.Boxes, o.Printed.Anchors
	}
	for _, k := range c.bound() {
		c.plates[k.name] = k.title(c.W)
	}
	if o.Second != nil {
		other := *c.Composer
		other.Job, other.W = o.Second, inLanguage(o.Second)
		c.Other = block.NewSecond(&other)
	}
	if len(job.Dims) > dimension.Many {
		c.Kept = nil // what is kept from pass to pass would take as much memory as the pages
	}
	c.numberLater()
	var refused *layout.Pages // too many: its page numbers are of no use to anyone
	set, _ := layout.Settle(func(known map[string]int, total int) *layout.Pages {
		if refused != nil {
			return refused
		}
		c.Pages, c.total = known, total
		c.NewPass()
		pages := c.paged(c.sheets(), known == nil)
		if len(pages.Frames) > mostPages {
			refused = pages
		}
		return pages
	})
	c.PutPages(set)
	c.Later, c.Kept = nil, nil // what was set lies on the pages: tags are set later, and need none of it
	pack := &Pack{Pages: c.doc(set.Frames, folded(set.Outline)), Anchors: set.Anchors}
	if o.Printed == nil { // else they are pages of another file
		c.link(pack.Pages.Pages)
	}
	// Tags have one size, and are written on at a bench: their boxes do not grow
	// for gloves.
	c.Setter = layout.NewSetter(m, layout.Pen{Comma: o.Pen.Comma})
	pack.retag = func(keep func(string) bool) { c.tags(pack, keep) }
	misfits := problems(job, warnings.Errors() > 0, set.Misfits, c.tags(pack, func(string) bool { return true }))
	return pack, append(misfits, tooThick(job, set.Frames)...)
}

// inLanguage gives the words in the language of a job, English where there are none in
// that language; check has told that before.
func inLanguage(j *job.Job) *words.Catalogue {
	w, err := words.In(j.Language)
	if err != nil {
		return words.English
	}
	return w
}

// decimalComma tells whether numbers are printed with a comma: as the site says, else as
// the language has it.
func decimalComma(j *job.Job, w *words.Catalogue) bool {
	return j.Site.Comma || !j.Site.Point && w.Common.Decimal == ","
}

// sheets sets the flow of every sheet. One that follows another has its title above
// it, for the plate at the head of the page is shared. Sheets of work, whose pages have a foot
// of their own, do not follow lists.
func (c *composer) sheets() []layout.Sheet {
	var out []layout.Sheet
	work := true              // the sheet before is one of work
	guessed := c.Pages == nil // in the first pass what work tells of lists, and others of work, is nearly known
	for _, k := range c.bound() {
		if guessed && len(out) > 0 && (work || k.handover) {
			c.Pages = layout.AnchorPages(c.paper, out)
			c.NewPass()
		}
		follows := k.follows && len(out) > 0 && (work || !k.handover) && out[len(out)-1].Landscape == landscape[k.name]
		c := c.forSheet(k, follows)
		c.before = out
		if !follows {
			c.before = nil
		}
		title := k.title(c.W)
		c.own = layout.Sheet{
			Name: k.name, Title: title, Follows: follows,
			Head: c.headOf(k, title), Foot: c.footOf(k),
			Landscape: landscape[k.name], Steady: k.handover,
		}
		pieces := c.barOthers(k, k.flow(c))
		if len(pieces) == 0 {
			continue
		}
		work = k.handover
		if k.handover {
			c.workPieces(pieces)
		} else {
			pieces = cleared(pieces)
		}
		if follows && !k.ruled {
			pieces = append([]layout.Piece{c.TitleLine(title)}, pieces...)
		}
		c.own.Pieces = pieces
		out = append(out, c.own)
	}
	return out
}

// landscape are set across the page.
var landscape = map[string]bool{"readings": true}

// forSheet is the composer for a sheet: one across the page has another width, and one
// that goes on where another ends has its title beside the sentence that rules it.
func (c *composer) forSheet(k kind, follows bool) *composer {
	own, inner := *c, *c.Composer
	own.Composer = &inner
	if landscape[k.name] {
		inner.Span, _ = c.paper.Turned().Inner()
	}
	inner.Title = ""
	if follows && k.ruled {
		inner.Title = k.title(c.W)
	}
	return &own
}

// doc puts frames into a document with the job's title and date.
func (c *composer) doc(frames []layout.Frame, outline []layout.Entry) *layout.Doc {
	if c.draft {
		c.stamp(frames)
	}
	o, e := c.Job.Order, c.Job.Equipment
	return &layout.Doc{
		Title:   o.Number + " " + c.W.Common.Revision.With(o.Revision) + ": " + e.Tag + " " + e.Name,
		Subject: joinFacts(o.Title, c.Job.Digest), Lang: c.W.Lang, Date: o.Issued, Pages: frames, Outline: outline, Faces: c.faces, BothSides: c.duplex,
	}
}
