package heatsheet

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/figure"
)

// Parts that are put on hot in the same way, as the bearings of one shaft, share one order
// of work: each has its picture, its figures and its boxes, the acts are printed once with
// a tick for each of them.

// familyTicks is how many ticks an act has at the most.
const familyTicks = 6

// families joins neighbouring heats whose order of work and hazards are the same; what is
// drawn off hot stands for itself.
func families(c *block.Composer, groups [][]*job.Heat) [][][]*job.Heat {
	var out [][][]*job.Heat
	last, ticks := "", 0
	for _, hs := range groups {
		says := sharedOrder(c, hs[0])
		n := len(out)
		if says != "" && says == last && ticks+len(hs) <= familyTicks {
			out[n-1] = append(out[n-1], hs)
			ticks += len(hs)
			continue
		}
		out, last, ticks = append(out, [][]*job.Heat{hs}), says, len(hs)
	}
	return out
}

// sharedOrder is all that is said in the order of work of a heat; empty where it is not shared.
func sharedOrder(c *block.Composer, h *job.Heat) string {
	if h.Pull != nil || h.PutOn == nil {
		return ""
	}
	s := sheetOf(c.Now(), h)
	var says []string
	says = append(says, s.onOrder()...)
	for _, p := range s.hazards(h.PutOnAt) {
		says = append(says, wordsOf([]layout.Piece{p})...)
	}
	return strings.Join(says, "|")
}

// familyPieces are the order of work that the heats of a family share, their boxes, and how
// their figures came about.
func familyPieces(c *block.Composer, family [][]*job.Heat) []layout.Piece {
	var all []*job.Heat
	var marks []string
	for _, hs := range family {
		all, marks = append(all, hs...), append(marks, marksOf(hs))
	}
	s := sheet{Composer: c, h: all[0], u: figure.UnitsOf(all[0]), alike: all, family: true}
	out := []layout.Piece{s.titled(c.W.Heat.OrderTitle + ": " + strings.Join(marks, ", "))}
	out = append(out, s.orderPieces()...)
	var told [][]string
	for _, hs := range family {
		told = append(told, sheetOf(c, hs[0]).assumed())
	}
	common := slices.DeleteFunc(slices.Clone(told[0]), func(text string) bool {
		return slices.ContainsFunc(told, func(l []string) bool { return !slices.Contains(l, text) })
	})
	if len(common) > 0 {
		out = append(out, s.small(c.W.Heat.Assumptions, strings.Join(common, "; ")+"."))
	}
	var runs []layout.Run
	say := func(h *job.Heat, name, text string) {
		runs = append(runs, layout.Run{Text: name, Style: layout.SubBold, Ref: h.At}, layout.Run{Text: text, Style: layout.Sub, Ref: h.At})
	}
	formulas := map[string]bool{}
	for i, hs := range family {
		own := slices.DeleteFunc(told[i], func(text string) bool { return slices.Contains(common, text) })
		one := sheetOf(c, hs[0])
		if len(own) > 0 {
			say(hs[0], marksOf(hs)+": ", block.Capital(strings.Join(own, "; "))+".  ")
		}
		for _, w := range one.onWorks() {
			name, formula := marksOf(hs)+": ", one.formulaText(w)
			if !formulas[formula] {
				name += c.W.Heat.WorkedOut
			} else {
				formula = ""
			}
			formulas[one.formulaText(w)] = true
			say(hs[0], name, formula+one.termsText(w)+".  ")
		}
	}
	if len(runs) > 0 {
		out = append(out, layout.Piece{Block: c.Para(c.Span, runs, layout.ParaOpts{Ref: all[0].At}), Gap: 1.5})
	}
	return out
}

// assumed are the sentences of what the figures of a part that is put on take for granted.
func (s sheet) assumed() []string {
	var list []heat.Assumption
	switch p := s.h.PutOn; {
	case p.Plan != nil:
		list = p.Plan.Assumptions
	case p.Cold != nil:
		list = p.Cold.Assumptions
	}
	var out []string
	for _, a := range list {
		out = append(out, a.In(s.inUnits()).Says)
	}
	return out
}

// onWorks are the workings of a part that is put on.
func (s sheet) onWorks() []heat.Working {
	switch p := s.h.PutOn; {
	case p.Plan != nil:
		return []heat.Working{p.Plan.Need.Working}
	case p.Cold != nil:
		return []heat.Working{p.Cold.Working}
	}
	return nil
}
