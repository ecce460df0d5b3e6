package keep

import "matchmark/packs/job"

// Close writes every container into the step that takes its last piece out: there it
// must be empty. A container that a step names by itself is left to that step.
func Close(j *job.Job) {
	named := map[*job.Container]bool{}
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			for _, e := range st.Empty {
				named[e.In] = true
			}
		}
	}
	for _, c := range j.Containers {
		if named[c] || len(c.In) == 0 || job.Pieces(c.In) != job.Pieces(c.Out) {
			continue
		}
		in, out := lastOf(c.In), lastOf(c.Out)
		if in.Index < out.Index { // else a piece is put back before it comes off, which is told
			out.Empty = append(out.Empty, job.Emptied{In: c})
		}
	}
}

// lastOf is the last step of some moves in the order of work.
func lastOf(moves []*job.Move) *job.Step {
	last := moves[0].Step
	for _, m := range moves {
		if m.Step.Index > last.Index {
			last = m.Step
		}
	}
	return last
}
