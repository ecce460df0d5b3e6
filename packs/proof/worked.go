package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkWorked sees that a value which is judged at closing is worked out from what is
// in the machine then: not from a reading that is taken again later, nor from one of a
// part that has been renewed meanwhile, nor from readings all taken before.
func (r *report) checkWorked() {
	told := map[source.Pos]bool{} // once for all places
	for _, d := range r.job.Dims {
		if d.LeftAt == nil || d.LeftWork.Formula == nil || !d.Judged() || told[d.At] {
			continue
		}
		told[d.At] = r.workedEarly(d)
	}
}

// workedEarly tells of one value, and reports whether it did.
func (r *report) workedEarly(d *job.Dim) bool {
	all := true // inputs are as found
	for _, u := range d.LeftWork.Formula.Uses {
		all = all && !u.Left
		for _, in := range u.Dims {
			if u.Left {
				continue
			}
			if in.LeftAt != nil {
				r.problems.AddWith(d.LeftPos(), "stale-input", d.Mark+" is worked out as left at "+d.LeftAt.Name()+" from "+in.Mark+" as found; "+in.Mark+" is set only at "+in.LeftAt.Name(), in.LeftPos(), "set here",
					"set "+d.Base+" at or below "+in.LeftAt.No)
				return true
			}
			if m := r.renewedSince(in, d); m != nil {
				r.problems.AddWith(d.LeftPos(), "stale-input", d.Mark+" is worked out as left at "+d.LeftAt.Name()+" from "+in.Mark+", which was read on the old "+lowerName(m.Part.Name), m.At, "the new one goes on here",
					"set: ["+in.Base+"] on the new one, above "+d.Base)
				return true
			}
		}
	}
	if all && d.FoundAt != nil {
		r.problems.WarnWith(d.LimitPos(), "stale-input", d.Mark+" as left can only come out as it was found: all that it is worked out from was read at strip-down", d.FoundPos(), "worked out as found here",
			"set its inputs as well, below all that can change them", "or write its limit as found:, if nothing can")
	}
	return all && d.FoundAt != nil
}

// renewedSince finds the move by which a part that a reading was taken on is new when
// a value is worked out from it, nil if none is.
func (r *report) renewedSince(in, d *job.Dim) *job.Move {
	read, worked := r.walk.Measured(in), r.walk.Set(d)
	if read == nil || worked == nil {
		return nil
	}
	on := append(walk.HangsOn(in), in.Of.Part)
	for _, p := range on {
		if p == nil {
			continue
		}
		for _, m := range p.Back {
			if e := r.walk.Moved(m); m.New && p.Renew == "always" && e != nil && e.Index > read.Index && e.Index < worked.Index {
				return m
			}
		}
	}
	return nil
}
