package job

// An Arrangement is how the boxes of one reading are laid out.
type Arrangement int

const (
	// Single is one box.
	Single Arrangement = iota
	// Row is up to four boxes beside each other.
	Row
	// Clock is boxes round a clock face, the first at the top, the others
	// clockwise as seen from where one stands.
	Clock
	// Grid is rows by columns.
	Grid
	// Log is rows by columns, a row each time that the interval is over.
	Log
)

// Positions are the places at which one dimension is read.
type Positions struct {
	Kind             Arrangement
	RowName, ColName string   // what the rows and columns are, as "station"
	Rows, Cols       []string // for Row and Clock only Cols
}

// Boxes counts the readings.
func (p Positions) Boxes() int {
	return max(len(p.Rows), 1) * max(len(p.Cols), 1)
}

// Names are the positions that a limit may differ by: the columns, or the rows of
// a list that has no columns.
func (p Positions) Names() []string {
	if len(p.Cols) > 0 {
		return p.Cols
	}
	return p.Rows
}

// RowBoxes is how many boxes go beside each other in a row of upright paper; more
// go below each other.
const RowBoxes = 4
