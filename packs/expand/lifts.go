package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
)

// resolveLifts ties a step to the lifts that it makes.
func (b *builder) resolveLifts(st *job.Step, ds *def.Step) {
	for _, t := range ds.Lift {
		l, ok := b.Lifts[t.Value]
		if !ok {
			b.Unknown(t, "lift", names.Keys(b.Lifts), "lifts")
			continue
		}
		st.Makes(l)
	}
}
