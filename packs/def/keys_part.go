package def

import "matchmark/packs/source"

// The keys of parts and of what they are kept in, laid on and sorted by.

var partKind = &kind[Part]{
	name: "part",
	doc:  "Anything that is named, moved, counted or measured against.",
	keys: append([]key[Part]{
		varying("name", "What the mechanic calls it.", "Bearing lock nut", func(p *Part) *Varying { return &p.Name }).must(),
		each(func(p *Part) *[]source.Text { return &p.Each }),
		text("of", "The assembly it belongs to and comes off with.", "cartridge", func(p *Part) *source.Text { return &p.Of }).
			byPlace("one part: of: hub is at each place the hub of that place, of: hub/DE the one at DE", "where it belongs to other parts at other places, write it as so many parts, each with its own of:"),
		list("behind", "The parts in front of it or on top of it: it neither comes off nor goes back while one of them is on.", "[lock-nut, tab-washer]", func(p *Part) *[]source.Text { return &p.Behind }).
			byPlace("parts alone: behind: [hub] is at each place the hub of that place, [hub/DE, hub/NDE] are those named", "where other parts are in front of it at other places, write it as so many parts, each with its own behind:"),
		count("count", "How many pieces there are at each place, where it is not one.", "8", func(p *Part) *Varying { return &p.Count }),
		varying("thread", "Its thread; from it follows what one flat of the nut moves.", "M90x2", func(p *Part) *Varying { return &p.Thread }),
		number("flats", "How many flats or slots the nut has, for telling what one of them moves.", "6", func(p *Part) *source.Text { return &p.Flats }),
		varying("hand", "The hand of its thread.", "{NDE: left, others: right}", func(p *Part) *Varying { return &p.Hand }).oneOf("left", "right"),
		varying("fit", "The fit it sits with.", "120 H7/r6", func(p *Part) *Varying { return &p.Fit }),
		varying("mass", "Its mass, with the unit.", "36 kg", func(p *Part) *Varying { return &p.Mass }),
		text("renew", "When a new one goes on; never: what is scrapped is gone for good; added: the machine has none yet, it goes on and nothing comes off for it.", "always", func(p *Part) *source.Text { return &p.Renew }).oneOf("always", "as set", "never", "added", "if …"),
		text("set", "The matched set it belongs to.", "S1", func(p *Part) *source.Text { return &p.Set }).marks("S"),
		text("holds", "What it holds back.", "spring", func(p *Part) *source.Text { return &p.Holds }).oneOf("spring", "pressure", "weight"),
		flag("guard", "Whether it keeps people from what moves or is live: no lock comes off while it is not on.", "yes", func(p *Part) *source.Text { return &p.Guard }),
		flag("aid", "Whether it is no part of the machine, as a guide stud, and must be out again at the end.", "yes", func(p *Part) *source.Text { return &p.Aid }),
		text("moves", "What one turn or flat moves, for an adjuster without a thread, or of one with a thread for a reading that is to no face of it; of shims what so much more of them moves: 0.003 in gives 0.001 in, or 0.10 mm gives -0.10 mm where more of them make a reading smaller.", "1 turn gives 0.75 mm", func(p *Part) *source.Text { return &p.Moves }),
		text("note", "A remark for whoever handles it.", "Keep the stamped side clean.", func(p *Part) *source.Text { return &p.Note }),
	}, append(adjusting(), applies(func(p *Part) *Applies { return &p.Applies })...)...),
}

var containerKind = &kind[Container]{
	name:   "container",
	doc:    "Anything numbered that parts are kept in.",
	letter: "C",
	keys: append([]key[Container]{
		varying("name", "What is in it.", "Lock nuts and washers", func(c *Container) *Varying { return &c.Name }).must(),
		text("kind", "What it is; it chooses the label.", "bag", func(c *Container) *source.Text { return &c.Kind }).
			oneOf("bag", "box", "tray", "crate").must(),
		each(func(c *Container) *[]source.Text { return &c.Each }),
		list("pockets", "Bags or boxes inside it that have a name of their own; a group of places is one for each of them (valve, into: C1/valve).", "[springs, pins]", func(c *Container) *[]source.Text { return &c.Pockets }),
		varying("keep", "How it is kept.", "oiled", func(c *Container) *Varying { return &c.Keep }),
		varying("note", "A remark printed on its tag.", "washers on their own nuts", func(c *Container) *Varying { return &c.Note }),
	}, applies(func(c *Container) *Applies { return &c.Applies })...),
}

var bigKind = &kind[BigPart]{
	name:   "big part",
	doc:    "A part with a tag of its own and no container.",
	letter: "B",
	keys: append([]key[BigPart]{
		text("part", "The part.", "cap", func(b *BigPart) *source.Text { return &b.Part }).must(),
		each(func(b *BigPart) *[]source.Text { return &b.Each }),
		varying("keep", "How it is kept.", "bore upward and covered", func(b *BigPart) *Varying { return &b.Keep }),
		varying("support", "What it lies on.", "two timbers", func(b *BigPart) *Varying { return &b.Support }),
	}, applies(func(b *BigPart) *Applies { return &b.Applies })...),
}

var spotKind = &kind[Spot]{
	name:   "lay-down spot",
	doc:    "A place on the floor where a big part is laid down.",
	letter: "Y",
	keys: []key[Spot]{
		text("what", "Where and what it is.", "Timbers beside the housing", func(s *Spot) *source.Text { return &s.What }).must(),
		text("floor", "What the floor carries.", "20 kN/m2", func(s *Spot) *source.Text { return &s.Floor }),
		text("support", "What the part is laid on.", "four timbers", func(s *Spot) *source.Text { return &s.Support }),
	},
}

var setKind = &kind[Set]{
	name:   "matched set",
	doc:    "Parts that only fit each other.",
	letter: "S",
	keys: []key[Set]{
		varying("what", "Which parts belong together.", "Bearing housing and its cap", func(s *Set) *Varying { return &s.What }).must(),
		each(func(s *Set) *[]source.Text { return &s.Each }),
		text("why", "Why they must stay together.", "bored together", func(s *Set) *source.Text { return &s.Why }),
		list("judged-by", "The readings by which the set is judged: one of them out, and all pieces are renewed.", "[D9]", func(s *Set) *[]source.Text { return &s.JudgedBy }).marks("D"),
	},
}
