package liftsheet

import (
	"regexp"
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/packs/units"
	"matchmark/templates/block"
)

// A lifted is one working of a lift.
type lifted struct {
	l *job.Lift
	lift.Working
}

// rule is what a working goes by: its formula with the source.
func (x lifted) rule() string { return x.Formula + " · " + x.Source }

// workingsOf lists how the figures of lifts came about.
func workingsOf(ls []*job.Lift) []lifted {
	var out []lifted
	add := func(l *job.Lift, list ...lift.Working) {
		for _, w := range list {
			out = append(out, lifted{l, w})
		}
	}
	for _, l := range ls {
		if !l.Computed() {
			continue
		}
		if l.Body != nil {
			add(l, l.Body.Working...)
		}
		if l.ByHand {
			add(l, l.HandResult.Working...)
		} else {
			add(l, l.Result.Working...)
		}
		if l.Floor != nil {
			add(l, l.Floor.Working)
		}
	}
	return out
}

// workings show how the figures of all lifts came about: each formula once, with what each
// lift comes to by it, one behind the other in paragraphs of a few lines, so that a page may
// end between them. A formula that was used more than once begins one.
func workings(c *block.Composer, ls []*job.Lift) []layout.Piece {
	list := workingsOf(ls)
	if len(list) == 0 {
		return nil
	}
	out := []layout.Piece{{Block: c.Heading(c.W.Lift.HowWorked), Gap: 4, KeepNext: true}}
	if b := symbols(c, list); !b.Empty() {
		out = append(out, layout.Piece{Block: b, Gap: 0.6, KeepNext: true})
	}
	many := slices.ContainsFunc(list, func(x lifted) bool { return x.l != list[0].l })
	var runs []layout.Run
	told, wide := map[string]bool{}, layout.Mm(0)
	end := func() {
		if len(runs) > 0 {
			out = append(out, layout.Piece{Block: c.Para(c.Span, runs, layout.ParaOpts{Ref: list[0].l.At, Hang: 4, Role: block.RoleWorking}), Gap: 0.6})
		}
		runs, wide = nil, 0
	}
	for _, x := range list {
		if told[x.rule()] {
			continue
		}
		told[x.rule()] = true
		same := slices.DeleteFunc(slices.Clone(list), func(o lifted) bool { return o.rule() != x.rule() })
		parts := workingRuns(c, same, many)
		for k, part := range parts {
			if wide > paraLines*c.Span || k == 0 && len(parts) > 1 {
				end()
			}
			if len(runs) > 0 {
				runs = append(runs, layout.T(layout.Sub, "   "))
			}
			for _, r := range part {
				runs, wide = append(runs, r), wide+c.Width(r.Style, r.Text)
			}
		}
	}
	end()
	return out
}

// symbols explains those of the formulas that do not explain themselves.
func symbols(c *block.Composer, list []lifted) layout.Block {
	var said []string
	for _, m := range c.W.Lift.Symbols {
		if slices.ContainsFunc(list, func(x lifted) bool { return slices.Contains(formulaWord.FindAllString(x.Formula, -1), m.Letter) }) {
			said = append(said, m.Letter+" "+m.Means)
		}
	}
	if len(said) == 0 {
		return layout.Block{}
	}
	return c.Para(c.Span, []layout.Run{layout.T(layout.Sub, strings.Join(said, c.W.Common.Semicolon)+".")}, layout.ParaOpts{Ref: list[0].l.At, Role: block.RoleWorking})
}

// formulaWord is a word or a symbol of a formula.
var formulaWord = regexp.MustCompile(`[\pL_]+`)

// paraLines is after how many lines of workings a paragraph ends.
const paraLines = 2.5

// workingRuns are one formula with all that was worked out by it, in parts: the formula, with
// its name where all of them have that one, then for each lift what is equal in all of its own
// once, and what each has for itself.
func workingRuns(c *block.Composer, same []lifted, many bool) [][]layout.Run {
	says := c.W.Said(same[0].Formula) + " · " + c.W.Said(same[0].Source)
	name := same[0].Names(c.W)
	oneName := !slices.ContainsFunc(same, func(x lifted) bool { return x.Names(c.W) != name })
	var first []layout.Run
	if oneName {
		first = append(first, layout.T(layout.SubBold, name+c.W.Common.Colon))
	}
	var out [][]layout.Run
	last := func(rest int) string {
		return map[bool]string{true: ".", false: strings.TrimSuffix(c.W.Common.Semicolon, " ")}[rest == 0]
	}
	for i := 0; i < len(same); {
		own := same[i:]
		if n := slices.IndexFunc(own, func(x lifted) bool { return x.l != same[i].l }); n >= 0 {
			own = own[:n]
		}
		i += len(own)
		ref := own[0].l.At
		run := func(st layout.Style, text string) layout.Run { return layout.Run{Text: text, Style: st, Ref: ref} }
		var part []layout.Run
		if many {
			part = append(part, run(layout.SubBold, own[0].l.Mark+" "))
		}
		if len(own) == 1 && oneName {
			part = append(part, run(layout.Sub, workingFigures(c, own[0].l, own[0].Figures)+last(len(same)-i)))
			out = append(out, part)
			continue
		}
		common := commonFigures(own)
		if len(common) > 0 {
			part = append(part, run(layout.Sub, workingFigures(c, own[0].l, common)+c.W.Common.Colon))
		}
		for k, x := range own {
			each := slices.DeleteFunc(slices.Clone(x.Figures), func(f lift.Figure) bool { return len(own) > 1 && slices.Contains(common, f) })
			called := x.Names(c.W)
			if len(each) > 0 {
				called += c.W.Common.Colon
			}
			part = append(part, run(layout.SubBold, called), run(layout.Sub, workingFigures(c, x.l, each)+last(len(same)-i+len(own)-1-k)))
			out, part = append(out, part), nil
		}
	}
	sep := map[bool]string{true: " · ", false: c.W.Common.Colon}[oneName && len(out) == 1]
	first = append(first, layout.T(layout.Sub, says+sep))
	if len(out) == 1 || oneName && len(same) == len(out) {
		out[0] = append(first, out[0]...)
		return out
	}
	return append([][]layout.Run{first}, out...)
}

// workingFigure is one number of a working with its symbol and unit, and behind it what is
// told above of the same, rounded.
func workingFigure(c *block.Composer, l *job.Lift, f lift.Figure) string {
	unit := "\u00a0" + f.Unit
	if f.Unit == "°" || f.Unit == "" {
		unit = f.Unit
	}
	text := c.W.Said(f.Symbol) + "\u00a0" + f.Print() + unit
	told, ok := f.Words()
	switch says := l.Print(told); {
	case !ok || says == f.Print()+unit:
	case f.Toward == units.Up:
		return c.W.Common.RoundedUp.With(text, says)
	default:
		return c.W.Common.RoundedDown.With(text, says)
	}
	return text
}

// workingFigures are the numbers of a working in a line.
func workingFigures(c *block.Composer, l *job.Lift, figures []lift.Figure) string {
	var row []string
	for _, f := range figures {
		row = append(row, workingFigure(c, l, f))
	}
	return strings.Join(row, ", ")
}

// commonFigures are the numbers that some workings by one formula have in common.
func commonFigures(list []lifted) []lift.Figure {
	if len(list) < 2 {
		return nil
	}
	return slices.DeleteFunc(slices.Clone(list[0].Figures), func(f lift.Figure) bool {
		return slices.ContainsFunc(list, func(x lifted) bool { return !slices.Contains(x.Figures, f) })
	})
}
