package templates

import "matchmark/packs/reading"

// english is the catalogue in English.
var english = words{
	lang: "en", sheetWords: englishSheets, liftWords: englishLifts, workedWords: englishWorked, dims: englishReadings, orderWords: englishOrder,
	heatWords: englishHeat, guardWords: englishGuards,

	front: "Front sheet", traveler: "Traveler", reassembly: "Reassembly", register: "Register", tags: "Tags",

	pageOf: "%s of %s", revision: "rev %s", writeInInk: "Write in ink. Wrong entry: one line through, initials, write anew.",
	deviation: "Deviation", deviationStep: "step", deviationWhat: "what was done otherwise, and why", deviationAgreed: "agreed with",
	handover: "Handover", handoverReached: "step reached", handoverHalf: "half done, loose or finger tight", handoverNext: "next action",
	handoverFrom: "from", handoverTo: "to", handoverTime: "time",

	scope: "Scope", issued: "issued", serial: "serial no.", location: "location", planner: "planner", maker: "maker", machineType: "type",
	sheetsHere: "In this pack", tagsHere: "Tags", sheetsLine: "%s, p. %s", tagsLine: "%s tags, 1 to %s",
	checkBar:  "Measure this bar: it must be 50 mm long. If not, the printer has scaled the page; print again at 100 %.",
	howToRead: "Marks and boxes", marksLegend: "A mark stays with its thing on every sheet and tag. After a slash stands the place, as DE.",
	planning: "Numbers worked out on these sheets are planning figures. The maker's manual, site permits, local codes and licensed practice rule.",
	released: "Released for work", roleName: "role", nameSign: "name and signature", date: "date",
	draft: "DRAFT",
	legend: []legendEntry{
		{"D", "dimension to measure"}, {"C", "container"}, {"B", "big part with its own tag"}, {"Y", "lay-down spot"},
		{"W", "hold or witness point"}, {"S", "matched set"}, {"K", "order of a stack"}, {"J", "joint that is tightened"}, {"L", "lift"}, {"H", "heat"}, {"R", "row of the reassembly sheet"}, {"X", "spare tag or line"},
	},

	seenFrom: "seen from %s", countedFrom: "counted from %s", initials: "initials", time: "time", after: "after %s", anyTime: "any time after %s, before %s",
	into: "into", from: "from", pieces: "pieces", piece: "piece",
	matchedSet: "matched set %s", photo: "photo no.", second: "checked by %s", undoes: "undoes %s, p. %s",
	recorded: "only recorded, nothing to set", emptyNow: "must be empty now:",
	bench: "bench", scrap: "scrap", fitNew: "new: %s; count the old against the new", countOut: "count out", missedWord: "easily missed:",
	putBackDefault: "Put back: %s.", setDefault: "Measure again and write as left: %s.",
	compareDefault: "Look up what was recorded: %s.", anyTimeBefore: "any time before %s", anyTimeAfter: "any time after %s", anyTimeAtAll: "any time",
	doTraveler: "Go on with the traveler, section %s, p. %s", doReassembly: "Go on with the reassembly sheet, section %s, p. %s",
	lastChance: "LAST CHANCE: gone after %s", lastHere: "GONE AFTER THIS, so written down before: %s", lastChanceSame: "LAST CHANCE: gone after this step",

	to: "to", with: "with", by: "by", seen: "seen from %s", reads: "reads %s", asFound: "as found", asLeft: "as left", difference: "left − found",
	copyFrom: "as found, copy from p. %s", limit: "limit", notTaken: "not taken, because", source: "source: %s", notSourced: "LIMIT NOT SOURCED",
	in: "OK", out: "not OK", ifOut: "out: %s", ifOver: "over: %s", ifUnder: "under: %s",
	toothToe: "toe", toothHeel: "heel", toothTip: "tip of the tooth", toothRoot: "root",
	oneTurn: "one turn of the %s moves it %s", oneFlat: "one flat of the %s moves it %s", noLeft: "record", onFound: "to be left %s (p. %s)",

	oldPart: "old part",
	reading: map[reading.Word]string{
		reading.WordAtLeast: "at least", reading.WordAtMost: "at most", reading.WordAbout: "about", reading.WordExactly: "exactly",
		reading.WordAsFound: "as found", reading.WordWorkedOut: "worked out", reading.WordMean: "mean", reading.WordSpread: "spread",
		reading.WordSum: "sum", reading.WordMeanOf: "mean of", reading.WordLargestOf: "largest of", reading.WordSmallestOf: "smallest of",
		reading.WordSpreadOf: "spread of", reading.WordSumOf: "sum of", reading.WordOf: "of", reading.WordHalfOf: "half of",
		reading.WordInEach: "in each", reading.WordForEach: "for each", reading.WordIn: "in", reading.WordAnd: "and", reading.WordTo: "to", reading.WordFrom: "from",
		reading.WordFound: "found", reading.WordRecord: "record", reading.WordNoneAllowed: "none allowed", reading.WordNone: "none",
		reading.WordSome: "some", reading.WordYes: "yes", reading.WordNo: "no", reading.WordRise: "above the part beside it",
		reading.WordWarmer: "warmer,", reading.WordNever: "never", reading.WordAsInSource: "as printed in the source",
		reading.WordNoTolerance: "no tolerance in the source: judge and sign", reading.WordRounded: "rounded",
		reading.WordIs: "is", reading.WordIsOver: "is over", reading.WordIsUnder: "is under", reading.WordIsIn: "is in limits", reading.WordIsOut: "is out of limits",
		reading.WordByHand: "by hand", reading.WordSlackenAll: "slacken all", reading.WordBackOff: "back off", reading.WordTurn: "turn", reading.WordAgainAfter: "again after",
	},

	hold: "HOLD", witness: "WITNESS", releasedBy: "released by: name and signature", dateTime: "date, time",
	siteRules: "site permits, local codes and licensed practice rule",
	signals:   map[string]string{"danger": "DANGER", "warning": "WARNING", "caution": "CAUTION", "notice": "NOTICE"},

	number: "no.", mark: "mark", contents: "contents", offAt: "off at", backAt: "back at", countedIn: "counted in", countedOut: "counted out", shelf: "shelf",
	keep: "keep", stub: "stub", stubSeen: "stub, label", initialsDate: "initials, date", reuse: "reuse", repair: "repair", holdTag: "hold", boxLabel: "box label", bagLabel: "bag label", bagsInside: "bags inside: %s", bags: "%s bags", bagIn: "%s, bag %s",
	spare: "spare", stepPage: "%s p.\u00a0%s", faceOf: "%s of %s", mass: "mass %s", support: "on %s",
}
