package units

// The units, their spelling and their exact size in the base unit of their
// dimension: mm, kg, N, N·m, Pa, °C, C rise, degree, percent, piece, flat, notch,
// second, watt, cubic metre, mm², mm/s.
//
// Sources, all exact by definition and written here FROM MEMORY: the inch is
// 25.4 mm and the avoirdupois pound 0.453 592 37 kg (international yard and pound
// agreement of 1959); standard gravity is 9.806 65 m/s² (3rd CGPM, 1901); the bar
// is 100 000 Pa; a degree Fahrenheit is 5/9 of a kelvin and 0 °C is 32 °F
// (NIST SP 811, Appendix B).
//
//	lbf    = 0.453 592 37 × 9.806 65        = 4.448 221 615 260 5 N
//	lb-ft  = lbf × 0.3048 m                 = 1.355 817 948 331 400 4 N·m
//	lb-in  = lbf × 0.0254 m                 = 0.112 984 829 027 616 7 N·m
//	psi    = lbf / (0.0254 m)²              = 6894.757 293 168… Pa
//	lb/ft² = lbf / (0.3048 m)²              = 47.880 258 980 3… Pa
//
// lb-ft has too many figures for one int64 above the stroke beside 10^16, so the
// three are kept in lowest terms.
var spellings = [...]spelling{
	None:                {"", "", NoDimension, 1, 1, 0},
	Millimetre:          {"mm", "mm", Length, 1, 1, 0},
	Micrometre:          {"µm", "µm", Length, 1, 1000, 0},
	Centimetre:          {"cm", "cm", Length, 10, 1, 0},
	Metre:               {"m", "m", Length, 1000, 1, 0},
	Inch:                {"in", "in", Length, 254, 10, 0},
	Mil:                 {"mil", "mil", Length, 254, 10000, 0},
	Foot:                {"ft", "ft", Length, 3048, 10, 0},
	Kilogram:            {"kg", "kg", Mass, 1, 1, 0},
	Gram:                {"g", "g", Mass, 1, 1000, 0},
	Pound:               {"lb", "lb", Mass, 45359237, 100000000, 0},
	Tonne:               {"t", "t", Mass, 1000, 1, 0},
	Newton:              {"N", "N", Force, 1, 1, 0},
	Kilonewton:          {"kN", "kN", Force, 1000, 1, 0},
	PoundForce:          {"lbf", "lbf", Force, 44482216152605, 10000000000000, 0},
	NewtonMetre:         {"N·m", "N·m", Torque, 1, 1, 0},
	PoundFoot:           {"lb-ft", "lb-ft", Torque, 3389544870828501, 2500000000000000, 0},
	PoundInch:           {"lb-in", "lb-in", Torque, 1129848290276167, 10000000000000000, 0},
	Bar:                 {"bar", "bar", Pressure, 100000, 1, 0},
	Megapascal:          {"MPa", "MPa", Pressure, 1000000, 1, 0},
	Kilopascal:          {"kPa", "kPa", Pressure, 1000, 1, 0},
	PSI:                 {"psi", "psi", Pressure, 44482216152605, 6451600000, 0},
	PoundPerSquareFoot:  {"lb/ft2", "lb/ft²", Pressure, 44482216152605, 929030400000, 0},
	Celsius:             {"°C", "°C", Temperature, 1, 1, 0},
	Fahrenheit:          {"°F", "°F", Temperature, 5, 9, 32},
	CelsiusRise:         {"C rise", "°C", Rise, 1, 1, 0},
	FahrenheitRise:      {"F rise", "°F", Rise, 5, 9, 0},
	KelvinRise:          {"K", "K", Rise, 1, 1, 0},
	Degree:              {"°", "°", Angle, 1, 1, 0},
	Percent:             {"%", "%", Ratio, 1, 1, 0},
	Pieces:              {"pcs", "pcs", Count, 1, 1, 0},
	Second:              {"s", "s", Time, 1, 1, 0},
	Minute:              {"min", "min", Time, 60, 1, 0},
	Hour:                {"h", "h", Time, 3600, 1, 0},
	Watt:                {"W", "W", Power, 1, 1, 0},
	Kilowatt:            {"kW", "kW", Power, 1000, 1, 0},
	CubicMetre:          {"m3", "m³", Volume, 1, 1, 0},
	Litre:               {"l", "l", Volume, 1, 1000, 0},
	Turn:                {"turn", "turn", Angle, 360, 1, 0},
	Flat:                {"flat", "flat", FlatCount, 1, 1, 0},
	Notch:               {"notch", "notch", NotchCount, 1, 1, 0},
	SquareMillimetre:    {"mm2", "mm²", Area, 1, 1, 0},
	SquareCentimetre:    {"cm2", "cm²", Area, 100, 1, 0},
	SquareInch:          {"in2", "in²", Area, 16129, 25, 0},
	MillimetrePerSecond: {"mm/s", "mm/s", Speed, 1, 1, 0},
	InchPerSecond:       {"in/s", "in/s", Speed, 254, 10, 0},
}

// otherSpellings are read as well; what is printed back is the spelling above.
// "C rise" and its like come before "C", so that the longer one is tried first.
var otherSpellings = []struct {
	text string
	unit Unit
}{
	{"°C rise", CelsiusRise},
	{"°F rise", FahrenheitRise},
	{"K rise", KelvinRise},
	{"C", Celsius},
	{"F", Fahrenheit},
	{"μm", Micrometre}, // the Greek letter; the unit above has the micro sign
	{"um", Micrometre},
	{"Nm", NewtonMetre},
	{"N⋅m", NewtonMetre}, // the dot operator
	{"m³", CubicMetre},
	{"L", Litre},
	{"kN/m2", Kilopascal}, // as the load of a floor is written
	{"kN/m²", Kilopascal},
	{"lb/ft²", PoundPerSquareFoot},
	{"psf", PoundPerSquareFoot},
	{"inch", Inch},
	{"turns", Turn},
	{"flats", Flat},
	{"notches", Notch},
	{"mm²", SquareMillimetre},
	{"cm²", SquareCentimetre},
	{"in²", SquareInch},
	{"deg", Degree},
}
