package def

import "matchmark/packs/source"

// The keys of what stands below a dimension, and of orders that are written down.

var saysKind = &kind[Says]{
	name: "source that differs",
	doc:  "What one of several sources says of a limit that they do not agree on. With an option or a build it is printed all the same, and used only there.",
	keys: append([]key[Says]{
		text("source", "The document, table or page.", "maker's sheet 4", func(s *Says) *source.Text { return &s.Source }).must(),
		text("text", "What it says, as it is printed there.", "0.5 to 1.2 mm", func(s *Says) *source.Text { return &s.Text }).must(),
		text("used", "Whether this one is used: yes, or the hold at which it was chosen.", "W1", func(s *Says) *source.Text { return &s.Used }).
			oneOf("yes").marks("W"),
		text("note", "Why it is right or wrong.", "a slipped decimal", func(s *Says) *source.Text { return &s.Note }),
	}, applies(func(s *Says) *Applies { return &s.Applies })...),
}

// addSays adds an empty source to a dimension.
func addSays(d *Dimension, at source.Pos) *Says {
	d.Says = append(d.Says, Says{At: at})
	return &d.Says[len(d.Says)-1]
}

// addSaysOfJoint adds an empty source to a joint.
func addSaysOfJoint(j *Joint, at source.Pos) *Says {
	j.Says = append(j.Says, Says{At: at})
	return &j.Says[len(j.Says)-1]
}

var stackKind = &kind[Stack]{
	name:   "stack",
	doc:    "An order of parts from one side outward.",
	letter: "K",
	keys: []key[Stack]{
		varying("what", "What is stacked.", "Packing of the gland", func(s *Stack) *Varying { return &s.What }).must(),
		each(func(s *Stack) *[]source.Text { return &s.Each }),
		varying("from", "The side from which it is counted.", "the shaft end", func(s *Stack) *Varying { return &s.From }).must(),
		list("order", "The order from that side outward: one text, or one for each piece.", "[ring, ring, lantern, ring, ring, ring]",
			func(s *Stack) *[]source.Text { return &s.Order }).must().mayRepeat(),
		number("count", "How many pieces there are, where the order is one text.", "6", func(s *Stack) *source.Text { return &s.Count }),
	},
}
