package fit

// Units of the calculations that work in floating point.
type (
	Mm          float64 // millimetres
	Micron      float64 // micrometres
	MPa         float64 // megapascals, newtons per square millimetre
	GPa         float64 // gigapascals
	Newton      float64 // newtons
	NewtonMetre float64 // newton metres
	Celsius     float64 // a temperature in degrees Celsius, never a rise
	PerKelvin   float64 // expansion per kelvin: 11.5e-6 for a plain carbon steel
	KelvinRise  float64 // a difference of two temperatures, in kelvin
	PerMinute   float64 // turns in a minute
	KgPerM3     float64 // a density
	Ratio       float64 // a number without unit: friction, Poisson's ratio, share of yield
	Number      float64 // a number in the unit that stands beside it
)

// Value is one number of a working with its sign and unit. The unit is empty for a
// ratio.
type Value struct {
	Symbol string // as in the formula: "D_F"
	Name   string // in the trade's words: "joint diameter"
	Amount Number // in Unit
	Unit   string // "mm", "µm", "MPa", "N", "N·m", "°C", "1/K" or ""
}

// Step is one formula with what went in and what came out, for a sheet that shows
// its arithmetic.
type Step struct {
	Formula string // in the symbols of its values
	Source  string // handbook or standard
	In      []Value
	Out     Value
}

// FieldError is an input that cannot be computed with. Field is the name of the
// field of the input struct ("HubOutside", "Hub.E"); Problem says in the trade's
// words, with the value as given, what is wrong and what is wanted.
type FieldError struct {
	Field   string
	Problem string
}

// Error gives the problem alone: the reader sees no field names.
func (e *FieldError) Error() string { return e.Problem }
