package putback

import (
	"slices"

	"matchmark/packs/job"
)

// works reports whether a put-back row does something at the machine, besides
// setting and looking up readings.
func works(row *job.Step) bool {
	return len(row.Fit)+len(row.Tighten)+len(row.Close)+len(row.Lifts)+len(row.Heats)+len(row.Seen) > 0 || row.Do != ""
}

// guardAgain puts the guards of a step before its put-back row as well: what the
// author warns of, asks for and has seen in taking apart holds for putting back,
// unless the author says why not. A row that only looks readings up needs none, and
// what guards the making safe is not asked for again where the row only sets what
// was read then.
func guardAgain(st, row *job.Step) {
	if !works(row) && (len(row.Set) == 0 || st.Locks()) {
		return
	}
	m := &st.Mirror
	cautions, permits := m.Cautions, m.Permits
	if !m.Leaves(job.GuardCaution) {
		cautions = union(st.Cautions, cautions)
	}
	if !m.Leaves(job.GuardPermit) {
		permits = union(st.Permits, permits)
	}
	for _, c := range cautions {
		c.Steps = append(c.Steps, row)
	}
	for _, p := range permits {
		p.Steps = append(p.Steps, row)
	}
	row.Cautions, row.Said, row.Permits = cautions, slices.Clone(cautions), permits
	switch {
	case m.Hold != nil:
		m.Hold.Step, row.Hold = row, m.Hold
	case st.Hold != nil && !m.Leaves(job.GuardHold):
		st.Hold.Again, row.Hold = row, st.Hold
	}
	switch {
	case m.Check != "":
		row.Check = m.Check
	case !m.Leaves(job.GuardCheck):
		row.Check = st.Check
	}
	row.UnderLoad = st.UnderLoad
	for _, w := range m.Without {
		if st.HasGuard(w.Guard) {
			row.Without = append(row.Without, w)
		}
	}
}

// union lists what stands in one list or the other, once each.
func union[T comparable](a, b []T) []T {
	var out []T
	seen := map[T]bool{}
	for _, list := range [][]T{a, b} {
		for _, x := range list {
			if !seen[x] {
				seen[x] = true
				out = append(out, x)
			}
		}
	}
	return out
}
