package words

// englishDimension are the words of Dimension in English.
var englishDimension = Dimension{
	Between: "%s to %s", FaceOf: "%s of %s", StampedOn: "number on the %s", LeaveAlone: "LEAVE ALONE", Difference: "left − found",
	GoneAfter: "LAST CHANCE: gone once %s begins", GoneWithin: "LAST CHANCE: gone within step %s", GoneAfterThisStep: "LAST CHANCE: gone within this step", CompareWith: "%s: compare with p.\u00a0%s",

	With: "with: %s", By: "by: %s", Pushed: "pushed: %s", Load: "load: %s", Plane: "plane: %s", TakenHot: "taken hot", TakenCold: "taken cold",
	OnDiameter: "on the diameter", OnRadius: "on the radius", Number: "no. %s",

	PartAt: "part at", Spare: "spare %s", Warm: "part not at %s (%s): ", WarmStep: "part", WarmLess: "less %s =", WarmFor: "× %s =",
	WarmAt:  "reading less this, at %s:",
	WarmAll: "take this off each reading (with an instrument near %s itself)",
	Copied:  "as found, copied", FoundOn: "found: p. %s",

	OnlyRecorded: "only recorded, nothing to set", LeftOnFound: "to be left %s (p.\u00a0%s)", LeftRecorded: "record as left too (p.\u00a0%s)", LeftAs: "to be left %s", WorkedLater: "limit %s: worked out when %s is read (p.\u00a0%s)",
	SourcesDiffer: "sources differ", Used: "USED", ChosenAt: "chosen at %s", OldPartInLimits: "old part OK", GoesBack: "goes back", Renewed: "renewed",

	ToothToe: "toe", ToothHeel: "heel", ToothTip: "tip of the tooth", ToothRoot: "root",
}

// englishLadder are the words of Ladder in English.
var englishLadder = Ladder{
	ByHand: "by hand: %s", Target: "target", TargetLess: "target − %s =", TargetMore: "target + %s =", LowEnd: "at least", HighEnd: "at most",
	StampedNumber: "number on the part", FoundLess: "found − %s =", FoundMore: "found + %s =", RoundedTo: "rounded to %s",
}

// englishShims are the words of Shims in English.
var englishShims = Shims{
	LeavesInHand: "%s: leaves of %s, at\u00a0most %s in the pack", OneOfSet: "%s: one of %s", WorkedOut: "worked out", Pack: "pack", Leaves: "leaves",
	OutsideTable: "Outside the table: no pack, tell the engineer.", OldPackStays: "old pack stays, its sum is in", Leaf: "leaf %s",
	SumOfLeaves: "sum", Material: "material, mark",

	OneFlat: "one flat of the %s moves it %s", OneTurn: "one turn of the %s moves it %s", OneThread: "one turn of the %s is one thread, %s",
	Flats: "flats", Turns: "turns", ToGo: "to go, to the target", ShimsMove: "%s of %s moves it %s", ShimsLess: "%s more of %s makes it %s less", MoreShims: "shims to add",
	BackOff: "turned back %s after it touches",
}

// englishReadings are the words of Readings in English.
var englishReadings = Readings{
	Title: "Readings", BoxesOn: "%s boxes on the readings sheet, p.\u00a0%s", BoxesOnBack: "%s boxes on the readings sheet, p.\u00a0%s, below those found",
	OutAt: "out of limits at", Found: "found", Left: "left", ClockAtStart: "clock time at the start", CalibratedUntil: "calibrated until",
}

// englishCritical are the words of Critical in English.
var englishCritical = Critical{
	Title:             "Critical",
	Rule:              "The dimensions that decide, each on one line. The boxes are copies: those to write in first stand on the pages named, and count.",
	EasilyMissedTitle: "Easily missed", Smallest: "smallest", Largest: "largest",
}

// englishIndex are the words of Index in English.
var englishIndex = Index{
	Title:  "Dimensions",
	Rule:   "Every dimension, its limit, and the step and page where it is read and left.",
	Source: "source", FoundAt: "found at", LeftAt: "left at", NotSourced: "NOT SOURCED",
}
