package job

import "matchmark/packs/phrase"

// GearOf is the lift in whose gear a load hangs at a step that does not make it, named by its
// mark in what is said of the hook: the slings of L2, only taut. A lift that is only told of
// there is none: not L2, after L2, clear of L2, L2 is down.
func (j *Job) GearOf(st *Step) *Lift {
	words := j.InEnglish(st.OnHook)
	for _, l := range j.Lifts {
		mark := `\b` + phrase.Quoted(l.Mark) + `\b`
		if !phrase.Of(mark).MatchString(words) {
			continue
		}
		// What is told of the lift is taken away: it hangs in its gear if it is named besides.
		rest := phrase.Of(`(?i)`+onlyTold+mark).ReplaceAllString(words, "")
		if phrase.Of(asBefore + mark + rigged).MatchString(rest) {
			return l
		}
		rest = phrase.Of(mark+`(?i)`+toldAway).ReplaceAllString(rest, "")
		if phrase.Of(mark).MatchString(rest) {
			return l
		}
	}
	return nil
}

const (
	// onlyTold are the words before a mark by which its gear is not used: when, where from, or
	// that it is not that; between them and the mark stands nothing but what is the lift's.
	onlyTold = `\b(?:not|no|never|nor|neither|without|except|but for|unlike|instead of|rather than|other than|apart from|after|before|until|once|when|while|since|as soon as|clear of|free of|away from|out of the way of|next to|near|beside|behind|under|below|above|over|past|between)\b` +
		`(?: (?:by|in|on|with|from|of|for|to|at|as|the|that|those|its|all|lifts?|slings?|chains?|gear|load|sheet|legs?|using|taken))*(?: L\d+,?(?: (?:and|or|nor))?)* `
	// asBefore and rigged stand around a mark whose gear is used again.
	asBefore = `(?i)\b(?:as|like) (?:for )?`
	rigged   = ` (?:is|was) (?:done|made|rigged|slung)\b`
	// toldAway are the words behind a mark that tell where its load is.
	toldAway = `(?: (?:load|lift))?(?: (?:is|are|was|were|has|have|stands?|hangs|lies|goes|comes|went|came)\b(?: (?:been|gone|already|still|well))*)(?: (?:not|off|away|later|next|taken off|removed|down|clear|gone|done|over|finished|set|parked|out|up|past|made|landed|ashore|on its|back)\b)`
)
