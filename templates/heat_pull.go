package templates

import (
	"matchmark/packs/job"
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
	out := []layout.Piece{s.titled(fill(s.w.pullTitle, fill(s.w.byWay, string(p.By))))}
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
			add(s.Para(s.width, []layout.Run{{Text: s.w.lookAt, Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.Strong, "  "+upper(w.Says)+".")}, layout.ParaOpts{Ref: s.h.At}))
		}
	}
	out = append(out, s.titled(s.w.orderTitle))
	out = append(out, s.hazards(s.h.PulledAt)...)
	out = append(out, s.ticked(s.pullOrder())...)
	out = append(out, layout.Piece{Block: s.dress(), Gap: 1.5})
	out = append(out, s.titled(s.w.stuckTitle), layout.Piece{Block: s.paras(layout.Strong, s.stuckLines()), Gap: 0})
	out = append(out, layout.Piece{Block: s.pullBoxes(), Gap: 3})
	out = append(out, s.titled(s.w.logTitle))
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
	hub := fill(w.neverSkin, h.What, u.atMost(h.Limit.At), u.crayon(h.Limit), u.atMost(h.Limit.At))
	if h.Limit.NoFlame {
		hub += " " + w.noFlame
	}
	out := []string{hub}
	for _, n := range h.Neighbours {
		line := fill(w.neverPart, n.Name, u.long(n.Distance), u.atMost(n.Limit.At))
		if n.Limit.NoFlame {
			line += " " + w.noFlame
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
		return []string{s.w.noPace}
	}
	return []string{
		s.pace(plan, s.u) + " " + s.w.paceSlow,
		fill(s.w.tooFast, s.u.atMost(s.h.Limit.At), clock(heat.Second(math.Ceil(float64(plan.Band.MostFree))))),
	}
}

// courseAndChart sets the chart of the opening beside the sentences.
func (s heatSheet) courseAndChart(p *heat.Plan) layout.Block {
	const chartW, gap = 98, 4
	chart := s.chart(p, chartW)
	text := s.parasIn(s.width-chartW-gap, layout.Body, s.courseLines(p))
	return layout.Beside(gap, chart, text)
}

// courseLines say what happens in time.
func (s heatSheet) courseLines(p *heat.Plan) []string {
	w, u := s.w, s.u
	free := fill(w.freeLine, clock(p.Free), kilowatts(p.Net, math.Round), u.rise(p.Need.Rise), u.fine(p.Need.Opening), u.temp(p.Skin), u.temp(p.Bore), u.temp(p.Seat))
	stays := fill(w.staysLine, lasting(p.Stays))
	if p.Endless {
		stays = fill(w.staysEndless, lasting(p.Stays))
	}
	if p.HeatOn >= 5 && !p.Endless {
		stays += " " + fill(w.keepOnLine, lasting(p.Loose))
	}
	return []string{
		free, stays,
		fill(w.bandLine, kilowatts(p.Band.Least, math.Ceil), kilowatts(p.Band.Most, math.Floor), clock(p.Band.LeastFree), clock(p.Band.MostFree)),
	}
}

// furtherLines say what the engineer asks: where the opening ends, the wall, the
// neighbours, the colours.
func (s heatSheet) furtherLines(p *heat.Plan) []string {
	w, u := s.w, s.u
	var out []string
	if p.Levels > 0 {
		out = append(out, fill(w.levelsLine, u.fine(p.Levels)))
	}
	wall := fill(w.wallLine, u.rise(p.Wall.Difference), u.stress(float64(p.Wall.AtBore)), u.stress(float64(p.Wall.AtSkin)))
	if p.Wall.Use > 0 {
		wall += " " + fill(w.wallUse, percent(float64(p.Wall.Use)))
	} else {
		wall += " " + w.wallNoUse
	}
	out = append(out, wall+" "+fill(w.intoLine, strconv.FormatFloat(float64(p.Into)/1e6, 'f', 1, 64)))
	for _, n := range p.Neighbours {
		out = append(out, fill(w.nearLine, n.Name, u.temp(n.Greatest), takes(n.At))+" "+fill(w.nearStuck, u.temp(n.IfStuck), takes(n.IfStuckAt)))
	}
	for _, col := range heat.TemperColours() {
		if col.From >= s.h.Limit.At {
			return append(out, fill(w.colours, col.Name, u.temp(col.From)))
		}
	}
	return out
}

// pullOrder are the acts of a pull, in their order.
func (s heatSheet) pullOrder() []string {
	p, w := s.h.Pull, s.w
	acts := w.orderInduction
	if p.By == heat.Torch {
		acts = w.orderTorch
	}
	var out []string
	for _, a := range acts {
		switch a {
		case "{puller}":
			out = append(out, fill(w.orderPuller, p.Puller))
		case "{shield}":
			if p.Shield != "" && len(s.h.Neighbours) > 0 {
				out = append(out, fill(w.orderShield, s.h.Neighbours[0].Name, p.Shield))
			}
		case "{neighbour}":
			out = append(out, s.keptCool()...)
		default:
			out = append(out, fill(a, s.h.FireWatch.Print()))
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
	stop := fill(w.stuckStop, u.atMost(s.h.Limit.At), takes(p.Longest), u.atMost(coolEnough))
	if p.IfStuck != "" {
		stop += " " + p.IfStuck
	}
	var ways []string
	if s.h.Seat.Bore > 0 {
		ways = append(ways, w.stuckBore)
	}
	if g := s.h.Fit.Grip; g != nil {
		ways = append(ways, fill(w.stuckPuller, u.forceUp(float64(g.Pull.Axial))))
	}
	return []string{stop, fill(w.stuckWays, strings.Join(ways, "; "))}
}

// dress is the line of what is worn, with its signs.
func (s heatSheet) dress() layout.Block {
	text := s.w.dressOther
	if s.h.Pull.By == heat.Torch {
		text = s.w.dressTorch
	}
	signs := layout.Middle(1.5, s.signs(&job.Caution{At: s.h.At, Signs: []string{"M013", "M009"}}, fullNote)...)
	runs := []layout.Run{layout.T(layout.Strong, s.w.dressTitle+" "), layout.T(layout.Body, text)}
	return layout.Middle(3, signs, s.Para(s.width-signs.W-3, runs, layout.ParaOpts{Ref: s.h.At}))
}

// pullBoxes are the boxes of a pull: permit, fire watch, temperatures, times.
func (s heatSheet) pullBoxes() layout.Block {
	w := s.w
	boxes := []layout.Block{s.degreeBox(w.hubStart), s.degreeBox(w.shaftStart), s.degreeBox(w.airStart)}
	if s.h.Pull.By == heat.Torch {
		boxes = append(boxes,
			s.WideBox(layout.RoleWords, 32, 1, w.permitNo, s.h.At), s.WideBox(layout.RoleName, 55, 1, w.watchName, s.h.At),
			s.timeBox(w.watchStart), s.timeBox(w.watchEnd), s.WideBox(layout.RoleWords, 32, 1, w.torches, s.h.At))
	}
	boxes = append(boxes, s.timeBox(w.heatOnAt), s.timeBox(w.freeAt), s.timeBox(w.heatOffAt), s.degreeBox(w.skinAtFree),
		s.Tick(layout.Body, w.cameOff, s.h.At), s.Tick(layout.Body, w.didNotMove, s.h.At), s.Box(layout.RoleInitials, w.initials, s.h.At))
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
		text := fill(w.logElsewhere, d.Mark, s.page("found "+d.Mark))
		return []layout.Piece{{Block: s.paras(layout.Body, []string{text})}}
	}
	cols := []column{{w.logTime, 18}, {w.logSkin, 0}, {w.logShaft, 30}}
	for _, n := range s.h.Neighbours[:min(len(s.h.Neighbours), 2)] {
		cols = append(cols, column{n.Name, 36})
	}
	cols = append(cols, column{w.logBy, 24})
	g := s.grid(cols...)
	g.t.MinH = 9
	step := s.logStep()
	var rows []layout.Row
	for i := range logRows {
		at := heat.Second(i+1) * step
		rows = append(rows, g.row(s.h.At, g.text(0, layout.Strong, clock(at), s.h.At), s.mustHave(g, at)))
	}
	return g.t.Pieces(append(rows, g.blank(1)...))
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
				return g.text(1, layout.Sub, fill(s.w.mustPass, s.u.atLeast(p.Skin)), s.h.At)
			}
		}
	}
	return layout.Block{}
}
