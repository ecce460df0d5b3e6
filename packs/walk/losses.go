package walk

import (
	"cmp"
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// A Loss is what ends a reading: from Index on it cannot be taken any more.
type Loss struct {
	Index int // in the order of events
	Step  *job.Step
	At    source.Pos
	How   string    // as "parts its faces"
	Sets  *job.Part // the part that sets it, where this is what is moved; nil where its faces are
}

// KeepsSize are the kinds of dimension that are a size of one part alone: taking
// the part off does not change them, only scrapping it does. What is read of one
// part in its place, as run-out or float, is lost when the part comes off.
var KeepsSize = map[string]bool{"diameter": true, "bore": true, "depth": true, "length": true, "thickness": true, "condition": true, "count": true}

// HangsOn lists the parts that must be in their place when a dimension is read. An
// assembly that both faces belong to takes them along together and parts nothing;
// two faces of one part are read in its place.
func HangsOn(d *job.Dim) []*job.Part {
	if d.LostByNothing {
		return nil // the author says that it is read apart as well as together
	}
	var out []*job.Part
	from, to := d.From.Part.Upward(), d.To.Part.Upward()
	if d.From.Part == d.To.Part && d.From.Part != nil && !KeepsSize[d.Kind] {
		// Two faces of one part, read in its place.
		out = append(out, d.ReadOn(from)...)
		from, to = nil, nil
	}
	for _, p := range from {
		if !slices.Contains(to, p) {
			out = append(out, p)
		}
	}
	for _, p := range to {
		if !slices.Contains(from, p) {
			out = append(out, p)
		}
	}
	if d.Of.Part != nil && !KeepsSize[d.Kind] {
		out = append(out, d.ReadOn(d.Of.Part.Upward())...)
	}
	for _, l := range d.LostBy {
		if l.Part != nil {
			out = append(out, l.Part)
		}
	}
	if a := d.Adjuster; a != nil && !slices.Contains(out, a) {
		out = append(out, a) // what it sets reads otherwise once it is turned
	}
	return out
}

// Losses lists what ends a reading, the first first.
func (w *Walk) Losses(d *job.Dim) []Loss {
	var out []Loss
	for _, l := range d.LostBy {
		if l.Step != nil {
			out = append(out, Loss{Index: w.ends(d, l.Step), Step: l.Step, At: l.Step.At, How: "destroys it"})
		}
	}
	for _, p := range append(HangsOn(d), w.acrossFrom(d)...) {
		for _, l := range w.disturbed[p] {
			if l.How == heatsIt && d.Kind == "temperature" {
				continue // it is read of the part as it gets hot
			}
			if p == d.Adjuster && d.From.Part != p && d.To.Part != p && d.Of.Part != p {
				l.Sets = p
				if l.How == partsFaces {
					l.How = "moves it" // neither face of the reading is on it
				}
			}
			out = append(out, l)
		}
	}
	if p := d.Of.Part; p != nil && KeepsSize[d.Kind] {
		for _, m := range p.Off {
			if e := w.Moved(m); m.To.Scrap && e != nil {
				out = append(out, Loss{Index: e.Index, Step: e.Step, At: m.At, How: "scraps the part"})
			}
		}
	}
	slices.SortStableFunc(out, func(a, b Loss) int { return cmp.Compare(a.Index, b.Index) })
	return out
}

// Words of a reading that is taken while its machine runs, and of one that is taken with a joint slack.
var (
	readRunning = phrase.Of(`(?i)\bwhile (?:it is |it's )?running\b|\bwhile (?:it|the \pL+) runs\b|\b(?:hours?|minutes?) of running\b|\brunning temperature\b|\bat (?:working|operating|running|full) (?:speed|pressure|load)\b|\bvibrations?(?: (?:of|at|on|in)\b|$)`)
	readSlack   = phrase.Of(`(?i)\b(?:loose|loosened|slack|slackened|free)\b`)
)

// ends is where a step destroys what its author says that it does: where it locks a machine that
// is read while it runs; where it takes off, heats or lifts what the faces hang on, or a fastener
// of that; where it does none of these, where it loosens one; and else when it is done. What else
// it moves, as an aid or a cover beside, ends nothing.
func (w *Walk) ends(d *job.Dim, st *job.Step) int {
	hangs := HangsOn(d)
	held := slices.Clone(hangs)
	for _, p := range hangs {
		held = append(held, slices.DeleteFunc(slices.Clone(p.Behind), func(q *job.Part) bool { return !q.Fastens() && len(q.Joints) == 0 })...)
	}
	slack := readSlack.MatchString(w.Job.InEnglish(d.State.With))
	for _, ends := range []func(*Event) bool{
		func(e *Event) bool { return (e.Verb == job.DoLock || e.Verb == job.DoLockAgain) && w.readsRunning(d) },
		func(e *Event) bool { return takes(e, held) },
		func(e *Event) bool {
			return e.Verb == job.DoLoosen && !slack && slices.ContainsFunc(e.Grip.Parts(), func(p *job.Part) bool { return slices.Contains(held, p) })
		},
	} {
		if e := w.Find(st, ends); e != nil {
			return e.Index
		}
	}
	return w.End(st)
}

// readsRunning reports whether a reading is one of a machine that runs, by its words; it lies
// between no two parts.
func (w *Walk) readsRunning(d *job.Dim) bool {
	return d.Of.Part != nil && slices.ContainsFunc([]string{d.State.With, d.State.Load, d.What, d.Of.Name}, func(words string) bool {
		return readRunning.MatchString(w.Job.InEnglish(words))
	})
}

// takes reports whether an event takes off, heats or lifts one of some parts.
func takes(e *Event, parts []*job.Part) bool {
	switch e.Verb {
	case job.DoRemove:
		return slices.Contains(parts, e.Move.Part)
	case job.DoHeat:
		return slices.Contains(parts, e.Heat.Hub)
	case job.DoLift:
		return slices.ContainsFunc(e.Lift.Parts, func(p *job.Part) bool {
			return slices.ContainsFunc(parts, func(q *job.Part) bool { return p == q || q.Within(p) })
		})
	}
	return false
}

// partsFaces is what taking a part off does to a reading between its faces, heatsIt what
// drawing it off hot does.
const partsFaces, heatsIt = "parts its faces", "heats it"

// disturb notes what an event does to parts that readings hang on.
func (w *Walk) disturb(e *Event) {
	add := func(p *job.Part, at source.Pos, how string) {
		w.disturbed[p] = append(w.disturbed[p], Loss{Index: e.Index, Step: e.Step, At: at, How: how})
	}
	switch e.Verb {
	case job.DoRemove:
		add(e.Move.Part, e.At, partsFaces)
	case job.DoHeat:
		if e.Heat.Hub != nil && e.Heat.PulledAt == e.Step {
			add(e.Heat.Hub, e.Step.At, heatsIt)
		}
	case job.DoLift:
		for _, p := range e.Lift.Parts {
			if slices.ContainsFunc(e.Lift.Parts, func(q *job.Part) bool { return q != p && p.Within(q) }) {
				continue // named beside the assembly that takes it along
			}
			// A lift that puts it back is no loss.
			if !slices.ContainsFunc(e.Step.Fit, func(m *job.Move) bool { return m.Part == p || m.Part.Within(p) || p.Within(m.Part) }) {
				add(p, e.Step.At, "lifts it")
			}
		}
	case job.DoLoosen:
		for _, p := range e.Grip.Parts() {
			add(p, e.At, "loosens it")
		}
	}
}
