package liftsheet

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/templates/block"
	"matchmark/templates/picture"
)

// Sheet sets the lift sheets: for each lift what it rests on, the verdict, the
// drawing to scale, legs and gear, the places to stop, and the boxes of the day.
func Sheet(c *block.Composer) []layout.Piece {
	if len(c.Job.Lifts) == 0 {
		return nil
	}
	out := []layout.Piece{rules(c)}
	for i, l := range c.Job.Lifts {
		pieces := pieces(c, l)
		if i > 0 { // below what holds for every lift there is room
			pieces[0].Gap = 3
		}
		out = append(out, pieces...)
	}
	return append(out, workings(c, c.Job.Lifts)...)
}

// rules is what holds for every lift: it is left to those who answer for it; a word is
// given at each stop, and no piece is used without its tag.
func rules(c *block.Composer) layout.Piece {
	w := c.W.Lift
	runs := []layout.Run{layout.T(layout.Strong, w.Planning)}
	if slices.ContainsFunc(c.Job.Lifts, (*job.Lift).Computed) {
		runs = append(runs, layout.T(layout.Sub, " "+w.UsualStops))
	}
	if slices.ContainsFunc(c.Job.Lifts, func(l *job.Lift) bool { return l.Result != nil && !l.ByHand }) {
		runs = append(runs, layout.T(layout.Sub, " "+w.LookBefore))
	}
	return c.RuleRuns(runs...)
}

// pieces set one lift.
func pieces(c *block.Composer, l *job.Lift) []layout.Piece {
	first, head := heading(c, l)
	out := []layout.Piece{{Block: first.Heading(2).Anchored("lift " + l.Mark), KeepNext: true, Title: l.Mark + "  " + l.What, Level: 1}}
	add := func(gap layout.Mm, blocks ...layout.Block) {
		for _, b := range blocks {
			if !b.Empty() {
				out = append(out, layout.Piece{Block: b, Gap: gap, Under: []*layout.Block{&head}})
			}
		}
	}
	add(1.4, refusal(c, l))
	if !l.Computed() {
		add(1.4, facts(c, l, knownOf(c, l), c.Span))
		out = append(out, known(c, l, &head)...)
		return out
	}
	add(1.4, verdict(c, l))
	add(1.4, cautionLines(c, l)...)
	for i := range out {
		out[i].KeepNext = true // the head of a lift is not alone at the foot of a page
	}
	add(1.4, factsAndPicture(c, l)...)
	table := func(ps []layout.Piece, whole bool) {
		if len(ps) == 0 {
			return
		}
		ps[0].Gap = 2.2
		for i := range ps[:len(ps)-1] {
			ps[i].KeepNext = ps[i].KeepNext || whole || i < 2 || i == len(ps)-2
		}
		out = append(out, ps...)
	}
	table(legTable(c, l, &head), true)
	add(1.5, legNotes(c, l)...)
	table(turnTable(c, l, &head), true)
	table(gearTable(c, l, &head), false)
	add(1.5, gearNotes(c, l)...)
	table(stopTable(c, l, &head), false)
	out = append(out, days(c, l, &head)...)
	return out
}

// heading is the heading of a lift, and as it is drawn again on each page it runs on to.
func heading(c *block.Composer, l *job.Lift) (first, again layout.Block) {
	var at []string
	for _, st := range l.Steps {
		at = append(at, c.StepRef(st))
	}
	runs := []layout.Run{layout.T(layout.Section, "▶ "+l.Mark+"  "+l.What)}
	if len(at) > 0 {
		runs = append(runs, layout.T(layout.Sub, "   "+c.W.Lift.MadeAt.With(strings.Join(at, ", "))))
	}
	return c.Headed(runs, l.At)
}

// refusal says why a lift cannot be computed, or must not be made although it could
// be; nothing where there is no reason.
func refusal(c *block.Composer, l *job.Lift) layout.Block {
	reasons, head := l.Reasons(c.W), c.W.Lift.NotComputed
	if len(reasons) == 0 && l.Computed() {
		return layout.Block{}
	}
	if l.Computed() {
		head = c.W.Lift.MustNot
	}
	width := c.Span - 8
	lines := []layout.Block{c.Para(width, []layout.Run{layout.T(layout.Limit, head.With(l.Mark))}, layout.ParaOpts{Ref: l.At})}
	for _, why := range reasons {
		lines = append(lines, c.Para(width, []layout.Run{layout.T(layout.Strong, "· "+why)}, layout.ParaOpts{Ref: l.At}))
	}
	lines = append(lines, c.Para(width, []layout.Run{{Text: c.W.Lift.DoNotLift, Style: layout.Strong, Deco: layout.Inverse}}, layout.ParaOpts{Ref: l.At}))
	return layout.Above(1, lines...).Pad(3, 4, 3, 4).Border(layout.Rect{Weight: layout.Heavy})
}

// A fact is a line of what is known of a lift: what it is, empty for a note, and the text.
type fact struct{ name, text string }

// knownOf lists mass, centre of gravity, rig, crane, lay-down, crew, note.
func knownOf(c *block.Composer, l *job.Lift) []fact {
	w := c.W
	all := []fact{
		{w.Lift.Mass, massText(c, l)}, {w.Lift.Centre, centreText(c, l)}, {w.Lift.HangsOn, rigText(c, l)}, {w.Lift.LayDownAt, layDownText(c, l)},
		{w.Lift.Props, strings.Join(l.Supports, ", ")}, {w.Lift.Crew, strings.Join(l.Crew, ", ")}, {"", l.Note},
	}
	return slices.DeleteFunc(all, func(f fact) bool { return f.text == "" })
}

// facts set lines of what is known in a width.
func facts(c *block.Composer, l *job.Lift, lines []fact, width layout.Mm) layout.Block {
	var out []layout.Block
	for _, f := range lines {
		runs, hang := []layout.Run{layout.T(layout.Body, f.text)}, layout.Mm(0)
		if f.name != "" {
			runs, hang = append([]layout.Run{layout.T(layout.Strong, f.name+c.W.Common.Colon)}, runs...), 4
		}
		out = append(out, c.Para(width, runs, layout.ParaOpts{Ref: l.At, Hang: hang}))
	}
	return layout.Above(0.6, out...)
}

// factsAndPicture sets what is known beside the drawing, the last lines below it, or all of
// them above it where the drawing is wide: whichever is lowest.
func factsAndPicture(c *block.Composer, l *job.Lift) []layout.Block {
	const gap, below layout.Mm = 5, 1
	room, lines := picture.ClearRoom, knownOf(c, l)
	pic := picture.Lift(c.Setter, c.W, l, c.Span, room)
	for pic.Empty() && room > picture.AnyRoom {
		room--
		pic = picture.Lift(c.Setter, c.W, l, c.Span, room)
	}
	best := []layout.Block{facts(c, l, lines, c.Span), pic}
	least := best[0].H + best[1].H
	for _, side := range []layout.Mm{62, 74, 86} {
		pic := picture.Lift(c.Setter, c.W, l, c.Span-side-gap, room)
		for n := len(lines); n > 0 && !pic.Empty(); n-- {
			b := layout.Above(below, layout.Beside(gap, facts(c, l, lines[:n], side), pic), facts(c, l, lines[n:], c.Span))
			if b.H < least {
				best, least = []layout.Block{b}, b.H
			}
		}
	}
	return best
}

// massText is the mass with its tolerance and where it is known from.
func massText(c *block.Composer, l *job.Lift) string {
	load := l.Load()
	if load.Mass <= 0 {
		return c.W.Lift.NotWritten
	}
	source := c.W.Lift.MassFrom[massWord(load.Source)]
	if l.MassSource != "" {
		source += c.W.Common.Colon + l.MassSource
	}
	if load.MassTolerance == 0 {
		return c.W.Lift.MassTold.With(l.Print(load.Mass.Up().Fine()), source)
	}
	return c.W.Lift.MassTolerance.With(l.Print(load.Mass.Up().Fine()), l.Print(load.MassTolerance.Up().Fine()), source)
}

// massWord names where a mass is known from, for the catalogue.
func massWord(s lift.MassSource) string {
	return map[lift.MassSource]string{lift.Weighed: "weighed", lift.Drawing: "drawing", lift.Computed: "computed", lift.Estimated: "estimated"}[s]
}

// centreText is the centre of gravity with its band, and the origin.
func centreText(c *block.Composer, l *job.Lift) string {
	load := l.Load()
	if load.CoG == nil {
		return c.W.Lift.NotWritten
	}
	one := func(axis string, at, within lift.Mm) string {
		if within == 0 {
			return axis + " " + l.Print(at.Given())
		}
		return c.W.Lift.CentreBand.With(axis, l.Print(at.Given()), l.Print(within.Up().Fine()))
	}
	g, t := load.CoG, load.CoGTolerance
	return strings.Join([]string{one("x", g.X, t.X), one("y", g.Y, t.Y), one("z", g.Z, t.Z)}, ", ") + ". " + c.W.Lift.MeasuredFrom.With(l.Origin)
}

// rigText is what the load hangs on.
func rigText(c *block.Composer, l *job.Lift) string {
	w := c.W
	if l.ByHand {
		return w.Lift.ByHand.With(strconv.Itoa(len(l.HandPlan.Grips)), l.Print(l.HandPlan.MayCarry.Down().Fine()))
	}
	word, written := map[lift.Rig]string{lift.Bridle: "bridle", lift.Spreader: "spreader", lift.Beam: "beam", lift.TwoHooks: "two hooks"}[l.Plan.Rig]
	if !written {
		return w.Lift.NotWritten
	}
	basis := map[lift.Basis]string{lift.EN: "EN", lift.US: "US"}[l.Plan.Basis]
	text := w.Lift.Rig[word].With(strconv.Itoa(len(l.Plan.Legs)))
	if leg := l.UpendedOn(); leg != "" {
		text = w.Lift.Upended.With(text, leg)
	}
	if basis != "" {
		text = w.Lift.RatedBy.With(text, basis)
	}
	if t := l.Plan.Tackle; t != nil && t.Parts > 0 {
		text += ". " + w.Lift.TackleRig.With(strconv.Itoa(t.Parts))
	}
	for _, k := range []lift.Crane{l.Plan.Crane, l.Plan.SecondCrane} {
		if k.Name != "" {
			text += ". " + w.Lift.CraneLine.With(k.Name, rated(c, l, k.Rated))
		}
	}
	return text
}

// rated words a rated load, or that it is not written.
func rated(c *block.Composer, l *job.Lift, k lift.Kg) string {
	if k <= 0 {
		return c.W.Lift.NotWritten
	}
	return l.Print(k.Down())
}

// layDownText is where the load is laid down, and what it does to the floor there.
func layDownText(c *block.Composer, l *job.Lift) string {
	s := l.LayDown
	if s == nil {
		return ""
	}
	text := s.Mark + " " + s.What
	if s.Support != "" {
		text += ", " + c.W.Common.On.With(s.Support)
	}
	switch {
	case l.Floor == nil && s.Floor != "": // what the load stands on is not told
		text += ", " + c.W.Step.Floor.With(s.Floor)
	case l.Floor != nil:
		text = c.W.Lift.FloorLine.With(text, l.Print(l.Floor.Pressure.Up()), s.Floor, l.Print(l.Floor.Used.Percent()))
	}
	return text
}

// cautionLines are what has to be minded, and the line of a critical lift.
func cautionLines(c *block.Composer, l *job.Lift) []layout.Block {
	var out []layout.Block
	for _, n := range l.Cautions() {
		style, mark := layout.Body, "· "
		if n.Stop {
			continue // in the box at the head of the sheet
		}
		if n.Code == lift.CriticalLift {
			style, mark = layout.Strong, "▶ "
		}
		out = append(out, c.Para(c.Span, []layout.Run{layout.T(style, mark+n.In(l.PaperUnits(c.W)))}, layout.ParaOpts{Ref: l.At, Hang: 4}))
	}
	if l.SignedPlan != "" {
		out = append(out, c.Tick(layout.Strong, c.W.Lift.SignedPlan.With(l.SignedPlan), l.At))
	}
	if len(out) == 0 {
		return nil
	}
	return []layout.Block{layout.Above(0.6, append([]layout.Block{c.Heading(c.W.Lift.CautionsHere)}, out...)...)}
}
