package jointsheet

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// crowded is a joint whose places lie too close to draw, in a layout and with a count.
const crowded = `pack: 1
equipment: {tag: BL-4, name: Turbine}
job: {number: WO-771, title: Joints, revision: A, issued: 2026-05-11}
parts:
  bolt: {name: Bolt, count: %d}
joints:
  J1: {what: Bolts, parts: [bolt], torque: 70 N·m, plan: rounds, lubricant: paste, source: sheet 4, layout: {%s, seen-from: above, clock: inlet}}
containers:
  C1: {name: Bolts, kind: box, keep: dry}
steps:
  - section: Off
    steps:
      - {step: off, do: Loosen all., loosen: [J1], remove: [bolt], into: C1}
`

// "Loosen backward, number 180 first and number 1 last" stood behind a list of places that ended
// with place 138: numbers are the order on a drawing, on a list they are places. And the places were
// told by whole degrees about the middle: both of a long row lay at 283°.
func TestListedOrdersGoByTheirPlaces(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		count  int
		layout string
		want   string // where they are counted from, by KEYS.md
	}{
		{180, "circle: 2000 mm, first: 0.5°, order: crosswise, against-the-clock: yes", "Place 1 is 0.5° and place 2 is 358.5° clockwise from the top."},
		{180, "circle: 2000 mm, order: crosswise", "Place 1 is 0° and place 2 is 2° clockwise from the top."},
		{100, "split-line: 50 each side, length: 4000 mm, width: 900 mm, order: outward", "Place 1 is at the left end of the upper row;"},
		{100, "split-line: 100 in a row, length: 4000 mm, order: outward", "Place 1 is at the left end; they are counted to the right."},
		{196, "rectangle: 50 by 50, length: 2000 mm, width: 2000 mm, order: crosswise", "Place 1 is at the top left corner; they are counted clockwise."},
		{200, "oval: 200, length: 3000 mm, width: 900 mm, order: crosswise", "Place 1 is at the middle of the top; they are counted clockwise."},
		{4, "places: [[10 mm, 20 mm], [12.5 mm, 20 mm], [4000 mm, 0 mm], [4000 mm, 20 mm]], order: [2, 4, 1, 3]", "place 1 lies 0 mm to the right and 20 mm up, place 2 2.5 mm to the right and 20 mm up."},
		{4, "places: [[0.5 in, 1 in], [0.625 in, 1 in], [160 in, 0 in], [160 in, 1 in]], order: [2, 4, 1, 3]", "place 1 lies 0 in to the right and 1 in up, place 2 0.125 in to the right and 1 in up."},
	} {
		jb, problems := packs.Load(fstest.MapFS{"a.yaml": {Data: fmt.Appendf(nil, crowded, x.count, x.layout)}}, packs.Inputs{Definition: "a.yaml"})
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
		j := jb.Joints[0]
		text := textOf(listed(c, j))
		if !isListed(c, j) {
			t.Errorf("%s: is drawn", x.layout)
		}
		if text := textOf(howDrawn(c, [][]*job.Joint{{j}})); text != "" {
			t.Errorf("%s: nothing is drawn, and %q is said", x.layout, text)
		}
		if !strings.Contains(text, x.want) {
			t.Errorf("%s: %q does not say %q", x.layout, text, x.want)
		}
		last, first := numbersListed(t, text)
		if want := "Loosen backward through this list: place " + last + " first and place " + first + " last"; !strings.Contains(text, want) {
			t.Errorf("%s: %q does not say %q", x.layout, text, want)
		}
		if says, want := plain(Loosening(c, j)), "backward through the list: from place "+last+" to place "+first+","; !strings.Contains(says, want) {
			t.Errorf("%s: %q does not say %q", x.layout, says, want)
		}
	}
}

// numbersListed are the last and the first number of a printed list.
func numbersListed(t *testing.T, text string) (last, first string) {
	t.Helper()
	_, list, ok := strings.Cut(text, "Order by the numbers of the places: ")
	list, _, _ = strings.Cut(list, ".")
	all := strings.Split(list, ", ")
	if !ok || len(all) < 2 {
		t.Fatalf("no list in %q", text)
	}
	return all[len(all)-1], all[0]
}

// An order that is drawn goes by the numbers in its circles, in the step as well.
func TestDrawnOrdersGoByTheirNumbers(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(fstest.MapFS{"a.yaml": {Data: fmt.Appendf(nil, crowded, 12, "circle: 460 mm, order: crosswise")}}, packs.Inputs{Definition: "a.yaml"})
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
	if says := Loosening(c, jb.Joints[0]); isListed(c, jb.Joints[0]) || !strings.Contains(says, "from number 12 down to 1") {
		t.Errorf("a drawn order says %q", says)
	}
	if isListed(c, &job.Joint{}) {
		t.Error("a joint without an order is listed")
	}
}

// Two neighbours are told apart by their angles, and none is printed as 360.
func TestClockAnglesTellNeighboursApart(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		a, b  joint.Degree
		step  float64
		first string
		next  string
	}{
		{0, 45, 45, "0", "45"}, {0.5, 2.5, 2, "0.5", "2.5"}, {12.25, 13.25, 1, "12.25", "13.25"},
		{359.99, 1.99, 2, "0", "2"}, {0, 0.9, 0.9, "0.0", "0.9"}, {0, 360.0 / 7, 360.0 / 7, "0.0", "51.4"},
	} {
		first, next := clockAngles(x.a, x.b, x.step)
		if plain(first) != x.first || plain(next) != x.next {
			t.Errorf("%g and %g, %g apart: %s and %s, want %s and %s", float64(x.a), float64(x.b), x.step, first, next, x.first, x.next)
		}
	}
}
