package lift

import "strings"

// A Refusal says why a lift cannot be computed, and what to write instead.
type Refusal struct {
	// Field is the path of the input at fault, in lower case and in the words of
	// Plan and Section: "load.mass", "legs[2].sling.rated".
	Field string
	// Message says what is wrong, with the value as given, in kilograms and
	// millimetres; In words it in other units.
	Message string
	// Help says what to write instead.
	Help string
	say  phrase
}

// In gives the message in the units in which the lift is written.
func (r Refusal) In(u Units) string { return r.say.in(u) }

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

// refuse builds a Refusal from a formatted message.
func refuse(field, help, message string, args ...any) *Refusal {
	what := say(message, args...)
	return &Refusal{Field: field, Help: help, Message: what.String(), say: what}
}
