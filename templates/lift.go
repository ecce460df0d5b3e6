package templates

import (
	"cmp"
	"matchmark/packs/job"
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/lift"
)

// lifts sets the lift sheets: for each lift what it rests on, the verdict, the
// drawing to scale, legs and gear, the places to stop, and the boxes of the day.
func lifts(c *composer) []layout.Piece {
	var out []layout.Piece
	for i, l := range c.job.Lifts {
		pieces := c.liftSheet(l)
		pieces[0].NewPage = i > 0
		out = append(out, pieces...)
	}
	return out
}

// liftSheet is one lift.
func (c *composer) liftSheet(l *job.Lift) []layout.Piece {
	head := c.liftHead(l)
	out := []layout.Piece{{Block: head.Anchored("lift " + l.Mark), KeepNext: true, Title: l.Mark + "  " + l.What, Level: 1}}
	add := func(gap layout.Mm, blocks ...layout.Block) {
		for _, b := range blocks {
			if !b.Empty() {
				out = append(out, layout.Piece{Block: b, Gap: gap, Under: []*layout.Block{&head}})
			}
		}
	}
	if len(l.Because) > 0 {
		add(2, c.liftRefusal(l))
	}
	add(2, c.liftFacts(l)...)
	if len(l.Because) > 0 {
		add(4, c.planningLine())
		return out
	}
	add(2, c.liftVerdict(l))
	add(2, c.liftCautions(l)...)
	add(3, c.liftDrawing(l))
	table := func(ps []layout.Piece, whole bool) {
		if len(ps) == 0 {
			return
		}
		ps[0].Gap = 3
		for i := range ps[:len(ps)-1] {
			ps[i].KeepNext = whole || i < 2
		}
		out = append(out, ps...)
	}
	table(c.legTable(l, &head), true)
	add(1.5, c.legNotes(l)...)
	table(c.gearTable(l, &head), false)
	table(c.stopTable(l, &head), false)
	for _, st := range l.Steps {
		add(4, c.liftDay(l, st))
	}
	add(4, c.planningLine())
	out[len(out)-1].KeepNext = true
	add(0.8, c.liftWorking(l)...)
	return out
}

// liftHead is the heading of a lift, drawn again on each page it runs on to.
func (c *composer) liftHead(l *job.Lift) layout.Block {
	var at []string
	for _, st := range l.Steps {
		at = append(at, c.stepRef(st))
	}
	runs := []layout.Run{layout.T(layout.Section, "▶ "+l.Mark+"  "+l.What)}
	if len(at) > 0 {
		runs = append(runs, layout.T(layout.Sub, "   "+fill(c.w.madeAt, strings.Join(at, ", "))))
	}
	return layout.Above(1, c.Para(c.width, runs, layout.ParaOpts{Ref: l.At}), c.rule(layout.Heavy)).Pad(1, 0, 1, 0)
}

// liftRefusal says why a lift cannot be computed.
func (c *composer) liftRefusal(l *job.Lift) layout.Block {
	width := c.width - 8
	lines := []layout.Block{c.Para(width, []layout.Run{layout.T(layout.Limit, fill(c.w.notComputed, l.Mark))}, layout.ParaOpts{Ref: l.At})}
	for _, why := range l.Because {
		lines = append(lines, c.Para(width, []layout.Run{layout.T(layout.Strong, "· "+why)}, layout.ParaOpts{Ref: l.At}))
	}
	lines = append(lines, c.Para(width, []layout.Run{{Text: c.w.doNotLift, Style: layout.Strong, Deco: layout.Inverse}}, layout.ParaOpts{Ref: l.At}))
	return layout.Above(1, lines...).Pad(3, 4, 3, 4).Border(layout.Rect{Weight: layout.Heavy})
}

// planningLine is the sentence that leaves the lift to those who answer for it.
func (c *composer) planningLine() layout.Block {
	return c.Para(c.width, []layout.Run{layout.T(layout.Strong, c.w.planningLift)}, layout.ParaOpts{})
}

// liftFacts are the lines of what is known: mass, centre of gravity, rig, crane,
// lay-down, crew.
func (c *composer) liftFacts(l *job.Lift) []layout.Block {
	w := c.w
	var out []layout.Block
	line := func(name, text string) {
		if text != "" {
			out = append(out, c.Para(c.width, []layout.Run{layout.T(layout.Strong, name+": "), layout.T(layout.Body, text)}, layout.ParaOpts{Ref: l.At, Hang: 4}))
		}
	}
	line(w.massOf, c.massText(l))
	line(w.centreAt, c.centreText(l))
	line(w.hangsOn, c.rigText(l))
	line(w.layDownAt, c.layDownText(l))
	line(w.supportsLine, strings.Join(l.Supports, ", "))
	line(w.crewLine, strings.Join(l.Crew, ", "))
	if l.Note != "" {
		out = append(out, c.Para(c.width, []layout.Run{layout.T(layout.Body, l.Note)}, layout.ParaOpts{Ref: l.At}))
	}
	return []layout.Block{layout.Above(0.6, out...)}
}

// massText is the mass with its tolerance and where it is known from.
func (c *composer) massText(l *job.Lift) string {
	load := l.Load()
	if load.Mass <= 0 {
		return ""
	}
	source := c.w.massFrom[massWord(load.Source)]
	if l.MassSource != "" {
		source += ": " + l.MassSource
	}
	if load.MassTolerance == 0 {
		return fill(c.w.massTold, l.Weight(load.Mass), source)
	}
	return fill(c.w.massTolerance, l.Weight(load.Mass), l.Weight(load.MassTolerance), source)
}

// massWord names where a mass is known from, for the catalogue.
func massWord(s lift.MassSource) string {
	return map[lift.MassSource]string{lift.Weighed: "weighed", lift.Drawing: "drawing", lift.Computed: "computed", lift.Estimated: "estimated"}[s]
}

// centreText is the centre of gravity with its band, and the origin.
func (c *composer) centreText(l *job.Lift) string {
	load := l.Load()
	if load.CoG == nil {
		return ""
	}
	one := func(axis string, at, within lift.Mm) string {
		if within == 0 {
			return axis + " " + l.Length(at)
		}
		return fill(c.w.centreBand, axis, l.Length(at), l.Length(within))
	}
	g, t := load.CoG, load.CoGTolerance
	return strings.Join([]string{one("x", g.X, t.X), one("y", g.Y, t.Y), one("z", g.Z, t.Z)}, ", ") + ". " + fill(c.w.measuredFrom, l.Origin)
}

// rigText is what the load hangs on.
func (c *composer) rigText(l *job.Lift) string {
	w := c.w
	if l.ByHand {
		return fill(w.byHandOn, strconv.Itoa(len(l.HandPlan.Grips)), l.Weight(l.HandPlan.MayCarry))
	}
	word := map[lift.Rig]string{lift.Bridle: "bridle", lift.Spreader: "spreader", lift.Beam: "beam", lift.TwoHooks: "two hooks"}[l.Plan.Rig]
	basis := map[lift.Basis]string{lift.EN: "EN", lift.US: "US"}[l.Plan.Basis]
	text := fill(w.rigs[word], strconv.Itoa(len(l.Plan.Legs)))
	if basis != "" {
		text = fill(w.ratedBy, text, basis)
	}
	for _, k := range []lift.Crane{l.Plan.Crane, l.Plan.SecondCrane} {
		if k.Name != "" {
			text += ". " + fill(w.craneLine, k.Name, l.Weight(k.Rated))
		}
	}
	return text
}

// layDownText is where the load is laid down, and what it does to the floor there.
func (c *composer) layDownText(l *job.Lift) string {
	s := l.LayDown
	if s == nil {
		return ""
	}
	text := s.Mark + " " + s.What
	if s.Support != "" {
		text += ", " + fill(c.w.support, s.Support)
	}
	if l.Floor != nil {
		text = fill(c.w.floorLine, text, l.PressureText(), s.Floor, l.Floor.Used.Percent())
	}
	return text
}

// liftCautions are what has to be minded, and the line of a critical lift.
func (c *composer) liftCautions(l *job.Lift) []layout.Block {
	var list []lift.Caution
	if l.ByHand {
		list = l.HandResult.Cautions
	} else {
		list = l.Result.Cautions
	}
	var out []layout.Block
	for _, n := range list {
		style, mark := layout.Body, "· "
		if n.Stop || n.Code == lift.CriticalLift {
			style, mark = layout.Strong, "▶ "
		}
		out = append(out, c.Para(c.width, []layout.Run{layout.T(style, mark+n.Message)}, layout.ParaOpts{Ref: l.At, Hang: 4}))
	}
	if l.SignedPlan != "" {
		out = append(out, c.Tick(layout.Strong, fill(c.w.signedPlan, l.SignedPlan), l.At))
	}
	if len(out) == 0 {
		return nil
	}
	return []layout.Block{layout.Above(0.6, append([]layout.Block{c.heading(c.w.cautionsHere)}, out...)...)}
}

// liftLines are the lines of a step that makes lifts: the sheet, the mass, how it
// hangs, and the trial lift.
func (c *composer) liftLines(st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	if st.OnHook != "" {
		text := fill(c.w.onHookLine, st.OnHook, c.massOf(append(slices.Clone(st.Remove), st.Fit...)))
		out = append(out, c.Para(width, []layout.Run{layout.T(layout.Strong, text)}, layout.ParaOpts{Ref: st.At}))
	}
	for _, l := range st.Lifts {
		line := c.liftLine(l)
		if slices.Contains(st.GoesOn, l) {
			line = fill(c.w.goesOnLine, l.Mark, c.raisedAt(l, st), c.page("lift "+l.Mark), c.massText(l))
		}
		out = append(out, c.strongLine(line, width, st))
		if slices.Contains(st.LeftHanging, l) {
			out = append(out, c.strongLine(fill(c.w.staysUpLine, l.Mark, cmp.Or(strings.Join(l.Stops, " "), c.w.noStops)), width, st))
		}
	}
	return out
}

// massOf lists the parts of moves that are heavy on this site: Impeller 405 kg.
func (c *composer) massOf(moves []*job.Move) string {
	var out []string
	for _, m := range moves {
		if m.Part.Mass == nil {
			continue
		}
		if over, err := m.Part.Mass.Cmp(c.job.Site.Heavy); err == nil && over > 0 {
			out = append(out, m.Part.Name+" "+m.Part.Mass.Print())
		}
	}
	return strings.Join(out, ", ")
}

func (c *composer) liftLine(l *job.Lift) string {
	page := c.page("lift " + l.Mark)
	switch {
	case l.HandResult != nil:
		return fill(c.w.liftByHandLine, l.Mark, page, c.massText(l), strconv.Itoa(len(l.HandPlan.Grips)))
	case l.Result != nil:
		return fill(c.w.liftLine, l.Mark, page, c.massText(l), c.tiltText(l), l.Length(l.Trial))
	}
	return fill(c.w.liftNotComputed, l.Mark, page)
}

// tilted says by how much and to which side the load hangs out of level.
func (c *composer) tilted(l *job.Lift) string {
	t := l.Result.Tilt
	if t.Lower != "" {
		return fill(c.w.tiltWords, t.Total.String(), t.Lower, l.Length(t.Drop))
	}
	return fill(c.w.tiltSide, t.Total.String(), l.LowSide())
}

// tiltText says how level the load hangs.
func (c *composer) tiltText(l *job.Lift) string {
	t := l.Result.Tilt
	text := c.w.levelWords
	if l.OutOfLevel() {
		text = c.tilted(l)
	}
	if t.Most > t.Total {
		text = fill(c.w.tiltMost, text, t.Most.String())
	}
	return text
}
