package filled

import (
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A Result is what comes of the readings of one job.
type Result struct {
	Job      *job.Job
	Values   *Values
	Verdicts []Verdict // in the order of work, as found and then as left
	Missing  []job.Blank
	Moves    []Moves
	Problems source.Problems // what the values say of each other

	blanks map[string]job.Blank
	taken  map[side]*taken
	ladder map[*job.Ladder]side
}

// A side is one dimension at one time.
type side struct {
	dim  *job.Dim
	when job.When
}

// taken is what is known of one dimension at one time, by position; what is not known
// is nil or empty.
type taken struct {
	readings []*units.Quantity // worked out where they are: exact
	answers  []string
	notTaken string
}

// Work works everything out that the values allow.
func Work(j *job.Job, v *Values) *Result {
	r := &Result{Job: j, Values: v, blanks: map[string]job.Blank{}, taken: map[side]*taken{}, ladder: map[*job.Ladder]side{}}
	for _, b := range j.Blanks() {
		r.blanks[b.Key()] = b
	}
	for _, d := range j.Dims {
		r.keepLadders(d, job.AsFound, d.FoundWork)
		r.keepLadders(d, job.AsLeft, d.LeftWork)
	}
	for _, when := range []job.When{job.AsFound, job.AsLeft} {
		for _, d := range j.Dims {
			if r.reads(d, when) {
				r.readings(d, when)
				r.wholesAgree(d, when)
				r.Verdicts = append(r.Verdicts, r.judge(d, when))
			}
		}
	}
	r.missing()
	r.moves()
	r.Problems.Sort()
	return r
}

// reads reports whether a dimension is written at a time.
func (r *Result) reads(d *job.Dim, when job.When) bool {
	_, there := r.blanks[job.BlankKey(d.Mark, when, d.ReadingKind(), 0)]
	return there
}

// keepLadders notes whose ladders they are.
func (r *Result) keepLadders(d *job.Dim, when job.When, w job.Working) {
	r.ladder[w.Formula] = side{d, when}
	for _, l := range w.Limits {
		for _, one := range []*job.Ladder{l.At, l.Low, l.High} {
			r.ladder[one] = side{d, when}
		}
	}
}

// entry is what was typed for a box.
func (r *Result) entry(d *job.Dim, when job.When, kind job.BlankKind, n int) (Entry, bool) {
	e, there := r.Values.entries[job.BlankKey(d.Mark, when, kind, n)]
	return e, there
}

// readings are what is known of a dimension at a time: as typed, and what is worked
// out from what was typed.
func (r *Result) readings(d *job.Dim, when job.When) *taken {
	at := side{d, when}
	if t, known := r.taken[at]; known {
		return t
	}
	n := max(d.Positions.Boxes(), 1)
	t := &taken{readings: make([]*units.Quantity, n), answers: make([]string, n)}
	r.taken[at] = t // a ring of formulas, which check refuses, ends here
	for i := range n {
		e, there := r.entry(d, when, d.ReadingKind(), i)
		if !there {
			continue
		}
		t.answers[i] = e.Answer
		if e.NotTaken != "" {
			t.notTaken = e.NotTaken
		}
		t.readings[i] = e.Quantity
	}
	switch {
	case d.Leaves() > 0:
		r.leaves(d, when, t)
	case d.OneIs != nil:
		r.stamped(d, when, t)
	case d.Formula != nil:
		r.formula(d, when, t)
	}
	r.cooled(d, when, t)
	return t
}

// of gives the readings that a ladder or a limit takes of a mark.
func (r *Result) of(uses []job.Use, m reading.Mark) []*units.Quantity {
	for _, u := range uses {
		if u.Mark != m {
			continue
		}
		when := job.AsFound
		if u.Left {
			when = job.AsLeft
		}
		var out []*units.Quantity
		for _, d := range u.Dims {
			out = append(out, r.readings(d, when).readings...)
		}
		return out
	}
	return nil
}

// env is what is known where the value of some ladders is worked out.
func (r *Result) env(d *job.Dim, ladders ...*job.Ladder) reading.Env {
	return reading.Env{
		Found: r.readings(d, job.AsFound).readings,
		Readings: func(m reading.Mark) []*units.Quantity {
			for _, l := range ladders {
				if l == nil {
					continue
				}
				if out := r.of(l.Uses, m); out != nil {
					return out
				}
			}
			return nil
		},
	}
}

// working is what is worked out by hand for a dimension at a time.
func working(d *job.Dim, when job.When) job.Working {
	if when == job.AsLeft {
		return d.LeftWork
	}
	return d.FoundWork
}
