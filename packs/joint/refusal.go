package joint

import "matchmark/packs/refused"

// A Refusal says why a joint cannot be computed, and what to write instead. Its field is
// the path of the input in the words of Spec and Layout: "class", "friction.source",
// "stages[2]".
type Refusal = refused.Reason

// Refusals is every reason found, in the order of the fields.
type Refusals = refused.List[Refusal]

// reasons are the refusals met while a joint is read.
type reasons struct{ Refusals }

// add appends a reason built from a format.
func (rs *reasons) add(field, help, message string, args ...any) {
	rs.Refusals = append(rs.Refusals, refused.Of(field, help, message, args...))
}
