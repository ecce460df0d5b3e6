package step

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/templates/block"
)

// spotText is where a spot is, and where something is first laid down on it also on what, and
// what the floor carries there: unless the sheet of a lift tells it.
func spotText(c *block.Composer, s *job.Spot, st *job.Step) string {
	text := s.What
	told := func(l *job.Lift) bool { return l.LayDown == s }
	if firstOn(c.Job, s) != st || slices.ContainsFunc(c.Job.Lifts, told) {
		return text
	}
	if s.Support != "" {
		text += ", " + c.W.Common.On.With(s.Support)
	}
	if s.Floor != "" {
		text += ", " + c.W.Step.Floor.With(s.Floor)
	}
	return text
}

// firstOn is the step that first lays a part down on a spot.
func firstOn(j *job.Job, s *job.Spot) *job.Step {
	for _, sec := range j.Sections {
		for _, st := range sec.Steps {
			if slices.ContainsFunc(st.Remove, func(m *job.Move) bool { return m.To.Spot == s }) {
				return st
			}
		}
	}
	return nil
}

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
				text = m.Part.Name + ": " + text
			}
			if !slices.Contains(out, text) {
				out = append(out, text)
			}
		}
	}
	return out
}
