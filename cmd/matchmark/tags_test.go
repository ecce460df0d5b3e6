package main

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/stock"
	"matchmark/templates"
)

// tagSettings are the starters on all usual stocks.
func tagSettings(t *testing.T, use func(what string, o templates.Options, pack *templates.Pack)) {
	t.Helper()
	for _, starter := range starters(t) {
		for _, o := range []templates.Options{{Paper: layout.A4}, {Paper: layout.Letter}, {Paper: layout.A4, Tags: templates.TagOptions{Stocks: stock.Rolls()}}, {Paper: layout.A4, Tags: templates.TagOptions{Envelope: true}}} {
			_, pack := composed(t, starter, o)
			use(starter+" on "+o.Paper.Name, o, pack)
		}
	}
}

// tagFrames are all pages of tags, with the stock that each is of where it is a roll.
func tagFrames(pack *templates.Pack) []layout.Frame {
	out := pack.Tags.Pages
	for _, r := range pack.Rolls {
		out = append(out[:len(out):len(out)], r.Doc.Pages...)
	}
	return out
}

// Every square of every code is 0.6 mm or more, in whole dots where the printer is known,
// and nothing is printed in the white margin of four squares. Codes of bags had squares
// of 0.50 mm.
func TestSquaresOfCodes(t *testing.T) {
	t.Parallel()
	tagSettings(t, func(what string, o templates.Options, pack *templates.Pack) {
		for i, f := range append(tagFrames(pack), pack.Pages.Pages...) {
			for k, it := range f.Items {
				m, ok := it.Shape.(layout.Modules)
				if !ok {
					continue
				}
				module := float64(m.Size) / float64(m.Count())
				if module < 0.6-1e-6 {
					t.Errorf("%s %s page %d: squares of %.3f mm", what, f.Sheet, i+1, module)
				}
				if dots := module * 203 / 25.4; f.W < paperLeast && math.Abs(dots-math.Round(dots)) > 1e-6 {
					t.Errorf("%s page %d: squares of %.3f dots", what, i+1, dots)
				}
				l, top, r, b := it.Bounds()
				for n, other := range f.Items {
					if n == k || other.Role == layout.RoleCut {
						continue
					}
					if rect, ok := other.Shape.(layout.Rect); ok && min(rect.W, rect.H) > 30 {
						continue // the outline of the label, which only touches
					}
					if _, text := other.Shape.(layout.Text); text {
						x := inked(other)
						if over(x, area{l, top, r, b}) {
							t.Errorf("%s page %d: %s stands in the margin of a code", what, i+1, saidAt(other))
						}
						continue
					}
					ol, ot, or, ob := other.Bounds()
					if _, code := other.Shape.(layout.Modules); !code && over(area{ol, ot, or, ob}, area{l + 0.2, top + 0.2, r - 0.2, b - 0.2}) {
						t.Errorf("%s %s page %d: %T at %.1f,%.1f stands in the margin of a code", what, f.Sheet, i+1, other.Shape, ol, ot)
					}
				}
			}
		}
	})
}

// Nothing is printed within 8 mm of the rim of a hang tag's hole: the eyelet covers it. The
// mark began 6 mm from it.
func TestHoleIsFree(t *testing.T) {
	t.Parallel()
	found := 0
	tagSettings(t, func(what string, o templates.Options, pack *templates.Pack) {
		for i, f := range tagFrames(pack) {
			var holes []layout.Point
			for _, it := range f.Items {
				if p, ok := it.Shape.(layout.Path); ok && p.Dash == 0.8 {
					l, top, r, b := it.Bounds()
					holes = append(holes, layout.Point{X: (l + r) / 2, Y: (top + b) / 2})
				}
			}
			if f.W == 70 {
				holes = []layout.Point{{X: 35, Y: 11}} // punched already on a roll
			}
			found += len(holes)
			for _, h := range holes {
				for _, it := range f.Items {
					l, top, r, b := it.Bounds()
					if _, ok := it.Shape.(layout.Text); ok {
						x := inked(it)
						l, top, r, b = x[0], x[1], x[2], x[3]
					}
					dx, dy := max(l-h.X, 0, h.X-r), max(top-h.Y, 0, h.Y-b)
					rect, isRect := it.Shape.(layout.Rect)
					if isRect && rect.H > 100 || isRect && rect.W > 100 {
						continue // the outline of the tag goes round the hole
					}
					if p, ok := it.Shape.(layout.Path); ok && (p.Dash == 0.8 || it.Role == layout.RoleCut) {
						continue
					}
					if d := math.Hypot(float64(dx), float64(dy)); d < 3+8-0.05 {
						t.Errorf("%s page %d: %T at %.1f,%.1f is %.1f mm from the rim of a hole", what, i+1, it.Shape, l, top, d-3)
					}
				}
			}
		}
	})
	if found < 30 {
		t.Errorf("only %d holes are found", found)
	}
}

// The least of the marks: 20 mm on a hang tag, 8 mm on a small label; and no label prints a
// page, whose number is another on other paper and with one step more.
func TestMarksAndNoPages(t *testing.T) {
	t.Parallel()
	tagSettings(t, func(what string, o templates.Options, pack *templates.Pack) {
		for i, f := range tagFrames(pack) {
			large := layout.Mm(0)
			for _, it := range f.Items {
				s, ok := it.Shape.(layout.Text)
				if !ok {
					continue
				}
				large = max(large, layout.Style{Face: s.Face, Size: s.Size}.CapHeight())
				if strings.Contains(s.S, "p.\u00a0") {
					t.Errorf("%s page %d: a page stands on a tag: %q", what, i+1, s.S)
				}
			}
			if large < 8-0.01 || f.W == 70 && large < 20-0.01 {
				t.Errorf("%s page %d of %.0f mm: the largest letters are %.1f mm high", what, i+1, f.W, large)
			}
		}
	})
}

// Labels lie where their stock has them, measured on the page as rendered at 300 dots an
// inch, to 0.2 mm.
func TestLabelsMeasuredOnPaper(t *testing.T) {
	longTest(t)
	t.Parallel()
	const tolerance = 0.2
	for _, s := range append(stock.On("a4", 210, 297), stock.On("letter", 215.9, 279.4)...) {
		o := templates.Options{Paper: layout.A4, Tags: templates.TagOptions{Stocks: []stock.Stock{s}}}
		for _, r := range templates.TestPages(o) {
			if r.Name != s.Name {
				continue
			}
			page := renderedAt(t, painted(t, r.Doc), printDots)[0]
			dark := func(x, y int) bool { g, _, _, _ := page.At(x, y).RGBA(); return g < 0x8000 }
			w, h := s.W, s.H
			if s.Turned {
				w, h = h, w
			}
			// Along the middle of the last label, away from the ruler of the first.
			x0, y0 := s.Left+s.PitchX*stock.Mm(s.Across-1), s.Top+s.PitchY*stock.Mm(s.Down-1)
			px := func(l stock.Mm) int { return int(math.Round(float64(l) * printDots / 25.4)) }
			edge := func(from, to int, at func(int) bool) float64 {
				for i := from; i <= to; i++ {
					if at(i) {
						return (float64(i) + 0.5) * 25.4 / printDots
					}
				}
				return -1
			}
			left := edge(px(x0-1), px(x0+1), func(x int) bool { return dark(x, px(y0+h/2)) })
			right := edge(px(x0+w-1), px(x0+w+1), func(x int) bool { return dark(x, px(y0+h/2)) })
			top := edge(px(y0-1), px(y0+1), func(y int) bool { return dark(px(x0+w/3), y) })
			foot := edge(px(y0+h-1), px(y0+h+1), func(y int) bool { return dark(px(x0+w/3), y) })
			for name, two := range map[string][2]float64{"left": {left, float64(x0)}, "right": {right, float64(x0 + w)}, "top": {top, float64(y0)}, "foot": {foot, float64(y0 + h)}} {
				if math.Abs(two[0]-two[1]) > tolerance {
					t.Errorf("%s: the %s edge is at %s mm, want %s", s.Name, name, strconv.FormatFloat(two[0], 'f', 2, 64), strconv.FormatFloat(two[1], 'f', 2, 64))
				}
			}
		}
	}
}
