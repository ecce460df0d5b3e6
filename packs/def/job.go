package def

import (
	"strings"

	"matchmark/packs/nearest"
	"matchmark/packs/source"
)

// A JobFile is what a job file says: the job, and what it says otherwise about
// the machine that the definition describes.
type JobFile struct {
	At        source.Pos
	Job       Order
	Equipment Equipment
	Options   []Named // option and "yes", "no" or one of its builds
	Gear      []*Gear
	Cranes    []*Crane
}

// Override puts what a job file says in place of what the definition says, one
// value at a time; a piece of gear or a crane as a whole, by its name. An option
// that the definition does not have is a problem.
func (d *Definition) Override(j *JobFile) source.Problems {
	replace := func(to *source.Text, by source.Text) {
		if by.Written() {
			*to = by
		}
	}
	o, e := &d.Job, &d.Equipment
	for _, v := range []struct {
		to *source.Text
		by source.Text
	}{
		{&o.Number, j.Job.Number}, {&o.Title, j.Job.Title}, {&o.Revision, j.Job.Revision},
		{&o.Issued, j.Job.Issued}, {&o.Scope, j.Job.Scope}, {&o.Planner, j.Job.Planner},
		{&o.Starts, j.Job.Starts}, {&o.HoursADay, j.Job.HoursADay},
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
	for _, g := range j.Gear {
		d.Gear = instead(d.Gear, g, func(g *Gear) string { return g.Key.Value })
	}
	for _, c := range j.Cranes {
		d.Cranes = instead(d.Cranes, c, func(c *Crane) string { return c.Key.Value })
	}
	var problems source.Problems
	for _, n := range j.Options {
		d.choose(n, &problems)
	}
	return problems
}

// choose takes over what a job file says of one option.
func (d *Definition) choose(n Named, problems *source.Problems) {
	var names []string
	for _, opt := range d.Options {
		names = append(names, opt.Key.Value)
		if opt.Key.Value != n.Name.Value {
			continue
		}
		switch {
		case len(opt.Builds) > 0:
			opt.Chosen = n.Value
		case n.Value.Value == "yes" || n.Value.Value == "no":
			opt.Fitted = n.Value
		default:
			problems.Add(n.Value.At, "yes-or-no", quote(n.Value.Value)+": "+n.Name.Value+" is an option that is fitted or not", "write: yes, or: no")
		}
		return
	}
	help := "the definition has no options"
	if len(names) > 0 {
		help = "options of the definition: " + strings.Join(names, ", ")
	}
	if near := nearest.Word(n.Name.Value, names); near != "" {
		help = "did you mean " + near + "?"
	}
	problems.Add(n.Name.At, "unknown-name", quote(n.Name.Value)+" is not an option of this definition", help)
}

// instead puts a thing in the place of the one of the same name, or adds it.
func instead[T any](list []T, by T, name func(T) string) []T {
	for i := range list {
		if name(list[i]) == name(by) {
			list[i] = by
			return list
		}
	}
	return append(list, by)
}
