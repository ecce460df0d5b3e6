package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/walk"
)

var (
	// goesInside finds words of somebody who goes in, isInside those of work that is done there.
	goesInside = phrase.Of(`(?i)\b(?:go|goes|climb|climbs|crawl|crawls|get|gets|step|steps) (?:down )?(?:in\b|inside|into)|\b(?:climb|crawl)s? (?:through|along)\b|\benter(?:s)? (?:it|the)\b|(?:^|[.;:,] ?)(?:(?:one|two|first|second) )?(?:man|men|person|people|fitter|mechanic|entrant)s? in(?: and\b|[.,;:!]|$)`)
	// bodyIn are those of them that are said of a person alone, with what it is that he is in.
	bodyIn = phrase.Of(`(?i)\b(?:climb|crawl)s? (?:down )?(?:inside|into|in|through|along) (?:the |a )?((?:[a-z-]+ ?){1,4})`)
	// nameEnds is where the name of that ends; outsideOf is what stands at a vessel, is called by
	// it, and no one is in.
	nameEnds  = phrase.Of(`(?i)\b(?:and|then|from|with|by|to|for|on|at|over|under|below|beside|while)\b`)
	outsideOf = phrase.Of(`(?i)\b(?:platforms?|ladders?|rails?|railings?|gallery|galleries|scaffold(?:ing)?|baskets?|stairs?|walkways?|supports?|legs?|skirts?|roofs?|tops?|insulation)\b`)
	isInside  = phrase.Of(`(?i)\bfrom (?:the )?inside\b|\binside (?:it|the)\b|\bmeasure\b[^.;]*\binside\b`)
	// intoElse is what a person gets into that is no opening, and when it is not now.
	intoElse = phrase.Of(`(?i)^ (?:(?:the|your|his|a|each) )?(?:[\w-]+ )?(?:harness|suits?|overalls?|gloves|boots|mask|gear|line|position|place|room|office|workshop|cabin|cab|store|building|rails?|railings?|fence|gate|gallery|scaffold(?:ing)?|basket|cage)\b|^[^.;:,]*\b(?:later|afterwards|tomorrow|after that)\b`)
	// fromOutside are words by which what is inside is tried or told from outside.
	fromOutside = phrase.Of(`(?i)\b(?:test|measure|sample|read|check|draw|prove)s?\b[^.;:]*\b(?:air|oxygen|gas|atmosphere|vapour|vapor)\b|\b(?:write|note|sign|enter|tell|report)s?\b[^.;:]*\b(?:found|seen|read|done|was|is)\b`)
)

// checkEntryShut warns of a step that goes in on an entry permit, by its words or by what it
// looks at, or crawls or climbs in by its words alone, while nothing stands open that a person can be in: it stands above the step that
// opens it, or below the one that closes it. A permit that is asked for in time, before it is
// opened, is left alone.
func (r *report) checkEntryShut() {
	told := map[*job.Permit]bool{}
	for _, st := range r.walk.Steps {
		var on *job.Permit // nil where a person goes in without one, or on one asked for above
		says := "goes in by its words"
		if i := slices.IndexFunc(st.Permits, r.job.IsEntry); i >= 0 {
			on, says = st.Permits[i], "goes in on the permit "+st.Permits[i].Key
		}
		goes := on != nil && r.goesInAt(st) || on == nil && r.crawlsIn(st)
		if !goes || st.Bench || st.Locks() || told[on] || r.openWithin(st) {
			continue
		}
		for _, o := range r.job.Openings {
			opened := r.walk.Opened(o)
			if !o.Enclosed || opened == nil || !o.OpenedAt.Place.Agrees(st.Place) {
				continue
			}
			what := "opened only here"
			if opened.Step.Index < st.Index {
				what = "opened here, and closed again by then"
			}
			told[on] = true
			r.problems.WarnWith(st.At, "entry-shut", st.Name()+" "+says+", and nothing stands open then that a person can be in", opened.At, what,
				"do it between the step that opens "+o.Key+" and the one that closes it", "or say it in other words, if nobody goes in")
			break
		}
	}
}

// notIn are words before it in the same clause by which nobody goes in yet, or at all.
var notIn = phrase.Of(`(?i)\b(?:nobody|no ?one|not|never|don't|before|until|unless|if|when|who|whoever|anybody|without|ready|may)\b`)

// saysGoesIn reports whether words say that somebody goes in, or works inside.
func saysGoesIn(words string) bool {
	return slices.ContainsFunc(goesInside.FindAllStringIndex(words, -1), func(at []int) bool {
		return !notIn.MatchString(clause.FindString(words[:at[0]])) && !intoElse.MatchString(words[at[1]:])
	}) || slices.ContainsFunc(isInside.FindAllStringIndex(words, -1), func(at []int) bool {
		return !notIn.MatchString(clause.FindString(words[:at[0]])) && !fromOutside.MatchString(clause.FindString(words[:at[0]])+words[at[0]:at[1]])
	})
}

// goesInAt reports whether somebody goes in at a step by its words or by what is looked at.
func (r *report) goesInAt(st *job.Step) bool {
	return saysGoesIn(r.job.InEnglish(st.Do)) || slices.ContainsFunc(st.Seen, func(x job.Seen) bool { return seesInside(r.job.InEnglish(x.What)) })
}

// crawlsIn reports whether a step without an entry permit says that somebody crawls or climbs
// into what an opening that a person can be in is called by.
func (r *report) crawlsIn(st *job.Step) bool {
	words := r.job.InEnglish(st.Do)
	if !saysGoesIn(words) {
		return false
	}
	for _, in := range bodyIn.FindAllStringSubmatch(words, -1) {
		name := in[1]
		if end := nameEnds.FindStringIndex(name); end != nil {
			name = name[:end[0]]
		}
		if outsideOf.MatchString(name) {
			continue
		}
		for _, w := range strings.Fields(strings.ToLower(name)) {
			if slices.ContainsFunc(r.job.Openings, func(o *job.Opening) bool {
				return o.Enclosed && len(w) > 3 && slices.Contains(strings.Fields(strings.ToLower(r.job.InEnglish(o.What))), w)
			}) {
				return true
			}
		}
	}
	return false
}

// openWithin reports whether something that a person can be in is open at some time of a step.
func (r *report) openWithin(st *job.Step) bool {
	begins := &walk.Event{Index: r.walk.Start(st)} // of a step of words alone as well
	for _, o := range r.job.Openings {
		if o.Enclosed && (slices.Contains(st.Open, o) || r.walk.Open(o, begins) != nil) {
			return true
		}
	}
	return false
}

// entryShut binds a step that goes in to those that open and close what a person can be in.
func (b *binder) entryShut() {
	r := &report{walk: b.walk, job: b.job}
	for _, st := range b.walk.Steps {
		if slices.ContainsFunc(st.Permits, b.job.IsEntry) && r.goesInAt(st) {
			b.within(st)
		}
	}
}

// within binds a step between the opening and the closing of what a person can be in.
func (b *binder) within(st *job.Step) {
	for _, o := range b.job.Openings {
		if !o.Enclosed || o.OpenedAt == nil {
			continue
		}
		if o.OpenedAt.Index < st.Index {
			b.before(o.OpenedAt, st, job.Bind{Kind: job.BoundOpening, Opening: o})
		}
		if closed := b.walk.Closed(o); closed != nil && closed.Step.Index > st.Index {
			b.before(st, closed.Step, job.Bind{Kind: job.BoundOpening, Opening: o})
		}
	}
}
