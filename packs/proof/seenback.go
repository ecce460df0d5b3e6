package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// onAgain finds a thing that is seen on or in again: a strap, a plug, a pin.
var onAgain = phrase.Of(`(?i)^(?:(?:the|both|all|each|every) )*((?:[\w-]+ )?[\w-]+?) (?:(?:is|are|was|were|put|pushed|screwed) )*(?:on|in|back|shut|tight)(?: and \w+)? again\b`)

// goesOn finds words by which something that was off or out is on or in after them.
var goesOn = phrase.Of(`(?i)\b(?:on|in|back|again|re-?fit\w*|put|fit|fits|fitted|fitting|replac\w*|shut|close[sd]?|tight\w*|re-?strap\w*|strap|screw|seal\w*|insert\w*|push\w*|driven?|drive|mount\w*|hang|return\w*|restor\w*|secure\w*|fasten\w*|winds?|wound|wrap\w*|(?:hook|tie|clip|pin|plug|lash|buckle)(?:s|es|ed|ped|ned|ged)? (?:it|them|the|up|down|round|both)|tied)\b`)

// checkSeenBack sees that what is taken out on the way is ticked as on again both ways: in
// taking apart by seen:, at the put-back row, whose words take it out once more, by
// back-seen:; and that what is ticked has gone on by the words before the tick.
func (r *report) checkSeenBack() {
	told := map[source.Pos]bool{} // once for all places
	for _, st := range r.walk.Steps {
		words := strings.TrimSpace(r.job.InEnglish(st.Do) + " " + r.job.InEnglish(st.Note))
		if !r.job.HasEnglish(st.Do) {
			continue
		}
		for _, x := range st.Seen {
			if thing := thingOn(r.job.InEnglish(x.What)); thing != "" && staysOut(thing, words) && !told[x.At] {
				told[x.At] = true
				r.problems.Warn(x.At, "left-out-in-words", st.Name()+" ticks "+source.Quote(x.What)+", and its words take that out and do not say when it goes on again", "say it in the words of the step, where it is done")
			}
		}
		if st.Undoes == nil || told[st.Undoes.At] {
			continue
		}
		for _, x := range st.Undoes.Seen {
			thing := thingOn(r.job.InEnglish(x.What))
			if thing == "" || !takenOut(thing).MatchString(words) || staysOut(thing, words) || r.ticks(st, thing) {
				continue
			}
			told[st.Undoes.At] = true
			r.problems.WarnWith(st.Undoes.PutBack.At, "unticked-back", "the words of the put-back row "+st.Name()+" take out what "+source.Quote(x.What)+" ticks in taking apart, and nobody ticks it there", x.At, "ticked here",
				"back-seen: ["+x.What+"] at "+st.Undoes.No)
			break
		}
	}
}

// thingOn is what words say to be on or in again, empty if they say it of nothing.
func thingOn(words string) string {
	m := onAgain.FindStringSubmatch(words)
	if m == nil {
		return ""
	}
	return m[1]
}

// takenOut finds a thing off or out in words.
func takenOut(thing string) *phrase.Pattern {
	return phrase.Of(`(?i)\b` + phrase.Quoted(thing) + `s? (?:(?:is|are) )?(?:off|out|open|away|loose)\b`)
}

// staysOut reports whether words take a thing out and say nothing below by which it, or
// anything, goes on again.
func staysOut(thing, words string) bool {
	all := takenOut(thing).FindAllStringIndex(words, -1)
	return len(all) > 0 && !goesOn.MatchString(words[all[len(all)-1][1]:])
}

// ticks reports whether a step ticks anything of a thing by name.
func (r *report) ticks(st *job.Step, thing string) bool {
	return slices.ContainsFunc(st.Seen, func(x job.Seen) bool {
		return strings.Contains(strings.ToLower(r.job.InEnglish(x.What)), strings.ToLower(thing))
	})
}
