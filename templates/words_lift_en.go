package templates

// englishLifts are the words of liftWords in English.
var englishLifts = liftWords{
	lift: "Lift sheet",

	onHookLine: "On the hook: %s. %s. No lift sheet: a routine lift by the site's lift rules.",
	liftLine:   "Lift sheet %s, p. %s: %s, %s. Trial lift %s, look, wait, then go.", liftByHandLine: "Lift sheet %s, p. %s: %s, %s people by hand.",
	liftNotComputed: "Lift sheet %s, p. %s: CANNOT BE COMPUTED. Do not lift.",
	levelWords:      "hangs level", tiltWords: "hangs %s out of level, %s is %s low", tiltSide: "hangs %s out of level, its %s side low", tiltMost: "%s, at most %s out of level",

	madeAt: "made at %s", notComputed: "%s cannot be computed, because", doNotLift: "Do not lift by this sheet.",
	massOf: "Mass", massTold: "%s (%s)", massTolerance: "%s ± %s (%s)", centreAt: "Centre of gravity", centreBand: "%s %s ± %s",
	hangsOn: "Hangs", ratedBy: "%s, gear rated by %s", craneLine: "%s, may lift %s", layDownAt: "Lay down at", floorLine: "%s: presses %s on a floor for %s, %s used",
	supportsLine: "Props and blocks", crewLine: "Must be there", measuredFrom: "x, y and z from: %s", byHandOn: "by hand, %s people, none carries over %s",
	massFrom: map[string]string{"weighed": "weighed", "drawing": "from a drawing", "computed": "computed", "estimated": "estimated"},
	rigs:     map[string]string{"bridle": "on %s legs to one hook", "spreader": "under a spreader", "beam": "under a lifting beam", "two hooks": "on two hooks"},

	weakest: "used most", craneUsed: "crane", level: "level", headroom: "headroom", headroomSpare: "%s spare, hook at %s", notLookedAt: "not looked at",
	hookLoad:   "%s on the hook, times %s for its movement",
	signedPlan: "signed lift plan %s is here", pressLine: "Between its picks the load is pressed with %s.", teamLine: "the team may lift %s",

	sideView: "Side view, 1 : %s. %s to the right, z up. Lengths and angles written are the true ones.", planView: "Plan, 1 : %s. x to the right, y up.", hook: "hook", centre: "Quartered disc: centre of gravity; dashed box: where it may lie.",
	leg: "leg", length: "length", angle: "from horizontal", pulls: "pulls", mostPulls: "within the band", design: "with factor %s",
	chosen: "make it this long", inHand: "in hand", shorten: "shorten by %s to hang level", hangsSlack: "hangs %s slack",
	evenSplit: "Shared evenly by levers the legs would pull %s. A stiff load does not keep to it: one diagonal may carry all, so each leg is counted with the most that it can be given.",
	bail:      "Bail of the beam at %s from its end over %s.", carries: "carries", mostCarries: "at most",

	component: "piece", loadOn: "load", rated: "rated", reduced: "after reductions", usedShare: "used", gearNumber: "number on its tag", gearInspected: "inspected on",
	lookBefore: "No tag, no lift. Look at every piece before use.",

	stops: "Stop and look", initialsAt: "initials, %s", usualStops: "The person in charge gives the word to go on at each of these.", theDay: "On the day: lift at %s",
	loadCell: "load cell reads, %s", trialLevel: "trial lift %s: level", gapAt: "gap at %s, %s", wind: "wind or draught", yes: "yes", no: "no",
	sameGear: "gear changed since the list above: which, and its numbers", inCharge: "person in charge", driver: "crane driver", rigger: "rigger", nameSignLift: "%s: name and signature",
	cautionsHere: "To be minded", howWorked: "How it was worked out, in kilograms and millimetres",
	planningLift: "These are planning figures. A competent person, the site's lift rules and the local code decide whether the lift is made.",
	stopSlack:    "Slack just out: hands off, legs lie straight, hook stands over the centre of gravity.",
	stopTrial:    "Trial lift %s: stop, measure the gap at both ends, wait a minute, look at the hoist brake and at every leg. Not level: set down, change the legs.",
	stopLiftOff:  "Clear of what it sat on, and of dowels and studs.",
	stopPath:     "Before it travels: way clear, nobody under it, tag lines manned.",
	stopSeat:     "A hand's width above where it is set down: stop, turn it right, hands out.",
	stopUnhook:   "Set down and propped: legs slack, load stands by itself; then unhook.",
	handStops: []string{
		"One person gives the word. Way clear and set-down place ready.",
		"Lifted by a hand's width: anybody who carries too much says so, and it is set down.",
		"Set down on blocks, fingers out.",
	},
}
