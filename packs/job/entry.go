package job

import "matchmark/packs/phrase"

// Words by which a permit is known as one for going in where a person can be shut in, and
// those that speak of no such thing: a line that is opened, an entry that is not allowed, the
// gate of the site.
var (
	entry   = phrase.Of(`(?i)\bentry\b`)
	goingIn = phrase.Of(`(?i)\bconfined\b|\bentry[- ]permits?\b|\bpermits? (?:for|of|to) (?:[\w-]+ ){0,3}entry\b|` +
		`\b(?:vessel|tank|casing|manway|man|pit|sump|drum|duct|boiler|silo|hopper|space|chamber|housing|shaft|sewer|trench)[- ]entry\b|` +
		`^entry$|\bentry (?:in)?to\b|\b(?:to enter|entering)\b|\bno entry (?:before|until|unless|without|alone)\b`)
	notIn = phrase.Of(`(?i)\b(?:line|pipe|pipeline|piping|data)[- ]entry\b|\b(?:not for|without) entry\b|\bno[- ](?:[\w-]+ )?entry(?: permits?)?(?:$|[,;.:)])|` +
		`\b(?:entry (?:in)?to|to enter|entering) (?:the )?(?:site|plant|works|hall|building)\b|\b(?:not|never) (?:to )?enter(?:ing)?\b|\b(?:no|not|without a?) ?confined\b`)
)

// IsEntry reports whether a permit is one for going in where a person can be shut in: by what
// its author says of it, else by its key, as entry or tank-entry, or by its words in English,
// as confined space permit.
func (j *Job) IsEntry(p *Permit) bool {
	if allows, said := p.Allows(ForEntry); said {
		return allows
	}
	key, what := notIn.ReplaceAllString(p.Key, ""), notIn.ReplaceAllString(j.InEnglish(p.What), "")
	return entry.MatchString(key) || goingIn.MatchString(key) || goingIn.MatchString(what)
}
