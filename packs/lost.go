package packs

import (
	"matchmark/packs/job"
)

// nothing is what lost-by: says when no step of the job destroys a reading.
const nothing = "nothing"

// resolveLost ties each dimension to the steps and parts that its lost-by: names.
func (b *builder) resolveLost() {
	for _, dd := range b.def.Dimensions {
		for _, d := range b.dims[dd.Mark.Value] {
			for _, t := range dd.LostBy {
				key, label, named := cut(t.Value)
				steps, isStep := b.steps[key]
				all, isPart := b.parts[key]
				switch {
				case isStep:
					for _, st := range pick(b, t, "step", steps, func(s *job.Step) job.Place { return s.Place }, d.Place, label, named) {
						d.LostBy = append(d.LostBy, job.LostBy{At: t.At, Step: st})
					}
				case isPart:
					for _, p := range pick(b, t, "part", all, func(p *job.Part) job.Place { return p.Place }, d.Place, label, named) {
						d.LostBy = append(d.LostBy, job.LostBy{At: t.At, Part: p})
					}
				case key != nothing:
					b.unknown(t, "step or part", append(knownTo(b, b.steps), append(knownTo(b, b.parts), nothing)...), "steps or parts")
				}
			}
		}
	}
}
