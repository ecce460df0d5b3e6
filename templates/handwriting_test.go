package templates_test

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates"
)

// What a hand needs that writes figures 5 mm high at a machine: one takes 4 mm of a line
// (5.1 mm of a character with its gap is the rule of form design for workers' entries, 5
// characters to the inch; the share of the gap is common practice, no source).
const (
	figureHigh layout.Mm = 5
	figureWide layout.Mm = 4
	gloveMore  layout.Mm = 2 // in height, for gloves
)

// figuresIn are the figures that are written into a box that has no cells.
var figuresIn = map[string]int{layout.RoleCount: 3, layout.RoleTally: 2, layout.RoleTime: 4, layout.RoleInitials: 3, layout.RoleDate: 6}

// Every box takes figures 5 mm high below its caption, and as many of them beside each
// other as are written into it; with gloves on there is more height. The decimal sign
// stands in its cell, a comma where the language has it.
func TestBoxesTakeAHand(t *testing.T) {
	t.Parallel()
	kinds := map[string]int{} // of boxes, over all
	for i, x := range []struct {
		lang   string
		gloves bool
	}{{"en", false}, {"en", true}, {"pl", true}, {"de", false}, {"es", true}, {"fr", false}} {
		starter := starterFiles[i%len(starterFiles)]
		seen := handsIn(t, starter, loadIn(t, starter, x.lang), x.gloves)
		for _, role := range []string{layout.RoleValue, layout.RoleInitials, layout.RoleDate, layout.RoleTime, layout.RoleName, layout.RoleCount, layout.RoleWords} {
			if seen[role] == 0 {
				t.Errorf("%s has no %s", starter, role)
			}
		}
		for role, n := range seen {
			kinds[role] += n
		}
	}
	for _, name := range []string{"inch-blower.yaml", "ladders.yaml", "field-diesel-engine.yaml"} {
		j, _ := loadWith("../testdata/good", name, "es")
		for role, n := range handsIn(t, name, j, true) {
			kinds[role] += n
		}
	}
	for _, role := range []string{layout.RoleValue, layout.RoleSign, layout.RoleFraction, layout.RoleTick, layout.RoleInitials, layout.RoleName, layout.RoleDate,
		layout.RoleTime, layout.RoleCount, layout.RoleWords, layout.RoleTally, layout.RoleSketch} {
		if kinds[role] == 0 {
			t.Errorf("no pack has a %s to be looked at", role)
		}
	}
}

// handsIn looks at every box of a pack, and counts them by their kind.
func handsIn(t *testing.T, name string, j *job.Job, gloves bool) map[string]int {
	t.Helper()
	pack, _ := templates.Compose(j, templates.Options{Paper: layout.A4, Pen: layout.Pen{Gloves: gloves}}, pdf.NewFaces(), nil)
	seen := map[string]int{}
	for n, f := range append(append([]layout.Frame{}, pack.Pages.Pages...), pack.Tags.Pages...) {
		high := figureHigh
		if gloves && n < len(pack.Pages.Pages) { // tags are written at a bench
			high += gloveMore
		}
		for k, it := range f.Items {
			if r, ok := it.Shape.(layout.Rect); ok && strings.HasPrefix(it.Role, "box:") && it.Turn == 0 {
				seen[it.Role]++
				handIn(t, name+", "+f.Sheet, f.Items, k, r, high)
			}
		}
	}
	return seen
}

// handIn sees that the box at index k takes its figures.
func handIn(t *testing.T, where string, items []layout.Item, k int, r layout.Rect, high layout.Mm) {
	t.Helper()
	it := items[k]
	left, top, right, bottom := it.Bounds()
	switch it.Role {
	case layout.RoleTick, layout.RoleSketch, layout.RoleTyped:
		return // no figures
	case layout.RoleSign:
		high = figureHigh // one stroke
	}
	free, sign := bottom-top-2*r.Weight, 0
	for _, other := range items[k+1:] {
		l, o, rr, b := other.Bounds()
		if l < left || rr > right || o < top-1 || b > bottom {
			continue
		}
		switch s := other.Shape.(type) {
		case layout.Text:
			if l-left < 2 && o-top < 2 && it.Role != layout.RoleSign { // a caption in its upper corner
				free = min(free, bottom-b-r.Weight)
			}
		case layout.Path:
			if cell := (r.W - 4) / layout.Mm(max(r.Cells, 1)); r.Point > 0 && s.Fill == layout.Black && l-left > 2+cell*layout.Mm(r.Point-1) && rr-left < 2+cell*layout.Mm(r.Point)+0.5 {
				sign = len(s.Ops)
			}
		}
	}
	if free < high {
		t.Errorf("%s: %s of %.1f x %.1f mm leaves %.1f mm in height for figures of %.1f mm", where, it.Role, r.W, r.H, free, high)
	}
	if n := max(r.Cells, figuresIn[it.Role]); n > 0 && r.W/layout.Mm(n) < figureWide {
		t.Errorf("%s: %s of %.1f mm has %.1f mm for each of %d figures", where, it.Role, r.W, r.W/layout.Mm(n), n)
	}
	if r.Point > 0 && (sign == 0 || (sign > 8) != r.Comma) {
		t.Errorf("%s: the decimal sign of a box, comma %v, is drawn with %d strokes", where, r.Comma, sign)
	}
}
