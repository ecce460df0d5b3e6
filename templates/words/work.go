package words

// Traveler are the words of the sheets for taking apart.
type Traveler struct {
	Title string
	GoOn  Sentence
}

// Reassembly are the words of the sheets for putting back.
type Reassembly struct {
	Title string
	GoOn  Sentence
}

// Step are the words of a step on either sheet of work.
type Step struct {
	Continued, Hours, Photo, NotTaken, AnyTimeAtAll, Bench, EmptyNow, EmptyHere, Place, FitNewOne                             string
	HoursPlanned, HoursEach, EachOfThese, SectionHours, CheckedBy, Undoes, After, AnyTimeBetween, AnyTimeBefore, AnyTimeAfter Sentence
	EasilyMissed                                                                                                              Sentence
	FitNew, FitNewScrap, OldPiece, PutBack, SetAgain, TightenAll, LookUp, Close, GoneAfterThis                                Sentence

	// What guards the step.
	ToolsIn, ToolsOut                                                   string
	PermitLine, LockLine, UnlockLine, OpenLine, CloseLine, CountAllLine Sentence
	CleanLine, ShutLine                                                 Sentence

	// What is loosened and tightened, what is on for now.
	Loosen, Tighten, Stages, IsTight, IsLoose, IsIn, IsOut, ForNow, TakeOut, AtBench, RenewAsSet, RenewAdded string
	ToTorque, NoTorque, TightForNow, Oiled, InOrder, LeftOut, People, RenewIf, RenewLine, Floor              Sentence

	// Which way a thread is turned, tags of big parts, old pieces that are kept a while.
	LeftHand, RightHand, Clockwise, Counterclockwise, FacingIt, BigTag string
	Turned, TurnedOff, TurnedOn, OldThenScrap                          Sentence

	// A matched set that is judged as a whole.
	WhichIsOut                      string
	AllGoBack, AllRenewed, AsJudged Sentence

	// Whether a step is done, and done again; what waits.
	If, Again, DoThis, LeaveOut, BoxesLast                                 string
	OnlyIfDone, Until, TryNo, FurtherTry, EarlierTries, StillNoGood, Waits Sentence

	// Marks, stacks and ways round that are written down.
	MarkUsed, WhereMarked, MatchMarks                                                          string
	MatchMark, BothParts, MarksMeet, WayRound, WayFound, StackOrder, StackExpected, StackPiece Sentence
	StackBack                                                                                  Sentence
}
