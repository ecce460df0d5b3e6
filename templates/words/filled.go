package words

// Filled are the words of a pack that is printed with the readings that came back.
type Filled struct {
	Title, Rule, Out, OutNone, Values, ToDo, NoAction, Tags, NoTag string
	Mend, SetLater                                                 string
	SetAt, Typed, FoundOut, Position, Missing, MissingLeft         Sentence

	// Headings of lists of marks.
	InLimits, OldGoesBack, OnlyRecorded, Open, NotTakenHead, MissingHead, NothingMissing string
	MovesHead, LostHead, RefusedHead, DayHead                                            string

	// Moves at the feet.
	Foot, UpDown, Sideways, Raise, Lower, ToRight, ToLeft, Stays, AlignIn, AlignOut string
	CannotMove, DoesNotClose                                                        Sentence

	// Below a dimension.
	WorkedOut, Flats, Turns, OutsideTable, Expected     string
	Target, Between, AtLeast, AtMost, Pack, ToGo, Shims Sentence
	LastFound, LastLeft                                 Sentence
}

// Report are the words of the report of what was found and left.
type Report struct {
	Title, Rule, Found, Left, Last, Change, Wear, Verdict, NoLast, HoursMissing string
	PlotHead, PlotHours, PlotOutage                                             string
	Outcome                                                                     []string // in the order of filled.Outcome
	Hours, PlotTitle, Under, Over, Reaches                                      Sentence
}
