package joint

// A tensioner pulls the bolt by a fluid while the nut is run down by hand
//
//	F = p A          pull, N: pressure in MPa times the tensioner's area in mm²
//	F0 = F η         what stays when the nut takes the pull over
//
// Source: statics; the area and η are the maker's. The stress is that of the whole pull,
// the preload that of what stays. Refused: a pressure without an area.

import "matchmark/packs/units"

// byPull works out pull and preload of a tensioner.
func (a *account) byPull(dim units.Dimension) {
	t := a.s.Tensioner
	s := a.s.Torque
	if s.Low.Unit == units.PSI || s.Low.Unit == units.PoundForce {
		a.r.usFirst = true
	}
	area := 1.0
	if dim == units.Pressure {
		switch {
		case t == nil || t.Area.Number.Sign() == 0:
			a.refuse("tensioner.area", "write the tensioner's area, as 5570 mm2, or the force in place of the pressure", "%s says nothing without what it acts on", s.Text())
			return
		case t.Area.Unit.Dimension() != units.Area || t.Area.Number.Sign() < 0:
			a.refuse("tensioner.area", "write it like 5570 mm2", "%s is no area", t.Area.Text())
			return
		}
		area = base(t.Area, units.SquareMillimetre)
	}
	pull := func(q units.Quantity) Newton {
		if dim == units.Force {
			return newtons(q)
		}
		return Newton(float64(megapascals(q)) * area)
	}
	kept, ok := a.retained()
	if a.r.Area <= 0 || !ok {
		return
	}
	b := a.band(pull(s.Low), pull(s.aim()), pull(s.High))
	a.r.Pull = &b
	a.r.Preload = Band{b.Low * kept, b.Aim * kept, b.High * kept}
	if dim == units.Pressure {
		a.work("pull", "F = p A", "statics", fig("p", float64(megapascals(s.aim())), "MPa"), fig("A", area, "mm²"), fig("F", float64(b.Aim), "N").as(ToldPull))
	}
	a.work("preload", "F0 = F η", a.retainedSource(), fig("F", float64(b.Aim), "N"), fig("η", float64(kept), ""), fig("F0", float64(a.r.Preload.Aim), "N").as(ToldPreload))
	a.clamp(a.r.Preload.Low)
	a.stress(pull(s.High), b.High)
}

// retained gives the share of the pull that stays.
func (a *account) retained() (Newton, bool) {
	t := a.s.Tensioner
	switch {
	case t == nil || t.Retained == nil:
		a.caution(NoRetained, "tensioner.retained", "what stays of the pull when the nut takes it over is not told; the preload is that of the whole pull")
		return 1, true
	case t.Retained.Sign() <= 0 || t.Retained.Cmp(units.Whole(100)) > 0:
		a.refuse("tensioner.retained", "write it like 85 %", "%s %% of the pull stays", t.Retained.Text())
		return 0, false
	case t.Source == "":
		a.refuse("tensioner.source", "name the tensioner's sheet", "what stays of the pull, %s %%, has no source", t.Retained.Text())
		return 0, false
	}
	return Newton(ratio(*t.Retained)) / 100, true
}

func (a *account) retainedSource() string {
	if t := a.s.Tensioner; t != nil && t.Source != "" {
		return t.Source
	}
	return "not told"
}
