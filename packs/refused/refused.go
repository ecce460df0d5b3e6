// Package refused holds the reasons for which a calculation gives no figure: which input
// is at fault, what is wrong with it, what to write instead. The calculators of lifts, of
// joints and of alignments all refuse with it; whoever knows the file puts the place on it.
package refused

import (
	"fmt"
	"strings"
)

// A Reason says why something cannot be worked out, and what to write instead.
type Reason struct {
	// Field is the path of the input at fault, in lower case and in the words of the
	// calculator's own struct: "legs[2].sling.rated".
	Field string
	// Message says what is wrong, with the value as given.
	Message string
	// Help says what to write instead; it may be empty.
	Help string
}

// Of is a reason whose message is built from a format.
func Of(field, help, message string, args ...any) Reason {
	return Reason{Field: field, Help: help, Message: fmt.Sprintf(message, args...)}
}

// Error gives the message and the help, without the field, on one line.
func (r Reason) Error() string {
	if r.Help == "" {
		return r.Message
	}
	return r.Message + "; " + r.Help
}

// At is the field.
func (r Reason) At() string { return r.Field }

// A List is every reason found, in the order of the fields; it is one error. R is Reason,
// or a calculator's own that says more.
type List[R interface {
	error
	At() string
}] []R

// Error gives one line a reason, each with its field.
func (l List[R]) Error() string {
	lines := make([]string, len(l))
	for i, r := range l {
		lines[i] = r.At() + ": " + r.Error()
	}
	return strings.Join(lines, "\n")
}

// Err gives the list as an error, or nil when there is nothing in it.
func (l List[R]) Err() error {
	if len(l) == 0 {
		return nil
	}
	return l
}
