package main

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
	"matchmark/templates"
)

// A point is one thing that a published procedure asks of paper and that is awkward
// to say: so many boxes of a role for a dimension or a step, and words that stand
// there. The sources of the figures are named at the head of each definition.
type point struct {
	no    int    // a running number of the kind of thing, as in the list of limits
	name  string // what it is
	at    string // a mark (D7) or a step (turn)
	sheet string // traveler where it is empty
	role  string // of the boxes, "" for words only
	cells int    // 0 takes all sizes
	count int
	words []string
}

// linesOf is from which line of the file to which a dimension, a hold or a step
// stands, with all that is written in it.
func linesOf(t *testing.T, jb *job.Job, name string) (from, to int) {
	t.Helper()
	from, to = -1, math.MaxInt
	var starts []int
	see := func(at source.Pos, key string) {
		starts = append(starts, at.Line)
		if key == name {
			from = at.Line
		}
	}
	for _, d := range jb.Dims {
		see(d.At, d.Base)
	}
	for _, h := range jb.Holds {
		see(h.At, h.Mark)
	}
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			if st.Undoes == nil {
				see(st.At, st.Key)
			}
		}
	}
	if from < 0 {
		t.Fatalf("no dimension, hold or step %s", name)
	}
	for _, l := range starts {
		if l > from {
			to = min(to, l)
		}
	}
	return from, to
}

// itemsOf lists what is printed on a sheet for some lines of the file, without the boxes
// that say which readings were not taken.
func itemsOf(pack *templates.Pack, sheet string, from, to int) []layout.Item {
	var out []layout.Item
	for _, f := range pack.Pages.BySheet() {
		for _, it := range f.Items {
			at, ok := it.Ref.(source.Pos)
			if ok && f.Sheet == sheet && at.Line >= from && at.Line < to && !ofNotTaken(f, it) {
				out = append(out, it)
			}
		}
	}
	return out
}

// missing tells what of a point is not among what is printed for it, "" if all is.
func (p *point) missing(items []layout.Item) string {
	boxes, text := 0, ""
	for _, it := range items {
		switch s := it.Shape.(type) {
		case layout.Rect:
			if it.Role == p.role && (p.cells == 0 || s.Cells == p.cells) {
				boxes++
			}
		case layout.Text:
			text += strings.ReplaceAll(s.S, "\u00a0", " ") + " "
		}
	}
	if p.role != "" && boxes != p.count {
		return fmt.Sprintf("%d boxes %s, want %d", boxes, p.role, p.count)
	}
	for _, w := range p.words {
		if !strings.Contains(text, w) {
			return fmt.Sprintf("%q is not in %q", w, text)
		}
	}
	return ""
}

// lookedFor are the items among which a point must be.
func (p *point) lookedFor(t *testing.T, jb *job.Job, pack *templates.Pack) []layout.Item {
	t.Helper()
	sheet := p.sheet
	if sheet == "" {
		sheet = "traveler"
	}
	from, to := linesOf(t, jb, p.at)
	return itemsOf(pack, sheet, from, to)
}

// TestFieldProceduresOnPaper holds every awkward point of six published procedures
// against the page, on both papers. The box counts are counted by hand from the
// procedures: places times positions, one a side.
func TestFieldProceduresOnPaper(t *testing.T) {
	t.Parallel()
	for file, points := range fieldPoints {
		t.Run(file, func(t *testing.T) {
			t.Parallel()
			for _, paper := range papers {
				jb, pack := goodPack(t, file, paper, false)
				for _, p := range points {
					if lack := p.missing(p.lookedFor(t, jb, pack)); lack != "" {
						t.Errorf("%s: %d, %s (%s): %s", paper.Name, p.no, p.name, p.at, lack)
					}
				}
			}
		})
	}
}

// TestFieldPointsAreSeen: each point fails when one of its boxes is gone, or a word.
func TestFieldPointsAreSeen(t *testing.T) {
	t.Parallel()
	for file, points := range fieldPoints {
		jb, pack := goodPack(t, file, layout.A4, false)
		for _, p := range points {
			items := p.lookedFor(t, jb, pack)
			box := slices.IndexFunc(items, func(it layout.Item) bool {
				r, ok := it.Shape.(layout.Rect)
				return ok && it.Role == p.role && (p.cells == 0 || r.Cells == p.cells)
			})
			if p.role != "" && box >= 0 && p.missing(slices.Delete(slices.Clone(items), box, box+1)) == "" {
				t.Errorf("%s: %s (%s): a box less is not seen", file, p.name, p.at)
			}
			for _, w := range p.words {
				first, _, _ := strings.Cut(w, " ")
				bare := slices.DeleteFunc(slices.Clone(items), func(it layout.Item) bool {
					s, ok := it.Shape.(layout.Text)
					return ok && strings.Contains(strings.ReplaceAll(s.S, "\u00a0", " "), first)
				})
				if p.missing(bare) == "" {
					t.Errorf("%s: %s (%s): %q gone is not seen", file, p.name, p.at, w)
				}
			}
		}
	}
}

// limitEnds works out the ends of the first test of a limit from readings taken by
// mark.
func limitEnds(t *testing.T, l *reading.Limit, taken map[string]string) (low, high string) {
	t.Helper()
	if l == nil {
		t.Fatal("no limit")
	}
	q := func(text string) *units.Quantity {
		q, err := units.ParseQuantity(text)
		if err != nil {
			t.Fatal(err)
		}
		return &q
	}
	env := reading.Env{Readings: func(m reading.Mark) []*units.Quantity {
		if text, ok := taken[string(m)]; ok {
			return []*units.Quantity{q(text)}
		}
		return nil
	}}
	f := l.Judge([]*units.Quantity{q(taken["this"])}, env).Findings[0]
	if f.Why != "" {
		t.Fatalf("%s: %s", l.Text(), f.Why)
	}
	if f.Low != nil {
		low = f.Low.Text()
	}
	if f.High != nil {
		high = f.High.Text()
	}
	return low, high
}

// TestFieldLimitsWorkedOut: limits that are worked out from readings give the
// figures that the sources' rules give by hand.
func TestFieldLimitsWorkedOut(t *testing.T) {
	t.Parallel()
	for _, c := range fieldSums {
		jb, _ := goodPack(t, c.file, layout.A4, false)
		i := slices.IndexFunc(jb.Dims, func(d *job.Dim) bool { return d.Mark == c.mark })
		if i < 0 {
			t.Errorf("%s has no %s", c.file, c.mark)
			continue
		}
		d := jb.Dims[i]
		limit := d.Left
		if limit == nil {
			limit = d.Found
		}
		if c.old {
			limit = d.Reuse
		}
		if low, high := limitEnds(t, limit, c.taken); low != c.low || high != c.high {
			t.Errorf("%s %s, %s: from %q to %q, want %q to %q", c.file, c.mark, c.source, low, high, c.low, c.high)
		}
	}
}
