package step

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/templates/block"
)

// saidOf is what the author says of the parts that a line moves: the remark for whoever handles
// them, and where they come off the fit that they sit with. Parts of one name have it said once,
// and of a hub that is drawn off hot the sheet of the heat tells the fit.
func saidOf(c *block.Composer, ms []*job.Move, off bool) []string {
	var out []string
	drawnHot := func(p *job.Part) bool {
		return slices.ContainsFunc(c.Job.Heats, func(h *job.Heat) bool { return h.Hub == p })
	}
	for _, m := range ms {
		for _, text := range []string{m.Part.Note, m.Part.Fit} {
			if text == "" || text == m.Part.Fit && (!off || drawnHot(m.Part)) {
				continue
			}
			if !oneKind(ms) {
				text = m.Part.Name + c.W.Common.Colon + text
			}
			if !slices.Contains(out, text) {
				out = append(out, text)
			}
		}
	}
	return out
}
