package hazard

import (
	"strings"

	"matchmark/packs/phrase"
)

var (
	betweenSentences = phrase.Of(`[.;]`)
	betweenClauses   = phrase.Of(`(?i)[,:]|\b(and|then)\b`)
	// lifts are the words of a sentence in which something is lifted as well.
	lifts = phrase.Of(`(?i)\b(lift|tak(e|ing)|carr(y|i)|draw|hoist|rais(e|ing)|heav(e|ing))`)
	// crewAlone is a clause that says how many do it, and nothing else.
	crewAlone = phrase.Of(`(?i)^\s*(with )?two[- ](people|men|man)\s*$`)
)

// besides is a text without its clauses that speak of something else than the note: turn the
// shaft with two people. A sentence in which something is lifted stands whole, for a caution too
// many does less harm than one that is lost.
func (n *builtin) besides(text string) string {
	var out []string
	for _, sentence := range parted(betweenSentences, text) {
		if lifts.MatchString(sentence) {
			out = append(out, sentence)
			continue
		}
		dropped := false // the clause before
		for _, clause := range parted(betweenClauses, sentence) {
			dropped = n.unlike.MatchString(clause) || dropped && crewAlone.MatchString(clause)
			if !dropped {
				out = append(out, clause)
			}
		}
	}
	return strings.Join(out, "; ")
}

// parted is a text in parts, without what stands between them.
func parted(between *phrase.Pattern, text string) []string {
	return strings.Split(between.ReplaceAllString(text, "\x00"), "\x00")
}
