package layout

// Mm is a length on paper in millimetres.
type Mm float64

// Pt is a type size in points, 72 to the inch.
type Pt float64

// mmPerPt is exact: an inch is 25.4 mm and has 72 points.
const mmPerPt = 25.4 / 72

// slack is the difference below which two lengths count as equal. It is far
// above the rounding of a sum of widths and far below what a pen or a printer
// can show.
const slack Mm = 0.001

// Mm gives the type size as a length on paper.
func (p Pt) Mm() Mm { return Mm(float64(p) * mmPerPt) }

// Pt gives the length in points.
func (m Mm) Pt() Pt { return Pt(float64(m) / mmPerPt) }

// Fits tells whether a length in mm goes into the room, 0.001 mm of slack allowed. Whoever
// chooses a block for a room asks this: by a rule of its own it may choose one that is told as too
// wide when it is placed.
func (m Mm) Fits(room Mm) bool { return m <= room+slack }
