package templates

// heatWords are the words of the heat sheet.
type heatWords struct {
	heats, heatRule, drawnOffAt, putOnAt, heatLinePull, heatLineOn, neverAbove string

	// The joint.
	fitLine, sizesLine, countedGreatest, countedMeasured                      string
	pressure, coldPull, holdsLine, holdsNot, yieldLine                        string
	pullerRated, pullerDoes, pullerShort, smoothNone, smoothEight, smoothFour string
	pictureScale, pictureFaces, shield, heatArrow, nothingNear, partAtMost    string

	// Drawing off.
	pullTitle, byWay, neverSkin, neverPart, noFlame           string
	paceLine, paceSlow, tooFast, noPace                       string
	freeLine, bandLine, staysLine, staysEndless, keepOnLine   string
	levelsLine, wallLine, wallUse, wallNoUse                  string
	nearLine, nearStuck, intoLine, colours, lookAt            string
	chartOpening, chartTime, chartNeeded, chartGrips          string
	chartLevels, chartWindow                                  string
	orderTitle, logTitle, stuckTitle, dressTitle              string
	orderTorch, orderInduction                                []string
	orderShield, orderPuller                                  string
	dressTorch, dressOther                                    string
	stuckStop, stuckWays, stuckBore, stuckPuller              string
	permitNo, watchStart, watchEnd, watchName, torches        string
	hubStart, shaftStart, airStart, heatOnAt, freeAt          string
	heatOffAt, skinAtFree, cameOff, didNotMove                string
	logTime, logElsewhere, logSkin, logShaft, logBy, mustPass string

	// Putting on.
	onTitle, heatTo, makersFigure, roomLine, soakLine, noSoak string
	carryLine, gripsLine, chillLine, chillHot, chillCold      string
	airLine, mostNitrogen, mostIce, ladderTitle, ladderUpTo   string
	ladderSetTo, ladderTooHot, largest, smallest              string
	interferenceBox                                           string
	setTo, inAt, outAt, partTemp, shaftTemp, onAt, coldCheck  string
	orderOven, orderOnInduction, orderOnTorch, orderOnAll     []string
	orderBearing, orderChill                                  []string
	workedOut, assumptions, inMetric                          string
}
