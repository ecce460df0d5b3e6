package align

import (
	"fmt"
	"strings"

	"matchmark/packs/units"
)

// A Refusal says why an alignment cannot be worked out, and what to write instead.
type Refusal struct {
	// Field is the path of the input at fault, in lower case and in the words of Setup:
	// "facediameter", "feet[1].at", "readings.rim.bottom".
	Field string
	// Message says what is wrong, with the value as given.
	Message string
	// Help says what to write instead.
	Help string
}

// Error gives the message and the help, without the field, on one line.
func (r Refusal) Error() string {
	if r.Help == "" {
		return r.Message
	}
	return r.Message + "; " + r.Help
}

// Refusals is every reason found.
type Refusals []Refusal

// Error gives one line a reason, each with its field.
func (rs Refusals) Error() string {
	lines := make([]string, len(rs))
	for i, r := range rs {
		lines[i] = r.Field + ": " + r.Error()
	}
	return strings.Join(lines, "\n")
}

// err gives rs as an error, or nil when there is nothing in it.
func (rs Refusals) err() error {
	if len(rs) == 0 {
		return nil
	}
	return rs
}

func (rs *Refusals) add(field, help, message string, args ...any) {
	*rs = append(*rs, Refusal{Field: field, Help: help, Message: fmt.Sprintf(message, args...)})
}

// length reads a length in the unit of the dials; nil is missing.
func (rs *Refusals) length(field, what string, q *units.Quantity, unit units.Unit) units.Number {
	if q == nil {
		rs.add(field, "measure it", "the %s is not told", what)
		return units.Number{}
	}
	c, err := q.Convert(unit)
	if err != nil {
		rs.add(field, "write it in mm or in", "the %s: %s", what, err.Error())
		return units.Number{}
	}
	return units.Exact(c.Number.Rat(), 0)
}

// positive reads a length that is more than nothing.
func (rs *Refusals) positive(field, what string, q *units.Quantity, unit units.Unit) units.Number {
	before := len(*rs)
	n := rs.length(field, what, q, unit)
	if len(*rs) == before && n.Sign() <= 0 {
		rs.add(field, "measure it", "the %s is %s", what, q.Text())
	}
	return n
}
