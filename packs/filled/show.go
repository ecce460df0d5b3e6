package filled

import (
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// Typed is what stands in a box, by its key, as it is printed: the value as it was
// typed, or what is worked out for it; empty where nothing is known, and for a pack that
// is filled by hand (a nil Result).
func (r *Result) Typed(key string) string {
	if r == nil {
		return ""
	}
	b, there := r.blanks[key]
	if !there {
		return ""
	}
	e, typed := r.Values.entries[key]
	if typed && e.NotTaken != "" {
		return ""
	}
	if typed && e.Answer != "" {
		return e.Answer
	}
	known := r.readings(b.Dim, b.When)
	switch {
	case b.Kind == job.GroupBlank:
		if q, err := reading.Together(reading.Group(b.N), r.raw(b.Dim, b.When)); err == nil {
			return Rounded(q, b.Box).Number.Print()
		}
		return ""
	case b.Kind == job.ReadingBlank || b.Kind == job.ResultBlank:
		if q := known.readings[b.N]; q != nil && (!typed || e.Quantity == nil || b.Kind == job.ResultBlank) {
			return Rounded(*q, b.Box).Number.Print()
		} else if q == nil {
			return ""
		}
	}
	if typed && e.Quantity != nil {
		return e.Quantity.Number.Print()
	}
	return ""
}

// Rungs are the lines of a ladder for one position with what is known in their boxes;
// those to be filled by hand where nothing is (a nil Result).
func (r *Result) Rungs(l *job.Ladder, at int) []reading.Rung {
	if r == nil {
		return l.Rungs
	}
	s, there := r.ladder[l]
	if !there {
		return l.Rungs
	}
	return l.Done(at, func(m reading.Mark) []*units.Quantity {
		if m == "" {
			return r.readings(s.dim, job.AsFound).readings
		}
		return r.of(l.Uses, m)
	})
}

// Readings are what is known of a dimension at a time, by position, exact; nil where
// nothing is.
func (r *Result) Readings(d *job.Dim, when job.When) []*units.Quantity {
	return r.readings(d, when).readings
}

// Verdict is that of a dimension at a time.
func (r *Result) Verdict(d *job.Dim, when job.When) (Verdict, bool) {
	for _, v := range r.Verdicts {
		if v.Dim == d && v.When == when {
			return v, true
		}
	}
	return Verdict{}, false
}
