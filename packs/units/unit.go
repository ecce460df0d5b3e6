package units

import (
	"math/big"
	"strings"
)

// A Dimension is what kind of thing a unit measures. Units convert within one
// dimension only.
type Dimension uint8

// The dimensions. Temperature is a point on a scale, Rise a difference of two
// such points. Ratio is a percentage, Count a number of pieces, FlatCount and NotchCount
// how far a nut or a ring is turned by what is on it, Speed how fast a bearing housing
// shakes, a belt or a rope runs. A drop has no size, and a degree of one hardness is none of
// another: each scale of hardness is a dimension of its own.
const (
	NoDimension Dimension = iota
	Length
	Mass
	Force
	Torque
	Pressure
	Temperature
	Rise
	Angle
	Ratio
	Count
	Time
	Power
	Volume
	Area
	FlatCount
	NotchCount
	Speed
	Resistance
	Current
	Voltage
	Capacitance
	Frequency
	Rotation
	Flow
	Dripping
	Slope
	Acceleration
	Unbalance
	Viscosity
	Conductivity
	Level
	Brinell
	Rockwell
	Vickers
	Leeb
	Shore
)

// String names the dimension as a planner would.
func (d Dimension) String() string {
	return [...]string{
		"bare number", "length", "mass", "force", "torque", "pressure", "temperature",
		"rise of temperature", "angle", "percentage", "count", "time", "power", "volume", "area",
		"number of flats", "number of notches", "speed",
		"resistance", "current", "voltage", "capacitance", "frequency", "speed of rotation", "flow", "rate of drops",
		"slope", "rate of change of speed", "unbalance", "viscosity", "conductivity", "level of sound",
		"Brinell hardness", "Rockwell hardness", "Vickers hardness", "Leeb hardness", "Shore hardness",
	}[d]
}

// One names one quantity of the dimension, with its article where it takes one: a length, an angle, viscosity;
// in messages.
func (d Dimension) One() string {
	name := d.String()
	switch d {
	case Unbalance, Viscosity, Conductivity, Brinell, Rockwell, Vickers, Leeb, Shore:
		return name
	}
	if strings.ContainsRune("aeiou", rune(name[0])) {
		return "an " + name
	}
	return "a " + name
}

// A Unit is one unit of the trade. The zero Unit is none.
type Unit uint8

// The units.
const (
	None Unit = iota
	Millimetre
	Micrometre
	Centimetre
	Metre
	Inch
	Mil
	Foot
	Kilogram
	Gram
	Pound
	Tonne
	Newton
	Kilonewton
	PoundForce
	NewtonMetre
	PoundFoot
	PoundInch
	Bar
	Megapascal
	Kilopascal
	PSI
	PoundPerSquareFoot
	Celsius
	Fahrenheit
	CelsiusRise
	FahrenheitRise
	KelvinRise
	Degree
	Percent
	Pieces
	Second
	Minute
	Hour
	Watt
	Kilowatt
	CubicMetre
	Litre
	Turn
	Flat
	Notch
	SquareMillimetre
	SquareCentimetre
	SquareInch
	MillimetrePerSecond
	InchPerSecond
	MetrePerSecond
	MetrePerMinute
	FootPerMinute
	Microhm
	Milliohm
	Ohm
	Kilohm
	Megohm
	Gigohm
	Teraohm
	Microampere
	Milliampere
	Ampere
	Kiloampere
	Millivolt
	Volt
	Kilovolt
	Nanofarad
	Microfarad
	Hertz
	PerMinute
	LitrePerMinute
	LitrePerHour
	CubicMetrePerHour
	GallonPerMinute
	CubicFootPerMinute
	DropPerMinute
	MillimetrePerMetre
	InchPerFoot
	MetrePerSecondSquared
	GramMillimetre
	OunceInch
	SquareMillimetrePerSecond
	MicrosiemensPerCentimetre
	Decibel
	HB
	HRC
	HV
	HLD
	ShoreA
	Arcminute
	Arcsecond
	PartPerMillion
	Pascal
	Millibar
	InchOfMercury
	Millilitre
	Gallon
	KilonewtonMetre
)

// A spelling is how a unit is typed and printed, and its size.
type spelling struct {
	text, print string // as typed, and as on paper
	dim         Dimension
	// One unit is top/bottom of the base unit of its dimension (mm, kg, N, N·m,
	// Pa, °C, C rise, …). Of a temperature this is the size of one degree, and
	// zero is what 0 °C reads.
	top, bottom int64
	zero        int64
}

// Dimension tells what the unit measures.
func (u Unit) Dimension() Dimension { return spellings[u].dim }

// Text is the unit as it is typed in a definition: mm, C rise, N·m.
func (u Unit) Text() string { return spellings[u].text }

// Print is the unit as it stands on paper: mm, °C, N·m. A rise prints as its
// degree alone; the words around it must say that it is a rise.
func (u Unit) Print() string { return spellings[u].print }

// RiseUnit gives the unit in which differences of readings in u are told: C rise
// for °C, F rise for °F, and u itself for all others.
func (u Unit) RiseUnit() Unit {
	switch u {
	case Celsius:
		return CelsiusRise
	case Fahrenheit:
		return FahrenheitRise
	}
	return u
}

// SameScale reports whether what reads in one unit reads in the other as well, by
// moving the decimal point at most: mm and µm, bar and kPa, but not mm and inches, nor
// °C and °F. A tape in feet reads inches, and a clock all times.
func (u Unit) SameScale(v Unit) bool {
	switch {
	case u == v:
		return true
	case u.Dimension() != v.Dimension():
		return false
	case u.Dimension() == Time || u == Inch && v == Foot || u == Foot && v == Inch:
		return true
	}
	r := new(big.Rat).Quo(u.factor(), v.factor())
	if r.Cmp(big.NewRat(1, 1)) < 0 {
		r.Inv(r)
	}
	for ten := big.NewRat(10, 1); r.Cmp(big.NewRat(1, 1)) > 0; {
		r.Quo(r, ten)
	}
	return r.Cmp(big.NewRat(1, 1)) == 0 && spellings[u].zero == spellings[v].zero
}

// factor is the size of the unit in base units.
func (u Unit) factor() *big.Rat { return big.NewRat(spellings[u].top, spellings[u].bottom) }

// toBase turns a value in u into base units.
func (u Unit) toBase(v *big.Rat) *big.Rat {
	v = new(big.Rat).Sub(v, new(big.Rat).SetInt64(spellings[u].zero))
	return v.Mul(v, u.factor())
}

// fromBase turns a value in base units into u.
func (u Unit) fromBase(v *big.Rat) *big.Rat {
	v = new(big.Rat).Quo(v, u.factor())
	return v.Add(v, new(big.Rat).SetInt64(spellings[u].zero))
}
