package expand

import "matchmark/packs/job"

// readHolds takes over the hold and witness points.
func (b *builder) readHolds() {
	b.Holds = map[string]*job.Hold{}
	for _, dh := range b.Def.Holds {
		h := &job.Hold{At: dh.Mark.At, Mark: dh.Mark.Value, Witness: dh.Kind.Value == "witness", What: dh.What.Value, Releases: dh.Releases.Value}
		if h.Releases == "" {
			b.Problems.Add(dh.Mark.At, "nobody-releases", "hold "+h.Mark+" does not say who releases it", "for example releases: shift engineer")
		}
		b.Holds[h.Mark] = h
		b.Job.Holds = append(b.Job.Holds, h)
	}
}
