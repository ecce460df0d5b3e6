package templates

import (
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// Columns on a sheet that no other stands before, or with nothing above them, were made as
// high as a page without its head, or told nothing of their page at all.
func TestColumnsOnAFirstSheet(t *testing.T) {
	t.Parallel()
	const head, foot layout.Mm = 20, 18
	w, high := layout.A4.Inner()
	edge := func(h layout.Mm) func(int, int) layout.Block {
		return func(int, int) layout.Block { return layout.Block{W: w, H: h} }
	}
	inner := block.New(pdf.NewFaces(), layout.Pen{}, &job.Job{}, words.English, w)
	c := &composer{Composer: inner, paper: layout.A4, own: layout.Sheet{Name: "own", Head: edge(head), Foot: edge(foot)}}
	var lines []columnLine
	for range 50 {
		lines = append(lines, columnLine{block: layout.Block{W: 80, H: 19}, gap: 1})
	}
	title := layout.Piece{Block: layout.Block{W: w, H: 10}, KeepNext: true}
	for name, above := range map[string][]layout.Piece{"nothing above": nil, "a title above": {title}} {
		for _, either := range []bool{false, true} {
			sheet := c.own
			sheet.Pieces = c.columnPages(above, lines, bands{width: 85, between: 5, either: either})
			pages := layout.Paginate(layout.A4, []layout.Sheet{sheet})
			for _, p := range sheet.Pieces {
				if p.Block.H > high-head-foot {
					t.Errorf("%s: a piece is %.0f mm high, and a page has %.0f", name, p.Block.H, high-head-foot)
				}
			}
			if len(pages.Misfits) > 0 || len(pages.Frames) > 3 {
				t.Errorf("%s: %d pages, %v", name, len(pages.Frames), pages.Misfits)
			}
		}
	}
}

// Lines that go in either column keep their order down each, and the columns are as low as
// they can be.
func TestLinesInEitherColumn(t *testing.T) {
	t.Parallel()
	var lines []columnLine
	for _, h := range []layout.Mm{40, 10, 10, 10, 10} {
		lines = append(lines, columnLine{block: layout.Block{W: 10, H: h}})
	}
	left, right := inEither(lines)
	if len(left) != 1 || len(right) != 4 {
		t.Errorf("%d lines on the left and %d on the right", len(left), len(right))
	}
	if left, right := inEither(nil); len(left)+len(right) > 0 {
		t.Errorf("no lines give %v and %v", left, right)
	}
}

// Columns whose first line does not go in below what stands above them begin on the next page,
// all of them: that line stood there alone, beside nothing, and the others below it.
func TestColumnsBeginWhereTheirFirstLineGoesIn(t *testing.T) {
	t.Parallel()
	w, high := layout.A4.Inner()
	inner := block.New(pdf.NewFaces(), layout.Pen{}, &job.Job{}, words.English, w)
	for _, tt := range []struct {
		first layout.Mm
		head  bool
		bands int
	}{{40, false, 2}, {50, false, 1}, {50, true, 1}} {
		c := &composer{Composer: inner, paper: layout.A4, own: layout.Sheet{Name: "own"}}
		title := layout.Piece{Block: layout.Block{W: w, H: 10}, KeepNext: true}
		above := []layout.Piece{{Block: layout.Block{W: w, H: high - 10 - 45}}, title}
		lines := []columnLine{{block: layout.Block{W: 80, H: tt.first}, head: tt.head}}
		for range 6 {
			lines = append(lines, columnLine{block: layout.Block{W: 80, H: 40}})
		}
		pieces := c.columnPages(above, lines, bands{width: 85, between: 5})
		if got := len(pieces) - len(above); got != tt.bands {
			t.Errorf("a first line of %.0f mm where 45 mm are left: %d bands, not %d", tt.first, got, tt.bands)
		}
	}
}
