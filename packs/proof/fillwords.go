package proof

import (
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
)

const (
	amount = `(?:about |some )?\d+(?:[.,]\d+)? ?(?:l|ml|dl|litres?|liters?|dm3|gal|gallons?|quarts?|pints?)\b`
	fluid  = `oil|water|coolant|lubricant|glycol|brine|fluid|(?:ISO |ISO-)?VG ?\d+|SAE ?\d+`
	holder = `(?:gear ?)?case|casing|crankcase|gearbox(?:es)?|gear unit|sump|bearings?|housings?|machine|pump|compressor|engine|oiler|lubricator`
)

// How words fill a machine: fill it, fill the gear case with oil, pour 4 litres in, new oil in. They
// name what runs in a machine, how far it comes, or what of a machine is filled: a crate is filled
// with shavings and a gap with compound. What is filled in is a form, what is filled is a grease gun,
// and what runs out again rinses.
var (
	saysFill = phrase.Of(`(?i)(?:^|[.;:!?,] |\b(?:and|then|now) )(?:` +
		`(?:fill|refill|top|charge) (?:up )?(?:it|them|the|both|all|each|every|with|its|(?:in )?(?:the |new |fresh |clean )*(?:oil|` + amount + `)|` + holder + `)\b[^.;:]*|` +
		`(?:pour|put) (?:the |all |new |fresh |clean )*(?:` + amount + ` (?:of )?)?(?:(?:the |new |fresh |clean )*(?:[\w-]+ )?(?:` + fluid + `) )?(?:back )?in(?:to)?\b[^.;:]*|` +
		`add ` + amount + `[^.;:]*|oil in: ` + amount + `[^.;:]*|` +
		`(?:new|fresh) oil:? (?:` + amount + `|in(?:to)?\b)[^.;:]*)`)
	fillElse  = phrase.Of(`(?i)\b(?:forms?|sheet|report|boxes|columns?|table|gun|can|bucket|tray|groove|joint|keyway|pot|line|pipe|bath|grease|half way|test|flush\w*|rins\w*|runs? out|solvent|crates?|jack|bags?|cleaning|bottles?|spray|truck)\b|^\W*(?:(?:and|then|now) )?\w+ (?:(?:up|the|all|each|both) )*(?:[\w-]+ )?(?:holes?|threads?|bores?)\b|\bin(?:to)? (?:(?:the|each|all|both) )?(?:(?:bolt|screw|tapped|dowel) holes?|threads?|bores?)\b|^[^.;:]*\bfill in (?:the|it|all|both|each|every|its)\b`)
	fillsWith = phrase.Of(`(?i)\b(?:with|litres? of|liters? of|l of) ([^.;:,]*)`)
	isFluid   = phrase.Words(fluid)
	howFar    = phrase.Of(`(?i)\b(?:to|at|up to) (?:(?:its|their|the|both|middle|centre|center|of|upper|lower|max\w*) )*(?:marks?|notch|glass(?:es)?|level|middle|centre|center|stick)\b|\b` + amount)
	isFilled  = phrase.Of(`(?i)^\W*(?:(?:and|then|now) )?\w+ (?:up )?(?:(?:the|both|all|each|every|its) (?:[\w-]+ ){0,2}?)?(?:it|them|both|` + holder + `)\b`)
	topsUp    = phrase.Of(`(?i)^\W*(?:(?:and|then|now) )?top\b`)
)

// fillsAt is what a step fills by its words, empty for none.
func (r *report) fillsAt(st *job.Step) string {
	words := r.job.InEnglish(st.Do)
	for _, at := range saysFill.FindAllStringIndex(words, -1) {
		said := words[at[0]:at[1]]
		if fillsMachine(said) && !notIn.MatchString(clause.FindString(words[:at[0]])) && !saysLater.MatchString(words[at[1]:]) {
			return strings.TrimLeft(said, ".;:!?, ")
		}
	}
	return ""
}

// fillsMachine reports whether words that fill something fill a machine with what runs in it.
func fillsMachine(said string) bool {
	if fillElse.MatchString(said) {
		return false
	}
	if with := fillsWith.FindStringSubmatch(said); with != nil {
		return isFluid.MatchString(with[1])
	}
	return isFluid.MatchString(said) || howFar.MatchString(said) || isFilled.MatchString(said)
}

// fillsOil reports whether a step fills oil by its words: oil, or what has oil in it, and no other
// liquid.
func (r *report) fillsOil(st *job.Step) bool {
	said := r.fillsAt(st)
	return withOil.MatchString(said) && (saysOil.MatchString(said) || !otherFluid.MatchString(said))
}

// fillsFirst reports whether a step fills oil by its words after it was drained: what is topped up
// has oil.
func (r *report) fillsFirst(st *job.Step) bool {
	return r.fillsOil(st) && !topsUp.MatchString(r.fillsAt(st))
}

var (
	withOil    = phrase.Of(`(?i)\b(?:oil|VG ?\d+|SAE ?\d+|glass(?:es)?|bearings?|sump|gear ?case|gearbox(?:es)?)\b|\b` + amount)
	saysOil    = phrase.Of(`(?i)\boil\b|\b(?:VG|SAE) ?\d`)
	otherFluid = phrase.Words(`water|coolant|glycol|brine`)
)
