package packs

import "matchmark/packs/job"

// readHolds takes over the hold and witness points.
func (b *builder) readHolds() {
	b.holds = map[string]*job.Hold{}
	for _, dh := range b.def.Holds {
		h := &job.Hold{At: dh.Mark.At, Mark: dh.Mark.Value, Witness: dh.Kind.Value == "witness", What: dh.What.Value, Releases: dh.Releases.Value}
		if h.Releases == "" {
			b.problems.Add(dh.Mark.At, "nobody-releases", "hold "+h.Mark+" does not say who releases it", "releases: shift engineer")
		}
		b.holds[h.Mark] = h
		b.job.Holds = append(b.job.Holds, h)
	}
}
