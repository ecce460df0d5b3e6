package lifting

import (
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/packs/names"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

var (
	fibres = map[string]lift.Fibre{"wire rope": lift.WireRope, "chain": lift.Chain, "web sling": lift.Web, "round sling": lift.RoundSling, "fibre rope": lift.NaturalRope}

	seats = map[string]lift.HookSeat{"saddle": lift.Saddle, "quarter out": lift.QuarterOut, "half out": lift.HalfOut, "three quarters out": lift.ThreeQuartersOut, "tip": lift.Tip}

	hitches = map[string]lift.Hitch{"straight": lift.Straight, "choker": lift.Choker, "basket": lift.Basket}

	hardwares = map[string]lift.HardwareKind{"shackle": lift.Shackle, "shoulder eyebolt": lift.ShoulderEyebolt, "plain eyebolt": lift.PlainEyebolt, "hook": lift.Hook, "link": lift.InLine}

	bases = map[string]lift.Basis{"EN": lift.EN, "US": lift.US}
)

// What belongs to a chain sling by its name, in the languages of the paper, and what hangs in line
// and is no chain: it weighs, turns or tightens. A name that is not known keeps to 200 °C.
var (
	chainPiece = phrase.Of(`(?i)(?:\b(?:links?|hooks?|(?:top |end |master )?rings?|maillon|anneau|crochet|eslab|anilla|gancho|ogniw|hak)|ring\b|glied\b|haken\b)`)
	otherPiece = phrase.Of(`(?i)cell|swivel|turnbuckle|rigging screw|tension|hoist|weigh|\bload|scale|dynamomet|waage|wirbel|spannschlo|messzelle|peson|merillon|ridoir|girator|tensor|balanza|tlik|rzymsk|\bwaga`)
)

// piece finds a piece of gear that must be of one of the kinds; what says what it
// is wanted for, whose for what.
func (r *liftReader) piece(t source.Text, what, whose string, kinds []string) *def.Gear {
	if !t.Written() {
		r.lacks(strings.Replace(what, "a ", "the ", 1) + " of " + whose)
		return nil
	}
	g, ok := r.b.gear[t.Value]
	if !ok {
		r.b.Unknown(t, "piece of gear", names.Keys(r.b.gear), "gear")
		r.hole = true
		return nil
	}
	r.b.gearUsed[t.Value] = true
	if !slices.Contains(kinds, g.Kind.Value) {
		if !g.Kind.Written() {
			r.lacks("the kind of " + source.Quote(t.Value))
		} else {
			r.b.Problems.Add(t.At, "wrong-gear", source.Quote(t.Value)+" is a "+g.Kind.Value+" and cannot be "+what, "name one that is a "+strings.Join(kinds, ", a "))
		}
		r.hole = true
		return nil
	}
	if !g.Rated.Written() {
		r.lacks("the rated load of " + source.Quote(t.Value))
	}
	r.counted(g.What.Value)
	return g
}

// counted books a piece into the list of what to fetch.
func (r *liftReader) counted(what string) {
	for i := range r.l.Gear {
		if r.l.Gear[i].What == what {
			r.l.Gear[i].N++
			return
		}
	}
	r.l.Gear = append(r.l.Gear, job.LiftedGear{What: what, N: 1})
}

// leg reads one sling with the gear in its pull line.
func (r *liftReader) leg(field string, g *def.Leg) lift.Leg {
	r.at[field] = g.Name.At
	out := lift.Leg{Name: g.Name.Value, Length: r.mm(field+".length", g.Length)}
	at := field + ".sling"
	r.at[at], r.at[at+".hitch"] = g.Sling.At, g.Hitch.At
	s := lift.Sling{
		Hitch: hitches[g.Hitch.Value], Around: r.mm(at+".around", g.Around), ChokeAngle: r.angle(at+".chokeangle", g.Choke),
		Parallel: g.Spread.Value == "parallel", HeavierPart: r.share(at+".heavierpart", g.Heavier), Turns: g.Turns.Value == "yes",
	}
	if s.HeavierPart == 0 {
		r.at[at+".heavierpart"] = g.Turns.At
	}
	if g.Spread.Written() && !s.Parallel {
		s.Spread = r.angle(at+".spread", g.Spread)
	}
	if p := r.piece(g.Sling, "a sling", "leg "+source.Quote(g.Name.Value), names.Keys(fibres)); p != nil {
		s.Name, s.Fibre = p.What.Value+", "+g.Name.Value, fibres[p.Kind.Value]
		s.Rated, s.Mass = r.kg(at+".rated", p.Rated), r.kg(at+".mass", p.Mass)
		s.Rope, s.HandTucked = r.mm(at+".rope", p.Rope), p.Tucked.Value == "yes"
		s.Polyester = p.Fibre.Value == "polyester" || p.Fibre.Value == "polyamide"
		s.Holds = r.holds(at+".holds", p)
		s.Basis = bases[p.RatedBy.Value]
		r.at[at+".basis"] = p.RatedBy.At
	}
	out.Sling = s
	for i, t := range g.Gear {
		out.Gear = append(out.Gear, r.hardware(index(field+".gear", i), t, g, s.Fibre == lift.Chain))
	}
	r.lonely(g, out)
	return out
}

// lonely refuses an angle or an axis for which the leg has no piece.
func (r *liftReader) lonely(g *def.Leg, out lift.Leg) {
	has := func(kinds ...lift.HardwareKind) bool {
		return slices.ContainsFunc(out.Gear, func(h lift.Hardware) bool { return slices.Contains(kinds, h.Kind) })
	}
	if g.OffLine.Written() && !has(lift.Shackle) {
		r.b.Problems.Add(g.OffLine.At, "not-used", "leg "+source.Quote(g.Name.Value)+" has no shackle that is pulled off its line", "name the shackle in gear:, or take off-line: out")
	}
	if len(g.Axis) > 0 && !has(lift.ShoulderEyebolt, lift.PlainEyebolt) {
		r.b.Problems.Add(g.Axis[0].At, "not-used", "leg "+source.Quote(g.Name.Value)+" has no eyebolt that points that way", "name the eyebolt in gear:, or take axis: out")
	}
}

// hardware reads one piece in a pull line; leg is nil above the legs; chained says that it is pulled
// by chain.
func (r *liftReader) hardware(field string, t source.Text, leg *def.Leg, chained bool) lift.Hardware {
	r.at[field] = t.At
	p := r.piece(t, "gear in a pull line", r.l.Mark, names.Keys(hardwares))
	if p == nil {
		return lift.Hardware{}
	}
	h := lift.Hardware{
		Name: p.What.Value, Kind: hardwares[p.Kind.Value], Rated: r.kg(field+".rated", p.Rated), Basis: bases[p.RatedBy.Value],
		Mass: r.kg(field+".mass", p.Mass), LadderSource: p.LeftSource.Value,
		Seat: seats[p.Seat.Value], Thread: r.mm(field+".thread", p.Thread),
	}
	h.Holds = r.holds(field+".holds", p)
	h.OfChain = chained && (h.Kind == lift.Hook || chainPiece.MatchString(h.Name) && !otherPiece.MatchString(h.Name))
	r.at[field+".seat"] = p.Seat.At
	r.at[field+".basis"] = p.RatedBy.At
	for i, l := range p.LeftAt {
		h.Ladder = append(h.Ladder, r.rung(index(field+".ladder", i), l))
	}
	if leg == nil {
		return h
	}
	h.Name += ", " + leg.Name.Value
	switch h.Kind {
	case lift.Shackle:
		h.OffLine = r.angle(field+".offline", leg.OffLine)
	case lift.ShoulderEyebolt, lift.PlainEyebolt:
		h.Axis = r.axis(field+".axis", leg)
	}
	return h
}

// holds reads the band of temperatures in which the maker of a piece lets it carry its whole
// rating, nil where the definition gives none.
func (r *liftReader) holds(field string, p *def.Gear) *lift.MakersBand {
	if !p.Heat.Written() {
		return nil
	}
	band, _, ok := r.temperatures(field, p.Heat)
	if !ok {
		return nil
	}
	return &lift.MakersBand{Temperatures: band, Source: p.HeatSource.Value}
}

// rung reads one line of a maker's table: 70 % to 45°.
func (r *liftReader) rung(field string, t source.Text) lift.Rung {
	left, upTo, ok := strings.Cut(t.Value, " to ")
	a, err1 := units.ParseQuantity(strings.TrimSpace(left))
	b, err2 := units.ParseQuantity(strings.TrimSpace(upTo))
	if !ok || err1 != nil || err2 != nil || a.Unit != units.Percent || b.Unit != units.Degree {
		r.b.Problems.Add(t.At, "share-by-angle", source.Quote(t.Value)+" is no share of the rating up to an angle", "write the share of the rating in %, to, and the angle in °, as in the maker's table")
		r.hole = true
		return lift.Rung{}
	}
	r.at[field] = t.At
	share, _ := a.Number.Rat().Float64()
	angle, _ := b.Number.Rat().Float64()
	return lift.Rung{UpTo: lift.Degree(angle), Left: lift.Ratio(share / 100)}
}

// axis reads the way an eyebolt points: up, or three numbers.
func (r *liftReader) axis(field string, leg *def.Leg) lift.Point {
	list := leg.Axis
	switch {
	case len(list) == 0:
		return lift.Point{}
	case len(list) == 1 && list[0].Value == "up":
		r.at[field] = list[0].At
		return lift.Point{Z: 1}
	case len(list) != 3:
		r.b.Problems.Add(list[0].At, "axis", "an eyebolt points up or along three numbers; here stands "+source.Quote(strings.Join(names.Texts(list), ", ")), "axis: up", "axis: [0, 1, 0] for along y")
		r.hole = true
		return lift.Point{}
	}
	return lift.Point{X: lift.Mm(r.number(field, list[0])), Y: lift.Mm(r.number(field, list[1])), Z: lift.Mm(r.number(field, list[2]))}
}
