package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/units"
)

// readHours takes over how long each step is planned to take. A generated put-back
// row has no time of its own.
func (b *builder) readHours(st *job.Step, ds *def.Step) {
	if !ds.Hours.Written() {
		return
	}
	if n, err := units.ParseNumber(ds.Hours.Value); err == nil { // else the reader has told
		st.Hours = &n
	}
}
