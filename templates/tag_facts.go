package templates

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/stock"
)

// A tagType is the type that the facts of a label are set in: the last line has what is to be
// minded in one style and the words between in another. A terse one leaves out what the mark
// of the spot and the plate of what is easily missed say by themselves.
type tagType struct {
	name, contents, whose, steps, marks, between layout.Style
	terse                                        bool
}

// tagTypes are the types of a label, the largest first: where a label has room its facts
// are read from further away.
var tagTypes = []tagType{
	{layout.Head, layout.Limit.With(layout.Regular), layout.Body, layout.StepNo, layout.Limit, layout.Body, false},
	{layout.Strong, layout.Body, layout.Sub, layout.Strong, layout.Strong, layout.Body, false},
	{layout.Strong, layout.Sub, layout.Sub, layout.Body, layout.Strong, layout.Sub, false},
	{layout.SubBold, layout.Sub, layout.Caption, layout.Sub, layout.SubBold, layout.Sub, false},
	{layout.SubBold, layout.Sub, layout.Caption, layout.Sub, layout.SubBold, layout.Sub, true},
}

// allKinds says that every kind of part in a container is named.
const allKinds = -1

// fitted gives the first of the ways to set the facts of a label that has room: in large
// type, in small type, and then with fewer and fewer kinds of parts named, the others
// being on the register. The last one is given though it has no room.
func fitted(t *job.Tag, set func(ty tagType, kinds int) (layout.Block, bool)) layout.Block {
	for _, ty := range tagTypes {
		if b, ok := set(ty, allKinds); ok {
			return b
		}
	}
	ty := tagTypes[len(tagTypes)-1]
	all, _ := set(ty, allKinds)
	for n := len(job.Contents(t.In)) - 1; n >= 0; n-- {
		if b, ok := set(ty, n); ok {
			return b
		}
	}
	return all
}

// hasRoom reports whether a block goes into a height, and everything in it into its place.
func hasRoom(b layout.Block, room layout.Mm) bool {
	return len(b.Misfits()) == 0 && len(b.Fill(b.W, room, 0, 0).Misfits()) == 0
}

// tagFacts are the lines of a tag: what it is, what is in it, whose it is, where
// it comes off and goes back, how it is kept.
func (c *composer) tagFacts(t *job.Tag, ty tagType, kinds int, room layout.Mm) [][]layout.Run {
	var out [][]layout.Run
	add := func(st layout.Style, text string) {
		if text != "" {
			out = append(out, []layout.Run{layout.T(st, c.Breakable(st, room, text))})
		}
	}
	name := c.tagName(t)
	if t.Part == nil && !t.Spare && len(t.All()) > 0 || job.Pieces(t.In) > 1 {
		name += ", " + c.W.Pieces(job.Pieces(t.All()))
	}
	add(ty.name, name)
	if t.Part == nil && !t.Scrap {
		add(ty.contents, c.contents(t, kinds))
		add(ty.marks, c.wholeCount(t))
	}
	add(ty.whose, c.whose())
	if t.Scrap {
		// What goes to scrap in a long job has no room here: its line of the register lists it.
		add(ty.steps, c.W.Tag.ScrapListed.With(strconv.Itoa(t.N)))
		return out
	}
	add(ty.steps, c.offBack(t))
	if more := c.tagMarks(t, ty); len(more) > 0 {
		out = append(out, more)
	}
	return out
}

// setFacts sets the lines of a tag below each other, round a corner at the upper right
// that stays free.
func (c *composer) setFacts(t *job.Tag, lines [][]layout.Run, width, notchW, notchH layout.Mm) layout.Block {
	const gap = 0.2
	var out layout.Block
	for _, runs := range lines {
		b := c.Para(width, runs, layout.ParaOpts{Ref: t.At, NotchW: notchW, NotchH: notchH - out.H - gap})
		out = layout.Above(gap, out, b)
	}
	if t.Spare {
		for _, word := range []string{c.W.Common.Contents, c.W.Common.OffAt} {
			across := width
			if out.H < notchH {
				across -= notchW
			}
			out = layout.Above(gap, out, c.WideBox(layout.RoleWords, across, 1, word, t.At))
		}
	}
	return out
}

// whose says which machine and job a tag belongs to.
func (c *composer) whose() string {
	e, o := c.Job.Equipment, c.Job.Order
	return e.Tag + " " + e.Name + " · " + o.Number + " " + c.W.Common.Revision.With(o.Revision)
}

// offBack is where the parts come off and go back: numbers of steps alone, for pages
// differ by paper and with every step that is added.
func (c *composer) offBack(t *job.Tag) string {
	in, out := t.In, t.Out
	if len(in) == 0 && t.Container != nil && t.Pocket == "" {
		in, out = t.Container.In, t.Container.Out // nothing but bags
	}
	if len(in) == 0 {
		return ""
	}
	text := c.W.Common.OffAt + " " + c.stepNumbers(movedAt(in))
	if len(out) > 0 {
		text += " · " + c.W.Common.BackAt + " " + c.stepNumbers(movedAt(out))
	}
	return text
}

// movedAt are the steps of some moves.
func movedAt(ms []*job.Move) []*job.Step {
	var out []*job.Step
	for _, m := range ms {
		out = append(out, m.Step)
	}
	return out
}

// contents names the parts in a container with their numbers, so many kinds of them; for
// the others the line of the register stands. Whether some of those are old and go to
// scrap is said in any case.
func (c *composer) contents(t *job.Tag, kinds int) string {
	all := job.Contents(t.In)
	if kinds == allKinds || kinds >= len(all) {
		kinds = len(all)
	}
	var out []string
	for _, x := range all[:kinds] {
		name := x.Name
		if holdsOld(t, x) {
			name = c.W.Tag.Old.With(name)
			if useOf[t.Kind] == stock.Bag {
				name = c.W.Tag.OldShort.With(x.Name)
			}
		}
		out = append(out, strconv.Itoa(x.N)+"\u00a0"+name)
	}
	rest := all[kinds:]
	if len(rest) == 0 {
		return strings.Join(out, ", ")
	}
	more := c.W.Count(c.W.Tag.MoreKinds, len(rest))
	if kinds == 0 {
		more = ""
	}
	if slices.ContainsFunc(rest, func(x job.Content) bool { return holdsOld(t, x) }) {
		if useOf[t.Kind] == stock.Bag {
			if more == "" {
				more = c.W.Tag.OldShort.Bare()
			} else {
				more = c.W.Tag.OldShort.With(more)
			}
		} else {
			more = strings.TrimSpace(more + " (" + c.W.Tag.OldAmong + ")")
		}
	}
	line := noBreak(c.W.Tag.OnRegister.With(strconv.Itoa(t.N)))
	if more != "" {
		line = more + c.W.Common.Colon + line
	}
	return strings.Join(append(out, line), ", ")
}

// holdsOld reports whether pieces of a kind under a tag are old: kept until the new ones
// are on, then scrap.
func holdsOld(t *job.Tag, x job.Content) bool {
	return slices.ContainsFunc(t.In, func(m *job.Move) bool { return m.Part.Name == x.Name && m.OldOne() != nil })
}

// namedBags is how many bags inside of a container are counted by their names.
const namedBags = 3

// wholeCount is what a container with bags inside it holds in all: "48 in the box, 8 in bag
// SHORT, 56 in all". Where there are many bags they are counted together.
func (c *composer) wholeCount(t *job.Tag) string {
	if t.Container == nil || t.Pocket != "" || len(t.Container.Pockets) == 0 {
		return ""
	}
	w := c.W.Tag
	in, all := job.Pieces(t.In), job.Pieces(t.Container.In)
	var out []string
	if in > 0 {
		out = append(out, w.InOne.With(strconv.Itoa(in), w.Kind[t.Container.Kind]))
	}
	if n := len(t.Container.Pockets); n > namedBags {
		out = append(out, w.InBags.With(strconv.Itoa(all-in), strconv.Itoa(n)))
	} else {
		for _, p := range t.Container.Pockets {
			n := 0
			for _, m := range t.Container.In {
				if m.To.Pocket == p {
					n += m.N
				}
			}
			out = append(out, w.InBag.With(strconv.Itoa(n), p))
		}
	}
	return strings.Join(append(out, w.InAll.With(strconv.Itoa(all))), ", ")
}

// tagMarks are the pieces of the last line of a tag: how it is kept and where it
// lies, which way round, its set, what is easily missed, its mass.
func (c *composer) tagMarks(t *job.Tag, ty tagType) []layout.Run {
	strong := ty.marks
	var more []layout.Run
	add := func(st layout.Style, deco layout.Deco, text string) {
		if text == "" {
			return
		}
		if n := len(more); n > 0 && deco == layout.Plain && more[n-1].Deco == layout.Plain {
			more = append(more, layout.T(ty.between, " · "))
		} else if n > 0 {
			more = append(more, layout.T(ty.between, "  "))
		}
		more = append(more, layout.Run{Text: text, Style: st, Deco: deco})
	}
	if t.Keep != "" {
		add(strong, layout.Plain, c.W.Tag.Keep+" "+t.Keep)
	}
	add(strong, layout.Plain, t.Note)
	if spot := liesAt(t); spot != nil {
		add(strong, layout.Boxed, spot.Mark)
		if !ty.terse {
			add(ty.between, layout.Plain, spot.What)
		}
	}
	if t.Support != "" {
		add(ty.between, layout.Plain, c.W.Common.On.With(t.Support))
	}
	for _, text := range c.waysRound(t) {
		add(strong, layout.Plain, text)
	}
	for _, s := range t.Sets {
		add(layout.SubBold, layout.Boxed, c.W.Common.MatchedSet.With(s.Mark))
	}
	for _, m := range missedOf(t) {
		if !ty.terse {
			add(layout.Sub, layout.Plain, c.W.Tag.Mind)
		}
		add(layout.SubBold, layout.Inverse, m)
	}
	add(strong, layout.Plain, c.tagMass(t))
	return more
}

// tagMass is what the thing of a tag weighs, empty where nobody needs to be told.
func (c *composer) tagMass(t *job.Tag) string {
	switch {
	case t.Mass == nil:
		return ""
	case t.MassAtLeast:
		return c.W.Tag.MassAtLeast.With(t.Mass.Print())
	}
	return c.W.Tag.Mass.With(t.Mass.Print())
}

// comparedOn reports whether old parts under a tag are kept until the new ones have been
// compared with them: those of the scrap bag, and those that are renewed, in the bags
// inside it as well.
func comparedOn(t *job.Tag) bool {
	in := t.In
	if t.Container != nil && t.Pocket == "" {
		in = t.Container.In
	}
	return t.Scrap || slices.ContainsFunc(in, func(m *job.Move) bool { return m.OldOne() != nil })
}
