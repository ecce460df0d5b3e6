package packs

import (
	"matchmark/packs/job"
	"strconv"
)

// checkMoves sees that every container is filled by a step and emptied by one.
func (b *builder) checkMoves() {
	for _, c := range b.job.Containers {
		in, out := job.Pieces(c.In), job.Pieces(c.Out)
		if in > 0 && b.unreversed[c.In[0].Step.Section] {
			continue // spoken of at the section
		}
		switch {
		case in == 0:
			b.problems.Add(c.At, "never-filled", "nothing goes into "+c.Mark, "name it in the into: of a step, or take it out")
		case out == 0:
			b.problems.Add(c.At, "never-emptied", "nothing comes out of "+c.Mark+" again", "put its parts back with fit:, or reverse: the section")
		case out < in:
			b.problems.Add(c.At, "never-emptied", strconv.Itoa(in)+" pieces go into "+c.Mark+" and "+strconv.Itoa(out)+" come out again", "put its parts back with fit:, or reverse: the section")
		}
	}
}
