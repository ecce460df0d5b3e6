package lift

import (
	"math"
	"strconv"
	"strings"
)

// A Figure is one number of a working: its symbol, its amount and the unit.
type Figure struct {
	Symbol string
	Amount Amount
	Unit   string
}

// Amount is a number in the unit that stands beside it.
type Amount float64

// String gives the amount with about four figures.
func (a Amount) String() string {
	decimals := 3
	switch x := math.Abs(float64(a)); {
	case x >= 999.5:
		decimals = 0
	case x >= 99.95:
		decimals = 1
	case x >= 9.995:
		decimals = 2
	}
	s := strconv.FormatFloat(float64(a), 'f', decimals, 64)
	if strings.Trim(s, "-0.") == "" {
		return "0"
	}
	return s
}

// A Working is one formula with the numbers that went through it, so that the
// sheet can show how a result came about.
type Working struct {
	// What names the result in the trade's words.
	What string
	// Formula is written out with the symbols of Figures.
	Formula string
	// Source names the standard, table or rule, or says "exact statics".
	Source string
	// Figures are the inputs, then what lies between, then the result.
	Figures []Figure
}

const statics = "exact statics"

func fig(symbol string, amount float64, unit string) Figure {
	return Figure{Symbol: symbol, Amount: Amount(amount), Unit: unit}
}
