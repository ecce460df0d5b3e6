package proof

import (
	"slices"
	"strings"
	"unicode"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// pit is what a machine stands in as well as what is in it: it is shut where it is an opening.
// counted is what is told by the count of the tools, outside the machine.
var (
	pit     = phrase.Of(`(?i)\bpits?\b`)
	counted = phrase.Of(`(?i)\bcounted\b`)
)

// checkSeenShut sees that what is looked at inside, by a tick or for a hold, is seen while
// something stands open, that which the words name where they name one: not below the fit:
// that puts the cover back, and not when all openings are closed. A guard, a flange and the
// floor are seen then as well. What a hold is released on is a sentence about anything, a
// reading or a report as well: of that it warns.
func (r *report) checkSeenShut() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		what := lookedAt(e)
		if told[e.At] || e.Step.Bench || !r.seesShut(r.job.InEnglish(what)) {
			continue
		}
		open, shut, when := false, (*walk.Event)(nil), "nothing stands open any more"
		named := r.namedIn(what)
		if len(named) < len(r.job.Openings) {
			when = source.Quote(named[0].What) + " is shut again"
		}
		for _, o := range named {
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
		case e.Verb == job.DoHold:
			help = "hold: " + e.Hold.Mark + " at a step above, where it is open"
		case e.Step.Undoes != nil:
			help = "write the putting back as a step of its own, with seen: above its fit: and close:"
		case shut.Step == e.Step:
			help = "write seen: above fit: and close:: a step is done in the order in which it is written"
		}
		add := r.problems.AddWith
		if e.Verb == job.DoHold {
			add = r.problems.WarnWith
		}
		add(e.At, "seen-shut", e.Step.Name()+" looks for "+source.Quote(what)+", when "+when, shut.At, "closed here", help)
	}
}

// seesShut reports whether words tell of what is seen with an opening open and not otherwise.
func (r *report) seesShut(words string) bool {
	if counted.MatchString(words) {
		return false
	}
	if !slices.ContainsFunc(r.job.Openings, func(o *job.Opening) bool { return pit.MatchString(r.job.InEnglish(o.What)) }) {
		words = pit.ReplaceAllString(words, "place")
	}
	return seesInside(words)
}

// namedIn lists the openings that words name by the last word of what they are, as the casing
// of a Pump casing; all of them where they name none.
func (r *report) namedIn(words string) []*job.Opening {
	said := strings.FieldsFunc(strings.ToLower(r.job.InEnglish(words)), func(c rune) bool { return !unicode.IsLetter(c) })
	var out []*job.Opening
	for _, o := range r.job.Openings {
		if name := strings.ToLower(job.LastWord(r.job.InEnglish(o.What))); name != "" && slices.Contains(said, name) {
			out = append(out, o)
		}
	}
	if len(out) == 0 {
		return r.job.Openings
	}
	return out
}

// lookedAt is what an event looks at in words: what is seen, or what a hold is released on;
// empty for another.
func lookedAt(e *walk.Event) string {
	switch e.Verb {
	case job.DoSee:
		if i := slices.IndexFunc(e.Step.Seen, func(x job.Seen) bool { return x.At == e.At }); i >= 0 {
			return e.Step.Seen[i].What
		}
	case job.DoHold:
		return e.Hold.What
	}
	return ""
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
