package filled

import (
	"time"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// An Entry is one value as it came back for one box.
type Entry struct {
	Blank    job.Blank
	At       source.Pos // of the cell of the value
	Text     string     // as typed
	Quantity *units.Quantity
	Answer   string // of a box to tick, and the words of a line or for a sketch
	NotTaken string // why no reading was taken
	Looked   string // who looked at a doubtful one again
}

// same reports whether two entries say the same.
func (e Entry) same(o Entry) bool {
	if e.Quantity != nil && o.Quantity != nil {
		c, err := e.Quantity.Cmp(*o.Quantity)
		return err == nil && c == 0
	}
	return e.Answer == o.Answer && e.NotTaken == o.NotTaken && (e.Quantity == nil) == (o.Quantity == nil)
}

// A Lost is a value for which the job has no box: nothing typed is dropped.
type Lost struct {
	At                         source.Pos
	Mark, Position, Side, Text string
}

// A Day is what was written for something found on the day: X51 to X54.
type Day struct {
	At         source.Pos
	Mark, Side string
	Text       string
}

// A File is one file of readings as read.
type File struct {
	Name                string
	Job, Revision, Pack string
	Machine, Serial     string    // the tag and the serial number of the machine; empty in older files
	Other               bool      // it is of another machine than the job
	By                  string    // who typed it from the paper
	On                  time.Time // the day, zero if it is not told
	OnAt                source.Pos
	Hours               *units.Quantity
	Entries             []Entry
	Refused             []job.Blank // whose value stands in the file and was not taken
	Lost                []Lost
	Day                 []Day
	Pages               map[string]int  // the pages of the boxes on the paper, by their keys, where its rows tell them
	Told                source.Problems // what is wrong with it, as Read gave it
}
