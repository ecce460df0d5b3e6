package pdf

import (
	"fmt"

	"matchmark/layout"
)

// sample is a document with everything a page can hold, on invented data.
func sample(paper layout.Paper) *layout.Doc {
	s := layout.NewSetter(NewFaces(), layout.Pen{})
	w, _ := paper.Inner()
	again := s.Para(w, []layout.Run{layout.T(layout.Section, "3  Bearings, drive end (continued)")}, layout.ParaOpts{}).Pad(0, 0, 2, 0)
	head := []*layout.Block{&again}
	sh := layout.Sheet{Name: "traveler", Title: "Traveler"}
	sh.Head = func(page, total int) layout.Block {
		plate := s.Words(layout.Plate, "Traveler").Pad(2, 4, 2, 4).Border(layout.Rect{Fill: layout.Black, Radius: 1.2})
		name := layout.Above(0, s.Words(layout.Head, "FN-11  Kiln exhaust fan"), s.Words(layout.Body, "WO-5512  Bearing change"))
		no := layout.Above(0, s.Line(30, []layout.Run{layout.T(layout.Head, fmt.Sprintf("%d of %d", page, total))}, layout.ParaOpts{Align: layout.RightEnd}),
			s.Line(30, []layout.Run{layout.T(layout.Body, "rev B  2026-03-02")}, layout.ParaOpts{Align: layout.RightEnd}))
		qr := s.QR(fmt.Sprintf("WO-5512/B/P%d", page), 15, 0.4, nil)
		left := layout.Middle(4, plate, name)
		right := layout.Middle(3, no, qr)
		row := layout.Beside(0, left.Fill(w-right.W, max(left.H, right.H), 0, 0.5), right)
		rule := layout.Drawn(w, 0, layout.Item{Shape: layout.Line{DX: w, Weight: layout.Rule}})
		return layout.Above(1.5, row, rule).Pad(0, 0, 3, 0)
	}
	sh.Foot = func(page, total int) layout.Block {
		box := s.WideBox(layout.RoleWords, w, 1, "handover: half done, loose or finger tight", nil)
		return layout.Above(1, box, s.Words(layout.CodeText, "WO-5512 B · 7c419e02"))
	}
	sh.Pieces = append(sh.Pieces, layout.Piece{Block: s.Words(layout.Section, "3  Bearings, drive end (DE), seen from the motor"),
		KeepNext: true, Title: "3 Bearings", Level: 1})
	for i := 1; i <= 9; i++ {
		sh.Pieces = append(sh.Pieces, layout.Piece{Block: sampleStep(s, w, i), Gap: 3, Under: head,
			Title: fmt.Sprintf("3.%d", i), Level: 2})
	}
	wide := layout.Sheet{Name: "matrix", Title: "Matrix", Landscape: true, Head: nil}
	tw, _ := paper.Turned().Inner()
	tab := layout.Table{PadX: 1.5, PadY: 1.5, Grid: true}
	for i := range 6 {
		tab.Columns = append(tab.Columns, layout.Column{Width: tw / 6, Head: s.Words(layout.Strong, fmt.Sprintf("place %d", i+1))})
	}
	var rows []layout.Row
	for range 14 {
		var r layout.Row
		for range 6 {
			r.Cells = append(r.Cells, s.Value(layout.Number{Before: 1, After: 2, Unit: "mm"}))
		}
		rows = append(rows, r)
	}
	wide.Pieces = tab.Pieces(rows)
	p := layout.Paginate(paper, []layout.Sheet{sh, wide})
	return &layout.Doc{Title: "Kiln exhaust fan — bearing change 🔧", Subject: "job pack", Lang: "en", Date: "2026-03-02",
		Pages: p.Frames, Outline: p.Outline}
}

// sampleStep is one step of the sample with boxes of every kind.
func sampleStep(s *layout.Setter, w layout.Mm, i int) layout.Block {
	no := s.Words(layout.StepNo, fmt.Sprintf("3.%d", i)).Fill(13, 6, 0, 0)
	text := s.Para(88, []layout.Run{
		layout.T(layout.Body, "Measure how far the lock nut stands from the shaft end ⌀\u202f130\u202fmm, then take the nut and tab washer off. "),
		{Text: "left-hand thread", Style: layout.Strong, Deco: layout.Inverse},
		layout.T(layout.Body, " Put both in "),
		{Text: "C2/DE", Style: layout.Strong, Deco: layout.Boxed},
		layout.T(layout.Body, " ☐ ☑ ✓ ⚠ → ± 0.10"),
		layout.T(layout.Sub, "\nafter 2.6 — coupling is apart · may be done any time before 3.4 or Betriebsmittelkennzeichnungssystematikverzeichnisschlüsselwörter"),
	}, layout.ParaOpts{})
	boxes := layout.Beside(layout.GapX, s.Box(layout.RoleInitials, "initials", nil), s.Box(layout.RoleTime, "time", nil))
	top := layout.Beside(3, no, text, boxes)
	row := layout.Bottom(layout.GapX,
		s.Value(layout.Number{Before: 3, After: 2, Unit: "mm", Caption: "as found"}),
		s.Value(layout.Number{Before: 1, After: 2, Unit: "mm", Sign: true, Caption: "left − found", Copied: true}),
		s.Tick(layout.Sub, "in", nil), s.Words(layout.Limit, "130.015 – 130.040 mm"))
	b := layout.Above(2, top, row.Pad(0, 0, 0, 13))
	if i == 2 {
		b = layout.Above(2, b, s.Fraction("spacer", "in", false, nil).Pad(0, 0, 0, 13))
	}
	if i == 3 {
		b = layout.Above(2, b, s.Sketch(80, 60, "sketch", nil).Pad(0, 0, 0, 13))
	}
	return b.Pad(0, 0, 2, 0).Anchored(fmt.Sprintf("step 3.%d", i))
}
