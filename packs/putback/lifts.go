package putback

import (
	"cmp"
	"slices"

	"matchmark/packs/job"
)

// liftBack lets a put-back row make the lifts again with which its step took off
// what the row puts back. Where a lift was stopped on its way, the row of each stop
// makes it as well: the load comes down to the stop, and from there on.
func (b *undoer) liftBack(st, row *job.Step) {
	for _, l := range slices.Backward(st.Lifts) {
		if slices.ContainsFunc(row.Fit, func(m *job.Move) bool { return l.Carries(m.Part) }) || b.stages[l] && !l.MovedBy(st) {
			row.Makes(l)
		}
	}
}

// inStages lists the lifts that are made by several steps in taking apart, and
// whose way back is made by generated rows.
func (b *undoer) inStages() map[*job.Lift]bool {
	place := map[*job.Step]int{}
	var all []*job.Step
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			place[st] = len(all)
			all = append(all, st)
		}
	}
	stages := map[*job.Lift]bool{}
	for _, l := range b.job.Lifts {
		if len(l.Steps) < 2 || slices.ContainsFunc(l.Steps, func(st *job.Step) bool { return slices.ContainsFunc(st.Fit, carriedBy(l)) }) {
			continue
		}
		moved := slices.ContainsFunc(l.Steps, l.MovedBy)
		for _, st := range l.Steps {
			for _, m := range st.Remove {
				stages[l] = stages[l] || l.Carries(m.Part) && b.goesBack(m)
			}
		}
		if moved {
			continue
		}
		// Raised and lowered again, with nothing of it taken off: up and down again
		// where something that was done under it is to be undone.
		first, last := place[l.Steps[0]], place[l.Steps[len(l.Steps)-1]]
		for _, st := range all[min(first, last):max(first, last)] {
			stages[l] = stages[l] || slices.ContainsFunc(st.Remove, b.goesBack) || slices.ContainsFunc(st.Loosen, func(f job.Fastening) bool { return !has(b.tight, f) })
		}
	}
	return stages
}

// goesBack reports whether a generated row puts back what a move takes off.
func (b *undoer) goesBack(m *job.Move) bool {
	return b.stock[m] > 0 && (!m.To.Scrap || m.Part.ComesNew())
}

func carriedBy(l *job.Lift) func(*job.Move) bool {
	return func(m *job.Move) bool { return l.Carries(m.Part) }
}

// sortByOrder puts the steps of lifts and permits in the order of work.
func sortByOrder(j *job.Job) {
	order := func(a, b *job.Step) int { return cmp.Compare(a.Index, b.Index) }
	for _, l := range j.Lifts {
		slices.SortStableFunc(l.Steps, order)
	}
	for _, p := range j.Permits {
		slices.SortStableFunc(p.Steps, order)
	}
}
