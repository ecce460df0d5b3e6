package lift

// What is computed: what a sling may pull along its leg in its hitch.
// Symbols: WLL rating of the sling, straight; gamma half the angle between the
// two parts of a basket; D diameter it bears on, d rope diameter.
//
//	straight  WLL
//	choker    WLL × hitch factor × choke-angle step
//	basket    US: 2 WLL cos(gamma) × bend efficiency (= 2 WLL sin of the parts' angle)
//	          EN: WLL × 2 upright, 1.4 to gamma 45°, 1.0 to 60°, × bend efficiency
//	tangents  sin(gamma) = (D/2) / reach, for a basket round a body under a hook
//	bend      e = 1 - 0.5/sqrt(D/d)
//	parts     0.5/q, q the share of the part that carries more: 0.55 where the leg
//	          leans by more than 5°, as the sling does not slip round and the parts
//	          pull unlike; 0.675 where the load is turned in the basket
//
// The lean of the leg is in its tension already and never taken twice; an EN band
// factor is never multiplied by the sine of the angle again.
// Sources stand beside the tables below.
// Refused: an unrated sling; a wire rope sling rated for more than its rope can be; a choke without its angle; a basket without the
// angle of its parts or the body it goes round; rope on a body thinner than
// itself; basket parts flatter than 30°; natural fibre in an EN choke.

import "math"

// A Fibre is what a sling is made of: it decides hitch factors and whether a bend costs strength.
type Fibre int

// The kinds of sling. The zero Fibre is refused.
const (
	WireRope Fibre = iota + 1
	Chain
	Web
	RoundSling
	NaturalRope
)

// A Hitch is how the sling takes hold.
type Hitch int

// The hitches. The zero Hitch is refused.
const (
	Straight Hitch = iota + 1
	Choker
	Basket
)

// A Sling is one leg's sling as its tag gives it.
type Sling struct {
	Name string
	// Rated working load of the sling used straight.
	Rated Kg
	Basis Basis
	Fibre Fibre
	Hitch Hitch
	// ChokeAngle is the angle in the choke, over 120 when it hangs free (about 135).
	ChokeAngle Degree
	// Spread is the angle between the two parts of a basket; 0 computes it from
	// Around and the leg's length, and Parallel says that they hang side by side.
	Spread   Degree
	Parallel bool
	// Around is the diameter the basket bears on; Rope the diameter of wire rope.
	Around, Rope Mm
	// HeavierPart is the share of the part of a basket that carries more; 0 where both
	// are alike. Turns says that the load is turned in the basket while it hangs.
	HeavierPart Ratio
	Turns       bool
	// Polyester tells that a Web or RoundSling is of polyester or polyamide; it
	// matters for its heat alone.
	Polyester bool
	// Holds is the maker's own band of temperatures, nil for that of the kind.
	Holds *MakersBand
	// HandTucked wire rope is rated on a wider bend already.
	HandTucked bool
	Mass       Kg
}

// A Reduction is one factor on a rating, with its source.
type Reduction struct {
	why    phrase
	Factor Ratio
	Source string
}

// Because tells why a rating is reduced, or raised.
func (r Reduction) Because(u Units) string { return r.why.in(u) }

const (
	chokeSource    = "angle-of-choke table, sling-care leaflet AWS0806, note (1)"
	basketUS       = "exact statics; agrees with 29 CFR 1918 App. II table 2"
	enWeb          = "EN 1492 mode factors, sling maker's load-factor table"
	enRope         = "EN 13414-1:2003 table 4"
	bendSource     = "GL Noble Denton 0027/ND rev 11, 7.8.1 (after IMCA M179)"
	chokeSourceNat = "29 CFR 1918 App. II table 2 (900/1800)"
)

// A step is one rung of a printed ladder: the factor up to and including an angle.
type step struct {
	upTo   Degree
	factor Ratio
}

// rung takes the next worse step, never a value between two.
func rung(ladder []step, angle Degree) (Ratio, bool) {
	for _, s := range ladder {
		if angle <= s.upTo+angleSlack {
			return s.factor, true
		}
	}
	return 0, false
}

// angleSlack keeps a computed angle of exactly 30° from falling over by rounding.
const angleSlack Degree = 1e-9

// chokeFactor: the printed ladder is by the angle falling, 100 % over 120°, 87 %
// from 90°, 74 % from 60°, 62 % from 30°, 49 % below; the edge goes to the worse.
func chokeFactor(angle Degree) Ratio {
	switch {
	case angle > 120:
		return 1
	case angle >= 90:
		return 0.87
	case angle >= 60:
		return 0.74
	case angle >= 30:
		return 0.62
	default:
		return 0.49
	}
}

// hitchChoker gives the factor of a choker on a straight rating.
func hitchChoker(f Fibre, b Basis) (Reduction, bool) {
	switch {
	case b == EN && (f == Web || f == RoundSling):
		return Reduction{say("choked"), 0.8, enWeb}, true
	case b == EN && f == WireRope:
		return Reduction{say("choked"), 0.8, enRope + ", endless in choke 1.6 on two parts"}, true
	case b == EN && f == Chain:
		return Reduction{say("choked"), 0.8, "EN 818-4, from memory"}, true
	case b == EN:
		return Reduction{}, false
	case f == NaturalRope:
		return Reduction{say("choked"), 0.5, chokeSourceNat}, true
	case f == WireRope:
		return Reduction{say("choked"), 0.75, "US Navy training manual 14081, choker paragraph"}, true
	default:
		return Reduction{say("choked"), 0.8, "ASME B30.9, from memory"}, true
	}
}

// bendEfficiency is what a bend over D leaves of a rope of diameter d.
func bendEfficiency(bend Ratio) Ratio { return 1 - 0.5/Ratio(math.Sqrt(float64(bend))) }

// ropeRating is about what wire rope of a diameter may carry straight: its least
// breaking force over the design factor of slings. K is 0.356 and the ferrule leaves
// 0.9 of it, grade 1770, EN 13414-1 with EN 12385-4 (K and the factor from memory).
// Higher grades carry more; over half as much again is no rope of that size.
func ropeRating(rope Mm) Kg {
	const k, grade, ferrule = 0.356, 1770, 0.9 // -, N/mm², -
	return Kg(k * float64(rope) * float64(rope) * grade * ferrule / slingDesignFactor / standardGravity)
}

const (
	slingDesignFactor       = 5 // DOE-STD-1090-96, 11.3.1.3
	mostOverRope      Ratio = 1.5
)

// enoughBend: US tables for wire rope assume this D/d already (The Rigger's
// Resource page); at it and above nothing is taken off.
func enoughBend(handTucked bool) Ratio {
	if handTucked {
		return 15
	}
	return 25
}

// leaningPart and turningPart: GL Noble Denton 0027/ND rev 11, 5.8, a sling of two
// parts over a hook or pin 45 : 55, sliding to upend 32.5 : 67.5.
const (
	leaningPart Ratio = 0.55
	turningPart Ratio = 0.675
	partsSource       = "GL Noble Denton 0027/ND rev 11, 5.8"
)

// heavier is the share of the part of a basket that carries more, with the leg that
// far out of upright.
func (s Sling) heavier(lean Degree) Ratio {
	q := max(s.HeavierPart, 0.5)
	if lean > upright+angleSlack {
		q = max(q, leaningPart)
	}
	if s.Turns {
		q = max(q, turningPart)
	}
	return q
}

// reductions lists every factor on the sling's rating. reach is the way from the
// hook to the axis of what a basket goes round, mm; lean that of the leg out of
// upright.
func (s Sling) reductions(field string, basis Basis, reach float64, lean Degree) ([]Reduction, *Refusal) {
	switch s.Hitch {
	case Straight:
		return nil, nil
	case Choker:
		if s.ChokeAngle <= 0 || s.ChokeAngle > 180 || !finite(float64(s.ChokeAngle)) {
			return nil, refuse(field+".chokeangle", "measure the angle in the choke", "the angle in the choke of %q is %g°", s.Name, float64(s.ChokeAngle))
		}
		r, ok := hitchChoker(s.Fibre, basis)
		if !ok {
			return nil, refuse(field+".hitch", "use another sling or another hitch", "no EN figure is at hand for natural fibre rope in a choke")
		}
		return []Reduction{r, {say("angle in the choke"), chokeFactor(s.ChokeAngle), chokeSource}}, nil
	case Basket:
		rs, no := s.basket(field, basis, reach)
		if q := s.heavier(lean); no == nil && q > 0.5 {
			rs = append(rs, Reduction{say("unlike pull in the two parts of the basket, %s in one", q.Percent()), 0.5 / q, partsSource})
		}
		return rs, no
	}
	return nil, refuse(field+".hitch", "write straight, choker or basket", "sling %q has no hitch", s.Name)
}

func (s Sling) basket(field string, basis Basis, reach float64) ([]Reduction, *Refusal) {
	half, no := s.halfSpread(field, reach)
	if no != nil {
		return nil, no
	}
	if half > 60+angleSlack {
		return nil, refuse(field+".spread", "use a longer sling", "the parts of basket %q stand %s from horizontal, under 30°", s.Name, (90 - half).Down())
	}
	rs := []Reduction{{say("basket, two parts"), 2 * Ratio(math.Cos(radians(half))), basketUS}}
	if basis == EN {
		rs[0].Source = enWeb
		switch {
		case half <= upright+angleSlack:
			rs[0].Factor = 2
		case half <= 45+angleSlack:
			rs[0].Factor = 1.4
		default:
			rs[0].Factor = 1
		}
	}
	if s.Fibre != WireRope {
		return rs, nil
	}
	if s.Around <= 0 || s.Rope <= 0 {
		return nil, refuse(field+".around", "write the diameter it bears on and the rope's own", "the bend of wire rope basket %q is not given", s.Name)
	}
	bend := Ratio(s.Around / s.Rope)
	if bend < 1 {
		return nil, refuse(field+".around", "pad it out, or use another sling", "wire rope of %v bears on only %v", s.Rope, s.Around)
	}
	if basis == US && bend >= enoughBend(s.HandTucked) {
		return rs, nil
	}
	// Under the US threshold the whole loss is taken: on the safe side of the
	// tables, whose straight rating may hold part of it.
	return append(rs, Reduction{say("bend of the rope"), bendEfficiency(bend), bendSource}), nil
}

// halfSpread gives half the angle between the parts of a basket.
func (s Sling) halfSpread(field string, reach float64) (Degree, *Refusal) {
	switch {
	case s.Parallel && s.Spread != 0:
		return 0, refuse(field+".spread", "leave one of the two out", "basket %q is said to have parallel parts and a spread of %v", s.Name, s.Spread)
	case s.Parallel:
		return 0, nil
	case s.Spread < 0 || s.Spread >= 180 || !finite(float64(s.Spread)):
		return 0, refuse(field+".spread", "write the angle between the two parts", "the parts of basket %q stand %g° apart", s.Name, float64(s.Spread))
	case s.Spread > 0:
		return s.Spread / 2, nil
	case s.Around <= 0:
		return 0, refuse(field+".spread", "write the angle between its parts, or the diameter it goes round", "basket %q has no spread", s.Name)
	case reach <= float64(s.Around)/2:
		return 0, refuse(field+".around", "use a longer sling, or look at the diameter", "the hook would stand inside the %v that basket %q goes round", s.Around, s.Name)
	}
	return degrees(math.Asin(float64(s.Around) / 2 / reach)), nil
}
