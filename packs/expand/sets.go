package expand

import (
	"matchmark/packs/job"
	"matchmark/packs/names"
)

// readSets repeats every matched set over its places.
func (b *builder) readSets() {
	b.Sets = map[string][]*job.Set{}
	for _, ds := range b.Def.Sets {
		places := b.Over(ds.Each)
		b.CheckVarying(ds.What, "what the set is", places)
		for _, pl := range places {
			s := &job.Set{At: ds.Mark.At, Mark: pl.Mark(ds.Mark.Value), Base: ds.Mark.Value, Place: pl, What: names.ValueAt(pl, ds.What), Why: ds.Why.Value}
			b.Sets[s.Base] = append(b.Sets[s.Base], s)
			b.Job.Sets = append(b.Job.Sets, s)
		}
	}
}
