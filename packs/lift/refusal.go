package lift

import "matchmark/packs/refused"

// A Refusal says why a lift cannot be computed, and what to write instead. Its field is
// the path of the input in the words of Plan and Section: "load.mass",
// "legs[2].sling.rated". Its message has the value as given, in kilograms and
// millimetres; In words it in other units.
type Refusal struct {
	refused.Reason
	say phrase
}

// In gives the message in the units in which the lift is written.
func (r Refusal) In(u Units) string { return r.say.in(u) }

// Refusals is every reason found, in the order of the fields.
type Refusals = refused.List[Refusal]

// refuse builds a Refusal from a formatted message.
func refuse(field, help, message string, args ...any) *Refusal {
	what := say(message, args...)
	return &Refusal{Reason: refused.Reason{Field: field, Help: help, Message: what.String()}, say: what}
}
