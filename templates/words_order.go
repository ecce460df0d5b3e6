package templates

// orderWords are the fixed words of the order of work: loosening and tightening,
// what is on for now, what binds a step.
type orderWords struct {
	loosen, tighten, toTorque, tightForNow, stages, tight, slack, oiled, inOrder string
	forNow, takeOut, leftOut, atBench, people                                    string
	renewAsSet, renewIf, renewLine                                               string
	allGoBack, allRenewed, whichIsOut, asJudged                                  string

	// The order as text.
	orderHead, orderStep, bindAfter, bindBelow, bindHold, bindPart, bindJoint string
	bindLost, bindReading, bindEmpty, bindNothing, bindLock, bindOpening      string
	bindHanging, bindTools                                                    string
	free, orderSum, because                                                   string

	// The warnings on the front sheet.
	warningSum, errorSum, errorOne, warningOne, errorWord, warningWord, lineOf, also string
}
