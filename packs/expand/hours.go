package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// readHours takes over how long each step is planned to take and how many people, and its
// generated put-back row.
func (b *builder) readHours(st *job.Step, ds *def.Step) {
	st.Hours = b.hoursOf(ds.Hours)
	if m := &st.Mirror; ds.BackHours.Written() {
		m.Hours = b.hoursOf(ds.BackHours)
		if m.At.IsZero() {
			m.At = ds.BackHours.At
		}
	}
	if n, ok := names.WholeNumber(ds.People); ok {
		st.People = b.crewOf(ds.People, n)
	}
	if n, ok := names.WholeNumber(ds.BackPeople); ok {
		st.Mirror.People = b.crewOf(ds.BackPeople, n)
		if st.Mirror.At.IsZero() {
			st.Mirror.At = ds.BackPeople.At
		}
	}
}

// What one step may take at the most, and how fine its hours are: lists and sums have the
// room for these. More of either is a slipped point (common practice, no source).
const mostHours, mostPeople, finestHours = 999, 99, 2

// hoursOf reads a number of hours, nil if none is written, or no step takes so many.
func (b *builder) hoursOf(t source.Text) *units.Number {
	if !t.Written() {
		return nil
	}
	n, err := units.ParseNumber(t.Value)
	switch {
	case err != nil:
		return nil // the reader has told
	case n.Cmp(units.Whole(mostHours)) > 0:
		b.Problems.Add(t.At, "beyond-a-step", t.Value+" hours are more than one step takes: a slipped point?", "for example hours: 4.5", "what takes longer in several steps, each with its hours")
		return nil
	case n.Decimals() > finestHours:
		n = b.coarser(t, n)
	}
	return &n
}

// coarser is a number of hours as fine as work is planned: without the zeros that say nothing,
// or else rounded up, which is told.
func (b *builder) coarser(t source.Text, n units.Number) units.Number {
	var up units.Number
	for d := 0; d <= finestHours; d++ {
		if up = n.Round(d, units.Up); up.Cmp(n) == 0 {
			return up
		}
	}
	b.Problems.Warn(t.At, "beyond-a-step", t.Value+" hours are finer than work is planned: "+up.Text()+" are printed", "hours: "+up.Text())
	return up
}

// crewOf is how many people a step takes, one where nobody could tell so many apart.
func (b *builder) crewOf(t source.Text, n int) int {
	if n <= mostPeople {
		return n
	}
	b.Problems.Add(t.At, "beyond-a-step", t.Value+" people are more than work at one step", "for example people: 2")
	return 1
}
