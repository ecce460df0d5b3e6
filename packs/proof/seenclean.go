package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// A face that a part lies on is seen clean while that part is off.
var (
	coverWords  = `bearing|cover|lid|door|hatch|cap|gasket|flange|blank|plug|bush|sleeve`
	seenClean   = phrase.Of(`(?i)\b(?:(\pL+) )?(` + coverWords + `)s? (?:joint )?(?:faces?|seats?|seatings?|grooves?|spigots?|lands?)\b([^,;.]*)\bclean\b([^,;.]*)`)
	cleanSeen   = phrase.Of(`(?i)\bclean (?:(\pL+) )?(` + coverWords + `)s? (?:joint )?(?:faces?|seats?|seatings?|grooves?|spigots?|lands?)\b`)
	seenCleanOf = phrase.Of(`(?i)\b(?:faces?|seats?|seatings?|grooves?|spigots?|lands?) (?:of|for|under|below|behind) (?:the |each |both )?(?:(\pL+) )?(` + coverWords + `)s?\b([^,;.]*)\bclean\b([^,;.]*)`)
	// seenElse are words by which a clean face is looked at from outside, with what lies on it
	// on, or was seen before.
	seenElse = phrase.Of(`(?i)\b(?:outside|flush|was|were|had been|went on)\b`)
	squeezed = phrase.Of(`(?i)\bsqueezed? out\b`)
)

// checkSeenClean warns of a face that is looked at for being clean when the part that lies on it
// is back: nobody sees it any more.
func (r *report) checkSeenClean() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		if e.Verb != job.DoSee || told[e.At] || e.Step.Bench {
			continue
		}
		i := slices.IndexFunc(e.Step.Seen, func(x job.Seen) bool { return x.At == e.At })
		if i < 0 {
			continue
		}
		what := e.Step.Seen[i].What
		parts := r.lyingOn(r.job.InEnglish(what), e.Step.Place)
		if len(parts) == 0 || slices.ContainsFunc(parts, func(p *job.Part) bool { return r.wentBack(p, e) == nil || r.walk.On(p, e) < p.Count }) {
			continue
		}
		back := r.wentBack(parts[0], e)
		help := "write seen: at a step above " + back.Step.No
		if back.Step == e.Step {
			help = "write seen: above fit:: a step is done in the order in which it is written"
		}
		told[e.At] = true
		r.problems.WarnWith(e.At, "seen-covered", e.Step.Name()+" looks for "+source.Quote(what)+", when "+parts[0].Called()+" is back and lies on it", back.At, "goes back here", help)
	}
}

// lyingOn lists the parts whose faces or seats words call clean.
func (r *report) lyingOn(words string, at job.Place) []*job.Part {
	var out []*job.Part
	for _, re := range []*phrase.Pattern{seenClean, cleanSeen, seenCleanOf} {
		for _, m := range re.FindAllStringSubmatch(words, -1) {
			if !squeezed.MatchString(words) && !slices.ContainsFunc(m[3:], seenElse.MatchString) {
				out = append(out, r.calledJust(m[1], m[2], at)...)
			}
		}
	}
	return out
}

// seenClean binds a step that looks for a clean face to those that move what lies on it.
func (b *binder) seenClean() {
	r := &report{walk: b.walk, job: b.job}
	for _, st := range b.walk.Steps {
		if st.Bench {
			continue
		}
		for _, x := range st.Seen {
			for _, p := range r.lyingOn(b.job.InEnglish(x.What), st.Place) {
				b.looks(standing{p}, st)
			}
		}
	}
}
