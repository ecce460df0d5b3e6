package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
)

// What seals or locks once: it takes the form of its place as it is drawn up or bent, and does
// not do so a second time. Common practice, no source. A mechanical seal, a labyrinth ring and a
// circlip go back, and so do a seal that floats or runs clear, and the cotter of a valve or a rod,
// which is a key.
var (
	once = phrase.Of(`(?i)\b(?:gaskets?|o[ -]?rings?|lip seals?|oil seals?|radial seals?|split[ -]?pins?|cotter[ -]?pins?|tab[ -]?washers?|lock(?:ing)?[ -]?(?:tabs?|plates? with tabs?|wires?)|(?:copper|fibre|fiber|crush|sealing) (?:washers?|rings?))$|^cotters?$`)
	// clears is a ring that runs clear of what it seals, or wears with it, and goes back.
	clears = phrase.Of(`(?i)\b(?:floating|carbon|graphite|labyrinth|wind[ -]?back|piston|balance|face)\b.*\b(?:seals?|sealing rings?)$`)
	// oftener is said of one that is made to be used again.
	oftener = phrase.Of(`(?i)\b(?:re-?us\w+|re-?useable|permanent|used again|old|same|again|undamaged|unhurt|whole|not renewed|stays?|if (?:good|sound|fitted))\b`)
)

// checkUsedSeal warns of a gasket, an O-ring, a split pin or a tab washer that comes off and goes
// back as it is: it leaks, or it breaks where it was bent. Words by which it goes back so are
// the author's choice.
func (r *report) checkUsedSeal() {
	for i, p := range r.job.Parts {
		if p.Renew != "" || p.Aid || len(p.Off) == 0 || i > 0 && r.job.Parts[i-1].Key == p.Key || !r.sealsOnce(p) || r.saidAgain(p) {
			continue
		}
		if k := slices.IndexFunc(p.Back, func(m *job.Move) bool { return !m.New && m.Undo != nil }); k >= 0 {
			r.problems.WarnWith(p.At, "used-seal", p.Called()+" goes back used at "+p.Back[k].Step.Name(), p.Back[k].At, "goes back here",
				"renew: always", "or say in the words of the step that puts it back that the old one goes on again")
		}
	}
}

// sealsOnce reports whether a part is by its name one that seals or locks once.
func (r *report) sealsOnce(p *job.Part) bool {
	name := headOf.ReplaceAllString(strings.TrimSpace(r.job.InEnglish(p.Name)), "")
	return once.MatchString(name) && !clears.MatchString(name)
}

// saidAgain reports whether words of the part, or of a step that moves it, say that it goes back
// as it is, or that a new one does.
func (r *report) saidAgain(p *job.Part) bool {
	if oftener.MatchString(r.job.InEnglish(p.Name)) {
		return true
	}
	word := strings.ToLower(job.LastWord(r.job.InEnglish(p.Name)))
	for _, m := range slices.Concat(p.Off, p.Back) {
		for _, text := range []string{m.Step.Do, m.Step.Note, m.Step.PutBack.Value, m.Step.Missed} {
			if callsNew(r.job.InEnglish(text), r.job.InEnglish(p.Name)) {
				return true // the law of words tells
			}
			for _, sentence := range strings.FieldsFunc(strings.ToLower(r.job.InEnglish(text)), func(c rune) bool { return c == '.' || c == ';' }) {
				if strings.Contains(sentence, strings.TrimSuffix(word, "s")) && oftener.MatchString(sentence) {
					return true
				}
			}
		}
	}
	return false
}
