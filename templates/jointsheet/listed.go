package jointsheet

import (
	"math"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/packs/units"
	"matchmark/templates/block"
	"matchmark/templates/figure"
)

// isListed reports whether the order of a joint is a list of the numbers of its places, which lie
// too close to be drawn.
func isListed(c *block.Composer, j *job.Joint) bool {
	if j.Order == nil || len(j.Order.Order) < 2 {
		return false
	}
	beside, _ := order(c, j, besideFacts(c))
	wide, _ := order(c, j, c.Span)
	return beside.Empty() && wide.Empty()
}

// listed is the order by the numbers of the places, where they lie too close to be
// drawn.
func listed(c *block.Composer, j *job.Joint) layout.Block {
	if j.Order == nil || len(j.Order.Order) < 2 {
		return layout.Block{}
	}
	var all []string
	for _, n := range j.Order.Order {
		all = append(all, strconv.Itoa(n))
	}
	w := c.W.Tightening
	text := w.PlacesListed + " " + w.PlaceList.With(strings.Join(all, ", ")) + " " + placesFrom(c, j)
	if j.SeenFrom != "" {
		text += " " + w.SeenFrom.With(j.SeenFrom)
	}
	if j.Clock != "" {
		text += " " + w.TopIs.With(j.Clock)
	}
	if backward(j) {
		text += " " + w.BackwardListed.With(listEnds(j))
	}
	return c.Para(c.Span, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: j.At})
}

// listEnds are the places that are tightened last and first: a list of places is gone through
// backward by these, not by how many there are.
func listEnds(j *job.Joint) (last, first string) {
	order := j.Order.Order
	return strconv.Itoa(order[len(order)-1]), strconv.Itoa(order[0])
}

// placesFrom says where the places of a list are counted from, and which way: as the shape is
// counted, of places that are given one by one where the first two lie.
func placesFrom(c *block.Composer, j *job.Joint) string {
	w, l := c.W.Tightening, j.Layout
	switch l.Shape {
	case joint.Rectangle:
		return w.FromCorner
	case joint.Oval:
		return w.FromTop
	case joint.SplitLine:
		if l.Rows == 1 {
			return w.FromLeft
		}
		return w.FromUpperRow
	case joint.Positions:
		ps := j.Order.Places
		left, low := ps[0].X, ps[0].Y
		for _, p := range ps {
			left, low = min(left, p.X), min(low, p.Y)
		}
		u := figure.Units{Inch: j.Inch}
		return w.PlacesLie.With(u.Along(float64(ps[0].X-left)), u.Along(float64(ps[0].Y-low)), u.Along(float64(ps[1].X-left)), u.Along(float64(ps[1].Y-low)))
	}
	return w.PlacesFrom.With(clockAngles(j.Order.Clock(1), j.Order.Clock(2), 360/float64(len(j.Order.Places))))
}

// clockAngles are the angles of two neighbours, each a step from the next, with as few decimals as
// tell them to a twentieth of the step, and to 0.05° at the worst.
func clockAngles(a, b joint.Degree, step float64) (string, string) {
	const most = 3
	decimals, near := 0, math.Min(0.05, step/20)
	for ; decimals < most; decimals++ {
		if off(float64(a), decimals) < near && off(float64(b), decimals) < near {
			break
		}
	}
	print := func(v joint.Degree) string {
		scale := math.Pow10(decimals)
		whole := math.Mod(math.Round(float64(v)*scale), 360*scale)
		return units.ForPaper(strconv.FormatFloat(whole/scale, 'f', decimals, 64))
	}
	return print(a), print(b)
}

// off is how far a figure is from what is printed of it.
func off(v float64, decimals int) float64 {
	scale := math.Pow10(decimals)
	return math.Abs(v - math.Round(v*scale)/scale)
}
