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
		for k, x := range ps[to-1].Block.Partings() {
			if (!first || s.head == 0) && (y + x.Upper.H).Fits(room) {
				ways(ps, span{from: to - 1, head: k + 1}, room, [4]int{n[0] + 1, n[1], n[2], n[3] + 1}, done)
			}
		}
		if y += s.block(ps, to-1).H; !y.Fits(room) && !first {
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
				p.Block.SetPartings([]Parting{{Upper: Space(10, at), Lower: Space(10, p.Block.H-at+3)}})
			}
			ps = append(ps, p)
		}
		score := func(n [4]int) float64 {
			return costKeep*float64(n[1]) + costPage*float64(n[0]) + costMay*float64(n[2]) + costGroup*float64(n[3])
		}
		least := math.Inf(1)
		ways(ps, span{}, room, [4]int{}, func(n [4]int) { least = min(least, score(n)) })
		var got [4]int
		for _, s := range breakPages(flow{ps, func(int) Mm { return room }, func(int) bool { return false }}, func(int, Mm) {}) {
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

// TestFewPagesBeginWithinAGroup: of a sheet on which work stops and starts one page in five
// begins within a step at the most, where that can be, and in the cheapest of the ways in which
// it is so: all ways are looked at.
func TestFewPagesBeginWithinAGroup(t *testing.T) {
	t.Parallel()
	held := 0
	rapid.Check(t, func(t *rapid.T) {
		const room = 50
		var ps []Piece
		group := 1
		for range rapid.IntRange(1, 13).Draw(t, "pieces") {
			if rapid.IntRange(0, 2).Draw(t, "next step") == 0 {
				group++
			}
			ps = append(ps, Piece{Block: Space(10, Mm(rapid.IntRange(5, 50).Draw(t, "height"))), Group: group})
		}
		most := func(pages int) int { return max(pages/oneIn, 1) }
		fewest := map[int]int{} // pages, by how many begin within a group
		for ends := range 1 << (len(ps) - 1) {
			pages, within, y, fits := 1, 0, Mm(0), true
			for i, p := range ps {
				if i > 0 && ends&(1<<(i-1)) != 0 {
					pages, y = pages+1, 0
					if p.Group == ps[i-1].Group {
						within++
					}
				}
				y += p.Block.H
				fits = fits && y <= room
			}
			if n, known := fewest[within]; fits && (!known || pages < n) {
				fewest[within] = pages
			}
		}
		least := math.Inf(1)
		for within, pages := range fewest { // more of them than need be would only hide those
			if within <= most(pages) {
				least = min(least, costPage*float64(pages)+costGroup*float64(within))
			}
		}
		got := breakPages(flow{ps, func(int) Mm { return room }, func(int) bool { return true }}, func(int, Mm) {})
		within := 0
		for _, s := range got[1:] {
			if ps[s.from].Group == ps[s.from-1].Group {
				within++
			}
		}
		if math.IsInf(least, 1) {
			return // some step is so high that it cannot be
		}
		if within > most(len(got)) {
			t.Fatalf("%d of %d pages begin within a group", within, len(got))
		}
		held++
		cost := costPage*float64(len(got)) + costGroup*float64(within)
		if math.Abs(cost-least) > costEmpty*float64(len(got)) {
			t.Fatalf("%d pages, %d of them within a group, cost %.0f; another way costs %.0f", len(got), within, cost, least)
		}
	})
	if held < 3 { // of 20 flows in a short run, about 13
		t.Errorf("only %d flows could be held to it", held)
	}
}
