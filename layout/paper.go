package layout

// Paper is a page size with its margins, upright.
type Paper struct {
	Name                     string
	W, H                     Mm
	Left, Right, Top, Bottom Mm
}

// The papers of the pack. The wide left margin is for the binder: two holes at
// 12 mm from the edge (ISO 838) stay clear; 4.5 mm above and below is more than the sixth of an
// inch that office printers leave white (common practice, no source). Boxes have the same size on both.
var (
	A4     = Paper{Name: "a4", W: 210, H: 297, Left: 20, Right: 10, Top: 4.5, Bottom: 4.5}
	Letter = Paper{Name: "letter", W: 215.9, H: 279.4, Left: 20, Right: 10, Top: 4.5, Bottom: 4.5}
)

// Inner is the room within the margins.
func (p Paper) Inner() (w, h Mm) { return p.W - p.Left - p.Right, p.H - p.Top - p.Bottom }

// Turned is the paper laid across: its top is what was the left side.
func (p Paper) Turned() Paper {
	return Paper{Name: p.Name, W: p.H, H: p.W, Top: p.Left, Bottom: p.Right, Left: p.Bottom, Right: p.Top}
}
