package heatsheet

import (
	"matchmark/layout"
	"matchmark/packs/heat"
)

// heatToLine says how hot the part is made, and how hot it may get; on a draft what of
// that is not known.
func (s sheet) heatToLine() string {
	p, w, u := s.h.PutOn, s.W, s.u
	switch {
	case !s.h.LimitKnown():
		return w.Heat.LimitNotKnown.With(s.h.What)
	case !p.Known():
		return w.HeatOn.NotKnown + " " + w.HeatOn.NeverAbove.With(s.neverAbove())
	case p.Cold != nil && !p.Cold.HubHeated:
		return w.HeatOn.ChillCold
	}
	if low, high, ok := ladderEnds(p); ok {
		return w.HeatOn.HeatToBy.With(u.TempUp(low), u.TempUp(high), s.neverAbove())
	}
	return w.HeatOn.HeatTo.With(u.TempUp(p.SetTo), s.neverAbove())
}

// neverAbove is the highest temperature of the part, with its source where that does not stand
// on the same sheet already, above the pull.
func (s sheet) neverAbove() string {
	if s.h.Pull != nil {
		return s.u.AtMost(s.h.Limit.At)
	}
	return s.highest(s.h.Limit, s.h.LimitFrom)
}

// coldLine says what the coolant does for the shaft, and what room that makes.
func (s sheet) coldLine(c *heat.ColdFitted) string {
	w, u := s.W, s.u
	line := w.HeatOn.ChillLine.With(s.W.Said(string(s.h.PutOn.Coolant)), u.AtMost(c.Shaft), u.InterferenceDown(c.Contraction), s.W.Said(c.Source))
	if c.HubHeated {
		line += " " + w.HeatOn.ChillHot.With(u.TempUp(s.h.PutOn.SetTo))
	}
	return line + " " + w.HeatOn.ColdRoom.With(u.InterferenceDown(c.Room))
}

// flameBoxes are the boxes of permit and fire watch.
func (s sheet) flameBoxes() []layout.Block {
	w := s.W
	return []layout.Block{
		s.WideBox(layout.RoleWords, 32, 1, w.HeatPull.PermitNo, s.h.At), s.WideBox(layout.RoleName, 55, 1, w.HeatPull.WatchName, s.h.At),
		s.timeBox(w.HeatPull.WatchStart), s.timeBox(w.HeatPull.WatchEnd), s.WideBox(layout.RoleWords, 32, 1, w.HeatPull.Torches, s.h.At),
	}
}

// flameAct is what stands before a flame on a part that is put on.
func (s sheet) flameAct() string { return s.W.HeatOn.OrderFlame.With(s.h.FireWatch.Print()) }
