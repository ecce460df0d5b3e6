package words

import "matchmark/packs/reading"

// A Catalogue is all fixed words of a pack in one language.
type Catalogue struct {
	Lang       string
	Sayings    Sayings // empty in English
	Causes     Causes  // empty in English
	Limit      map[reading.Word]Sentence
	Common     Common
	Frame      Frame
	Front      Front
	AllSteps   AllSteps
	Cautions   Cautions
	Isolations Isolations
	Gather     Gather
	Traveler   Traveler
	Reassembly Reassembly
	Step       Step
	Guard      Guard
	Dimension  Dimension
	Ladder     Ladder
	Shims      Shims
	Readings   Readings
	Critical   Critical
	Index      Index
	Lift       Lift
	Tightening Tightening
	Alignment  Alignment
	Heat       Heat
	HeatPull   HeatPull
	HeatOn     HeatOn
	Holds      Holds
	Openings   Openings
	Found      Found
	Register   Register
	Counts     Counts
	Stamps     Stamps
	Signatures Signatures
	Deviations Deviations
	Handover   Handover
	CloseOut   CloseOut
	Tag        Tag
	Order      Order
	Bind       Bind
	Filled     Filled
	Report     Report
	Outage     Outage
}

// Common are the words of what several sheets share.
type Common struct {
	// Decimal is the decimal sign of the language: a point or a comma.
	Decimal string
	// Colon and Semicolon are what stands between a name and what is said of it, and between
	// two such: French has a no-break space before both.
	Colon, Semicolon string

	Initials, InitialsDate, Time, Date, NameSign, Role, Number, Mark, Contents, AsFound                    string
	AsLeft, NotTaken, NotSourced, RecordOnly, OldPart, Mended, EndAsNew, InLimits, OutOfLimits             string
	InstrumentNo, CountOut, Scrap, Into, From, OffAt, BackAt, CountedIn, CountedOut, Shelf                 string
	WhatMeasured, Limit                                                                                    string
	Revision, PageOf, PieceOf, StepPage, SeenFrom, CountedFrom, CopyFound, CopyLeft, Source, IfOut, IfOver Sentence
	IfUnder, TakenFrom, MatchedSet, On, RoundedUp, RoundedDown                                             Sentence
	Pieces                                                                                                 Counted
	Units                                                                                                  map[string]string // of what is counted: pieces, turns, flats, notches
	Group                                                                                                  map[reading.Group]string
}

// Frame are the words of the head and the foot of every page, and of the stamp of a draft.
type Frame struct {
	WriteInInk, Draft string
}
