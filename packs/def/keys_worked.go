package def

import "matchmark/packs/source"

// The keys of what is worked out, shimmed, turned and done again.

// worked makes the keys of a reading that is more than one number off a scale.
func worked() []key[Dimension] {
	return []key[Dimension]{
		varying("formula", "How it is worked out from other readings (half of, mean of, sum of, spread of, largest of, smallest of); it has no instrument then.", "D1 - D2 + 0.08 mm",
			func(d *Dimension) *Varying { return &d.Formula }),
		face("stamped-on", "The part, and where on it, that the number is stamped or etched on.", "{wheel: rim}", func(d *Dimension) *Face { return &d.StampedOn }),
		text("one-is", "What one of the number stamped on the part stands for.", "0.01 mm", func(d *Dimension) *source.Text { return &d.OneIs }),
		text("shims", "The shims that it is the thickness of.", "cover-shims", func(d *Dimension) *source.Text { return &d.Shims }),
		text("back-off", "How far the adjuster is turned back after it touches.", "1/6 turn", func(d *Dimension) *source.Text { return &d.BackOff }),
	}
}

// adjusting makes the keys of parts that set a dimension.
func adjusting() []key[Part] {
	return []key[Part]{
		single("shims", "What there is to make up a thickness: leaves in hand, or a graded set to pick one of.", "{leaves: 0.05 and 0.10 and 0.50 mm}", shimsKind,
			func(p *Part, at source.Pos) *Shims { p.Shims = &Shims{At: at}; return p.Shims }),
		text("leave-alone", "Why it must not be turned, for an adjuster that stays as it is.", "the maker sets and seals it", func(p *Part) *source.Text { return &p.LeaveAlone }),
	}
}

var shimsKind = &kind[Shims]{
	name: "set of shims",
	doc:  "What there is to make up a thickness: leaves, several of them in one pack, or a graded set of which one is picked.",
	keys: []key[Shims]{
		text("leaves", "The thicknesses in hand, each with how many there are if that is few.", "0.05 and 0.10 and 4 x 0.50 mm", func(s *Shims) *source.Text { return &s.Leaves }),
		text("pick", "The thicknesses of which one is picked.", "2.00 or 2.05 or 2.10 mm", func(s *Shims) *source.Text { return &s.Pick }),
		number("most", "How many leaves one pack may have.", "4", func(s *Shims) *source.Text { return &s.Most }),
		text("range", "From where to where a pack can be needed; the table of packs runs over it.", "0.20 to 0.80 mm", func(s *Shims) *source.Text { return &s.Range }),
		text("round", "Which way a thickness goes that lies between two packs, if not to the nearer.", "down", func(s *Shims) *source.Text { return &s.Round }).oneOf("nearest", "up", "down"),
	},
}

// branching makes the keys of steps that are done only if, again, or later.
func branching() []key[Step] {
	return []key[Step]{
		text("until", "What ends a step that is done over and over.", "D7 is in limits", func(s *Step) *source.Text { return &s.Until }),
		number("tries", "How often it is tried at most; each try has its boxes.", "4", func(s *Step) *source.Text { return &s.Tries }),
		list("each-try", "What every try after the first does before it is read again, in its order: a reading or a joint by its mark gets its boxes, words a box to tick. What words take off (cover off) goes back by words (cover back) or by the joint that holds it. A reading of the step itself has its boxes for the first try as well, and one of the step that is worked out from them has its own in each.",
			"[cover off, D12/L, J3/L]", func(s *Step) *[]source.Text { return &s.EachTry }),
		text("still-out", "What is done when the last try is no good either.", "tell the engineer", func(s *Step) *source.Text { return &s.StillOut }),
		flag("as-table", "Whether a step that repeats over places is printed as one: a row a place, or below one head where a row has no room for what it does.", "yes", func(s *Step) *source.Text { return &s.AsTable }),
		text("later", "When it is done, for a step that waits until the machine has run.", "after 48 h of running", func(s *Step) *source.Text { return &s.Later }),
	}
}
