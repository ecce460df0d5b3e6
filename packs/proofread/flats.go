package proofread

import "matchmark/packs/job"

// checkFlats sees that limits can be hit by an adjuster that is locked on one of its flats
// or slots: where they lie nearer together than one flat moves, the one may be below them
// and the next above. Limits that hang on the reading as found are met where it stood.
func (b *proofreader) checkFlats(d *job.Dim) {
	if d.PerFlat == nil || d.Left == nil {
		return
	}
	for i := range d.Left.Tests {
		low, high, ok := d.Left.Tests[i].Limits()
		if !ok || low == nil || high == nil {
			continue
		}
		flat, err := d.PerFlat.Convert(low.Unit)
		apart := *high
		apart.Number = high.Number.Sub(low.Number)
		if err != nil || apart.Number.Cmp(flat.Number) >= 0 {
			continue
		}
		p := d.Adjuster
		b.Problems.WarnWith(d.LimitPos(), "between-flats",
			d.Mark+": the limits are "+apart.Text()+" apart, and one flat of "+p.Called()+" moves "+d.PerFlat.Text()+": locked on a flat it can miss them", p.At, "the adjuster",
			"take flats: out of "+p.Key+", if it is locked wherever it stands", "or ask whoever gives the limits for wider ones")
		return
	}
}
