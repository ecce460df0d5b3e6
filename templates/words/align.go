package words

import "matchmark/packs/align"

// Alignment are the words of the alignment sheet, its drawing, and the lines of a step that point to it.
type Alignment struct {
	Title, Rule     string
	MadeAt, OnSheet Sentence

	// What is set up.
	Signs, FaceBack, TwoFaces, NoLimits, NotWorked, InLine, Distances string
	Stays, RimFace, Reverse, Sag, SagBoth, StandsUp, StandsRight      Sentence
	LimitsAre                                                         Sentence

	// The drawing.
	Drawing, SeenFrom    Sentence
	Up, Right, DialPlane string

	// Soft foot.
	SoftTitle, SoftFoot, SoftFound, SoftLeft string
	SoftRule                                 Sentence
	FootSide                                 map[align.Clock]string

	// Readings.
	FoundTitle, MeterNo, Zero              string
	SetTitle, CopiedFrom, LastInto, Closes Sentence
	Dial                                   map[align.Dial]string
	Clock                                  map[align.Clock]string

	// The ladder.
	UpTitle, RightTitle, ExampleTitle, TwiceSag, Target, In, Out string
	RaiseIf, RightIf, ShimsIn                                    string
	Line                                                         Sentence
	Rung                                                         map[align.RungCode]Sentence
	OffsetAtMost, AngleAtMost                                    Sentence
	BothWays                                                     string
}
