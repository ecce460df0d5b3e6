package job

import "matchmark/packs/source"

// A Supply is one line of a list of what is fetched before the work.
type Supply struct {
	At    source.Pos
	What  string
	Parts []*Part // for a spare: the parts that it is for; for a tool: the aids that it is
	Count string  // how much, as written or counted
	Size  string
	Note  string
	Must  bool // a part that is always renewed: it is used up
	Steps []*Step
	Only  string // off: in taking apart alone; back: in generated put-back rows alone; empty for both
}

// Supplies are the lists of what is fetched before the work. The instruments are
// those that dimensions are read with, each with its dimensions.
type Supplies struct {
	Tools, Spares, Consumables []*Supply
	Instruments                []*InstrumentUse
}

// InstrumentPieces counts the instruments that are fetched, each piece of those of which
// several are used at once.
func (s *Supplies) InstrumentPieces() int {
	n := 0
	for _, u := range s.Instruments {
		n += max(u.Count, 1)
	}
	return n
}

// ReadBy are the dimensions read with one of several pieces, counted from 1; with 0 those
// of which that is not said.
func (u *InstrumentUse) ReadBy(piece int) []*Dim {
	var out []*Dim
	for _, d := range u.Dims {
		if d.ByPiece == piece {
			out = append(out, d)
		}
	}
	return out
}

// An InstrumentUse is an instrument with the dimensions read with it.
type InstrumentUse struct {
	*Instrument
	Dims []*Dim
}
