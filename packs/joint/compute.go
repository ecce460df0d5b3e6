package joint

// From thread, strength and setting to preload and stress
//
//	As         stress area, mm²; of metric threads to three figures, as ISO 898-1 has it
//	           in its table and in all its loads       (package thread)
//	Fp = As Sp proof load, N
//	F = T/(K d)                                        a torque
//	F = p A, F0 = F η                                  a tensioner: p pressure, A its area,
//	                                                   η what the nut keeps of the pull
//	low  = F at the least setting, times 1 - s         s scatter
//	high = F at the most setting, times 1 + s
//	stress = F/As at the most setting; its share is stress/Sp
//
// Source: ISO 898-1 and SAE J429 for As and Sp; any machinery handbook for the rest.
// Valid in the elastic range, at room temperature, tension alone. Refused: a share over 1
// without any scatter; told: a share over nearProof, and over 1 with the scatter.

import "matchmark/packs/units"

// nearProof is the share of the proof stress from which on it is told: common practice,
// no source (75 % is usual for joints that are opened again, 90 % for those that stay).
const nearProof = 0.90

// mostCount is the most fasteners of one joint.
const mostCount = 400

// account carries one computation.
type account struct {
	s        Spec
	r        Result
	refusals reasons
}

func (a *account) refuse(field, help, message string, args ...any) {
	a.refusals.add(field, help, message, args...)
}

// Compute works a joint out. The error is Refusals, each with its field; what does not
// hang on a refused field is in the result all the same.
func Compute(s Spec) (Result, error) {
	a := &account{s: s}
	a.r.Spec = s
	a.r.Assumes = []Assumption{TensionOnly, AllAlike, NoNeighbour, RoomTemperature}
	a.strength()
	a.count()
	unit := a.means()
	a.scatterKnown()
	switch unit {
	case units.Torque:
		a.nutFactor()
		a.byTorque()
	case units.Force, units.Pressure:
		a.byPull(unit)
	}
	a.share()
	a.afterwards()
	a.rounds()
	return a.r, a.refusals.Err()
}

func (a *account) count() {
	switch n := a.s.Count; {
	case n < 0 || n > mostCount:
		a.refuse("count", "write how many fasteners the joint has", "%d fasteners", n)
	case n == 0:
		a.caution(NoCount, "count", "the count of the fasteners is not told, so neither is what they press with together")
	}
}

// means finds by what the joint is tightened; NoDimension when that was refused.
func (a *account) means() units.Dimension {
	s := a.s
	switch {
	case s.Torque == nil && s.Preload == nil:
		a.refuse("torque", "write torque: 120 N·m, or the preload that is wanted", "how tight is not told")
	case s.Torque != nil && s.Preload != nil:
		a.refuse("torque", "keep one of them", "how tight is told twice, as %s and as a wanted preload", s.Torque.Text())
	case s.Preload != nil:
		return units.Torque
	default:
		return a.setting("torque", s.Torque)
	}
	return units.NoDimension
}

// setting looks at one setting of a wrench or a pump and gives what it is of.
func (a *account) setting(field string, s *Setting) units.Dimension {
	dim := s.Low.Unit.Dimension()
	switch {
	case dim != units.Torque && dim != units.Force && dim != units.Pressure:
		a.refuse(field, "write 120 N·m, or of a tensioner 1150 bar or 640 kN", "%s is no torque, no pressure and no force", s.Text())
		return units.NoDimension
	case s.High.Unit != s.Low.Unit, s.Aim != nil && s.Aim.Unit != s.Low.Unit:
		a.refuse(field, "write both in one unit", "%s has two units", s.Text())
		return units.NoDimension
	case s.Low.Number.Sign() <= 0 || s.High.Number.Cmp(s.Low.Number) < 0,
		s.Aim != nil && (s.Aim.Number.Cmp(s.Low.Number) < 0 || s.Aim.Number.Cmp(s.High.Number) > 0):
		a.refuse(field, "write the smaller first, and more than nothing", "%s cannot be set", s.Text())
		return units.NoDimension
	}
	return dim
}

// scatterKnown looks at the scatter.
func (a *account) scatterKnown() {
	s := a.s.Scatter
	switch {
	case s == nil:
		a.caution(NoScatter, "scatter", "the scatter of the preload is not known")
	case s.Percent.Sign() < 0 || s.Percent.Cmp(units.Whole(60)) > 0:
		a.refuse("scatter.percent", "write it like 25 %, to either side", "a scatter of %s %%", s.Percent.Text())
	case s.Source == "":
		a.refuse("scatter.source", "name where it comes from", "the scatter of %s %% has no source", s.Percent.Text())
	}
}

// scatter gives the scatter as a ratio, 0 where it is not known.
func (a *account) scatter() Newton {
	if a.s.Scatter == nil {
		return 0
	}
	return Newton(ratio(a.s.Scatter.Percent)) / 100
}

// band widens a range of forces by the scatter.
func (a *account) band(low, aim, high Newton) Band {
	s := a.scatter()
	return Band{Low: low * (1 - s), Aim: aim, High: high * (1 + s)}
}

// byTorque works out the preload of a torque, or the torque of a preload.
func (a *account) byTorque() {
	if a.s.Torque != nil && newtonMetres(a.s.Torque.Low) > 0 {
		a.r.usFirst = a.s.Torque.Low.Unit != units.NewtonMetre
	}
	if a.r.NutFactor <= 0 || a.s.Thread == nil || a.r.Area <= 0 || len(a.refusals.Refusals) > 0 {
		return
	}
	k, d := float64(a.r.NutFactor), float64(a.s.Thread.Diameter)
	if a.s.Preload != nil {
		f, ok := a.target()
		if !ok {
			return
		}
		t := a.torqueFor(f)
		unit := units.NewtonMetre
		if a.r.usFirst {
			unit = units.PoundFoot
		}
		set := Exactly(in(float64(t), units.NewtonMetre, unit, units.Down))
		a.r.Torque, a.r.Preload = &set, a.band(f, f, f)
		a.work("torque", "T = K d F", a.s.Friction.Source, fig("K", k, ""), fig("d", d, "mm"), fig("F", float64(f), "N"), fig("T", float64(t), "N·m").as(ToldTorque))
	} else {
		s := a.s.Torque
		a.r.Torque = s
		aim := newtonMetres(s.aim())
		a.r.Preload = a.band(a.preloadAt(newtonMetres(s.Low)), a.preloadAt(aim), a.preloadAt(newtonMetres(s.High)))
		a.work("preload", "F = T/(K d)", a.s.Friction.Source, fig("T", float64(aim), "N·m"), fig("K", k, ""), fig("d", d, "mm"), fig("F", float64(a.r.Preload.Aim), "N").as(ToldPreload))
	}
	a.clamp(a.r.Preload.Low)
	a.stress(a.r.Preload.High/(1+a.scatter()), a.r.Preload.High)
}

// target gives the wanted preload as a force.
func (a *account) target() (Newton, bool) {
	p := a.s.Preload
	told := 0
	for _, there := range []bool{p.Percent != nil, p.Force != nil, p.Stress != nil} {
		if there {
			told++
		}
	}
	switch {
	case told != 1:
		a.refuse("preload", "write one of them: 75 % of proof, 210 kN, or 450 MPa", "the wanted preload is told %d times", told)
	case p.Percent != nil && (p.Percent.Sign() <= 0 || p.Percent.Cmp(units.Whole(100)) > 0):
		a.refuse("preload.percent", "75 % of proof is usual for joints that are opened again", "a preload of %s %% of the proof load", p.Percent.Text())
	case p.Force != nil && (p.Force.Unit.Dimension() != units.Force || p.Force.Number.Sign() <= 0):
		a.refuse("preload.force", "write it like 210 kN", "%s is no force", p.Force.Text())
	case p.Stress != nil && (p.Stress.Unit.Dimension() != units.Pressure || p.Stress.Number.Sign() <= 0):
		a.refuse("preload.stress", "write it like 450 MPa", "%s is no stress", p.Stress.Text())
	case p.Percent != nil:
		share := float64(ratio(*p.Percent)) / 100
		f := share * float64(a.r.ProofLoad)
		a.work("preload", "F = share As Sp", a.r.Strength.Source, fig("share", share, ""), fig("Fp", float64(a.r.ProofLoad), "N"), fig("F", f, "N").as(ToldPreload))
		return Newton(f), a.r.ProofLoad > 0
	case p.Force != nil:
		return newtons(*p.Force), true
	default:
		return Newton(float64(megapascals(*p.Stress)) * float64(a.r.Area)), true
	}
	return 0, false
}

// stress tells the stress of a force, and of the same with its scatter.
func (a *account) stress(f, scattered Newton) {
	a.r.Stress = MPa(float64(f) / float64(a.r.Area))
	a.r.StressHigh = MPa(float64(scattered) / float64(a.r.Area))
	if a.r.Strength.Proof > 0 {
		a.r.Share = Ratio(a.r.Stress / a.r.Strength.Proof)
		a.r.ShareHigh = Ratio(a.r.StressHigh / a.r.Strength.Proof)
		a.work("stress", "σ = F/As", "tension", fig("F", float64(f), "N"), fig("As", float64(a.r.Area), "mm²"), fig("σ", float64(a.r.Stress), "MPa").as(ToldStress), fig("σ/Sp", float64(a.r.Share), ""))
	}
}

// share refuses what goes over proof and tells what comes near it.
func (a *account) share() {
	field, what := "torque", any("")
	switch {
	case a.s.Torque != nil:
		what = a.s.Torque.High
	case a.s.Preload != nil:
		field, what = "preload", "the wanted preload"
	}
	switch r := a.r; {
	case float64(r.Share) > 1+rounding:
		a.refuse(field, "look the torque, the class and the friction up again", "%s", worded(nil, asTyped, "%s takes the bolt to %s of its proof stress", []any{what, r.Share.Percent()}))
	case float64(r.Share) > nearProof+rounding:
		a.caution(NearProof, field, "%s takes the bolt to %s of its proof stress", what, r.Share.Percent())
	}
	if float64(a.r.ShareHigh) > 1+rounding && float64(a.r.Share) <= 1+rounding {
		a.caution(ScatterOverProof, "scatter", "with the scatter the bolt can come to %s of its proof stress", a.r.ShareHigh.Percent())
	}
}

func (a *account) clamp(low Newton) { a.r.Clamp = low * Newton(max(a.s.Count, 0)) }

// afterwards looks at what is not part of the tightening itself: the torque that holds for
// a time, and the least that the joint must break loose with.
func (a *account) afterwards() {
	last := 0.0
	if a.r.Torque != nil {
		last = float64(newtonMetres(a.r.Torque.High))
	}
	if s := a.s.ForNow; s != nil {
		switch dim := a.setting("fornow", s); {
		case dim == units.NoDimension:
		case dim != units.Torque:
			a.refuse("fornow", "write it like 40 N·m", "%s for a time is no torque", s.Text())
		case last > 0 && float64(newtonMetres(s.High)) > last*(1+rounding):
			a.caution(ForNowHigh, "fornow", "%s for a time is more than the last torque %s", *s, *a.r.Torque)
		}
	}
	if q := a.s.BreaksLoose; q != nil {
		switch {
		case q.Unit.Dimension() != units.Torque || q.Number.Sign() <= 0:
			a.refuse("breaksloose", "write it like 45 N·m", "%s is no torque", q.Text())
		case last > 0 && float64(newtonMetres(*q)) > last*(1+rounding):
			a.caution(BreaksLooseHigh, "breaksloose", "it must break loose with at least %s and is tightened with %s", *q, *a.r.Torque)
		}
	}
}
