package expand

import (
	"fmt"
	"strconv"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/joint"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// Layouts as written: rows of a split line, sides of a rectangle.
var (
	splitRows = phrase.Of(`^(\d{1,3}) (each side|in a row)$`)
	twoSides  = phrase.Of(`^(\d{1,3}) by (\d{1,3})$`)
)

// layout reads where the fasteners sit.
func (r *jointReader) layout() {
	d := r.d.Layout
	if d.At.IsZero() {
		return
	}
	r.j.SeenFrom, r.j.Clock = d.SeenFrom.Value, d.Clock.Value
	out := &joint.Layout{Count: r.j.Count()}
	r.at("layout", d.At)
	before := r.j.Hole
	r.j.Hole = false
	r.shape(d, out)
	r.order(d, out)
	if !r.j.Hole {
		r.j.Layout = out
	}
	r.j.Hole = before
}

// shape reads the one shape of a layout.
func (r *jointReader) shape(d def.Layout, out *joint.Layout) {
	told := 0
	for _, there := range []bool{d.Circle.Written(), d.Rectangle.Written(), d.Oval.Written(), d.SplitLine.Written(), len(d.Places) > 0} {
		if there {
			told++
		}
	}
	if told != 1 {
		r.hole(d.At, "layout-shape", fmt.Sprintf("%s: the layout has %d shapes", r.j.Base, told), "write one, for example circle: … mm, rectangle: 5 by 3, oval: 22, split-line: 14 each side, or places:")
		return
	}
	out.Length, out.Width = r.mm("layout.length", d.Length), r.mm("layout.width", d.Width)
	switch {
	case d.Circle.Written():
		out.Shape, out.Diameter = joint.Circle, r.mm("layout.diameter", d.Circle)
		out.Anticlockwise = d.Against.Value == "yes"
		if q := r.size("layout.first", d.First, "15°"); q != nil {
			deg, err := q.Convert(units.Degree)
			if err != nil {
				r.hole(d.First.At, "not-an-angle", source.Quote(d.First.Value)+" is no angle", "write it like 15°")
				return
			}
			f, _ := deg.Number.Rat().Float64()
			out.First = joint.Degree(f)
		}
	case d.Rectangle.Written():
		out.Shape = joint.Rectangle
		r.at("layout.along", d.Rectangle.At)
		r.at("layout.across", d.Rectangle.At)
		if m := r.counts(d.Rectangle, twoSides, "rectangle: 5 by 3, the corners counted with both sides"); m != nil {
			out.Along, _ = strconv.Atoi(m[1])
			out.Across, _ = strconv.Atoi(m[2])
		}
	case d.Oval.Written():
		out.Shape = joint.Oval
		r.at("layout.count", d.Oval.At)
		out.Count, _ = strconv.Atoi(d.Oval.Value)
	case d.SplitLine.Written():
		out.Shape = joint.SplitLine
		r.at("layout.along", d.SplitLine.At)
		if m := r.counts(d.SplitLine, splitRows, "split-line: 14 each side, or 14 in a row"); m != nil {
			out.Along, _ = strconv.Atoi(m[1])
			out.Rows = 1
			if m[2] == "each side" {
				out.Rows = 2
			}
		}
	default:
		out.Shape = joint.Positions
		r.places(d, out)
	}
}

// counts reads how many fasteners there are along a shape.
func (r *jointReader) counts(t source.Text, form *phrase.Pattern, example string) []string {
	m := form.FindStringSubmatch(t.Value)
	if m == nil {
		r.hole(t.At, "layout-shape", source.Quote(t.Value)+" does not say how many there are on each side", "write: "+example)
	}
	return m
}

// places reads a list of places.
func (r *jointReader) places(d def.Layout, out *joint.Layout) {
	for i, p := range d.Places {
		field := fmt.Sprintf("layout.places[%d]", i)
		if len(p) != 2 {
			r.hole(d.At, "layout-shape", fmt.Sprintf("%s: place %d of the layout has %d numbers", r.j.Base, i+1, len(p)), "write x and y: [… mm, … mm]")
			return
		}
		out.Places = append(out.Places, joint.Point{X: r.mm(field, p[0]), Y: r.mm(field, p[1])})
	}
}

// mm reads a length in millimetres; 0 where none is written.
func (r *jointReader) mm(field string, t source.Text) thread.Mm {
	q := r.size(field, t, "… mm")
	if q == nil {
		return 0
	}
	mm, err := q.Convert(units.Millimetre)
	if err != nil {
		r.hole(t.At, "not-a-length", source.Quote(t.Value)+" is no length", "write it like … mm")
		return 0
	}
	r.j.Inch = r.j.Inch || inches(q.Unit)
	f, _ := mm.Number.Rat().Float64()
	return thread.Mm(f)
}

// orders are the words for how fasteners are gone round.
var orders = map[string]joint.Method{"crosswise": joint.Crosswise, "outward": joint.Outward, "outward from the middle": joint.Outward, "in turn": joint.InTurn}

// order reads how they are gone round: a word, or the numbers of the places.
func (r *jointReader) order(d def.Layout, out *joint.Layout) {
	if len(d.Order) == 0 {
		r.j.Hole = true // the reader of the file has told of it
		return
	}
	r.at("layout.order", d.Order[0].At)
	r.at("layout.method", d.Order[0].At)
	if m, ok := orders[d.Order[0].Value]; ok && len(d.Order) == 1 {
		out.Method = m
		return
	}
	for _, t := range d.Order {
		n, err := strconv.Atoi(strings.TrimSpace(t.Value))
		if err != nil {
			r.hole(t.At, "layout-order", source.Quote(t.Value)+" is no order and no number of a place", "write crosswise, outward or in turn", "or the maker's order by the numbers of the places: [1, 7, 4, 10]")
			return
		}
		out.Order = append(out.Order, n)
	}
}
