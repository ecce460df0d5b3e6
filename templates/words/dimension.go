package words

// Dimension are the words of the block of a dimension.
type Dimension struct {
	LeaveAlone, Difference, GoneAfterThisStep                      string
	Between, FaceOf, StampedOn, GoneAfter, GoneWithin, CompareWith Sentence

	// The state in which it is read.
	TakenHot, TakenCold, OnDiameter, OnRadius string
	With, By, Pushed, Load, Plane, Number     Sentence

	// Boxes beside the readings.
	PartAt, WarmStep                                string
	Spare, Warm, WarmLess, WarmFor, WarmAt, WarmAll Sentence
	Copied                                          string // head of the boxes that are copied
	FoundOn                                         Sentence

	// Its limit.
	OnlyRecorded, SourcesDiffer, Used, OldPartInLimits, GoesBack, Renewed string
	LeftOnFound, LeftRecorded, LeftAs, WorkedLater, ChosenAt              Sentence

	// The print of one tooth on another.
	ToothToe, ToothHeel, ToothTip, ToothRoot string
}

// Ladder are the words of what is worked out by hand, line by line.
type Ladder struct {
	Target, LowEnd, HighEnd, StampedNumber string
	ByHand, TargetLess, TargetMore         Sentence
	FoundLess, FoundMore, RoundedTo        Sentence
}

// Shims are the words of packs of shims, and whatever is turned to set a dimension.
type Shims struct {
	WorkedOut, Pack, Leaves, OutsideTable, OldPackStays, SumOfLeaves, Material string
	LeavesInHand, OneOfSet, Leaf                                               Sentence

	// The adjuster.
	Flats, Turns, ToGo, MoreShims                              string
	OneFlat, OneTurn, OneThread, ShimsMove, ShimsLess, BackOff Sentence
}

// Readings are the words of the sheet of the dimensions with many boxes.
type Readings struct {
	Title, OutAt, Found, Left, ClockAtStart, CalibratedUntil string
	BoxesOn, BoxesOnBack                                     Sentence
}

// Critical are the words of the sheet of the dimensions that decide.
type Critical struct {
	Title, Rule, EasilyMissedTitle, Smallest, Largest string
}

// Index are the words of the list of all dimensions.
type Index struct {
	Title, Rule, Source, FoundAt, LeftAt, NotSourced string
}
