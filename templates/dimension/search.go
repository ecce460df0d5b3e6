package dimension

import (
	"matchmark/layout"
	"matchmark/templates/block"
)

// A search looks for the lowest of the ways to set a content with one of its pictures.
type search struct {
	pic        sized
	full, room layout.Mm // the width, and what the picture leaves of it
	least      sized
	lowest     layout.Mm // its height with what speaks against its way
	found      choice
	at         choice // what is tried
	like       *mould // of what size it must be, nil for any
}

// may reports whether what is no lower than a height is worth a try.
func (s *search) may(bound layout.Mm) bool {
	return s.least.empty || max(bound, s.pic.h)+bindOf(s.at.way) < s.lowest-0.5
}

// try takes a block that is lower than the least so far.
func (s *search) try(b sized) {
	if s.like != nil && (b.w != s.like.w || b.h != s.like.h || b.misfits > 0) {
		return
	}
	h := b.h + bindOf(s.at.way)
	h += 1000 * layout.Mm(b.misfits) // what does not fit is told only where nothing fits
	if !b.empty && b.w.Fits(s.full) && (s.least.empty || h < s.lowest-0.5) {
		s.least, s.lowest, s.found = b, h, s.at
	}
}

// only reports whether a width of those that an arrangement tries, by its number, is to be tried:
// of what is set as another one that alone which was taken there.
func (s *search) only(width int) bool {
	s.at.width = width
	return s.like == nil || s.like.width == width
}

// around searches the ways to set a content with a picture for that which takes the least
// height.
func (k content) around(picture layout.Block, full layout.Mm) *search {
	s := newSearch(picture, full)
	ways, many := once(k.tried.ways, true, k.ways), len(k.Job.Dims) > Many
	if many {
		ways = append([]way{ways[0], ways[len(ways)/2]}, ways...)
	}
	for i, w := range ways {
		if i >= 2 && many && !s.least.empty && s.least.misfits == 0 {
			break
		}
		for a := range arrangements {
			if a == inBands && many {
				continue
			}
			k.arrange(s, choice{w, a, 0})
		}
	}
	return s
}

func newSearch(picture layout.Block, full layout.Mm) *search {
	s := &search{pic: done(picture), full: full, room: full, least: sized{empty: true}}
	if !s.pic.empty {
		s.room = full - s.pic.w - block.CellPad
	}
	return s
}

// An arrangement is how the head, the picture, the boxes and the verdict of a content stand to
// each other.
type arrangement int

const (
	besidePicture   arrangement = iota // the head and the boxes below it, beside the picture
	besideTallBoxes                    // the same with limit and verdict beside tall boxes
	verdictOnTop                       // the verdict at the right end of the head
	headAtSide                         // head and verdict beside tall boxes; no picture
	belowPicture                       // the boxes below picture and head
	verdictBelow                       // the verdict below the picture
	belowHead                          // picture and boxes below the head
	tallBelow                          // tall boxes below picture and head, limit and verdict beside them
	inBands                            // the head on the left, the boxes in the rest of the width
	arrangements                       // how many there are
)

// A choice is a way to set a content in one of the arrangements.
type choice struct {
	way
	arrangement
	width int // which of the widths that the arrangement tries for the head or the verdict
}

// arrange tries one way in one arrangement; those that need a picture, or none, only where it
// is so.
func (k content) arrange(s *search, at choice) {
	s.at = at
	w, pic, full, room := at.way, s.pic, s.full, s.room
	switch at.arrangement {
	case besidePicture:
		head := k.head(w, room)
		if !s.may(head.h + headRoom + k.leastRows(w, room)) {
			break
		}
		if rows := k.rows(w, room); s.may(high(headRoom, head, rows)) {
			s.try(beside(block.CellPad, pic, above(headRoom, head, rows)))
		}
	case besideTallBoxes:
		if s.may(k.head(w, room).h + headRoom + k.leastRows(w, room)) {
			if b := k.besideBoxes(w, room); !b.empty {
				s.try(beside(block.CellPad, pic, b))
			}
		}
	case verdictOnTop:
		k.verdictBeside(s, w, pic, full)
	case headAtSide:
		if pic.empty && s.may(k.leastRows(w, full)) {
			s.try(k.headBeside(w, full))
		}
	case inBands:
		if w.cols < 2 && !w.markAbove {
			k.bands(s, w, pic, room)
		}
	default:
		if !pic.empty {
			k.arrangePicture(s, at)
		}
	}
}

// arrangePicture tries one of the arrangements that need a picture.
func (k content) arrangePicture(s *search, at choice) {
	w, pic, full, room := at.way, s.pic, s.full, s.room
	switch at.arrangement {
	case belowPicture:
		head := k.head(w, room)
		both := max(pic.h, head.h)
		if !s.may(both + headRoom + k.leastRows(w, full)) {
			break
		}
		if rows := k.rows(w, full); s.may(high(headRoom, sized{h: both}, rows)) {
			s.try(above(headRoom, beside(block.CellPad, pic, head), rows))
		}
	case verdictBelow:
		s.try(k.underPicture(s, w, pic, room))
	case belowHead:
		if s.may(k.head(w, full).h + headRoom + max(pic.h, k.leastRows(w, room))) {
			s.try(k.underHead(w, pic, full, room))
		}
	case tallBelow:
		head := k.head(w, room)
		if !s.may(max(pic.h, head.h) + headRoom + k.leastRows(w, full)) {
			break
		}
		if b := k.asideOf(w, full); !b.empty {
			s.try(above(headRoom, beside(block.CellPad, pic, head), b))
		}
	}
}
