package heatsheet

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/figure"
)

// watched are the neighbours that a part put on hot may warm past what they stand: how warm they
// get then is worked out by nobody, for the model of heat along the shaft is one of drawing off.
// One that stands the heat of the part itself is left out.
func (s sheet) watched() []job.HeatNeighbour {
	p := s.h.PutOn
	if p.Cold != nil && !p.Cold.HubHeated {
		return nil
	}
	hottest := p.Hottest()
	var out []job.HeatNeighbour
	for _, n := range s.h.Neighbours {
		if n.Limit.Source == "" || hottest == 0 || n.Limit.At < hottest {
			out = append(out, n)
		}
	}
	return out
}

// watchActs say how such a neighbour is watched.
func (s sheet) watchActs() []string {
	var out []string
	for _, n := range s.watched() {
		says := s.W.HeatOn.Watch.With(n.Name) + " "
		if n.Limit.Source == "" {
			says += s.W.Heat.LimitNotKnown.With(n.Name)
		} else {
			says += s.W.HeatOn.NeverAbove.With(s.u.AtMost(n.Limit.At))
		}
		out = append(out, says)
	}
	return out
}

// watchBoxes are the boxes for how warm each was at its hottest, its name before it, and before
// that, where several heats stand together, the mark of its heat.
func (s sheet) watchBoxes(marked bool) []layout.Block {
	var boxes []layout.Block
	for _, n := range s.watched() {
		runs := []layout.Run{layout.T(layout.SubBold, n.Name)}
		if marked {
			runs = []layout.Run{{Text: s.h.Mark, Style: layout.SubBold, Deco: layout.Boxed}, layout.T(layout.SubBold, " "+n.Name)}
		}
		name := s.Para(60, runs, layout.ParaOpts{Ref: s.h.At})
		name.W = block.InkRight(name)
		boxes = append(boxes, layout.Middle(2, name, s.degreeBox(s.W.HeatOn.Hottest)))
	}
	return boxes
}

// eachWatchBoxes are the boxes of all heats that share an order of work: a neighbour of each is
// as warm as it gets beside that one.
func (s sheet) eachWatchBoxes() []layout.Block {
	var boxes []layout.Block
	for _, h := range s.each() {
		one := s
		one.h, one.u = h, figure.UnitsOf(h)
		boxes = append(boxes, one.watchBoxes(len(s.each()) > 1)...)
	}
	return boxes
}

// watchedInTable is the neighbour whose box stands in the table of a hot fit: there is room for
// that of one, where the table has one row and the words above the box go into its column. Nil
// where they stand below.
func (s sheet) watchedInTable() *job.HeatNeighbour {
	list := s.watched()
	if len(list) != 1 || len(s.each()) != 1 {
		return nil
	}
	for word := range strings.SplitSeq(s.watchedHead(list[0]), " ") {
		if s.Width(layout.Caption, word) > tempColumn-2*onPad {
			return nil
		}
	}
	return &list[0]
}

// watchedHead is what stands above the box of a neighbour in the table.
func (s sheet) watchedHead(n job.HeatNeighbour) string {
	return n.Name + " " + s.W.HeatOn.Hottest + ", " + strings.Trim(s.u.Degree(), figure.NBSP)
}
