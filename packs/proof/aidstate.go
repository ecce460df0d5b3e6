package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/walk"
)

// checkAidState sees that an aid that a reading is to be taken with, as the jacks that lift a
// rotor off its pads, is in when it is read: with it out the reading tells of something else.
// An aid is known by the last word of its name, where no part of the machine ends with it and no
// word stands before it that is not of its name. One
// that its step puts in and takes out again above the reading is itself what is read, as a strip.
func (r *report) checkAidState() {
	for _, d := range r.job.Dims {
		words := r.job.InEnglish(d.State.With) + ", " + r.job.InEnglish(d.State.Load)
		if saysWhen.MatchString(words) {
			continue
		}
		for _, e := range []*walk.Event{r.walk.Measured(d), r.walk.Set(d)} {
			if e == nil {
				continue
			}
			if p := r.aidSaid(d, words); p != nil && !r.aidIn(p, e) {
				help := "fit-for-now: [" + p.Key + "] at a step above, and take-out-again: below it"
				if job.AnyOf(e.Step.ForNow, p) {
					help = "write fit-for-now: above the reading: a step is done in the order in which it is written"
				}
				r.problems.WarnWith(e.At, "not-as-told", d.Mark+" is to be read with "+p.Called()+", and that is not in at "+e.Step.Name(), p.At, "the aid", help)
				break
			}
		}
	}
}

// aidSaid is an aid that the words of a reading want in, nil if there is none.
func (r *report) aidSaid(d *job.Dim, words string) *job.Part {
	for _, p := range r.job.Parts {
		if !p.Aid {
			continue
		}
		last := r.calledLast(p)
		if len(last) < 4 || !p.Place.Agrees(d.Place) || len(r.calledBy(last, d.Place)) > 0 {
			continue
		}
		wants := phrase.Of(`(?i)(?:^|[,;] )(?:(?:on|with|by) )?(?:the |its |their |all |both |two |three |four |six |eight |\d+ )*(?:(\pL+) )?` + phrase.Quoted(last) + `s?(?: (?:are |is )?(?:in|on|under|up|set|tight|locked|evenly|fitted)\b[^,;]*)?(?:[,;]|$)`)
		for _, m := range wants.FindAllStringSubmatch(words, -1) {
			if !unwanted.MatchString(m[0]) && r.inName(p, m[1]) && (!turnedUp.MatchString(m[0]) || lifting.MatchString(last)) {
				return p
			}
		}
	}
	return nil
}

// inName reports whether a word that stands before the last one of an aid is of its name too:
// its own weight is no test weight, a suction flange no blank flange.
func (r *report) inName(p *job.Part, word string) bool {
	return word == "" || slices.ContainsFunc(strings.Fields(r.job.InEnglish(p.Name)), func(w string) bool { return isOne(w, word) })
}

// A coupling that is up is the way that it lies, and a jack that is up is in.
var (
	turnedUp = phrase.Of(`(?i) up\b`)
	lifting  = phrase.Of(`(?i)(?:jacks?|screws?|props?|stands?|rams?|supports?)$`)
)

// unwanted are the words by which an aid is to be out of the way.
var unwanted = phrase.Of(`(?i)\b(?:no|not|without|off|out|away|removed|clear|before|after|slack|loose)\b`)

// aidIn reports whether an aid, or another of its name, is in when a reading is taken.
func (r *report) aidIn(p *job.Part, e *walk.Event) bool {
	return slices.ContainsFunc(r.job.Parts, func(q *job.Part) bool {
		if !q.Aid || r.calledLast(q) != r.calledLast(p) {
			return false
		}
		now, _ := r.walk.Now(q, e)
		return now > 0 || job.AnyOf(e.Step.ForNow, q) && job.AnyOf(e.Step.TakeOut, q)
	})
}

// aidState binds a step that reads with an aid to those that put it in and take it out.
func (b *binder) aidState() {
	r := &report{walk: b.walk, job: b.job}
	for _, st := range b.walk.Steps {
		for _, d := range slices.Concat(st.Measure, st.Set) {
			if p := r.aidSaid(d, r.job.InEnglish(d.State.With)+", "+r.job.InEnglish(d.State.Load)); p != nil {
				b.looks(standing{p}, st)
			}
		}
	}
}
