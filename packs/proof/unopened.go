package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// runsEmpty are words of a machine that is empty of what runs in it, which its drain tells;
// sawThrough of what is seen through a glass or by a lamp in a hole that is always there; besideIt
// of what has an inside and stands round or beside the machine.
var (
	runsEmpty  = phrase.Of(`(?i)\b(?:empty|drained|dry|vented|depressuri[sz]ed|cold|pressure|gas|oxygen|air|nobody|no ?one|people)\b`)
	sawThrough = phrase.Of(`(?i)\b(?:glass|window|camera|endoscope|borescope|plug hole|heard|sound|noise|level)\b`)
	besideIt   = phrase.Of(`(?i)\bin(?:side)? (?:of )?(?:(?:the|a|its|each|both) )?(?:[\w-]+ )?(pits?|bund|tent|box(?:es)?|crates?|cabin|container|scaffold(?:ing)?|shelter|trench|gully|foot|feet|frame|store|rack)\b`)
)

// checkUnopened warns of what is looked at inside, by a tick or for a hold, before anything is
// open: all that opens does so below. That nobody is in and that it has run empty is known from
// outside.
func (r *report) checkUnopened() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		what := lookedAt(e)
		words := r.job.InEnglish(what)
		if told[e.At] || e.Step.Bench || what == "" || runsEmpty.MatchString(words) || sawThrough.MatchString(words) || !r.seesShut(words) || r.seenBeside(words) {
			continue
		}
		opens := r.opensBelow(e, what)
		if opens == nil {
			continue
		}
		told[e.At] = true
		r.problems.WarnWith(e.At, "seen-unopened", e.Step.Name()+" looks for "+source.Quote(what)+", and nothing is open before "+opens.Step.Name(), opens.At, "opened only here",
			"write it at a step between the one that opens and the one that closes")
	}
}

// seenBeside reports whether words look into what stands round or beside the machine, and is none
// of its openings.
func (r *report) seenBeside(words string) bool {
	in := besideIt.FindStringSubmatch(words)
	return in != nil && !slices.ContainsFunc(r.job.Openings, func(o *job.Opening) bool {
		return strings.Contains(strings.ToLower(r.job.InEnglish(o.What)), strings.ToLower(in[1]))
	})
}

// opensBelow is the first event that opens what some words name, where all of it opens below
// another and nothing has come off by then; nil else.
func (r *report) opensBelow(e *walk.Event, what string) *walk.Event {
	came := func(x *walk.Event) bool {
		return x.Verb == job.DoRemove && !x.Move.Part.Guard && !x.Move.Part.Fastens()
	}
	if slices.ContainsFunc(r.walk.Events[:e.Index], came) {
		return nil
	}
	var first *walk.Event
	for _, o := range r.namedIn(what) {
		opened := r.walk.Opened(o)
		if opened == nil || opened.Index < e.Index {
			return nil
		}
		if first == nil || opened.Index < first.Index {
			first = opened
		}
	}
	return first
}

// unopened binds a step that looks inside to the one that opens what it looks into.
func (b *binder) unopened() {
	r := &report{walk: b.walk, job: b.job}
	for _, e := range b.walk.Events {
		what := lookedAt(e)
		if what == "" || e.Step.Bench || !r.seesShut(b.job.InEnglish(what)) || r.seenBeside(b.job.InEnglish(what)) {
			continue
		}
		for _, o := range r.namedIn(what) {
			if opened := b.walk.Opened(o); opened != nil {
				b.before(opened.Step, e.Step, job.Bind{Kind: job.BoundOpening, Opening: o})
			}
		}
	}
}
