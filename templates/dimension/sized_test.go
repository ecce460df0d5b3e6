package dimension

import (
	"testing"

	"pgregory.net/rapid"

	"matchmark/layout"
	"matchmark/templates/block"
)

// TestSizedAsLayoutDoes: what is only measured has the size, to the last bit, and the
// misfits of the block that is made of it; else a way would be taken that is not the
// lowest.
func TestSizedAsLayoutDoes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mm := rapid.Float64Range(0, 90)
		blocks := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) layout.Block {
			if rapid.IntRange(0, 4).Draw(t, "none") == 0 {
				return layout.Block{}
			}
			b := layout.Drawn(layout.Mm(mm.Draw(t, "w")), layout.Mm(mm.Draw(t, "h")), layout.Item{Shape: layout.Rect{W: 1, H: 1}})
			b.AddMisfits(make([]layout.Misfit, rapid.IntRange(0, 2).Draw(t, "misfits"))...)
			return b
		}), 0, 9).Draw(t, "blocks")
		gap := layout.Mm(rapid.Float64Range(0, 6).Draw(t, "gap"))
		var of []sized
		for _, b := range blocks {
			of = append(of, done(b))
		}
		n := len(blocks) / 2
		for name, c := range map[string]struct {
			got  sized
			want layout.Block
		}{
			"above":  {above(gap, of...), layout.Above(gap, blocks...)},
			"beside": {beside(gap, of...), layout.Beside(gap, blocks...)},
			"bottom": {bottom(gap, of...), layout.Bottom(gap, blocks...)},
			"flow":   {flowRow(100, blocks[:n], nil, blocks[n:]), block.FlowRow(blocks, 100)},
			"nested": {beside(gap, above(1, of[:n]...), bottom(2, of[n:]...)), layout.Beside(gap, layout.Above(1, blocks[:n]...), layout.Bottom(2, blocks[n:]...))},
		} {
			made := c.got.make()
			if made.W != c.want.W || made.H != c.want.H || len(made.Items()) != len(c.want.Items()) {
				t.Errorf("%s: made %v by %v, want %v by %v", name, made.W, made.H, c.want.W, c.want.H)
			}
			if c.got.w != c.want.W || c.got.h != c.want.H || c.got.empty != c.want.Empty() || c.got.misfits != len(c.want.Misfits()) {
				t.Errorf("%s: measured %v by %v, empty %v, %d misfits; want %v by %v, %v, %d", name, c.got.w, c.got.h, c.got.empty, c.got.misfits, c.want.W, c.want.H, c.want.Empty(), len(c.want.Misfits()))
			}
		}
	})
}
