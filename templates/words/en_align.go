package words

import "matchmark/packs/align"

// englishAlignment are the words of Alignment in English.
var englishAlignment = Alignment{
	Title:  "Alignment",
	Rule:   "Readings with their signs, both shafts turned together the way they run; each set read twice, written when both agree. Planning figures; maker's manual and site rules decide.",
	MadeAt: "at %s", OnSheet: "readings, moves and limits: alignment sheet p.\u00a0%s",

	Signs:    "Signs: a dial reads + when its stem is pushed in. A move of + raises the foot or goes right, − lowers it or goes left.",
	FaceBack: "The face dial runs on the back of the face; its sign is turned round in the lines below.",
	TwoFaces: "Two face dials, half a turn apart, both zeroed at the start and read together.",
	NoLimits: "No limits are told: ask for them before the work begins.", NotWorked: "This alignment cannot be worked out; see the problems on the front sheet.",
	InLine: "The cold shafts are to stand in line.", Distances: "Distances are measured from the plane of the dial.",
	Stays: "The %s stays, the %s is moved.", RimFace: "Rim and face: bracket on the hub of the %s, both dials on the hub of the %s; the face dial runs on %s.",
	Reverse: "Reverse dials: a bracket on each hub, a dial on the rim of the other; %s from dial to dial.", Sag: "The bracket sags %s.", SagBoth: "The brackets sag %s (dial on the %s) and %s (dial on the %s).",
	StandsUp: "The cold shaft is to stand at %s (+ high, − low), %s.", StandsRight: "Sideways at %s (+ right, − left).",
	LimitsAre: "At %s rpm (limits up to %s rpm): offset at most %s, angle at most %s on %s, %s.",

	Drawing: "Lengths to scale 1 : %s; heights are not.", SeenFrom: "seen from the %s", Up: "+ up", Right: "+ right", DialPlane: "plane of the dial",

	SoftTitle: "Soft foot, after the readings as found, before set 1", SoftFoot: "foot", SoftFound: "springs up", SoftLeft: "after shimming",
	SoftRule: "All feet tight, a dial on one, its bolt alone slackened: it springs up at most %s (%s). Then the next.",
	FootSide: map[align.Clock]string{align.Left: "left", align.Right: "right"},

	FoundTitle: "Readings as found", SetTitle: "Set %s", MeterNo: "dials no.", Zero: "Zero at the top; after one turn it must read 0 again.",
	CopiedFrom: "copied from %s", LastInto: "The set that is in limits is copied to %s as left.",
	Closes: "Look: right and left add up to top and bottom, within %s. If not, read again.",
	Dial: map[align.Dial]string{
		align.Rim: "rim", align.Face: "face", align.FaceOther: "second face dial", align.OnStationary: "dial on the stationary hub", align.OnMovable: "dial on the movable hub",
	},
	Clock: map[align.Clock]string{align.Top: "0° top", align.Right: "90° right", align.Bottom: "180° bottom", align.Left: "270° left"},

	UpTitle: "Up and down", RightTitle: "Sideways", ExampleTitle: "Worked example, with readings made up to show the signs", TwiceSag: "(twice the sag)", Target: "(target)", In: "in", Out: "out",
	RaiseIf: "+ raise, − lower", RightIf: "+ to the right, − to the left", ShimsIn: "shims put in or taken out",
	Line: "%s = %s",
	Rung: map[align.RungCode]Sentence{
		align.TrueBottom: "%s, bottom with the sag put right", align.OffsetUp: "%s, how high the shaft stands there", align.OffsetRight: "%s, how far right it stands there",
		align.FaceUp: "%s, bottom less top", align.FaceRight: "%s, right less left", align.MoveUp: "%s feet", align.MoveRight: "%s feet",
		align.AngleUp: "angle on %s", align.AngleRight: "angle on %s", align.OffsetAtUp: "offset at %s", align.OffsetAtRight: "offset at %s",
	},
	OffsetAtMost: "offset at most %s", AngleAtMost: "angle at most %s on %s", BothWays: "up and sideways",
}
