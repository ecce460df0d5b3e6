package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/walk"
)

// What pulls a machine out of line when it is tightened: its feet, and the large pipes at its
// nozzles. Small lines bend, and what is bolted to a machine or stands beside it pulls at nothing.
// Common practice, no source.
var (
	feet         = phrase.Of(`(?i)\b(?:feet|foot|holding[ -]?down|hold[ -]?down|foundation|anchor|sole ?plate|base ?plate|base) ?(?:bolts?|nuts?|screws?|studs?)?\b`)
	mains        = phrase.Of(`(?i)\b(?:suction|discharge|delivery|inlet|outlet|intake|exhaust) (?:pipe ?)?(?:flanges?|pipes?|branch(?:es)?|nozzles?|spools?|bends?)\b`)
	small        = phrase.Of(`(?i)\b(?:oil|flush|drain|vent|seal|cooling|gauge|impulse|grease|small|balance)\b`)
	beside       = phrase.Of(`(?i)\b(?:guards?|covers?|ducts?|gratings?|filters?|strainers?|silencers?|dowels?|tanks?|box|boxes|plugs?|sump)\b`)
	betweenNames = phrase.Of(`^(?:[.;:,]|a|its|on|in|under|below|from|for|between|both|all|with)$`)
	// pullsOnly are the words of a joint that names no machine, and is one of the only coupling.
	pullsOnly = phrase.Of(`(?i)^(?:(?:feet|foot|holding|hold|down|foundation|anchor|sole|plate|soleplate|baseplate|base|suction|discharge|delivery|inlet|outlet|intake|exhaust|pipes?|flanges?|branch(?:es)?|nozzles?|spools?|bends?|large|main|the|of|at|to|and|bolts?|nuts?|screws?|studs?|m\d+)(?:[ -]|$))*$`)
)

// checkOutOfLine warns of a coupling that is read as left while the feet of a machine, or a large
// pipe, are loose and tightened below: that pulls it out of line again, and nothing reads it any
// more.
func (r *report) checkOutOfLine() {
	for _, a := range r.job.Alignments {
		last := r.lastRead(a)
		if last == nil {
			continue
		}
		for _, j := range r.job.Joints {
			what, tight := r.pulls(j, a), r.tightenedLater(j, last)
			if what == "" || tight == nil || slices.ContainsFunc(a.Steps, func(st *job.Step) bool { return st.Index > tight.Step.Index }) || tight.Step == last.Step || r.looseBefore(j, last) == nil && r.someOn(j, last) {
				continue
			}
			r.problems.WarnWith(tight.At, "pulled-out-of-line", j.Mark+", "+what+", is tightened at "+tight.Step.Name()+", when "+a.Mark+" has been read as left at "+last.Step.Name(), last.At, "read last here",
				"tighten it above that", "or read the coupling once more below it")
			break
		}
	}
}

// lastRead is the event that reads a coupling last as left, nil if none does.
func (r *report) lastRead(a *job.Alignment) *walk.Event {
	var last *walk.Event
	for _, dial := range dials {
		if d := a.Read[dial]; d != nil {
			if e := r.walk.Set(d); e != nil && (last == nil || e.Index > last.Index) {
				last = e
			}
		}
	}
	return last
}

// pulls says what a joint is that pulls a machine of an alignment out of line, empty for none.
func (r *report) pulls(j *job.Joint, a *job.Alignment) string {
	names := []string{r.job.InEnglish(j.What)}
	for _, p := range j.Parts {
		names = append(names, r.job.InEnglish(p.Name))
	}
	all := strings.Join(names, ", ")
	if beside.MatchString(all) || !r.ofMachine(j, a, names) {
		return ""
	}
	for _, n := range names {
		switch {
		case small.MatchString(n):
		case feet.MatchString(n):
			return "which holds the feet"
		case mains.MatchString(n):
			return "which draws up a large pipe"
		}
	}
	return ""
}

// ofMachine reports whether a joint is one of a machine of an alignment by its words: they name
// the machine, or nothing at all where there is one coupling.
func (r *report) ofMachine(j *job.Joint, a *job.Alignment, names []string) bool {
	for _, p := range a.Machines {
		if p.Place.Label != "" && (j.Place.Label == "" || !j.Place.Agrees(p.Place)) {
			continue
		}
		if slices.ContainsFunc(names, func(n string) bool { return r.callsMachine(n, p.Name) }) {
			return true
		}
	}
	for _, m := range []string{a.Movable, a.Stationary} {
		isPart := func(p *job.Part) bool { return strings.EqualFold(p.Name, m) || p.Place.Mark(p.Key) == m }
		if !slices.ContainsFunc(r.job.Parts, isPart) && slices.ContainsFunc(names, func(n string) bool { return r.callsMachine(n, m) }) {
			return true // it is no part of the list
		}
	}
	return len(r.job.Alignments) == 1 && !slices.ContainsFunc(names, func(n string) bool { return !pullsOnly.MatchString(n) })
}

// callsMachine reports whether words name a machine by the last word of its name, with no other
// word of a name before it: the sump pump is not the pump.
func (r *report) callsMachine(words, machine string) bool {
	own := tokens.FindAllString(strings.ToLower(headOf.ReplaceAllString(r.job.InEnglish(machine), "")), -1)
	if len(own) == 0 {
		return false
	}
	said := tokens.FindAllString(strings.ToLower(words), -1)
	for i, w := range said {
		if same(w, own[len(own)-1]) && (i == 0 || slices.Contains(own, said[i-1]) || pullsOnly.MatchString(said[i-1]) || betweenNames.MatchString(said[i-1])) {
			return true
		}
	}
	return false
}

// outOfLine binds the steps that tighten feet and large pipes to the one that reads the coupling
// last.
func (b *binder) outOfLine() {
	r := &report{walk: b.walk, job: b.job}
	for _, a := range b.job.Alignments {
		last := r.lastRead(a)
		if last == nil {
			continue
		}
		for _, e := range b.walk.Events[:last.Index] {
			if j := e.Grip.Joint; e.Verb == job.DoTighten && j != nil && r.pulls(j, a) != "" {
				b.before(e.Step, last.Step, job.Bind{Kind: job.BoundReading, Dim: last.Dim})
			}
		}
	}
}
