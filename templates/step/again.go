package step

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
)

// againAt is the place, in the order of a step, of the boxes that ask whether it is done
// again: at its end, but before the locks come off and the permit is handed back, for nobody
// goes back to the work after that, and before what is read when all tries are made; where the
// same verb has both, behind it, and its readings are parted there. It is -1 for a step that is
// done once.
func againAt(st *job.Step, order []job.Verb) int {
	if st.Until == nil {
		return -1
	}
	at := len(order)
	for _, act := range slices.Backward(st.Acts()) {
		switch act.Verb {
		case job.DoUnlock, job.DoUnlockForNow, job.DoHandBack:
			at = slices.Index(order, act.Verb)
		case job.DoSet:
			tried, after := triedAndAfter(st)
			if len(after) == 0 {
				return at
			}
			if at = slices.Index(order, job.DoSet); len(tried) > 0 {
				return at + 1
			}
		case job.DoHold, job.DoEmpty: // below all else
		default:
			return at
		}
	}
	return at
}

// readAfterTries reports whether a reading is one that the tries do not hang on: written below
// until:, which does not name it, and read in none of them.
func readAfterTries(st *job.Step, read job.Act) bool {
	return st.Until.At.Before(read.At) && st.Until.Dim != read.Dim &&
		!slices.ContainsFunc(st.EachTry, func(x job.TryAct) bool { return x.Dim == read.Dim })
}

// triedAndAfter are the readings that a step sets, parted: those of every try, and those that
// are taken once when all tries are made.
func triedAndAfter(st *job.Step) (tried, after []*job.Dim) {
	if st.Until == nil {
		return st.Set, nil
	}
	once := map[*job.Dim]bool{}
	for _, act := range st.Acts() {
		if act.Verb == job.DoSet {
			once[act.Dim] = readAfterTries(st, act)
		}
	}
	for _, d := range st.Set {
		if once[d] {
			after = append(after, d)
		} else {
			tried = append(tried, d)
		}
	}
	return tried, after
}

// setInTwo are the readings that a step sets above the boxes of its tries, and below them; all
// above where these do not stand just below.
func setInTwo(st *job.Step, order []job.Verb) (above, below []*job.Dim) {
	tried, after := triedAndAfter(st)
	if at := againAt(st, order); at < 0 || at != slices.Index(order, job.DoSet)+1 || len(tried) == 0 || len(after) == 0 {
		return st.Set, nil
	}
	return tried, after
}

// setRun is a run of some of the readings that a step sets.
func setRun(c *block.Composer, st *job.Step, ds []*job.Dim, at int, elsewhere bool) run {
	blocks, row := dimension.Blocks(c, ds, dimension.Left, st.At, elsewhere)
	return run{at: at, blocks: blocks, reason: row}
}
