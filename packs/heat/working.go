package heat

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
}

// An Assumption is something the computation takes for granted and the sheet
// must say. Code is fixed, so that a sheet in another language can word it.
type Assumption struct {
	Code string
	Says string
}

// A Warning is a result that a person must look at before the work starts; the
// figures stand, but Field or the plan should be changed. Code is fixed, as that
// of an Assumption.
type Warning struct {
	Code  string
	Field string
	Says  string
}
