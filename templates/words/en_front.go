package words

// englishFront are the words of Front in English.
var englishFront = Front{
	Title: "Front sheet", Scope: "Scope", Issued: "issued", PlannedBy: "planned by", Serial: "serial no.", Location: "location", Maker: "maker", MachineType: "type",
	InThisPack: "In this pack", SheetLine: "%s, p.\u00a0%s", PageNo: "p.\u00a0%s", TagsLine: "%s tags, 1 to %s", SpareTags: ", %s spare",
	CheckBar:    "Measure this bar: it must be 50 mm long. If not, the printer has scaled the page; print again at 100 %.",
	SingleSided: "Print on one side of the paper.", BothSides: "Print on both sides, turned over the long edge.",
	HowToRead:    "Marks and boxes",
	MarkStays:    "A mark stays with its thing on every sheet and tag.",
	ChangedSince: "A bar in the margin with the letter %s stands beside what has changed since revision %s.", ChangedToo: "Changed besides steps and readings:", Gone: "No longer there:", PlaceBehindMark: "After a slash stands the place, as %s.",
	Planning: "Numbers worked out on these sheets are planning figures. The maker's manual, site permits, local codes and licensed practice come first.",
	Released: "Released for work",
	Marks: []Mark{
		{"D", "dimension to measure"}, {"C", "container"}, {"B", "big part with its own tag"}, {"Y", "lay-down spot"},
		{"W", "hold or witness point"}, {"S", "matched set"}, {"K", "order of a stack"}, {"J", "joint that is tightened"}, {"A", "alignment"}, {"L", "lift"}, {"H", "heat"}, {"R", "row of the reassembly sheet"}, {"SCRAP", "bag for what does not go back"}, {"X", "spare tag or line"}, {"RX", "spare row for what goes back"},
	},

	PackSign: "at the head of each page, and in its code, is this pack's alone.",

	ThisMachine: "This machine", Fitted: "fitted", NotFitted: "not fitted", BuildSaid: "%s (%s)", BuildBySerial: "%s (%s), told by serial %s",
	OnlyThis: "The pack holds only what is meant for this machine. Compare with the plate and with the machine before the work.",
	NotHere:  "Not in the pack: %s.",

	FromCheck: Counted{
		"one": "1 warning from the check: see to it before the work begins", "other": "%s warnings from the check: see to them before the work begins",
	},
	PrintedInSpite: Counted{"one": "DRAFT, printed in spite of 1 problem", "other": "DRAFT, printed in spite of %s problems"},
	ErrorWord:      "ERROR", WarningWord: "WARNING", AtLine: "%s line %s", SeeAlso: "see also line %s: %s", SeeLine: "see also line %s", Written: "written: %s",
}

// englishCautions are the words of Cautions in English.
var englishCautions = Cautions{
	Title:     "Cautions",
	Signal:    map[string]string{"danger": "DANGER", "warning": "WARNING", "caution": "CAUTION", "notice": "NOTICE"},
	SiteRules: "site permits, local codes and licensed practice come first", InFull: "whole text p.\u00a0%s",
	SignalMeans: map[string]string{
		"danger": "will kill or injure badly if it is not kept clear of", "warning": "can kill or injure badly",
		"caution": "can hurt", "notice": "harms the machine, nobody is in danger",
	},
	CautionsTitle: "Cautions in full", SparedTitle: "Left out by the planner", SparedLine: "%s, at %s: %s",
	SignalSource: "Words as in ANSI Z535.6, signs numbered as in ISO 7010. Where other papers use CAUTION for the machine, here it is NOTICE.",
	Permit:       "permit", PermitNumber: "number", PermitUntil: "valid until", PermitGiven: "given by: name, time", PermitBack: "handed back: initials, date", BeforeSteps: "before %s",
	FireWatch: "Fire watch after", FlameOut: "flame out: time", WatchUntil: "watched until, %s or later: time", WatchedBy: "watched by: name",
}

// englishIsolations are the words of Isolations in English.
var englishIsolations = Isolations{
	Title: "Isolations",
	Rule:  "A lock is taken off by the one who put it on or has taken it over in writing, and by nobody else. Proved means shown at the machine, after the lock is on.",
	Point: "point", Proved: "proved", ProvedBy: "proved by %s", LockNumber: "lock no.", LockedBy: "locked: initials, time", UnlockedBy: "unlocked: initials, time",
	LockedAt: "locked at %s", LockedAgainAt: "locked again at %s", UnlockedAt: "unlocked at %s", UnlockedForNowAt: "off for now at %s",
	NumberAgain: "%s again",
	TakenOver:   "locks taken over: no.", TakenOverMore: "locks taken over: no.; more: copy this page", HandsOver: "hands over: name, signature", TakesOver: "takes over, all proved: name, signature", Renewed: "permits renewed: which, until, by",
}

// englishGather are the words of Gather in English.
var englishGather = Gather{
	Title:       "Gather list",
	Rule:        "Issued, used and returned are counts: used and returned add up to issued.",
	Instruments: "Instruments", Tools: "Tools", Spares: "Spares", Consumables: "Consumables", HowMuch: "qty", CalDue: "calibration due",
	Issued: "issued", Used: "used", Returned: "returned", AlwaysRenewed: "always renewed", AnyOfThem: "any of them: %s", UsedAt: "for %s", Reads: "reads %s",
}
