package dimension

import (
	"matchmark/layout"
	"matchmark/templates/block"
)

// Like places in one frame may go on to the next page between two places, below their head
// once more. A low frame stays whole, and of many places only a few ends are tried.
const (
	wholeFrame   layout.Mm = 45
	mostPartings int       = 3
)

// partings are the ways to set the frame of like places on two pages.
func (k content) partings(kind Kind) []layout.Parting {
	n := len(k.entries)
	if n == 1 && byHand(k.d(), k.entries[0].sides) {
		return k.handPartings(kind)
	}
	if n < 2 || k.whole == nil || k.whole.H < wholeFrame {
		return nil
	}
	var out []layout.Parting
	for i := range min(n-1, mostPartings) {
		at := i + 1
		if n-1 > mostPartings {
			at = (i + 1) * n / (mostPartings + 1)
		}
		upper, lower := k, k
		upper.entries, upper.whole, upper.reason = k.entries[:at], nil, reason{}
		lower.entries, lower.whole = k.entries[at:], nil
		first, second := upper.contents(kind), lower.contents(kind)
		if len(first) != 1 || len(second) != 1 || len(first[0].Misfits())+len(second[0].Misfits()) > 0 {
			continue
		}
		out = append(out, layout.Parting{Upper: bordered(first[0], first[0].H), Lower: bordered(second[0], second[0].H)})
	}
	return out
}

// handPartings are the ways to set the frame of what is worked out by hand on two pages: the
// sums for its limits end the one, and all its own boxes begin the next.
func (k content) handPartings(kind Kind) []layout.Parting {
	width := k.Span - 2*block.CellPad
	e := k.entries[0]
	sums, _ := limitLadders(k.Composer, e.d, *workOf(e.sides), true, width)
	if len(sums) == 0 || e.d.Shims == nil {
		return nil
	}
	k.before = true
	parts := k.handPieces(width)
	set := func(head layout.Block, of []layout.Block) layout.Block {
		b := padded(k.Composer, layout.Above(layout.GapY, append([]layout.Block{head}, of...)...))
		return bordered(b, b.H)
	}
	upper := set(k.handHead(width), parts[:len(sums)])
	lower := Anchored(set(k.shortHead(width), parts[len(sums):]), e.d, sideOf(kind))
	if len(upper.Misfits())+len(lower.Misfits()) > 0 {
		return nil
	}
	return []layout.Parting{{Upper: upper, Lower: lower}}
}
