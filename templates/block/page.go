package block

import (
	"strconv"

	"matchmark/layout"
)

// Later holds the anchors whose page numbers are put in when all is placed, by their
// index.
type Later struct {
	anchors []string
	index   map[string]int
}

// NewLater holds nothing yet.
func NewLater() *Later { return &Later{index: map[string]int{}} }

// figures are those of the page number of an anchor; not ok where it must be set now.
func (l *Later) figures(anchor string, n int) (text string, ok bool) {
	i, known := l.index[anchor]
	if !known {
		i = len(l.anchors)
		l.index[anchor] = i
		l.anchors = append(l.anchors, anchor)
	}
	return layout.Later(i, n)
}

// PutPages puts the page numbers of the last pass into all texts.
func (c *Composer) PutPages(p *layout.Pages) {
	if c.Later == nil {
		return
	}
	p.PutLater(func(index int) string { return c.page(c.Later.anchors[index]) })
}

// Page is the page of an anchor as printed. In the first pass, when no page is
// known yet, it has the width of two digits, of three in a thick pack. In what is set Once it may be no number yet:
// who compares texts asks SamePage, or takes those of Now or of Blind.
func (c *Composer) Page(anchor string) string {
	page := c.page(anchor)
	if c.Later != nil && c.Kept != nil && c.Kept.within > 0 {
		if text, ok := c.Later.figures(anchor, len(page)); ok {
			c.ask(asked{anchor: anchor, figures: len(page)})
			return text
		}
	}
	c.ask(asked{anchor: anchor, page: page})
	return page
}

// PageOr is the page of an anchor, or of another where nothing was printed by the name of the
// first.
func (c *Composer) PageOr(anchor, other string) string {
	if _, known := c.Pages[anchor]; known || len(c.Pages) == 0 {
		return c.Page(anchor)
	}
	c.ask(asked{anchor: anchor, page: c.page(anchor)})
	return c.Page(other)
}

// SamePage reports whether two anchors are on one page.
func (c *Composer) SamePage(anchor, other string) bool {
	same := c.page(anchor) == c.page(other)
	c.ask(asked{anchor: anchor, other: other, same: same})
	return same
}

// Now is the composer with page numbers that are put in at once: what is compared is set
// again when they change.
func (c *Composer) Now() *Composer {
	now := *c
	now.Later = nil
	return &now
}

// Blind is the composer that knows no page, for texts that are compared but for their page
// numbers.
func (c *Composer) Blind() *Composer {
	blind := *c
	blind.Pages, blind.Later, blind.Kept = nil, nil, nil
	return &blind
}

func (c *Composer) page(anchor string) string {
	for _, pages := range []map[string]int{c.Printed, c.Pages} {
		if n, ok := pages[anchor]; ok {
			return strconv.Itoa(n)
		}
	}
	if c.Thick {
		return "000"
	}
	return "00"
}

func (c *Composer) ask(a asked) {
	if c.Kept != nil {
		c.Kept.asked = append(c.Kept.asked, a)
	}
}

// ThickFrom is how many steps make a pack of which most pages lie behind the hundredth: five
// or six go on a page of the traveler or the reassembly sheet.
const ThickFrom = 800
