package packs

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"slices"
	"strconv"

	"matchmark/packs/def"
)

// readSupplies makes the lists. Parts that are always renewed go on the list of
// spares by themselves, one line for all places.
func (b *builder) readSupplies() {
	s := &b.job.Supplies
	s.Tools = b.supplies(b.def.Tools, "tool")
	s.Spares = b.supplies(b.def.Spares, "spare")
	s.Consumables = b.supplies(b.def.Consumables, "consumable")
	b.renewedParts()
	uses := map[*job.Instrument]*job.InstrumentUse{}
	for _, di := range b.def.Instruments {
		if in := b.instruments[di.Key.Value]; in != nil && uses[in] == nil {
			uses[in] = &job.InstrumentUse{Instrument: in}
			s.Instruments = append(s.Instruments, uses[in])
		}
	}
	for _, d := range b.job.Dims {
		if u := uses[d.By]; u != nil {
			u.Dims = append(u.Dims, d)
		}
	}
	// What only reads dimensions that this machine has not is not fetched.
	s.Instruments = slices.DeleteFunc(s.Instruments, func(u *job.InstrumentUse) bool { return len(u.Dims) == 0 })
}

// supplies takes over one written list.
func (b *builder) supplies(list []*def.Supply, what string) []*job.Supply {
	var out []*job.Supply
	for _, d := range list {
		s := &job.Supply{At: d.Key.At, What: d.What.Value, Count: d.Count.Value, Size: d.Size.Value, Note: d.Note.Value}
		if d.Part.Written() {
			if parts := b.partsAt(d.Part, job.Place{}); len(parts) > 0 {
				s.Part = parts[0]
				s.Steps = stepsFitting(parts)
				if s.What == "" {
					s.What = parts[0].Name
				}
			}
		} else if s.What == "" {
			b.problems.Add(d.Key.At, "nothing-named", "this "+what+" does not say what it is", "what: Two-leg puller")
		}
		for _, t := range d.For {
			key, label, named := cut(t.Value)
			all, ok := b.steps[key]
			if !ok {
				b.unknown(t, "step", knownTo(b, b.steps), "steps")
				continue
			}
			for _, st := range pick(b, t, "step", all, func(s *job.Step) job.Place { return s.Place }, job.Place{}, label, named) {
				s.Steps = appendStep(s.Steps, st)
			}
		}
		out = append(out, s)
	}
	return out
}

// renewedParts adds the parts that are always renewed and come off, in the order
// of the parts, and sees that a list written by hand holds enough of them.
func (b *builder) renewedParts() {
	s := &b.job.Supplies
	var must []*job.Supply
	for _, dp := range b.def.Parts {
		parts := b.parts[dp.Key.Value]
		if dp.Renew.Value != "always" || len(parts) == 0 {
			continue
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
			if x.Part == nil || x.Part.Key != dp.Key.Value {
				continue
			}
			written, x.Must = true, true
			if have, err := strconv.Atoi(x.Count); x.Count == "" {
				x.Count = strconv.Itoa(n)
			} else if err == nil && have < n {
				b.problems.Add(x.At, "too-few", "the list has "+x.Count+" of "+source.Quote(dp.Key.Value)+", and "+strconv.Itoa(n)+" are renewed", "count: "+strconv.Itoa(n))
			}
		}
		if !written {
			must = append(must, &job.Supply{At: dp.Key.At, What: parts[0].Name, Part: parts[0], Count: strconv.Itoa(n), Must: true, Steps: stepsFitting(parts)})
		}
	}
	s.Spares = append(must, s.Spares...)
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

func appendStep(list []*job.Step, st *job.Step) []*job.Step {
	for _, x := range list {
		if x == st {
			return list
		}
	}
	return append(list, st)
}
