package words

// Holds are the words of the list of hold and witness points.
type Holds struct {
	Title, Rule, Hold, Witness, ReleasedBy, SeenBy, DateTime, SeenAndReleased string
	Seen                                                                      string
	Again                                                                     Sentence
}

// Openings are the words of the list of openings and the log of tools and rags.
type Openings struct {
	Title, Rule, Opening, CoveredWith, OpenedBy, ClosedBy, SeenClean, Enclosed, Tools string
	TakenTo                                                                           string
}

// Found are the words of the rows for what is found on the day.
type Found struct {
	Title, Rule, What, Limit, By, Row, GoesBack string
}

// Register are the words of the register of containers.
type Register struct {
	Title, Rule, Expected, CountedApart, OutFirst, OutRest, Missing, LeftOver string
	ScrapLater                                                                Sentence
	Sets                                                                      string // what each matched set is
}

// Counts are the words of the list by which every kind of fastener is counted.
type Counts struct {
	Title, Rule, Kind, BackOn, OverShort, AtEnd string
	OfThem, NewOn                               Sentence
}

// Stamps are the words of the list of what is struck into metal tags.
type Stamps struct {
	Title, Rule, Strike, Signs, Struck, ReadBack string
}

// Signatures are the words of the register of who signs.
type Signatures struct {
	Title, Rule, PrintedName, Signature, Mechanic, PermitHolder, FireWatch, Attendant string
	EachSigns                                                                         Sentence
}

// Deviations are the words of the sheet of deviations and of handing over.
type Deviations struct {
	Title, Rule, Line, Step, What, Agreed, Effect, Sketch string
}

// Handover are the words of the strip and the log of handing over from one crew to the next.
type Handover struct {
	Strip, Reached, HalfDone, Next, From, To, Time, Shift, PartsLie, FromTo string
}

// CloseOut are the words of the sheet by which the pack is found complete.
type CloseOut struct {
	Title, Rule, What, Printed, Counted, Complete, Pages, Tags, SpareTags, BoxesFound string
	BoxesLeft, InitialsOff, InitialsBack, Holds, Locks, Permits, Openings, Containers string
	Instruments, LeftOver, Deviations, Hours, CrewHours                               string

	// Work that waits until the machine has run.
	LaterHead, DueDate string
	TightenAgain       Sentence
}

// Order are the words of the order of work as text.
type Order struct {
	Nothing                                                                                  string
	Section, Step, After, Below, Hold, Part, Joint, Destroyed, Reading, Empty, Lock, Opening Sentence
	Hanging, Tools, Permit, Behind, Back, Judged, Later                                      Sentence
	Span, Loop, Free, Sum, Because                                                           Sentence
}
