package layout

// Roles of items, so that tests can find the write-in boxes on a page.
const (
	RoleValue    = "box:value"
	RoleSign     = "box:sign"
	RoleFraction = "box:fraction"
	RoleTick     = "box:tick"
	RoleInitials = "box:initials"
	RoleName     = "box:name"
	RoleDate     = "box:date"
	RoleTime     = "box:time"
	RoleCount    = "box:count"
	RoleWords    = "box:words"
	RoleTally    = "box:tally" // a count of two figures on a small label
	RoleSketch   = "box:sketch"
	RoleCode     = "qr"
	RoleChange   = "change" // a bar in the margin beside what has changed
	RoleCut      = "cut"    // cut marks about a label; they may reach into the unprinted edge
)

// Room between neighbouring write-in boxes, at the least.
const (
	GapX Mm = 5
	GapY Mm = 3
)

// Sizes of write-in boxes. A worker with a pen needs 5.1 mm a character and
// 8.5 mm a line (a rule of form design: 5 characters and 3 lines to the inch);
// the rest is common practice, no source.
const (
	cellW      Mm = 5.5
	cellEnds   Mm = 4 // both ends of a value box together
	boxH       Mm = 9
	gloveExtra Mm = 2
	tallyW     Mm = 12 // two figures
	tickSide   Mm = 6
	signW      Mm = 9
	signH      Mm = 7
	sketchGrid Mm = 5
	sketchMinW Mm = 80
	sketchMinH Mm = 60
)

// boxSize is the least size of the boxes that have one of their own.
func (s *Setter) boxSize(role string) (w, h Mm) {
	h = boxH
	if role == RoleName {
		h = 10
	}
	if s.pen.Gloves {
		h += gloveExtra
	}
	switch role {
	case RoleInitials, RoleTime:
		return 18, h
	case RoleName:
		return 55, h
	case RoleDate:
		return 24, h
	case RoleCount:
		return ValueWidth(3), h
	case RoleTally:
		return tallyW, h
	}
	return 0, h
}

// ValueWidth is the width of a value box for so many characters, the decimal
// point counted as one.
func ValueWidth(chars int) Mm { return cellW*Mm(chars) + cellEnds }

// Number describes a value box: the digits before and after the printed decimal
// point, a box for the sign, the unit printed after it, a caption above it.
type Number struct {
	Before, After int
	Sign          bool
	Unit          string
	Caption       string
	// Copied marks a box that is filled from another sheet: its outline is dashed.
	Copied bool
	// Typed is the value, where the box is filled when it is printed: it stands in one
	// piece with its sign, without cells, in the room that the blank boxes take.
	Typed string
	Ref   Ref
}

// chars is the number of characters the box holds, the point counted.
func (n Number) chars() int {
	if n.After > 0 {
		return n.Before + 1 + n.After
	}
	return n.Before
}

// decimalSign is the point, or the comma, that is printed in a value box.
func (s *Setter) decimalSign() []Op {
	if s.decimal == nil {
		s.decimal = Circle(Point{}, 0.55)
		if s.pen.Comma {
			s.decimal = append(s.decimal, Polygon(Point{0.55, 0}, Point{0.1, 1.5}, Point{-0.35, 1.4}, Point{0, 0.4})...)
		}
	}
	return s.decimal
}

// Value makes a value box. Before must be at least 1; a number without any digit
// makes a misfit.
func (s *Setter) Value(n Number) Block {
	return s.values.keep(n, func() Block { return s.value(n) })
}

func (s *Setter) value(n Number) Block {
	_, h := s.boxSize(RoleValue)
	chars := n.chars()
	r := Rect{W: ValueWidth(chars), H: h, Weight: Outline, Cells: chars}
	if n.After > 0 {
		r.Point, r.Comma = n.Before+1, s.pen.Comma
	}
	if n.Copied {
		r.Dash = 1
	}
	items := []Item{{Role: RoleValue, Ref: n.Ref, Shape: r}, s.dividers(chars, h)}
	if n.After > 0 {
		at := Item{X: cellEnds/2 + cellW*(Mm(n.Before)+0.5), Y: h - 2.2}
		at.Shape = Path{Ops: s.decimalSign(), Fill: Black}
		items = append(items, at)
	}
	digits := Drawn(r.W, h, items...)
	var sign, unit Block
	if n.Typed != "" {
		w := r.W
		if n.Sign {
			w += signW + 1
		}
		digits = s.typed(n.Typed, w, h, r.Dash, n.Ref)
	} else if n.Sign {
		sign = Drawn(signW, signH, Item{Role: RoleSign, Ref: n.Ref, Shape: Rect{W: signW, H: signH, Weight: Outline, Dash: r.Dash}})
		pm := s.Line(0, []Run{T(Caption, "±")}, ParaOpts{Ref: n.Ref})
		sign = Overlay(sign, pm.At(0.7, 0))
	}
	if n.Unit != "" {
		unit = s.Line(0, []Run{T(Body, n.Unit)}, ParaOpts{Ref: n.Ref})
	}
	out := Middle(1.5, Middle(1, sign, digits), unit)
	if n.Before < 1 || n.After < 0 {
		out.AddMisfits(Misfit{Ref: n.Ref, Kind: NoDigits, Text: n.Caption, Detail: "a value box without a digit before the point"})
	}
	return s.captioned(n.Caption, out, n.Ref)
}

// dividers are the light lines between the cells of a value box, all as one path.
func (s *Setter) dividers(chars int, h Mm) Item {
	key := cells{chars, h}
	if it, known := s.divided[key]; known {
		return it
	}
	p := Path{Weight: Inner, Dash: 0.4, Ink: Faint, Ops: make([]Op, 0, 2*max(chars-1, 0))}
	for i := 1; i < chars; i++ {
		x := cellEnds/2 + cellW*Mm(i)
		p.Ops = append(p.Ops, Op{Verb: MoveTo, P: Point{x, 0.6}}, Op{Verb: LineTo, P: Point{x, h - 0.6}})
	}
	s.divided[key] = Item{Shape: p}
	return s.divided[key]
}

// cells are those of a value box: how many, and how high.
type cells struct {
	chars int
	h     Mm
}

// captioned sets a caption above a box. A caption wider than the box widens the
// block.
func (s *Setter) captioned(caption string, b Block, ref Ref) Block {
	if caption == "" {
		return b
	}
	c := s.Line(0, []Run{T(Caption, caption)}, ParaOpts{Ref: ref})
	return Above(0.3, c, b)
}

// Fraction makes the boxes for an inch fraction: whole inches, a numerator over
// a denominator, two figures each, and the unit.
func (s *Setter) Fraction(caption, unit string, copied bool, ref Ref) Block {
	_, h := s.boxSize(RoleFraction)
	outline := Rect{W: ValueWidth(2), H: h, Weight: Outline, Cells: 2}
	if copied {
		outline.Dash = 1
	}
	two := Drawn(ValueWidth(2), h,
		Item{Role: RoleFraction, Ref: ref, Shape: outline},
		s.dividers(2, h))
	slash := Drawn(3.4, h, Item{X: 0.4, Y: h - 0.6, Shape: Line{DX: 2.6, DY: 1.2 - h, Weight: Outline}})
	u := s.Line(0, []Run{T(Body, unit)}, ParaOpts{Ref: ref})
	out := Middle(1.5, two.Pad(0, 0.5, 0, 0), Middle(0, two, slash, two), u)
	return s.captioned(caption, out, ref)
}

// Tick makes a box to tick with a label to its right.
func (s *Setter) Tick(st Style, label string, ref Ref) Block {
	b := Drawn(tickSide, tickSide, Item{Role: RoleTick, Ref: ref, Shape: Rect{W: tickSide, H: tickSide, Weight: Outline}})
	if label == "" {
		return b
	}
	return Middle(1.2, b, s.Line(0, []Run{T(st, label)}, ParaOpts{Ref: ref}))
}

// Box makes one of the boxes with a size of their own (RoleInitials, RoleName,
// RoleDate, RoleTime, RoleCount), its caption small in the upper left corner.
func (s *Setter) Box(role, caption string, ref Ref) Block {
	w, _ := s.boxSize(role)
	return s.WideBox(role, w, 1, caption, ref)
}

// WideBox makes a box of the given width and so many lines of handwriting, but
// never smaller than its role asks for.
func (s *Setter) WideBox(role string, w Mm, lines int, caption string, ref Ref) Block {
	leastW, h := s.boxSize(role)
	return s.CellBox(role, max(w, leastW), h+Mm(max(lines, 1)-1)*8.5, caption, ref)
}

// CellBox is a box that fills a cell of a ruled table: it has no less than the height of
// one line, and shares its sides with the boxes beside it.
func (s *Setter) CellBox(role string, w, h Mm, caption string, ref Ref) Block {
	_, least := s.boxSize(role)
	h = max(h, least)
	return s.boxes.keep(boxKey{role, caption, bits(w), bits(h), ref}, func() Block {
		out := Drawn(w, h, Item{Role: role, Ref: ref, Shape: Rect{W: w, H: h, Weight: Outline}})
		if caption == "" {
			return out
		}
		c := s.Line(w-1.2, []Run{T(Caption, caption)}, ParaOpts{Ref: ref})
		return Overlay(out, c.Pad(0.2, 0, 0, 0.8))
	})
}

// boxKey is all that a box of a table hangs on.
type boxKey struct {
	role, caption string
	w, h          uint64 // their bits
	ref           Ref
}

// Sketch makes a field with a light 5 mm grid, as many whole squares as go into
// w by h. Less than 80 by 60 mm is too small to draw a machine part in and is a
// misfit.
func (s *Setter) Sketch(w, h Mm, caption string, ref Ref) Block {
	nx, ny := int((w+slack)/sketchGrid), int((h+slack)/sketchGrid)
	fw, fh := sketchGrid*Mm(nx), sketchGrid*Mm(ny)
	p := Path{Weight: Inner, Dash: 0.4, Ink: Faint}
	for i := 1; i < nx; i++ {
		x := sketchGrid * Mm(i)
		p.Ops = append(p.Ops, Op{Verb: MoveTo, P: Point{x, 0}}, Op{Verb: LineTo, P: Point{x, fh}})
	}
	for i := 1; i < ny; i++ {
		y := sketchGrid * Mm(i)
		p.Ops = append(p.Ops, Op{Verb: MoveTo, P: Point{0, y}}, Op{Verb: LineTo, P: Point{fw, y}})
	}
	out := Drawn(fw, fh, Item{Role: RoleSketch, Ref: ref, Shape: Rect{W: fw, H: fh, Weight: Outline}}, Item{Shape: p})
	if !sketchMinW.Fits(fw) {
		out.AddMisfits(Misfit{Ref: ref, Kind: TooWide, Text: caption, Over: sketchMinW - fw, Detail: "sketch field"})
	}
	if !sketchMinH.Fits(fh) {
		out.AddMisfits(Misfit{Ref: ref, Kind: TooHigh, Text: caption, Over: sketchMinH - fh, Detail: "sketch field"})
	}
	return s.captioned(caption, out, ref)
}
