package lift

// state is a whole rig in balance for one place of the centre of gravity, in the
// load's own frame.
type state struct {
	hook  vec
	up    vec
	lines []line
	// press is the force along the horizontal in the load or in the spreader.
	press float64
	// hooks are the static loads of the hooks, without gear above the legs.
	hooks []float64
	bar   []vec
	// uneven tells that a named sharing of four legs does not hold, as one of them
	// hangs slack.
	uneven bool
}

// line is one leg in a state. Forces in kg, static.
type line struct {
	top, bottom vec
	tension     float64 // by the sharing of the plan
	even        float64 // four legs, even split
	slack       float64
	angle       Degree
}

// u is the unit vector from the load's end to the hook's.
func (l line) u() vec { return l.top.sub(l.bottom).unit() }

// A frame is a rig with all its lengths settled; at solves it for a centre of
// gravity, with the sloping legs longer by the given amounts.
type frame interface {
	at(g vec, longer []float64) (state, *Refusal)
	// lean gives the load's own upright alone, whatever its legs carry.
	lean(g vec, longer []float64) (up vec, no *Refusal)
	// sloping gives the settled lengths of the legs that can tilt the load.
	sloping() []float64
}

// leverShare gives the part of the load that hangs at a, with a and b on
// upright lines.
func leverShare(a, b, g, up vec) float64 {
	h := b.sub(a).across(up)
	return b.sub(g).dot(h) / h.dot(h)
}

// between reports whether g lies, in plan, strictly between two picks or strictly
// inside the outline of more; one pick has no inside.
func between(picks []vec, g vec) bool {
	flat := func(v vec) vec { return vec{v.x, v.y, 0} }
	g = flat(g)
	switch len(picks) {
	case 1:
		return true
	case 2:
		a, b := flat(picks[0]), flat(picks[1])
		e := b.sub(a)
		d := g.sub(a).dot(e)
		return d > 0 && d < e.dot(e)
	}
	edges := 0
	for i := range picks {
		for j := range picks {
			if i == j {
				continue
			}
			a := flat(picks[i])
			e := flat(picks[j]).sub(a)
			side := func(p vec) float64 { return e.cross(flat(p).sub(a)).z }
			all, any := true, false
			for k, p := range picks {
				if k == i || k == j {
					continue
				}
				all = all && side(p) >= 0
				any = any || side(p) > 0
			}
			if !all || !any {
				continue
			}
			edges++
			if side(g) <= lengthSlack*e.size() {
				return false
			}
		}
	}
	return edges > 0
}

// standing refuses a centre of gravity at which the load would turn over.
func standing(picks []vec, g vec) *Refusal {
	if !between(picks, g) {
		return refuse("load.cog", "look at the centre of gravity and the picks, or move a pick past it",
			"the centre of gravity at x %v, y %v does not lie between the picks", Mm(g.x), Mm(g.y))
	}
	switch len(picks) {
	case 1:
		if g.z >= picks[0].z {
			return refuse("load.cog", "take a pick above the centre of gravity", "the centre of gravity lies %s above the only pick, so the load would turn over", Mm(g.z-picks[0].z).Up())
		}
	case 2:
		e := picks[1].sub(picks[0]).unit()
		n, depth, ok := hangLine(picks[0], e, g)
		if !ok {
			return refuse("picks", "take picks apart in plan", "the two picks stand one above the other")
		}
		if depth < -lengthSlack {
			return refuse("load.cog", "take picks above the centre of gravity, or more than two", "the centre of gravity lies %s above the line of the two picks, so the load would turn over", Mm(-depth).Up())
		}
		// Over 60° of roll nothing on the load is where the picks were thought to be.
		if n.z < 0.5 {
			return refuse("load.cog", "take picks on both sides of it", "the centre of gravity lies to the side of the line of the two picks, and the load would roll %s", angleBetween(n, zUp).Up())
		}
	}
	return nil
}
