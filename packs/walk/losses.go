package walk

import (
	"cmp"
	"slices"

	"matchmark/packs/job"
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
			out = append(out, Loss{Index: w.ends(l.Step), Step: l.Step, At: l.Step.At, How: "destroys it"})
		}
	}
	for _, p := range HangsOn(d) {
		for _, l := range w.disturbed[p] {
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

// ends is where a step destroys what its author says that it does: where it first takes
// off, heats, lifts or takes out; where it does none of these, where it first locks or
// loosens; and else when it is done.
func (w *Walk) ends(st *job.Step) int {
	for _, verbs := range [][]job.Verb{{job.DoRemove, job.DoHeat, job.DoLift, job.DoTakeOut}, {job.DoLock, job.DoLockAgain, job.DoLoosen}} {
		if e := w.Find(st, func(e *Event) bool { return slices.Contains(verbs, e.Verb) }); e != nil {
			return e.Index
		}
	}
	return w.End(st)
}

// partsFaces is what taking a part off does to a reading between its faces.
const partsFaces = "parts its faces"

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
			add(e.Heat.Hub, e.Step.At, "heats it")
		}
	case job.DoLift:
		for _, p := range e.Lift.Parts {
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
