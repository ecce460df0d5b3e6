package proof

import (
	"strings"

	"matchmark/packs/phrase"
)

// What a hold is released on, by its words: readings by their marks, or all readings of a kind.
// noReading are words by which it is for something else: which source holds, a lift, what was read
// at another time, of the air or in service, or what may be read once it is released. closesOn are
// words by which it is how they are left that is looked at, seesFound by which it is how they were
// found.
var (
	dimMark   = phrase.Of(`\bD\d+\b`)
	hasSeen   = phrase.Of(`(?i)\b(?:has|have) (?:(?:seen|read|all|every|each|both|the|checked|got|accepted|signed|compared) )+`)
	seesNow   = phrase.Of(`(?i)\b(?:accepts?|signs?|sees?|checks?|compares?|approves?) (?:(?:all|every|each|both|of|the) )*$`)
	areTaken  = phrase.Of(`(?i)\b(?:is|are|been) (?:all )?(?:written down|taken|set|measured|read)\b`)
	noReading = phrase.Of(`(?i)\b(?:chosen|chooses?|sources?|limits?|before|until|method|instruments?|gauges|gauge readings?|slings?|crane|load|lift|rigging)\b|\b(?:vibrations?|last|earlier|previous|in service)\b|\b(?:gas|oxygen|LEL|noise|meter|voltage|air) (?:readings?|tests?|measurements?|figures|checks?)\b|\boil (?:readings?|samples?)\b|\blists? of\b|\bof the order\b|` +
		`\b(?:readings?|measurements?|measuring|figures|clearances|run[- ]?outs?) (?:may|can|will|shall|to) (?:now )?(?:start|begin|follow|be taken|be read)\b|\breadings? follow\b|\b(?:has|have|oil|water|grease) run out\b`)
	closesOn  = phrase.Of(`(?i)\bas left\b|\b(?:is|are) set\b`)
	seesFound = phrase.Of(`(?i)\bas found\b`)
	kindWords = []kindWord{
		{phrase.Words(`readings?|figures|measurements`), ""},
		{phrase.Words(`clearances?`), "clearance"},
		{phrase.Words(`run[- ]?outs?`), "runout"},
		{phrase.Words(`gaps`), "gap"},
		{phrase.Words(`backlash`), "backlash"},
		{phrase.Words(`diameters`), "diameter"},
		{phrase.Words(`bores`), "bore"},
	}
	// givenClearance is a clearance that is a leave to work, or a distance to keep: by the words
	// round it, one alone by being given or signed for.
	givenClearance = phrase.Of(`(?i)\bclearance (?:to|of|for)\b|\bclearances? (?:certificates?|papers?|forms?|slips?|notes?|numbers?|tags?|cards?|permits?|from)\b|\bclearances (?:to (?:work|start|begin|enter|go|proceed|weld|lift|run|open|live|the live|energi[sz]ed|overhead)|for (?:the )?(?:work|job|entry|hot work|welding|start|lift))\b|` +
		`\b(?:signed|signs|given|gives|accepted|accepts|issued|issues) (?:the |a )?clearance\b|\bclearance (?:is |has been )?(?:given|issued|signed)\b|\b(?:given|gives|issued|issues|granted|grants|withdrawn|handed over|hands over) (?:(?:all|both|the|their|his|her) )*clearances\b|\bclearances (?:are |have been )?(?:given|issued|granted|withdrawn|handed)\b|` +
		`\b(?:work|entry|hot[- ]work|safety|security|electrical|isolation|switching|outage|site|gas|approach|permit)[- ]clearances?\b`)
	// givesLeave is who lets the work go on and reads no machine; readsMachine is who does.
	givesLeave = phrase.Of(`(?i)\b(?:safety|HSE|EHS|fire|gas|permits?|site|security|isolations?|area|issuing|dispatch|operating|control[- ]room|shift|operations?)[- ](?:officers?|engineers?|leaders?|managers?|supervisors?|foreman|superintendents?|operators?|offices?|desks?|authority|authorities|issuers?|writers?|coordinators?|watch|watcher|brigade|testers?|department|adviser|advisor|team|crew|staff|controllers?|guard|person|representative)\b|` +
		`\b(?:safety|HSE|EHS|operations|security|dispatchers?|attendants?|control[- ]room|electricians?|operators?|authorised person|authorized person|senior authorised person|person in charge of the isolation)\b`)
	readsMachine = phrase.Of(`(?i)\b(?:engineers?|foreman|foremen|fitters?|mechanics?|millwrights?|inspectors?|supervisors?|specialists?|makers?|machinists?|superintendents?)\b`)
)

// A kindWord is how words name a kind of readings; the kind is empty for every reading.
type kindWord struct {
	words *phrase.Pattern
	kind  string
}

// kindsIn lists the kinds of readings that words of a hold name, as seen or as taken by who may
// read them.
func kindsIn(words string) []kindWord {
	var out []kindWord
	for _, said := range strings.FieldsFunc(givenClearance.ReplaceAllString(words, ""), func(c rune) bool { return strings.ContainsRune(".;:", c) }) {
		if rest := givesLeave.ReplaceAllString(said, ""); rest != said && !readsMachine.MatchString(rest) {
			continue
		}
		for _, k := range kindWords {
			at := k.words.FindStringIndex(said)
			if at != nil && (hasSeen.MatchString(said[:at[0]]) || seesNow.MatchString(said[:at[0]]) || areTaken.MatchString(said[at[1]:])) {
				out = append(out, k)
			}
		}
	}
	return out
}
