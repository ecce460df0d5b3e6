package words

// Front are the words of the front sheet.
type Front struct {
	Title, Scope, Issued, PlannedBy, Serial, Location, Maker, MachineType, InThisPack, CheckBar string
	// How the pack goes on the paper: on one side of it, or on both.
	SingleSided, BothSides                                                string
	ChangedToo, Gone, PackSign, HowToRead, MarkStays, Planning, Released  string
	SheetLine, TagsLine, SpareTags, PageNo, PlaceBehindMark, ChangedSince Sentence
	Marks                                                                 []Mark

	// The options that this machine has.
	ThisMachine, Fitted, NotFitted, OnlyThis string
	NotHere                                  Sentence // the marks of what this machine has not
	BuildSaid, BuildBySerial                 Sentence

	// The problems that check found.
	ErrorWord, WarningWord    string
	AtLine, SeeAlso           Sentence
	SeeLine, Written          Sentence // where the paper tells what stands behind a code
	PrintedInSpite, FromCheck Counted
}

// Cautions are the words of the sheet of permits and hazard notes, and of the notes themselves.
type Cautions struct {
	Title, SiteRules, CautionsTitle, SparedTitle, SignalSource, Permit                 string
	PermitNumber, PermitUntil, PermitGiven, PermitBack, FireWatch, FlameOut, WatchedBy string
	Signal, SignalMeans                                                                map[string]string
	InFull, SparedLine, BeforeSteps, WatchUntil                                        Sentence
}

// Isolations are the words of the list of the points where the machine is cut off.
type Isolations struct {
	Title, Rule, Point, Proved, LockNumber, LockedBy, UnlockedBy                 string
	TakenOver, TakenOverMore, HandsOver, TakesOver, Renewed                      string
	LockedAt, LockedAgainAt, UnlockedAt, UnlockedForNowAt, NumberAgain, ProvedBy Sentence
}

// Gather are the words of the list of what is fetched before the work.
type Gather struct {
	Title, Rule, Instruments, Tools, Spares, Consumables, HowMuch, CalDue, Issued, Used string
	Returned, AlwaysRenewed                                                             string
	AnyOfThem, UsedAt, Reads                                                            Sentence
}
