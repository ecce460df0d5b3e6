package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// checkCautions sees that heating and lifting carry their signs, whatever the
// definition has put in place of the built-in notes, and that hot work and entry
// ask for a permit.
func (r *report) checkCautions() {
	needs := []struct {
		keys  []string
		what  string
		signs []string
	}{
		{[]string{"heating", job.HotWork, "induction"}, "heats", []string{"W017", "W021"}},
		{[]string{"lifting", "rotor-lift"}, "lifts a load", []string{"W015"}},
	}
	for _, s := range r.job.Sections {
		for _, st := range s.Steps {
			for _, n := range needs {
				if c := cautionOf(st, n.keys); c != nil {
					r.checkSigns(st, c, n.what, n.signs)
				}
			}
			r.checkPermitOf(st)
		}
	}
}

// checkPermitOf sees that a step whose cautions name a permit asks for one, so that it has
// its row in the table of permits: for hot work and entry the one of that work, not that of
// a lift beside it. A put-back row may go without, with the author's reason.
func (r *report) checkPermitOf(st *job.Step) {
	left := func(w job.Without) bool { return w.Guard == job.GuardPermit }
	if slices.ContainsFunc(st.Without, left) {
		return
	}
	for _, c := range st.Cautions {
		does, kind := " and asks for no permit", onPermit[c.Key]
		switch {
		case kind != nil && slices.ContainsFunc(st.Permits, func(p *job.Permit) bool { return r.isFor(p, c, kind) }):
			continue
		case kind != nil && len(st.Permits) > 0:
			does = " and asks for no permit for that: " + source.Quote(st.Permits[0].What) + " does not say that it is one"
		case kind == nil && (len(st.Permits) > 0 || c.Builtin || !namesPermit.MatchString(strings.Join([]string{c.Hazard, c.Result, c.Short, c.Avoid}, " "))):
			continue
		case kind == nil:
			does = ", which names a permit, and asks for no permit"
		}
		help := "permit: [" + c.Key + "], and permits: {" + c.Key + ": {what: …}}"
		if i := slices.IndexFunc(r.job.Permits, func(p *job.Permit) bool {
			return strings.Contains(strings.ToLower(c.Hazard+" "+c.Avoid), strings.ToLower(p.Key)+" permit")
		}); i >= 0 {
			help = "permit: [" + r.job.Permits[i].Key + "]"
		} else if i := slices.IndexFunc(r.job.Permits, func(p *job.Permit) bool { return kind != nil && r.isFor(p, c, kind) }); i >= 0 {
			help = "permit: [" + r.job.Permits[i].Key + "]"
		}
		r.problems.Add(st.At, "no-permit", "step "+st.Name()+" carries the caution "+source.Quote(c.Key)+does, help)
		return
	}
}

// isFor reports whether a permit is one for the work that a built-in note warns of: by what its
// author says of it, else by its key, or by its words; one whose words are not English is taken
// for it.
func (r *report) isFor(p *job.Permit, c *job.Caution, kind *phrase.Pattern) bool {
	work := job.ForEntry
	if c.Key == job.HotWork {
		work = job.ForHotWork
	}
	if allows, said := p.Allows(work); said {
		return allows
	}
	return p.Key == c.Key || !r.job.HasEnglish(p.What) || kind.MatchString(p.Key+" "+r.job.InEnglish(p.What)+" "+r.job.InEnglish(p.Note))
}

// onPermit are the built-in notes of work that is done on a permit alone, with the words by
// which that permit is known; namesPermit finds a permit in the words of a note of the
// author's.
var (
	onPermit = map[string]*phrase.Pattern{
		job.HotWork:      phrase.Of(`(?i)\bhot\b|\bfire\b|flame|torch|weld|burn`),
		"confined-space": phrase.Of(`(?i)\bentry\b|\benter|confined|vessel|tank`),
	}
	namesPermit = phrase.Of(`(?i)\bpermits?\b`)
)

// cautionOf is the note of a step that has one of the keys, nil if none has.
func cautionOf(st *job.Step, keys []string) *job.Caution {
	for _, c := range st.Cautions {
		if slices.Contains(keys, c.Key) {
			return c
		}
	}
	return nil
}

// checkSigns sees that the notes before a step show some signs between them.
func (r *report) checkSigns(st *job.Step, c *job.Caution, what string, signs []string) {
	for _, sign := range signs {
		if slices.ContainsFunc(st.Cautions, func(c *job.Caution) bool { return slices.Contains(c.Signs, sign) }) {
			continue
		}
		r.problems = append(r.problems, source.Problem{
			Pos: c.At, Severity: source.Error, Code: "sign-missing",
			Message: "step " + st.Name() + " " + what + ", and its cautions do not show " + sign,
			Help:    []string{"signs: [" + strings.Join(append(slices.Clone(c.Signs), sign), ", ") + "]"},
			See:     []source.Also{{Pos: st.At, What: "the step"}},
		})
	}
}
