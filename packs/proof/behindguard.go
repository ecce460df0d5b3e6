package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/walk"
)

// touched are the kinds of reading for which a gauge is laid on the faces: a temperature, a
// leak or a noise is read with the guard on, and a size of one part wherever it lies.
var touched = map[string]bool{"gap": true, "stand-off": true, "runout": true, "float": true, "backlash": true, "clearance": true, "clearance-below": true}

// isTouched reports whether a gauge is laid on the faces of a reading; of one without a kind it
// is where the faces are those of two parts.
func isTouched(d *job.Dim) bool {
	return touched[d.Kind] || d.Kind == "" && betweenTwo(d)
}

// throughGuard are words of a reading that is taken with its guard on.
var throughGuard = phrase.Of(`(?i)\bguard\b|\bthrough (?:the|its|an?) (?:[\pL-]+ ){0,2}(?:holes?|slots?|windows?|openings?|mesh|hatch|doors?|flaps?|ports?|peephole)\b`)

// checkBehindGuard warns of a gauge that is laid on a face behind a guard that is on: what stands
// straight in front of its part, or of the fasteners of that, may be one. What lies deeper is
// reached from another side as often.
func (r *report) checkBehindGuard() {
	for _, e := range r.walk.Events {
		if e.Verb != job.DoMeasure && e.Verb != job.DoSet || e.Step.Bench || !isTouched(e.Dim) || !r.job.HasEnglish(e.Dim.State.With) && e.Dim.State.With != "" || throughGuard.MatchString(r.job.InEnglish(e.Dim.State.With)) {
			continue
		}
		for _, p := range e.Dim.FaceParts() {
			g := r.guardBefore(p, e)
			if g == nil {
				continue
			}
			at, what := g.At, "the guard"
			for _, m := range g.Off {
				at, what = m.At, "comes off here"
			}
			r.problems.WarnWith(e.At, "behind-guard", e.Dim.Mark+" is read on "+p.Called()+" at "+e.Step.Name()+", and "+g.Called()+" is on in front of it", at, what,
				"read it at a step at which the guard is off", "or say with: through the hole of the guard, if it has one")
			break
		}
	}
}

// guardBefore is a guard that stands straight in front of a part, or of its fasteners, when a
// reading is taken, that comes off in this job and is no face of the reading; nil for none.
func (r *report) guardBefore(p *job.Part, e *walk.Event) *job.Part {
	front := r.walk.InFront(p, e.Index)
	for _, q := range front {
		if q.Fastens() {
			front = append(front, r.walk.InFront(q, e.Index)...)
		}
	}
	i := slices.IndexFunc(front, func(g *job.Part) bool {
		return g.Guard && len(g.Off) > 0 && !slices.Contains(e.Dim.FaceParts(), g)
	})
	if i < 0 {
		return nil
	}
	return front[i]
}

// behindGuard binds a step that lays a gauge on a face to those that move a guard of its part.
func (b *binder) behindGuard() {
	for _, st := range b.walk.Steps {
		for _, d := range slices.Concat(st.Measure, st.Set) {
			if st.Bench || !isTouched(d) || throughGuard.MatchString(b.job.InEnglish(d.State.With)) {
				continue
			}
			for _, p := range d.FaceParts() {
				for _, g := range guardsOf(p) {
					b.looks(standing{g}, st)
				}
			}
		}
	}
}

// guardsOf lists the guards straight in front of a part and of its fasteners.
func guardsOf(p *job.Part) []*job.Part {
	front := slices.Clone(p.Behind)
	for _, q := range p.Behind {
		if q.Fastens() {
			front = append(front, q.Behind...)
		}
	}
	return slices.DeleteFunc(front, func(g *job.Part) bool { return !g.Guard })
}
