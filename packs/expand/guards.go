package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// readGuards takes over isolations, permits and openings.
func (b *builder) readGuards() {
	b.Isolations = map[string]*job.Isolation{}
	for i, d := range b.Def.Isolations {
		x := &job.Isolation{
			At: d.Key.At, Key: d.Key.Value, No: i + 1,
			Point: d.Point.Value, Energy: d.Energy.Value, State: d.State.Value, Proved: d.Proved.Value,
		}
		b.Isolations[x.Key] = x
		b.Job.Isolations = append(b.Job.Isolations, x)
	}
	b.Permits = map[string]*job.Permit{}
	for _, d := range b.Def.Permits {
		x := &job.Permit{At: d.Key.At, Key: d.Key.Value, What: d.What.Value, Note: d.Note.Value}
		for _, t := range d.For {
			x.For = append(x.For, t.Value)
		}
		b.Permits[x.Key] = x
		b.Job.Permits = append(b.Job.Permits, x)
	}
	b.Openings = map[string][]*job.Opening{}
	for _, d := range b.Def.Openings {
		for _, pl := range b.Over(d.Each) {
			x := &job.Opening{
				At: d.Key.At, Key: d.Key.Value, Place: pl, What: d.What.Value, Cover: d.Cover.Value,
				Enclosed: d.Enclosed.Value == "yes",
			}
			b.Openings[x.Key] = append(b.Openings[x.Key], x)
			b.Job.Openings = append(b.Job.Openings, x)
		}
	}
}

// resolveGuards ties a step to the locks, permits and openings that it names.
func (b *builder) resolveGuards(st *job.Step, ds *def.Step) {
	st.ToolCount = ds.ToolCount.Value == "yes"
	st.CountAll = ds.CountAll.Value == "yes"
	for _, t := range ds.Seen {
		st.Seen = append(st.Seen, job.Seen{At: t.At, What: t.Value})
	}
	for _, t := range ds.Lock {
		if x := b.IsolationAt(t); x != nil && claimed(b, t, &x.LockedAt, st, "the isolation "+x.Key+" is locked") {
			st.Lock = append(st.Lock, x)
		}
	}
	for _, t := range ds.Unlock {
		if x := b.IsolationAt(t); x != nil {
			st.Unlock = append(st.Unlock, x)
			if x.UnlockedAt == nil {
				x.UnlockedAt = st
			}
		}
	}
	for _, t := range ds.UnlockForNow {
		if x := b.IsolationAt(t); x != nil {
			st.UnlockForNow = append(st.UnlockForNow, x)
		}
	}
	for _, t := range ds.LockAgain {
		if x := b.IsolationAt(t); x != nil {
			st.LockAgain = append(st.LockAgain, x)
		}
	}
	for _, t := range ds.HandBack {
		if x, ok := b.Permits[t.Value]; ok {
			st.HandBack = append(st.HandBack, x)
		} else {
			b.Unknown(t, "permit", names.KnownTo(b.Index, b.Permits), "permits")
		}
	}
	for _, t := range ds.Permit {
		x, ok := b.Permits[t.Value]
		if !ok {
			b.Unknown(t, "permit", names.KnownTo(b.Index, b.Permits), "permits")
			continue
		}
		x.Steps = append(x.Steps, st)
		st.Permits = append(st.Permits, x)
	}
	for _, t := range ds.Open {
		for _, x := range b.OpeningsAt(t, st.Place) {
			if claimed(b, t, &x.OpenedAt, st, "the opening "+x.Mark()+" is opened") {
				st.Open = append(st.Open, x)
			}
		}
	}
	for _, t := range ds.Close {
		for _, x := range b.OpeningsAt(t, st.Place) {
			if claimed(b, t, &x.ClosedAt, st, "the opening "+x.Mark()+" is closed") {
				st.Close = append(st.Close, x)
			}
		}
	}
}

// claimed sees that a thing is done by one step only, and notes which.
func claimed(b *builder, t source.Text, by **job.Step, st *job.Step, what string) bool {
	if *by == nil {
		*by = st
		return true
	}
	b.Problems = append(b.Problems, source.Problem{
		Pos: t.At, Severity: source.Error, Code: "twice",
		Message: what + " by two steps; it has one line on paper",
		Help:    []string{"take it out of one of them"},
		See:     []source.Also{{Pos: (*by).At, What: "the first of them"}},
	})
	return false
}
