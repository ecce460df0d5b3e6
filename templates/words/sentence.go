package words

import (
	"strconv"
	"strings"
)

// A Sentence is a text with holes, each written %s, that are filled in their order.
type Sentence string

// With puts values into the holes, the first into the first. A value may hold %s
// itself; it is printed as it is.
func (s Sentence) With(values ...string) string {
	var out strings.Builder
	rest := string(s)
	for _, v := range values {
		before, after, ok := strings.Cut(rest, "%s")
		if !ok {
			break
		}
		out.WriteString(before)
		out.WriteString(v)
		rest = after
	}
	return out.String() + rest
}

// A Mark explains one letter of the marks of things, as D for a dimension.
type Mark struct{ Letter, Means string }

// Pieces words a number of pieces: 1 piece, 4 pieces.
func (c Common) Pieces(n int) string { return number(n, c.OnePiece, c.ManyPieces) }

// PrintedInSpite is the heading of the errors that a draft is printed in spite of.
func (f Front) PrintedInSpite(errors int) string { return number(errors, f.OneError, f.ManyErrors) }

// FromCheck is the heading of the warnings that check had.
func (f Front) FromCheck(warnings int) string { return number(warnings, f.OneWarning, f.ManyWarnings) }

// number words how many there are of a thing.
func number(n int, one string, many Sentence) string {
	if n == 1 {
		return one
	}
	return many.With(strconv.Itoa(n))
}
