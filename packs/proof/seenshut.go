package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkSeenShut sees that what is looked at inside is seen while something stands open: not
// below the fit: that puts the cover back, and not when all openings are closed. A guard, a
// flange and the floor are seen then as well.
func (r *report) checkSeenShut() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		if e.Verb != job.DoSee || told[e.At] || e.Step.Bench {
			continue
		}
		i := slices.IndexFunc(e.Step.Seen, func(x job.Seen) bool { return x.At == e.At })
		if i < 0 || !seesInside(r.job.InEnglish(e.Step.Seen[i].What)) {
			continue
		}
		open, shut := false, (*walk.Event)(nil)
		for _, o := range r.job.Openings {
			if r.walk.Open(o, e) == nil {
				if x := r.closedBefore(o, e); x != nil && (shut == nil || x.Index > shut.Index) {
					shut = x
				}
				continue
			}
			if back := r.coverBack(o, e); back != nil {
				if shut == nil || back.Index > shut.Index {
					shut = back
				}
				continue
			}
			open = true
		}
		if open || shut == nil {
			continue
		}
		told[e.At] = true
		help := "write seen: above it, at a step where it is open"
		switch {
		case e.Step.Undoes != nil:
			help = "write the putting back as a step of its own, with seen: above its fit: and close:"
		case shut.Step == e.Step:
			help = "write seen: above fit: and close:: a step is done in the order in which it is written"
		}
		r.problems.AddWith(e.At, "seen-shut", e.Step.Name()+" looks for "+source.Quote(e.Step.Seen[i].What)+", when nothing stands open any more", shut.At, "closed here", help)
	}
}

// closedBefore is the event that closed an opening before another, nil if none did.
func (r *report) closedBefore(o *job.Opening, e *walk.Event) *walk.Event {
	var last *walk.Event
	for _, x := range r.walk.Events[:e.Index] {
		if x.Verb == job.DoClose && x.Opening == o {
			last = x
		}
	}
	return last
}

// coverBack is the event that put back what came off where an opening was opened, all of it
// but its fasteners; nil while some of it is off, or where nothing else came off there.
func (r *report) coverBack(o *job.Opening, e *walk.Event) *walk.Event {
	var last *walk.Event
	for _, m := range o.OpenedAt.Remove {
		if m.Part.Fastens() || m.PutBack() == nil {
			continue
		}
		if r.walk.On(m.Part, e) < m.Part.Count {
			return nil
		}
		if x := r.wentBack(m.Part, e); x != nil && (last == nil || x.Index > last.Index) {
			last = x
		}
	}
	return last
}
