package templates

import (
	"fmt"
	"matchmark/packs/job"
	"math"

	"matchmark/layout"
	"matchmark/packs/heat"
)

// putOnPieces set the part of the sheet for putting a part on.
func (s heatSheet) putOnPieces() []layout.Piece {
	p, w, u := s.h.PutOn, s.w, s.u
	out := []layout.Piece{s.titled(fill(w.onTitle, fill(w.byWay, string(p.By))))}
	// Weeks lie between the two, and another crew does the second.
	out[0].NewPage = s.h.Pull != nil
	out[0].Block = out[0].Block.Anchored("heat on " + s.h.Mark)
	add := func(gap layout.Mm, b layout.Block) {
		if !b.Empty() {
			out = append(out, layout.Piece{Block: b, Gap: gap})
		}
	}
	first := fill(w.chillCold)
	if p.Chill == nil || p.Chill.HubHeated {
		first = fill(w.heatTo, u.temp(p.SetTo)) + " " + w.neverAbove + " " + u.atMost(s.h.Limit.At) + "."
	}
	if s.h.Limit.NoFlame {
		first += " " + w.noFlame
	}
	add(2, s.boxed(s.parasIn(s.width-6, layout.Limit, []string{first})))
	if s.h.Pull != nil {
		add(2, s.paras(layout.Body, s.onLines()))
	}
	add(2, s.ladder())
	out = append(out, s.titled(w.orderTitle))
	out = append(out, s.hazards(s.h.PutOnAt)...)
	out = append(out, s.ticked(s.onOrder())...)
	add(3, s.onBoxes())
	if p.Plan != nil {
		out = append(out, s.assumed(p.Plan.Assumptions, []heat.Working{p.Plan.Need.Working})...)
	} else if p.Chill != nil {
		out = append(out, s.assumed(nil, []heat.Working{p.Chill.Working})...)
	}
	return out
}

// onLines say what the heat opens, how long it takes and how long it lasts.
func (s heatSheet) onLines() []string {
	p, w, u := s.h.PutOn, s.w, s.u
	if p == nil {
		return nil // a heat that neither draws off nor puts on
	}
	var out []string
	if p.Given && p.Plan != nil {
		out = append(out, fill(w.makersFigure, u.tempUp(p.Plan.Need.Hub)))
	}
	if c := p.Chill; c != nil {
		line := fill(w.chillLine, string(p.Coolant), u.temp(c.Shaft), u.fine(c.Contraction), c.Source)
		if c.HubHeated {
			line += " " + fill(w.chillHot, u.temp(p.SetTo))
		}
		out = append(out, line)
	}
	if p.Plan != nil {
		out = append(out, fill(w.roomLine, u.temp(p.SetTo), u.fine(p.Plan.Room), u.temp(s.h.Air)))
	}
	switch {
	case p.Soak != nil && p.Oven > 0:
		out = append(out, fill(w.soakLine, takes(p.Soak.After), string(p.By)+" "+u.temp(p.Oven)))
	case p.Soak != nil:
		out = append(out, fill(w.soakLine, takes(p.Soak.After), string(p.By)))
	case p.Chill == nil || p.Chill.HubHeated:
		out = append(out, w.noSoak)
	}
	if p.Plan != nil {
		out = append(out, fill(w.carryLine, lasting(p.Plan.Carry))+" "+fill(w.gripsLine, lasting(p.Plan.GripsSoonest), lasting(p.Plan.Grips)))
	}
	if a := p.Room; a != nil {
		line := fill(w.airLine, fmt.Sprintf("%.1f", math.Floor(float64(a.Oxygen)*10)/10), fmt.Sprintf("%.2f", float64(a.Carbonic)))
		most := fill(w.mostIce, grouped(math.Floor(float64(a.MostIce))))
		if p.Coolant == heat.LiquidNitrogen {
			most = fill(w.mostNitrogen, grouped(math.Floor(float64(a.MostNitrogen))))
		}
		out = append(out, line+" "+most)
		for _, x := range a.Warnings {
			out = append(out, upper(x.Says)+".")
		}
	}
	return out
}

// ladder is the table of interferences as measured, with the boxes that work the
// interference out.
func (s heatSheet) ladder() layout.Block {
	p, w, u, f := s.h.PutOn, s.w, s.u, s.h.Fit
	if len(p.Ladder) == 0 {
		return layout.Block{}
	}
	cols := make([]layout.Column, 0, len(p.Ladder)+1)
	one := (s.width - 30) / layout.Mm(len(p.Ladder))
	t := layout.Table{PadX: 1.2, PadY: 1, Grid: true}
	cell := func(width layout.Mm, st layout.Style, text string) layout.Block {
		return s.Para(width-2*t.PadX, []layout.Run{layout.T(st, text)}, layout.ParaOpts{Ref: s.h.At})
	}
	upTo, setTo := []layout.Block{cell(30, layout.SubBold, w.interferenceBox+" "+w.ladderUpTo)}, []layout.Block{cell(30, layout.SubBold, w.ladderSetTo)}
	cols = append(cols, layout.Column{Width: 30})
	for _, r := range p.Ladder {
		cols = append(cols, layout.Column{Width: one})
		upTo = append(upTo, cell(one, layout.Body, u.fine(r.UpTo)))
		text := u.temp(r.SetTo)
		if r.TooHot {
			text = w.ladderTooHot
		}
		setTo = append(setTo, cell(one, layout.Strong, text))
	}
	t.Columns = cols
	table := t.Block([]layout.Row{{Cells: upTo}, {Cells: setTo}})
	return layout.Above(2, s.heading(w.ladderTitle), s.ladderBoxes(f.Seat, f.Bore), table)
}

// ladderBoxes work the interference out: seat less bore, both copied from where
// they were read; of several readings those that make it largest.
func (s heatSheet) ladderBoxes(seat, bore *job.Dim) layout.Block {
	size := func(d *job.Dim, of string) layout.Block {
		name := d.Mark
		if d.Positions.Boxes() > 1 {
			name = fill(of, d.Mark)
		}
		n := layout.Number{Before: d.Box.Before, After: d.Box.After, Caption: name + ": " + fill(s.w.copyFrom, s.page("found "+d.Mark)), Copied: true, Ref: s.h.At}
		return s.Value(n)
	}
	unit := bore.Box.Unit.Print()
	result := s.Value(layout.Number{Before: 1, After: max(seat.Box.After, bore.Box.After), Unit: unit, Caption: s.w.interferenceBox, Ref: s.h.At})
	sign := func(t string) layout.Block { return s.Words(layout.Limit, t).Pad(0, 0, 2, 0) }
	return layout.Bottom(3, size(seat, s.w.largest), sign("−"), size(bore, s.w.smallest), sign("="), result)
}

// onOrder are the acts of putting a part on, in their order.
func (s heatSheet) onOrder() []string {
	p, w := s.h.PutOn, s.w
	heatIt := w.orderOven
	switch p.By {
	case heat.Induction:
		heatIt = w.orderOnInduction
	case heat.Torch:
		heatIt = w.orderOnTorch
	}
	if p.Chill != nil && !p.Chill.HubHeated {
		heatIt = nil
	}
	var out []string
	for _, a := range w.orderOnAll {
		if a != "{heat}" {
			out = append(out, a)
			continue
		}
		if s.h.Limit.NoFlame {
			out = append(out, w.orderBearing...)
		}
		if p.Chill != nil {
			out = append(out, w.orderChill...)
		}
		out = append(append(out, s.keptCool()...), heatIt...)
	}
	return out
}

// onBoxes are the boxes of a hot fit.
func (s heatSheet) onBoxes() layout.Block {
	w := s.w
	return flowRow([]layout.Block{
		s.degreeBox(w.setTo), s.timeBox(w.inAt), s.timeBox(w.outAt), s.degreeBox(w.partTemp), s.degreeBox(w.shaftTemp), s.timeBox(w.onAt),
		s.Tick(layout.Body, w.coldCheck, s.h.At), s.Box(layout.RoleInitials, w.initials, s.h.At),
	}, s.width)
}
