package layout

// Item is one thing on a page: a Shape at a place. Shapes are not changed once
// placed, so many items may share one.
type Item struct {
	// X and Y place the shape's own origin: the start of the baseline of a Text,
	// the top left corner of Rect, Modules and Image, the zero point of Path and
	// Line.
	X, Y Mm
	// Turn turns the shape about its origin, in degrees, counter-clockwise as
	// seen on the paper.
	Turn float64
	// Role says what the item is for, such as RoleValue, so that a test can
	// find the write-in boxes of a page. Empty for plain drawing.
	Role string
	// Key names a write-in box among all of its document, so that its page is found;
	// empty for what needs no name.
	Key   string
	Ref   Ref
	Shape Shape
	// Of is what the item is part of: a drawing, a heading, a cell; nil for none.
	Of *Element
}

// Shape is one of Text, Line, Rect, Path, Modules and Image, all as values.
type Shape interface {
	// extent is the box about the shape in its own coordinates.
	extent() box
}

// Text is one line of text in one style. Width is the measured advance.
type Text struct {
	S     string
	Face  Face
	Size  Pt
	Ink   Ink
	Width Mm
}

// Line is a straight stroke from the origin to (DX, DY). Dash is the length of
// strokes and gaps, 0 for an unbroken line.
type Line struct {
	DX, DY Mm
	Weight Mm
	Dash   Mm
	Ink    Ink
}

// Rect is a rectangle, its outline centred on its edge. Weight 0 draws no
// outline, a zero Fill no fill. Cells and Point are set on value boxes: the
// number of characters it has room for and which of them is the printed decimal
// point, counted from 1, 0 for none.
type Rect struct {
	W, H   Mm
	Weight Mm
	Dash   Mm
	Radius Mm
	Ink    Ink
	Fill   Ink
	Cells  int
	Point  int
	Comma  bool // the sign at Point is a comma
}

// Path is an outline of moves, lines and curves. Weight 0 draws no stroke, a
// zero Fill no fill; overlapping parts fill by the even-odd rule, with Wind by the
// non-zero one. Round makes the ends and corners of the stroke round. Alt is text
// that stands in for the drawing when the page is searched or copied, AltWidth
// the room it takes along the line.
type Path struct {
	Ops      []Op
	Weight   Mm
	Dash     Mm
	Ink      Ink
	Fill     Ink
	Round    bool
	Wind     bool
	Alt      string
	AltWidth Mm
	AltSize  Pt
}

// Verb is what one step of a Path does.
type Verb uint8

// The verbs. MoveTo and LineTo use the point P; CurveTo is a cubic curve by the
// control points A and B to P; Close returns to the last MoveTo.
const (
	MoveTo Verb = iota
	LineTo
	CurveTo
	Close
)

// Op is one step of a Path.
type Op struct {
	Verb    Verb
	A, B, P Point
}

// Point is a place in a Path.
type Point struct{ X, Y Mm }

// Image is a picture; Picture makes it. Data holds the file, Kind is "png" or
// "jpg".
type Image struct {
	W, H Mm
	Kind string
	Data []byte
}
