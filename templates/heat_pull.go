package templates

import (
	"matchmark/packs/job"
	"matchmark/templates/words"
	"math"
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/heat"
)

// pullPieces set the part of the sheet for drawing a hub off.
func (s heatSheet) pullPieces() []layout.Piece {
	p := s.h.Pull
	out := []layout.Piece{s.titled(s.w.HeatPull.Title.With(s.w.Heat.ByWay.With(string(p.By))))}
	add := func(b layout.Block) {
		if !b.Empty() {
			out = append(out, layout.Piece{Block: b, Gap: 2})
		}
	}
	add(s.boxed(s.parasIn(s.width-6, layout.Limit, s.neverLines()), s.parasIn(s.width-6, layout.Limit, s.paceLines())))
	if plan := p.Plan; plan != nil {
		add(s.courseAndChart(plan))
		add(s.paras(layout.Body, s.furtherLines(plan)))
		for _, w := range plan.Warnings {
			add(s.Para(s.width, []layout.Run{{Text: s.w.HeatPull.LookAt, Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.Strong, "  "+upper(w.Says)+".")}, layout.ParaOpts{Ref: s.h.At}))
		}
	}
	out = append(out, s.titled(s.w.Heat.OrderTitle))
	out = append(out, s.hazards(s.h.PulledAt)...)
	out = append(out, s.ticked(s.pullOrder())...)
	out = append(out, layout.Piece{Block: s.dress(), Gap: 1.5})
	out = append(out, s.titled(s.w.HeatPull.StuckTitle), layout.Piece{Block: s.paras(layout.Strong, s.stuckLines()), Gap: 0})
	out = append(out, layout.Piece{Block: s.pullBoxes(), Gap: 3})
	out = append(out, s.titled(s.w.HeatPull.LogTitle))
	out = append(out, s.log()...)
	if plan := p.Plan; plan != nil {
		out = append(out, s.assumed(plan.Assumptions, plan.Working)...)
	}
	return out
}

// upper begins a sentence.
func upper(t string) string { return strings.ToUpper(t[:1]) + t[1:] }

// neverLines are the highest temperatures of the hub and of what sits beside it.
func (s heatSheet) neverLines() []string {
	h, u, w := s.h, s.u, s.w
	hub := w.HeatPull.NeverSkin.With(h.What, u.atMost(h.Limit.At), u.crayon(h.Limit), u.atMost(h.Limit.At))
	if h.Limit.NoFlame {
		hub += " " + w.Heat.NoFlame
	}
	out := []string{hub}
	for _, n := range h.Neighbours {
		line := w.HeatPull.NeverPart.With(n.Name, u.long(n.Distance), u.atMost(n.Limit.At))
		if n.Limit.NoFlame {
			line += " " + w.Heat.NoFlame
		}
		out = append(out, line)
	}
	return out
}

// paceLines tell the band of heat as what a mechanic sees: how fast the skin must
// get hot, and how fast it must not.
func (s heatSheet) paceLines() []string {
	plan := s.h.Pull.Plan
	if plan == nil {
		return nil
	}
	if len(plan.Band.Pace) != 2 {
		return []string{s.w.HeatPull.NoPace}
	}
	return []string{
		s.pace(plan, s.u) + " " + s.w.HeatPull.Slow,
		s.w.HeatPull.TooFast.With(s.u.atMost(s.h.Limit.At), clock(heat.Second(math.Ceil(float64(plan.Band.MostFree))))),
	}
}

// courseAndChart sets the chart of the opening beside the sentences.
func (s heatSheet) courseAndChart(p *heat.Plan) layout.Block {
	const chartW, gap = 98, 4
	chart := chart(s.Setter, s.w, s.h, p, chartW)
	text := s.parasIn(s.width-chartW-gap, layout.Body, s.courseLines(p))
	return layout.Beside(gap, chart, text)
}

// courseLines say what happens in time.
func (s heatSheet) courseLines(p *heat.Plan) []string {
	w, u := s.w, s.u
	free := w.HeatPull.FreeLine.With(clock(p.Free), kilowatts(p.Net, math.Round), u.rise(p.Need.Rise), u.fine(p.Need.Opening), u.temp(p.Skin), u.temp(p.Bore), u.temp(p.Seat))
	stays := w.HeatPull.StaysLine.With(lasting(p.Stays))
	if p.Endless {
		stays = w.HeatPull.StaysEndless.With(lasting(p.Stays))
	}
	if p.HeatOn >= 5 && !p.Endless {
		stays += " " + w.HeatPull.KeepOnLine.With(lasting(p.Loose))
	}
	return []string{
		free, stays,
		w.HeatPull.BandLine.With(kilowatts(p.Band.Least, math.Ceil), kilowatts(p.Band.Most, math.Floor), clock(p.Band.LeastFree), clock(p.Band.MostFree)),
	}
}

// furtherLines say what the engineer asks: where the opening ends, the wall, the
// neighbours, the colours.
func (s heatSheet) furtherLines(p *heat.Plan) []string {
	w, u := s.w, s.u
	var out []string
	if p.Levels > 0 {
		out = append(out, w.HeatPull.LevelsLine.With(u.fine(p.Levels)))
	}
	wall := w.HeatPull.WallLine.With(u.rise(p.Wall.Difference), u.stress(float64(p.Wall.AtBore)), u.stress(float64(p.Wall.AtSkin)))
	if p.Wall.Use > 0 {
		wall += " " + w.HeatPull.WallUse.With(percent(float64(p.Wall.Use)))
	} else {
		wall += " " + w.HeatPull.WallNoUse
	}
	out = append(out, wall+" "+w.HeatPull.IntoLine.With(strconv.FormatFloat(float64(p.Into)/1e6, 'f', 1, 64)))
	for _, n := range p.Neighbours {
		out = append(out, w.HeatPull.NearLine.With(n.Name, u.temp(n.Greatest), takes(n.At))+" "+w.HeatPull.NearStuck.With(u.temp(n.IfStuck), takes(n.IfStuckAt)))
	}
	for _, col := range heat.TemperColours() {
		if col.From >= s.h.Limit.At {
			return append(out, w.HeatPull.Colours.With(col.Name, u.temp(col.From)))
		}
	}
	return out
}

// pullOrder are the acts of a pull, in their order.
func (s heatSheet) pullOrder() []string {
	p, w := s.h.Pull, s.w
	acts := w.HeatPull.OrderInduction
	if p.By == heat.Torch {
		acts = w.HeatPull.OrderTorch
	}
	var out []string
	for _, a := range acts {
		switch a {
		case words.ActPuller:
			out = append(out, w.HeatPull.OrderPuller.With(p.Puller))
		case words.ActShield:
			if p.Shield != "" && len(s.h.Neighbours) > 0 {
				out = append(out, w.HeatPull.OrderShield.With(s.h.Neighbours[0].Name, p.Shield))
			}
		case words.ActNeighbour:
			out = append(out, s.keptCool()...)
		default:
			out = append(out, a.With(s.h.FireWatch.Print()))
		}
	}
	return out
}

// keptCool are the acts that keep neighbours cool.
func (s heatSheet) keptCool() []string {
	var out []string
	for _, n := range s.h.Neighbours {
		var says []string
		for _, t := range []string{n.KeptCool, n.MeasuredWith} {
			if t != "" {
				says = append(says, t)
			}
		}
		if len(says) > 0 {
			out = append(out, n.Name+": "+strings.Join(says, "; ")+".")
		}
	}
	return out
}

// coolEnough is the temperature below which a hub that did not move is touched
// again: common practice, no source.
const coolEnough heat.Celsius = 40

// stuckLines say what is done when the hub does not move.
func (s heatSheet) stuckLines() []string {
	p, w, u := s.h.Pull, s.w, s.u
	stop := w.HeatPull.StuckStop.With(u.atMost(s.h.Limit.At), takes(p.Longest), u.atMost(coolEnough))
	if p.IfStuck != "" {
		stop += " " + p.IfStuck
	}
	var ways []string
	if s.h.Seat.Bore > 0 {
		ways = append(ways, w.HeatPull.StuckBore)
	}
	if g := s.h.Fit.Grip; g != nil {
		ways = append(ways, w.HeatPull.StuckPuller.With(u.forceUp(float64(g.Pull.Axial))))
	}
	return []string{stop, w.HeatPull.StuckWays.With(strings.Join(ways, "; "))}
}

// dress is the line of what is worn, with its signs.
func (s heatSheet) dress() layout.Block {
	text := s.w.HeatPull.DressOther
	if s.h.Pull.By == heat.Torch {
		text = s.w.HeatPull.DressTorch
	}
	signs := layout.Middle(1.5, s.signs(&job.Caution{At: s.h.At, Signs: []string{"M013", "M009"}}, fullNote)...)
	runs := []layout.Run{layout.T(layout.Strong, s.w.HeatPull.DressTitle+" "), layout.T(layout.Body, text)}
	return layout.Middle(3, signs, s.Para(s.width-signs.W-3, runs, layout.ParaOpts{Ref: s.h.At}))
}

// pullBoxes are the boxes of a pull: permit, fire watch, temperatures, times.
func (s heatSheet) pullBoxes() layout.Block {
	w := s.w
	boxes := []layout.Block{s.degreeBox(w.HeatPull.HubStart), s.degreeBox(w.HeatPull.ShaftStart), s.degreeBox(w.HeatPull.AirStart)}
	if s.h.Pull.By == heat.Torch {
		boxes = append(boxes,
			s.WideBox(layout.RoleWords, 32, 1, w.HeatPull.PermitNo, s.h.At), s.WideBox(layout.RoleName, 55, 1, w.HeatPull.WatchName, s.h.At),
			s.timeBox(w.HeatPull.WatchStart), s.timeBox(w.HeatPull.WatchEnd), s.WideBox(layout.RoleWords, 32, 1, w.HeatPull.Torches, s.h.At))
	}
	boxes = append(boxes, s.timeBox(w.HeatPull.HeatOnAt), s.timeBox(w.HeatPull.FreeAt), s.timeBox(w.HeatPull.HeatOffAt), s.degreeBox(w.HeatPull.SkinAtFree),
		s.Tick(layout.Body, w.HeatPull.CameOff, s.h.At), s.Tick(layout.Body, w.HeatPull.DidNotMove, s.h.At), s.Box(layout.RoleInitials, w.Common.Initials, s.h.At))
	return flowRow(boxes, s.width)
}

// logRows is how many rows the log has, and logSteps the times between them that a
// reader can call out, in seconds.
const logRows = 10

var logSteps = []heat.Second{5, 10, 15, 20, 30, 60, 120, 300}

// log is the table of temperatures over the time in which the slowest heat that
// works frees the hub.
func (s heatSheet) log() []layout.Piece {
	w := s.w
	if d := s.loggedAt(); d != nil {
		text := w.HeatPull.LogElsewhere.With(d.Mark, s.page("found "+d.Mark))
		return []layout.Piece{{Block: s.paras(layout.Body, []string{text})}}
	}
	cols := []column{col(w.HeatPull.LogTime, 18), col(w.HeatPull.LogSkin, 0), col(w.HeatPull.LogShaft, 30)}
	for _, n := range s.h.Neighbours[:min(len(s.h.Neighbours), 2)] {
		cols = append(cols, col(n.Name, 36))
	}
	cols = append(cols, col(w.HeatPull.LogBy, 24))
	g := s.grid(cols...)
	g.table.MinH = 9
	step := s.logStep()
	var rows []layout.Row
	for i := range logRows {
		at := heat.Second(i+1) * step
		rows = append(rows, g.row(s.h.At, g.text(0, layout.Strong, clock(at), s.h.At), s.mustHave(g, at)))
	}
	return g.table.Pieces(append(rows, g.blank(1)...))
}

// loggedAt is the dimension that logs temperatures at the step of the pull, nil if
// none does: then the sheet has a log of its own.
func (s heatSheet) loggedAt() *job.Dim {
	if s.h.PulledAt == nil {
		return nil
	}
	for _, d := range s.h.PulledAt.Measure {
		if d.Kind == "temperature" && d.Positions.Kind == job.Log {
			return d
		}
	}
	return nil
}

// logStep is the time between two rows: the shortest that reaches as far as the
// slowest heat that works, and meets the times at which the skin must have passed
// a temperature; the longest of those that meet them where none reaches so far.
func (s heatSheet) logStep() heat.Second {
	plan := s.h.Pull.Plan
	if plan == nil {
		return logSteps[len(logSteps)-2]
	}
	best := logSteps[0]
	for _, t := range logSteps {
		misses := func(p heat.Pace) bool { return math.Mod(float64(p.By), float64(t)) != 0 }
		if slices.ContainsFunc(plan.Band.Pace, misses) {
			continue
		}
		best = t
		if t*logRows >= plan.Band.LeastFree {
			break
		}
	}
	return best
}

// mustHave is the temperature that the skin must have passed, in its row.
func (s heatSheet) mustHave(g grid, at heat.Second) layout.Block {
	if plan := s.h.Pull.Plan; plan != nil {
		for _, p := range plan.Band.Pace {
			if p.By == at {
				return g.text(1, layout.Sub, s.w.HeatPull.MustPass.With(s.u.atLeast(p.Skin)), s.h.At)
			}
		}
	}
	return layout.Block{}
}
