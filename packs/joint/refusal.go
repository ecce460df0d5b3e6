package joint

import (
	"fmt"
	"strings"
)

// A Refusal says why a joint cannot be computed, and what to write instead.
type Refusal struct {
	// Field is the path of the input at fault, in lower case and in the words of Spec
	// and Layout: "class", "friction.source", "stages[2]".
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

// Refusals is every reason found, in the order of the fields.
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

// add appends a reason built from a format.
func (rs *Refusals) add(field, help, message string, args ...any) {
	*rs = append(*rs, Refusal{Field: field, Help: help, Message: fmt.Sprintf(message, args...)})
}
