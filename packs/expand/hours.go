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
	st.Hours = hoursOf(ds.Hours)
	if m := &st.Mirror; ds.BackHours.Written() {
		m.Hours = hoursOf(ds.BackHours)
		if m.At.IsZero() {
			m.At = ds.BackHours.At
		}
	}
	if n, ok := names.WholeNumber(ds.People); ok {
		st.People = n
	}
	if n, ok := names.WholeNumber(ds.BackPeople); ok {
		st.Mirror.People = n
		if st.Mirror.At.IsZero() {
			st.Mirror.At = ds.BackPeople.At
		}
	}
}

// hoursOf reads a number of hours, nil if none is written.
func hoursOf(t source.Text) *units.Number {
	if !t.Written() {
		return nil
	}
	n, err := units.ParseNumber(t.Value)
	if err != nil {
		return nil // the reader has told
	}
	return &n
}
