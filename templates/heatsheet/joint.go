package heatsheet

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/fit"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/figure"
)

// notWorkedOut says on the sheet of a draft why figures are missing.
func (s sheet) notWorkedOut() layout.Block {
	if len(s.h.Because) == 0 {
		return layout.Block{}
	}
	lines := []layout.Block{s.Para(s.Span-6, []layout.Run{{Text: s.W.Heat.NotWorkedOut, Style: layout.Strong}}, layout.ParaOpts{Ref: s.h.At})}
	for _, why := range s.h.Because {
		lines = append(lines, s.Para(s.Span-6, []layout.Run{layout.T(layout.Body, "– "+why.In(s.W))}, layout.ParaOpts{Ref: s.h.At}))
	}
	return s.heavyFrame(lines...)
}

// atMost is the highest temperature of the heated part, or that it is not known.
func atMost(c *block.Composer, h *job.Heat) string {
	if !h.LimitKnown() {
		return c.W.Heat.NotKnown
	}
	return figure.UnitsOf(h).AtMost(h.Limit.At)
}

// onLine says how hot a part is made, at the step that puts it on.
func onLine(c *block.Composer, h *job.Heat) string {
	p, u := h.PutOn, figure.UnitsOf(h)
	switch {
	case !p.Known():
		return c.W.Heat.HeatNotKnown
	case p.Cold != nil && !p.Cold.HubHeated:
		return c.W.Heat.NotHeated
	}
	if low, high, ok := ladderEnds(p); ok {
		return c.W.Heat.HeatToBy.With(u.TempUp(low), u.TempUp(high))
	}
	return c.W.Heat.HeatTo.With(u.TempUp(p.SetTo))
}

// ladderEnds are the lowest and the highest temperature of the table that goes by the
// interference as measured, false where there is none to choose from.
func ladderEnds(p *job.HotFit) (low, high heat.Celsius, ok bool) {
	for _, r := range p.Ladder {
		if r.TooHot {
			continue
		}
		if !ok || r.SetTo < low {
			low = r.SetTo
		}
		high, ok = max(high, r.SetTo), true
	}
	return low, high, ok && low < high
}

// jointLines say how tight the joint is, what that means cold, and where it works.
func (s sheet) jointLines() []string {
	w, f, u := s.W, s.h.Fit, s.u
	if !f.Known() {
		return []string{w.Heat.FitNotKnown, s.nothingNearLine()}
	}
	first := w.Heat.SizesLine.With(u.InterferenceDown(f.Least), u.InterferenceUp(f.Greatest))
	if f.Designation != "" {
		first = w.Heat.FitLine.With(f.Designation, u.InterferenceDown(f.Least), u.InterferenceUp(f.Greatest))
	}
	counted := w.Heat.CountedGreatest
	if f.Basis == heat.Measured {
		counted = w.Heat.CountedMeasured
	}
	lines := []string{first + " " + counted.With(u.InterferenceUp(f.Counted))}
	if g := f.Grip; g != nil {
		lines = append(lines, s.gripLine(g), s.stressLine(g))
	}
	return append(lines, s.nothingNearLine())
}

// gripLine says what the joint holds, and what it takes to move it cold.
func (s sheet) gripLine(g *fit.Pressed) string {
	w, f, u := s.W, s.h.Fit, s.u
	out := []string{
		w.Heat.Pressure.With(u.Stress(float64(g.Tightest.Pressure))),
		w.Heat.ColdPull.With(u.ForceUp(float64(g.Pull.Axial)), figure.Ratio(f.Pulling)),
	}
	if x := f.Friction; x.By != "" && x.Reason != "" {
		out = append(out, w.Heat.FrictionBy.With(x.By, x.Reason))
	}
	if p := s.h.Pull; p != nil && p.PullsWith > 0 {
		verdict := w.Heat.PullerDoes
		if p.Short {
			verdict = w.Heat.PullerShort
		}
		out = append(out, w.Heat.PullerRated.With(u.ForceDown(float64(p.PullsWith)))+" "+verdict)
	}
	smoothing := map[fit.SmoothingRule]string{fit.NoLoss: w.Heat.SmoothNone, fit.LossEight: w.Heat.SmoothEight, fit.LossFour: w.Heat.SmoothFour}[f.Smoothing]
	if g.HoldRefused.Told() {
		return strings.Join(append(out, w.Heat.HoldsNot.With(g.HoldRefused.In(w))), " ")
	}
	holds := w.Heat.HoldsLine
	if g.AtWork != nil {
		holds = w.Heat.HoldsAtWork
	}
	out = append(out, holds.With(u.ForceHeld(float64(g.Hold.Axial)), u.TorqueDown(float64(g.Hold.Torque)), figure.Ratio(f.Holding), smoothing))
	if at := g.AtWork; at != nil {
		out = append(out, w.Heat.LeastAtWork.With(u.Temp(heat.Celsius(at.Hub)), u.Temp(heat.Celsius(at.Shaft)), s.turns(at.Speed), u.InterferenceDown(heat.Mm(at.Loosest.Interference/1000))))
	}
	return strings.Join(out, " ")
}

// turns says how fast a joint turns.
func (s sheet) turns(n fit.PerMinute) string {
	if n == 0 {
		return s.W.Heat.AtRest
	}
	return s.W.Heat.AtSpeed.With(figure.Turns(n))
}

// stressLine says what the fit makes of hub and shaft at most, cold or where it works.
func (s sheet) stressLine(g *fit.Pressed) string {
	w, u := s.W, s.u
	most, when := g.Tightest, w.Heat.StressCold
	if at := g.AtWork; at != nil {
		when = w.Heat.StressAtWork
		if at.Tightest.HubEquivalent > most.HubEquivalent {
			most.HubEquivalent, most.HubUse = at.Tightest.HubEquivalent, at.Tightest.HubUse
		}
		if at.Tightest.ShaftEquivalent > most.ShaftEquivalent {
			most.ShaftEquivalent, most.ShaftUse = at.Tightest.ShaftEquivalent, at.Tightest.ShaftUse
		}
	}
	shaft := w.Heat.ShaftStress
	if s.h.Fit.Torque > 0 {
		shaft = w.Heat.ShaftSheared
	}
	return when.With(u.Stress(float64(most.HubEquivalent)), s.use(most.HubUse)) + " " +
		shaft.With(u.Stress(float64(most.ShaftEquivalent)), s.use(most.ShaftUse), u.TorqueUp(float64(s.h.Fit.Torque)))
}

// use is a share of the yield stress, or that it is not judged.
func (s sheet) use(share fit.Ratio) string {
	if share == 0 {
		return s.W.Heat.YieldNotGiven
	}
	return s.W.Heat.OfYield.With(figure.PercentUp(float64(share)))
}
