package lift

import "fmt"

// pieces hands every sling and every piece of gear of the plan on with the path of
// its input, in the order of the legs, those above a bar, and the gear on top.
func (p *Plan) pieces(sling func(field string, s Sling), gear func(field string, h Hardware)) {
	for _, part := range []struct {
		field string
		legs  []Leg
	}{{"legs", p.Legs}, {"toplegs", p.TopLegs}} {
		for i, l := range part.legs {
			at := fmt.Sprintf("%s[%d]", part.field, i)
			sling(at+".sling", l.Sling)
			for j, h := range l.Gear {
				gear(fmt.Sprintf("%s.gear[%d]", at, j), h)
			}
		}
	}
	for i, h := range p.TopGear {
		gear(fmt.Sprintf("topgear[%d]", i), h)
	}
}
