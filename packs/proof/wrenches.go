package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/units"
)

// A wrench is a tool whose size is a range of torque.
type wrench struct {
	*job.Supply
	low, high units.Quantity
}

// reaches reports whether all of a torque lies within the range of the wrench.
func (w wrench) reaches(t job.Torque) bool {
	under, errLow := t.Low.Cmp(w.low)
	over, errHigh := t.High.Cmp(w.high)
	return errLow == nil && errHigh == nil && under >= 0 && over <= 0
}

// isFor reports whether the wrench is fetched for a step; one that names no step is for
// all.
func (w wrench) isFor(st *job.Step) bool { return len(w.Steps) == 0 || slices.Contains(w.Steps, st) }

// checkWrenches sees that each torque lies within the range of a wrench that is fetched
// for the step: whoever stands there with the wrong one guesses. A list without
// a wrench whose size is a range of torque says nothing of wrenches.
func (r *report) checkWrenches() {
	var list []wrench
	for _, t := range r.job.Supplies.Tools {
		if low, high, err := units.ParseRange(t.Size); err == nil && low.Unit.Dimension() == units.Torque {
			list = append(list, wrench{t, low, high})
		}
	}
	if len(list) == 0 {
		return
	}
	told := map[string]bool{} // once for all places of a joint
	for _, st := range r.walk.Steps {
		for _, f := range st.Tighten {
			if f.Joint == nil || told[f.Joint.Base] {
				continue
			}
			for _, s := range f.Joint.Torques() {
				if !r.noWrench(st, f, s, list) {
					continue
				}
				told[f.Joint.Base] = true
				break
			}
		}
	}
}

// noWrench tells of a torque that no wrench of the list reaches at a step.
func (r *report) noWrench(st *job.Step, f job.Fastening, s job.Torque, list []wrench) bool {
	elsewhere := -1
	for i, w := range list {
		if w.reaches(s) {
			if w.isFor(st) {
				return false
			}
			elsewhere = i
		}
	}
	what := f.Joint.Mark + " is tightened to " + s.Text + " at " + st.Name()
	if elsewhere >= 0 {
		w := list[elsewhere]
		r.problems.WarnWith(f.At, "no-wrench", what+", and "+w.What+" "+w.Size+", which reaches it, is not fetched for that step", w.At, "the wrench", "write the step behind its for: as well")
		return true
	}
	r.problems.WarnWith(f.At, "no-wrench", what+", and no torque wrench on the list of tools reaches it", list[0].At, "a wrench on the list", "add one under tools:, its size: a range that holds the torque")
	return true
}
