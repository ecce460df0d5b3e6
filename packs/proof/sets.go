package proof

import (
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkSets sees that matched sets stay whole: renewed together, named by a tag
// wherever a member lies, and not spread over places that each have a set.
func (r *report) checkSets() {
	for i, s := range r.job.Sets {
		told := i > 0 && r.job.Sets[i-1].Base == s.Base && pieces(r.job.Sets[i-1].Members) < 2 // at the place before
		if n := pieces(s.Members); n < 2 && !told {
			r.problems.Add(s.At, "set-of-one", "the matched set "+s.Mark+" has "+strconv.Itoa(n)+" member; it takes two or more", "set: "+s.Base+" at the parts that belong together")
		}
		r.checkRenewed(s)
		r.checkSpread(s)
		r.checkApart(s)
		for _, p := range s.Members {
			for _, m := range p.Off {
				if m.To.Bench || m.To.Scrap && !p.ComesNew() {
					r.problems.Add(m.At, "set-untagged", p.Called()+" belongs to the matched set "+s.Mark+" and lies where no tag names it",
						"into: a container, or a lay-down spot and a tag under big:")
				}
			}
		}
	}
}

// checkRenewed sees that one member of a set is not renewed always while another
// goes back.
func (r *report) checkRenewed(s *job.Set) {
	var fresh, old *job.Part
	for _, p := range s.Members {
		if p.Renew == "always" {
			fresh = p
		} else {
			old = p
		}
	}
	if fresh != nil && old != nil {
		r.problems.AddWith(fresh.At, "set-split", fresh.Called()+" is always renewed, but "+old.Called()+" of the same matched set "+s.Mark+" goes back old", old.At, "the other member",
			"renew: as set at both, or take one out of the set")
	}
}

// checkApart warns of a matched set of which some pieces lie in one container and some in
// another: one of them is opened, and the set goes back without the rest. Containers of
// one mark that stand at several places count as one; what lies on the floor has a tag.
func (r *report) checkApart(s *job.Set) {
	var first *job.Move
	for _, p := range s.Members {
		for _, m := range p.Off {
			switch c := m.To.Container; {
			case c == nil:
			case first == nil:
				first = m
			case c.Base != first.To.Container.Base:
				r.problems.WarnWith(m.At, "set-apart", m.Part.Called()+" goes into "+m.To.Mark()+" and "+first.Part.Called()+" of the same matched set "+s.Mark+" into "+first.To.Mark(), first.At, "the other piece",
					"put both into one container, or into pockets of one")
				return
			}
		}
	}
}

// checkSpread sees that a set which does not repeat is not made of parts that all
// repeat over the same places: those are as many sets.
func (r *report) checkSpread(s *job.Set) {
	if s.Place.Label != "" || len(s.Members) < 2 {
		return
	}
	keys, groups := map[string]bool{}, map[string]bool{}
	for _, p := range s.Members {
		keys[p.Key] = true
		groups[strings.Join(p.Place.Groups, " ")] = true
	}
	if len(keys) > 1 && len(groups) == 1 && !groups[""] {
		g := s.Members[0].Place.Groups[0]
		r.problems.Add(s.At, "set-spread", "the matched set "+s.Mark+" holds the parts of all places of "+source.Quote(g)+" together", "each: "+g+" makes a set of each of them")
	}
}
