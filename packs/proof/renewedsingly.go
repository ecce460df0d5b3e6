package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
)

// Halves that are bored together, and pairs that are run or ground together, by their names: the
// upper and the lower shell, a worm and its wheel, the cone and the cup of one bearing. The shells
// of the front and the rear bearing are not of one bore. Common practice, no source.
var (
	side  = phrase.Of(`(?i)\b(?:upper|lower|top|bottom|inner|outer)\b`)
	bored = phrase.Of(`(?i)\b(?:bearing|guide|journal|main|big[ -]end|rod|crank|connecting[ -]rod) (?:shells?|liners?|half|halves|inserts?|brass(?:es)?)$|^(?:bearing )?(?:half[ -])?(?:shells?|liners?)$|\bbearing half[ -]shells?$`)
	pairs = [][2]*phrase.Pattern{
		{phrase.Of(`(?i)(?:^|\b)worm$|\bworm shaft$`), phrase.Of(`(?i)\bworm[ -]?(?:wheel|gear)$`)},
		{phrase.Of(`(?i)\b(?:bevel|hypoid) pinion(?:[ -]shaft)?$`), phrase.Of(`(?i)\b(?:crown|bevel|hypoid) (?:wheel|gear)$`)},
	}
	cupCone = phrase.Of(`^(.*\b(?:bearing|roller) )(?:(cup)|(cone))$`)
)

// checkRenewedSingly warns of one of two that belong together that is always renewed while the
// other goes back old, or stays in. Where they are a matched set its own law tells.
func (r *report) checkRenewedSingly() {
	told := map[string]bool{} // once for all places
	for _, p := range r.job.Parts {
		if p.Renew != "always" || p.Set != nil || told[p.Key] || !r.mayBelong(p) {
			continue
		}
		i := slices.IndexFunc(r.job.Parts, func(q *job.Part) bool {
			return q != p && q.Renew == "" && q.Set == nil && !q.Aid && q.Place.Agrees(p.Place) && q.Of == p.Of && r.belongTogether(p, q)
		})
		if i < 0 {
			continue
		}
		told[p.Key] = true
		q := r.job.Parts[i]
		does := "goes back old"
		if len(q.Off) == 0 {
			does = "stays in the machine"
		}
		r.problems.WarnWith(p.At, "renewed-singly", p.Called()+" is always renewed, and "+q.Called()+", which runs or was bored with it, "+does, q.At, "the other",
			"renew: always at both, or make a matched set of them: set: S1", "or, if one alone is renewed: renew: if …, which says when")
	}
}

// mayBelong reports whether a part is one of two by its name.
func (r *report) mayBelong(p *job.Part) bool {
	name := r.plainName(p)
	return side.MatchString(name) && bored.MatchString(withoutSide(name)) || cupCone.MatchString(name) ||
		slices.ContainsFunc(pairs, func(two [2]*phrase.Pattern) bool { return two[0].MatchString(name) || two[1].MatchString(name) })
}

// belongTogether reports whether two parts are halves of one, or a pair, by their names.
func (r *report) belongTogether(p, q *job.Part) bool {
	a, b := r.plainName(p), r.plainName(q)
	if side.MatchString(a) && side.MatchString(b) {
		x, y := withoutSide(a), withoutSide(b)
		return x == y && bored.MatchString(x) && side.FindString(a) != side.FindString(b)
	}
	if x, y := cupCone.FindStringSubmatch(a), cupCone.FindStringSubmatch(b); x != nil && y != nil {
		return x[1] == y[1] && x[2] != y[2]
	}
	return slices.ContainsFunc(pairs, func(two [2]*phrase.Pattern) bool {
		return two[0].MatchString(a) && two[1].MatchString(b) || two[1].MatchString(a) && two[0].MatchString(b)
	})
}

// plainName is the English name of a part in small letters, without what it belongs to.
func (r *report) plainName(p *job.Part) string {
	return strings.ToLower(strings.TrimSpace(headOf.ReplaceAllString(r.job.InEnglish(p.Name), "")))
}

// withoutSide is a name without the word that says which of two it is.
func withoutSide(name string) string {
	return strings.Join(strings.FieldsFunc(side.ReplaceAllString(name, ""), func(c rune) bool { return c == ' ' || c == ',' }), " ")
}
