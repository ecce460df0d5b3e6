package def

import "matchmark/packs/source"

// The keys of what is tightened.

var jointKind = &kind[Joint]{
	name:   "joint",
	doc:    "Fasteners that are tightened together. With a class, a friction and a torque it is told what one of them presses with and how near it comes to what it may carry; with a layout the order is printed on a drawing of it.",
	letter: "J",
	keys: append([]key[Joint]{
		varying("what", "What is tightened.", "Cap bolts", func(j *Joint) *Varying { return &j.What }).must(),
		list("parts", "The fasteners.", "[cap-bolt]", func(j *Joint) *[]source.Text { return &j.Parts }),
		each(func(j *Joint) *[]source.Text { return &j.Each }),
		varying("torque", "The final torque, with its tolerance if it has one, or the pressure or the force of a tensioner; a torque in another unit may stand behind it in a bracket.", "120 N·m (89 lb-ft)", func(j *Joint) *Varying { return &j.Torque }),
		text("no-value", "How tight it becomes where no torque is told, and why none is; printed in its place.", "spanner tight, the tab washer locks it", func(j *Joint) *source.Text { return &j.NoValue }),
		varying("preload", "What one fastener is to press with, in place of the torque: a share of its proof load, a force, or a stress. The torque is worked out from it.", "75 % of proof", func(j *Joint) *Varying { return &j.Preload }),
		list("stages", "The stages on the way, in their order; a share is one of the last torque.", "[by hand, 30 N·m, 70 %, 120 N·m, last round]", func(j *Joint) *[]source.Text { return &j.Stages }).mayRepeat(),
		text("plan", "A published plan in place of stages: rounds (by hand, 20 to 30 %, 50 to 70 %, all of it, last round), thirds (by hand, 30 %, 60 %, all of it, last round), seventy (70 %, all of it).", "thirds", func(j *Joint) *source.Text { return &j.Plan }).oneOf("rounds", "thirds", "seventy"),
		text("lubricant", "What is on threads and faces.", "engine oil", func(j *Joint) *source.Text { return &j.Lubricant }),
		text("pattern", "The order round the joint in words, where no layout draws it.", "crosswise", func(j *Joint) *source.Text { return &j.Pattern }),
		text("source", "Document, table or page that the torque comes from.", "maker's sheet 6", func(j *Joint) *source.Text { return &j.Source }),
		text("thread", "The thread, where the part does not say it.", "M36", func(j *Joint) *source.Text { return &j.Thread }),
		text("class", "The property class of a metric bolt or the grade of one in inches.", "8.8", func(j *Joint) *source.Text { return &j.Class }).freeText(),
		single("proof", "The proof stress of a bolt that no class tells.", "{stress: 720 MPa, source: maker's sheet 4}", proofKind, func(j *Joint, at source.Pos) *Proof { j.Proof.At = at; return &j.Proof }),
		single("friction", "How torque turns into preload: a nut factor, or friction in the thread and under the face that is turned.", "{nut-factor: 0.16, source: data sheet of the paste}", frictionKind, func(j *Joint, at source.Pos) *Friction { j.Friction.At = at; return &j.Friction }),
		textOrMap("scatter", "How far the preload of one bolt can lie from the one worked out, to either side: lubricated (25 %), cadmium plated (30 %), dry (35 %) of a published table, or your own.", "lubricated", scatterKind,
			func(j *Joint) *source.Text { return &j.Scatter.Word }, func(j *Joint, at source.Pos) *Scatter { j.Scatter.At = at; return &j.Scatter }).
			oneOf("lubricated", "cadmium plated", "dry"),
		single("tensioner", "What pulls the bolts, where they are not tightened by a wrench.", "{area: 5570 mm2, retained: 80 %, source: sheet of the tensioner}", tensionerKind, func(j *Joint, at source.Pos) *Tensioner { j.Tensioner.At = at; return &j.Tensioner }),
		text("breaks-loose", "The least torque that each must break loose with; one below it is written down.", "45 N·m", func(j *Joint) *source.Text { return &j.BreaksLoose }),
		text("for-now", "A torque that its fasteners are held with while they are in by fit-for-now:, for a reading or for parts on trial; the step prints it in place of the last one.", "40 N·m", func(j *Joint) *source.Text { return &j.ForNow }),
		single("layout", "Where the fasteners sit, and in which order they are gone round.", "{circle: 460 mm, order: crosswise}", layoutKind, func(j *Joint, at source.Pos) *Layout { j.Layout.At = at; return &j.Layout }),
		items("says", "What the sources say of the torque where they do not agree, or where one is known to be wrong.",
			"[{source: maker's sheet 6, text: 120 N·m (98 lb-ft), used: yes, note: 120 N·m is 89 lb-ft}]", saysKind, addSaysOfJoint),
	}, applies(func(j *Joint) *Applies { return &j.Applies })...),
}

var proofKind = &kind[Proof]{
	name: "proof stress",
	doc:  "What a bolt may carry that no class or grade tells.",
	keys: []key[Proof]{
		text("stress", "The stress under proof load.", "720 MPa", func(p *Proof) *source.Text { return &p.Stress }).must(),
		text("source", "Where it comes from.", "maker's sheet 4", func(p *Proof) *source.Text { return &p.Source }),
	},
}

var frictionKind = &kind[Friction]{
	name: "friction of a joint",
	doc:  "A nut factor, or friction in the thread and under the turned face with the size of that face.",
	keys: []key[Friction]{
		one(decimalForm, "nut-factor", "The nut factor: torque is nut factor times diameter times preload.", "0.16", func(f *Friction) *source.Text { return &f.NutFactor }),
		one(decimalForm, "thread", "Friction in the thread.", "0.12", func(f *Friction) *source.Text { return &f.Thread }),
		one(decimalForm, "bearing", "Friction under the face that is turned.", "0.12", func(f *Friction) *source.Text { return &f.Bearing }),
		text("face", "The outer diameter of that face.", "24 mm", func(f *Friction) *source.Text { return &f.Face }),
		text("hole", "The hole in it.", "17 mm", func(f *Friction) *source.Text { return &f.Hole }),
		text("source", "Where they come from: a data sheet, a standard, a test.", "data sheet of the paste", func(f *Friction) *source.Text { return &f.Source }),
	},
}

var scatterKind = &kind[Scatter]{
	name: "scatter of a joint",
	doc:  "How far the preload of one bolt can lie from the one worked out.",
	keys: []key[Scatter]{
		text("percent", "So much to either side.", "20 %", func(s *Scatter) *source.Text { return &s.Percent }).must(),
		text("source", "Where it comes from.", "trial of the station, 2025", func(s *Scatter) *source.Text { return &s.Source }),
	},
}

var tensionerKind = &kind[Tensioner]{
	name: "tensioner",
	doc:  "What pulls a bolt by a fluid while its nut is run down.",
	keys: []key[Tensioner]{
		text("area", "What the pressure acts on.", "5570 mm2", func(t *Tensioner) *source.Text { return &t.Area }),
		text("retained", "What stays of the pull when the nut takes it over.", "80 %", func(t *Tensioner) *source.Text { return &t.Retained }),
		text("source", "The sheet of the tensioner.", "sheet of the tensioner", func(t *Tensioner) *source.Text { return &t.Source }),
	},
}

var layoutKind = &kind[Layout]{
	name: "layout of a joint",
	doc:  "Where the fasteners sit, one shape of five, seen from the side that they are tightened from, and in which order they are gone round.",
	keys: []key[Layout]{
		text("circle", "Fasteners evenly on a circle: its diameter.", "460 mm", func(l *Layout) *source.Text { return &l.Circle }),
		text("first", "Of a circle: where the first one sits, clockwise from 12 o'clock; at 12 o'clock if not said.", "15°", func(l *Layout) *source.Text { return &l.First }).anySign(),
		flag("against-the-clock", "Of a circle: whether its places are counted against the clock.", "yes", func(l *Layout) *source.Text { return &l.Against }),
		text("rectangle", "So many on the long and on the short side, with the corners; counted clockwise from the top left corner.", "5 by 3", func(l *Layout) *source.Text { return &l.Rectangle }),
		number("oval", "So many on two half circles with straight lines between them; counted clockwise from the middle of the top.", "22", func(l *Layout) *source.Text { return &l.Oval }),
		text("split-line", "So many in a row on each side of a split casing, or in a single row; counted along the upper row and back along the lower.", "14 each side", func(l *Layout) *source.Text { return &l.SplitLine }),
		lists("places", "The place of each, x to the right and y up.", "[[0 mm, 0 mm], [90 mm, 0 mm], [90 mm, 60 mm]]", func(l *Layout) *[][]source.Text { return &l.Places }),
		text("length", "Over the middles of the outermost, along.", "1300 mm", func(l *Layout) *source.Text { return &l.Length }),
		text("width", "Over the middles of the outermost, across.", "600 mm", func(l *Layout) *source.Text { return &l.Width }),
		list("order", "How they are gone round: crosswise, outward from the middle, in turn; or the maker's own order by the numbers of the places.", "crosswise", func(l *Layout) *[]source.Text { return &l.Order }).must(),
		text("seen-from", "From where the drawing is seen.", "above", func(l *Layout) *source.Text { return &l.SeenFrom }),
		text("clock", "What is at the top of the drawing, at 12 o'clock.", "the punch mark on the flange", func(l *Layout) *source.Text { return &l.Clock }),
	},
}
