package def

import "matchmark/packs/source"

// The keys of couplings that are aligned.

var alignmentKind = &kind[Alignment]{
	name:   "alignment",
	doc:    "One coupling that is aligned with dials: from their readings to what each foot is raised and moved by. Distances run from the plane of the dial toward the feet of the movable machine.",
	letter: "A",
	keys: append([]key[Alignment]{
		text("what", "What is aligned.", "Motor to pump", func(a *Alignment) *source.Text { return &a.What }).must(),
		text("movable", "The machine whose feet are shimmed and moved.", "motor", func(a *Alignment) *source.Text { return &a.Movable }).must(),
		text("stationary", "The machine that stays.", "pump", func(a *Alignment) *source.Text { return &a.Stationary }).must(),
		text("method", "How the dials are set up.", "rim and face", func(a *Alignment) *source.Text { return &a.Method }).oneOf("rim and face", "reverse dials").must(),
		text("reads", "The smallest step of the dials; its unit is that of all readings and moves.", "0.01 mm", func(a *Alignment) *source.Text { return &a.Reads }).must(),
		text("dials-on", "Of rim and face: on which hub both dials run, with the bracket on the other.", "stationary", func(a *Alignment) *source.Text { return &a.DialsOn }).oneOf("stationary", "movable"),
		text("face-diameter", "Of rim and face: the diameter that the face dial runs on.", "200 mm", func(a *Alignment) *source.Text { return &a.FaceDiameter }),
		flag("face-back", "Of rim and face: whether the face dial runs on the side of the hub that looks away from the other hub.", "yes", func(a *Alignment) *source.Text { return &a.FaceBack }),
		flag("two-face-dials", "Of rim and face: whether a second face dial stands opposite, which takes the float of the shafts out.", "yes", func(a *Alignment) *source.Text { return &a.TwoFace }),
		text("span", "Of reverse dials: from the dial on the stationary hub to that on the movable one.", "320 mm", func(a *Alignment) *source.Text { return &a.Span }),
		text("sag", "How much the bracket of the rim dial bends, tried on a stiff pipe; of reverse dials that of the dial on the stationary hub.", "0.03 mm", func(a *Alignment) *source.Text { return &a.Sag }).noneOrMore(),
		text("sag-other", "Of reverse dials: how much the bracket of the dial on the movable hub bends.", "0.03 mm", func(a *Alignment) *source.Text { return &a.SagOther }).noneOrMore(),
		items("feet", "The planes of feet of the movable machine, the nearest first.", "[{name: front, at: 420 mm}, {name: rear, at: 1250 mm}]", feetKind, addFeet).must(),
		single("target", "Where the cold shaft is meant to stand at each plane of feet, where that is not in line.", "{up: [-0.12 mm, -0.12 mm], source: maker's sheet 2}", alignTargetKind, func(a *Alignment, at source.Pos) *AlignTarget { a.Target.At = at; return &a.Target }),
		single("growth", "What the shafts rise from cold to running; the target is worked out from it.", "{stationary: [{at: -400 mm, rise: 0.20 mm}], movable: [0.08 mm, 0.08 mm], source: maker's sheet 2}", growthKind, func(a *Alignment, at source.Pos) *Growth { a.Growth.At = at; return &a.Growth }),
		single("limits", "How near is near enough, by the speed of the coupling.", "{speed: 740, at: 0 mm, over: 200 mm, rows: [{up-to: 1000, offset: 0.10 mm, angle: 0.05 mm}], source: maker's sheet 2}", alignLimitsKind, func(a *Alignment, at source.Pos) *AlignLimits { a.Limits.At = at; return &a.Limits }),
		single("soft-foot", "How far a foot may spring up when its bolt alone is slackened.", "{limit: 0.05 mm, source: site rule 8}", softFootKind, func(a *Alignment, at source.Pos) *SoftFoot { a.SoftFoot.At = at; return &a.SoftFoot }),
		single("read", "The dimensions that the dials are written down in, as found and as left.", "{rim: D1, face: D2}", alignReadKind, func(a *Alignment, at source.Pos) *AlignRead { a.Read.At = at; return &a.Read }),
		number("tries", "For how many sets of readings there are boxes; 3 if not said.", "4", func(a *Alignment) *source.Text { return &a.Tries }),
		text("note", "A remark printed on its sheet.", "Slacken the pipe supports first.", func(a *Alignment) *source.Text { return &a.Note }),
	}, applies(func(a *Alignment) *Applies { return &a.Applies })...),
}

var feetKind = &kind[Feet]{
	name: "plane of feet",
	doc:  "The feet of the movable machine that stand at one distance.",
	keys: []key[Feet]{
		text("name", "Which they are.", "front", func(f *Feet) *source.Text { return &f.Name }).must(),
		text("at", "How far they are from the plane of the dial.", "420 mm", func(f *Feet) *source.Text { return &f.Is }).anySign().must(),
	},
}

// addFeet adds an empty plane of feet to an alignment.
func addFeet(a *Alignment, at source.Pos) *Feet {
	f := &Feet{At: at}
	a.Feet = append(a.Feet, f)
	return f
}

var alignTargetKind = &kind[AlignTarget]{
	name: "target of an alignment",
	doc:  "Where the cold shaft is meant to stand, one for each plane of feet: up and to the right are positive.",
	keys: []key[AlignTarget]{
		list("up", "How high.", "[-0.12 mm, -0.12 mm]", func(t *AlignTarget) *[]source.Text { return &t.Up }).anySign(),
		list("right", "How far to the right, as one looks from the movable machine to the stationary one.", "[0.05 mm, 0.05 mm]", func(t *AlignTarget) *[]source.Text { return &t.Right }).anySign(),
		text("source", "Where it comes from.", "maker's sheet 2", func(t *AlignTarget) *source.Text { return &t.Source }),
	},
}

var growthKind = &kind[Growth]{
	name: "growth of an alignment",
	doc:  "What the shafts rise from cold to running.",
	keys: []key[Growth]{
		items("stationary", "The supports of the stationary machine: one if it rises evenly, else both.", "[{at: -400 mm, rise: 0.20 mm}]", supportKind, addSupport).must(),
		list("movable", "What the movable shaft rises at each plane of feet.", "[0.08 mm, 0.08 mm]", func(g *Growth) *[]source.Text { return &g.Movable }).anySign().must(),
		text("source", "Where it comes from.", "maker's sheet 2", func(g *Growth) *source.Text { return &g.Source }),
	},
}

var supportKind = &kind[Support]{
	name: "support of the stationary machine",
	doc:  "One support of the stationary machine, with what its shaft rises there.",
	keys: []key[Support]{
		text("at", "Where it is from the plane of the dial; negative, for it lies away from the movable machine.", "-400 mm", func(s *Support) *source.Text { return &s.Is }).anySign().must(),
		text("rise", "What the shaft rises there.", "0.20 mm", func(s *Support) *source.Text { return &s.Rise }).anySign().must(),
	},
}

// addSupport adds an empty support to a growth.
func addSupport(g *Growth, at source.Pos) *Support {
	s := &Support{At: at}
	g.Stationary = append(g.Stationary, s)
	return s
}

var alignLimitsKind = &kind[AlignLimits]{
	name: "limits of an alignment",
	doc:  "How near the shafts must be, as a source tells it for each speed.",
	keys: []key[AlignLimits]{
		number("speed", "The speed of the coupling, in turns a minute.", "740", func(l *AlignLimits) *source.Text { return &l.Speed }).must(),
		text("at", "Where the source judges the offset, from the plane of the dial.", "0 mm", func(l *AlignLimits) *source.Text { return &l.Where }).anySign().must(),
		text("over", "The length that the source tells angles on.", "200 mm", func(l *AlignLimits) *source.Text { return &l.Over }).must(),
		items("rows", "What it allows, the slowest first.", "[{up-to: 1000, offset: 0.10 mm, angle: 0.05 mm}]", alignRowKind, addAlignRow).must(),
		text("source", "Document, table or page.", "maker's sheet 2", func(l *AlignLimits) *source.Text { return &l.Source }),
	},
}

var alignRowKind = &kind[AlignRow]{
	name: "limit of an alignment",
	doc:  "What is allowed up to a speed.",
	keys: []key[AlignRow]{
		number("up-to", "Up to how many turns a minute it holds.", "1000", func(r *AlignRow) *source.Text { return &r.UpTo }).must(),
		text("offset", "How far beside each other the shafts may lie.", "0.10 mm", func(r *AlignRow) *source.Text { return &r.Offset }).must(),
		text("angle", "How far they may come apart on the length that angles are told on.", "0.05 mm", func(r *AlignRow) *source.Text { return &r.Angle }).must(),
	},
}

// addAlignRow adds an empty row to limits.
func addAlignRow(l *AlignLimits, at source.Pos) *AlignRow {
	r := &AlignRow{At: at}
	l.Rows = append(l.Rows, r)
	return r
}

var softFootKind = &kind[SoftFoot]{
	name: "soft foot",
	doc:  "How far a foot may spring up when its bolt alone is slackened.",
	keys: []key[SoftFoot]{
		text("limit", "The most that is let be.", "0.05 mm", func(s *SoftFoot) *source.Text { return &s.Limit }).must(),
		text("source", "Where it comes from.", "site rule 8", func(s *SoftFoot) *source.Text { return &s.Source }),
	},
}

var alignReadKind = &kind[AlignRead]{
	name: "readings of an alignment",
	doc:  "The dimensions that the dials are written down in: each is read at four places, 0°, 90°, 180°, 270°.",
	keys: []key[AlignRead]{
		text("rim", "Of rim and face: that of the rim.", "D1", func(r *AlignRead) *source.Text { return &r.Rim }).marks("D"),
		text("face", "Of rim and face: that of the face.", "D2", func(r *AlignRead) *source.Text { return &r.Face }).marks("D"),
		text("stationary", "Of reverse dials: that of the dial on the stationary hub.", "D3", func(r *AlignRead) *source.Text { return &r.Stationary }).marks("D"),
		text("movable", "Of reverse dials: that of the dial on the movable hub.", "D4", func(r *AlignRead) *source.Text { return &r.Movable }).marks("D"),
	},
}
