package lift

import "math"

// A TurnResult is how a load is turned between lying and upright.
type TurnResult struct {
	Upper, Lower string // names of the legs
	// Rows go from lying to where all of it hangs from the upper leg.
	Rows []TurnRow
	// Free is how far from lying that is with the centre of gravity as given, FreeLeast and
	// FreeMost the least and the most within its tolerance.
	Free, FreeLeast, FreeMost Degree
	// Lean is how far the load leans out of upright as it hangs from the upper leg alone,
	// MostLean the most within the tolerance of the centre of gravity; Past tells that it
	// hangs beyond upright with the centre of gravity as given, or anywhere in its tolerance
	// where the leg that is let go then still pulls.
	Lean, MostLean Degree
	Past           bool
	// Against is from where on the lower leg lies against the load, 0 for nowhere.
	Against Degree
}

// A TurnRow is the load at one angle from lying, each hook with the most that it carries
// within the tolerance of the centre of gravity, static.
type TurnRow struct {
	Angle        Degree
	Upper, Lower Kg
	// Pull is how steep the legs pull, from the load's own level; 0 is along it.
	Pull Degree
	// Higher is how much higher the hook over the upper leg stands than the other, below
	// zero where it is lower; Apart how far the two are apart in plan.
	Higher, Apart Mm
}

// turnStep is how far apart the angles of the table are.
const turnStep Degree = 15

// turn works the turn out, and says what to mind.
func (a *account) turn() {
	all := a.upends()
	if len(all) == 0 {
		return
	}
	t, p, u := a.p.Turn, a.p, all[0]
	r := &TurnResult{Upper: p.Legs[t.Upper].Name, Lower: p.Legs[1-t.Upper].Name, Free: degrees(u.free())}
	for x := Degree(0); x < r.Free-1; x += turnStep {
		r.Rows = append(r.Rows, a.turnRow(all, x))
	}
	r.Rows = append(r.Rows, a.turnRow(all, r.Free))
	upright := vec{u.e.x, u.e.y, 0}.unit()
	for i, c := range all {
		lean := angleBetween(c.upper.sub(c.g), upright)
		if i == 0 {
			r.Lean = lean
		}
		r.MostLean = max(r.MostLean, lean)
		free := degrees(c.free())
		if i == 0 {
			r.FreeLeast = free
		}
		r.FreeLeast, r.FreeMost = min(r.FreeLeast, free), max(r.FreeMost, free)
	}
	r.Against = a.liesAgainst(u)
	r.Past = r.FreeMost > 90+angleSlack
	a.r.Turn = r
}

func (a *account) turnRow(all []upend, at Degree) TurnRow {
	x, u := radians(at), all[0]
	sin, cos := math.Sincos(u.lying + x)
	up, _ := u.up(x)
	legs := float64(a.p.Legs[a.p.Turn.Upper].Length - a.p.Legs[1-a.p.Turn.Upper].Length)
	row := TurnRow{Angle: at, Pull: max(90-angleBetween(up, zUp), 0), Higher: Mm(u.s*sin + legs), Apart: Mm(u.s * max(cos, 0))}
	for _, c := range all {
		share := c.share(x)
		row.Upper, row.Lower = max(row.Upper, Kg(share*a.s.gross)), max(row.Lower, Kg((1-share)*a.s.gross))
	}
	return row
}

// turnCautions say what is minded while the load turns.
func (a *account) turnCautions() {
	r := a.r.Turn
	if r == nil {
		return
	}
	mind := func(message string, args ...any) { a.caution(Turning, "turn", false, message, args...) }
	mind("turned on two hooks: at %s from lying all of it hangs from %q and leg %q is slack, with the centre of gravity as given; between %s and %s with it anywhere in its band. That hook stops there going up, and takes hold there coming down", r.Free.Down(), r.Upper, r.Lower, r.FreeLeast.Down(), r.FreeMost.Up())
	switch {
	case r.Past && r.Free <= 90+angleSlack:
		mind("upright it may still pull at %q with the centre of gravity at an end of its band, and let go there it swings past upright by up to %s", r.Lower, r.MostLean.Up())
	case r.Past:
		mind("upright it still pulls at %q, and let go there it swings past upright by %s, up to %s with the centre of gravity at an end of its band", r.Lower, r.Lean.Up(), r.MostLean.Up())
	case r.MostLean > leanSlack:
		mind("hanging from %q alone it leans %s out of upright, up to %s with the centre of gravity at an end of its band", r.Upper, r.Lean.Up(), r.MostLean.Up())
	}
	mind("turned by the site's lifting plan: both hooks plumb over their picks all the way, one hook moved at a time, nobody under it or where it may swing or turn over")
	if r.Against > 0 {
		a.caution(Turning, "picks", false, "leg %q: from %s from lying on its hook would stand within the size of the load, so that the leg lies against it: take hold farther out, or have that hook slack before", r.Lower, r.Against.Down())
	}
	fields, names := a.goesRound()
	for i, f := range fields {
		a.caution(Turning, f, false, "leg %q goes round the load: keep it from sliding along it as it turns", names[i])
	}
	if most := a.p.maxTilt(); r.MostLean > most+angleSlack {
		a.r.Cautions = append(a.r.Cautions, warn(OutOfLevel, "turn", "take hold at the top in line with the centre of gravity, or write max-tilt: with decided-by: and because:", true,
			say("hanging from %q alone it may lean %s out of upright, and %v is allowed", r.Upper, r.MostLean.Up(), most)))
	}
}

// liesAgainst is the angle from lying on at which the hook of the lower leg would stand within
// the size of the load before the leg is slack: the leg lies against the load from there on. It
// is 0 where that never is, or where the load has no size.
func (a *account) liesAgainst(u upend) Degree {
	if len(a.p.Load.Outline) == 0 {
		return 0
	}
	lower := 1 - a.p.Turn.Upper
	within := func(x float64) bool {
		up, _ := u.up(x)
		return a.withinSize(vecOf(a.p.Picks[lower].At).add(up.by(float64(a.p.Legs[lower].Length))))
	}
	step := radians(0.25)
	for x := step; x <= u.free(); x += step {
		if !within(x) {
			continue
		}
		clear := x - step
		for range 40 {
			if mid := (clear + x) / 2; within(mid) {
				x = mid
			} else {
				clear = mid
			}
		}
		return degrees(clear)
	}
	return 0
}

// withinSize reports whether a place lies within the box round the points of the load.
func (a *account) withinSize(v vec) bool {
	low, high := vecOf(a.p.Load.Outline[0]), vecOf(a.p.Load.Outline[0])
	for _, o := range a.p.Load.Outline {
		low = vec{min(low.x, float64(o.X)), min(low.y, float64(o.Y)), min(low.z, float64(o.Z))}
		high = vec{max(high.x, float64(o.X)), max(high.y, float64(o.Y)), max(high.z, float64(o.Z))}
	}
	return v.x > low.x && v.x < high.x && v.y > low.y && v.y < high.y && v.z > low.z && v.z < high.z
}

// leanSlack is a lean that nobody sees.
const leanSlack Degree = 0.05

// turnWorking writes down how the load hangs within the turn.
func (a *account) turnWorking() {
	r := a.r.Turn
	if r == nil {
		return
	}
	u := a.upends()[0]
	a.work("turned on two hooks", "V_A = W (b + q tan(theta))/s, V_B = W - V_A, theta slope of the line of the picks; all on A from tan(theta) = (s - b)/q on", statics,
		figUp("W", a.s.gross, "kg"), fig("s", u.s, "mm"), fig("b", u.b, "mm"), fig("q", u.q, "mm"), fig("slope as it lies", float64(degrees(u.lying)), "°"),
		figDown("all on A from lying on", float64(r.Free), "°"), figDown("at least", float64(r.FreeLeast), "°"), figUp("at most", float64(r.FreeMost), "°"), figUp("leans", float64(r.Lean), "°"), figUp("leans at most", float64(r.MostLean), "°"))
}
