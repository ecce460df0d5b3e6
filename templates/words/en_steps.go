package words

// englishAllSteps are the words of AllSteps in English.
var englishAllSteps = AllSteps{
	Title:    "All steps",
	Rule:     "Where to turn when unsure: every step with its page, what holds it, is lifted, heated, tightened, set or read there, and what is easily missed.",
	BackAt:   "back %s",
	Sections: "Sections", Holds: "Holds", Lifts: "Lifts", Heats: "Heats",
	Missed: "easily missed: %s", Set: "set %s", Read: "read %s", Hours: "%s\u00a0h", Total: "in all %s\u00a0h, %s crew\u00a0h", NoHours: Counted{"one": "without 1 step that has no hours", "other": "without %s steps that have no hours"}, SectionLine: "%s  %s",
}
