package reading

import (
	"matchmark/packs/units"
)

// A Part is one piece of a printed line: a fixed word of the catalogue, a literal
// text (numbers, units, marks, phrases; already with true minus, en dash and
// no-break spaces), or a blank to write in.
type Part struct {
	Word  Word
	Text  string   // of Literal
	Args  [][]Part // of a Word: what stands in its holes, none of it a blank
	Blank Blank
	Mark  Mark // of BlankReading: whose reading is copied here; of a Literal: what it names

	// In a ladder only:
	Index int           // of BlankReading: which of the readings, from 1; 0 the only one or that of the same position; WholeOf for one of all
	Box   Box           // the size of the blank
	Value *units.Number // what stands in the blank, where the readings are known; nil if it is to be written
}

// A Blank is a small box inside a printed line.
type Blank uint8

const (
	// NoBlank is a part that is no box.
	NoBlank Blank = iota
	// BlankReading takes the reading of Mark.
	BlankReading
	// BlankFound takes what was found here.
	BlankFound
	// BlankResult takes what is worked out.
	BlankResult
)

// Printed is a limit in words for paper: the lines of its cell, and the small lines
// below. What hangs on other readings is worked out on a ladder (Value.Rungs).
type Printed struct {
	Main, Small [][]Part
}

func lit(text string) Part { return Part{Text: text} }

func word(w Word) Part { return Part{Word: w} }

// said is a word with what stands in its holes.
func said(w Word, args ...[]Part) []Part { return []Part{{Word: w, Args: args}} }

// Words tells the limit for paper.
func (l *Limit) Words() Printed {
	var p Printed
	switch l.Kind {
	case Measured:
		for i := range l.Tests {
			l.Tests[i].words(&p, len(l.Tests) > 1)
		}
	case Record:
		p.main(word(WordRecord))
	case NoneAllowed:
		p.main(word(WordNoneAllowed))
	case SameAsFound:
		p.main(word(WordAsFound))
	case MustBe:
		p.main(lit(l.Phrases[0]))
	}
	return p
}

func (p *Printed) main(parts ...Part)  { p.Main = append(p.Main, parts) }
func (p *Printed) small(parts ...Part) { p.Small = append(p.Small, parts) }

// groupWords are the words of the groups; Each has none.
var groupWords = [...]Word{Each: Literal, Mean: WordMean, Spread: WordSpread, Sum: WordSum}

// words tells one test; of several each bracket says which end it is of.
func (t *Test) words(p *Printed, several bool) {
	var line []Part
	switch t.Rule {
	case AtLeast:
		line = said(WordAtLeast, t.Low.words())
	case AtMost:
		line = said(WordAtMost, t.High.words())
	case About:
		line = said(WordAbout, t.At.words())
		p.small(word(WordNoTolerance))
	case Exactly:
		line = said(WordExactly, t.At.words())
	case Range:
		line = t.rangeWords()
	case Nominal:
		line = t.nominalWords(p)
	}
	if t.Group != Each {
		line = said(groupWords[t.Group], line)
	}
	if t.Unit.Dimension() == units.Rise && t.Group != Spread {
		line = said(WordRise, line)
		t.riseWords(p)
	}
	p.main(line...)
	if t.Other != nil {
		other := []Part{lit(t.Other.printBare())}
		switch ends := t.Other.Rule; {
		case !several && ends == t.Rule:
		case ends == AtLeast:
			other = said(WordAtLeast, other)
		case ends == AtMost:
			other = said(WordAtMost, other)
		}
		if t.Other.Unit.Dimension() == units.Rise && t.Group != Spread {
			other = said(WordRise, other)
		}
		p.small(said(WordAsInSource, other)...)
	}
}

// rangeWords tells "value to value". A dash beside a sign reads badly, so signed
// limits and worked-out ones keep the word; of two sums it says once that they are
// worked out.
func (t *Test) rangeWords() []Part {
	if t.Low.constant() && t.High.constant() {
		low, high := t.Low.sum(), t.High.sum()
		if dashFits(low, high) {
			return []Part{lit(low.Print() + "\u00a0– " + quantity(high, t.Unit).Print())}
		}
		return said(WordTo, []Part{lit(low.Print())}, []Part{lit(quantity(high, t.Unit).Print())})
	}
	low, high := t.Low.words(), t.High.words()
	if low[0].Word == WordWorkedOut && high[0].Word == WordWorkedOut {
		return low // both ends are on their ladders
	}
	return said(WordTo, low, high)
}

// dashFits reports whether neither number has a sign.
func dashFits(low, high units.Number) bool {
	for _, text := range []string{low.Text(), high.Text()} {
		if text[0] == '-' || text[0] == '+' {
			return false
		}
	}
	return true
}

// printRange writes two numbers with a dash or, beside signs, with a stroke of
// dots, for the small lines that have no room for a word.
func printRange(low, high units.Number) string {
	if dashFits(low, high) {
		return low.Print() + "\u00a0–\u00a0" + high.Print()
	}
	return low.Print() + "\u00a0…\u00a0" + high.Print()
}

// nominalWords tells "value tolerance", and below it the two ends, or the boxes
// to work them out.
func (t *Test) nominalWords(p *Printed) []Part {
	deviation := "±\u00a0" + quantity(t.Upper, t.Unit).Print()
	if !t.Even {
		deviation = signedPrint(t.Upper) + "\u00a0/\u00a0" + quantity(t.Lower, t.Unit).Number.Print() + unitBehind(t.Unit)
		if t.Lower.Sign() >= 0 {
			deviation = signedPrint(t.Upper) + "\u00a0/\u00a0" + signedPrint(t.Lower) + unitBehind(t.Unit)
		}
	}
	if t.At.constant() {
		at := t.At.sum()
		low, high, _ := t.Limits()
		p.small(lit(printRange(low.Number, high.Number)))
		if !t.Even {
			return []Part{lit(at.Print() + " " + deviation)} // long: a narrow column breaks it before the deviations
		}
		return []Part{lit(at.Print() + "\u00a0" + deviation)}
	}
	if t.At.JustFound() {
		p.small(word(WordFound), Part{Blank: BlankFound}, lit("→"), word(WordFrom), Part{Blank: BlankResult}, word(WordTill), Part{Blank: BlankResult})
	}
	return append(t.At.words(), lit(deviation))
}

// signedPrint writes a deviation with its sign for paper. Zero keeps the sign that
// was typed, plus if none was.
func signedPrint(n units.Number) string {
	text := n.Print()
	if text[0] == '+' || n.Sign() < 0 || text[0] > '9' {
		return text
	}
	return "+" + text
}

// unitBehind writes a unit as it stands behind a number.
func unitBehind(u units.Unit) string {
	if u == units.Degree {
		return u.Print()
	}
	return "\u00a0" + u.Print()
}

// printBare writes the numbers of a bracket for paper.
func (t *Test) printBare() string {
	switch t.Rule {
	case Range:
		return printRange(t.Low.sum(), t.High.sum()) + unitBehind(t.Unit)
	case Nominal:
		if t.Even {
			return t.At.sum().Print() + "\u00a0±\u00a0" + quantity(t.Upper, t.Unit).Print()
		}
		return t.At.sum().Print() + "\u00a0" + signedPrint(t.Upper) + "\u00a0/\u00a0" + signedPrint(t.Lower) + unitBehind(t.Unit)
	}
	return quantity(t.values()[0].sum(), t.Unit).Print()
}

// manyOf are the words for several readings taken together.
var manyOf = map[ItemKind]Word{MeanOf: WordMeanOf, LargestOf: WordLargestOf, SmallestOf: WordSmallestOf, SpreadOf: WordSpreadOf, SumOf: WordSumOf}

// riseWords tells a rise in the other degrees as well, rounded inward, and warns
// of the numbers that the conversion of a temperature would give.
func (t *Test) riseWords(p *Printed) {
	low, high, ok := t.Limits()
	if !ok {
		return
	}
	to := units.FahrenheitRise
	if t.Unit == units.FahrenheitRise {
		to = units.CelsiusRise
	}
	ends := func(convert func(units.Number, units.Rounding) string) string {
		switch {
		case low == nil:
			return convert(high.Number, units.Down)
		case high == nil:
			return convert(low.Number, units.Up)
		}
		return convert(low.Number, units.Up) + "\u00a0–\u00a0" + convert(high.Number, units.Down)
	}
	rise := ends(func(n units.Number, how units.Rounding) string {
		q, err := quantity(n, t.Unit).Convert(to)
		if err != nil {
			return ""
		}
		return q.Number.Round(n.Decimals(), how).Print()
	})
	point := ends(func(n units.Number, _ units.Rounding) string {
		q, err := quantity(n, temperatureOf(t.Unit)).Convert(temperatureOf(to))
		if err != nil {
			return ""
		}
		return q.Number.Round(n.Decimals(), units.Nearest).Print()
	})
	p.small(said(WordWarmer, []Part{lit("=\u00a0" + rise + "\u00a0" + to.Print())}, []Part{lit(point)})...)
}
