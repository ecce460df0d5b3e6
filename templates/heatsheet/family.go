package heatsheet

import (
	"cmp"
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/figure"
)

// Parts that are put on hot in the same way, as the bearings of one shaft, share one order
// of work: each has its picture, its figures and its boxes, the acts are printed once with
// a tick for each of them, and above them how hot they are made, where that is the same for all.

// familyTicks is how many ticks an act has at the most.
const familyTicks = 6

// families joins neighbouring heats whose order of work, neighbours to watch and hazards are the
// same; what is drawn off hot stands for itself.
func families(c *block.Composer, groups [][]*job.Heat) [][][]*job.Heat {
	var out [][][]*job.Heat
	last, ticks := "", 0
	for _, hs := range groups {
		says := sharedOrder(c, hs[0])
		n := len(out)
		if says != "" && says == last && ticks+len(hs) <= familyTicks {
			out[n-1] = append(out[n-1], hs)
			ticks += len(hs)
			continue
		}
		out, last, ticks = append(out, [][]*job.Heat{hs}), says, len(hs)
	}
	return out
}

// sharedOrder is all that is said in the order of work of a heat; empty where it is not shared.
func sharedOrder(c *block.Composer, h *job.Heat) string {
	if h.Pull != nil || h.PutOn == nil {
		return ""
	}
	s := sheetOf(c.Now(), h)
	var says []string
	says = append(append(says, s.onOrder()...), s.watchActs()...)
	for _, p := range s.hazards(h.PutOnAt) {
		says = append(says, wordsOf([]layout.Piece{p})...)
	}
	return strings.Join(says, "|")
}

// asPutOn are heats in the order in which the steps put them on, those of one step as they came.
func asPutOn(jb *job.Job, all []*job.Heat) []*job.Heat {
	place := placesOf(jb)
	return slices.SortedStableFunc(slices.Values(all), func(a, b *job.Heat) int {
		return cmp.Compare(place[a.PutOnAt], place[b.PutOnAt])
	})
}

// familyPieces are the order of work that the heats of a family share, and their boxes.
func familyPieces(c *block.Composer, family [][]*job.Heat) []layout.Piece {
	all := asPutOn(c.Job, slices.Concat(family...))
	s := sheet{Composer: c, h: all[0], u: figure.UnitsOf(all[0]), alike: all, family: true}
	out := []layout.Piece{s.titled(c.W.Heat.OrderTitle + c.W.Common.Colon + marksOf(all))}
	if sharedFrame(c, family) != "" {
		out = append(out, layout.Piece{Block: s.onFrame(), Gap: 1.4, KeepNext: true})
	}
	return append(out, s.orderPieces()...)
}

// sharedFrame is what the frames of all heats of a family say; empty where they differ, where there
// is one heat, and where a frame points to the table of its own heat.
func sharedFrame(c *block.Composer, family [][]*job.Heat) string {
	var says []string
	for _, hs := range family {
		if len(family) > 1 && len(hs[0].PutOn.Ladder) == 0 {
			says = append(says, strings.Join(wordsOf([]layout.Piece{{Block: sheetOf(c, hs[0]).onFrame()}}), " "))
		}
	}
	if len(says) < len(family) || len(slices.Compact(says)) != 1 {
		return ""
	}
	return says[0]
}
