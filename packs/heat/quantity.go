package heat

// Mm is a length in millimetres.
type Mm float64

// Celsius is a temperature in degrees Celsius, never a difference.
type Celsius float64

// KelvinRise is a difference of two temperatures, in kelvin.
type KelvinRise float64

// Watt is a flow of heat.
type Watt float64

// Second is a time from the start of heating, or a length of time.
type Second float64

// Kg is a mass in kilograms.
type Kg float64

// Joule is an amount of heat.
type Joule float64

// MPa is a stress in megapascal (N/mm²); tension is positive.
type MPa float64

// Newton is a force.
type Newton float64

// Conductance is heat through a face, in W/m²K: a film of air, or a joint.
type Conductance float64

// PerKelvin is a coefficient of linear expansion, in 1/K: steel is about 12e-6.
type PerKelvin float64

// KgPerM3 is a density.
type KgPerM3 float64

// M3 is a volume in cubic metres.
type M3 float64

// Litre is a volume of liquid.
type Litre float64

// Percent is a share of a volume in hundredths.
type Percent float64

// Number is a plain figure in a line of working; its unit stands beside it.
type Number float64

// sizedAt is the temperature at which sizes are stated (ISO 1).
const sizedAt Celsius = 20

// over gives the rise from one temperature to another.
func (c Celsius) over(from Celsius) KelvinRise { return KelvinRise(c - from) }

// metres turns a length into the unit of the equations.
func (m Mm) metres() float64 { return float64(m) / 1000 }
