package walk

import (
	"slices"

	"matchmark/packs/job"
)

// acrossFrom lists the parts that a dial of an alignment hangs on besides its own: the bracket
// stands on the other hub and the dial runs on this one, so that it reads nothing once either
// machine, or a hub that a dial of the alignment is read on, is moved. Of reverse dials that is
// either hub; of rim and face both dials are on one, and the other, which no reading names, ends
// nothing by itself. Empty for a reading of no alignment, and
// for one that its author says nothing ends.
func (w *Walk) acrossFrom(d *job.Dim) []*job.Part {
	if d.LostByNothing {
		return nil
	}
	own := HangsOn(d)
	var out []*job.Part
	add := func(p *job.Part) {
		if p != nil && !slices.Contains(own, p) && !slices.Contains(out, p) {
			out = append(out, p)
		}
	}
	for _, a := range w.Job.Alignments {
		if !reads(a, d) {
			continue
		}
		for _, p := range a.Machines {
			add(p)
		}
		for _, x := range w.Job.Dims {
			if reads(a, x) && !x.LostByNothing {
				for _, p := range HangsOn(x) {
					add(p)
				}
			}
		}
	}
	return out
}

// reads reports whether a reading is a dial of an alignment.
func reads(a *job.Alignment, d *job.Dim) bool {
	for _, x := range a.Read {
		if x == d {
			return true
		}
	}
	return false
}
