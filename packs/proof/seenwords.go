package proof

import "matchmark/packs/phrase"

// What can lie in a machine, and where.
const (
	hollows  = `casings?|housings?|vessel|drum|bores?|sump|pit|pump|case|gearbox|tank|chamber|cylinders?|bowl|pipes?|branch(?:es)?|nozzles?|ports?|ducts?|inlet|outlet|suction|discharge|volute|barrel|crankcase|receiver|manifold|machine|mill|fan|compressor|turbine|blower|engine|openings?|holes?|scroll|separator|boiler|passages?|shell|cooler|reservoir|header|hopper|silo`
	inHollow = `in(?:side)? (?:it|them|there|(?:(?:the|its|either|each|both|any|all|of|upper|lower|top|bottom) )*(?:[\w-]+ )?(?:` + hollows + `))\b`
	leftOver = `tools?|rags?|wedges?|blocks?|chocks?|props?|plugs?|bars?|straps?|chips?|swarf|filings|shavings|debris|dirt|grit|sand|scale|sludge|rubbish|lamps?|cloths?|gloves?|loose (?:parts?|pieces?|things?)|foreign \w+`
)

// Words of what is looked at. inside is what only a head or a hand in the machine sees; closeTo
// is what else is looked at within its reach, as a guard that is on, which asks for the locks
// and for no opening. clearOf is what is seen from where nothing can catch anybody, as that
// nobody stands near and the floor is clean, and fenced what has an inside and is no machine,
// as a fence, a folder, or the limits of a reading; and past what was seen in there before.
var (
	inside = phrase.Of(`(?i)\binside\b|` +
		`\b(?:nobody|no ?one|nothing|none) (?:(?:is|was|else|left|loose|lies|lying|works|working|stands|and nothing|near or|at or) )*` + inHollow + `|` +
		`\bnothing (?:is |was )?(?:left|loose|lying) in$|` +
		`\bno (?:[\w-]+,? ){0,3}?(?:` + leftOver + `) (?:(?:is|are|was|were|left|forgotten|lies|lying|lie|still|any) )*` + inHollow + `|` +
		`\b(?:` + leftOver + `) (?:(?:is|are|all|taken) )*out of (?:it|them|(?:(?:the|its|both) )?(?:[\w-]+ )?(?:` + hollows + `))\b|` +
		`\b(?:casing|housing|vessel|drum|bores?|sump|pit) (?:(?:is|are|clean|dry|and) )*empty\b|` +
		`\b(?:` + hollows + `) (?:(?:is|are|clean|dry|and|wiped) )*free (?:of|from) (?:[\w-]+,? ){0,3}?(?:` + leftOver + `)\b|` +
		`\b(?:vessel|drum|bores?|sump|pit|chamber) (?:is |are )?(?:clean|clear)\b`)
	closeTo = phrase.Of(`(?i)\b(?:nobody|no ?one|nothing (?:is |was )?(?:left|in|loose)|(?:tools?|rags?|wedges?|blocks?|chocks?|props?|plugs?|bar|strap) (?:is |are )?(?:all )?(?:out|off|away|taken)|guards? (?:is |are )?(?:on|back|tight|in place)|clean and|(?:casing|housing) (?:is )?(?:clean|clear))\b`)
	clearOf = phrase.Of(`(?i)\b(?:nobody|no ?one) (?:(?:is|was|else|left|stands|standing|stays|works|working) )*(?:near|nearby|at|by|beside|round|around|about|within|close|under|below|behind|in front|in the (?:area|danger|way|hall|room|zone)|on)\b|` +
		`\b(?:floor|walkway|platform|stairs|area|place|site|bench) (?:is )?clean and\b`)
	fenced = phrase.Of(`(?i)\binside (?:of )?(?:(?:the|a|an|its|their|these|those|both|all|given) )*(?:[\w-]+ )?(?:fence|barriers?|cordon|tape|chain|hall|room|building|area|zone|diameter|micrometer|calipers?|limits?|tolerances?|bands?|range|folder|report|figures?)\b|` +
		`\binside (?:of )?[-+±]?\d+(?:[.,]\d+)?(?: ?(?:°|%|mm|µm|cm|m|in|mils?|bar|psi|kPa|MPa|K|C|F|V|A|N|kN|rpm|min|s|h)(?:[^\w]|$)| ?°|[.,;]|$)`)
	past = phrase.Of(`(?i)\b(?:(?:was|were) (?:(?:found|seen|left|there) )?|(?:has|have|had) been (?:(?:found|seen|left|there) )?)inside\b`)
)

// seesInside reports whether what is looked at, in English, lies in the machine.
func seesInside(words string) bool {
	return inside.MatchString(past.ReplaceAllString(fenced.ReplaceAllString(words, "near"), "found"))
}

// seesCloseTo reports whether what is looked at lies in the machine, or within its reach.
func seesCloseTo(words string) bool {
	words = fenced.ReplaceAllString(words, "near")
	return inside.MatchString(words) || closeTo.MatchString(clearOf.ReplaceAllString(words, ""))
}
