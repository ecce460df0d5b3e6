package def

import "matchmark/packs/source"

// The keys of what guards the work, and of what is fetched for it.

// applies makes the two keys of everything that only some machines have.
func applies[T any](field func(*T) *Applies) []key[T] {
	return []key[T]{
		text("fitted", "The option without which it is left out.", "probes", func(t *T) *source.Text { return &field(t).Fitted }),
		text("if", "The build without which it is left out; of a step also what decides at the machine: a reading (D3 is over 0.50 mm) or a question.", "late", func(t *T) *source.Text { return &field(t).If }),
	}
}

var isolationKind = &kind[Isolation]{
	name: "isolation",
	doc:  "One point where the machine is cut off from its energy.",
	keys: append([]key[Isolation]{
		text("point", "Where it is cut off.", "Breaker 52-3, substation 2", func(i *Isolation) *source.Text { return &i.Point }).must(),
		text("energy", "What stands behind it.", "electric, 400 V", func(i *Isolation) *source.Text { return &i.Energy }).must(),
		text("state", "How it stands when it is safe.", "open and racked out", func(i *Isolation) *source.Text { return &i.State }).must(),
		text("proved", "How it is shown that nothing is left.", "start button pressed, no answer", func(i *Isolation) *source.Text { return &i.Proved }).must(),
	}, applies(func(i *Isolation) *Applies { return &i.Applies })...),
}

var permitKind = &kind[Permit]{
	name: "permit",
	doc:  "A paper of the site without which a step is not begun.",
	keys: append([]key[Permit]{
		text("what", "What it is called.", "Hot work permit", func(p *Permit) *source.Text { return &p.What }).must(),
		list("for", "What it allows besides plain work, where its words do not say so in English: going in where a person can be shut in (entry), flame and sparks (hot work), lifts (lifting); none of them: work. Where it stands, words are not asked.", "entry",
			func(p *Permit) *[]source.Text { return &p.For }).oneOf("entry", "hot work", "lifting", "work"),
		text("note", "What it must say, or who gives it.", "fire watch named on it", func(p *Permit) *source.Text { return &p.Note }),
	}, applies(func(p *Permit) *Applies { return &p.Applies })...),
}

var supplyKind = &kind[Supply]{
	name: "thing to fetch",
	doc:  "A tool, a spare or a consumable, on the list that is gathered before the work.",
	keys: append([]key[Supply]{
		text("what", "What it is; a spare for a part may leave it out.", "Two-leg puller", func(s *Supply) *source.Text { return &s.What }),
		text("part", "The part it is a spare for; of a tool, the aid that it is: it is used where that goes on for now and comes out again.", "bearing", func(s *Supply) *source.Text { return &s.Part }),
		text("count", "How much of it.", "2", func(s *Supply) *source.Text { return &s.Count }),
		text("size", "Its size, range or catalogue number.", "20 t", func(s *Supply) *source.Text { return &s.Size }).freeText(),
		list("for", "The steps it is used at.", "[nut]", func(s *Supply) *[]source.Text { return &s.For }),
		text("only", "Whether it is used in taking apart alone (off), or in the put-back rows of its steps alone (back).", "off", func(s *Supply) *source.Text { return &s.Only }).oneOf("off", "back"),
		text("note", "A remark.", "take it back unused", func(s *Supply) *source.Text { return &s.Note }),
	}, applies(func(s *Supply) *Applies { return &s.Applies })...),
}
