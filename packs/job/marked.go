package job

import "slices"

// Renews reports whether all pieces of a part that a step puts on, for good or for now, are new
// ones: for now that is so where all that came off is scrap.
func (s *Step) Renews(p *Part) bool {
	n := 0
	for _, m := range s.Fit {
		if m.Part == p && !m.New {
			return false
		}
		if m.Part == p {
			n++
		}
	}
	return n > 0 || len(p.Off) > 0 && AnyOf(s.ForNow, p) &&
		!slices.ContainsFunc(p.Off, func(m *Move) bool { return !m.To.Scrap })
}

// MarkedAbove is the step whose mark a part goes on by at a step, nil where none above marks the
// pieces that meet there: the mark of an old piece is none on the new one, on either side of
// the joint.
func (p *Part) MarkedAbove(st *Step) *Step {
	if p.Marked == nil || p.Marked.Index >= st.Index || st.Renews(p) || p.AcrossIsNew(st) {
		return nil
	}
	return p.Marked
}

// AcrossIsNew reports whether the other side of the joint that a part is marked across was renewed
// after the mark was made, down to a step.
func (p *Part) AcrossIsNew(st *Step) bool {
	return p.Across != nil && p.Marked != nil && p.Across.RenewedSince(p.Marked, st)
}

// RenewedSince reports whether a part was renewed below one step, down to another.
func (p *Part) RenewedSince(above, st *Step) bool {
	return slices.ContainsFunc(p.Back, func(m *Move) bool {
		return m.Step.Index > above.Index && m.Step.Index <= st.Index && m.Step.Renews(p)
	})
}
