package expand

import (
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
)

// readSupplies makes the lists. Parts that are always renewed go on the list of
// spares by themselves, one line for all places.
func (b *builder) readSupplies() {
	s := &b.Job.Supplies
	s.Tools = b.supplies(b.Def.Tools, "tool")
	s.Spares = b.supplies(b.Def.Spares, "spare")
	s.Consumables = b.supplies(b.Def.Consumables, "consumable")
}

// supplies takes over one written list.
func (b *builder) supplies(list []*def.Supply, what string) []*job.Supply {
	var out []*job.Supply
	for _, d := range list {
		s := &job.Supply{At: d.Key.At, What: d.What.Value, Count: d.Count.Value, Size: d.Size.Value, Note: d.Note.Value, Only: d.Only.Value}
		if d.Part.Written() {
			s.Parts = b.PartsAt(d.Part, job.Place{})
			switch {
			case s.What != "":
			case len(s.Parts) > 0:
				s.What = s.Parts[0].Name
			default:
				s.What = d.Part.Value // no part is called so: it is spoken of as written
			}
		} else if s.What == "" {
			b.Problems.Add(d.Key.At, "nothing-named", "this "+what+" does not say what it is", "for example what: Two-leg puller")
		}
		for _, t := range d.For {
			key, label, named := names.Cut(t.Value)
			all, ok := b.Steps[key]
			if !ok {
				b.Unknown(t, "step", names.KnownTo(b.Index, b.Steps), "steps")
				continue
			}
			for _, st := range names.Pick(b.Index, t, "step", all, func(s *job.Step) job.Place { return s.Place }, job.Place{}, label, named) {
				if !slices.Contains(s.Steps, st) {
					s.Steps = append(s.Steps, st)
				}
			}
		}
		out = append(out, s)
	}
	return out
}
