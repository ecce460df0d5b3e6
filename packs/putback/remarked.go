package putback

import (
	"slices"

	"matchmark/packs/job"
)

// remarked makes of a mark that is to meet where a new piece goes on a mark to be made: that of
// the old piece goes to scrap with it.
func remarked(j *job.Job) {
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			var meet []*job.Part
			for _, p := range st.Meet {
				if !st.Renews(p) {
					meet = append(meet, p)
					continue
				}
				st.Marks = append(st.Marks, p)
			}
			st.Meet = slices.Clip(meet)
		}
	}
}
