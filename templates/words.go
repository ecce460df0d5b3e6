package templates

import (
	"strconv"
	"strings"

	"matchmark/packs/reading"
)

// words is the catalogue of fixed words in one language. A word with %s or %d in
// it is a sentence with holes; they are filled in the order given.
type words struct {
	lang string
	sheetWords
	workedWords
	dims readingWords
	liftWords
	orderWords
	heatWords
	guardWords

	// Names of sheets, as on the black plate.
	front, traveler, reassembly, register, tags string

	// Head and foot of every page.
	pageOf, revision, writeInInk                             string
	deviation, deviationStep, deviationWhat, deviationAgreed string
	handover, handoverReached, handoverHalf, handoverNext    string
	handoverFrom, handoverTo, handoverTime                   string

	// Front sheet.
	scope, issued, serial, location, planner, maker, machineType string
	sheetsHere, tagsHere, sheetsLine, tagsLine, checkBar         string
	howToRead, marksLegend, planning                             string
	released, roleName, nameSign, date                           string
	draft                                                        string
	legend                                                       []legendEntry

	// Steps.
	seenFrom, countedFrom, initials, time, after, anyTime, into, from, pieces, piece string
	matchedSet, photo, second, undoes, recorded, emptyNow                            string
	bench, scrap, fitNew, countOut, missedWord, putBackDefault                       string
	setDefault, compareDefault, doTraveler, doReassembly                             string
	lastChance, lastChanceSame, lastHere                                             string
	anyTimeBefore, anyTimeAfter, anyTimeAtAll                                        string

	// Dimensions.
	to, with, by, seen, reads, asFound, asLeft, difference, copyFrom string
	limit, notTaken, source, notSourced, in, out, ifOut, ifOver      string
	ifUnder, oneFlat, oneTurn, noLeft, onFound                       string
	toothToe, toothHeel, toothTip, toothRoot                         string

	oldPart string
	reading map[reading.Word]string

	// Holds and cautions.
	hold, witness, releasedBy, dateTime, siteRules string
	signals                                        map[string]string

	// Register and tags.
	number, mark, contents, offAt, backAt, countedIn, countedOut, shelf                                     string
	keep, stub, stubSeen, initialsDate, reuse, repair, holdTag, boxLabel, bagLabel, bagsInside, bags, bagIn string
	mass, support, stepPage, faceOf, spare                                                                  string
}

// legendEntry explains one kind of mark.
type legendEntry struct{ letter, means string }

// count words a number of pieces.
func (w words) count(n int) string {
	if n == 1 {
		return "1 " + w.piece
	}
	return strconv.Itoa(n) + " " + w.pieces
}

// fill puts values into the holes of a sentence.
func fill(sentence string, values ...string) string {
	for _, v := range values {
		sentence = strings.Replace(sentence, "%s", v, 1)
	}
	return sentence
}
