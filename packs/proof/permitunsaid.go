package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkPermitUnsaid warns of a step that opens what a person can be in, where nobody can tell
// from the words of its permits whether one is for going in: they are in another language. The
// note of the enclosed space and the count before it is closed hang on that permit at all
// further steps.
func (r *report) checkPermitUnsaid() {
	for _, st := range r.walk.Steps {
		i := slices.IndexFunc(st.Open, func(o *job.Opening) bool { return o.Enclosed })
		if i < 0 || st.Undoes != nil || slices.ContainsFunc(st.Permits, r.job.IsEntry) {
			continue
		}
		for _, p := range st.Permits {
			if len(p.For) > 0 || r.job.HasEnglish(p.What) {
				continue
			}
			r.problems.WarnWith(p.At, "permit-unsaid", st.Name()+" opens "+st.Open[i].Mark()+", which a person can be in, and the words of the permit "+source.Quote(p.Key)+" do not tell in English whether it is for going in", st.At, "the step",
				"for: entry at the permit, where it is, else for: work", "or its English beside it: what: {"+r.job.Language+": …, en: Entry permit}")
			return
		}
	}
}
