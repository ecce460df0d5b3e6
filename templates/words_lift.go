package templates

// liftWords are the words of the lift sheet and of the step that points to it.
type liftWords struct {
	lift string

	// The step.
	onHookLine, liftLine, liftByHandLine, liftNotComputed, levelWords, tiltWords, tiltSide, tiltMost string

	// What it rests on.
	madeAt, notComputed, doNotLift, massOf, massTold, massTolerance, centreAt, centreBand, hangsOn, ratedBy, craneLine, layDownAt, floorLine string
	supportsLine, crewLine, measuredFrom, byHandOn                                                                                           string
	massFrom                                                                                                                                 map[string]string
	rigs                                                                                                                                     map[string]string

	// Verdict.
	weakest, craneUsed, level, headroom, headroomSpare, notLookedAt, hookLoad, signedPlan, pressLine, teamLine string

	// Drawing and legs.
	sideView, planView, hook, centre, leg, length, angle, pulls, mostPulls, design, chosen, inHand, shorten, hangsSlack string
	evenSplit, bail, carries, mostCarries                                                                               string

	// Gear.
	component, loadOn, rated, reduced, usedShare, gearNumber, gearInspected, lookBefore string

	// The day.
	stops, usualStops, initialsAt, theDay, loadCell, trialLevel, gapAt, wind, yes, no, sameGear, inCharge, driver, rigger, nameSignLift string
	cautionsHere, howWorked, planningLift                                                                                               string
	stopSlack, stopTrial, stopPath, stopSeat, stopUnhook, stopLiftOff                                                                   string
	handStops                                                                                                                           []string
}
