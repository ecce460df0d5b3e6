package packs

import (
	"matchmark/packs/units"
)

// readHours takes over how long each step is planned to take, and adds up what
// is planned until each step is done, in the order of work. A generated put-back
// row has no time of its own.
func (b *builder) readHours() {
	total := units.Whole(0)
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			ds := b.stepDefs[st]
			if ds == nil || !ds.Hours.Written() {
				continue
			}
			n, err := units.ParseNumber(ds.Hours.Value)
			if err != nil {
				continue // the reader takes numbers only and has told so
			}
			total = total.Add(n)
			sum := total
			st.Hours, st.HoursSoFar = &n, &sum
		}
	}
	b.job.Hours = total
}
