package proof

import (
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkOrder sees that the steps a step comes after are written above it, and
// shows rings of steps that wait for each other as a path.
func (r *report) checkOrder() {
	for _, ring := range r.rings() {
		var path []string
		var see []source.Also
		for i, d := range ring {
			path = append(path, d.Step.Place.Mark(d.Step.Key))
			if i > 0 {
				see = append(see, source.Also{Pos: d.At, What: "waits for " + d.Step.Place.Mark(d.Step.Key)})
			}
		}
		r.problems = append(r.problems, source.Problem{
			Pos: ring[0].At, Severity: source.Error, Code: "ring",
			Message: "these steps wait for each other: " + strings.Join(path, " after ") + " after " + path[0],
			Help:    []string{"take one of the after: lines out"}, See: see,
		})
	}
	inRing := r.ringSteps()
	for _, s := range r.job.Sections {
		for _, st := range s.Steps {
			for _, d := range st.After {
				if d.Step.Index > st.Index && !(inRing[st] && inRing[d.Step]) {
					r.problems = append(r.problems, source.Problem{
						Pos: d.At, Severity: source.Error, Code: "out-of-order",
						Message: "step " + st.Name() + " comes after " + d.Step.Name() + ", but is written above it",
						Help:    []string{"move the step below " + source.Quote(d.Step.Key) + ", or take the after: line out"},
						See:     []source.Also{{Pos: d.Step.At, What: "the step that must come first"}},
					})
				}
			}
		}
	}
}

// ringSteps is the set of steps that stand in a ring.
func (r *report) ringSteps() map[*job.Step]bool {
	in := map[*job.Step]bool{}
	for _, ring := range r.rings() {
		for _, d := range ring {
			in[d.Step] = true
		}
	}
	return in
}

// rings finds rings of after: lines, each once, as the path of links; a link's
// Step is the one that is waited for.
func (r *report) rings() [][]job.Dep {
	const (
		fresh = iota
		open
		done
	)
	state := map[*job.Step]int{}
	var path []job.Dep
	var rings [][]job.Dep
	var visit func(d job.Dep)
	visit = func(d job.Dep) {
		switch state[d.Step] {
		case done:
			return
		case open:
			for i := range path {
				if path[i].Step == d.Step {
					ring := append([]job.Dep{}, path[i:]...)
					ring[0].At = d.At
					rings = append(rings, ring)
				}
			}
			return
		}
		state[d.Step] = open
		path = append(path, d)
		for _, next := range d.Step.After {
			visit(next)
		}
		path = path[:len(path)-1]
		state[d.Step] = done
	}
	for _, s := range r.job.Sections {
		for _, st := range s.Steps {
			visit(job.Dep{Step: st, At: st.At})
		}
	}
	return rings
}

// holds is what all steps share: none may pass a hold or witness point.
type holds struct{}

// order binds a step to those that its author says it comes after, one without
// after: to the step above, and all to the holds between which they stand.
func (b *binder) order() {
	for i, st := range b.walk.Steps {
		for _, d := range st.After {
			b.before(d.Step, st, job.Bind{Kind: job.BoundAfter, Reason: d.Reason})
		}
		if i > 0 && st.AfterAt.IsZero() {
			b.before(b.walk.Steps[i-1], st, job.Bind{Kind: job.BoundBelow})
		}
		if st.Hold != nil {
			b.changes(holds{}, st, job.Bind{Kind: job.BoundHold, Hold: st.Hold})
		} else {
			b.looks(holds{}, st)
		}
	}
}
