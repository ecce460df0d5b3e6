package heatsheet

import (
	"fmt"
	"os"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/figure"
	"matchmark/templates/words"
)

// A drum that is free after 42 s had a log whose first row was at 1:00.
func TestTheLogSeesTheHubComeFree(t *testing.T) {
	for _, c := range []struct {
		free, least heat.Second
		pace        []heat.Pace
		want        string // the rows down to the first of the long steps
	}{
		{42, 369, []heat.Pace{{By: 120}, {By: 240}}, "[20 40 60]"},
		{57, 153, []heat.Pace{{By: 45}, {By: 90}}, "[15]"},
		{58, 590, nil, "[20 40 60]"},
		{60, 590, nil, "[60]"},
		{4, 369, nil, "[5 60]"},
		{31, 2900, nil, "[15 30 45 300]"},
	} {
		s := sheet{h: &job.Heat{Pull: &job.HotPull{Plan: &heat.Plan{Free: c.free, Band: heat.Band{LeastFree: c.least, Pace: c.pace}}}}}
		var got []int
		for _, at := range s.logTimes() {
			got = append(got, int(at))
			if at >= s.logStep() {
				break
			}
		}
		if fmt.Sprint(got) != c.want {
			t.Errorf("free after %v s: rows at %v, want %v", float64(c.free), got, c.want)
		}
	}
}

// A hub that may be free from 0:27 to 5:45 had its first row at 1:00, and one that may be free as
// late as 1:10 its last at 0:50: the rows reach from before the first to past the last.
func TestTheLogCoversTheWindow(t *testing.T) {
	for _, c := range []struct {
		most, free, least heat.Second
		pace              []heat.Pace
		want              string
	}{
		{27, 64, 345, []heat.Pace{{By: 120}, {By: 240}}, "[10 20 30 45 60 120 180 240 300 360]"},
		{13, 25, 70, []heat.Pace{{By: 20}, {By: 45}}, "[5 10 15 20 25 30 35 40 45 50 55 60 65 70 75]"},
		{57, 58, 153, []heat.Pace{{By: 45}, {By: 90}}, "[15 30 45 60 75 90 105 120 135 150 165]"},
		{100, 150, 171, []heat.Pace{{By: 37}, {By: 90}}, "[20 37 40 60 80 90 100 120 140 160 180]"},
		{40, 200, 9000, nil, "[20 40 60 120 240 1200 2400 3600 4800 6000 7200 8400 9600]"},
	} {
		s := sheet{h: &job.Heat{Pull: &job.HotPull{Plan: &heat.Plan{Free: c.free, Band: heat.Band{MostFree: c.most, LeastFree: c.least, Pace: c.pace}}}}}
		got := s.logTimes()
		if fmt.Sprint(got) != c.want {
			t.Errorf("free from %v s to %v s: rows at %v, want %v", float64(c.most), float64(c.least), got, c.want)
		}
		if got[0] > c.most || got[len(got)-1] < c.least {
			t.Errorf("rows at %v leave out a time at which the hub may come free", got)
		}
		if got[len(got)-2] > c.least {
			t.Errorf("rows at %v go on when the hub is free, past %v s", got, float64(c.least))
		}
	}
}

// TestTheLogIsNotParted: wherever the log begins on its page, all its times stand on one, though
// that takes a page more: they run down one half and then down the other, so that a log over two
// pages is read in a wrong order.
func TestTheLogIsNotParted(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS("../../packs/starters"), packs.Inputs{Definition: "storm-pump.yaml"})
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
	_, high := layout.A4.Inner()
	pulled := 0
	for _, h := range jb.Heats {
		if h.Pull == nil {
			continue
		}
		pulled++
		s := sheet{Composer: c, h: h, u: figure.UnitsOf(h)}
		times := map[string]bool{}
		for _, at := range s.logTimes() {
			times[figure.Clock(at)] = true
		}
		for above := layout.Mm(0); above < 260; above += 4 {
			log := s.logTable()
			pieces := append([]layout.Piece{{Block: layout.Space(180, above)}}, log...)
			left := 2*high - above - 15
			for _, p := range log {
				left -= p.Block.H + p.Gap
			}
			for ; left > 3; left -= 3 { // parted, the log has room on two pages
				pieces = append(pieces, layout.Piece{Block: layout.Space(180, 3)})
			}
			flow := layout.Sheet{Name: "heats", Pieces: pieces,
				Head: func(int, int) layout.Block { return layout.Block{} }, Foot: func(int, int) layout.Block { return layout.Block{} }}
			pages, found := 0, 0
			for _, f := range layout.Paginate(layout.A4, []layout.Sheet{flow}).Frames {
				on := 0
				for _, it := range f.Items {
					if text, ok := it.Shape.(layout.Text); ok && times[text.S] {
						on++
					}
				}
				if found += on; on > 0 {
					pages++
				}
			}
			if pages != 1 || found != len(times) {
				t.Errorf("%s, %.0f mm down: %d of %d times on %d pages", h.Mark, above, found, len(times), pages)
			}
		}
	}
	if pulled == 0 {
		t.Error("nothing is pulled")
	}
}
