package packs

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// readGuards takes over isolations, permits and openings.
func (b *builder) readGuards() {
	b.isolations = map[string]*job.Isolation{}
	for i, d := range b.def.Isolations {
		x := &job.Isolation{
			At: d.Key.At, Key: d.Key.Value, No: i + 1,
			Point: d.Point.Value, Energy: d.Energy.Value, State: d.State.Value, Proved: d.Proved.Value,
		}
		b.isolations[x.Key] = x
		b.job.Isolations = append(b.job.Isolations, x)
	}
	b.permits = map[string]*job.Permit{}
	for _, d := range b.def.Permits {
		x := &job.Permit{At: d.Key.At, Key: d.Key.Value, What: d.What.Value, Note: d.Note.Value}
		b.permits[x.Key] = x
		b.job.Permits = append(b.job.Permits, x)
	}
	b.openings = map[string][]*job.Opening{}
	for _, d := range b.def.Openings {
		for _, pl := range b.over(d.Each) {
			x := &job.Opening{
				At: d.Key.At, Key: d.Key.Value, Place: pl, What: d.What.Value, Cover: d.Cover.Value,
				Enclosed: d.Enclosed.Value == "yes",
			}
			b.openings[x.Key] = append(b.openings[x.Key], x)
			b.job.Openings = append(b.job.Openings, x)
		}
	}
}

// resolveGuards ties a step to the locks, permits and openings that it names.
func (b *builder) resolveGuards(st *job.Step, ds *def.Step) {
	st.ToolCount = ds.ToolCount.Value == "yes"
	st.CountAll = ds.CountAll.Value == "yes"
	for _, t := range ds.Lock {
		if x := b.isolationAt(t); x != nil && claimed(b, t, &x.LockedAt, st, "the isolation "+x.Key+" is locked") {
			st.Lock = append(st.Lock, x)
		}
	}
	for _, t := range ds.Unlock {
		if x := b.isolationAt(t); x != nil {
			st.Unlock = append(st.Unlock, x)
			if x.UnlockedAt == nil {
				x.UnlockedAt = st
			}
		}
	}
	for _, t := range ds.UnlockForNow {
		if x := b.isolationAt(t); x != nil {
			st.UnlockForNow = append(st.UnlockForNow, x)
		}
	}
	for _, t := range ds.LockAgain {
		if x := b.isolationAt(t); x != nil {
			st.LockAgain = append(st.LockAgain, x)
		}
	}
	for _, t := range ds.HandBack {
		if x, ok := b.permits[t.Value]; ok {
			st.HandBack = append(st.HandBack, x)
		} else {
			b.unknown(t, "permit", knownTo(b, b.permits), "permits")
		}
	}
	for _, t := range ds.Permit {
		x, ok := b.permits[t.Value]
		if !ok {
			b.unknown(t, "permit", knownTo(b, b.permits), "permits")
			continue
		}
		x.Steps = append(x.Steps, st)
		st.Permits = append(st.Permits, x)
	}
	for _, t := range ds.Open {
		for _, x := range b.openingsAt(t, st.Place) {
			if claimed(b, t, &x.OpenedAt, st, "the opening "+x.Mark()+" is opened") {
				st.Open = append(st.Open, x)
			}
		}
	}
	for _, t := range ds.Close {
		for _, x := range b.openingsAt(t, st.Place) {
			if claimed(b, t, &x.ClosedAt, st, "the opening "+x.Mark()+" is closed") {
				st.Close = append(st.Close, x)
			}
		}
	}
}

func (b *builder) isolationAt(t source.Text) *job.Isolation {
	x, ok := b.isolations[t.Value]
	if !ok {
		b.unknown(t, "isolation", knownTo(b, b.isolations), "isolations")
	}
	return x
}

func (b *builder) openingsAt(t source.Text, from job.Place) []*job.Opening {
	key, label, named := cut(t.Value)
	all, ok := b.openings[key]
	if !ok {
		b.unknown(t, "opening", knownTo(b, b.openings), "openings")
		return nil
	}
	return pick(b, t, "opening", all, func(o *job.Opening) job.Place { return o.Place }, from, label, named)
}

// claimed sees that a thing is done by one step only, and notes which.
func claimed(b *builder, t source.Text, by **job.Step, st *job.Step, what string) bool {
	if *by == nil {
		*by = st
		return true
	}
	b.problems = append(b.problems, source.Problem{
		Pos: t.At, Severity: source.Error, Code: "twice",
		Message: what + " by two steps; it has one line on paper",
		Help:    []string{"take it out of one of them"},
		See:     []source.Also{{Pos: (*by).At, What: "the first of them"}},
	})
	return false
}
