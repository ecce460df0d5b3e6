package templates

// englishOrder are the words of the order of work in English.
var englishOrder = orderWords{
	loosen: "loosen", tighten: "tighten", toTorque: "to %s", tightForNow: "FOR NOW, at last %s", stages: "in stages:", tight: "tight", slack: "loose", oiled: "threads: %s", inOrder: "order: %s",
	forNow: "for now", takeOut: "take out again", leftOut: "LEFT OUT for now, goes in at %s", atBench: "on the bench", people: "%s people",
	renewAsSet: "if one is renewed, renew the set", renewIf: "renew %s", renewLine: "%s: %s",
	allGoBack: "all in: all %s go back", allRenewed: "one or more out: all %s are renewed", whichIsOut: "which are out",
	asJudged: "old or new, all %s alike, as decided for %s at %s (p. %s)",

	orderHead: "%s  %s", orderStep: "%s: %s", bindAfter: "after %s", bindBelow: "follows %s, no after: is written", bindHold: "a hold stands between it and %s",
	bindPart: "after %s: both move or measure %s", bindJoint: "after %s: both loosen, tighten or measure %s", bindLost: "after %s: it destroys %s, measured there",
	bindReading: "after %s: it needs the reading %s", bindEmpty: "after %s: %s must be empty here", bindLock: "after %s: locks are put on or taken off at one of the two", bindOpening: "after %s: it opens %s",
	bindHanging: "after %s: a load is left hanging, or let down, at one of the two", bindTools: "after %s: the tools are counted at one of the two",
	bindNothing: "bound to nothing above it",
	free:        "free: %s", orderSum: "%s steps, %s of them free to move", because: "%s: %s",

	warningSum: "%s from the check: see to them before the work begins", errorSum: "DRAFT, printed in spite of %s", errorOne: "problem", warningOne: "warning",
	errorWord: "ERROR", warningWord: "WARNING", lineOf: "%s line %s", also: "see also line %s: %s",
}
