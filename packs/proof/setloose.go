package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// readWhileLoose finds words by which a reading is meant to be taken with something loose.
var readWhileLoose = phrase.Of(`(?i)\b(?:loose|loosened|slack|slackened|untightened|not (?:yet |fully )?tight|(?:finger|hand)[ -]tight|snug|before [^,;.]*tight)\b`)

// checkSetLoose sees that a step which loosens a joint to set a reading, and tightens it
// again, writes the reading down below the tightening: it moves when its screws are pulled
// up. One whose words say that it is taken loose is left to its author.
func (r *report) checkSetLoose() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		if e.Verb != job.DoSet || told[e.At] || e.Dim.Formula != nil || readWhileLoose.MatchString(r.job.InEnglish(e.Dim.State.With)) {
			continue
		}
		for _, f := range e.Step.Loosen {
			loosened := r.walk.Find(e.Step, func(x *walk.Event) bool { return x.Verb == job.DoLoosen && x.Grip.Mark() == f.Mark() })
			tight := r.walk.Find(e.Step, func(x *walk.Event) bool {
				return x.Verb == job.DoTighten && x.Index > e.Index && slices.Equal(x.Grip.Parts(), f.Parts())
			})
			if loosened == nil || loosened.Index > e.Index || tight == nil {
				continue
			}
			told[e.At] = true
			r.problems.WarnWith(e.At, "too-early", e.Dim.Mark+" is set at "+e.Step.Name()+" while "+f.Mark()+", which the step loosens, is loose", tight.At, "tightened here",
				"write set: below tighten:: it moves when they are pulled up", "or say under with: that it is taken with the joint loose")
			break
		}
	}
}

// checkRenewedSet sees that a reading which is only set, of a part that is renewed, is set
// when the new one is in: above that it tells of the old one, which goes to scrap.
func (r *report) checkRenewedSet() {
	told := map[source.Pos]bool{} // once for all places
	for _, d := range r.job.Dims {
		e := r.walk.Set(d)
		if e == nil || d.FoundAt != nil || told[e.At] {
			continue
		}
		for _, p := range walk.HangsOn(d) {
			if p.Renew != "always" || r.walk.On(p, e) < p.Count {
				continue // off by now is told of as any reading is
			}
			i := slices.IndexFunc(p.Off, func(m *job.Move) bool {
				x := r.walk.Moved(m)
				return x != nil && x.Index > e.Index && m.PutBack() != nil
			})
			if i < 0 {
				continue
			}
			told[e.At] = true
			r.problems.AddWith(e.At, "too-early", d.Mark+" is set at "+e.Step.Name()+", when the old "+p.Called()+" is in the machine, which is renewed", p.Off[i].At, "comes off here",
				"set it when the new one is in")
			break
		}
	}
}
