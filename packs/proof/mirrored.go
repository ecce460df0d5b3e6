package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkMirrored sees that what an author writes for the put-back row of a step has a
// row to stand at, and leaves out only what the step has, and what does not stand at the
// row all the same by what is done there.
func (r *report) checkMirrored() {
	rows := map[source.Pos]bool{}                // of the steps that have a row at some place
	spare := map[source.Pos]map[job.Guard]bool{} // of those whose cautions, or permits, some row has not
	for _, st := range r.walk.Steps {
		if st.Undoes != nil {
			rows[st.Undoes.At] = true
			noteSpares(spare, st)
		}
	}
	told := map[source.Pos]bool{}
	for _, st := range r.walk.Steps {
		r.checkBackText(st, rows[st.At], told)
		m := &st.Mirror
		if st.Undoes != nil || told[st.At] || m.At.IsZero() {
			continue
		}
		if !rows[st.At] {
			told[st.At] = true
			r.problems.Add(m.At, "no-put-back-row", st.Name()+" has no generated put-back row, and this is written for one", "take it out, and write it at the step that puts back what "+st.No+" takes off")
			continue
		}
		for _, w := range m.Without {
			if !st.HasGuard(w.Guard) {
				told[st.At] = true
				r.problems.Add(w.At, "nothing-left-out", "this leaves out "+guardWords[w.Guard]+" at the put-back row of "+st.Name()+", and the step has none", "take it out")
			} else if w.Guard == job.GuardCaution && !spare[st.At][w.Guard] {
				told[st.At] = true
				r.problems.Warn(w.At, "nothing-left-out", "this leaves out cautions at the put-back row of "+st.Name()+", and all of them stand there by what the row does", "take it out")
			} else if w.Guard == job.GuardPermit && !spare[st.At][w.Guard] {
				told[st.At] = true
				r.problems.Warn(w.At, "nothing-left-out", "this leaves out permits at the put-back row of "+st.Name()+", and all of them are named beside it", "take it out, or name only those in back-permit: that the row asks for")
			}
		}
	}
}

// noteSpares notes of a step which of its guards a put-back row of it has not.
func noteSpares(spare map[source.Pos]map[job.Guard]bool, row *job.Step) {
	of := spare[row.Undoes.At]
	if of == nil {
		of = map[job.Guard]bool{}
		spare[row.Undoes.At] = of
	}
	of[job.GuardCaution] = of[job.GuardCaution] || len(row.Spares()) > 0
	of[job.GuardPermit] = of[job.GuardPermit] || len(row.SparePermits()) > 0
}

// checkBackText warns of a text for the put-back row of a step that has none, for steps
// written by hand put all of it back: it stands on no sheet.
func (r *report) checkBackText(st *job.Step, row bool, told map[source.Pos]bool) {
	byHand := func(m *job.Move) bool { return m.PutBack() != nil }
	if t := st.PutBack; !row && t.Written() && !strings.HasPrefix(t.Value, "none") && !told[st.At] && slices.ContainsFunc(st.Remove, byHand) {
		told[st.At] = true
		r.problems.Warn(t.At, "no-put-back-row", "back: of "+st.Name()+" is printed nowhere: it has no generated put-back row", "take it out, and say it at the step that puts back what "+st.No+" takes off")
	}
}

// guardWords name the guards of a step.
var guardWords = map[job.Guard]string{
	job.GuardCaution: "a caution", job.GuardPermit: "a permit", job.GuardHold: "a hold", job.GuardCheck: "a second check",
}
