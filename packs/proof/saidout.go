package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// saysStillOut finds what the words of a step say to be out of the machine: "Spacer still
// out". Only with "still" do they tell of a state; "guard off" is an order.
var saysStillOut = phrase.Of(`(?i)\b(?:(\pL+) )?(\pL+?)s? (?:is |are )?still (?:out|off)\b`)

// Words around "still out" by which it tells of no state: no bolt, if it is, see that none is,
// and how a machine stands: still out of line, still off by 0.05 mm.
var (
	asksOut = phrase.Of(`(?i)\b(?:no|not|none|nothing|never|if|any|anything|where|wherever|whether|when|unless|until|that|which|whatever)\b`)
	howOut  = phrase.Of(`(?i)^ (?:of|by|line|true|level|cent(?:re|er)|square|round|balance|more|less|too|\d)`)
	clause  = phrase.Of(`[^,;.:!?()]*$`)
)

// stillOutIn finds what words say to be still out, each with the word before it and its own.
func stillOutIn(words string) [][]string {
	var out [][]string
	for _, at := range saysStillOut.FindAllStringSubmatchIndex(words, -1) {
		if howOut.MatchString(words[at[1]:]) || asksOut.MatchString(clause.FindString(words[:at[0]])+words[at[0]:at[1]]) {
			continue
		}
		before := ""
		if at[2] >= 0 {
			before = words[at[2]:at[3]]
		}
		out = append(out, []string{words[at[0]:at[1]], before, words[at[4]:at[5]]})
	}
	return out
}

// checkSaidOut warns of what the words of a step say to be still out and is in: a motor that is
// tried or moved while it is coupled turns the pump, and is pulled into line by its bolts.
func (r *report) checkSaidOut() {
	for _, st := range r.walk.Steps {
		for _, m := range stillOutIn(r.job.InEnglish(st.Do)) {
			parts := r.stillOut(st, m)
			if len(parts) == 0 || slices.ContainsFunc(parts, func(p *job.Part) bool { return r.walk.StandsAt(p, st) < p.Count }) {
				continue
			}
			p := parts[0]
			at, what := p.At, "the part"
			for _, x := range slices.Concat(p.Off, p.Back) {
				if x.Step.Index < st.Index {
					at, what = x.At, "goes back here"
				} else if p.Back == nil || x.Undo == nil {
					at, what = x.At, "comes off only here"
					break
				}
			}
			r.problems.WarnWith(st.At, "said-out", st.Name()+" is done with "+source.Quote(m[0])+", and "+p.Called()+" is in the machine then", at, what,
				"do it while "+p.Key+" is off", "or take the words out")
		}
	}
}

// stillOut lists the parts that words of a step call out, of those that come off in this job.
func (r *report) stillOut(st *job.Step, m []string) []*job.Part {
	return slices.DeleteFunc(r.calledJust(m[1], m[2], st.Place), func(p *job.Part) bool { return len(p.Off) == 0 })
}

// saidOut binds a step to those that move what its words say to be out.
func (b *binder) saidOut() {
	r := &report{walk: b.walk, job: b.job}
	for _, st := range b.walk.Steps {
		for _, m := range stillOutIn(b.job.InEnglish(st.Do)) {
			for _, p := range r.stillOut(st, m) {
				b.looks(standing{p}, st)
			}
		}
	}
}
