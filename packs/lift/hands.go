package lift

// What is computed: what each of one to three people carries who lift a load by
// hand, from where they take hold and where its centre of gravity lies.
// Symbols: W load with its tolerance, a and b plan distances of the centre of
// gravity from two grips A and B along their line, s = a + b.
//
//	two people    V_A = W b/s, V_B = W a/s
//	three people  sum V = W, sum V x = 0, sum V y = 0 about the centre of gravity
//	team          what a team may lift = share × sum of what each may carry,
//	              2/3 for two people, 1/2 for three
//
// Sources: exact statics; the team's share is an approximate guide in the UK Health
// and Safety Executive's L23, Manual handling, guidance on regulations, para. 120.
// Validity: the load is rigid and held level, each pulls straight up.
// Refused: more than three people, whose shares statics cannot tell; grips between
// which the centre of gravity does not lie; three in one line, whose shares statics
// cannot tell either; a share over what one may carry.

import (
	"fmt"
	"math"
)

// A HandPlan is a load that people lift without a crane.
type HandPlan struct {
	Load Load
	// Grips are where each person takes hold: one to three.
	Grips []Pick
	// MayCarry is the most that one person may carry, a rule of the site.
	MayCarry Kg
	// DecidedBy and Reason are given where a person has decided that the team may
	// lift more than the published share of what each may carry.
	DecidedBy, Reason string
}

// A HandResult is a computed lift by hand.
type HandResult struct {
	// Shares go with the grips: with the centre of gravity as given, and the most
	// within the tolerances.
	Shares, Most []Kg
	// Team is what the whole team may lift by the published guide.
	Team     Kg
	Cautions []Caution
	Working  []Working
	Drawing  Scene
}

// OverTeam is the caution of a load over what the team may lift by the guide.
const OverTeam CautionCode = "over-team"

// teamShare by the number of people: L23, para. 120.
var teamShare = map[int]float64{1: 1, 2: 2.0 / 3, 3: 0.5}

const teamSource = "UK Health and Safety Executive, L23, para. 120, approximate guide"

// Carry works a lift by hand out. The error is Refusals.
func Carry(p HandPlan) (*HandResult, error) {
	if rs := p.check(); len(rs) > 0 {
		return nil, rs
	}
	g := vecOf(*p.Load.CoG)
	weight := float64(p.Load.Mass + p.Load.MassTolerance)
	r := &HandResult{Drawing: Scene{CoG: *p.Load.CoG}}
	for i, at := range corners(g, p.Load.CoGTolerance) {
		shares, no := p.shares(at, weight)
		if no != nil {
			return nil, Refusals{*no}
		}
		if i == 0 {
			r.Shares, r.Most = shares, append([]Kg(nil), shares...)
			continue
		}
		r.Drawing.Band = append(r.Drawing.Band, at.point())
		for k := range shares {
			r.Most[k] = max(r.Most[k], shares[k])
		}
	}
	var rs Refusals
	for i, m := range r.Most {
		if m > p.MayCarry {
			rs = append(rs, *refuse(fmt.Sprintf("grips[%d]", i), "take hold farther from the centre of gravity, take another person, or use a hoist",
				"whoever is at %q carries up to %s and may carry %s", p.Grips[i].Name, m.Up(), p.MayCarry.Down()))
		}
		r.Drawing.Picks = append(r.Drawing.Picks, p.Grips[i].At)
	}
	n := len(p.Grips)
	r.Team = TeamMay(n, p.MayCarry)
	if float64(r.Team) < weight && len(rs) == 0 {
		r.Cautions = append(r.Cautions, warn(OverTeam, "load.mass", "", p.DecidedBy == "" || p.Reason == "", p.teamMessage(Kg(weight), r.Team)))
	}
	p.decisions(r)
	if s := p.Load.Span; s != nil {
		r.Drawing.Span = []Point{s.A, s.B}
	}
	r.Drawing.Outline = p.Load.Outline
	p.work(r, weight)
	return r, rs.Err()
}

// MostHands is how many people a lift by hand has at most.
const MostHands = 3

// TeamMay is what so many people may lift together of whom each may carry so much, by the
// guide of L23, para. 120; nothing for none and for more than MostHands.
func TeamMay(people int, each Kg) Kg { return Kg(teamShare[people] * float64(people) * float64(each)) }

// teamMessage words that the load is over the guide, and who decided on it.
func (p HandPlan) teamMessage(weight, team Kg) phrase {
	s := say("%d people who may carry %s each can lift about %s together, and the load is up to %s", len(p.Grips), p.MayCarry.Down(), team.Down(), weight.Up())
	if p.DecidedBy != "" && p.Reason != "" {
		return say("%s; decided by %s: %s", s, p.DecidedBy, p.Reason)
	}
	return s
}

// check gives what is wrong with the plan as written.
func (p HandPlan) check() Refusals {
	c := &checker{p: &Plan{Load: p.Load}}
	c.load()
	c.lightly(named(p.DecidedBy, p.Reason))
	if n := len(p.Grips); n < 1 || n > MostHands {
		c.refuse("grips", "name one to three; with more nobody can tell what each carries", "%d people lift by hand", n)
	}
	for i, k := range p.Grips {
		c.place(fmt.Sprintf("grips[%d]", i), "the grip "+k.Name, k.At)
	}
	if len(p.Grips) == 3 {
		if off, line := inLine(vecOf(p.Grips[0].At), vecOf(p.Grips[1].At), vecOf(p.Grips[2].At)); line {
			c.refuse("grips", "set one of them to the side, or take hold with two people", "the three grips lie within %s of one line, and nobody can tell what each carries", off.Up())
		}
	}
	c.positive("maycarry", "what one person may carry", "kg", float64(p.MayCarry))
	return c.rs
}

// nearLine is how far three points lie off one line at the least, as a share of the longest
// distance between two of them, for their shares to be told: 12 mm of 600 mm. Common
// practice, no source: nobody takes hold nearer to a mark than that.
const nearLine = 0.02

// inLine reports whether three points lie in one line, nearly so, or two of them in one
// place, seen from above, and how far off the line of the two outer ones the third lies.
func inLine(a, b, c vec) (Mm, bool) {
	longest := 0.0
	for _, side := range []vec{b.sub(a), c.sub(b), a.sub(c)} {
		longest = max(longest, math.Hypot(side.x, side.y))
	}
	if longest == 0 {
		return 0, true
	}
	off := math.Abs(planArea(a, b, c)) / longest
	return Mm(off), off < nearLine*longest
}

// planArea is twice the area of a triangle seen from above.
func planArea(a, b, c vec) float64 {
	u, v := b.sub(a), c.sub(a)
	return u.x*v.y - u.y*v.x
}

// shares gives what each carries with the centre of gravity at g.
func (p HandPlan) shares(g vec, weight float64) ([]Kg, *Refusal) {
	var picks []vec
	for _, k := range p.Grips {
		picks = append(picks, vecOf(k.At))
	}
	if !between(picks, g) {
		return nil, refuse("load.cog", "take hold on both sides of it", "the centre of gravity at x %v, y %v does not lie between the grips", Mm(g.x), Mm(g.y))
	}
	switch len(picks) {
	case 1:
		return []Kg{Kg(weight)}, nil
	case 2:
		a := leverShare(picks[0], picks[1], g, zUp)
		return []Kg{Kg(a * weight), Kg((1 - a) * weight)}, nil
	}
	// Three upright forces: the shares are the areas that g cuts off the triangle.
	whole := planArea(picks[0], picks[1], picks[2])
	return []Kg{
		Kg(planArea(g, picks[1], picks[2]) / whole * weight),
		Kg(planArea(picks[0], g, picks[2]) / whole * weight),
		Kg(planArea(picks[0], picks[1], g) / whole * weight),
	}, nil
}

// work books how the shares came about.
func (p HandPlan) work(r *HandResult, weight float64) {
	for i, k := range p.Grips {
		r.Working = append(r.Working, Working{What: "share at %s", Of: k.Name, Formula: "sum V = W, moments about the centre of gravity nothing", Source: statics,
			Figures: []Figure{figUp("W", weight, "kg"), figUp("V", float64(r.Shares[i]), "kg").told(), figUp("most", float64(r.Most[i]), "kg").told()}})
	}
	n := len(p.Grips)
	r.Working = append(r.Working, Working{What: "what the team may lift", Formula: "share of the team × people × what each may carry", Source: teamSource,
		Figures: []Figure{figDown("share", teamShare[n], ""), fig("people", float64(n), ""), figDown("each", float64(p.MayCarry), "kg"), figDown("team", float64(r.Team), "kg").told()}})
}
