package packs

// readHolds and readCautions take over what steps name.
func (b *builder) readHolds() {
	b.holds = map[string]*Hold{}
	for _, dh := range b.def.Holds {
		h := &Hold{At: dh.Mark.At, Mark: dh.Mark.Value, Witness: dh.Kind.Value == "witness", What: dh.What.Value, Releases: dh.Releases.Value}
		if h.Releases == "" {
			b.problems.Add(dh.Mark.At, "nobody-releases", "hold "+h.Mark+" does not say who releases it", "releases: shift engineer")
		}
		b.holds[h.Mark] = h
		b.job.Holds = append(b.job.Holds, h)
	}
}

func (b *builder) readCautions() {
	b.cautions = map[string]*Caution{}
	for _, dc := range b.def.Cautions {
		c := &Caution{
			At: dc.Key.At, Key: dc.Key.Value, Signal: dc.Signal.Value,
			Hazard: dc.Hazard.Value, Result: dc.Result.Value, Avoid: dc.Avoid.Value, Rule: dc.Rule.Value,
		}
		for _, s := range dc.Signs {
			c.Signs = append(c.Signs, s.Value)
		}
		b.cautions[c.Key] = c
		b.job.Cautions = append(b.job.Cautions, c)
	}
}
