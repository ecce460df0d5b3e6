package words

// Lift are the words of the lift sheet, its pictures, and the lines of a step that point to it.
type Lift struct {
	Title string

	// The lines of a step.
	Level, NoSheet                                                        string
	OnHook, StepLine, StepLineByHand, StepLineRefused, Tilted, TiltedSide Sentence
	OnSheet, TiltedMost, TiltedWithin, StepLineStopped                    Sentence
	StepLineDrawnHot, StepLinePutOnHot                                    Sentence

	// What it rests on.
	NotWritten, TakesHold, Sling                                                   string
	MustNot                                                                        Sentence
	DoNotLift, Mass, Centre, HangsOn, LayDownAt, Props, Crew                       string
	MadeAt, NotComputed, MassTold, MassTolerance, CentreBand, MeasuredFrom, ByHand Sentence
	RatedBy, CraneLine, FloorLine                                                  Sentence
	MassFrom                                                                       map[string]string
	Rig                                                                            map[string]Sentence

	// The verdict.
	Weakest, CraneUsed, LevelHead, Headroom, NotLookedAt                   string
	HeadroomSpare, HeadroomOver, HookLoad, SignedPlan, PressLine, TeamLine Sentence

	// The drawing and the legs.
	Hook, CentreMark, BandMark, Leg, Length, Angle, Pulls, MostPulls, ChosenLength, InHand, Carries string
	MostCarries                                                                                     string
	SideView, PlanView, Design, Shorten, HangsSlack, EvenSplit, Bail                                Sentence

	// The turn between lying and upright.
	TurnedBy, TurnPull, TurnApart, TurnNote, StopPlumb, StopHalfWay     string
	TurnCarries, TurnHigher, TurnReads, TurnedLevel, Upended, HookReads Sentence
	StopTrialTurned, StopTakesHold, StopOneHook                         Sentence

	// The gear.
	Rated, GearHead, GearNumber, GearInspected, LookBefore string
	GearUse, GearRated                                     Sentence

	NoTag, ColdAndHot                                                           string
	HoldsFrom, ComesTo, TackleLine, RatedFor, TackleRig, RatedRound, ChainSpent Sentence

	// The day.
	Day, Stops, UsualStops, Wind, Yes, No, SameGear, InCharge, Driver, Rigger, CautionsHere string
	HowWorked, Planning, StopSlack, StopPath, StopSeat, StopUnhook, StopLiftOff             string
	StopDrawnHot, StopPutOnHot, StopHotClear                                                string
	InitialsAt, TheDay, LoadCell, TrialLevel, GapAt, NameSign, NamesSign, StopTrial         Sentence
	Symbols                                                                                 []Mark
	HandStops                                                                               []string
}
