package words

// Acts of the heat sheet stand in their order. Of these in braces the sheet makes
// acts of its own, out of what the definition says.
const (
	ActPuller    = "{puller}"
	ActShield    = "{shield}"
	ActNeighbour = "{neighbour}"
	ActHeat      = "{heat}"
	ActMoves     = "{moves}"
)

// Heat are the words of the heat sheet, its pictures, and the lines of a step that point to it.
type Heat struct {
	Title, Rule, NoFlame, OrderTitle                       string
	DrawnOffAt, PutOnAt, PullLine, OnLine, PaceLine, ByWay Sentence

	// The joint.
	PullerDoes, PullerShort, SmoothNone, SmoothEight, SmoothFour                        string
	FitLine, SizesLine, CountedGreatest, CountedMeasured, Pressure, ColdPull, HoldsLine Sentence
	FrictionBy                                                                          Sentence
	HoldsNot, PullerRated, NothingNear, HoldsAtWork, LeastAtWork, AtSpeed               Sentence
	StressCold, StressAtWork, ShaftStress, ShaftSheared, OfYield                        Sentence
	AtRest, YieldNotGiven                                                               string

	// What is not known, on a draft.
	NotWorkedOut, FitNotKnown, NotKnown, HeatNotKnown, NotHeated string
	LimitNotKnown, HeatTo, HeatToBy                              Sentence

	// Its picture.
	PictureFaces, Shield, HeatArrow, ChartTime, ChartWindow                      string
	PictureScale, PartAtMost, ChartOpening, ChartNeeded, ChartGrips, ChartLevels Sentence

	// How it was worked out.
	WorkedOut, Assumptions, InMetric string
	Off, On                          string // said of a heat that has both
}

// HeatPull are the words of the part of the heat sheet for drawing a hub off.
type HeatPull struct {
	Slow, NoPace, WallNoUse, LookAt                                                   string
	Title, NeverSkin, NeverPart, TooFast, FreeLine, BandLine, StaysLine, StaysEndless Sentence
	WorkableLine, KeepOnEndless                                                       Sentence
	KeepOnLine, LevelsLine, WallLine, WallUse, NearLine, NearStuck, IntoLine, Colours Sentence

	// The acts in their order.
	DressTitle, DressTorch, DressOther, StuckTitle, StuckBore                               string
	OrderTorch, OrderInduction                                                              []Sentence
	OrderNoPuller, OrderPullerNotSaid, OrderMoves, OrderLoose, OrderCooling                 string
	LongestNotSaid                                                                          string
	OrderPuller, OrderShield, OrderShieldBare, StuckStop, StuckWays, StuckPuller, ClockUnit Sentence

	// Boxes and log.
	PermitNo, WatchStart, WatchEnd, WatchName, Torches, HubStart, ShaftStart, AirStart string
	HeatOnAt, FreeAt, HeatOffAt, SkinAtFree, CameOff, DidNotMove, LogTitle, LogTime    string
	HandTorch, HandPull, HandWatch, HandCrane, HandSignal                              string
	LogSkin, LogShaft, LogBy                                                           string
	LogElsewhere, MustPass, Hands                                                      Sentence
	SlingHot                                                                           string
}

// HeatOn are the words of the part of the heat sheet for putting a part on.
type HeatOn struct {
	NotKnown                                                                                   string
	NoSoak, ChillCold, LadderTitle, LadderUpTo, LadderSetTo, LadderTooHot                      string
	Interference, Greatest                                                                     string
	Title, HeatTo, HeatToBy, MakersFigure, RoomLine, SoakLine, CarryLine, GripsLine, ChillLine Sentence
	ColdRoom, ColdCarry, ColdGrips, NeverAbove, OrderFlame, Watch                              Sentence
	ChillHot, AirLine, MostNitrogen, MostIce, Largest, Smallest                                Sentence

	// Boxes.
	SetTo, InAt, OutAt, PartTemp, ShaftTemp, HomeAt, HomeWhenCold, Hottest string

	// The acts in their order.
	Order, OrderOven, OrderInduction, OrderTorch, OrderBearing, OrderChill []string
}
