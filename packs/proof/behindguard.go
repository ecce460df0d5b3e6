package proof

import (
	"regexp"
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// touched are the kinds of reading for which a gauge is laid on the faces: a temperature, a
// leak or a noise is read with the guard on, and a size of one part wherever it lies.
var touched = map[string]bool{"gap": true, "stand-off": true, "runout": true, "float": true, "backlash": true, "clearance": true, "clearance-below": true}

// throughGuard are words of a reading that is taken with its guard on.
var throughGuard = regexp.MustCompile(`(?i)\bguard\b|\bthrough (?:the|its|a) (?:hole|slot|window|opening|mesh|hatch|hand hole)`)

// checkBehindGuard sees that no gauge is laid on a face behind a guard that is on: what stands
// in front of its part, and in front of that, may be one.
func (r *report) checkBehindGuard() {
	for _, e := range r.walk.Events {
		if e.Verb != job.DoMeasure && e.Verb != job.DoSet || e.Step.Bench || !touched[e.Dim.Kind] || throughGuard.MatchString(r.job.InEnglish(e.Dim.State.With)) {
			continue
		}
		for _, p := range []*job.Part{e.Dim.From.Part, e.Dim.To.Part, e.Dim.Of.Part} {
			g := r.guardBefore(p, e)
			if g == nil {
				continue
			}
			pr := source.Problem{
				Pos: e.At, Severity: source.Error, Code: "behind-guard",
				Message: e.Dim.Mark + " is read on " + p.Called() + " at " + e.Step.Name() + ", and " + g.Called() + " is on in front of it",
				Help:    []string{"read it at a step at which the guard is off", "or say with: through the hole of the guard, if it has one"},
				See:     []source.Also{{Pos: g.At, What: "the guard"}},
			}
			for _, m := range g.Off {
				pr.See = []source.Also{{Pos: m.At, What: "comes off here"}}
			}
			r.problems = append(r.problems, pr)
			break
		}
	}
}

// guardBefore is a guard that stands in front of a part, or of what does, when a reading is
// taken, and that comes off in this job; nil for none.
func (r *report) guardBefore(p *job.Part, e *walk.Event) *job.Part {
	if p == nil {
		return nil
	}
	seen, next := map[*job.Part]bool{}, []*job.Part{p}
	for len(next) > 0 {
		q := next[0]
		next = next[1:]
		for _, f := range r.walk.InFront(q, e.Index) {
			if f.Guard && len(f.Off) > 0 {
				return f
			}
			if !seen[f] {
				seen[f] = true
				next = append(next, f)
			}
		}
	}
	return nil
}

// behindGuard binds a step that lays a gauge on a face to those that move a guard of its part.
func (b *binder) behindGuard() {
	for _, st := range b.walk.Steps {
		for _, d := range slices.Concat(st.Measure, st.Set) {
			if st.Bench || !touched[d.Kind] || throughGuard.MatchString(b.job.InEnglish(d.State.With)) {
				continue
			}
			for _, p := range []*job.Part{d.From.Part, d.To.Part, d.Of.Part} {
				for _, g := range guardsOf(p) {
					b.looks(standing{g}, st)
				}
			}
		}
	}
}

// guardsOf lists the guards that a part is behind, and what is in front of it.
func guardsOf(p *job.Part) []*job.Part {
	if p == nil {
		return nil
	}
	var out []*job.Part
	seen, next := map[*job.Part]bool{p: true}, []*job.Part{p}
	for len(next) > 0 {
		q := next[0]
		next = next[1:]
		for _, f := range q.Behind {
			if seen[f] {
				continue
			}
			seen[f] = true
			next = append(next, f)
			if f.Guard {
				out = append(out, f)
			}
		}
	}
	return out
}
