package packs

// Reasons lists what binds each step to the steps above it, without what follows
// from the rest: when a step comes after the nut and the nut after the cover, it
// need not be told to come after the cover. The author's own reasons always stay.
func (j *Job) Reasons() map[*Step][]Bind {
	out := map[*Step][]Bind{}
	before := map[*Step]map[*Step]bool{} // all steps that must come before
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			all := map[*Step]bool{}
			// The nearest come first, so that what they imply is known when the
			// others are looked at.
			for _, b := range st.Binds {
				if b.Kind == BoundAfter || !all[b.Before] {
					out[st] = append(out[st], b)
				}
				all[b.Before] = true
				for k := range before[b.Before] {
					all[k] = true
				}
			}
			before[st] = all
		}
	}
	return out
}
