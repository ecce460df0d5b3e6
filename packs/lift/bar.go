package lift

// What is computed: a load on two upright drops under a spreader bar, a lifting
// beam or two hooks. Picks A and B at one level, of two hooks at any, s apart; a, b plan distances of
// the centre of gravity from them; g its depth below their line; W load, w weight
// of the bar; p the bail's distance from the end over A, e its rise over the pins.
//
//	drops       V_A = W b/s, V_B = W a/s, moved by g tan(phi) when tilted
//	spreader    the top legs carry W + w at their common centre; as equal drops stay
//	            upright, their length does not matter for the tilt
//	            force in the bar: the horizontal pull of the top legs
//	beam        tan(phi) = (W (a - p) + w (s/2 - p)) / (W (e + g)), B down
//	            bending at the bail: M = V_A p + (w/s) p²/2; W s/4 + w s/8 centred
//	two hooks   each at its worst with one pick low by the allowed tilt
//
// Source: exact statics. The beam's own centre is taken at the height of the bail,
// which overstates the tilt a little.
// Refused: picks not at one level, drops not equal, drops more than 1° out of
// upright because the bar and the pick distance differ, a beam that would turn
// over.

import "math"

// drops is what Spreader and Beam have in common.
type drops struct {
	a, b   vec
	length float64 // of each drop
	load   float64 // with the drops and their gear
	bar    float64 // mass
	barLen float64
}

func (d drops) span() float64 { return d.b.sub(d.a).size() }
func (d drops) axis() vec     { return d.b.sub(d.a).unit() }

// slant of the drops out of upright, where bar and pick distance differ.
func (d drops) slant() float64 {
	return math.Asin(min(math.Abs(d.barLen-d.span())/2/d.length, 1))
}

// toPins stretches a place along the line of the picks so that the picks come to
// stand under the pins of the bar.
func (d drops) toPins(v vec) vec {
	e := d.axis()
	along := v.sub(d.a.add(d.b).by(0.5)).dot(e)
	return v.add(e.by(along * (d.barLen/d.span() - 1)))
}

// lines gives the two drops of a load hung with that vertical.
func (d drops) lines(g, up vec) ([]line, *Refusal) {
	share := leverShare(d.a, d.b, g, up)
	if share <= weightless || share >= 1-weightless {
		return nil, refuse("load.cog", "move a pick past it", "the centre of gravity does not lie between the picks as the load hangs")
	}
	k := d.load / math.Cos(d.slant())
	rise := up.by(d.length)
	return []line{
		{top: d.toPins(d.a).add(rise), bottom: d.a, tension: share * k, angle: 90},
		{top: d.toPins(d.b).add(rise), bottom: d.b, tension: (1 - share) * k, angle: 90},
	}, nil
}

// spreader is the frame of two top legs, a bar and two drops.
type spreader struct {
	drops
	top bridle // on the pins, brought down to the picks
}

func (s spreader) sloping() []float64 { return s.top.lengths }

// common gives the centre of load and bar, the bar brought down to the picks.
func (d drops) common(g vec) vec {
	mid := d.a.add(d.b).by(0.5)
	return g.by(d.load).add(mid.by(d.bar)).by(1 / (d.load + d.bar))
}

func (s spreader) at(g vec, longer []float64) (state, *Refusal) {
	if no := standing([]vec{s.a, s.b}, g); no != nil {
		return state{}, no
	}
	st, no := s.top.at(s.toPins(s.common(g)), longer)
	if no != nil {
		return state{}, no
	}
	ds, no := s.lines(g, st.up)
	if no != nil {
		return state{}, no
	}
	rise := st.up.by(s.length)
	st.hook = st.hook.add(rise)
	for i := range st.lines {
		st.lines[i].top = st.lines[i].top.add(rise)
		st.lines[i].bottom = st.lines[i].bottom.add(rise)
	}
	st.bar = []vec{st.lines[0].bottom, st.lines[1].bottom}
	st.press += max(ds[0].tension, ds[1].tension) * math.Sin(s.slant())
	st.lines = append(st.lines, ds...)
	return st, nil
}

func (s spreader) lean(g vec, longer []float64) (vec, *Refusal) {
	if no := standing([]vec{s.a, s.b}, g); no != nil {
		return vec{}, no
	}
	return s.top.lean(s.toPins(s.common(g)), longer)
}

// beam is the frame of a bail, a beam and two drops.
type beam struct {
	drops
	bail, rise float64
}

func (b beam) sloping() []float64 { return nil }

// levelBail is where the bail has to stand over the common centre.
func (d drops) levelBail(g vec) float64 {
	return d.toPins(d.common(g)).sub(d.toPins(d.a)).dot(d.axis())
}

func (b beam) at(g vec, _ []float64) (state, *Refusal) {
	if no := standing([]vec{b.a, b.b}, g); no != nil {
		return state{}, no
	}
	e := b.axis()
	n, _, _ := hangLine(b.a, e, g)
	depth := b.a.sub(g).across(e).size()
	off := (b.levelBail(g) - b.bail) * (b.load + b.bar)
	under := b.load * (b.rise + depth)
	if under <= 0 && math.Abs(off) > lengthSlack {
		return state{}, refuse("bar.rise", "write how far the bail stands above the end pins, or take a beam with a higher bail", "the bail does not stand above the pins of the beam nor the picks above the centre of gravity, so nothing brings the beam back to level")
	}
	phi := 0.0
	if under > 0 {
		phi = math.Atan(off / under)
	}
	up := n.by(math.Cos(phi)).sub(e.by(math.Sin(phi)))
	ds, no := b.lines(g, up)
	if no != nil {
		return state{}, no
	}
	// The bar turns with the load, so its upright is square to it in the load's
	// frame.
	base := b.toPins(b.a).add(up.by(b.length))
	s := state{up: up, lines: ds, hooks: []float64{b.load + b.bar}}
	s.bar = []vec{base, base.add(e.by(b.barLen))}
	s.hook = base.add(e.by(b.bail)).add(n.by(b.rise))
	return s, nil
}

func (b beam) lean(g vec, _ []float64) (vec, *Refusal) {
	st, no := b.at(g, nil)
	return st.up, no
}

// bending gives the largest bending of the beam, kg mm.
func (b beam) bending(a float64) float64 {
	return a*b.bail + b.bar/b.barLen*b.bail*b.bail/2
}

// hooks is the frame of two upright legs, each to a hook of its own.
type hooks struct {
	drops
	lengths [2]float64
	tilt    Degree
	turn    *Turn // nil where the load keeps its position
}

func (h hooks) sloping() []float64 { return nil }

func (h hooks) at(g vec, _ []float64) (state, *Refusal) {
	if no := standing([]vec{h.a, h.b}, g); no != nil {
		return state{}, no
	}
	n, _ := newUpend(h.b, h.a, g).up(0) // each hook at its own height: the load level, not the line of its picks
	var worst [2]float64
	for _, up := range append(h.leaning(n), n) {
		share := leverShare(h.a, h.b, g, up)
		if share <= weightless || share >= 1-weightless {
			return state{}, refuse("maxtilt", "allow less tilt, or take picks farther from the centre of gravity", "with one hook low by %v the load leaves the other", h.tilt)
		}
		worst[0], worst[1] = max(worst[0], share), max(worst[1], 1-share)
	}
	if h.turn != nil {
		worst[h.turn.Upper] = 1 // at the end of the turn
	}
	s := state{up: n, hook: h.a.add(n.by(h.lengths[0])), hooks: []float64{worst[0] * h.load, worst[1] * h.load}}
	for i, p := range []vec{h.a, h.b} {
		s.lines = append(s.lines, line{top: p.add(n.by(h.lengths[i])), bottom: p, tension: worst[i] * h.load, angle: 90})
	}
	return s, nil
}

// leaning gives the load's own upright with one hook low, and with the other, by the tilt
// that is allowed, from its upright with both level.
func (h hooks) leaning(n vec) []vec {
	along := h.b.sub(h.a)
	flat := vec{along.x, along.y, 0}.unit()
	var out []vec
	for _, side := range []float64{-1, 1} {
		out = append(out, n.by(math.Cos(radians(h.tilt))).add(flat.by(side*math.Sin(radians(h.tilt)))).unit())
	}
	return out
}

func (h hooks) lean(g vec, _ []float64) (vec, *Refusal) {
	st, no := h.at(g, nil)
	return st.up, no
}
