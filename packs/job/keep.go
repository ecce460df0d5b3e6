package job

import (
	"slices"
	"strings"

	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A Container is one numbered thing that parts are kept in, at one place.
type Container struct {
	At      source.Pos
	Mark    string // C2/DE
	Base    string
	Place   Place
	Name    string
	Kind    string
	Keep    string
	Note    string // a remark printed on its tag
	Pockets []string
	In      []*Move // what goes in, in the order of work
	Out     []*Move // what comes out
}

// A Spot is a place on the floor for big parts.
type Spot struct {
	At                   source.Pos
	Mark                 string
	What, Floor, Support string
}

// A TagKind is what a tag is hung or stuck on.
type TagKind int

const (
	// HangTag is tied on with wire and has a stub to tear off.
	HangTag TagKind = iota
	// BoxLabel is stuck on a box.
	BoxLabel
	// BagLabel is stuck on a bag.
	BagLabel
)

// A Tag is one label: for a container, a pocket of one, a big part, or scrap.
type Tag struct {
	At        source.Pos
	Mark      string // C2/DE
	Base      string // C2
	Detail    string // the place, and the pocket if it is one: DE, DE/springs
	PlaceName string // drive end
	Kind      TagKind
	N, Of     int    // n of N
	Key       string // machine, job and mark: the same in every revision
	Content   string // letters that stand for what is in it: others when that changes
	Code      string // text of the QR code: the key and the letters of its content
	Container *Container
	Pocket    string
	Part      *Part           // for a big part
	Scrap     bool            // the bag for parts that do not go back
	Mass      *units.Quantity // of a big part, or of what is in a heavy container
	// MassAtLeast says that the mass of some parts in it is not known.
	MassAtLeast bool
	Name        string
	Keep        string
	Note        string // a remark of its author
	Support     string
	In          []*Move
	Later       []*Move // how old pieces came off that come to the scrap bag when their new ones are on
	Out         []*Move
	Sets        []*Set
	Spare       bool // a blank for what is found on the day: X1
}

// All are the moves of what comes into it, at once and later.
func (t *Tag) All() []*Move { return slices.Concat(t.In, t.Later) }

// Check are the letters at the end of the text of a tag's code: those of its key and of
// its content.
func (t *Tag) Check() string {
	at := strings.LastIndexByte(t.Key, ' ')
	return t.Key[at+1:] + " " + t.Content
}

// First is the first removal that goes into a container.
func (c *Container) First() *Move {
	var first *Move
	for _, m := range c.In {
		if first == nil || m.Step.Index < first.Step.Index {
			first = m
		}
	}
	return first
}

// Pieces counts the pieces of some moves.
func Pieces(ms []*Move) int {
	n := 0
	for _, m := range ms {
		n += m.N
	}
	return n
}

// A Content is what some moves put into a container of one part: the pieces of all
// its places together.
type Content struct {
	N    int
	Name string
}

// Contents lists what some moves carry, each part once, in their order.
func Contents(ms []*Move) []Content {
	var out []Content
next:
	for _, m := range ms {
		for i := range out {
			if out[i].Name == m.Part.Name {
				out[i].N += m.N
				continue next
			}
		}
		out = append(out, Content{m.N, m.Part.Name})
	}
	return out
}

// ScrapMark is the mark of the bag for parts that do not go back. They are kept
// with a tag until the new parts have been compared with them.
const ScrapMark = "SCRAP"

// A Big is a big part with a tag of its own, at one place.
type Big struct {
	At            source.Pos
	Mark, Base    string
	Part          *Part
	Repeats       bool // the author says that there is a tag at each place
	Keep, Support string
}
