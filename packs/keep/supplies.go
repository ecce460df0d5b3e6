package keep

import (
	"slices"
	"strconv"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// Supplies completes the lists of what is fetched. Parts that are always renewed go on
// the list of spares by themselves, one line for all places; every instrument gets
// the dimensions that it reads.
func Supplies(j *job.Job) source.Problems {
	s := &j.Supplies
	var problems source.Problems
	for _, list := range [][]*job.Supply{s.Tools, s.Spares, s.Consumables} {
		for _, x := range list {
			usedAt(j, x, &problems)
		}
	}
	problems = append(problems, renewed(j)...)
	uses := map[*job.Instrument]*job.InstrumentUse{}
	for _, in := range j.Instruments {
		uses[in] = &job.InstrumentUse{Instrument: in}
		s.Instruments = append(s.Instruments, uses[in])
	}
	for _, d := range j.Dims {
		if u := uses[d.By]; u != nil {
			u.Dims = append(u.Dims, d)
		}
	}
	// What only reads dimensions that this machine has not is not fetched. What reads none at
	// all is: the gauge of a pump that stretches bolts.
	s.Instruments = slices.DeleteFunc(s.Instruments, func(u *job.InstrumentUse) bool { return len(u.Dims) == 0 && u.ForDims })
	return problems
}

// usedAt lists the steps at which something is used: those that put back the part that it
// is for, or have the aid that it is; those that its author names, and their put-back
// rows. A torque wrench loosens nothing: it is fetched for what is tightened.
func usedAt(j *job.Job, x *job.Supply, problems *source.Problems) {
	named, back := x.Steps, undoing(j, x.Steps)
	x.Steps = append(stepsFitting(x.Parts), stepsAiding(j, x.Parts)...)
	all := append(slices.Clone(named), back...)
	switch x.Only {
	case "off":
		all = named
	case "back":
		all = back
		why := "no step behind its for: has a put-back row"
		if len(named) == 0 {
			why = "it names no step, and none puts back a part that it is for"
		}
		if len(back) == 0 && (len(named) > 0 || len(x.Steps) == 0) {
			problems.Add(x.At, "only-back", source.Quote(x.What)+" is used in putting back alone, and "+why, "leave the key only: away, or name the step that is put back by a reverse: line")
		}
	}
	for _, st := range all {
		x.Steps = appendStep(x.Steps, st)
	}
	if low, _, err := units.ParseRange(x.Size); err == nil && low.Unit.Dimension() == units.Torque {
		if tight := slices.DeleteFunc(slices.Clone(x.Steps), func(st *job.Step) bool { return !turnsTorque(st) }); len(tight) > 0 {
			x.Steps = tight
		}
	}
}

// turnsTorque reports whether something can have a torque at a step: it is tightened, must
// break loose with one, or nothing is taken apart there.
func turnsTorque(st *job.Step) bool {
	return len(st.Tighten) > 0 || len(st.Loosen)+len(st.Remove) == 0 || slices.ContainsFunc(st.Loosen, func(f job.Fastening) bool { return f.Joint != nil && f.Joint.Spec.BreaksLoose != nil })
}

// stepsAiding lists the steps at which aids go on for now or come out again.
func stepsAiding(j *job.Job, aids []*job.Part) []*job.Step {
	var out []*job.Step
	for _, st := range j.Steps() {
		if slices.ContainsFunc(slices.Concat(st.ForNow, st.TakeOut), func(m *job.Move) bool { return m.Part.Aid && slices.Contains(aids, m.Part) }) {
			out = append(out, st)
		}
	}
	return out
}

// renewed adds the parts that are always renewed and come off, or are added, in the order of the
// parts, and sees that a list written by hand holds enough of them.
func renewed(j *job.Job) source.Problems {
	var problems source.Problems
	s := &j.Supplies
	var must []*job.Supply
	for i, first := range j.Parts {
		if first.Renew != "always" && !first.Added() || i > 0 && j.Parts[i-1].Key == first.Key {
			continue
		}
		var parts []*job.Part
		for _, p := range j.Parts[i:] {
			if p.Key != first.Key {
				break
			}
			parts = append(parts, p)
		}
		n := 0
		for _, p := range parts {
			if p.Back != nil {
				n += p.Count
			}
		}
		if n == 0 {
			continue
		}
		written := false
		for _, x := range s.Spares {
			if len(x.Parts) == 0 || x.Parts[0].Key != first.Key {
				continue
			}
			written, x.Must = true, !first.Added()
			if have, err := strconv.Atoi(x.Count); x.Count == "" {
				x.Count = strconv.Itoa(n)
			} else if err == nil && have < n {
				problems.Add(x.At, "too-few", "the list has "+x.Count+" of "+source.Quote(first.Key)+", and "+strconv.Itoa(n)+" are renewed", "count: "+strconv.Itoa(n))
			}
		}
		if !written {
			must = append(must, &job.Supply{At: first.At, What: first.Name, Parts: parts, Count: strconv.Itoa(n), Must: !first.Added(), Steps: stepsFitting(parts)})
		}
	}
	s.Spares = append(must, s.Spares...)
	return problems
}

// stepsFitting lists the steps that put parts back, in the order of work.
func stepsFitting(parts []*job.Part) []*job.Step {
	var out []*job.Step
	for _, p := range parts {
		for _, m := range p.Back {
			out = appendStep(out, m.Step)
		}
	}
	return out
}

// undoing lists the generated put-back rows of some steps: what a step is done with, its
// row is done with as well.
func undoing(j *job.Job, steps []*job.Step) []*job.Step {
	var out []*job.Step
	for _, st := range j.Steps() {
		if st.Undoes != nil && slices.Contains(steps, st.Undoes) {
			out = append(out, st)
		}
	}
	return out
}

func appendStep(list []*job.Step, st *job.Step) []*job.Step {
	for _, x := range list {
		if x == st {
			return list
		}
	}
	return append(list, st)
}
