package words

import "matchmark/packs/reading"

// English is the catalogue in English.
var English = &Catalogue{
	Lang: "en",
	Limit: map[reading.Word]Sentence{
		reading.WordAtLeast: "at least %s", reading.WordAtMost: "at most %s", reading.WordAbout: "about %s", reading.WordExactly: "exactly %s",
		reading.WordAsFound: "as found", reading.WordWorkedOut: "worked out", reading.WordMean: "mean %s", reading.WordSpread: "spread %s",
		reading.WordSum: "sum %s", reading.WordMeanOf: "mean of %s", reading.WordLargestOf: "largest of %s", reading.WordSmallestOf: "smallest of %s",
		reading.WordSpreadOf: "spread of %s", reading.WordSumOf: "sum of %s", reading.WordOf: "%s of %s", reading.WordHalfOf: "half of %s",
		reading.WordInEach: "%s for each %s of %s", reading.WordForEach: "%s for each %s in %s", reading.WordAnd: "%s and %s", reading.WordTo: "%s to %s", reading.WordFrom: "from", reading.WordTill: "to", reading.WordTotal: "sum",
		reading.WordFound: "found", reading.WordRecord: "record", reading.WordNoneAllowed: "none allowed", reading.WordNone: "none",
		reading.WordSome: "some", reading.WordYes: "yes", reading.WordNo: "no", reading.WordRise: "%s above the part beside it",
		reading.WordWarmer: "%s warmer, never %s", reading.WordAsInSource: "%s as printed in the source",
		reading.WordNoTolerance: "no tolerance in the source: judge and sign", reading.WordRounded: "rounded",
		reading.WordIs: "%s is %s", reading.WordIsOver: "%s is over %s", reading.WordIsUnder: "%s is under %s", reading.WordIsIn: "%s is in limits", reading.WordIsOut: "%s is out of limits",
		reading.WordByHand: "by hand", reading.WordSlackenAll: "slacken all", reading.WordBackOff: "back off %s", reading.WordTurn: "turn %s", reading.WordAgainAfter: "again after %s",
		reading.WordLastRound: "last round, until no nut moves", reading.WordAgainRunning: "again after running",
	},
	Common:     englishCommon,
	Frame:      englishFrame,
	Front:      englishFront,
	AllSteps:   englishAllSteps,
	Cautions:   englishCautions,
	Isolations: englishIsolations,
	Gather:     englishGather,
	Traveler:   englishTraveler,
	Reassembly: englishReassembly,
	Step:       englishStep,
	Guard:      englishGuard,
	Dimension:  englishDimension,
	Ladder:     englishLadder,
	Shims:      englishShims,
	Readings:   englishReadings,
	Critical:   englishCritical,
	Index:      englishIndex,
	Lift:       englishLift,
	Tightening: englishTightening,
	Alignment:  englishAlignment,
	Heat:       englishHeat,
	HeatPull:   englishHeatPull,
	HeatOn:     englishHeatOn,
	Holds:      englishHolds,
	Openings:   englishOpenings,
	Found:      englishFound,
	Register:   englishRegister,
	Counts:     englishCounts,
	Stamps:     englishStamps,
	Signatures: englishSignatures,
	Deviations: englishDeviations,
	Handover:   englishHandover,
	CloseOut:   englishCloseOut,
	Tag:        englishTag,
	Order:      englishOrder,
	Bind:       englishBind,
	Filled:     englishFilled,
	Report:     englishReport,
	Outage:     englishOutage,
}

// englishCommon are the words of Common in English.
var englishCommon = Common{
	Decimal: ".", Colon: ": ", Semicolon: "; ",
	Units: map[string]string{"pcs": "pcs", "turn": "turn", "turns": "turns", "flat": "flat", "flats": "flats", "notch": "notch", "notches": "notches",
		"arcmin": "arcmin", "arcsec": "arcsec", "drops/min": "drops/min", "rpm": "rpm"},
	Revision: "rev %s", PageOf: "%s of %s", PieceOf: "%s of %s", StepPage: "%s p.\u00a0%s", SeenFrom: "seen from %s", CountedFrom: "counted from %s", Initials: "initials",
	InitialsDate: "initials, date", Time: "time", Date: "date", NameSign: "name and signature", Role: "role", Number: "no.", Mark: "mark",
	Contents: "contents", AsFound: "as found", AsLeft: "as left", CopyFound: "as found, copy from p.\u00a0%s", CopyLeft: "as left, copy from p.\u00a0%s", NotTaken: "not taken, because",
	Source: "source: %s", NotSourced: "LIMIT NOT SOURCED", IfOut: "out: %s", IfOver: "over: %s", IfUnder: "under: %s", RecordOnly: "record",
	OldPart: "old part", Mended: "mended", EndAsNew: "other end as of a new part", InLimits: "OK", OutOfLimits: "not OK", TakenFrom: "%s %s, %s p.\u00a0%s",
	Group:        map[reading.Group]string{reading.Mean: "mean", reading.Spread: "largest less smallest", reading.Sum: "sum"},
	InstrumentNo: "number", CountOut: "pieces out", Scrap: "scrap", Into: "into", From: "from", MatchedSet: "matched set %s", OffAt: "off at",
	BackAt: "back at", CountedIn: "counted in", CountedOut: "counted out", Shelf: "shelf", WhatMeasured: "what is measured", Limit: "limit", On: "on %s",
	RoundedUp: "%s (rounded up %s)", RoundedDown: "%s (rounded down %s)",
	Pieces: Counted{"one": "1 piece", "other": "%s pieces"},
}

// englishFrame are the words of Frame in English.
var englishFrame = Frame{
	WriteInInk: "Write in ink. Wrong entry: one line through, initials, write anew.",
	Draft:      "DRAFT",
}
