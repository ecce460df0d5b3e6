package heatsheet

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/units"
	"matchmark/templates/block"
	"matchmark/templates/figure"
	"matchmark/templates/picture"
	"matchmark/templates/words"
)

// pullPieces set the part of the sheet for drawing a hub off.
func (s sheet) pullPieces() []layout.Piece {
	p := s.h.Pull
	out := []layout.Piece{s.titled(s.W.HeatPull.Title.With(s.W.Heat.ByWay.With(s.W.Said(string(p.By)))))}
	add := func(b layout.Block) {
		if !b.Empty() {
			out = append(out, layout.Piece{Block: b, Gap: 2})
		}
	}
	add(s.heavyFrame(s.parasIn(s.Span-6, layout.Limit, s.highestLines()), s.parasIn(s.Span-6, layout.Limit, s.paceLines())))
	if plan := p.Plan; plan != nil {
		add(s.courseAndChart(plan))
		add(s.paras(layout.Body, []string{strings.Join(s.furtherLines(plan), " ")}))
		for _, b := range s.lookFirst(plan.Warnings) {
			add(b)
		}
	}
	out = append(out, s.titled(s.W.Heat.OrderTitle))
	out = append(out, s.hazards(s.h.PulledAt)...)
	out = append(out, s.numberedTicks(s.pullOrder())...)
	out = append(out, s.slingPieces(s.h.PulledAt)...)
	out = append(out, layout.Piece{Block: s.protectiveWear(), Gap: 1.5})
	out = append(out, s.titled(s.W.HeatPull.StuckTitle), layout.Piece{Block: s.paras(layout.Strong, s.ifStuckLines()), Gap: 0})
	out = append(out, s.handPieces()...)
	for _, row := range s.pullBoxes() {
		out = append(out, layout.Piece{Block: row, Gap: layout.GapY})
	}
	out = append(out, s.titled(s.W.HeatPull.LogTitle))
	return append(out, s.logTable()...)
}

// highestLines are the highest temperatures of the hub and of what sits beside it.
func (s sheet) highestLines() []string {
	h, u, w := s.h, s.u, s.W
	hub := w.Heat.LimitNotKnown.With(h.What)
	if h.LimitKnown() {
		hub = w.HeatPull.NeverSkin.With(h.What, s.highest(h.Limit, h.LimitFrom), u.Crayon(h.Limit), u.AtMost(h.Limit.At))
	}
	if h.Limit.NoFlame {
		hub += " " + w.Heat.NoFlame
	}
	out := []string{hub}
	for _, n := range h.Neighbours {
		line := w.Heat.LimitNotKnown.With(n.Name)
		if n.Limit.Source != "" {
			line = w.HeatPull.NeverPart.With(n.Name, u.Length(n.Distance), s.highest(n.Limit, n.LimitFrom))
		}
		if n.Limit.NoFlame {
			line += " " + w.Heat.NoFlame
		}
		out = append(out, line)
	}
	return out
}

// highest is a highest temperature, with the source that the author names for it.
func (s sheet) highest(l heat.Limit, from string) string {
	text := s.u.AtMost(l.At)
	if from != "" {
		text += " (" + from + ")"
	}
	return text
}

// paceLines tell the band of heat as what a mechanic sees: how fast the skin must
// get hot, and how fast it must not.
func (s sheet) paceLines() []string {
	plan := s.h.Pull.Plan
	if plan == nil {
		return nil
	}
	if len(plan.Band.Pace) != 2 {
		return []string{s.W.HeatPull.NoPace}
	}
	return []string{
		pace(s.Composer, plan, s.u) + " " + s.W.HeatPull.Slow,
		s.W.HeatPull.TooFast.With(figure.Clock(plan.Band.MostFree)),
	}
}

// courseAndChart sets the chart of the opening beside the sentences, as wide as it may be without
// making the two higher.
func (s sheet) courseAndChart(p *heat.Plan) layout.Block {
	const widest, least, step, gap layout.Mm = 98, 82, 4, 4
	best := layout.Block{}
	for w := widest; w >= least; w -= step {
		chart := picture.Opening(s.Setter, s.W, s.h, p, w)
		both := layout.Beside(gap, chart, s.parasIn(s.Span-w-gap, layout.Body, s.courseLines(p)))
		if best.Empty() || both.H < best.H {
			best = both
		}
	}
	return best
}

// courseLines say what happens in time.
func (s sheet) courseLines(p *heat.Plan) []string {
	w, u := s.W, s.u
	free := w.HeatPull.FreeLine.With(figure.Clock(p.Free), figure.Kilowatts(p.Net, units.Nearest), u.Rise(p.Need.Rise), u.InterferenceUp(p.Need.Opening), u.TempUp(p.Skin), u.TempUp(p.Bore), u.TempUp(p.Seat))
	return append(append([]string{free}, s.windowLines(p)...),
		w.HeatPull.BandLine.With(figure.Kilowatts(p.Band.Least, units.Up), figure.Kilowatts(p.Band.Most, units.Down), figure.Clock(p.Band.LeastFree), figure.Clock(p.Band.MostFree)))
}

// furtherLines say what the engineer asks: where the opening ends, the wall, the
// neighbours, the colours.
func (s sheet) furtherLines(p *heat.Plan) []string {
	w, u := s.W, s.u
	var out []string
	if p.Levels > 0 {
		out = append(out, w.HeatPull.LevelsLine.With(u.InterferenceDown(p.Levels)))
	}
	wall := w.HeatPull.WallLine.With(u.Rise(p.Wall.Difference), u.Stress(float64(p.Wall.AtBore)), u.Stress(float64(p.Wall.AtSkin)))
	if p.Wall.Use > 0 {
		wall += " " + w.HeatPull.WallUse.With(figure.PercentUp(float64(p.Wall.Use)))
	} else {
		wall += " " + w.HeatPull.WallNoUse
	}
	out = append(out, wall+" "+w.HeatPull.IntoLine.With(figure.Megajoules(p.Into)))
	for _, n := range p.Neighbours {
		out = append(out, w.HeatPull.NearLine.With(n.Name, u.TempUp(n.Greatest), figure.TimeUp(n.At))+" "+w.HeatPull.NearStuck.With(u.TempUp(n.IfStuck), figure.TimeUp(n.IfStuckAt)))
	}
	for _, col := range heat.TemperColours() {
		if col.From >= s.h.Limit.At {
			return append(out, w.HeatPull.Colours.With(s.W.Said(col.Name), u.AtMost(col.From)))
		}
	}
	return out
}

// pullOrder are the acts of a pull, in their order.
func (s sheet) pullOrder() []string {
	p, w := s.h.Pull, s.W
	acts := w.HeatPull.OrderInduction
	if p.By == heat.Torch {
		acts = w.HeatPull.OrderTorch
	}
	var out []string
	for _, a := range acts {
		switch a {
		case words.ActPuller:
			out = append(out, s.pullerAct())
		case words.ActShield:
			switch {
			case p.Shield == "":
			case len(s.h.Neighbours) > 0:
				out = append(out, w.HeatPull.OrderShield.With(s.h.Neighbours[0].Name, p.Shield))
			default:
				out = append(out, w.HeatPull.OrderShieldBare.With(p.Shield))
			}
		case words.ActNeighbour:
			out = append(append(out, s.coolingActs()...), s.coolingReady()...)
		case words.ActMoves:
			out = append(out, s.movesAct())
		default:
			out = append(out, a.With(s.h.FireWatch.Print()))
		}
	}
	return out
}

// coolingReady is the act of having cooling ready for the shaft, where a neighbour gets too hot if
// the hub does not move.
func (s sheet) coolingReady() []string {
	plan := s.h.Pull.Plan
	if plan == nil || !slices.ContainsFunc(plan.Neighbours, func(n heat.Warmed) bool { return n.Greatest <= n.Limit.At && n.IfStuck > n.Limit.At }) {
		return nil
	}
	return []string{s.W.HeatPull.OrderCooling}
}

// coolingActs are the acts that keep neighbours cool.
func (s sheet) coolingActs() []string {
	var out []string
	for _, n := range s.h.Neighbours {
		var says []string
		for _, t := range []string{n.KeptCool, n.MeasuredWith} {
			if t != "" {
				says = append(says, t)
			}
		}
		if len(says) > 0 {
			out = append(out, n.Name+s.W.Common.Colon+strings.Join(says, s.W.Common.Semicolon)+".")
		}
	}
	return out
}

// coolEnough is the temperature below which a hub that did not move is touched
// again: common practice, no source.
const coolEnough heat.Celsius = 40

// ifStuckLines say what is done when the hub does not move.
func (s sheet) ifStuckLines() []string {
	p, w, u := s.h.Pull, s.W, s.u
	stop := w.HeatPull.StuckStop.With(s.longest(), u.AtMost(coolEnough))
	if p.IfStuck != "" {
		stop += " " + p.IfStuck
	}
	var ways []string
	if s.h.Seat.Bore > 0 {
		ways = append(ways, w.HeatPull.StuckBore)
	}
	if g := s.h.Fit.Grip; g != nil {
		ways = append(ways, w.HeatPull.StuckPuller.With(u.ForceUp(float64(g.Pull.Axial))))
	}
	if len(ways) == 0 { // of a draft, where the grip is not worked out
		return []string{stop}
	}
	return []string{stop, w.HeatPull.StuckWays.With(strings.Join(ways, s.W.Common.Semicolon))}
}

// protectiveWear is the line of what is worn, with its signs.
func (s sheet) protectiveWear() layout.Block {
	text := s.W.HeatPull.DressOther
	if s.h.Pull.By == heat.Torch {
		text = s.W.HeatPull.DressTorch
	}
	signs := layout.Middle(1.5, s.Signs(&job.Caution{At: s.h.At, Signs: []string{"M013", "M009"}}, block.FullSigns)...)
	runs := []layout.Run{layout.T(layout.Strong, s.W.HeatPull.DressTitle+" "), layout.T(layout.Body, text)}
	return layout.Middle(3, signs, s.Para(s.Span-signs.W-3, runs, layout.ParaOpts{Ref: s.h.At}))
}

// pullBoxes are the rows of boxes of a pull: permit, fire watch, temperatures, times.
func (s sheet) pullBoxes() []layout.Block {
	w := s.W
	boxes := []layout.Block{s.degreeBox(w.HeatPull.HubStart), s.degreeBox(w.HeatPull.ShaftStart), s.degreeBox(w.HeatPull.AirStart)}
	if s.h.Pull.By == heat.Torch {
		boxes = append(boxes, s.flameBoxes()...)
	}
	boxes = append(boxes, s.timeBox(w.HeatPull.HeatOnAt), s.timeBox(w.HeatPull.FreeAt), s.timeBox(w.HeatPull.HeatOffAt), s.degreeBox(w.HeatPull.SkinAtFree),
		s.Tick(layout.Body, w.HeatPull.CameOff, s.h.At), s.Tick(layout.Body, w.HeatPull.DidNotMove, s.h.At), s.Box(layout.RoleInitials, w.Common.Initials, s.h.At))
	var rows []layout.Block
	for _, row := range block.Rows(boxes, s.Span) {
		rows = append(rows, layout.Bottom(layout.GapX, row...))
	}
	return rows
}
