package joint

// The order of tightening
//
// Crosswise goes round a closed line: fastener, the one opposite, the two a quarter turn
// on, then the next four, each time as far as can be from those that are done. On a
// circle of n it is
//
//	n a multiple of 4   s, s+n/2, s+n/4, s+3n/4
//	n even              s, s+n/2
//	n odd               each time (n+1)/2 on, which is the nearest to opposite
//
// where s goes over the first quarter (half) so that each is the farthest from those
// before, and of equally far ones the farthest from the last. For 4 to 24 fasteners this
// is the order of ASME PCC-1-2013 Table 4 as quoted (from memory, 12 read), there for
// circles with the gasket inside the bolts.
//
// Outward begins in the middle of the length and works to both ends: metal-to-metal
// joints, split casings, covers. Of fasteners at one distance each is followed by the one
// opposite. Common practice; the maker's order rules, and Layout.Order takes it.
//
// InTurn goes one after the other round the joint, as the bolts of a shrink disc do.

import (
	"math"
	"sort"

	"matchmark/packs/thread"
)

// A Method is how the fasteners of a pattern are gone round.
type Method uint8

// The methods.
const (
	Crosswise Method = iota + 1
	Outward
	InTurn
)

// order finds the order of places that are laid out.
func (l Layout) order(places []Point, rs *reasons) []int {
	switch {
	case l.Method == InTurn:
		return ring(len(places), 1)
	case l.Method == Crosswise && l.Shape == Circle:
		return crosswise(len(places))
	case l.Method == Crosswise && l.Shape != SplitLine:
		return across(places)
	case l.Method == Outward && l.Shape != Circle:
		return outward(places)
	case l.Method == Crosswise:
		rs.add("method", "write outward", "a split line is not tightened crosswise: it begins in the middle")
	case l.Method == Outward:
		rs.add("method", "write crosswise", "a circle has no middle to begin at")
	default:
		rs.add("method", "write crosswise, outward or in turn", "how the fasteners are gone round is not told")
	}
	return nil
}

// checkOrder sees that a maker's order names each place once.
func checkOrder(rs *reasons, order []int, n int) {
	if len(order) != n {
		rs.add("order", "name each place once", "the order has %d places and the joint %d", len(order), n)
		return
	}
	seen := make([]bool, n+1)
	for _, k := range order {
		switch {
		case k < 1 || k > n:
			rs.add("order", "name each place once", "the order names place %d of %d", k, n)
		case seen[k]:
			rs.add("order", "name each place once", "the order names place %d twice", k)
		default:
			seen[k] = true
		}
	}
}

// ring counts round n places in steps, from place 1.
func ring(n, step int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i*step%n + 1
	}
	return out
}

// crosswise is the order on a circle of n.
func crosswise(n int) []int {
	if n%2 == 1 {
		return ring(n, (n+1)/2)
	}
	var out []int
	if n%4 != 0 {
		for _, s := range spread(n / 2) {
			out = append(out, s, s+n/2)
		}
		return out
	}
	for _, s := range spread(n / 4) {
		out = append(out, s, s+n/2, s+n/4, s+3*n/4)
	}
	return out
}

// spread goes over the places of a ring of m, each time to the one that is farthest from
// those before, of equal ones the farthest from the last, then the lowest.
func spread(m int) []int {
	apart := func(a, b int) int {
		d := (a - b + m) % m
		return min(d, m-d)
	}
	out := []int{1}
	for len(out) < m {
		best, bestNear, bestLast := 0, -1, -1
		for s := 1; s <= m; s++ {
			near := m
			for _, done := range out {
				near = min(near, apart(s, done))
			}
			last := apart(s, out[len(out)-1])
			if near > bestNear || near == bestNear && last > bestLast {
				best, bestNear, bestLast = s, near, last
			}
		}
		out = append(out, best)
	}
	return out
}

// across is the order crosswise on any closed line: the places by their clock angle about
// the middle, from place 1 on, then as on a circle.
func across(places []Point) []int {
	clock := make([]int, len(places))
	angle := make([]float64, len(places))
	for i, p := range places {
		clock[i] = i
		angle[i] = math.Mod(math.Atan2(float64(p.X), float64(p.Y))-math.Atan2(float64(places[0].X), float64(places[0].Y))+4*math.Pi+1e-9, 2*math.Pi)
	}
	sort.SliceStable(clock, func(i, j int) bool { return angle[clock[i]] < angle[clock[j]] })
	out := crosswise(len(places))
	for i, n := range out {
		out[i] = clock[n-1] + 1
	}
	return out
}

// sameDistance is how near two distances from the middle are counted as one, mm: half
// of what a tape reads.
const sameDistance = 0.5

// outward is the order from the middle of the longer side to both ends.
func outward(places []Point) []int {
	w, h := Pattern{Places: places}.Size()
	out := func(p Point) thread.Mm { return thread.Mm(math.Abs(float64(p.X))) }
	if h > w {
		out = func(p Point) thread.Mm { return thread.Mm(math.Abs(float64(p.Y))) }
	}
	left := make([]int, len(places))
	for i := range left {
		left[i] = i
	}
	sort.SliceStable(left, func(i, j int) bool { return out(places[left[i]]) < out(places[left[j]]) })
	var order []int
	for len(left) > 0 {
		// Those at the distance of the nearest; of them the lowest number first.
		n := 1
		for n < len(left) && out(places[left[n]])-out(places[left[0]]) < sameDistance {
			n++
		}
		order = append(order, paired(places, left[:n])...)
		left = left[n:]
	}
	return order
}

// paired goes over some places, each followed by the one nearest to opposite.
func paired(places []Point, some []int) []int {
	left := append([]int{}, some...)
	sort.Ints(left)
	var out []int
	for len(left) > 0 {
		first := left[0]
		out, left = append(out, first+1), left[1:]
		best, bestOff := -1, math.Inf(1)
		for i, k := range left {
			off := math.Hypot(float64(places[k].X+places[first].X), float64(places[k].Y+places[first].Y))
			if off < bestOff-1e-9 {
				best, bestOff = i, off
			}
		}
		if best >= 0 {
			out = append(out, left[best]+1)
			left = append(left[:best], left[best+1:]...)
		}
	}
	return out
}
