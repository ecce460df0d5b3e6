package units

import (
	"fmt"
	"io"
	"strings"
)

// DecimalMark stands in every number that is written for paper where its decimal sign
// will be: whether that is a point or a comma the paper decides when it is set. It is
// U+2396, decimal separator key symbol.
const DecimalMark = '⎖'

// ForPaper puts the decimal mark into the text of one number, with or without its unit.
// Its unit has no point.
func ForPaper(number string) string {
	return strings.Replace(number, ".", string(DecimalMark), 1)
}

// Pointed gives a text that was written for paper with decimal points: for files,
// messages and the screen, which have no other sign.
func Pointed(text string) string {
	return strings.ReplaceAll(text, string(DecimalMark), ".")
}

// Plain gives a number that was written for paper as it is typed: with a decimal point,
// a hyphen for its minus sign and a space before a fraction.
func Plain(number string) string {
	return strings.NewReplacer("−", "-", "\u00a0", " ").Replace(Pointed(number))
}

// A Figure is a number that prints with the decimal mark, by any verb for a float64.
type Figure float64

// Format writes the figure by the verb.
func (x Figure) Format(f fmt.State, verb rune) {
	io.WriteString(f, ForPaper(fmt.Sprintf(fmt.FormatString(f, verb), float64(x))))
}
