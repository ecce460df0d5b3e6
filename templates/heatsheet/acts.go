package heatsheet

import (
	"fmt"
	"slices"

	"matchmark/layout"
)

// numberedTicks are numbered acts, each with a box to tick; in two columns where that is
// lower, which a page may part between two acts.
func (s sheet) numberedTicks(acts []string) []layout.Piece {
	var out []layout.Piece
	heads := s.tickHeads()
	rows := ruled(s.tickRows(acts, 0, s.Span), s.Span)
	if both := s.twoColumns(acts, 0, heads); !both.Empty() && both.H < layout.Above(0, rows...).H {
		var ways []layout.Parting
		for k := leastParted; k <= len(acts)-leastParted; k++ {
			ways = append(ways, layout.Parting{Upper: s.twoColumns(acts[:k], 0, heads), Lower: s.twoColumns(acts[k:], k, heads)})
		}
		both.SetPartings(ways)
		return []layout.Piece{{Block: both, Gap: 1}}
	}
	if !heads.Empty() {
		out = append(out, layout.Piece{Block: heads, Gap: 1, KeepNext: true})
	}
	for i, row := range rows {
		piece := layout.Piece{Block: row, KeepNext: i == 0 || i == len(acts)-2}
		if !heads.Empty() {
			piece.Under = []*layout.Block{&heads} // the names of the ticks, again on the next page
		}
		out = append(out, piece)
	}
	return out
}

// twoColumns are acts, numbered on from some before them, in two columns below the heads of
// their ticks, cut where the higher of the two is lowest; empty where the acts would have too
// little room.
func (s sheet) twoColumns(acts []string, before int, heads layout.Block) layout.Block {
	half := (s.Span - layout.GapX) / 2
	if half-s.ticksWide()-actNumber < leastAct {
		return layout.Block{}
	}
	best, all := layout.Block{}, s.tickRows(acts, before, half)
	for cut := len(all); cut > 0; cut-- {
		left := layout.Above(0, append([]layout.Block{heads}, ruled(all[:cut], half)...)...)
		right := layout.Above(0, append([]layout.Block{heads}, ruled(all[cut:], half)...)...)
		if b := layout.Beside(layout.GapX, left.Fill(half, left.H, 0, 0), right); best.Empty() || b.H < best.H {
			best = b
		}
	}
	return best
}

// ruled has a rule between acts, whose lines stand as near to each other as the acts do.
func ruled(rows []layout.Block, width layout.Mm) []layout.Block {
	out := slices.Clone(rows)
	for i := 1; i < len(out); i++ {
		out[i] = layout.Overlay(out[i], layout.Drawn(width, 0, layout.Item{Shape: layout.Line{DX: width, Weight: layout.Inner}}))
	}
	return out
}

// tickRows are acts, numbered on from some before them, in a width, as far apart as the ticks need.
func (s sheet) tickRows(acts []string, before int, width layout.Mm) []layout.Block {
	var out []layout.Block
	for i, a := range acts {
		n := s.Line(actNumber, []layout.Run{layout.T(layout.Strong, fmt.Sprintf("%d", before+i+1))}, layout.ParaOpts{})
		text := s.Para(width-actNumber-s.ticksWide(), []layout.Run{layout.T(layout.Body, a)}, layout.ParaOpts{Ref: s.h.At})
		row := layout.Middle(0, s.ticksOf().Fill(s.ticksWide(), 6, 0, 0.5), n, text)
		out = append(out, row.Fill(row.W, max(row.H+1.4, actRow), 0, 0.5))
	}
	return out
}

// Measures of a row of an act: its number, the least width of its text, and how far apart
// the ticks of neighbouring rows are.
const (
	actNumber layout.Mm = 7
	leastAct  layout.Mm = 50
	actRow    layout.Mm = 8
	// leastParted is how many acts of two columns stand on a page at the least.
	leastParted = 3
)
