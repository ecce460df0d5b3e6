package templates

import (
	"maps"
	"slices"
)

// Boxes gives the page of every box that is filled by hand for a dimension, by its key
// (job.Blank).
func (p *Pack) Boxes() map[string]int {
	out := map[string]int{}
	for i, f := range p.Pages.Pages {
		for _, it := range f.Items {
			if it.Key == "" {
				continue
			}
			if out[it.Key] = f.Number; f.Number == 0 {
				out[it.Key] = i + 1
			}
		}
	}
	return out
}

// A Printed is where things stand on paper that was filled by hand: the pages of its boxes by
// their keys, and of what is told by its page.
type Printed struct{ Boxes, Anchors map[string]int }

// Printed is where the things of a pack stand on paper that was printed of it. boxes are the
// pages of boxes that the paper is known to have, nil where they are those of the pack: of one
// with change bars they may be others, for its front sheet tells what has changed. What is no box
// lies as many pages further as the boxes on its page, or else on the next one before it, do; of
// what stands before all boxes that is not known, and it is told as it lies in the pack. further
// says that there are boxes that lie further.
func (p *Pack) Printed(boxes map[string]int) (on *Printed, further bool) {
	set := p.Boxes()
	on = &Printed{Boxes: set, Anchors: maps.Clone(p.Anchors)}
	by := map[int]int{} // how many pages further, by the page of the pack
	for _, key := range slices.Sorted(maps.Keys(set)) {
		if paper, told := boxes[key]; told {
			by[set[key]] = paper - set[key]
			further = further || paper != set[key]
		}
	}
	if !further {
		return on, false
	}
	pages := slices.Sorted(maps.Keys(by))
	moved := func(page int) int {
		i, met := slices.BinarySearch(pages, page)
		switch {
		case met:
			return page + by[page]
		case i == 0:
			return page
		}
		return page + by[pages[i-1]]
	}
	on.Boxes = maps.Clone(set)
	for key, page := range set {
		if paper, told := boxes[key]; told {
			on.Boxes[key] = paper
		} else {
			on.Boxes[key] = moved(page)
		}
	}
	for key, page := range on.Anchors {
		on.Anchors[key] = moved(page)
	}
	return on, true
}
