package putback

import (
	"slices"

	"matchmark/packs/job"
)

// recalled leaves out the rows that do nothing but look up what was recorded: nobody
// signs for that, least of all when the machine is closed. The readings stand at the row
// before, which puts back what they were read on, or else at the nearest one that has room.
// What was read only under a condition stands at a row of that condition, or keeps a row of
// its own: at any other its box would be asked for where nothing was read. What was read
// whatever happens goes to a row that is done whatever happens, where there is one.
func recalled(rows []*job.Step) []*job.Step {
	hosts := slices.DeleteFunc(slices.Clone(rows), onlyRecalls)
	own := map[*job.Step]bool{}
	for i, row := range rows {
		if !onlyRecalls(row) {
			continue
		}
		if host := hostOf(row, nearest(rows, i)); host != nil {
			host.Recall = append(host.Recall, row.Recall...)
		} else if conditional(row) && len(hosts) > 0 {
			own[row] = true
		}
	}
	return slices.DeleteFunc(slices.Clone(rows), func(row *job.Step) bool { return onlyRecalls(row) && !own[row] })
}

// nearest are the rows that do something, the likeliest to take what row i looks up first: the
// one before it, those after it, those further before it.
func nearest(rows []*job.Step, i int) []*job.Step {
	before := slices.DeleteFunc(slices.Clone(rows[:i]), onlyRecalls)
	slices.Reverse(before)
	after := slices.DeleteFunc(slices.Clone(rows[i:]), onlyRecalls)
	n := min(1, len(before))
	return slices.Concat(before[:n], after, before[n:])
}

// hostOf is the row at which the readings of another stand, nil if none can have them.
func hostOf(row *job.Step, hosts []*job.Step) *job.Step {
	var second *job.Step
	for _, h := range hosts {
		switch {
		case h.Undoes.Table:
		case sameCondition(h, row):
			return h
		case second == nil && !conditional(row):
			second = h
		}
	}
	return second
}

// conditional reports whether a row is done only where its step was done.
func conditional(row *job.Step) bool { return row.Undoes.If != nil }

// sameCondition reports whether two rows are done under one condition, or both in any case.
func sameCondition(a, b *job.Step) bool {
	x, y := a.Undoes.If, b.Undoes.If
	if x == nil || y == nil {
		return x == y
	}
	return x.Wrote.Value == y.Wrote.Value && x.Dim == y.Dim && x.Left == y.Left
}

// onlyRecalls reports whether a row has nothing to do, and no words of its author.
func onlyRecalls(row *job.Step) bool {
	return !works(row) && len(row.Set)+len(row.Cautions) == 0
}
