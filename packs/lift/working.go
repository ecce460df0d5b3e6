package lift

import (
	"fmt"
	"math"

	"matchmark/packs/units"
)

// A Figure is one number of a working: its symbol, its amount and the unit.
type Figure struct {
	Symbol string
	Amount Amount
	Unit   string
	// Toward is the side to which it is rounded: Up for a load, a needed height, a
	// tilt; Down for a rating, an angle from horizontal, room left; Nearest for a
	// size, a place or a count.
	Toward units.Rounding
	// Told marks what the sheet tells above in Words, rounded as a rigger reads it.
	Told bool
}

// told is a figure that the sheet tells too.
func (f Figure) told() Figure { f.Told = true; return f }

// Words are the amount as the sheet tells it. ok is false for one that it does not tell in
// words of its own, or not to a side.
func (f Figure) Words() (w Words, ok bool) {
	if !f.Told || f.Toward == units.Nearest {
		return w, false
	}
	up := f.Toward == units.Up
	switch {
	case f.Unit == "kg" && up:
		return Kg(f.Amount).Up(), true
	case f.Unit == "kg":
		return Kg(f.Amount).Down(), true
	case f.Unit == "kN/m²" && up:
		return Kilopascal(f.Amount).Up(), true
	case f.Unit == "°" && up:
		return Degree(f.Amount).Up(), true
	}
	return w, false
}

// Print writes the amount for paper: as Text, with the decimal mark.
func (f Figure) Print() string { return units.ForPaper(f.Text()) }

// Text gives the amount with about four figures, rounded to its side.
func (f Figure) Text() string {
	q, ok := units.Computed(float64(f.Amount), units.None)
	if !ok {
		return "no number"
	}
	n := q.Number.Round(f.Amount.decimals(), f.Toward)
	if n.Sign() == 0 {
		return "0"
	}
	return n.Text()
}

// Amount is a number in the unit that stands beside it.
type Amount float64

// decimals leaves about four figures.
func (a Amount) decimals() int {
	switch x := math.Abs(float64(a)); {
	case x >= 999.5:
		return 0
	case x >= 99.95:
		return 1
	case x >= 9.995:
		return 2
	}
	return 3
}

// A Working is one formula with the numbers that went through it, so that the
// sheet can show how a result came about.
type Working struct {
	// What names the result in the trade's words; of a leg, of which the hole holds the
	// name, Of.
	What, Of string
	// Formula is written out with the symbols of Figures.
	Formula string
	// Source names the standard, table or rule, or says "exact statics".
	Source string
	// Figures are the inputs, then what lies between, then the result.
	Figures []Figure
}

// Names gives what the working is of, in the language of the paper.
func (w Working) Names(t units.Tongue) string {
	if w.Of == "" {
		return units.Said(t, w.What)
	}
	return fmt.Sprintf(units.Said(t, w.What), w.Of)
}

const statics = "exact statics"

// fig is a size, a place or a count; figUp a load or what is needed; figDown what
// is allowed or left.
func fig(symbol string, amount float64, unit string) Figure {
	return Figure{Symbol: symbol, Amount: Amount(amount), Unit: unit}
}

func figUp(symbol string, amount float64, unit string) Figure {
	return Figure{Symbol: symbol, Amount: Amount(amount), Unit: unit, Toward: units.Up}
}

func figDown(symbol string, amount float64, unit string) Figure {
	return Figure{Symbol: symbol, Amount: Amount(amount), Unit: unit, Toward: units.Down}
}
