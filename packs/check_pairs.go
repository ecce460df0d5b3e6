package packs

import "strconv"

func count(n int) string { return strconv.Itoa(n) }

// checkPairs sees that every dimension, hold and matched set that is defined is
// also used, and that what is measured is set.
func (b *builder) checkPairs() {
	for _, d := range b.job.Dims {
		if d.FoundAt == nil && d.LeftAt == nil {
			b.problems.Add(d.At, "never-measured", d.Mark+" is measured by no step", "measure: ["+d.Base+"] at the step before its faces part")
			continue
		}
		if d.Left != nil && d.LeftAt == nil {
			b.problems.Add(d.At, "never-set", d.Mark+" has a limit for closing, but no step sets it", "set: ["+d.Base+"] at a step, or reverse: the section that measures it")
		}
		if d.FoundAt == nil && d.Left != nil && d.Left.NeedsFound() {
			b.problems.Add(d.At, "never-found", d.Mark+" must be left as found, but no step measures it as found", "measure: ["+d.Base+"] at the step before its faces part")
		}
	}
	for _, h := range b.job.Holds {
		if h.Step == nil {
			b.problems.Add(h.At, "never-held", h.Mark+" stands at no step", "hold: "+h.Mark+" at the step that waits for it")
		}
	}
	for _, c := range b.job.Cautions {
		if len(c.Steps) == 0 {
			b.problems.Warn(c.At, "never-printed", "the caution "+quote(c.Key)+" stands before no step", "caution: ["+c.Key+"] at the step it belongs to")
		}
	}
	for _, s := range b.job.Sets {
		if n := pieces(s.Members); n < 2 {
			b.problems.Add(s.At, "set-of-one", "the matched set "+s.Mark+" has "+count(n)+" member; it takes two or more", "set: "+s.Base+" at the parts that belong together")
		}
	}
}

func pieces(ps []*Part) int {
	n := 0
	for _, p := range ps {
		n += p.Count
	}
	return n
}
