package job

// OldOne is the move by which a new piece goes on for those that this one takes off,
// where they are kept for a while and not scrapped at once: they are held against the
// new ones, or used once more. It is nil where they go back, or to scrap at once.
func (m *Move) OldOne() *Move {
	if m.To.Scrap {
		return nil
	}
	if b := m.PutBack(); b != nil && b.New {
		return b
	}
	return nil
}

// TurnedFrom is from where a part that is turned is seen, empty if it is looked at from
// its own side: only where each of its places is seen from a side of its own is it sure
// which side of the part that shows.
func (j *Job) TurnedFrom(p *Part) string {
	if p.Place.ViewedFrom == "" {
		return ""
	}
	for _, q := range j.Parts {
		if q != p && q.Key == p.Key && q.Place.ViewedFrom == p.Place.ViewedFrom {
			return ""
		}
	}
	return p.Place.ViewedFrom
}

// TagOf is the big part's tag that hangs on a part, nil if none does.
func (j *Job) TagOf(p *Part) *Big {
	for _, b := range j.Bigs {
		if b.Part == p {
			return b
		}
	}
	return nil
}
