package fit

import (
	"fmt"

	"matchmark/packs/units"
)

// A Reason says why a figure is not given. The zero Reason says nothing.
type Reason struct {
	format string
	args   []any // texts, numbers written with a point
}

func because(format string, args ...any) Reason { return Reason{format, args} }

// Told reports whether there is a reason.
func (r Reason) Told() bool { return r.format != "" }

// String gives the reason in English.
func (r Reason) String() string { return fmt.Sprintf(r.format, r.args...) }

// In gives the reason for paper, in its language.
func (r Reason) In(t units.Tongue) string {
	args := make([]any, len(r.args))
	for i, a := range r.args {
		args[i] = units.ForPaper(a.(string))
	}
	return fmt.Sprintf(units.Said(t, r.format), args...)
}
