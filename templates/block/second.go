package block

import (
	"matchmark/layout"
	"matchmark/packs/job"
)

// Paper in two languages: what is done, cautions, holds and what is measured stand
// small in the second language under the first. Both jobs are made from one definition,
// so that things have the same marks and numbers in both.

// A Second is the same job in the second language, with its things by number and mark.
type Second struct {
	*Composer
	steps map[string]*job.Step
	notes map[string]*job.Caution
	holds map[string]*job.Hold
	dims  map[string]*job.Dim
}

// NewSecond makes the second language of a composer from one that has the job and the
// words in that language.
func NewSecond(c *Composer) *Second {
	s := &Second{Composer: c, steps: map[string]*job.Step{}, notes: map[string]*job.Caution{}, holds: map[string]*job.Hold{}, dims: map[string]*job.Dim{}}
	for _, section := range c.Job.Sections {
		for _, st := range section.Steps {
			s.steps[st.No] = st
		}
	}
	for _, n := range c.Job.Notes {
		s.notes[n.Key] = n
	}
	for _, h := range c.Job.Holds {
		s.holds[h.Mark] = h
	}
	for _, d := range c.Job.Dims {
		s.dims[d.Mark] = d
	}
	return s
}

// Under is the run of a text in the second language below one in the first; none where
// both are the same.
func (c *Composer) Under(first string, second func(*Second) string) []layout.Run {
	text := c.inSecond(first, second)
	if text == "" {
		return nil
	}
	return []layout.Run{layout.T(layout.Sub, "\n"+text)}
}

// inSecond is a text in the second language, empty where there is none or it is the same.
func (c *Composer) inSecond(first string, second func(*Second) string) string {
	if c.Other == nil {
		return ""
	}
	text := second(c.Other)
	if text == first {
		return ""
	}
	return text
}

// Step is a step in the second language, nil where it has none.
func (s *Second) Step(st *job.Step) *job.Step { return s.steps[st.No] }

// NoteHazard is what a hazard note warns of, in the second language.
func (s *Second) NoteHazard(n *job.Caution) string {
	if o := s.notes[n.Key]; o != nil {
		return s.Note(o).Hazard
	}
	return ""
}

// NoteText is a hazard note in the second language, as it stands before a step.
func (s *Second) NoteText(n *job.Caution) string {
	o := s.notes[n.Key]
	if o == nil {
		return ""
	}
	o = s.Note(o)
	if o.Short != "" {
		return o.Hazard + " " + o.Short
	}
	return o.Hazard + " " + o.Avoid
}

// HoldText is what a hold asks for in the second language.
func (s *Second) HoldText(h *job.Hold) string {
	if o := s.holds[h.Mark]; o != nil {
		return o.What
	}
	return ""
}

// DimText is what is measured in the second language.
func (s *Second) DimText(d *job.Dim) string {
	if o := s.dims[d.Mark]; o != nil {
		return o.What
	}
	return ""
}
