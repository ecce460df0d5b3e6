package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkKept sees that what is taken off can be told apart where it lies: parts of
// two places are not mixed in one bag, and what lies on the floor has a tag.
func (r *report) checkKept() {
	type slot struct {
		c      *job.Container
		pocket string
		key    string
	}
	first := map[slot]*job.Move{}
	for _, c := range r.job.Containers {
		for _, m := range c.In {
			s := slot{c, m.To.Pocket, m.Part.Key}
			if was := first[s]; was == nil {
				first[s] = m
			} else if was.Part != m.Part {
				r.problems.AddWith(m.At, "mixed", was.Part.Called()+" and "+m.Part.Called()+" would lie mixed in "+m.To.Mark(), c.At, "the container",
					"each: "+m.Part.Place.Groups[0]+" makes a container of each", "or a pocket of each: pockets: ["+m.Part.Place.Groups[0]+"], and into: "+c.Base+"/"+m.Part.Place.Groups[0])
				break
			}
		}
	}
	tagged := map[string]bool{}
	for _, b := range r.job.Bigs {
		tagged[b.Part.Key] = true
	}
	for _, p := range r.job.Parts {
		for _, m := range p.Off {
			if m.To.Spot != nil && !tagged[p.Key] {
				r.problems.AddWith(m.At, "no-tag", p.Called()+" goes to "+m.To.Spot.Mark+" and has no tag", m.To.Spot.At, "the spot", "big: {B1: {part: "+p.Key+"}}, or a container")
			}
		}
	}
	for i, b := range r.job.Bigs {
		if i > 0 && r.job.Bigs[i-1].Base == b.Base && !b.Repeats {
			was := r.job.Bigs[i-1].Part
			if i > 1 && r.job.Bigs[i-2].Base == b.Base {
				continue // told at the second place
			}
			r.problems.AddWith(b.At, "one-tag", b.Base+" is one tag, but "+source.Quote(b.Part.Key)+" stands at "+was.Place.Label+" and "+b.Part.Place.Label, was.At, "the part",
				"each: "+was.Place.Groups[0])
		}
	}
}
