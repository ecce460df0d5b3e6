package block

import (
	"slices"

	"matchmark/packs/job"
)

// OldPieces say which of the pieces that some moves take off do not go back: they are
// kept until the new ones are on, and are then scrap.
func OldPieces(c *Composer, ms []*job.Move) []string {
	var out []string
	for _, m := range ms {
		b := m.OldOne()
		if b == nil {
			continue
		}
		if text := c.W.Step.OldThenScrap.With(m.Part.Name, c.StepRef(b.Step)); !slices.Contains(out, text) {
			out = append(out, text)
		}
	}
	return out
}
