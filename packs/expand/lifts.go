package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
)

// resolveLifts ties a step to the lifts that it makes, and to those whose load it sets down.
func (b *builder) resolveLifts(st *job.Step, ds *def.Step) {
	for _, t := range ds.Lift {
		l, ok := b.Lifts[t.Value]
		if !ok {
			b.Unknown(t, "lift", names.Keys(b.Lifts), "lifts")
			continue
		}
		st.Makes(l)
	}
	for _, t := range ds.SetDown {
		if l, ok := b.Lifts[t.Value]; ok {
			st.SetDown = append(st.SetDown, l)
		} else {
			b.Unknown(t, "lift", names.Keys(b.Lifts), "lifts")
		}
	}
	st.UnderLoad = ds.UnderLoad
}
