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
// Above that, chain and the links, rings and hooks of a chain sling carry less of their rating,
// never more: the lowest of EN 818-4 and EN 1677-1 (90 % to 300 °C, 75 % to 400 °C) and of ASME
// B30.9, table 9-1.8.1-1, grade 100, whose rows are the reductions while at a temperature (15 % at
// 400 °F, 25 % at 500 °F, 30 % at 600 °F, 40 % at 700 °F, 50 % at 800 °F), from memory. Between two
// rows the hotter one counts. By the same table chain that was at 500 °F or above does not get all
// of its rating back, and at 1000 °F it is removed from service. A shackle, an eyebolt, rope,
// whatever is woven, and what hangs in line and is no chain (a load cell, a turnbuckle) are not
// given any.
//
// Where what a web or round sling is woven of, or the core of a rope, is not known,
// the narrower band is taken. The maker's own band goes before these, with its whole rating
// within it and none outside.
// Refused: a band written upside down, a maker's band without its source.

// Temperatures are the coldest and the hottest that slings and gear come to: of the
// air, and of what they touch.
type Temperatures struct{ Low, High Celsius }

// A MakersBand is where the maker of a piece lets it carry its whole rating, with the tag or the
// sheet that says so.
type MakersBand struct {
	Temperatures
	Source string
}

// holding is the band of a maker, that of the kind where the maker gives none.
func (m *MakersBand) holding(kind holding) holding {
	if m == nil {
		return kind
	}
	return holding{m.Low, m.High, m.Source, nil}
}

// named is a piece with the source of a maker's band, which the reader cannot look up elsewhere.
func (m *MakersBand) named(piece string) string {
	if m == nil {
		return piece
	}
	return piece + " (" + m.Source + ")"
}

// band refuses a maker's band that is no band, or comes from nowhere.
func (c *checker) band(field, name string, m *MakersBand) {
	switch {
	case m == nil:
	case !finite(float64(m.Low), float64(m.High)) || m.Low > m.High:
		c.refuse(field, "write the coldest first, then the hottest", "%q is said to hold its rating from %v to %v", name, m.Low, m.High)
	case m.High > MostHot:
		c.refuse(field, "chain that was so hot is taken out of service; write what the maker's sheet says", "%q is said to hold its rating to %v, and at 538 °C (1000 °F) and above chain is done with", name, m.High)
	case m.Source == "":
		c.refuse(field, "name the tag or the maker's sheet", "the temperatures at which %q holds its rating have no source", name)
	}
}

// A HeatBand is the band within which every piece of a lift holds its rating.
type HeatBand struct {
	Low, High Celsius
	// LowPiece and HighPiece are the pieces that set the two ends.
	LowPiece, HighPiece string
	// Spent says that chain comes to 260 °C (500 °F) or more, after which it does not get all of its
	// rating back (ASME B30.9, table 9-1.8.1-1).
	Spent bool
}

// A holding is the band of one kind of piece with its source.
type holding struct {
	low, high Celsius
	source    string
	hot       []hotRung // what is left of the rating above high, from the coolest
}

// A hotRung is the share of the rating that is left up to a temperature.
type hotRung struct {
	upTo Celsius
	left Ratio
}

const hotSource = "EN 818-4, EN 1677 and ASME B30.9 table 9-1.8.1-1, the lowest, from memory"

// MostHot is where chain is taken out of service for good, 1000 °F by ASME B30.9, table 9-1.8.1-1; no
// maker's band goes above it.
var MostHot = fahrenheit(1000)

// most is the hottest that a piece may get, with less than its rating.
func (h holding) most() Celsius {
	if n := len(h.hot); n > 0 {
		return h.hot[n-1].upTo
	}
	return h.high
}

// heated gives what is left of the rating of a piece as hot as the gear comes to; nothing where it
// holds all of it, and where a caution stops the lift.
func (a *account) heated(h holding) []Reduction {
	if t := a.p.Temperatures; t != nil && t.High > h.high {
		for _, r := range h.hot {
			if t.High <= r.upTo {
				return []Reduction{{say("hot, at %v", t.High), r.left, hotSource}}
			}
		}
	}
	return nil
}

// SpentFrom is where the loss of chain that was hot begins to stay, 500 °F.
var SpentFrom = fahrenheit(500)

func fahrenheit(f float64) Celsius { return Celsius((f - 32) / 1.8) }

var (
	slingHolds = map[Fibre]holding{
		WireRope:    {-40, fahrenheit(200), "EN 13414-1 and 29 CFR 1910.184(f) for a fibre core, from memory", nil},
		Chain:       {-40, 200, "EN 818-4, from memory", hotChain},
		Web:         polypropylene,
		RoundSling:  polypropylene,
		NaturalRope: {fahrenheit(-20), fahrenheit(180), "WAC 296-78-755(2)", nil},
	}
	polypropylene = holding{-40, 80, "EN 1492-1, polypropylene", nil}
	polyester     = holding{-40, 100, "EN 1492-1, polyester and polyamide", nil}
	eyeboltHolds  = holding{-20, 200, "DIN 580:2003-08, clause 1", nil}
	shackleHolds  = holding{-20, 200, "EN 13889 and EN 1677, from memory", nil}
	chainGear     = holding{-20, 200, "EN 13889 and EN 1677, from memory", hotChain}
	hotChain      = []hotRung{{fahrenheit(500), 0.75}, {fahrenheit(600), 0.7}, {fahrenheit(700), 0.6}, {400, 0.5}}
)

// holds gives the band of a sling.
func (s Sling) holds() holding {
	if s.Polyester && (s.Fibre == Web || s.Fibre == RoundSling) {
		return s.Holds.holding(polyester)
	}
	return s.Holds.holding(slingHolds[s.Fibre])
}

// holds gives the band of a piece of gear.
func (h Hardware) holds() holding {
	kind := shackleHolds
	switch {
	case h.Kind == ShoulderEyebolt || h.Kind == PlainEyebolt:
		kind = eyeboltHolds
	case h.OfChain && (h.Kind == InLine || h.Kind == Hook):
		kind = chainGear
	}
	return h.Holds.holding(kind)
}

func (t Temperatures) check(c *checker) {
	if !finite(float64(t.Low), float64(t.High)) || t.Low > t.High {
		c.refuse("temperatures", "write the coldest first, then the hottest", "the slings are said to come to %v to %v", t.Low, t.High)
	}
}

// heat finds the band of the whole lift, and stops one whose slings or gear come to
// temperatures outside theirs.
func (a *account) heat() {
	band := HeatBand{Low: -273, High: 2000}
	look := func(field, name string, by *MakersBand, h holding) {
		if h.low > band.Low {
			band.Low, band.LowPiece = h.low, by.named(name)
		}
		if h.high < band.High {
			band.High, band.HighPiece = h.high, by.named(name)
		}
		if t := a.p.Temperatures; t != nil && (t.Low < h.low || t.High > h.most()) {
			a.r.Cautions = append(a.r.Cautions, warn(TooHotOrCold, field, "use gear that is made for it, let the load cool, or keep the sling off what is hot", true,
				say("%s comes to %v to %v and holds its rating from %s to %s (%s)", name, t.Low, t.High, h.low.Up(), h.high.Down(), h.source)))
		}
	}
	a.p.pieces(func(field string, s Sling) {
		band.Spent = band.Spent || s.Fibre == Chain && a.p.Temperatures != nil && a.p.Temperatures.High >= SpentFrom
		look(field, s.Name, s.Holds, s.holds())
	}, func(field string, h Hardware) { look(field, h.Name, h.Holds, h.holds()) })
	a.r.Heat = band
}
