package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// saysLoose finds what a reading is taken with loose: joints loose, cap bolts half a turn
// slack, cover free.
var saysLoose = phrase.Of(`(?i)\b(\pL+?)s? (?:are |is )?(?:still )?(?:(?:half |a quarter )?(?:of )?(?:a )?turn )?(?:loose|slack|free)\b`)

// checkFreeTight sees that a reading whose words want a joint loose stands above the line of
// its step that tightens it: who works down the page reads it tight.
func (r *report) checkFreeTight() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		if e.Verb != job.DoMeasure && e.Verb != job.DoSet || told[e.At] {
			continue
		}
		words := r.job.InEnglish(e.Dim.State.With)
		if saysWhen.MatchString(words) {
			continue
		}
		for _, m := range saysLoose.FindAllStringSubmatch(words, -1) {
			tight := r.tightenedAbove(e, m[1])
			if tight == nil {
				continue
			}
			told[e.At] = true
			verb := map[job.Verb]string{job.DoMeasure: "measure", job.DoSet: "set"}[e.Verb]
			r.problems.WarnWith(e.At, "read-tight", e.Dim.Mark+" is to be read with "+source.Quote(m[0])+", and "+e.Step.Name()+" tightens "+tight.Grip.Mark()+" above it", tight.At, "tightened here",
				"write "+verb+": above tighten:: a step is done in the order in which it is written", "or tighten: at a step below")
			break
		}
	}
}

// tightenedAbove is the event above a reading in its step that tightens what a word calls, or
// what holds it; nil if none does, or it is loose again when the reading is taken.
func (r *report) tightenedAbove(e *walk.Event, word string) *walk.Event {
	for _, x := range r.walk.At(e.Step) {
		if x.Index >= e.Index || x.Verb != job.DoTighten || !r.isCalled(x.Grip, word, e.Dim.Place) {
			continue
		}
		if g := r.walk.Grip(x.Grip, e); g.Loosened == nil && g.Fitted == nil {
			return x
		}
	}
	return nil
}

// isCalled reports whether a word calls something that is tightened: as a joint, by the last
// word of what it is, by that of a fastener of it, or by what lies behind one.
func (r *report) isCalled(f job.Fastening, word string, at job.Place) bool {
	if j := f.Joint; j != nil {
		if !j.Place.Agrees(at) {
			return false
		}
		what := strings.TrimSuffix(job.LastWord(r.job.InEnglish(j.What)), "s")
		if strings.EqualFold(word, "joint") || strings.EqualFold(word, what) {
			return true
		}
	}
	return slices.ContainsFunc(r.calledBy(word, at), func(p *job.Part) bool {
		return slices.ContainsFunc(f.Parts(), func(q *job.Part) bool { return p == q || slices.Contains(p.Behind, q) })
	})
}
