package reading

import (
	"math/big"

	"matchmark/packs/units"
)

// How a value is worked out by hand
//
// A ladder is the sum of a Value as a person does it with a pen: one line a term,
// the boxes to copy readings into first, every product and mean with a box of its
// own, the operation signs before the lines, and the result on the last.
//
// Nothing is lost on the way: a sum keeps the decimals of its finest term, half
// of a reading has one more, a product those of both factors. A box is rounded
// only for a mean, to one decimal more than the readings have, and for a product
// that would have more than three more; the line says so.
// Round to the nearest, half away from zero.
//
// Refused: readings in different units in one sum, though they convert (a person
// would have to convert between two boxes); fractions of an inch in anything but
// sums, differences, halves, largest, smallest and spread.

// moreDecimals is how many decimals a box on the way may have beyond its reading.
const moreDecimals = 3

// fewBoxes is how many readings are copied one by one to be added up; of more the
// sum alone is copied.
const fewBoxes = 4

// A Given is what a ladder has to know of readings that it takes: the box of one,
// and how many there are. Once is for a reading that is taken box by box: the
// ladder stands for one position, and takes the reading of the same one. Summed is
// for readings that are added up where they stand: their sum is copied.
type Given struct {
	Box    Box
	Boxes  int
	Once   bool
	Summed bool
	// Taken are the readings themselves, in the order of the boxes, for a ladder that is
	// printed filled; nil where one is not taken, none where nothing is known. At is the
	// position that the ladder stands for, from 0.
	Taken []*units.Quantity
	At    int
}

// one is the reading that is copied alone, nil if it is not known.
func (g Given) one() *big.Rat {
	switch {
	case len(g.Taken) == 1:
		return g.nth(0)
	case g.Once:
		return g.nth(g.At)
	}
	return nil
}

// nth is one of the readings, nil if it is not known. It is in the unit of the box.
func (g Given) nth(i int) *big.Rat {
	if i < 0 || i >= len(g.Taken) || g.Taken[i] == nil {
		return nil
	}
	return g.Taken[i].Number.Rat()
}

// A Rung is one line of a ladder. Minus and Plus stand before a term, Equals
// before the result; the first line has no sign.
type Rung struct {
	Sign  Sign
	Parts []Part
	Name  string // of a bracket: the letter by which the lines below call it
}

// A Sign is an operation sign at the head of a line.
type Sign uint8

const (
	// NoSign is before the first line.
	NoSign Sign = iota
	// Plus adds the line.
	Plus
	// Minus takes the line off.
	Minus
	// Equals is before the result.
	Equals
)

// Rungs gives the lines of boxes by which a person works the value out, inputs
// first, and the box of the result. given tells of each mark what is known; of
// "as found" it is asked with an empty mark. The error says which readings cannot
// be taken together.
func (v *Value) Rungs(given func(Mark) Given) ([]Rung, Box, error) {
	p := pen{given: given}
	f := p.sum(v)
	if p.err != nil {
		return nil, Box{}, p.err
	}
	return p.rungs, f.Box, nil
}
