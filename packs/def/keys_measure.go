package def

import "matchmark/packs/source"

// The keys of what is measured and what is tightened.

var dimensionKind = &kind[Dimension]{
	name:   "dimension",
	doc:    "One thing to measure, with what its reading must be.",
	letter: "D",
	keys: append([]key[Dimension]{
		varying("what", "What is measured.", "Lock nut stand-off", func(d *Dimension) *Varying { return &d.What }).must(),
		each(func(d *Dimension) *[]source.Text { return &d.Each }),
		text("kind", "What sort of size it is; it chooses the picture.", "stand-off", func(d *Dimension) *source.Text { return &d.Kind }).
			oneOf("stand-off", "gap", "clearance", "clearance-below", "diameter", "bore", "depth", "length", "thickness", "float", "runout",
				"backlash", "angle", "force", "temperature", "count", "threads", "condition", "contact"),
		face("from", "The part and the face from which it is measured; the face may differ by place: {hub: {A: jaw 1, B: jaw 2}}.", "{lock-nut: outer face}", func(d *Dimension) *Face { return &d.From }),
		face("to", "The part and the face to which it is measured.", "{shaft: end face}", func(d *Dimension) *Face { return &d.To }),
		face("of", "The part, and where on it, when it is a size of one part alone.", "{shaft: bearing seat}", func(d *Dimension) *Face { return &d.Of }),
		positions("at", "The places at which it is read: clock (clock of 8), a list, one or two lists with names, or a log: every, rows and what is read each time.",
			"{station: [A, B], plane: [0-180°, 90-270°]}", func(d *Dimension) *Positions { return &d.At }),
		varying("with", "The state in which it is measured.", "shaft pushed toward the motor", func(d *Dimension) *Varying { return &d.With }),
		varying("viewed-from", "Where one stands; clock positions go by it.", "the motor", func(d *Dimension) *Varying { return &d.ViewedFrom }),
		varying("pushed", "Which way the moving part is pushed or pulled meanwhile.", "toward the motor", func(d *Dimension) *Varying { return &d.Pushed }),
		varying("load", "The force or torque that acts meanwhile.", "500 N each way", func(d *Dimension) *Varying { return &d.Load }),
		varying("plane", "The plane or line in which it is read.", "square to the shaft", func(d *Dimension) *Varying { return &d.Plane }),
		text("state", "Whether the part is cold or hot; its temperature is written beside the reading.", "cold", func(d *Dimension) *source.Text { return &d.State }).
			oneOf("cold", "hot"),
		text("on-the", "Whether the number is on the diameter or on the radius.", "diameter", func(d *Dimension) *source.Text { return &d.OnThe }).
			oneOf("diameter", "radius"),
		text("warm", "The material, when the part may be read warm: the correction to 20 °C is printed with its boxes.", "steel", func(d *Dimension) *source.Text { return &d.Warm }).
			oneOf("steel", "stainless steel", "cast iron", "bronze", "aluminium"),
		text("by", "The instrument; of several of one kind that are used at once which one, by its number: dial/2.", "depth-gauge", func(d *Dimension) *source.Text { return &d.By }),
		varying("found", "How the as-found box is written, where it is not as the limit; a limit without left: is judged there and set no more; not taken, where it is only set.", "record to 0.01 mm", func(d *Dimension) *Varying { return &d.Found }),
		varying("left", "What must stand at closing; a limit, or a size by letter and grade (Ø130 m6).", "0.05 to 0.12 mm", func(d *Dimension) *Varying { return &d.Left }),
		varying("reuse", "How far an old part may go back. Of a limit with one end, the other end of left: holds for old parts too, and is printed with it.", "at most 0.20 mm", func(d *Dimension) *Varying { return &d.Reuse }),
		varying("repair", "How far it may be mended. Of a limit with one end, the other end of left: holds here too.", "at most 0.35 mm", func(d *Dimension) *Varying { return &d.Repair }),
		varying("over", "What to do when it is above the limit.", "renew the ring", func(d *Dimension) *Varying { return &d.Over }),
		varying("under", "What to do when it is below the limit.", "do not fit", func(d *Dimension) *Varying { return &d.Under }),
		varying("out", "What to do when it is out of the limits on either side.", "tell the engineer", func(d *Dimension) *Varying { return &d.Out }),
		varying("found-out", "What to do when it is out as found, in place of what over:, under: and out: say, which are then for closing alone.", "tell the engineer at W1", func(d *Dimension) *Varying { return &d.FoundOut }),
		varying("source", "Document, table or page that the limit comes from.", "maker's sheet 4", func(d *Dimension) *Varying { return &d.Source }),
		items("says", "What the sources say where they do not agree, or where one is known to be wrong.",
			"[{source: maker's sheet 4, text: 0.5 to 1.2 mm}, {source: maker's letter 11, text: 0.05 to 0.12 mm, used: W1}]", saysKind, addSays),
		text("adjust", "The part that sets it. What one turn of its thread moves is printed where from:, to: or of: is a face of that part; for any other reading its moves: says it, or nothing is printed.", "lock-nut", func(d *Dimension) *source.Text { return &d.Adjust }),
		list("lost-by", "Steps or parts that destroy the reading, besides its own faces; nothing: no step of this job does, or it is read with the part off.", "[bolts]", func(d *Dimension) *[]source.Text { return &d.LostBy }),
		text("why-coarse", "Why an instrument with so coarse a step will do.", "the taper gauge is what goes into the gap", func(d *Dimension) *source.Text { return &d.WhyCoarse }),
		flag("sign", "Whether the reading can be negative.", "yes", func(d *Dimension) *source.Text { return &d.Sign }),
		varying("nominal", "The size to be expected, for the width of the box.", "25.00 mm", func(d *Dimension) *Varying { return &d.Nominal }).anySign(),
		number("spare", "How many boxes are left free for readings decided on the day.", "2", func(d *Dimension) *source.Text { return &d.Spare }),
		flag("critical", "Whether it stands on the sheet of critical dimensions; one with a limit for closing does, unless this says no.", "no", func(d *Dimension) *source.Text { return &d.Critical }),
		text("note", "A remark for whoever measures.", "Measure beside the keyway.", func(d *Dimension) *source.Text { return &d.Note }),
	}, append(worked(), applies(func(d *Dimension) *Applies { return &d.Applies })...)...),
}
