package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/walk"
)

// A shielded is what a guard is called by, and the parts that lie behind such a guard by what
// they are called. Common practice, no source.
type shielded struct{ guard, parts *phrase.Pattern }

var shieldeds = []shielded{
	{phrase.Words(`couplings?`), phrase.Of(`(?i)\bcoupling\b[^,]*\b(?:bolts?|screws?|nuts?|spacer|hub|half|halves|sleeve|cover|element|disc|grid|pins?)\b|\b(?:bolts?|screws?|nuts?|spacer|hub|half|halves|sleeve|element|grid|pins?) of the coupling\b`)},
	{phrase.Words(`(?:v-?)?belts?`), phrase.Of(`(?i)\b(?:v-?|drive |driving )?belts?$|\bbelt (?:pulley|sheave)\b`)},
	{phrase.Words(`chains?`), phrase.Of(`(?i)\b(?:drive |driving )?chain$|\bchain (?:wheel|sprocket)\b|\bsprocket$`)},
}

// unshielded are words of a name by which it is no part of what a guard lies over: what holds
// the guard itself, couplings of lines, and what lifts, carries or secures. Common practice, no
// source.
var unshielded = phrase.Of(`(?i)\bguards?\b|\b(?:hose|pipe|quick(?:[ -](?:release|connect|acting))?)[ -]couplings?\b|\bcouplings? (?:\w+ )?(?:hose|pipe)\b|\b(?:lifting|load|hoist|hoisting|conveyor|conveying|safety|securing|suspension)[ -](?:chains?|belts?)\b`)

// checkGuardOn warns of a part of a coupling, a belt or a chain that is moved, loosened or
// tightened while the guard over it, which comes off in this job, is on. Where the part says
// what it is behind:, that is what counts.
func (r *report) checkGuardOn() {
	told := map[*job.Part]bool{} // once for a guard
	for _, e := range r.walk.Events {
		for _, p := range workedOn(e) {
			g := r.guardOver(p)
			if g == nil || told[g] || e.Step.Bench || e.Step == g.Off[0].Step || r.walk.On(g, e) < g.Count || r.guardWithin(g, e.Step) {
				continue
			}
			told[g] = true
			at, what := g.Off[0].At, "comes off only here"
			if g.Off[0].Step.Index < e.Step.Index {
				at, what = g.Back[0].At, "goes back here"
			}
			r.problems.WarnWith(e.At, "guard-on", p.Called()+" is worked on at "+e.Step.Name()+", and "+g.Called()+" is on then", at, what,
				"do it at a step at which the guard is off", "or behind: at "+p.Key+", if it is reached with the guard on")
		}
	}
}

// guardOver is the guard of the coupling, belt or chain that a part belongs to by its name; nil
// where there is none that comes off, where there are several, where the part says itself what
// it is behind, or where the guard is behind it.
func (r *report) guardOver(p *job.Part) *job.Part {
	if len(p.Behind) > 0 || p.Guard || p.Aid {
		return nil
	}
	name := r.job.InEnglish(p.Name)
	if unshielded.MatchString(name) {
		return nil
	}
	for _, s := range shieldeds {
		if !s.parts.MatchString(name) {
			continue
		}
		var over *job.Part
		for _, g := range r.job.Parts {
			if !g.Guard || len(g.Off) == 0 || !s.guard.MatchString(r.job.InEnglish(g.Name)) || !g.Place.Agrees(p.Place) {
				continue
			}
			if over != nil {
				return nil
			}
			over = g
		}
		if over != nil && (slices.Contains(over.Behind, p) || p.Within(over)) {
			return nil
		}
		return over
	}
	return nil
}

// guardWithin reports whether a step moves a guard.
func (r *report) guardWithin(g *job.Part, st *job.Step) bool {
	return r.walk.Find(st, func(e *walk.Event) bool { return e.Move != nil && e.Move.Part == g }) != nil
}

// guardOn binds the steps that work behind a guard to those that move it.
func (b *binder) guardOn() {
	r := &report{walk: b.walk, job: b.job}
	for _, e := range b.walk.Events {
		for _, p := range workedOn(e) {
			g := r.guardOver(p)
			if g == nil || e.Step.Bench {
				continue
			}
			for _, m := range slices.Concat(g.Off, g.Back) {
				why := job.Bind{Kind: job.BoundBehind, Part: p, Front: g}
				b.before(m.Step, e.Step, why)
				b.before(e.Step, m.Step, why)
			}
		}
	}
}
