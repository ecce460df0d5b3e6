package words

import "matchmark/packs/joint"

// englishTightening are the words of Tightening in English.
var englishTightening = Tightening{
	Title: "Tightening", Rule: "Tick each fastener in each round as it is done. A round broken off is begun anew. These boxes count, not those at the step.",

	TightenedAt: "tightened at %s", LoosenedAt: "loosened at %s", OnSheet: "order and ticks: p.\u00a0%s",
	OnTwo:        "order: p.\u00a0%s, ticks: p.\u00a0%s",
	TicksAt:      "ticks: p.\u00a0%s",
	LooseOnSheet: "backward: from number %s down to 1, see p.\u00a0%s",
	LooseListed:  "backward through the list: from place %s to place %s, see p.\u00a0%s",

	OrderNumber: "The number in a circle is when its fastener is tightened: 1 first. A number marked on a part or beside its hole is another one.",
	ClockTop:    "12 o'clock", Top: "top", PlacesListed: "The places lie too close to draw the order.",
	Scale: "To scale 1 : %s.", SeenFrom: "Seen from %s.", ClockIs: "The black triangle at the top: %s.",
	Backward: "Loosen backward, number %s first and number 1 last, a little each round.", PlaceList: "Order by the numbers of the places: %s.",
	PlacesFrom: "Place 1 is %s° and place 2 is %s° clockwise from the top.", TopIs: "At the top: %s.",
	FromCorner:     "Place 1 is at the top left corner; they are counted clockwise.",
	FromTop:        "Place 1 is at the middle of the top; they are counted clockwise.",
	FromLeft:       "Place 1 is at the left end; they are counted to the right.",
	FromUpperRow:   "Place 1 is at the left end of the upper row; they are counted along it to the right, then back along the lower row to the left.",
	PlacesLie:      "Measured from the leftmost and the lowest of all, place 1 lies %s to the right and %s up, place 2 %s to the right and %s up.",
	BackwardListed: "Loosen backward through this list: place %s first and place %s last, a little each round.",

	Lubricant: "Threads and faces", NewAlways: "New ones every time", ForNow: "For a while before the last torque",
	BreaksLoose: "Each must break loose with at least", BelowIt: "those that did not",
	Class: "class %s (%s)", Grade: "%s (%s)", Proof: "proof stress %s (%s)", NutFactor: "nut factor %s (%s)", Torque: "Torque %s", ThenTurned: "%s, then %s", WrenchFor: "Set the wrench to %s: worked out for %s.",
	TensionerIs: "Tensioner: area %s, %s % of the pull stays (%s).", PlanIs: "Stages: plan \"%s\", %s.",

	Presses: "Each then presses with about %s.", ToldPull: "The tensioner pulls with %s.",
	Scatter: "One bolt may be as low as %s and as high as %s (%s % to either side).", ScatterBy: "scatter of the pull: %s", WrenchFeels: "a wrench feels friction, not pull", Together: "All %s together press with at least %s.",
	Share: "That is %s of what the bolt may carry: %s, and its proof stress is %s.", ShareHigh: "With the scatter all one way: %s.",
	HoldsThat: "proof load %s each",
	NotHere:   "not on this machine.",
	NotWorked: "What the torque does to the bolt is not worked out: class and friction are not told.", LookAt: "LOOK AT",

	Stage: map[joint.StageKind]Sentence{
		joint.Tighten: "%s", joint.ByHand: "by hand", joint.Turn: "turn %s", joint.BackOff: "back off %s", joint.SlackenAll: "slacken all",
		joint.LastRound: "last round, %s", joint.AgainAfter: "again %s after %s", joint.AgainRunning: "again %s when the machine has run",
	},
	Head:  map[joint.StageKind]string{joint.LastRound: "last round", joint.AgainAfter: "again", joint.AgainRunning: "again"},
	After: "after %s", RoundNote: "%s: %s.", AgainAt: "once more in each further try of %s, ticked there",
	Way:       map[joint.Way]string{joint.InPattern: "in order", joint.Backward: "backward", joint.Around: "in turn round the joint, until no nut moves"},
	SameBolts: "the same fasteners to the same torque as %s, worked out there.",
	Moves:     "%s along the thread",

	OrderColumn: "order", WhereColumn: "where", ToolAndDate: "tool no., calibrated until", ToolNo: "tool no.", Tool: "tool", Calibrated: "calibrated until", FinalBy: "final by", CheckedBy: "checked by",

	WorkedOut: "Worked out: ", Assumptions: "Counted with: ", Planning: "Planning figures; the maker's sheet rules.",
	Assumes: map[joint.Assumption]string{
		joint.TensionOnly: "pull alone, no twist or bending of the shank", joint.AllAlike: "all fasteners rub alike",
		joint.NoNeighbour: "nothing lost when the next one is tightened", joint.RoomTemperature: "parts at room temperature",
	},
}
