// Package reading is the language of a measurement box: the one line that a
// planner copies out of a manual and that the paper prints again.
//
//	0.05 to 0.12 mm            at least 4.0 mm           at most 0.15 mm
//	12.5 +/- 0.1 mm            80.00 +0.02/-0.00 mm      as found +/- 0.10 mm
//	mean 1.10 to 1.40 mm and spread at most 0.10 mm
//	D1 - D2 + 0.20 mm +/- 0.03 mm      70 % of D9 +/- 0.05 mm
//	record to 0.01 mm    none    must be free    choose A or B    exactly 8 pcs
//
// Parse reads a limit, ParseFormula a reading that is itself worked out,
// ParseCondition what a step waits for, ParseStage one stage of a tightening.
// They share their words. What cannot be read comes back as a *Fault with its
// place in the text, counted in runes from 0, and with what to write instead.
//
// A Limit judges readings (Judge, JudgeWord), sizes their write-in box (BoxFor)
// and tells its words for paper (Words). Values stay exact decimals or fractions,
// with the digits as typed; each test has one unit. A limit prints as a line
// (Text) that reads as the same limit.
//
// Refused, never guessed: a size without a unit, two units side by side, a size
// without a tolerance, decimals that differ within a test, limits the wrong way
// round, a second unit in brackets that is not the same size, a temperature where
// a difference is meant.
//
// The package knows no files, no places in them, and no paper; it imports units
// only.
package reading
