package lift

// What is checked: the temperatures at which slings and gear hold their rating.
//
//	polyester and polyamide slings   -40 to 100 °C   EN 1492-1
//	polypropylene slings             -40 to 80 °C    EN 1492-1
//	fibre rope                       -20 to 180 °F   WAC 296-78-755(2)
//	collar eyebolt                   -20 to 200 °C   DIN 580:2003-08, clause 1
//	wire rope, fibre core            -40 °C to 200 °F  EN 13414-1 and 29 CFR 1910.184(f), from memory
//	chain                            -40 to 200 °C   EN 818-4, from memory
//	shackle, link, hook              -20 to 200 °C   EN 13889 and EN 1677, from memory
//
// Where what a web or round sling is woven of, or the core of a rope, is not known,
// the narrower band is taken. The maker's own band goes before these.
// Refused: a band written upside down.

import "fmt"

// Temperatures are the coldest and the hottest that slings and gear come to: of the
// air, and of what they touch.
type Temperatures struct{ Low, High Celsius }

// A HeatBand is the band within which every piece of a lift holds its rating.
type HeatBand struct {
	Low, High Celsius
	// LowPiece and HighPiece are the pieces that set the two ends.
	LowPiece, HighPiece string
}

// A holding is the band of one kind of piece with its source.
type holding struct {
	low, high Celsius
	source    string
}

func fahrenheit(f float64) Celsius { return Celsius((f - 32) / 1.8) }

var (
	slingHolds = map[Fibre]holding{
		WireRope:    {-40, fahrenheit(200), "EN 13414-1 and 29 CFR 1910.184(f) for a fibre core, from memory"},
		Chain:       {-40, 200, "EN 818-4, from memory"},
		Web:         polypropylene,
		RoundSling:  polypropylene,
		NaturalRope: {fahrenheit(-20), fahrenheit(180), "WAC 296-78-755(2)"},
	}
	polypropylene = holding{-40, 80, "EN 1492-1, polypropylene"}
	polyester     = holding{-40, 100, "EN 1492-1, polyester and polyamide"}
	eyeboltHolds  = holding{-20, 200, "DIN 580:2003-08, clause 1"}
	gearHolds     = holding{-20, 200, "EN 13889 and EN 1677, from memory"}
)

// holds gives the band of a sling.
func (s Sling) holds() holding {
	if s.Polyester && (s.Fibre == Web || s.Fibre == RoundSling) {
		return polyester
	}
	return slingHolds[s.Fibre]
}

// holds gives the band of a piece of gear.
func (h Hardware) holds() holding {
	if h.Kind == ShoulderEyebolt || h.Kind == PlainEyebolt {
		return eyeboltHolds
	}
	return gearHolds
}

// String gives the temperature to the nearest degree.
func (c Celsius) String() string { return fmt.Sprintf("%.0f °C", float64(c)) }

func (t Temperatures) check(c *checker) {
	if !finite(float64(t.Low), float64(t.High)) || t.Low > t.High {
		c.refuse("temperatures", "write the coldest first, then the hottest", "the slings are said to come to %g to %g °C", float64(t.Low), float64(t.High))
	}
}

// heat finds the band of the whole lift, and stops one whose slings or gear come to
// temperatures outside theirs.
func (a *account) heat() {
	band := HeatBand{Low: -273, High: 2000}
	look := func(field, name string, h holding) {
		if h.low > band.Low {
			band.Low, band.LowPiece = h.low, name
		}
		if h.high < band.High {
			band.High, band.HighPiece = h.high, name
		}
		if t := a.p.Temperatures; t != nil && (t.Low < h.low || t.High > h.high) {
			a.r.Cautions = append(a.r.Cautions, Caution{Code: TooHotOrCold, Field: field, Stop: true, Help: "use gear that is made for it, let the load cool, or keep the sling off what is hot",
				Message: fmt.Sprintf("%s comes to %v to %v and holds its rating from %s to %s (%s)", name, t.Low, t.High, h.low.up(), h.high.down(), h.source)})
		}
	}
	a.p.pieces(func(field string, s Sling) { look(field, s.Name, s.holds()) }, func(field string, h Hardware) { look(field, h.Name, h.holds()) })
	a.r.Heat = band
}
