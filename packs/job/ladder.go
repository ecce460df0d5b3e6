package job

import (
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// Worked is what a dimension has besides boxes when it is worked out from other
// readings, or read off a part as a number.
type Worked struct {
	Formula *reading.Value  // nil for a reading off a scale
	Stamped Face            // where the number stands, if it is stamped on a part
	OneIs   *units.Quantity // what one of that number stands for, nil for a full size
	Number  reading.Box     // the box of that number

	FoundWork, LeftWork Working // as done on the traveler and in putting back

	// SumFound and SumLeft tell that the sum of the readings found, or left, is
	// copied into a ladder: it is worked out beside them.
	SumFound, SumLeft bool
}

// A Working is what is worked out by hand where a dimension is read.
type Working struct {
	Formula *Ladder
	Limits  []LimitLadder // of the limit for closing and of that for old parts, or of that of a reading that is only found
	Late    *Use          // a reading of the limits that is not there yet; then Limits is empty
}

// A Ladder is one sum by hand.
type Ladder struct {
	Text  string         // as written in the definition
	Rungs []reading.Rung // inputs first, the result in the last blank
	Uses  []Use          // where each input was written
	Each  bool           // done for every position of the dimension

	// What it was made from, so that it can be done with readings.
	Value *reading.Value
	Given map[reading.Mark]reading.Given
	round *reading.Box // RoundTo
}

// Done is the ladder with the readings that it takes in its boxes, and what comes of
// them, for one position; taken gives those of a mark, and with an empty mark those
// found here. What is not known stays blank.
func (l *Ladder) Done(at int, taken func(reading.Mark) []*units.Quantity) []reading.Rung {
	if l.Value == nil {
		return l.Rungs
	}
	rungs, _, err := l.Value.Rungs(func(m reading.Mark) reading.Given {
		g := l.Given[m]
		g.Taken, g.At = taken(m), at
		return g
	})
	if err != nil {
		return l.Rungs
	}
	done := &Ladder{Rungs: rungs}
	if l.round != nil {
		done.RoundTo(*l.round)
	}
	blank, was := done.Blank(), l.Blank()
	blank.Box = was.Box
	if blank.Value != nil && blank.Box.Form == reading.Digits {
		rounded := blank.Value.Round(blank.Box.After, units.Nearest)
		blank.Value = &rounded
	}
	return done.Rungs
}

// A Use is a reading that a ladder takes, with the sheet on which it stands.
type Use struct {
	Mark reading.Mark // as written
	Dims []*Dim       // one, or those of several places taken together
	Left bool         // the value left, written in putting back
}

// A LimitLadder works out the ends of one test of a limit: At of a nominal size,
// else Low, High or both.
type LimitLadder struct {
	Limit         *reading.Limit // the dimension's Left, Reuse or Repair, or Found
	Test          *reading.Test
	At, Low, High *Ladder
}

// Result is the box of the whole sum.
func (l *Ladder) Result() reading.Box { return l.Blank().Box }

// Blank is the blank that the whole sum is written in.
func (l *Ladder) Blank() *reading.Part {
	last := l.Rungs[len(l.Rungs)-1].Parts
	for i := len(last) - 1; i >= 0; i-- {
		if last[i].Blank != reading.NoBlank {
			return &last[i]
		}
	}
	return &last[len(last)-1]
}

// RoundTo rounds the whole sum to the digits of a box, where it has more.
func (l *Ladder) RoundTo(box reading.Box) {
	l.round = &box
	if sum := l.Blank().Box; sum.Form != reading.Digits || sum.After <= box.After {
		return
	}
	last := &l.Rungs[len(l.Rungs)-1]
	for i := len(last.Parts) - 1; i >= 0; i-- {
		p := &last.Parts[i]
		if p.Blank != reading.BlankResult {
			continue
		}
		p.Box.Before, p.Box.After = box.Before, box.After
		if i+1 == len(last.Parts) {
			last.Parts = append(last.Parts, reading.Part{Word: reading.WordRounded})
		}
		return
	}
}

// AskSums sees that a sum which the ladder copies is worked out where its readings
// stand.
func (l *Ladder) AskSums() {
	if l == nil {
		return
	}
	for _, r := range l.Rungs {
		for _, p := range r.Parts {
			if p.Blank != reading.BlankReading || p.Index != reading.WholeOf(reading.WordSumOf) {
				continue
			}
			for _, u := range l.Uses {
				if u.Mark == p.Mark && len(u.Dims) == 1 {
					u.Dims[0].SumFound = u.Dims[0].SumFound || !u.Left
					u.Dims[0].SumLeft = u.Dims[0].SumLeft || u.Left
				}
			}
		}
	}
}
