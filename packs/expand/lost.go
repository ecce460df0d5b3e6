package expand

import (
	"matchmark/packs/job"
	"matchmark/packs/names"
)

// nothing is what lost-by: says when no step of the job destroys a reading.
const nothing = "nothing"

// resolveLost ties each dimension to the steps and parts that its lost-by: names.
func (b *builder) resolveLost() {
	for _, dd := range b.Def.Dimensions {
		for _, d := range b.Dims[dd.Mark.Value] {
			for _, t := range dd.LostBy {
				key, label, named := names.Cut(t.Value)
				steps, isStep := b.Steps[key]
				all, isPart := b.Parts[key]
				switch {
				case isStep:
					for _, st := range names.Pick(b.Index, t, "step", steps, func(s *job.Step) job.Place { return s.Place }, d.Place, label, named) {
						d.LostBy = append(d.LostBy, job.LostBy{At: t.At, Step: st})
					}
				case isPart:
					for _, p := range names.Pick(b.Index, t, "part", all, func(p *job.Part) job.Place { return p.Place }, d.Place, label, named) {
						d.LostBy = append(d.LostBy, job.LostBy{At: t.At, Part: p})
					}
				case key != nothing:
					b.Unknown(t, "step or part", append(names.KnownTo(b.Index, b.Steps), append(names.KnownTo(b.Index, b.Parts), nothing)...), "steps or parts")
				}
			}
		}
	}
}
