package words

// englishFilled are the words of Filled in English.
var englishFilled = Filled{
	Title: "What came back",
	Rule:  "Worked out from the values typed from the paper. The paper stays the record: where the two differ, it counts. What is out needs somebody to decide.",
	Typed: "typed from paper by %s",
	Out:   "Out of limits", OutNone: "Nothing that was typed is out of limits.", Values: "value", ToDo: "what to do",
	Mend: "Out of limits, and can be mended", SetLater: "Found out of limits, and set later on this job", SetAt: "set at %s, where the limit holds",
	NoAction: "the definition names no action: tell the engineer", Tags: "tick HOLD on the tag", NoTag: "no tag",
	FoundOut: "FOUND OUT OF LIMITS: %s", Position: "%s: %s",
	Missing: "p.\u00a0%s: %s", MissingLeft: "As left: %s boxes are still to be written, on pages %s.",

	InLimits: "In limits", OldGoesBack: "Old part may go back", OnlyRecorded: "Recorded, no limit at this time", Open: "Cannot be judged yet",
	NotTakenHead: "Not taken", MissingHead: "Still missing as found, by page", NothingMissing: "Every box as found has a value.",
	MovesHead: "Moves at the feet", LostHead: "Values that no box of this revision takes", RefusedHead: "Rows that were not taken, or should be looked at", DayHead: "Found on the day",
	Foot: "feet", UpDown: "up or down", Sideways: "sideways, looking toward the other machine", Raise: "raise", Lower: "lower", ToRight: "right", ToLeft: "left",
	Stays: "stays", AlignIn: "in limits", AlignOut: "out of limits", CannotMove: "cannot be worked out: %s",
	DoesNotClose: "top and bottom do not add up to left and right: %s apart",

	WorkedOut: "WORKED OUT", Flats: "flats", Turns: "turns", OutsideTable: "no pack for it: tell the engineer", Expected: "by what was found, to be read again:",
	Target: "target %s", Between: "%s to %s", AtLeast: "at least %s", AtMost: "at most %s", Pack: "pack %s = %s", ToGo: "from %s to the target: %s", Shims: "shims: %s",
	LastFound: "last found %s, %s", LastLeft: "last left %s, %s",
}

// englishReport are the words of Report in English.
var englishReport = Report{
	Title: "As found, as left",
	Rule:  "Every reading of this outage with its limit and verdict. Change: as found now less as left last time. Values worked out are rounded to the digits of their box.",
	Found: "as found", Left: "as left", Last: "last", Change: "change", Wear: "in 1000 h", Verdict: "verdict",
	Outcome: []string{"missing", "not taken", "recorded", "open", "OK", "old part OK", "mend", "NOT OK"},
	Hours:   "Running hours: %s.", HoursMissing: "Running hours: not told.", NoLast: "No earlier outage was given.",
	PlotHead: "Readings of three outages and more; limit in: if it goes on as since the last outage, a planning figure", PlotHours: "running hours, h", PlotOutage: "outage", PlotTitle: "%s  %s", Under: "under %s", Over: "over %s",
	Reaches: "limit in %s",
}
