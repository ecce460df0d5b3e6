package lift

import (
	"fmt"
	"math"
)

// settled is a plan whose leg lengths are all known.
type settled struct {
	frame frame
	g     vec
	// chosen tells which sloping legs were computed; shorten is by how much each
	// given one has to be shortened to hang level.
	chosen  []bool
	shorten []float64
	gross   float64
	bail    float64
}

// massOf adds up slings and gear.
func massOf(legs []Leg, gear []Hardware) float64 {
	sum := 0.0
	for _, l := range legs {
		sum += float64(l.Sling.Mass) + massOf(nil, l.Gear)
	}
	for _, h := range gear {
		sum += float64(h.Mass)
	}
	return sum
}

// underBar is what the legs or drops carry: the load at its heaviest, with their own
// slings and gear.
func (p *Plan) underBar() float64 {
	return float64(p.Load.Mass+p.Load.MassTolerance) + massOf(p.Legs, nil)
}

// settle fixes what the plan leaves to be chosen.
func (p *Plan) settle() (settled, *Refusal) {
	s := settled{g: vecOf(*p.Load.CoG)}
	var picks []vec
	for _, k := range p.Picks {
		picks = append(picks, vecOf(k.At))
	}
	if no := standing(picks, s.g); no != nil {
		return settled{}, no
	}
	load := p.underBar()
	if p.Rig == Bridle {
		s.gross = load
		b := bridle{picks: picks, names: names(p.Legs), field: "legs", weight: load, sharing: p.Sharing, skew: float64(p.SkewFactor)}
		no := s.lengths(p, &b, p.Legs, s.g, 0)
		s.frame = b
		return s, no
	}
	d := drops{a: picks[0], b: picks[1], load: load, bar: float64(p.Bar.Mass) + massOf(p.TopLegs, nil), barLen: float64(p.Bar.Length)}
	if p.Rig == TwoHooks {
		d.bar, s.gross = 0, load
		h := hooks{drops: d, tilt: p.maxTilt(), turn: p.Turn}
		for i, l := range p.Legs {
			if l.Length <= 0 {
				return settled{}, refuse("legs", "write the length from hook to pick", "leg %q has no length", l.Name)
			}
			h.lengths[i] = float64(l.Length)
		}
		s.frame = h
		return s, nil
	}
	s.gross = load + d.bar
	d.length = float64(p.Legs[0].Length)
	if no := d.check(p); no != nil {
		return settled{}, no
	}
	if p.Rig == Beam {
		b := beam{drops: d, bail: float64(p.Bar.Bail), rise: float64(p.Bar.Rise)}
		if b.bail == 0 {
			b.bail = d.levelBail(s.g)
		}
		s.bail, s.frame = b.bail, b
		return s, nil
	}
	pins := []vec{d.toPins(d.a), d.toPins(d.b)}
	b := bridle{picks: pins, names: names(p.TopLegs), field: "toplegs", weight: s.gross}
	no := s.lengths(p, &b, p.TopLegs, d.toPins(d.common(s.g)), d.length)
	s.frame = spreader{drops: d, top: b}
	return s, no
}

func names(legs []Leg) []string {
	var out []string
	for _, l := range legs {
		out = append(out, l.Name)
	}
	return out
}

// mostSlant is how far drops may stand out of upright because bar and picks
// differ; at 1° a drop carries 0.02 % more.
const mostSlant Degree = 1

// check refuses drops that would not stay upright and equal.
func (d drops) check(p *Plan) *Refusal {
	switch {
	case p.Legs[0].Length <= 0:
		return refuse("legs", "write the length from bar to pick", "drop %q has no length", p.Legs[0].Name)
	case p.Legs[0].Length != p.Legs[1].Length:
		return refuse("legs", "take two equal drops", "the drops are %v and %v", p.Legs[0].Length, p.Legs[1].Length)
	case d.a.z != d.b.z:
		return refuse("picks", "take picks at one level, or a bridle with legs of its own for each", "a bar is computed for picks at one level, and these differ by %s", Mm(math.Abs(d.b.z-d.a.z)).Up())
	case degrees(d.slant()) > mostSlant:
		return refuse("bar.length", "set the pins of the bar to the distance of the picks", "the bar of %v and the picks %v apart leave the drops %s out of upright", p.Bar.Length, Mm(d.span()), degrees(d.slant()).Up())
	}
	return nil
}

// lengths fixes the sloping legs: all given, one given, or none with a hook height
// or an aim. lift is how far the legs' own picks lie above those of b.
func (s *settled) lengths(p *Plan, b *bridle, legs []Leg, g vec, lift float64) *Refusal {
	b.lengths = make([]float64, len(legs))
	s.chosen = make([]bool, len(legs))
	given, one := 0, 0
	for i, l := range legs {
		b.lengths[i] = float64(l.Length)
		s.chosen[i] = l.Length == 0
		if l.Length > 0 {
			given, one = given+1, i
		}
	}
	v, ok := plumb(b.picks, g)
	if !ok {
		return refuse("load.cog", "take picks above the centre of gravity and on both sides of it", "the picks cannot hold the centre of gravity under the hook")
	}
	var z float64
	switch {
	case given > 0 && (p.HookHeight != 0 || p.Aim != 0):
		return refuse("hookheight", "leave out the hook height and the aim, or the lengths", "leg lengths are given, and so is a hook height or an aim")
	case given == len(legs):
		by, short := shorten(b.picks, b.lengths, g)
		if short >= 0 {
			return refuse(fmt.Sprintf("%s[%d]", b.field, short), "use a longer leg", "leg %q of %v is too short to reach over the centre of gravity", b.names[short], Mm(b.lengths[short]))
		}
		s.shorten = by
		return nil
	case given == 1:
		if z, ok = heightFrom(b.picks[one], g, v, b.lengths[one]); !ok {
			return refuse(fmt.Sprintf("%s[%d]", b.field, one), "use a longer leg", "leg %q of %v is too short to reach over the centre of gravity", b.names[one], Mm(b.lengths[one]))
		}
	case given > 1:
		return refuse(b.field, "give all lengths, or one, or none", "%d of %d leg lengths are given", given, len(legs))
	case p.HookHeight != 0 && p.Aim != 0:
		return refuse("aim", "give one of the two", "a hook height of %v and an aim of %v are given", p.HookHeight, p.Aim)
	case p.HookHeight != 0:
		z = float64(p.HookHeight) - lift
	case p.Aim != 0 && len(legs) > 1:
		z = aimHeight(b.picks, g, p.Aim)
	default:
		return refuse("hookheight", "write a hook height, the angle to aim at, or the lengths of the legs in hand", "nothing says how long the legs are")
	}
	for i, k := range b.picks {
		if z <= k.z {
			return refuse("hookheight", "lift the hook, or use longer legs", "the hook at %v does not stand above the pick of leg %q at %v", Mm(z+lift), b.names[i], Mm(k.z+lift))
		}
	}
	hook, ok := levelHook(b.picks, g, z)
	if !ok {
		return refuse("hookheight", "lift the hook", "the hook at %v does not stand above the centre of gravity", Mm(z+lift))
	}
	b.lengths = levelLengths(b.picks, hook)
	return nil
}
