package dimension

import (
	"matchmark/layout"
	"matchmark/packs/job"
)

// tried keeps what is the same in several ways to set a content, while they are tried.
// The zero one keeps nothing. Who takes blocks from it must not write to them.
type tried struct {
	tables    map[*job.Dim][]layout.Block
	boxes     map[boxesKey][]layout.Block
	words     map[bool]headWords   // under true
	texts     map[textKey]headText // of heads
	heads     map[headKey]sized
	limits    map[headKey][]layout.Block
	worded    map[limitKey]*limitParts
	ends      map[headKey][]layout.Block // boxes for limits that are worked out
	verdicts  map[verdictKey][]layout.Block
	judged    map[headKey]sized // verdicts in a width
	byHand    map[boxesKey]handSet
	leaves    map[*job.Dim]leafSet
	places    map[placesKey]sized
	packs     map[placesKey]sized
	rows      map[way][]inWidth
	lists     map[rowsKey][]sized
	placed    map[placedKey]*placeGrid
	placeRows map[placedKey][]placeRow // as placed, but for the heads
	ways      map[bool][]way           // all, under true
	pictures  map[bool][]layout.Block
	shapes    map[bool]string
	// packTables are those that lead to a pack of shims, by how many columns they have.
	packTables map[int]packTable
}

type placesKey struct {
	stacked bool
	width   layout.Mm
}

type placedKey struct {
	stacked bool
	how     placesWay
	span    layout.Mm
}

// inWidth is what is set in a width.
type inWidth struct {
	width layout.Mm
	sized
}

type rowsKey struct {
	way
	width layout.Mm
}

type textKey struct {
	limit bool
	mark  layout.Style
}

type boxesKey struct {
	d      *job.Dim
	cols   int
	before bool
	width  layout.Mm
}

type headKey struct {
	is    bool // in which of two ways
	width layout.Mm
}

type limitKey struct {
	d      *job.Dim
	before bool
}

type verdictKey struct {
	d       *job.Dim
	stacked bool
}

// A handSet is what one of several like places has that is worked out by hand, but for
// its verdict.
type handSet struct{ parts, items []layout.Block }

func newTried() tried {
	return tried{
		tables: map[*job.Dim][]layout.Block{}, boxes: map[boxesKey][]layout.Block{}, words: map[bool]headWords{}, texts: map[textKey]headText{}, heads: map[headKey]sized{},
		limits: map[headKey][]layout.Block{}, worded: map[limitKey]*limitParts{}, ends: map[headKey][]layout.Block{}, verdicts: map[verdictKey][]layout.Block{}, judged: map[headKey]sized{},
		byHand: map[boxesKey]handSet{}, leaves: map[*job.Dim]leafSet{}, places: map[placesKey]sized{}, packs: map[placesKey]sized{}, rows: map[way][]inWidth{},
		lists: map[rowsKey][]sized{}, placed: map[placedKey]*placeGrid{}, placeRows: map[placedKey][]placeRow{}, ways: map[bool][]way{}, pictures: map[bool][]layout.Block{}, shapes: map[bool]string{}, packTables: map[int]packTable{},
	}
}

// listOnce is a list to which the caller may append.
func listOnce[K comparable](of map[K][]layout.Block, key K, set func() []layout.Block) []layout.Block {
	b := once(of, key, set)
	return b[:len(b):len(b)]
}

// once is what was set under a key, set now where it was not; a nil map keeps nothing.
func once[K comparable, V any](of map[K]V, key K, set func() V) V {
	v, known := of[key]
	if !known {
		v = set()
		if of != nil {
			of[key] = v
		}
	}
	return v
}
