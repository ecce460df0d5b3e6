package lift

import "fmt"

// basis refuses gear of the other family.
func (c *checker) basis(field, name string, b Basis) {
	if b != AsPlan && b != c.p.Basis {
		c.refuse(field, "take gear of one basis, or rate this piece anew by the plan's", "%q is rated by another basis than the plan", name)
	}
}

func (c *checker) legs(field string, legs []Leg) {
	for i, l := range legs {
		at := fmt.Sprintf("%s[%d]", field, i)
		c.notBelow(at+".length", "the length of leg "+l.Name, "mm", float64(l.Length))
		s := l.Sling
		c.positive(at+".sling.rated", fmt.Sprintf("the rated load of sling %q", s.Name), "kg", float64(s.Rated))
		c.basis(at+".sling.basis", s.Name, s.Basis)
		c.notBelow(at+".sling.mass", "the mass of sling "+s.Name, "kg", float64(s.Mass))
		c.notBelow(at+".sling.around", "the diameter that the sling bears on", "mm", float64(s.Around))
		c.notBelow(at+".sling.rope", "the rope diameter", "mm", float64(s.Rope))
		if most := ropeRating(s.Rope) * Kg(mostOverRope); s.Fibre == WireRope && s.Rope > 0 && s.Rated > most {
			c.refuse(at+".sling.rated", "look at the tag of the sling, and measure its rope", "sling %q is rated %s, and wire rope of %v carries no more than about %s", s.Name, s.Rated.Down(), s.Rope, most.Down())
		}
		c.band(at+".sling.holds", s.Name, s.Holds)
		if s.Fibre < WireRope || s.Fibre > NaturalRope {
			c.refuse(at+".sling.fibre", "write wire rope, chain, web, round sling or natural rope", "what sling %q is made of is not given", s.Name)
		}
		if s.Hitch < Straight || s.Hitch > Basket {
			c.refuse(at+".sling.hitch", "write straight, choker or basket", "how sling %q takes hold is not given", s.Name)
		}
		if s.Hitch != Choker && s.ChokeAngle != 0 {
			c.refuse(at+".sling.chokeangle", "leave it out, or call it a choker", "sling %q is not choked and has an angle of choke", s.Name)
		}
		if s.Hitch != Basket && (s.HeavierPart != 0 || s.Turns) {
			c.refuse(at+".sling.heavierpart", "leave it out, or call it a basket", "sling %q is no basket and has a heavier part", s.Name)
		}
		if !finite(float64(s.HeavierPart)) || s.HeavierPart != 0 && (s.HeavierPart < 0.5 || s.HeavierPart >= 1) {
			c.refuse(at+".sling.heavierpart", "write the share of the part that carries more, half or over", "the heavier part of basket %q carries %g of it", s.Name, float64(s.HeavierPart))
		}
		if s.Hitch != Basket && (s.Spread != 0 || s.Parallel) {
			c.refuse(at+".sling.spread", "leave it out, or call it a basket", "sling %q is no basket and has a spread", s.Name)
		}
		for j, h := range l.Gear {
			c.hardware(fmt.Sprintf("%s.gear[%d]", at, j), h)
		}
	}
}

func (c *checker) hardware(field string, h Hardware) {
	c.positive(field+".rated", fmt.Sprintf("the rated load of %q", h.Name), "kg", float64(h.Rated))
	c.basis(field+".basis", h.Name, h.Basis)
	c.notBelow(field+".mass", "the mass of "+h.Name, "kg", float64(h.Mass))
	c.band(field+".holds", h.Name, h.Holds)
	if h.Kind != Shackle && h.OffLine != 0 {
		c.refuse(field+".offline", "leave it out; an eyebolt's angle is computed, other gear is pulled in line", "%q is no shackle and is pulled off line", h.Name)
	}
	if h.Kind < InLine || h.Kind > Hook {
		c.refuse(field+".kind", "write in line, shackle, shoulder eyebolt, plain eyebolt or hook", "%q is no known kind of gear", h.Name)
	}
	if h.Kind != Hook && h.Seat != 0 {
		c.refuse(field+".seat", "leave it out, or call it a hook", "%q is no hook and has a seat", h.Name)
	}
	c.notBelow(field+".thread", "the thread of "+h.Name, "mm", float64(h.Thread))
}
