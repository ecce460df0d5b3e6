package words

// englishAllSteps are the words of AllSteps in English.
var englishAllSteps = AllSteps{
	Title:    "All steps",
	Rule:     "Where to turn when unsure: every step with its page, what holds it, is lifted, heated, tightened or measured as left there, and what is easily missed.",
	BackAt:   "back %s",
	Sections: "Sections", Holds: "Holds", Lifts: "Lifts", Heats: "Heats",
	Missed: "easily missed: %s", Set: "as left %s", Hours: "%s\u00a0h", SectionLine: "%s  %s",
}
