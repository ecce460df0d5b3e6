package def

import (
	"strings"

	"matchmark/packs/source"
)

// A JobFile is what a job file says: the job, and what it says otherwise about
// the machine that the definition describes.
type JobFile struct {
	At        source.Pos
	Job       Order
	Equipment Equipment
	Options   []Named // option and whether it is fitted: "yes" or "no"
}

// Override puts what a job file says in place of what the definition says, one
// value at a time. An option that the definition does not have is a problem.
func (d *Definition) Override(j *JobFile) source.Problems {
	replace := func(to *Text, by Text) {
		if by.Written() {
			*to = by
		}
	}
	o, e := &d.Job, &d.Equipment
	for _, v := range []struct {
		to *Text
		by Text
	}{
		{&o.Number, j.Job.Number}, {&o.Title, j.Job.Title}, {&o.Revision, j.Job.Revision},
		{&o.Issued, j.Job.Issued}, {&o.Scope, j.Job.Scope}, {&o.Planner, j.Job.Planner},
		{&e.Tag, j.Equipment.Tag}, {&e.Name, j.Equipment.Name}, {&e.Serial, j.Equipment.Serial},
		{&e.Maker, j.Equipment.Maker}, {&e.Type, j.Equipment.Type}, {&e.Location, j.Equipment.Location},
	} {
		replace(v.to, v.by)
	}
	if o.At.IsZero() {
		o.At = j.Job.At
	}
	if e.At.IsZero() {
		e.At = j.Equipment.At
	}
	var problems source.Problems
	for _, n := range j.Options {
		var names []string
		found := false
		for _, opt := range d.Options {
			if opt.Key.Value == n.Name.Value {
				opt.Fitted, found = n.Value, true
			}
			names = append(names, opt.Key.Value)
		}
		if found {
			continue
		}
		help := "the definition has no options"
		if len(names) > 0 {
			help = "options of the definition: " + strings.Join(names, ", ")
		}
		if near := source.Nearest(n.Name.Value, names); near != "" {
			help = "did you mean " + near + "?"
		}
		problems.Add(n.Name.At, "unknown-name", quote(n.Name.Value)+" is not an option of this definition", help)
	}
	return problems
}
