package templates

import "matchmark/packs/reading"

// englishReadings are the words of what is measured in English.
var englishReadings = readingWords{
	pushed: "pushed: %s", load: "load: %s", plane: "plane: %s", hot: "taken hot", cold: "taken cold",
	onDiameter: "on the diameter", onRadius: "on the radius",
	instrumentNo: "no. %s", calibrated: "calibrated until",

	partAt: "part at",
	group:  map[reading.Group]string{reading.Mean: "mean", reading.Spread: "largest less smallest", reading.Sum: "sum"},
	warm:   "part not at %s (%s): ", warmStep: "part", warmLess: "less %s =", warmFor: "× %s =", warmAt: "reading less this, at %s:",
	warmAll: "take this off each reading (with an instrument near %s itself)", spare: "spare %s",

	mended: "mended", inOld: "old part OK", goesBack: "goes back", renewed: "renewed",
	sourcesDiffer: "sources differ", used: "USED", chosenAt: "chosen at %s",

	sheet: "Readings", boxesOn: "%s boxes on the readings sheet, p. %s", boxesOnBack: "%s boxes on the readings sheet, p. %s, below those found",
	outAt: "out of limits at", foundWord: "found", leftWord: "left", start: "clock time at the start",
	critical: "Critical", criticalRule: "The dimensions that decide, each on one line. The boxes are copies: those to write in first stand on the pages named, and count.",
	index: "Dimensions", indexTitle: "Every dimension, its limit, and the step and page where it is read and left.",
	traps: "Easily missed", missed: "easily missed",
	mark: "mark", what: "what is measured", limit: "limit", unit: "unit", source: "source", foundAt: "found at", leftAt: "left at", noMore: "record",
	smallest: "smallest", largest: "largest", notSourced: "NOT SOURCED", lookAt: "%s: compare with p. %s",

	stack: "order of %s, counted from %s outward", expected: "expected: %s", piece: "piece %s as found", stackBack: "%s in the order from %s outward that was written down (p. %s)",
	wayRound: "%s: %s faces %s", wayFound: "as found, %s faces",
	matchMark: "match mark across the joint of %s", markUsed: "mark used", matchWhere: "where it stands", marksMeet: "match marks of %s meet (p. %s)",
}
