package words

import "matchmark/packs/joint"

// Tightening are the words of the tightening sheet, its pictures, and the lines of a step that point to it.
type Tightening struct {
	Title, Rule string

	// Where it is done.
	TightenedAt, LoosenedAt, OnSheet, OnTwo, SameBolts, TicksAt, LooseOnSheet, LooseListed Sentence

	// The picture.
	OrderNumber, ClockTop, Top, PlacesListed                         string
	Scale, SeenFrom, ClockIs, Backward, PlaceList, PlacesFrom, TopIs Sentence
	FromCorner, FromTop, FromLeft, FromUpperRow                      string // how the places of a list are counted
	PlacesLie, BackwardListed                                        Sentence

	// What is known of the bolts.
	Lubricant, NewAlways, ForNow, BreaksLoose, BelowIt                                 string
	Class, Grade, Proof, NutFactor, Torque, WrenchFor, TensionerIs, PlanIs, ThenTurned Sentence
	Presses, ToldPull, Scatter, ScatterBy, Together, Share, ShareHigh, HoldsThat       Sentence
	NotHere, NotWorked, LookAt, WrenchFeels                                            string

	// The rounds.
	Stage                     map[joint.StageKind]Sentence
	Way                       map[joint.Way]string
	Head                      map[joint.StageKind]string // of a column, where it is not Stage
	After, RoundNote, AgainAt Sentence
	Moves                     Sentence

	// Boxes and ticks.
	OrderColumn, WhereColumn, ToolAndDate, ToolNo, Tool, Calibrated, FinalBy, CheckedBy string

	// How it was worked out.
	WorkedOut, Assumptions, Planning string
	Assumes                          map[joint.Assumption]string
}
