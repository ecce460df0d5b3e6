package heat

import "matchmark/packs/units"

// A Working is one line of computation that a sheet can show: the formula by
// name, where it comes from, and its figures.
type Working struct {
	Formula string
	Source  string
	Terms   []Term
}

// A Term is one figure of a working with its symbol and unit.
type Term struct {
	Symbol string
	Value  Number
	Unit   string
	// Toward is the side to which it is rounded on paper; the nearest where nothing is
	// needed or promised by it.
	Toward units.Rounding
}

// An Assumption is something the computation takes for granted and the sheet
// must say. Code is fixed, so that a sheet in another language can word it; Says is
// metric.
type Assumption struct {
	Code string
	Says string

	says saying
}

// In writes the assumption in the units of a job.
func (a Assumption) In(u Units) Assumption {
	a.Says = a.says.in(u)
	return a
}

// assume builds an assumption; says may hold figures.
func assume(code, says string, args ...any) Assumption {
	return Assumption{Code: code, says: say(says, args...)}.In(Units{})
}

// A Warning is a result that a person must look at before the work starts; the
// figures stand, but Field or the plan should be changed. Code is fixed, as that
// of an Assumption; Says is metric.
type Warning struct {
	Code  string
	Field string
	Says  string

	says saying
}

// In writes the warning in the units of a job.
func (w Warning) In(u Units) Warning {
	w.Says = w.says.in(u)
	return w
}

// warn builds a warning; says may hold figures.
func warn(code, field, says string, args ...any) Warning {
	return Warning{Code: code, Field: field, says: say(says, args...)}.In(Units{})
}
