package heatsheet

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/heat"
	"matchmark/templates/block"
	"matchmark/templates/figure"
)

// inUnits are the units of the job for the words of the calculation.
func (s sheet) inUnits() heat.Units {
	return heat.Units{Inch: s.u.Inch, Fahrenheit: s.u.Fahrenheit, Tongue: s.W}
}

// lookFirst sets the warnings of a calculation.
func (s sheet) lookFirst(list []heat.Warning) []layout.Block {
	var out []layout.Block
	for _, x := range list {
		runs := []layout.Run{{Text: s.W.HeatPull.LookAt, Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.Strong, "  "+block.Capital(x.In(s.inUnits()).Says)+".")}
		out = append(out, s.Para(s.Span, runs, layout.ParaOpts{Ref: s.h.At}))
	}
	return out
}

// formulaText is the formula of a working with its source.
func (s sheet) formulaText(w heat.Working) string {
	text := s.W.Said(w.Formula) + " (" + s.W.Said(w.Source) + ")" + s.W.Common.Colon
	if s.u.Inch || s.u.Fahrenheit {
		text = s.W.Heat.InMetric + text
	}
	return text
}

// termsText are the numbers of a working.
func (s sheet) termsText(w heat.Working) string {
	var terms []string
	for _, t := range w.Terms {
		terms = append(terms, s.W.Said(t.Symbol)+" "+figure.Term(t)+figure.NBSP+t.Unit)
	}
	return strings.Join(terms, ", ")
}
