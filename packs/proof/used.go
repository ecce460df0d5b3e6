package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkPairs sees that every dimension and hold that is defined is
// also used, and that what is measured is set.
func (r *report) checkPairs() {
	for _, d := range r.job.Dims {
		if d.FoundAt == nil && d.LeftAt == nil && d.OneSided {
			r.problems.Add(d.At, "never-set", d.Mark+" is only set, and no step sets it", "set: ["+d.Base+"] at the step at which it can be read as left")
			continue
		}
		if d.FoundAt == nil && d.LeftAt == nil {
			r.problems.Add(d.At, "never-measured", d.Mark+" is measured by no step", "measure: ["+d.Base+"] at the step before its faces part")
			continue
		}
		if d.OneSided && d.FoundAt != nil {
			r.problems.Warn(d.FoundPos(), "taken-all-the-same", d.Mark+" says found: not taken, and "+d.FoundAt.Name()+" measures it as found", "take "+d.Base+" out of measure:, and write set: ["+d.Base+"] where it is set", "or take found: not taken out")
		}
		if d.Left != nil && d.LeftAt == nil && !d.FoundAt.Section.Unreversed {
			r.problems.Add(d.At, "never-set", d.Mark+" has a limit for closing, but no step sets it", "set: ["+d.Base+"] at a step, or reverse: the section that measures it")
		}
		if d.FoundAt == nil && d.LeftAt != nil && d.FoundJudged() {
			r.problems.Add(d.Wrote.Found.At, "found-unread", d.Mark+" has a limit as found, and no step measures it as found: what is set at "+d.LeftAt.Name()+" would not be judged", "measure: ["+d.Base+"] at the step that takes it as found", "or left: in place of found:, with found: not taken")
		}
		if d.FoundAt == nil && d.Left != nil && d.Left.NeedsFound() {
			r.problems.Add(d.At, "never-found", d.Mark+" must be left as found, but no step measures it as found", "measure: ["+d.Base+"] at the step before its faces part")
		} else if d.FoundAt == nil && d.Left != nil && len(d.Left.Marks()) == 0 && !d.OneSided {
			r.problems.Warn(d.At, "one-sided", d.Mark+" is set at "+d.LeftAt.Name()+" and never measured as found", "measure: ["+d.Base+"] at the step before its faces part", "or found: not taken")
		}
	}
	for _, h := range r.job.Holds {
		if h.Step == nil {
			r.problems.Add(h.At, "never-held", h.Mark+" stands at no step", "hold: "+h.Mark+" at the step that waits for it")
		}
	}
	for _, c := range r.job.Cautions {
		if len(c.Steps) == 0 {
			r.problems.Warn(c.At, "never-printed", "the caution "+source.Quote(c.Key)+" stands before no step", "caution: ["+c.Key+"] at the step it belongs to")
		}
	}
}

func pieces(ps []*job.Part) int {
	n := 0
	for _, p := range ps {
		n += p.Count
	}
	return n
}

// checkBackWords warns of words for a put-back row that has nothing to put back,
// since written steps do it: the row would be a second one for the same work.
func (r *report) checkBackWords() {
	for _, s := range r.job.Sections {
		for _, row := range s.Steps {
			if row.Undoes == nil || row.Do == "" || len(row.Undoes.Remove)+len(row.Undoes.Loosen) == 0 {
				continue
			}
			if len(row.Fit)+len(row.Set)+len(row.Recall)+len(row.Tighten)+len(row.Close)+len(row.Seen) > 0 {
				continue
			}
			see := row.Undoes.At
			for _, m := range row.Undoes.Remove {
				if x := m.PutBack(); x != nil {
					see = x.At
				}
			}
			r.problems = append(r.problems, source.Problem{
				Pos: row.Undoes.PutBack.At, Severity: source.Warning, Code: "back-twice",
				Message: "back: of " + row.Undoes.Name() + " makes a row of its own, but what the step takes off is put back by written steps",
				Help:    []string{"take back: out"}, See: []source.Also{{Pos: see, What: "put back here"}},
			})
		}
	}
}
