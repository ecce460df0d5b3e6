package job

import (
	"matchmark/packs/align"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// An Alignment is one coupling that is aligned with dials.
type Alignment struct {
	At                        source.Pos
	Mark                      string // A1
	What, Movable, Stationary string
	Setup                     align.Setup
	Growth                    *align.Growth // nil if it is not told
	Limits                    *align.Limits
	SoftFoot                  *units.Quantity // how far a foot may spring up, nil if not said
	SoftFootSource            string
	Read                      map[align.Dial]*Dim // where the dials are written down, as found and as left
	Tries                     int
	Note                      string
	Steps                     []*Step // that name it
	Machines                  []*Part // the two, as far as its words name a part of the list
	Wrote                     Wrote
	Hole                      bool // something of it cannot be read, which has been told

	// Worked out; without a ladder it is not.
	Ladder  []align.Rung
	Example *AlignExample
	Row     *align.LimitRow // of the limits: the one of its speed
}

// An AlignExample is the ladder of an alignment done for readings that are made up,
// to show the signs.
type AlignExample struct {
	Readings map[align.Reading]units.Quantity
	Result   align.Result
}
