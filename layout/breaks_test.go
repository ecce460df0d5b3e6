package layout

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"
)

// ways walks through all ways to end pages from a start on: it calls done with the pages, how
// often one ends where it must not, where it had better not, and within a group or a block.
func ways(ps []Piece, s span, room Mm, n [4]int, done func([4]int)) {
	if s.from == len(ps) {
		done(n)
		return
	}
	y := heightOf(repeated(ps, s.from, s.head))
	for to := s.from + 1; to <= len(ps); to++ {
		first := to == s.from+1
		if !first {
			if ps[to-1].NewPage {
				return
			}
			y += ps[to-1].Gap
		}
		for k, x := range ps[to-1].Block.Partings {
			if (!first || s.head == 0) && (y + x.Upper.H).fits(room) {
				ways(ps, span{from: to - 1, head: k + 1}, room, [4]int{n[0] + 1, n[1], n[2], n[3] + 1}, done)
			}
		}
		if y += s.block(ps, to-1).H; !y.fits(room) && !first {
			return
		}
		m := [4]int{n[0] + 1, n[1], n[2], n[3]}
		switch {
		case to == len(ps) || ps[to].NewPage:
		case ps[to-1].KeepNext && ps[to-1].MayPart:
			m[2]++
		case ps[to-1].KeepNext:
			m[1]++
		case ps[to].Group != 0 && ps[to].Group == ps[to-1].Group:
			m[3]++
		}
		ways(ps, span{from: to}, room, m, done)
	}
}

// Of all ways to break a small sheet the one that is taken parts no chain that need not be
// parted, has the fewest pages of those, and of these the fewest that begin within a step.
func TestPagesEndAtTheBestPlaces(t *testing.T) {
	t.Parallel()
	const room Mm = 100
	rapid.Check(t, func(t *rapid.T) {
		var ps []Piece
		group := 1
		for i := range rapid.IntRange(1, 9).Draw(t, "pieces") {
			p := named(fmt.Sprint(i), Mm(rapid.IntRange(5, 70).Draw(t, "height")))
			p.Gap = Mm(rapid.IntRange(0, 3).Draw(t, "gap"))
			p.KeepNext = rapid.IntRange(0, 3).Draw(t, "keep") == 0
			p.MayPart = p.KeepNext && rapid.Bool().Draw(t, "may")
			p.NewPage = rapid.IntRange(0, 9).Draw(t, "new page") == 0
			if rapid.Bool().Draw(t, "next step") {
				group++
			}
			p.Group = group
			if high := int(p.Block.H); rapid.IntRange(0, 3).Draw(t, "parting") == 0 {
				at := Mm(rapid.IntRange(1, high).Draw(t, "upper"))
				p.Block.Partings = []Parting{{Upper: Space(10, at), Lower: Space(10, p.Block.H-at+3)}}
			}
			ps = append(ps, p)
		}
		score := func(n [4]int) float64 {
			return costKeep*float64(n[1]) + costPage*float64(n[0]) + costMay*float64(n[2]) + costGroup*float64(n[3])
		}
		least := math.Inf(1)
		ways(ps, span{}, room, [4]int{}, func(n [4]int) { least = min(least, score(n)) })
		var got [4]int
		for _, s := range breakPages(ps, func(int) Mm { return room }, func(int, Mm) {}) {
			got[0]++
			next := s.to
			switch {
			case s.tail > 0:
				got[3]++
			case next == len(ps) || ps[next].NewPage:
			case ps[next-1].KeepNext && ps[next-1].MayPart:
				got[2]++
			case ps[next-1].KeepNext:
				got[1]++
			case ps[next].Group == ps[next-1].Group:
				got[3]++
			}
		}
		// A block costs a little more than a group, and white paper a little.
		if over := score(got) - least; over > costGroup-1 {
			t.Fatalf("%v pages, parted chains, where they may, groups: %.0f above the least", got, over)
		}
	})
}
