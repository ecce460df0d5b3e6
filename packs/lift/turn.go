package lift

// What is computed: a load that two hooks turn between lying and upright.
// Symbols: A the pick that comes uppermost, B the other, S their distance; W load; theta how
// steep the line from B to A stands; b how far along that line the centre of gravity lies from
// B, q how deep it hangs square to it.
//
//	V_A = W (b + q tan theta) / S, V_B = W - V_A      moments about the other hook
//	leg B is slack from tan theta = (S - b) / q on, and A carries all of W
//	lean      between the load's own upright and the line from its centre of gravity to A
//
// Source: exact statics; the same as GL Noble Denton 0027/ND rev 11, appendix B.1.2, for two
// cranes with one end high.
// Validity: both legs plumb all the way, each hook over its pick; the load hangs free.
// What one hook carries grows all the way and the other's falls, so that A is counted with
// all of W and B with what it carries as the load lies.
// Refused: points that are not given as the load lies, a turn without the heights of both hooks.

import (
	"fmt"
	"math"
	"slices"
)

// A Turn is the turning of a load on two hooks between lying, as its points are given, and
// upright.
type Turn struct {
	// Upper is the index of the pick that is uppermost when the load stands upright; -1
	// where that is not known.
	Upper int
}

// mostSlope is how steep the line of the picks may stand in a load that is said to lie.
const mostSlope Degree = 45

// turning refuses a turn that cannot be followed.
func (c *checker) turning() {
	p := c.p
	switch t := p.Turn; {
	case t == nil:
		return
	case p.barred():
		return // threePoints tells it
	case p.Rig != TwoHooks:
		c.refuse("turn", "leave it out, or call the rig two hooks", "a load is turned between lying and upright, and not on two hooks")
		return
	case t.Upper < 0 || t.Upper >= len(p.Picks):
		c.refuse("turn.upper", "name the leg from which it hangs upright", "nothing says from which leg the load hangs when it is upright")
		return
	}
	if p.Headroom == nil {
		c.refuse("headroom", "write size:, pass-over: and stack:, and high-hook: at both cranes", "a load is turned, and nothing says how high both hooks go")
	}
	if len(p.Picks) != 2 {
		return
	}
	e := vecOf(p.Picks[1].At).sub(vecOf(p.Picks[0].At))
	if steep := degrees(math.Atan2(math.Abs(e.z), math.Hypot(e.x, e.y))); steep > mostSlope {
		c.refuse("picks", "write x, y and z as the load lies", "the line of the picks stands %s steep, and the points of a load that is turned are those of the load as it lies", steep.Up())
	}
}

// barred reports whether a load is held by a lifting bar.
func (p *Plan) barred() bool { return p.Rig == Spreader || p.Rig == Beam || p.Bar != Bar{} }

// threePoints refuses a load that hangs from a bar by two trunnions, and at its other end from a
// second hook or from what it turns on, and reports whether it did: what else is said of the rig would send
// from one to the other.
func (c *checker) threePoints() bool {
	p := c.p
	second := p.SecondCrane != Crane{} || p.Rig == TwoHooks
	switch {
	case !p.barred():
		return false
	case p.Turn != nil:
		c.refuse("turn", "leave upended-on: and second-crane: out here, so that the lift is that of the load as it lies on two legs, and have whoever signs the lifting plan work the turn out",
			"a load turned under a lifting bar hangs from three points, the two under the bar and the one at its other end, and how they share while it turns hangs on how freely both turn: that is not worked out here")
	case second:
		field := "bar"
		if p.Rig != TwoHooks {
			field = "secondcrane"
		}
		c.refuse(field, "hang it from the bar alone, or from one leg at each hook without a bar; else have whoever signs the lifting plan work it out",
			"a load under a lifting bar and a second hook hangs from three points, and how they share hangs on how level both hooks are kept: that is not worked out here")
	default:
		return false
	}
	return true
}

// inBaskets counts every basket of a load that is turned as one in which it turns.
func (p *Plan) inBaskets() {
	if p.Turn == nil {
		return
	}
	p.Legs = slices.Clone(p.Legs)
	for i := range p.Legs {
		p.Legs[i].Sling.Turns = p.Legs[i].Sling.Hitch == Basket
	}
}

// upend is a load on its way, for one place of the centre of gravity.
type upend struct {
	upper, g vec
	e, down  vec // along the line of the picks to the upper one, and square to it to the centre
	s, b, q  float64
	lying    float64 // slope of the line as the load lies, radians
}

func newUpend(upper, lower, g vec) upend {
	along := upper.sub(lower)
	u := upend{upper: upper, g: g, e: along.unit(), s: along.size()}
	u.b = g.sub(lower).dot(u.e)
	off := g.sub(lower).across(u.e)
	u.q, u.down = off.size(), zUp.across(u.e).unit().by(-1)
	if u.q < lengthSlack {
		u.q = 0
	} else {
		u.down = off.unit()
	}
	u.lying = math.Asin(u.e.z)
	return u
}

// up is the load's own upright, turned by that much from lying, and ahead the way that the
// upper pick goes.
func (u upend) up(turn float64) (up, ahead vec) {
	sin, cos := math.Sincos(u.lying + turn)
	return u.e.by(sin).sub(u.down.by(cos)), u.e.by(cos).add(u.down.by(sin))
}

// free is how far it is turned, in radians, when all of it hangs from the upper pick.
func (u upend) free() float64 { return math.Atan2(u.s-u.b, u.q) - u.lying }

// share is what part of the load the upper pick carries.
func (u upend) share(turn float64) float64 {
	switch {
	case u.q == 0 && turn <= u.free():
		return u.b / u.s // the same until the line of the picks is plumb
	case turn >= u.free():
		return 1
	}
	return min((u.b+u.q*math.Tan(u.lying+turn))/u.s, 1)
}

// upends are the ways the load turns with its centre of gravity as given, at each corner of
// its tolerance, and below each corner's place on the line of the picks; none for a load that
// is not turned. The upper hook carries most with the centre of gravity at a corner, the lower
// one with as little of it to the side of the line as there is: none is counted.
func (a *account) upends() []upend {
	t := a.p.Turn
	if t == nil {
		return nil
	}
	upper, lower := vecOf(a.p.Picks[t.Upper].At), vecOf(a.p.Picks[1-t.Upper].At)
	var out []upend
	for _, g := range corners(a.s.g, a.p.Load.CoGTolerance) {
		out = append(out, newUpend(upper, lower, g))
	}
	for _, u := range slices.Clone(out[1:]) {
		if in := u.inLine(); in.sub(u.g).size() > lengthSlack {
			out = append(out, newUpend(upper, lower, in))
		}
	}
	return out
}

// inLine is the place of the centre of gravity with nothing of it to the side of the plumb
// plane through both picks.
func (u upend) inLine() vec {
	side := zUp.cross(u.e).unit()
	return u.g.sub(side.by(u.g.sub(u.upper).dot(side)))
}

// pulls are the ways that a leg pulls within the turn, a degree apart.
func (a *account) pulls() []vec {
	var out []vec
	for _, u := range a.upends() {
		free := u.free()
		for turn := 0.0; turn < free; turn += radians(1) {
			up, _ := u.up(turn)
			out = append(out, up)
		}
		up, _ := u.up(free)
		out = append(out, up)
	}
	return out
}

// turnedLines are leg i as it pulls within the turn.
func (a *account) turnedLines(l line) []line {
	var out []line
	for _, up := range a.pulls() {
		l.top = l.bottom.add(up.by(l.top.sub(l.bottom).size()))
		out = append(out, l)
	}
	return out
}

// flattestPull is how far from its own level a load that is turned is pulled, the least.
func (a *account) flattestPull() Degree {
	least := Degree(90)
	for _, up := range a.pulls() {
		least = min(least, 90-angleBetween(up, zUp))
	}
	return max(least, 0)
}

// overLowestTurned is how high a pick stands over the lowest point of the load, the most of
// its turn.
func (a *account) overLowestTurned(pick vec) float64 {
	most := math.Inf(-1)
	points := a.lowPoints()
	for _, o := range a.p.Load.Outline {
		points = append(points, vecOf(o))
	}
	for _, u := range a.upends() {
		up, ahead := u.up(0)
		for _, e := range points {
			d := pick.sub(e)
			most = max(most, mostOfTurn(d.dot(up), d.dot(ahead), u.free()))
		}
	}
	return most
}

// mostOfTurn is the most of b cos x + a sin x for x from 0 to an end.
func mostOfTurn(b, a, end float64) float64 {
	if x := math.Atan2(a, b); x > 0 && x < end {
		return math.Hypot(a, b)
	}
	sin, cos := math.Sincos(end)
	return max(b, b*cos+a*sin)
}

// goesRound are the fields of the legs that go round the load and can slide along it.
func (a *account) goesRound() (fields, names []string) {
	for i, l := range a.p.Legs {
		if l.Sling.Hitch != Straight {
			fields, names = append(fields, fmt.Sprintf("legs[%d]", i)), append(names, l.Name)
		}
	}
	return fields, names
}
