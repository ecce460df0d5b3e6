package reading

import (
	"strings"

	"matchmark/packs/nearest"
	"matchmark/packs/units"
)

// A StageKind is what one stage of a tightening does.
type StageKind uint8

const (
	// Tighten goes to Value, or to anything from Value to High.
	Tighten StageKind = iota
	// ByHand runs the nut down by hand.
	ByHand
	// SlackenAll loosens all of them again.
	SlackenAll
	// BackOff turns back by the angle Value.
	BackOff
	// Turn goes on by the angle Value.
	Turn
	// AgainAfter repeats the last stage after so many hours, Value.
	AgainAfter
	// LastRound goes round in turn at the last torque until no nut moves.
	LastRound
	// AgainRunning repeats the last stage when the machine has run.
	AgainRunning
)

// A Stage is one stage of a tightening.
type Stage struct {
	Kind  StageKind
	Value units.Quantity  // a torque, force, pressure or share of the last torque of Tighten; degrees; hours
	High  *units.Quantity // of Tighten with two ends: the upper one
	// Within is the tolerance of Tighten to either side of Value, in its unit; nil if
	// none was written.
	Within *units.Number
}

// stageWords are the ways to write the stages that begin with a word.
var stageWords = []struct {
	words string
	kind  StageKind
	word  Word
	dim   units.Dimension // of the number behind, NoDimension for none
	good  string
}{
	{"by hand", ByHand, WordByHand, units.NoDimension, "by hand"},
	{"slacken all", SlackenAll, WordSlackenAll, units.NoDimension, "slacken all"},
	{"back off", BackOff, WordBackOff, units.Angle, "back off 15°"},
	{"turn", Turn, WordTurn, units.Angle, "turn 60°"},
	{"last round", LastRound, WordLastRound, units.NoDimension, "last round"},
	{"again after running", AgainRunning, WordAgainRunning, units.NoDimension, "again after running"},
	{"again after", AgainAfter, WordAgainAfter, units.Time, "again after 24 h"},
}

// ParseStage reads one stage: 30 N·m, 30 to 35 N·m, 90 +/- 10 lb-ft, by hand, slacken all, back
// off 15° or 1/24 turn, turn 60°, last round, again after 24 h, again after running. A stage
// by tensioner is a pressure or a force; 70 % is a share of the last torque.
func ParseStage(text string) (*Stage, *Fault) {
	c := newCursor(text)
	s := c.stage()
	c.blanks()
	if c.ok() && !c.end() {
		rest := c.typed(c.pos, len(c.runes))
		c.failAt(c.pos, len(c.runes)-c.pos, "unknown-word", "\""+rest+"\" behind a stage: a stage is a torque, an angle or a few fixed words", "write it into pattern: or do:, as pattern: "+rest)
	}
	if c.fault != nil {
		return nil, c.fault
	}
	return s, nil
}

func (c *cursor) stage() *Stage {
	from := c.pos
	for _, w := range stageWords {
		if !c.take(w.words) {
			continue
		}
		s := &Stage{Kind: w.kind}
		if w.dim != units.NoDimension {
			s.Value = c.stageNumber(from, w.dim, w.good)
		}
		return s
	}
	if c.ok() && !c.digitNext() {
		c.stageUnknown(from)
		return nil
	}
	s := &Stage{Value: units.Quantity{Number: c.number()}}
	s.Value.Unit = c.unit()
	c.blanks()
	if c.take("to") {
		high := units.Quantity{Number: c.number()}
		high.Unit = c.unit()
		s.High = &high
		if s.Value.Unit == units.None {
			s.Value.Unit = high.Unit
		}
	} else {
		c.within(from, s)
	}
	c.checkTightening(from, s)
	return s
}

// checkTightening sees that a stage of tightening has a unit of tightening and
// its ends in order.
func (c *cursor) checkTightening(from int, s *Stage) {
	if !c.ok() {
		return
	}
	c.unblank()
	text := c.typed(from, c.pos)
	u := s.Value.Unit
	switch u.Dimension() {
	case units.Torque, units.Pressure, units.Force, units.Ratio:
	case units.NoDimension:
		c.stageNoUnit(from, text)
	case units.Angle:
		c.failFrom(from, "stage", text+" alone: on or back?", "turn "+text, "back off "+text)
	default:
		c.failFrom(from, "stage", text+" is "+u.Dimension().One()+", not a torque", s.Value.Number.Text()+" N·m")
	}
	switch {
	case !positive(s.Value):
		c.failFrom(from, "stage", text+": a bolt is tightened with more than nothing", "30 N·m")
	case s.Within != nil && s.Within.Cmp(s.Value.Number) >= 0:
		c.failFrom(from, "tolerance-size", "the tolerance is as large as the torque: "+text, s.Within.Text()+" +/- "+s.Value.Text())
	case s.Within != nil && s.Within.Decimals() != s.Value.Number.Decimals():
		c.failFrom(from, "decimals", "decimals differ: "+text, "90 +/- 10 lb-ft")
	case s.High == nil:
	case s.High.Unit != u:
		c.twoUnits(from, u, s.High.Unit)
	case s.High.Number.Cmp(s.Value.Number) <= 0:
		c.failFrom(from, "limit-order", "the smaller comes first, and the two differ: "+text, s.High.Number.Text()+" to "+s.Value.Text())
	case s.High.Number.Decimals() != s.Value.Number.Decimals():
		c.failFrom(from, "decimals", "decimals differ: "+text, "30 to 35 N·m")
	}
}

// within reads the tolerance of a stage, if there is one.
func (c *cursor) within(from int, s *Stage) {
	var t Test
	end := c.pos
	if !c.tolerance(&t) {
		c.pos = end
		return
	}
	unit := t.Unit
	switch {
	case !c.ok():
	case !t.Even:
		c.failFrom(from, "tolerance", "two deviations: "+c.typed(from, c.pos)+"; of a torque write both ends", "80 to 95 N·m")
	case s.Value.Unit == units.None:
		s.Value.Unit = unit
	case unit != units.None && unit != s.Value.Unit:
		c.twoUnits(from, s.Value.Unit, unit)
	}
	s.Within = &t.Upper
}

// stageNoUnit tells apart a dash, an unknown unit and none.
func (c *cursor) stageNoUnit(from int, text string) {
	end := c.pos
	c.blanks()
	switch r := c.peek(); {
	case strings.ContainsRune("-–—−", r) && !c.end():
		c.dash(from, len(c.runes))
	case !c.end():
		c.unknown("a unit is missing")
	}
	c.pos = end
	c.failFrom(from, "no-unit", "no unit: "+text+" what?", "for example "+text+" N·m, or "+text+" lb-ft")
}

// stageNumber reads the angle or the hours of a stage.
func (c *cursor) stageNumber(from int, dim units.Dimension, good string) units.Quantity {
	q := units.Quantity{Number: c.number()}
	q.Unit = c.unit()
	if !c.ok() {
		return q
	}
	text := c.typed(from, c.pos)
	if q.Unit == units.Turn && dim == units.Angle {
		// A share of a turn is told in degrees: 1/6 turn is 60°.
		degrees := q.Number.Mul(units.Whole(360))
		if !degrees.Rat().IsInt() {
			c.failFrom(from, "stage", text+" is no whole number of degrees", good)
		}
		q = units.Quantity{Number: units.Exact(degrees.Rat(), 0), Unit: units.Degree}
	}
	switch {
	case q.Unit == units.None:
		c.failFrom(from, "no-unit", "no unit: "+text+" what?", good)
	case q.Unit.Dimension() != dim:
		c.failFrom(from, "stage", text+": "+q.Unit.Text()+" is "+q.Unit.Dimension().One()+", not a "+dimensionWord(dim), good)
	case !positive(q):
		c.failFrom(from, "stage", text+" does nothing", good)
	}
	return q
}

func dimensionWord(d units.Dimension) string {
	if d == units.Time {
		return "time"
	}
	return d.String()
}

// stageUnknown names the nearest stage.
func (c *cursor) stageUnknown(from int) {
	var all []string
	for _, w := range stageWords {
		all = append(all, w.words)
	}
	word := c.typed(from, len(c.runes))
	for _, to := range []int{len(c.runes), c.wordEnd(c.skip(c.wordEnd(from))), c.wordEnd(from)} {
		if near := nearest.Word(c.typed(from, to), all); near != "" {
			c.failAt(from, to-from, "unknown-word", "\""+c.typed(from, to)+"\" is not known here", c.with(from, to, near))
			return
		}
	}
	c.failAt(from, len(c.runes)-from, "unknown-word", "\""+word+"\" is not a stage of tightening", "30 N·m", "turn 60°", "slacken all")
}

// Text writes the stage as it is typed.
func (s *Stage) Text() string {
	if s.Kind != Tighten {
		for _, w := range stageWords {
			if w.kind == s.Kind && w.dim != units.NoDimension {
				return w.words + " " + s.Value.Text()
			} else if w.kind == s.Kind {
				return w.words
			}
		}
	}
	if s.High != nil {
		return s.Value.Number.Text() + " to " + s.High.Text()
	}
	if s.Within != nil {
		return s.Value.Number.Text() + " +/- " + quantity(*s.Within, s.Value.Unit).Text()
	}
	return s.Value.Text()
}

// Words tells the stage for paper.
func (s *Stage) Words() []Part {
	for _, w := range stageWords {
		if s.Kind == Tighten || w.kind != s.Kind {
			continue
		}
		if w.dim == units.NoDimension {
			return []Part{word(w.word)}
		}
		return said(w.word, []Part{lit(s.Value.Print())})
	}
	if s.High != nil {
		return []Part{lit(s.Value.Number.Print() + "\u00a0– " + s.High.Print())}
	}
	if s.Within != nil {
		return []Part{lit(s.Value.Number.Print() + "\u00a0±\u00a0" + quantity(*s.Within, s.Value.Unit).Print())}
	}
	return []Part{lit(s.Value.Print())}
}
