package templates

import (
	"bytes"

	"matchmark/layout"
	"matchmark/templates/block"
)

// numberLater lets page numbers be put in when all is placed, so that what prints one is
// set once and not again in each pass. It is not done where a text may hold one of the
// private runes that stand for its figures until then, or where figures are not of one
// width; nor for a pack that is printed filled, whose values come from other files.
func (c *composer) numberLater() {
	if c.Kept == nil || c.Filled != nil || c.Last != nil {
		return
	}
	for _, data := range c.Job.Files {
		if layout.HasLater(string(data)) || bytes.Contains(data, []byte(`\U`)) {
			return
		}
	}
	if c.SetsLater() {
		c.Later = block.NewLater()
	}
}
