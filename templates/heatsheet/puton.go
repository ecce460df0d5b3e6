package heatsheet

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/units"
	"matchmark/templates/block"
	"matchmark/templates/figure"
	"matchmark/templates/words"
)

// putOnPieces set the part of the sheet for putting a part on.
func (s sheet) putOnPieces() []layout.Piece {
	p, w := s.h.PutOn, s.W
	var out []layout.Piece
	add := func(gap layout.Mm, b layout.Block) {
		if !b.Empty() {
			out = append(out, layout.Piece{Block: b, Gap: gap})
		}
	}
	if s.h.Pull != nil {
		out = append(out, s.titled(s.onTitle()))
	}
	if !s.shared.frame {
		add(1.4, s.onFrame())
		for _, h := range s.each() {
			out[0].Block = out[0].Block.Anchored("heat on " + h.Mark)
		}
	}
	if p.Plan != nil {
		for _, b := range s.lookFirst(p.Plan.Warnings) {
			add(1.4, b)
		}
	}
	if s.h.Pull != nil {
		add(1.4, s.paras(layout.Body, []string{strings.Join(s.onLines(), " ")}))
	}
	add(1.4, s.interferenceTable())
	if s.shared.order {
		return out
	}
	return append(append(out, s.titled(w.Heat.OrderTitle)), s.orderPieces()...)
}

// onTitle says how a part is put on.
func (s sheet) onTitle() string {
	return s.W.HeatOn.Title.With(s.W.Heat.ByWay.With(s.W.Said(string(s.h.PutOn.By))))
}

// onFrame is the frame of how hot a part is made; it begins with how the part is put on, where no
// heading says so above it.
func (s sheet) onFrame() layout.Block {
	first := s.heatToLine()
	if s.h.Limit.NoFlame {
		first += " " + s.W.Heat.NoFlame
	}
	if s.h.Pull == nil {
		first = s.onTitle() + ". " + first
	}
	return s.heavyFrame(s.parasIn(s.Span-6, layout.Limit, []string{first}))
}

// orderPieces are the hazards of putting a part on, the acts and the boxes.
func (s sheet) orderPieces() []layout.Piece {
	out := append(s.hazards(s.h.PutOnAt), s.numberedTicks(append(s.onOrder(), s.watchActs()...))...)
	if !s.h.OnHook(s.h.PulledAt) { // said above, of the pull
		out = append(out, s.slingPieces(s.h.PutOnAt)...)
	}
	out = append(out, layout.Piece{Block: s.eachOnBoxes(), Gap: 3})
	if boxes := s.eachWatchBoxes(); len(boxes) > 0 && s.watchedInTable() == nil && !s.onTable().Empty() {
		out = append(out, layout.Piece{Block: block.FlowRow(boxes, s.Span), Gap: 3})
	}
	return out
}

// onLines say what the heat opens, how long it takes and how long it lasts.
func (s sheet) onLines() []string {
	p, w, u := s.h.PutOn, s.W, s.u
	if p == nil {
		return nil // a heat that neither draws off nor puts on
	}
	var out []string
	if p.Given && p.Plan != nil {
		out = append(out, w.HeatOn.MakersFigure.With(u.TempUp(p.Plan.Need.Hub)))
	}
	if p.Cold != nil {
		out = append(out, s.coldLine(p.Cold))
	}
	if p.Plan != nil {
		out = append(out, w.HeatOn.RoomLine.With(u.TempUp(p.SetTo), u.InterferenceDown(p.Plan.Room), u.Temp(s.h.Air)))
	}
	switch {
	case p.Soak != nil && p.Oven > 0:
		out = append(out, w.HeatOn.SoakLine.With(figure.TimeUp(p.Soak.After), s.W.Said(string(p.By))+" "+u.AtMost(p.Oven)))
	case p.Soak != nil:
		out = append(out, w.HeatOn.SoakLine.With(figure.TimeUp(p.Soak.After), s.W.Said(string(p.By))))
	case p.Cold == nil || p.Cold.HubHeated:
		out = append(out, w.HeatOn.NoSoak)
	}
	if c := p.Cold; c != nil {
		out = append(out, w.HeatOn.ColdCarry.With(figure.TimeDown(c.Carry))+" "+w.HeatOn.ColdGrips.With(figure.TimeDown(c.GripsSoonest), figure.TimeDown(c.Grips)))
	}
	if p.Plan != nil {
		out = append(out, w.HeatOn.CarryLine.With(figure.TimeDown(p.Plan.Carry))+" "+w.HeatOn.GripsLine.With(figure.TimeDown(p.Plan.GripsSoonest), figure.TimeDown(p.Plan.Grips)))
	}
	if a := p.Room; a != nil {
		line := w.HeatOn.AirLine.With(figure.Hundredfold(a.Oxygen, 1, units.Down), figure.Hundredfold(a.Carbonic, 2, units.Up))
		most := w.HeatOn.MostIce.With(figure.WholeDown(float64(a.MostIce)))
		if p.Coolant == heat.LiquidNitrogen {
			most = w.HeatOn.MostNitrogen.With(figure.WholeDown(float64(a.MostNitrogen)))
		}
		out = append(out, line+" "+most)
		for _, x := range a.Warnings {
			out = append(out, block.Capital(x.In(s.inUnits()).Says)+".")
		}
	}
	return out
}

// interferenceTable is the table of interferences as measured, with the boxes that work the
// interference out.
func (s sheet) interferenceTable() layout.Block {
	p, w, u, f := s.h.PutOn, s.W, s.u, s.h.Fit
	if len(p.Ladder) == 0 {
		return layout.Block{}
	}
	cols := make([]layout.Column, 0, len(p.Ladder)+1)
	one := (s.Span - 30) / layout.Mm(len(p.Ladder))
	t := layout.Table{PadX: 1.2, PadY: 1, Grid: true}
	cell := func(width layout.Mm, st layout.Style, text string) layout.Block {
		return s.Para(width-2*t.PadX, []layout.Run{layout.T(st, text)}, layout.ParaOpts{Ref: s.h.At})
	}
	upTo, setTo := []layout.Block{cell(30, layout.SubBold, s.interferenceName(f.Seat, f.Bore)+" "+w.HeatOn.LadderUpTo)}, []layout.Block{cell(30, layout.SubBold, w.HeatOn.LadderSetTo)}
	cols = append(cols, layout.Column{Width: 30})
	for _, r := range p.Ladder {
		cols = append(cols, layout.Column{Width: one})
		upTo = append(upTo, cell(one, layout.Body, u.InterferenceDown(r.UpTo)))
		text := u.TempUp(r.SetTo)
		if r.TooHot {
			text = w.HeatOn.LadderTooHot
		}
		setTo = append(setTo, cell(one, layout.Strong, text))
	}
	t.Columns = cols
	table := t.Block([]layout.Row{{Cells: upTo}, {Cells: setTo}})
	return layout.Above(2, s.Heading(w.HeatOn.LadderTitle), s.interferenceBoxes(f.Seat, f.Bore), table)
}

// interferenceName tells the greatest interference of several readings from one that is worked
// out otherwise, as from their means.
func (s sheet) interferenceName(seat, bore *job.Dim) string {
	if seat.Positions.Boxes() > 1 || bore.Positions.Boxes() > 1 {
		return s.W.HeatOn.Greatest
	}
	return s.W.HeatOn.Interference
}

// leftBy reports whether a reading is taken as left at a step or before it.
func leftBy(d *job.Dim, st *job.Step) bool {
	return d.LeftAt != nil && st != nil && d.LeftAt.Index <= st.Index
}

// interferenceBoxes work the interference out: seat less bore, both copied from where
// they were read; of several readings those that make it largest. What is put on is what was left,
// where both were measured for that by then.
func (s sheet) interferenceBoxes(seat, bore *job.Dim) layout.Block {
	from := func(d *job.Dim) string { return s.W.Common.CopyFound.With(s.Page("found " + d.Mark)) }
	if leftBy(seat, s.h.PutOnAt) && leftBy(bore, s.h.PutOnAt) {
		from = func(d *job.Dim) string { return s.W.Common.CopyLeft.With(s.Page("left " + d.Mark)) }
	}
	size := func(d *job.Dim, of words.Sentence) layout.Block {
		name := d.Mark
		if d.Positions.Boxes() > 1 {
			name = of.With(d.Mark)
		}
		n := layout.Number{Before: d.Box.Before, After: d.Box.After, Caption: name + s.W.Common.Colon + from(d), Copied: true, Ref: s.h.At}
		return s.Value(n)
	}
	unit := bore.Box.Unit.Print()
	result := s.Value(layout.Number{Before: 1, After: max(seat.Box.After, bore.Box.After), Unit: unit, Caption: s.interferenceName(seat, bore), Ref: s.h.At})
	sign := func(t string) layout.Block { return s.Words(layout.Limit, t).Pad(0, 0, 2, 0) }
	return layout.Bottom(3, size(seat, s.W.HeatOn.Largest), sign("−"), size(bore, s.W.HeatOn.Smallest), sign("="), result)
}

// onOrder are the acts of putting a part on, in their order.
func (s sheet) onOrder() []string {
	p, w := s.h.PutOn, s.W
	heatIt := w.HeatOn.OrderOven
	switch p.By {
	case heat.Induction:
		heatIt = w.HeatOn.OrderInduction
	case heat.Torch:
		heatIt = w.HeatOn.OrderTorch
	}
	if p.Cold != nil && !p.Cold.HubHeated {
		heatIt = nil
	}
	var out []string
	for _, a := range w.HeatOn.Order {
		if a != words.ActHeat {
			out = append(out, a)
			continue
		}
		if s.h.Limit.NoFlame {
			out = append(out, w.HeatOn.OrderBearing...)
		}
		if p.Coolant != "" {
			out = append(out, w.HeatOn.OrderChill...)
		}
		if p.By == heat.Torch {
			out = append(out, s.flameAct())
		}
		out = append(append(out, s.coolingActs()...), heatIt...)
	}
	return out
}

// onBoxes are the boxes of a hot fit; with a flame there is a permit and a fire watch.
func (s sheet) onBoxes() layout.Block {
	w := s.W
	var boxes []layout.Block
	if s.h.PutOn.By == heat.Torch {
		boxes = s.flameBoxes()
	}
	return block.FlowRow(append(append(boxes,
		s.degreeBox(w.HeatOn.SetTo), s.timeBox(w.HeatOn.InAt), s.timeBox(w.HeatOn.OutAt), s.degreeBox(w.HeatOn.PartTemp), s.degreeBox(w.HeatOn.ShaftTemp), s.timeBox(w.HeatOn.HomeAt),
		s.Tick(layout.Body, w.HeatOn.HomeWhenCold, s.h.At)), append(s.watchBoxes(false), s.Box(layout.RoleInitials, w.Common.Initials, s.h.At))...), s.Span)
}
