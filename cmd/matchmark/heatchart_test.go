package main

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/heat"
)

// An axis of a chart as one reads it off paper: where on the page two of its printed
// numbers stand.
type readAxis struct{ at0, per float64 }

func (a readAxis) value(paper float64) float64 { return (paper - a.at0) / a.per }

// axes reads the scales of a chart off its numbers and grid lines, as a reader does;
// nothing is taken from the program that drew it.
func axes(t *testing.T, x heatPaper) (along, up readAxis) {
	t.Helper()
	left, right, top, bottom := spanOf(withRole(x.page, x.heat, "field")...)
	var xs, ys, xLines, yLines []float64
	for _, it := range x.page.Items {
		switch s := it.Shape.(type) {
		case layout.Text:
			v, err := strconv.ParseFloat(s.S, 64)
			px, py := float64(it.X+s.Width/2), float64(it.Y)
			switch {
			case err != nil:
			case py > bottom && py < bottom+4 && px > left-0.5 && px < right+3:
				xs = append(xs, v)
			case px < left-0.5 && px > left-10 && py > top-1 && py < bottom+3:
				ys = append(ys, v)
			}
		case layout.Path:
			if it.Role != "" || s.Ink != layout.Faint || len(s.Ops) != 2 {
				continue
			}
			a, b := s.Ops[0].P, s.Ops[1].P
			ax, ay, bx, by := float64(it.X+a.X), float64(it.Y+a.Y), float64(it.X+b.X), float64(it.Y+b.Y)
			switch {
			case near(ax, bx) && near(math.Max(ay, by), bottom) && near(math.Min(ay, by), top):
				xLines = append(xLines, ax)
			case near(ay, by) && near(math.Min(ax, bx), left) && near(math.Max(ax, bx), right):
				yLines = append(yLines, ay)
			}
		}
	}
	return axisOf(t, x.name+", times", xs, xLines), axisOf(t, x.name+", openings", ys, yLines)
}

func near(a, b float64) bool { return math.Abs(a-b) < 1e-6 }

// axisOf pairs numbers with grid lines, and sees that the numbers between the first
// and the last stand where they belong.
func axisOf(t *testing.T, name string, numbers, lines []float64) readAxis {
	t.Helper()
	slices.Sort(numbers)
	slices.Sort(lines)
	if len(lines) > 0 && strings.HasSuffix(name, "openings") {
		slices.Reverse(lines)
	}
	if len(numbers) != len(lines) || len(numbers) < 2 {
		t.Fatalf("%s: %d numbers at %d grid lines %v %v", name, len(numbers), len(lines), numbers, lines)
	}
	n := len(numbers) - 1
	a := readAxis{per: (lines[n] - lines[0]) / (numbers[n] - numbers[0])}
	a.at0 = lines[0] - numbers[0]*a.per
	for i, v := range numbers {
		if math.Abs(a.value(lines[i])-v) > 1e-6*math.Abs(numbers[n]) {
			t.Errorf("%s: the grid line of %g stands at %g", name, v, a.value(lines[i]))
		}
	}
	return a
}

// TestHeatChartShowsWhatWasComputed reads the chart of every hot pull off its printed
// numbers: the opening goes through the points that were computed, passes the opening
// needed at the time when the hub comes free, and the lines of need, grip and ceiling
// stand at their values. The need is interference and clearance as written.
func TestHeatChartShowsWhatWasComputed(t *testing.T) {
	t.Parallel()
	charts, ceilings := 0, 0
	for _, x := range drawnHeats(t, "field") {
		charts++
		p := x.heat.Pull.Plan
		along, up := axes(t, x)
		unit := 1000.0 // micrometres of a millimetre
		if x.heat.Inch {
			unit = 1000 / 25.4
		}
		// A tenth of a millimetre of paper is what an eye can tell.
		paper := func(what string, got, want, per float64) {
			if math.Abs((got-want)*per) > 0.1 {
				t.Errorf("%s: %s is drawn at %.4g, computed %.4g", x.name, what, got, want)
			}
		}
		line := withRole(x.page, x.heat, "opening")[0]
		at := func(s heat.Second) (float64, bool) { // the opening drawn at a time
			m := float64(s) / 60
			for i := 1; i < len(line); i++ {
				a, b := along.value(float64(line[i-1].X)), along.value(float64(line[i].X))
				if a <= m+1e-9 && m <= b+1e-9 && b > a {
					ya, yb := up.value(float64(line[i-1].Y)), up.value(float64(line[i].Y))
					return ya + (yb-ya)*(m-a)/(b-a), true
				}
			}
			return 0, false
		}
		seen := 0
		for _, m := range p.Course {
			if got, ok := at(m.At); ok && m.Opening >= 0 {
				paper(fmt.Sprintf("the opening after %.0f s", float64(m.At)), got, float64(m.Opening)*unit, up.per)
				seen++
			}
		}
		if seen < len(p.Course)/2 {
			t.Errorf("%s: only %d of %d computed points are on the line", x.name, seen, len(p.Course))
		}
		need := float64(x.heat.Fit.Counted+x.heat.Pull.Clearance) * unit
		if got, ok := at(p.Free); !ok {
			t.Errorf("%s: the line does not reach the time when it comes free", x.name)
		} else if x.heat.Pull.Clearance > 0 {
			paper("the opening when it comes free", got, need, up.per)
		}
		level := func(of string) float64 {
			l := withRole(x.page, x.heat, of)
			if len(l) != 1 || l[0][0].Y != l[0][1].Y {
				t.Fatalf("%s: the line of %s is not one level line", x.name, of)
			}
			return up.value(float64(l[0][0].Y))
		}
		if x.heat.Pull.Clearance > 0 {
			paper("the opening needed", level("needed"), need, up.per)
		}
		paper("the interference", level("grips"), float64(x.heat.Fit.Counted)*unit, up.per)
		free := withRole(x.page, x.heat, "free")[0]
		paper("the time when it comes free", along.value(float64(free[0].X)), float64(p.Free)/60, along.per)
		if len(withRole(x.page, x.heat, "ceiling")) > 0 {
			ceilings++
			paper("the ceiling", level("ceiling"), float64(p.Levels)*unit, up.per)
			if level("ceiling") <= need {
				t.Errorf("%s: it comes free above its ceiling", x.name)
			}
		}
	}
	if charts < 4 || ceilings < 2 {
		t.Errorf("only %d charts and %d ceilings were read", charts, ceilings)
	}
}
