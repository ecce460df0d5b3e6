package dimension

import (
	"strings"

	"matchmark/packs/job"
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
