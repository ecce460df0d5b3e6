package job

import (
	"slices"

	"matchmark/packs/source"
)

// Since are the things of a job that are not as they were in an earlier revision: rows with
// a change bar. Nil stands for no earlier revision.
type Since struct {
	Was   string // the letter of the earlier revision
	Steps map[*Step]bool
	Dims  map[*Dim]bool
	Tags  map[*Tag]bool
	// Others are what stands on sheets of its own, as lifts and hazard notes; Gone are the
	// names of all that the new revision has no more.
	Others []Changed
	Gone   []string
}

// A Changed is a thing that is new or not as it was: where it is written, what it is called
// and, with its kind, its mark or key.
type Changed struct {
	At     source.Pos
	Name   string
	Anchor string
}

// Other reports whether what is written at a place is new or not as it was.
func (s *Since) Other(at source.Pos) bool {
	return s != nil && slices.ContainsFunc(s.Others, func(x Changed) bool { return x.At == at })
}

// Step reports whether a step, or a reading that it takes or sets, is not as it was.
func (s *Since) Step(st *Step) bool {
	if s == nil {
		return false
	}
	for _, list := range [][]*Dim{st.Measure, st.Set} {
		for _, d := range list {
			if s.Dims[d] {
				return true
			}
		}
	}
	return s.Steps[st]
}

// Dim reports whether a dimension is not as it was; one that is printed for several places
// is not where one of them is not.
func (s *Since) Dim(d *Dim) bool {
	if s == nil {
		return false
	}
	for _, x := range d.Merged {
		if s.Dims[x] {
			return true
		}
	}
	return s.Dims[d]
}

// Tag reports whether a tag is new or says another thing.
func (s *Since) Tag(t *Tag) bool { return s != nil && s.Tags[t] }
