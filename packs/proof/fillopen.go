package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

var (
	drainPlug = phrase.Of(`(?i)\bdrain(?:ing)?[ -](?:plugs?|screws?|cocks?)$`)
	drainHole = phrase.Words(`drain(?: hole)?s?`)
	shutsIt   = phrase.Words(`caps?|covers?|lids?|heads?|doors?|upper halves|upper half|top half`)
)

// checkFillOpen warns of a step that fills a machine by its words while what lets it out is
// open: its drain plug is off, its drain stands open, or the cover of what it names is off.
func (r *report) checkFillOpen() {
	told := map[source.Pos]bool{} // once for all places
	for _, st := range r.walk.Steps {
		said := r.fillsAt(st)
		if said == "" || st.Bench || told[st.At] {
			continue
		}
		for _, p := range r.job.Parts {
			back := r.backBelow(p, st)
			if back == nil || !p.Place.Agrees(st.Place) || !r.letsOut(p, said) {
				continue
			}
			told[st.At] = true
			r.problems.WarnWith(st.At, "fill-open", st.Name()+" says "+source.Quote(said)+", and "+p.Called()+" is off then", back.At, "goes back only here",
				"fill it at a step below that", "or say it in other words, if it is filled through there")
			break
		}
		for _, o := range r.job.Openings {
			if shut := r.drainShutBelow(o, st, said); shut != nil && !told[st.At] {
				told[st.At] = true
				r.problems.WarnWith(st.At, "fill-open", st.Name()+" says "+source.Quote(said)+", and the opening "+o.Mark()+" is open then", shut.At, "closed only here", "fill it at a step below that")
			}
		}
	}
}

// drainShutBelow is the event below a step that closes an opening which is the drain of what the
// step fills, nil if it is no such one, or shut then.
func (r *report) drainShutBelow(o *job.Opening, st *job.Step, said string) *walk.Event {
	name := r.job.InEnglish(o.What)
	opened, shut := r.walk.Opened(o), r.walk.Closed(o)
	if opened == nil || shut == nil || opened.Step.Index > st.Index || shut.Step.Index <= st.Index || !o.Place.Agrees(st.Place) || !drainHole.MatchString(name) || !r.drainOf(name, said) {
		return nil
	}
	return shut
}

// backBelow is the event below a step that puts back a part which is off all of it, nil if there
// is none.
func (r *report) backBelow(p *job.Part, st *job.Step) *walk.Event {
	if p.Aid || r.walk.StandsAt(p, st) > 0 {
		return nil
	}
	for _, m := range p.Back {
		if m.Step.Index > st.Index {
			return r.walk.Moved(m)
		}
	}
	return nil
}

// letsOut reports whether what is filled by some words runs out where a part is off: a drain
// plug, or the cover or cap of what the words name.
func (r *report) letsOut(p *job.Part, said string) bool {
	full := r.job.InEnglish(p.Name)
	name := headOf.ReplaceAllString(full, "")
	if drainPlug.MatchString(name) {
		return r.drainOf(full, said)
	}
	if !shutsIt.MatchString(job.LastWord(name)) || besides.MatchString(name) {
		return false
	}
	words := tokens.FindAllString(strings.ToLower(name), -1)
	return len(words) > 1 && slices.ContainsFunc(tokens.FindAllString(strings.ToLower(said), -1), func(w string) bool { return same(w, words[len(words)-2]) })
}

// besides is what oil is filled in through, or stands above.
var besides = phrase.Words(`inspection|filler|filling|breather|hand|sight`)

// drainOf reports whether a drain is that of what some words fill: they name it, or neither says
// of what it is and the job has no other drain plug.
func (r *report) drainOf(name, said string) bool {
	of := slices.DeleteFunc(tokens.FindAllString(strings.ToLower(name), -1), func(w string) bool { return drainWord.MatchString(w) })
	if len(of) > 0 {
		words := tokens.FindAllString(strings.ToLower(said), -1)
		return slices.ContainsFunc(of, func(w string) bool {
			return slices.ContainsFunc(words, func(x string) bool { return same(x, w) })
		})
	}
	drains := map[string]bool{}
	for _, p := range r.job.Parts {
		if drainPlug.MatchString(headOf.ReplaceAllString(r.job.InEnglish(p.Name), "")) {
			drains[p.Key] = true
		}
	}
	return len(drains) < 2
}

// drainWord is a word of the name of a drain that does not say of what it is.
var drainWord = phrase.Of(`^(?:drain\w*|plugs?|screws?|cocks?|holes?|of|the|its|oil|open|[a-z]?\d.*|[.;:,])$`)

// fillOpen binds a step that fills a machine to those above it that shut what lets it out.
func (b *binder) fillOpen() {
	r := &report{walk: b.walk, job: b.job}
	for _, st := range b.walk.Steps {
		said := r.fillsAt(st)
		if said == "" {
			continue
		}
		for _, p := range b.job.Parts {
			for _, m := range p.Back {
				if r.letsOut(p, said) && p.Place.Agrees(st.Place) {
					b.before(m.Step, st, job.Bind{Kind: job.BoundPart, Part: p})
				}
			}
		}
		for _, o := range b.job.Openings {
			if shut := b.walk.Closed(o); shut != nil && drainHole.MatchString(b.job.InEnglish(o.What)) {
				b.before(shut.Step, st, job.Bind{Kind: job.BoundOpening, Opening: o})
			}
		}
	}
}
