package packs

import "matchmark/packs/job"

// closeContainers writes every container into the closing row of the section in
// which its last piece comes out: there it must be empty. A container that a step
// names by itself is left to that step.
func (b *builder) closeContainers() {
	named := map[*job.Container]bool{}
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			for _, c := range st.Empty {
				named[c] = true
			}
		}
	}
	for _, c := range b.job.Containers {
		if named[c] || len(c.In) == 0 || job.Pieces(c.In) != job.Pieces(c.Out) {
			continue
		}
		last := c.Out[0].Step
		for _, m := range c.Out {
			if m.Step.Index > last.Index {
				last = m.Step
			}
		}
		steps := last.Section.Steps
		end := steps[len(steps)-1]
		end.Empty = append(end.Empty, c)
	}
}
