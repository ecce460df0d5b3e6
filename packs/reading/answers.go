package reading

// An Answer is one of the boxes to tick: a phrase of the definition, or one of
// the fixed words (None, Some, Yes, No).
type Answer struct {
	Word   Word   // a fixed word, Literal for a phrase
	Phrase string // as typed, for Literal
	Right  bool   // this answer is within the limit
}

// Answers lists the boxes to tick of a limit, none if it has none.
func (l *Limit) Answers() []Answer {
	switch l.Kind {
	case NoneAllowed:
		return []Answer{{Word: WordNone, Right: true}, {Word: WordSome}}
	case YesOrNo:
		return []Answer{{Word: WordYes, Right: true}, {Word: WordNo, Right: true}}
	case MustBe:
		return []Answer{{Word: WordYes, Right: true}, {Word: WordNo}}
	case Choose:
		var out []Answer
		for _, p := range l.Phrases {
			out = append(out, Answer{Phrase: p, Right: true})
		}
		return out
	case Tick:
		return []Answer{{Word: WordYes, Right: true}}
	}
	return nil
}

// Typed is the answer as it is typed in a condition: none, some, yes, no, or the
// phrase of the limit.
func (a Answer) Typed() string {
	if a.Word != Literal {
		return spoken[a.Word]
	}
	return a.Phrase
}
