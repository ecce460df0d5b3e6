package templates

import "matchmark/packs/reading"

// readingWords are the fixed words of what is measured.
type readingWords struct {
	// States of a reading.
	pushed, load, plane, hot, cold, onDiameter, onRadius string
	inOld, instrumentNo, calibrated                      string

	// Boxes beside the readings.
	partAt                                                    string
	group                                                     map[reading.Group]string
	warm, warmStep, warmLess, warmFor, warmAt, warmAll, spare string

	// Limits.
	mended, goesBack, renewed, sourcesDiffer, used, chosenAt string

	// Sheets of readings.
	sheet, boxesOn, boxesOnBack, outAt, foundWord, leftWord, start string
	critical, criticalRule, index, indexTitle, traps, missed       string
	mark, what, limit, unit, source, foundAt, leftAt, noMore       string
	smallest, largest, notSourced, lookAt                          string

	// Orders and orientations.
	stack, expected, piece, stackBack, wayRound, wayFound string
	matchMark, markUsed, matchWhere, marksMeet            string
}
