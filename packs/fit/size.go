package fit

import (
	"strconv"
	"strings"
)

// Nanometre is a length or a deviation in whole nanometres, exact: 130 mm is
// 130 000 000, +15 µm is 15 000.
type Nanometre int64

const (
	micrometre Nanometre = 1000
	millimetre Nanometre = 1_000_000
)

// Mm gives n as millimetres for a calculation that works in floating point.
func (n Nanometre) Mm() Mm { return Mm(float64(n) / float64(millimetre)) }

// Micron gives n as micrometres for a calculation that works in floating point.
func (n Nanometre) Micron() Micron { return Micron(float64(n) / float64(micrometre)) }

// Decimal writes n in millimetres with a decimal point and no unit: with three
// decimals, as limits are read on an instrument, and with more only where n has
// more ("130.015", "9.9955").
func (n Nanometre) Decimal() string {
	sign := ""
	if n < 0 {
		sign, n = "-", -n
	}
	frac := strconv.FormatInt(int64(n%millimetre)+int64(millimetre), 10)[1:]
	short := strings.TrimRight(frac, "0")
	if len(short) < 3 {
		short = frac[:3]
	}
	return sign + strconv.FormatInt(int64(n/millimetre), 10) + "." + short
}

// plain writes n in millimetres as short as it can be written: "130", "30.001".
func (n Nanometre) plain() string {
	return strings.TrimRight(strings.TrimRight(n.Decimal(), "0"), ".")
}

// parseMm reads digits with at most one decimal point and six decimals. It
// reports false for anything else; the caller says what was wrong.
func parseMm(s string) (Nanometre, bool) {
	whole, frac, _ := strings.Cut(s, ".")
	if whole == "" || len(whole) > 7 || len(frac) > 6 {
		return 0, false
	}
	w, err := strconv.ParseUint(whole, 10, 32)
	if err != nil {
		return 0, false
	}
	f, err := strconv.ParseUint((frac + "000000")[:6], 10, 32)
	if err != nil {
		return 0, false
	}
	return Nanometre(w)*millimetre + Nanometre(f), true
}
