package thread

// Dimensions of a thread and the travel of a nut on it.
//
//	d, P, n   nominal diameter, pitch, number of starts
//	lead      = n P: the travel of one turn. Turns are counted by the lead, never the pitch
//	flat      = lead/6 for a hexagon; lead/k for a nut with k slots
//	d2        pitch diameter  = d - 0.649519 P   (trapezoidal: d - 0.5 P)
//	D1        minor diameter of the nut = d - 1.082532 P   (trapezoidal: d - P)
//	As        stress area, metric  = pi/4 (d - 0.9382 P)²
//	          unified, inches      = 0.7854 (d - 0.9743 P)²
//
// Sources: ISO 68-1 and ISO 724 (profile, d2, D1); ISO 898-1 (metric stress area);
// ASME B1.1 and SAE J429 (unified stress area); ISO 2904 (trapezoidal).
// Valid for basic sizes: no tolerance or plating is taken off. Refused: the stress
// area of a trapezoidal thread, which no bolt standard defines.

import (
	"errors"
	"fmt"
	"math"
	"strconv"
)

// Units of this package.
type (
	Mm    float64 // millimetres
	Mm2   float64 // square millimetres
	Turns float64 // turns of the nut, or of the screw
)

const inch Mm = 25.4

// Inch gives a length in inches.
func (l Mm) Inch() Inch { return Inch(l / inch) }

// Inch is a length in inches, for printing beside a unified thread.
type Inch float64

// Series says which standard pairs the diameter with the pitch.
type Series string

// The series that Parse tells apart.
const (
	MetricCoarse Series = "metric coarse"
	MetricFine   Series = "metric fine"
	UNC          Series = "UNC"
	UNF          Series = "UNF"
	UN           Series = "UN"
	UNS          Series = "UNS"
	Trapezoidal  Series = "trapezoidal"
)

// Thread is one screw thread.
type Thread struct {
	Series   Series
	Diameter Mm     // nominal, the outside of the screw
	Pitch    Mm     // from one ridge to the next
	Starts   int    // 1 for nearly all
	LeftHand bool   // tightened against the clock
	Class    string // tolerance class as written ("6g", "2A"), not interpreted
	Listed   bool   // the standard lists this diameter with this pitch
	size     string // the nominal size as written in a unified designation
}

// String writes the thread the way it is marked on a drawing.
func (t Thread) String() string {
	s := ""
	switch t.Series {
	case MetricCoarse, MetricFine:
		s = "M" + short(t.Diameter)
		switch {
		case t.Starts > 1:
			s += "xPh" + short(t.Lead()) + "P" + short(t.Pitch)
		case t.Series == MetricFine:
			s += "x" + short(t.Pitch)
		}
	case Trapezoidal:
		s = "Tr " + short(t.Diameter) + "x" + short(t.Lead())
		if t.Starts > 1 {
			s += " (P" + short(t.Pitch) + ")"
		}
	default:
		s = t.size + "-" + short(inch/t.Pitch) + " " + string(t.Series)
	}
	if t.Class != "" {
		s += "-" + t.Class
	}
	if t.LeftHand {
		s += " LH"
	}
	return s
}

// short writes a length without trailing zeros.
func short(l Mm) string { return strconv.FormatFloat(math.Round(float64(l)*1e6)/1e6, 'f', -1, 64) }

// Lead is the travel of one turn.
func (t Thread) Lead() Mm { return t.Pitch * Mm(t.Starts) }

// PitchDiameter is the basic pitch diameter d2.
func (t Thread) PitchDiameter() Mm {
	if t.Series == Trapezoidal {
		return t.Diameter - 0.5*t.Pitch
	}
	return t.Diameter - 0.649519*t.Pitch
}

// MinorDiameter is the basic minor diameter D1 of the nut.
func (t Thread) MinorDiameter() Mm {
	if t.Series == Trapezoidal {
		return t.Diameter - t.Pitch
	}
	return t.Diameter - 1.082532*t.Pitch
}

// StressArea is the cross-section a bolt is tightened by, with its working.
type StressArea struct {
	Area     Mm2
	Diameter Mm     // of the circle of that area
	Formula  string // in the unit the standard prints it in
	Source   string
}

// StressArea gives the stress area of a bolt with this thread; a trapezoidal thread
// has none.
func (t Thread) StressArea() (StressArea, error) {
	a := StressArea{}
	switch t.Series {
	case Trapezoidal:
		return a, fmt.Errorf("%s: no standard gives a stress area for a trapezoidal thread; the torque has to come from the maker", t)
	case MetricCoarse, MetricFine:
		a.Diameter = t.Diameter - 0.9382*t.Pitch
		a.Formula, a.Source = "As = pi/4 (d - 0.9382 P)²", "ISO 898-1"
	default:
		a.Diameter = t.Diameter - 0.9743*t.Pitch
		a.Formula, a.Source = "As = 0.7854 (d - 0.9743 P)²", "ASME B1.1"
	}
	a.Area = Mm2(math.Pi / 4 * float64(a.Diameter) * float64(a.Diameter))
	return a, nil
}

// Turns gives the turns that move the nut by a distance; the sign goes with it.
func (t Thread) Turns(travel Mm) Turns { return Turns(travel / t.Lead()) }

// Travel gives how far the nut moves in some turns; the sign goes with it.
func (t Thread) Travel(turns Turns) Mm { return Mm(turns) * t.Lead() }

// PerFlat gives the travel when the nut is turned by one of its flats or slots: 6
// for a hexagon, 4 or 8 for most lock nuts.
func (t Thread) PerFlat(flats int) (Mm, error) {
	if flats < 2 || flats > 72 {
		return 0, errors.New("a nut is turned by 2 to 72 flats or slots: write 6 for a hexagon")
	}
	return t.Lead() / Mm(flats), nil
}
