package heatsheet

import (
	"cmp"
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/figure"
	"matchmark/templates/picture"
)

// Sheet sets the sheet of what is drawn off or put on hot: the joint to scale, how
// hot and how fast, what happens in time, and what to write down.
func Sheet(c *block.Composer) []layout.Piece {
	if len(c.Job.Heats) == 0 {
		return nil
	}
	out := []layout.Piece{c.RuleRuns(layout.T(layout.SubBold, c.W.Heat.Rule))}
	group := 0
	var all []teller
	for _, family := range families(c, inOrder(c.Job, alikeHeats(c, c.Job.Heats))) {
		shared := sharing{order: len(family) > 1, frame: sharedFrame(c, family) != ""}
		for _, hs := range family {
			group++
			out = append(out, heatPieces(c, hs, shared, group)...)
			all = append(all, tellers(c, hs)...)
		}
		if len(family) > 1 {
			out = append(out, familyPieces(c, family)...)
		}
	}
	return append(out, told(c, all)...)
}

// placesOf are the places of the steps in the order of the work, from 1.
func placesOf(jb *job.Job) map[*job.Step]int {
	place := map[*job.Step]int{}
	for _, sec := range jb.Sections {
		for _, st := range sec.Steps {
			place[st] = len(place) + 1
		}
	}
	return place
}

// inOrder sorts heats, those that are alike together, by the step that needs one first.
func inOrder(jb *job.Job, groups [][]*job.Heat) [][]*job.Heat {
	place := placesOf(jb)
	first := func(group []*job.Heat) int {
		at := len(place) + 1
		for _, h := range group {
			for _, st := range []*job.Step{h.PulledAt, h.PutOnAt} {
				if n := place[st]; n > 0 {
					at = min(at, n)
				}
			}
		}
		return at
	}
	return slices.SortedStableFunc(slices.Values(groups), func(a, b []*job.Heat) int { return cmp.Compare(first(a), first(b)) })
}

// heatPieces set one heat, or some that are alike; without what others share with it.
func heatPieces(c *block.Composer, hs []*job.Heat, shared sharing, group int) []layout.Piece {
	var out []layout.Piece
	named, head := heading(c, hs)
	h := hs[0]
	for _, h := range hs {
		named = named.Anchored("heat " + h.Mark)
		if shared.frame {
			named = named.Anchored("heat on " + h.Mark)
		}
	}
	piece := layout.Piece{Block: named.Heading(2), Gap: 2.2, KeepNext: true, Title: marksOf(hs) + "  " + h.What, Level: 1}
	if h.Pull == nil {
		piece.Group = group
	}
	out = append(out, piece)
	sheet := sheet{Composer: c, h: h, u: figure.UnitsOf(h), alike: hs, shared: shared}
	for _, p := range sheet.pieces() {
		p.Group = piece.Group
		p.Under = append([]*layout.Block{&head}, p.Under...)
		out = append(out, p)
	}
	return out
}

// marksOf are the marks of heats that are alike.
func marksOf(hs []*job.Heat) string {
	var out []string
	for _, h := range hs {
		out = append(out, h.Mark)
	}
	return strings.Join(out, ", ")
}

// heading is the heading of one heat, or of some that are alike, and as it is drawn again on
// each of its pages.
func heading(c *block.Composer, hs []*job.Heat) (first, again layout.Block) {
	name := "▶ " + marksOf(hs) + "  " + hs[0].What
	var places, at []string
	for _, h := range hs {
		if h.Place.Label != "" {
			places = append(places, h.Place.Name)
		}
		if h.PulledAt != nil && h.Pull != nil {
			at = append(at, c.W.Heat.DrawnOffAt.With(h.PulledAt.No, c.Page("step "+h.PulledAt.No)))
		}
		if h.PutOnAt != nil && h.PutOn != nil {
			at = append(at, c.W.Heat.PutOnAt.With(h.PutOnAt.No, c.Page("step "+h.PutOnAt.No)))
		}
	}
	if len(places) > 0 {
		name += ", " + strings.Join(places, c.W.Common.Semicolon)
	}
	runs := []layout.Run{layout.T(layout.Section, name), layout.T(layout.Sub, "   "+strings.Join(slices.Compact(at), " · "))}
	return c.Headed(runs, hs[0].At)
}

// Lines are the lines of a step that point to the heat sheet and say the one
// thing that must not be missed.
func Lines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, h := range st.Heats {
		u, text := figure.UnitsOf(h), ""
		switch {
		case h.PulledAt == st && h.Pull != nil:
			text = " " + c.W.Heat.PullLine.With(c.Page("heat "+h.Mark), atMost(c, h))
			if p := h.Pull.Plan; p != nil && len(p.Band.Pace) == 2 {
				text += ". " + pace(c, p, u)
			}
		case h.PutOnAt == st && h.PutOn != nil:
			text = " " + c.W.Heat.OnLine.With(c.Page("heat on "+h.Mark), onLine(c, h), atMost(c, h))
		}
		runs := []layout.Run{{Text: h.Mark, Style: layout.Strong, Deco: layout.Boxed}, layout.T(layout.Body, text)}
		out = append(out, c.Para(width, runs, layout.ParaOpts{Ref: h.At}).Pad(0.5, 0, 0.5, 0))
	}
	return out
}

// pace is the sentence of the two temperatures that must be passed.
func pace(c *block.Composer, p *heat.Plan, u figure.Units) string {
	a, b := p.Band.Pace[0], p.Band.Pace[1]
	return c.W.Heat.PaceLine.With(u.AtLeast(a.Skin), figure.Clock(a.By), u.AtLeast(b.Skin), figure.Clock(b.By))
}

// A sheet sets one heat.
type sheet struct {
	*block.Composer
	h *job.Heat
	u figure.Units
	// alike are the heats that are told together, h the first of them; nil for h alone.
	alike []*job.Heat
	// shared is left to the family; family is the sheet of that.
	shared sharing
	family bool
}

// A sharing is what the heats of a family have in common: the order of work, and the frame of how
// hot they are made.
type sharing struct{ order, frame bool }

func (s sheet) pieces() []layout.Piece {
	var out []layout.Piece
	add := func(gap layout.Mm, b layout.Block) {
		if !b.Empty() {
			out = append(out, layout.Piece{Block: b, Gap: gap})
		}
	}
	add(0, s.notWorkedOut())
	joint := strings.TrimSpace(strings.Join(s.jointLines(), " "))
	if s.h.Pull == nil {
		out = append(out, s.besidePicture([]string{joint, strings.Join(s.onLines(), " ")}))
	} else {
		out = append(out, s.besidePicture([]string{joint}))
	}
	if s.h.Note != "" {
		add(1, s.paras(layout.Strong, []string{s.h.Note}))
	}
	if s.h.Pull != nil {
		out = append(out, s.pullPieces()...)
	}
	if s.h.PutOn != nil {
		out = append(out, s.putOnPieces()...)
	}
	return out
}

// besidePicture sets a small picture of the joint with sentences to its right, as high as it may
// be without making the two higher.
func (s sheet) besidePicture(lines []string) layout.Piece {
	const gap, lower layout.Mm = 4, 6
	w, high := layout.Mm(70), picture.JointHeight
	if len(s.h.Neighbours) > 0 {
		w, high = w+6, high+4 // room for their distances and the name of the shield
	}
	best := layout.Block{}
	for h := high; h >= high-lower; h-- {
		pic := picture.Joint(s.Setter, s.W, s.h, w, h)
		if pic.Empty() {
			return layout.Piece{Block: s.paras(layout.Body, lines)}
		}
		if both := layout.Beside(gap, pic, s.parasIn(s.Span-w-gap, layout.Body, lines)); best.Empty() || both.H < best.H {
			best = both
		}
	}
	return layout.Piece{Block: best}
}

// paras stacks sentences over the whole width.
func (s sheet) paras(st layout.Style, lines []string) layout.Block {
	return s.parasIn(s.Span, st, lines)
}

func (s sheet) parasIn(width layout.Mm, st layout.Style, lines []string) layout.Block {
	var out []layout.Block
	for _, l := range lines {
		if l != "" {
			out = append(out, s.Para(width, []layout.Run{layout.T(st, l)}, layout.ParaOpts{Ref: s.h.At}))
		}
	}
	return layout.Above(0.8, out...)
}

func (s sheet) nothingNearLine() string {
	if s.h.NothingNear == "" {
		return ""
	}
	return s.W.Heat.NothingNear.With(s.h.NothingNear)
}

// heavyFrame is a block with a heavy frame, for what must be seen first.
func (s sheet) heavyFrame(blocks ...layout.Block) layout.Block {
	b := layout.Above(1, blocks...)
	b.W = s.Span - 6
	return b.Pad(2, 3, 2, 3).Border(layout.Rect{Weight: layout.Heavy})
}

// heatSigns are the signs of the notes that are repeated on the sheet: hot, fire,
// magnetic field, cold, bad air.
var heatSigns = []string{"W017", "W021", "W006", "W010", "W041"}

// hazards repeats the hazard notes of the step that have to do with the heat, in
// one line each; they stand with their signs before the step.
func (s sheet) hazards(st *job.Step) []layout.Piece {
	if st == nil {
		return nil
	}
	var out []layout.Piece
	for _, n := range st.Cautions {
		if !slices.ContainsFunc(n.Signs, func(sign string) bool { return slices.Contains(heatSigns, sign) }) {
			continue
		}
		if n.Key == job.HotWork && !s.h.Flame(st) {
			continue // of another heat of the same step
		}
		n = s.Note(n)
		runs := []layout.Run{
			{Text: s.W.Cautions.Signal[n.Signal], Style: layout.SubBold, Deco: layout.Inverse},
			layout.T(layout.Strong, "  "+n.Hazard+" "), layout.T(layout.Body, cmp.Or(n.Short, n.Avoid)),
			layout.T(layout.Sub, "  "+s.W.Cautions.InFull.With(s.Page("caution "+n.Key))),
		}
		out = append(out, layout.Piece{Block: s.Para(s.Span, runs, layout.ParaOpts{Ref: n.At}), Gap: 1, KeepNext: true})
	}
	return out
}

// titled is the heading of a part of the sheet.
func (s sheet) titled(text string) layout.Piece {
	return layout.Piece{Block: s.Heading(text), Gap: 2.2, KeepNext: true}
}

// degreeBox is a box for a temperature, three digits.
func (s sheet) degreeBox(caption string) layout.Block {
	return s.Value(layout.Number{Before: 3, Unit: strings.TrimSpace(strings.Trim(s.u.Degree(), figure.NBSP)), Caption: caption, Ref: s.h.At})
}

func (s sheet) timeBox(caption string) layout.Block {
	return s.WideBox(layout.RoleTime, 22, 1, caption, s.h.At)
}
