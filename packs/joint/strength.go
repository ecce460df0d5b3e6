package joint

import (
	"errors"
	"math"

	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// strength finds stress area and proof load.
func (a *account) strength() {
	t := a.s.Thread
	if t == nil {
		a.refuse("thread", "write it like M24, or 3/4-10 UNC", "the thread is not told")
		return
	}
	a.r.usFirst = t.Series == thread.UNC || t.Series == thread.UNF || t.Series == thread.UN || t.Series == thread.UNS
	area, err := t.StressArea()
	if err != nil {
		a.refuse("thread", "", "%s", err.Error())
		return
	}
	a.r.Area = area.Area
	if !a.r.usFirst {
		a.r.Area = threeFigures(area.Area)
	}
	d, p := t.Diameter, t.Pitch
	a.work("stress area", area.Formula, area.Source, fig("d", float64(d), "mm"), fig("P", float64(p), "mm"), fig("As", float64(a.r.Area), "mm²"))
	if t.LeftHand {
		a.caution(LeftHanded, "thread", "%s is left-hand", t)
	}
	if !t.Listed {
		a.caution(Unlisted, "thread", "the standard does not list %s", t)
	}
	a.proof()
}

// threeFigures rounds a stress area as ISO 898-1 tabulates it: 84.3, 157, 1120 mm².
func threeFigures(a thread.Mm2) thread.Mm2 {
	if a <= 0 {
		return a
	}
	scale := math.Pow(10, 2-math.Floor(math.Log10(float64(a))))
	return thread.Mm2(math.Round(float64(a)*scale) / scale)
}

// proof finds what the bolt may carry.
func (a *account) proof() {
	s, p := a.s, a.s.Proof
	switch {
	case p != nil && s.Class != "":
		a.refuse("class", "keep one of them", "the strength is told twice, as class %s and as %s", s.Class, p.Stress.Text())
		return
	case p != nil && (p.Stress.Unit.Dimension() != units.Pressure || p.Stress.Number.Sign() <= 0):
		a.refuse("proof.stress", "write it in MPa or psi", "%s is no stress", p.Stress.Text())
		return
	case p != nil && p.Source == "":
		a.refuse("proof.source", "name the maker's sheet or the standard", "the proof stress %s has no source", p.Stress.Text())
		return
	case p != nil:
		a.r.Strength = Strength{Proof: megapascals(p.Stress), Source: p.Source}
	default:
		st, err := StrengthOf(*s.Thread, s.Class)
		if err != nil {
			var r Refusal
			if errors.As(err, &r) {
				a.refusals.Refusals = append(a.refusals.Refusals, r)
			}
			return
		}
		a.r.Strength = st
	}
	as, st := float64(a.r.Area), a.r.Strength
	a.r.ProofLoad = Newton(as * float64(st.Proof))
	a.r.Ultimate = Newton(as * float64(st.Tensile))
	a.work("proof load", "Fp = As Sp", st.Source, fig("As", as, "mm²"), fig("Sp", float64(st.Proof), "MPa"), fig("Fp", float64(a.r.ProofLoad), "N").as(ToldProofLoad))
}
