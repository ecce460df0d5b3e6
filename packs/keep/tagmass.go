package keep

import (
	"matchmark/packs/job"
	"matchmark/packs/units"
)

// handMass is the mass from which a tag says how heavy its thing is, so that nobody
// takes it off the shelf unawares: common practice, no source.
var handMass = units.Quantity{Number: units.Whole(20), Unit: units.Kilogram}

// weighTags gives every tag the mass of what it hangs on: of a big part its own, of
// a container the parts in it whose mass is known, where they are over handMass.
func weighTags(j *job.Job) {
	for _, t := range j.Tags {
		if t.Part != nil {
			t.Mass = t.Part.Mass
			continue
		}
		var sum *units.Quantity
		all := true
		for _, m := range t.All() {
			if m.Part.Mass == nil {
				all = false
				continue
			}
			q := *m.Part.Mass
			q.Number = q.Number.Mul(units.Whole(int64(m.N)))
			if sum != nil {
				next, err := sum.Add(q)
				if err != nil {
					all = false
					continue
				}
				q = next
			}
			sum = &q
		}
		if sum == nil {
			continue
		}
		if over, err := sum.Cmp(handMass); err == nil && over > 0 {
			t.Mass, t.MassAtLeast = sum, !all
		}
	}
}
