package units

// A Fault is what is wrong with a line that a planner typed: where, and what to
// write instead.
type Fault struct {
	// Offset and Width are the place in the text, in runes from 0. Offset+Width
	// is never beyond the end of the text.
	Offset, Width int
	// Code is the short name of the kind of fault: no-unit, decimal-comma.
	Code string
	// Message says what is wrong with the value as written, in lower case.
	Message string
	// Help holds lines that would be right in place of the one typed.
	Help []string
}

// Error gives the message, so that a Fault can be handed on as an error.
func (f *Fault) Error() string { return f.Message }

// at moves a fault found in a part of a text to its place in the whole.
func (f *Fault) at(offset int) *Fault {
	f.Offset += offset
	return f
}
