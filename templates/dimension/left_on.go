package dimension

import (
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
)

// leftOn tells of a reading that is only recorded what is to be left, and on which pages:
// those of dimensions at like places.
func (p *limitParts) leftOn(c *block.Composer, ds ...*job.Dim) []string {
	if p.later == nil {
		return nil
	}
	var pages []string
	for i, d := range ds {
		if i == 0 || !c.SamePage("left "+d.Mark, "left "+ds[i-1].Mark) {
			pages = append(pages, c.Page("left "+d.Mark))
		}
	}
	return []string{p.later(strings.Join(pages, ", "))}
}

// leftOnFound tells beside a reading that is only recorded as found how it is to be left, on
// those pages: what is recorded then too is told so, for there is no limit to be left at.
func leftOnFound(c *block.Composer, d *job.Dim, pages string) string {
	if len(d.LeftBy) == 0 && d.Left.Kind == reading.Record {
		return c.W.Dimension.LeftRecorded.With(pages)
	}
	return c.W.Dimension.LeftOnFound.With(leftWords(c, d), pages)
}
