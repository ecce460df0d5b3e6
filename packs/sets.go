package packs

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// readSets repeats every matched set over its places.
func (b *builder) readSets() {
	b.sets = map[string][]*job.Set{}
	for _, ds := range b.def.Sets {
		places := b.over(ds.Each)
		b.checkVarying(ds.What, "what the set is", places)
		for _, pl := range places {
			s := &job.Set{At: ds.Mark.At, Mark: pl.Mark(ds.Mark.Value), Base: ds.Mark.Value, Place: pl, What: valueAt(pl, ds.What), Why: ds.Why.Value}
			b.sets[s.Base] = append(b.sets[s.Base], s)
			b.job.Sets = append(b.job.Sets, s)
		}
	}
}

// setAt finds the matched set that a part names.
func (b *builder) setAt(t source.Text, from job.Place) *job.Set {
	key, label, named := cut(t.Value)
	all, ok := b.sets[key]
	if !ok {
		b.unknown(t, "matched set", knownTo(b, b.sets), "sets")
		return nil
	}
	found := pick(b, t, "set", all, func(s *job.Set) job.Place { return s.Place }, from, label, named)
	if len(found) != 1 {
		if len(found) > 1 {
			b.problems.Add(t.At, "which-place", "the set "+t.Value+" stands at several places", "name the place: "+found[0].Mark)
		}
		return nil
	}
	return found[0]
}
