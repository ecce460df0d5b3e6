package layout

import "strings"

// Readable gives a frame as it is read, for comparing pages by eye: one line for
// what stands on one line of a block, in the order in which the page was set, which
// is the order in which it is read. It has no places and no sizes; Dump has them.
//
// Texts follow each other as printed, " | " where a wider gap parts them. Boxes show
// what is printed in them and the room for the pen: [___.__] for a value, [±] for
// its sign, [ ] to tick, [hours ____] with its caption, [____] without; of a box
// that has no caption and is not for words the role is told: [__initials__]. A
// caption close above a box stands before it, with a colon. A dashed box, to be
// filled from another sheet, has = in front. In round brackets stands what is no
// text: codes with their content, pictures, and the roles of drawings that have one.
// Rules, frames and drawings without a role are left out.
func Readable(f Frame) string {
	var r reader
	for i := 0; i < len(f.Items); {
		p, next := pieceAt(f.Items, i)
		if p.say != "" {
			r.add(p)
		}
		i = next
	}
	if r.onLine > 0 {
		r.b.WriteByte('\n')
	}
	return r.b.String()
}

// What a piece of a line is: it decides what may follow it on the line.
const (
	saidText = iota
	saidBox
	saidMark // a code, a picture, a drawing
)

// piece is what one item says, and its room in the direction in which it is read.
type piece struct {
	say                      string
	kind                     int
	turn                     float64
	left, top, right, bottom Mm
	em                       Mm // type size of a text
}

// reader joins pieces to lines.
type reader struct {
	b           strings.Builder
	first, last piece // of the line
	onLine      int   // pieces on the line
	stacked     bool  // the line goes on with the text of the line above
}

func (r *reader) add(p piece) {
	switch {
	case r.onLine == 0:
		r.begin(p)
	case p.kind == saidMark && p.say == r.last.say:
		return // the next stroke of the same drawing
	case r.heads(p):
		r.b.WriteString(": ")
	case r.follows(p):
		r.b.WriteString(r.gap(p))
	default:
		r.b.WriteByte('\n')
		r.begin(p)
	}
	r.b.WriteString(p.say)
	r.last = p
	r.onLine++
}

// begin starts a line, and tells whether it is the next one of a text.
func (r *reader) begin(p piece) {
	r.stacked = r.onLine > 0 && r.first.kind == saidText && p.kind == saidText && under(r.first, p, 0.5)
	r.first, r.onLine = p, 0
}

// under tells whether a piece begins close below another, their left ends no
// further apart than side. A line of text is about 2 mm below the one above it, and
// so is a box below its caption; the next block is further away.
func under(upper, lower piece, side Mm) bool {
	apart := max(lower.left-upper.left, upper.left-lower.left)
	below := lower.top - upper.bottom
	return upper.turn == lower.turn && apart < side && below > -slack && below < 2.5
}

// heads tells whether the line so far is one text, the caption of the box below it.
func (r *reader) heads(p piece) bool {
	return r.onLine == 1 && r.last.kind == saidText && p.kind == saidBox && under(r.last, p, 1)
}

// follows tells whether the piece goes on with the line: it is read in the same
// direction, begins where the last one ends or after it, and the middle of the
// lower of the two is within the height of the other. The text beside a sign is a
// block of its own, and so is the box beside a text of several lines.
func (r *reader) follows(p piece) bool {
	q := r.last
	switch {
	case q.turn != p.turn, p.left < q.right-slack,
		q.kind == saidMark && p.kind == saidText,
		r.stacked && p.kind == saidBox && r.gap(p) == wide:
		return false
	}
	small, large := p, q
	if q.bottom-q.top < p.bottom-p.top {
		small, large = q, p
	}
	middle := (small.top + small.bottom) / 2
	return large.top <= middle && middle <= large.bottom
}

// What parts two pieces of a line that are further apart than by a space.
const wide = " | "

// The widest gap on a line that is no more than a space: between texts, as a share of
// the type size (the space of the Go fonts is 0.28 of it), and beside a box or mark.
const (
	noSpace      = 0.1
	wideSpace    = 0.7
	besideBox Mm = 4
)

// gap is what stands between the last piece and the next one of its line.
func (r *reader) gap(p piece) string {
	free := p.left - r.last.right
	if r.last.kind != saidText || p.kind != saidText {
		if free > besideBox {
			return wide
		}
		return " "
	}
	switch em := max(r.last.em, p.em); {
	case free < noSpace*em:
		return ""
	case free > wideSpace*em:
		return wide
	}
	return " "
}
