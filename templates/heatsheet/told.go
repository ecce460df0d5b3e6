package heatsheet

import (
	"cmp"
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// What the figures take for granted and how they were worked out stands once for all heats,
// at the end of the sheet: each sentence and each formula once, with the heats that it holds
// for, as the joints have it.

// A teller is one calculation of a heat, the drawing off or the putting on.
type teller struct {
	sheet
	name  string   // of the heat, with what is done where it has both
	says  []string // what it takes for granted, in the units of the job
	works []heat.Working
}

// tellers are the calculations of some heats that are told together.
func tellers(c *block.Composer, hs []*job.Heat) []teller {
	s, h, name := sheetOf(c, hs[0]), hs[0], marksOf(hs)
	var out []teller
	add := func(doing string, list []heat.Assumption, works []heat.Working) {
		t := teller{sheet: s, name: name, works: works}
		if h.Pull != nil && h.PutOn != nil {
			t.name += " " + doing
		}
		for _, a := range list {
			t.says = append(t.says, a.In(s.inUnits()).Says)
		}
		if len(t.says)+len(works) > 0 {
			out = append(out, t)
		}
	}
	if p := h.Pull; p != nil && p.Plan != nil {
		add(c.W.Heat.Off, p.Plan.Assumptions, p.Plan.Working)
	}
	switch p := h.PutOn; {
	case p == nil:
	case p.Plan != nil:
		add(c.W.Heat.On, p.Plan.Assumptions, []heat.Working{p.Plan.Need.Working})
	case p.Cold != nil:
		add(c.W.Heat.On, p.Cold.Assumptions, []heat.Working{p.Cold.Working})
	}
	return out
}

// toldOf is all that the workings of one heat say.
func toldOf(c *block.Composer, h *job.Heat) (out []string) {
	for _, t := range tellers(c, []*job.Heat{h}) {
		out = append(out, t.says...)
		for _, w := range t.works {
			out = append(out, t.formulaText(w)+t.termsText(w))
		}
	}
	return out
}

// told are the workings of all heats: first what is taken for granted, by the heats that do.
func told(c *block.Composer, all []teller) []layout.Piece {
	if len(all) == 0 {
		return nil
	}
	var out []layout.Piece
	add := func(h *job.Heat, runs []layout.Run) {
		b := c.Para(c.Span, runs, layout.ParaOpts{Ref: h.At, Hang: 4, Role: block.RoleWorking})
		out = append(out, layout.Piece{Block: b, Gap: 0.6})
	}
	start := c.W.Heat.Assumptions
	for _, g := range byTellers(all) {
		runs := []layout.Run{layout.T(layout.SubBold, start)}
		if len(g.of) < len(all) {
			runs = append(runs, layout.T(layout.SubBold, strings.Join(g.of, ", ")+c.W.Common.Colon))
		}
		add(g.first, append(runs, layout.T(layout.Sub, strings.Join(g.says, c.W.Common.Semicolon)+".")))
		start = ""
	}
	var formulas []string
	for _, t := range all {
		for _, w := range t.works {
			if f := t.formulaText(w); !slices.Contains(formulas, f) {
				formulas = append(formulas, f)
			}
		}
	}
	for _, f := range formulas {
		runs := []layout.Run{layout.T(layout.SubBold, c.W.Heat.WorkedOut), layout.T(layout.Sub, f)}
		for _, t := range all {
			for _, w := range t.works {
				if t.formulaText(w) != f {
					continue
				}
				if len(all) > 1 {
					runs = append(runs, layout.Run{Text: t.name + c.W.Common.Colon, Style: layout.SubBold, Ref: t.h.At})
				}
				runs = append(runs, layout.Run{Text: t.termsText(w) + ".  ", Style: layout.Sub, Ref: t.h.At})
			}
		}
		add(all[0].h, runs)
	}
	out[0].Block = layout.Above(1, c.Rule(layout.Rule), out[0].Block)
	out[0].Gap = 3
	return out
}

// A tellerGroup is what some calculations take for granted and the others do not.
type tellerGroup struct {
	of, says []string
	first    *job.Heat // of them
}

// byTellers sorts what is taken for granted by the calculations that do, what most of them
// do first.
func byTellers(all []teller) []tellerGroup {
	var out []tellerGroup
	done := map[string]bool{}
	for _, t := range all {
		for _, text := range t.says {
			if done[text] {
				continue
			}
			done[text] = true
			var of []string
			for _, o := range all {
				if slices.Contains(o.says, text) {
					of = append(of, o.name)
				}
			}
			i := slices.IndexFunc(out, func(g tellerGroup) bool { return slices.Equal(g.of, of) })
			if i < 0 {
				i = len(out)
				out = append(out, tellerGroup{of: of, first: t.h})
			}
			out[i].says = append(out[i].says, text)
		}
	}
	slices.SortStableFunc(out, func(a, b tellerGroup) int { return cmp.Compare(len(b.of), len(a.of)) })
	return out
}
