package putback

import (
	"slices"

	"matchmark/packs/job"
)

// alignAgain ties a put-back row that sets the dials of a coupling to its alignment, so that
// the row names the sheet by which the feet are moved, and the sheet names the row. A row that
// only looks up what was recorded aligns nothing.
func alignAgain(st, row *job.Step) {
	for _, a := range st.Align {
		sets := slices.ContainsFunc(row.Set, func(d *job.Dim) bool {
			for _, read := range a.Read {
				if read == d {
					return true
				}
			}
			return false
		})
		if sets {
			row.Align = append(row.Align, a)
			a.Steps = append(a.Steps, row)
		}
	}
}
