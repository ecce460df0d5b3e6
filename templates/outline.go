package templates

import (
	"regexp"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/step"
	"matchmark/templates/words"
)

// workPieces puts a line for each step of work into the outline, below that of its
// section; on paper that is printed on both sides a section begins on the right.
func (c *composer) workPieces(pieces []layout.Piece) {
	steps := map[string]*job.Step{}
	for _, s := range c.Job.Sections {
		for _, st := range s.Steps {
			steps["step "+st.No] = st
		}
	}
	for i := range pieces {
		p := &pieces[i]
		if p.Title != "" {
			p.NewPage, p.RightHand = p.NewPage || c.duplex, c.duplex
			continue
		}
		for _, a := range p.Block.Anchors() {
			if st := steps[a.Name]; st != nil {
				p.Title, p.Level = st.No+"  "+beginning(c.Decimals(step.Text(c.Composer, st))), 2
				break
			}
		}
	}
}

// beginning is the first words of a text, for a line of the outline.
func beginning(text string) string {
	const most = 60
	text = strings.Join(strings.Fields(strings.ReplaceAll(text, "\u00a0", " ")), " ")
	if len(text) <= most {
		return text
	}
	if i := strings.LastIndexByte(text[:most], ' '); i > 0 {
		return text[:i] + " …"
	}
	return text
}

// folded folds the lines of sections, so that the outline opens as a list of sheets and
// sections.
func folded(outline []layout.Entry) []layout.Entry {
	for i := range outline {
		outline[i].Closed = outline[i].Level > 0
	}
	return outline
}

// pageNumber is a page as the sheets name it: the catalogue sets a no-break space
// between the two, which no author types.
func (c *composer) pageNumber() *regexp.Regexp {
	page := func(w *words.Catalogue) string {
		text := string(w.Common.StepPage)
		return regexp.QuoteMeta(strings.TrimSpace(text[strings.Index(text, " ")+1 : strings.LastIndex(text, "%")]))
	}
	before := page(c.W)
	if c.Other != nil {
		before += "|" + page(c.Other.W)
	}
	return regexp.MustCompile("(?:" + before + ")\u00a0([0-9]+)")
}

// link makes every page number that is printed a link to its page.
func (c *composer) link(frames []layout.Frame) {
	pageNumber := c.pageNumber()
	for i := range frames {
		f := &frames[i]
		for k, it := range f.Items {
			t, ok := it.Shape.(layout.Text)
			if !ok || !strings.Contains(t.S, layout.NoBreak) { // none is
				continue
			}
			for _, m := range pageNumber.FindAllStringSubmatchIndex(t.S, -1) {
				n, err := strconv.Atoi(t.S[m[2]:m[3]])
				if err != nil || n < 1 || n > len(frames) {
					continue
				}
				f.Links = append(f.Links, c.linkOver(f, k, t, m[0], m[1], n))
			}
		}
	}
}

// linkOver is the link over a part of a text on a page.
func (c *composer) linkOver(f *layout.Frame, item int, t layout.Text, from, to, page int) layout.Link {
	st := layout.Style{Face: t.Face, Size: t.Size}
	over := f.Items[item]
	before := t
	before.Width = c.Width(st, t.S[:from])
	over.Shape = before
	_, t0, r0, _ := over.Bounds()
	before.Width = c.Width(st, t.S[:to])
	over.Shape = before
	left, top, right, bottom := over.Bounds()
	out := layout.Link{Left: left, Top: top, Right: right, Bottom: bottom, Page: page}
	if over.Turn == 0 {
		out.Left = r0
	} else {
		// Set across: the text runs up the page.
		out.Bottom = t0
	}
	for _, p := range f.Parts {
		if item >= p.From && item < p.To {
			out.Sheet = p.Sheet
		}
	}
	return out
}
