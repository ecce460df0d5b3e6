package units

// The units, their spelling and their exact size in the base unit of their
// dimension: mm, kg, N, N·m, Pa, °C, C rise, degree, percent, piece, flat, notch,
// second, watt, cubic metre, mm², mm/s, ohm, ampere, volt, farad, hertz, turn a minute,
// m³/s, drop a minute, mm/m, m/s², g·mm, mm²/s, µS/cm, decibel, degree of each hardness.
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
// The US gallon is 231 in³, the ounce 1/16 lb, a minute of angle 1/60 degree, and the
// conventional inch of mercury 3386.389 Pa (NIST SP 811, Appendix B). The prefixes are
// those of the SI. Resistances are typed in full, megohm and milliohm, beside their signs:
// the two signs differ in the size of one letter, and the amounts by a thousand million.
//
// A limit that is told in a second unit is rounded inward there: at least upward, at most
// downward (packs/reading).
//
// lb-ft has too many figures for one int64 above the stroke beside 10^16, so the
// three are kept in lowest terms.
var spellings = [...]spelling{
	None:                      {"", "", NoDimension, 1, 1, 0},
	Millimetre:                {"mm", "mm", Length, 1, 1, 0},
	Micrometre:                {"µm", "µm", Length, 1, 1000, 0},
	Centimetre:                {"cm", "cm", Length, 10, 1, 0},
	Metre:                     {"m", "m", Length, 1000, 1, 0},
	Inch:                      {"in", "in", Length, 254, 10, 0},
	Mil:                       {"mil", "mil", Length, 254, 10000, 0},
	Foot:                      {"ft", "ft", Length, 3048, 10, 0},
	Kilogram:                  {"kg", "kg", Mass, 1, 1, 0},
	Gram:                      {"g", "g", Mass, 1, 1000, 0},
	Pound:                     {"lb", "lb", Mass, 45359237, 100000000, 0},
	Tonne:                     {"t", "t", Mass, 1000, 1, 0},
	Newton:                    {"N", "N", Force, 1, 1, 0},
	Kilonewton:                {"kN", "kN", Force, 1000, 1, 0},
	PoundForce:                {"lbf", "lbf", Force, 44482216152605, 10000000000000, 0},
	NewtonMetre:               {"N·m", "N·m", Torque, 1, 1, 0},
	PoundFoot:                 {"lb-ft", "lb-ft", Torque, 3389544870828501, 2500000000000000, 0},
	PoundInch:                 {"lb-in", "lb-in", Torque, 1129848290276167, 10000000000000000, 0},
	Bar:                       {"bar", "bar", Pressure, 100000, 1, 0},
	Megapascal:                {"MPa", "MPa", Pressure, 1000000, 1, 0},
	Kilopascal:                {"kPa", "kPa", Pressure, 1000, 1, 0},
	PSI:                       {"psi", "psi", Pressure, 44482216152605, 6451600000, 0},
	PoundPerSquareFoot:        {"lb/ft2", "lb/ft²", Pressure, 44482216152605, 929030400000, 0},
	Celsius:                   {"°C", "°C", Temperature, 1, 1, 0},
	Fahrenheit:                {"°F", "°F", Temperature, 5, 9, 32},
	CelsiusRise:               {"C rise", "°C", Rise, 1, 1, 0},
	FahrenheitRise:            {"F rise", "°F", Rise, 5, 9, 0},
	KelvinRise:                {"K", "K", Rise, 1, 1, 0},
	Degree:                    {"°", "°", Angle, 1, 1, 0},
	Percent:                   {"%", "%", Ratio, 1, 1, 0},
	Pieces:                    {"pcs", "pcs", Count, 1, 1, 0},
	Second:                    {"s", "s", Time, 1, 1, 0},
	Minute:                    {"min", "min", Time, 60, 1, 0},
	Hour:                      {"h", "h", Time, 3600, 1, 0},
	Watt:                      {"W", "W", Power, 1, 1, 0},
	Kilowatt:                  {"kW", "kW", Power, 1000, 1, 0},
	CubicMetre:                {"m3", "m³", Volume, 1, 1, 0},
	Litre:                     {"l", "l", Volume, 1, 1000, 0},
	Turn:                      {"turn", "turn", Angle, 360, 1, 0},
	Flat:                      {"flat", "flat", FlatCount, 1, 1, 0},
	Notch:                     {"notch", "notch", NotchCount, 1, 1, 0},
	SquareMillimetre:          {"mm2", "mm²", Area, 1, 1, 0},
	SquareCentimetre:          {"cm2", "cm²", Area, 100, 1, 0},
	SquareInch:                {"in2", "in²", Area, 16129, 25, 0},
	MillimetrePerSecond:       {"mm/s", "mm/s", Speed, 1, 1, 0},
	InchPerSecond:             {"in/s", "in/s", Speed, 254, 10, 0},
	MetrePerSecond:            {"m/s", "m/s", Speed, 1000, 1, 0},
	MetrePerMinute:            {"m/min", "m/min", Speed, 50, 3, 0},
	FootPerMinute:             {"ft/min", "ft/min", Speed, 508, 100, 0},
	Microhm:                   {"microhm", "µΩ", Resistance, 1, 1000000, 0},
	Milliohm:                  {"milliohm", "mΩ", Resistance, 1, 1000, 0},
	Ohm:                       {"ohm", "Ω", Resistance, 1, 1, 0},
	Kilohm:                    {"kilohm", "kΩ", Resistance, 1000, 1, 0},
	Megohm:                    {"megohm", "MΩ", Resistance, 1000000, 1, 0},
	Gigohm:                    {"gigohm", "GΩ", Resistance, 1000000000, 1, 0},
	Teraohm:                   {"teraohm", "TΩ", Resistance, 1000000000000, 1, 0},
	Microampere:               {"µA", "µA", Current, 1, 1000000, 0},
	Milliampere:               {"mA", "mA", Current, 1, 1000, 0},
	Ampere:                    {"A", "A", Current, 1, 1, 0},
	Kiloampere:                {"kA", "kA", Current, 1000, 1, 0},
	Millivolt:                 {"mV", "mV", Voltage, 1, 1000, 0},
	Volt:                      {"V", "V", Voltage, 1, 1, 0},
	Kilovolt:                  {"kV", "kV", Voltage, 1000, 1, 0},
	Nanofarad:                 {"nF", "nF", Capacitance, 1, 1000000000, 0},
	Microfarad:                {"µF", "µF", Capacitance, 1, 1000000, 0},
	Hertz:                     {"Hz", "Hz", Frequency, 1, 1, 0},
	PerMinute:                 {"rpm", "rpm", Rotation, 1, 1, 0},
	LitrePerMinute:            {"l/min", "l/min", Flow, 1, 60000, 0},
	LitrePerHour:              {"l/h", "l/h", Flow, 1, 3600000, 0},
	CubicMetrePerHour:         {"m3/h", "m³/h", Flow, 1, 3600, 0},
	GallonPerMinute:           {"US gal/min", "US gal/min", Flow, 3785411784, 60000000000000, 0},
	CubicFootPerMinute:        {"ft3/min", "ft³/min", Flow, 28316846592, 60000000000000, 0},
	DropPerMinute:             {"drops/min", "drops/min", Dripping, 1, 1, 0},
	MillimetrePerMetre:        {"mm/m", "mm/m", Slope, 1, 1, 0},
	InchPerFoot:               {"in/ft", "in/ft", Slope, 1000, 12, 0},
	MetrePerSecondSquared:     {"m/s2", "m/s²", Acceleration, 1, 1, 0},
	GramMillimetre:            {"g·mm", "g·mm", Unbalance, 1, 1, 0},
	OunceInch:                 {"oz-in", "oz-in", Unbalance, 720077887375, 1000000000, 0},
	SquareMillimetrePerSecond: {"mm2/s", "mm²/s", Viscosity, 1, 1, 0},
	MicrosiemensPerCentimetre: {"µS/cm", "µS/cm", Conductivity, 1, 1, 0},
	Decibel:                   {"dB", "dB", Level, 1, 1, 0},
	HB:                        {"HB", "HB", Brinell, 1, 1, 0},
	HRC:                       {"HRC", "HRC", Rockwell, 1, 1, 0},
	HV:                        {"HV", "HV", Vickers, 1, 1, 0},
	HLD:                       {"HLD", "HLD", Leeb, 1, 1, 0},
	ShoreA:                    {"Shore A", "Shore A", Shore, 1, 1, 0},
	Arcminute:                 {"arcmin", "arcmin", Angle, 1, 60, 0},
	Arcsecond:                 {"arcsec", "arcsec", Angle, 1, 3600, 0},
	PartPerMillion:            {"ppm", "ppm", Ratio, 1, 10000, 0},
	Pascal:                    {"Pa", "Pa", Pressure, 1, 1, 0},
	Millibar:                  {"mbar", "mbar", Pressure, 100, 1, 0},
	InchOfMercury:             {"inHg", "inHg", Pressure, 3386389, 1000, 0},
	Millilitre:                {"ml", "ml", Volume, 1, 1000000, 0},
	Gallon:                    {"US gal", "US gal", Volume, 3785411784, 1000000000000, 0},
	KilonewtonMetre:           {"kN·m", "kN·m", Torque, 1000, 1, 0},
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
	{"µΩ", Microhm}, {"μΩ", Microhm}, {"uΩ", Microhm}, // the first with the micro sign
	{"mΩ", Milliohm},
	{"Ω", Ohm}, {"\u2126", Ohm}, // the Greek letter, and the sign that looks the same
	{"kΩ", Kilohm},
	{"MΩ", Megohm},
	{"GΩ", Gigohm},
	{"TΩ", Teraohm},
	{"ohms", Ohm},
	{"milliohms", Milliohm},
	{"megohms", Megohm},
	{"uA", Microampere}, {"μA", Microampere},
	{"uF", Microfarad}, {"μF", Microfarad},
	{"r/min", PerMinute},
	{"L/min", LitrePerMinute},
	{"L/h", LitrePerHour},
	{"m³/h", CubicMetrePerHour},
	{"ft³/min", CubicFootPerMinute},
	{"cfm", CubicFootPerMinute},
	{"m/s²", MetrePerSecondSquared},
	{"g⋅mm", GramMillimetre},
	{"mm²/s", SquareMillimetrePerSecond},
	{"cSt", SquareMillimetrePerSecond},
	{"uS/cm", MicrosiemensPerCentimetre}, {"μS/cm", MicrosiemensPerCentimetre},
	{"HBW", HB},
	{"mL", Millilitre},
	{"cm3", Millilitre},
	{"cm³", Millilitre},
	{"kNm", KilonewtonMetre},
}
