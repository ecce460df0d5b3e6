package layout

import "math"

// Ref is the caller's own note of where something came from. layout carries it
// and never looks inside; it must be comparable. Nil says nothing.
type Ref = any

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

// Frame is one page. Sheet is the name of the sheet that it belongs to, Number
// the page number printed on it, 0 when it has none.
type Frame struct {
	Sheet  string
	Number int
	W, H   Mm
	Items  []Item
	// Used of Room, both heights between head and foot, is filled by the flow;
	// Parted tells a page that begins within a Group.
	Used, Room Mm
	Parted     bool
	// Parts are the sheets that the page carries, from the top; Sheet is the first.
	// Empty for a page that the flow did not make.
	Parts []Part
	Links []Link
}

// Link is a rectangle of a page that leads to another one, by its number. Sheet is the
// sheet that it stands on, empty for one of the whole page.
type Link struct {
	Left, Top, Right, Bottom Mm
	Page                     int
	Sheet                    string
}

// Part is what a page carries of one sheet: its items [From, To) and the height they
// use; those before Fresh stand again from the page before. What stands before the first
// and after the last belongs to the page.
type Part struct {
	Sheet           string
	From, Fresh, To int
	Used            Mm
}

// Of gives the page with what it carries of the chosen sheets, and reports whether it
// carries any of them: what the other sheets have on it is left out.
func (f Frame) Of(keep func(sheet string) bool) (Frame, bool) {
	if len(f.Parts) == 0 {
		return f, keep(f.Sheet)
	}
	out := f
	out.Items, out.Parts, out.Links, out.Used = nil, nil, nil, 0
	for _, l := range f.Links {
		if l.Sheet == "" || keep(l.Sheet) {
			out.Links = append(out.Links, l)
		}
	}
	at := 0
	for _, p := range f.Parts {
		out.Items = append(out.Items, f.Items[at:p.From]...)
		at = p.To
		if !keep(p.Sheet) {
			continue
		}
		kept := Part{Sheet: p.Sheet, From: len(out.Items), Used: p.Used}
		kept.Fresh = kept.From + p.Fresh - p.From
		out.Items = append(out.Items, f.Items[p.From:p.To]...)
		kept.To = len(out.Items)
		out.Parts = append(out.Parts, kept)
		out.Used += p.Used
	}
	out.Items = append(out.Items, f.Items[at:]...)
	if len(out.Parts) > 0 {
		out.Sheet = out.Parts[0].Sheet
	}
	return out, len(out.Parts) > 0
}

// Doc is a whole file to be painted. Date is the date printed and stored in the
// file, as YYYY-MM-DD; empty stores none. Lang is a language tag such as "en".
type Doc struct {
	Title, Subject, Author string
	Lang                   string
	Date                   string
	Pages                  []Frame
	Outline                []Entry
	// Attached are files that are kept inside the document.
	Attached []Attachment
	// BothSides asks for printing on both sides, turned over the long edge; else one is
	// asked for.
	BothSides bool
	// Faces are what its text was measured in, and is painted in; nil for the usual type.
	Faces Measurer
}

// An Attachment is a file inside a document: its plain name, what it is in a few words,
// its media type such as text/plain, and its bytes. Origin says that the document was
// made from it.
type Attachment struct {
	Name, What, Type string
	Origin           bool
	Data             []byte
}

// Entry is one line of the outline: it leads to a height on a page, counted from
// 0. Level 0 is outermost; an entry belongs under the last one of a lower level.
// Closed folds what is under it. Sheet is the sheet that it stands on.
type Entry struct {
	Title  string
	Sheet  string
	Level  int
	Page   int
	Y      Mm
	Closed bool
}

// Only gives the document with the pages that keep chooses, in their order and
// unchanged: page numbers printed on them stay those of the whole document.
func (d *Doc) Only(keep func(Frame) bool) *Doc {
	return d.only(func(f Frame) (Frame, bool) { return f, keep(f) }, func(Entry) bool { return true })
}

// OnlySheets gives the document with the sheets that keep chooses, each page with what
// it carries of them; page numbers stay.
func (d *Doc) OnlySheets(keep func(sheet string) bool) *Doc {
	return d.only(func(f Frame) (Frame, bool) { return f.Of(keep) }, func(e Entry) bool { return e.Sheet == "" || keep(e.Sheet) })
}

func (d *Doc) only(page func(Frame) (Frame, bool), line func(Entry) bool) *Doc {
	out := *d
	out.Pages, out.Outline = nil, nil
	now := make([]int, len(d.Pages))
	for i, f := range d.Pages {
		now[i] = -1
		if kept, ok := page(f); ok {
			now[i] = len(out.Pages)
			out.Pages = append(out.Pages, kept)
		}
	}
	for _, e := range d.Outline {
		if e.Page >= 0 && e.Page < len(now) && now[e.Page] >= 0 && line(e) {
			e.Page = now[e.Page]
			out.Outline = append(out.Outline, e)
		}
	}
	return &out
}

// BySheet gives each page once for every sheet that it carries, with what it carries
// of that one.
func (d *Doc) BySheet() []Frame {
	var out []Frame
	for _, f := range d.Pages {
		if len(f.Parts) == 0 {
			out = append(out, f)
		}
		for _, p := range f.Parts {
			one, _ := f.Of(func(sheet string) bool { return sheet == p.Sheet })
			out = append(out, one)
		}
	}
	return out
}

// box is an upright rectangle by two of its corners.
type box struct{ x0, y0, x1, y1 Mm }

// Bounds is the upright box about the item on its page, turn and stroke counted:
// its left, top, right and bottom.
func (i Item) Bounds() (left, top, right, bottom Mm) {
	b := i.Shape.extent()
	if i.Turn == 0 {
		return i.X + b.x0, i.Y + b.y0, i.X + b.x1, i.Y + b.y1
	}
	sin, cos := turnOf(i.Turn)
	left, top = Mm(math.Inf(1)), Mm(math.Inf(1))
	right, bottom = Mm(math.Inf(-1)), Mm(math.Inf(-1))
	for _, c := range [4]Point{{b.x0, b.y0}, {b.x1, b.y0}, {b.x0, b.y1}, {b.x1, b.y1}} {
		x := i.X + c.X*Mm(cos) + c.Y*Mm(sin)
		y := i.Y - c.X*Mm(sin) + c.Y*Mm(cos)
		left, right = min(left, x), max(right, x)
		top, bottom = min(top, y), max(bottom, y)
	}
	return left, top, right, bottom
}

// turnOf gives sine and cosine of an angle in degrees, exact for quarter turns.
func turnOf(deg float64) (sin, cos float64) {
	switch math.Mod(math.Mod(deg, 360)+360, 360) {
	case 0:
		return 0, 1
	case 90:
		return 1, 0
	case 180:
		return 0, -1
	case 270:
		return -1, 0
	}
	return math.Sincos(deg * math.Pi / 180)
}

// The share of the type size that letters may reach above and below the
// baseline: ascent 1935 and descent 432 of 2048 units in the Go fonts.
const (
	riseShare = 1935.0 / 2048
	fallShare = 432.0 / 2048
)

func (t Text) extent() box {
	em := t.Size.Mm()
	return box{0, -em * riseShare, t.Width, em * fallShare}
}

func (l Line) extent() box {
	h := l.Weight / 2
	return box{min(0, l.DX) - h, min(0, l.DY) - h, max(0, l.DX) + h, max(0, l.DY) + h}
}

func (r Rect) extent() box {
	h := r.Weight / 2
	return box{-h, -h, r.W + h, r.H + h}
}

func (i Image) extent() box { return box{0, 0, i.W, i.H} }

// extent of a path is that of its points; a curve stays inside its control
// points, so the box may be a little too big and is never too small.
func (p Path) extent() box {
	b := box{Mm(math.Inf(1)), Mm(math.Inf(1)), Mm(math.Inf(-1)), Mm(math.Inf(-1))}
	add := func(q Point) {
		b.x0, b.x1 = min(b.x0, q.X), max(b.x1, q.X)
		b.y0, b.y1 = min(b.y0, q.Y), max(b.y1, q.Y)
	}
	for _, o := range p.Ops {
		switch o.Verb {
		case CurveTo:
			add(o.A)
			add(o.B)
			add(o.P)
		case MoveTo, LineTo:
			add(o.P)
		}
	}
	if b.x0 > b.x1 {
		return box{}
	}
	h := p.Weight / 2
	return box{b.x0 - h, b.y0 - h, b.x1 + h, b.y1 + h}
}
