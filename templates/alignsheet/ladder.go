package alignsheet

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/align"
	"matchmark/packs/units"
)

// roleSum is on the lines of the ladder, so that a reader of the page can do the sums.
const roleSum = "align-sum"

// letter names a line of the ladder: those of the left column first.
func (s sheet) letter(i int) string {
	n := 0
	for k, r := range s.a.Ladder {
		same := sideways(r.Code) == sideways(s.a.Ladder[i].Code)
		if same && k < i || !same && sideways(s.a.Ladder[i].Code) {
			n++
		}
	}
	return string(rune('a' + n))
}

// formula writes a line as a sum of readings and lines above: bottom − top + 0.06.
func (s sheet) formula(r align.Rung) string {
	return s.sum(r, func(t align.Term) string {
		switch {
		case t.Reading != nil:
			name := s.W.Alignment.Clock[t.Reading.At]
			if t.Reading.Dial == align.FaceOther {
				name += " (2)"
			}
			return name[strings.IndexByte(name, ' ')+1:]
		case t.Rung >= 0:
			return s.letter(t.Rung)
		}
		return ""
	})
}

// worked writes a line with the numbers of the example in place of its terms.
func (s sheet) worked(i int) string {
	ex := s.a.Example
	return s.sum(s.a.Ladder[i], func(t align.Term) string {
		n := units.Number{}
		switch {
		case t.Reading != nil:
			n = ex.Readings[*t.Reading].Number
		case t.Rung >= 0:
			n = s.told(t.Rung)
		default:
			return ""
		}
		if n.Sign() < 0 {
			return "(" + n.Print() + ")"
		}
		return n.Print()
	}) + " = " + signed(s.told(i))
}

// told is what a line of the example comes to, worked from the figures that stand on paper: lines
// on the way have a decimal more than the dials, so that the moves do not carry their rounding.
func (s sheet) told(i int) units.Number {
	sum := units.Number{}
	for _, t := range s.a.Ladder[i].Terms {
		switch {
		case t.Reading != nil:
			sum = sum.Add(s.a.Example.Readings[*t.Reading].Number.Mul(t.Times).Quo(t.Over))
		case t.Rung >= 0:
			sum = sum.Add(s.told(t.Rung).Mul(t.Times).Quo(t.Over))
		default:
			sum = sum.Add(s.constant(t))
		}
	}
	return sum.Round(s.decimals(s.a.Ladder[i]), units.Nearest)
}

// constant is a summand that is no reading, with a decimal more than the dials where it has no end.
func (s sheet) constant(t align.Term) units.Number {
	n := units.Exact(t.Times.Quo(t.Over).Rat(), s.after())
	if rounded := n.Round(s.after()+1, units.Nearest); rounded.Cmp(n) != 0 {
		return rounded
	}
	return n
}

// decimals is how many decimals the box of a line has.
func (s sheet) decimals(r align.Rung) int {
	if last(r.Code) {
		return s.after()
	}
	return s.after() + 1
}

// last reports whether a line is one that the work is done by.
func last(c align.RungCode) bool { return c >= align.MoveUp }

// sum writes the terms of a line with their signs and factors; name words a term that
// is no constant. A factor that all terms have stands once: (d − e) × 200/910.
func (s sheet) sum(r align.Rung, name func(align.Term) string) string {
	var out strings.Builder
	if times, over, ok := sameFactor(r); ok {
		for i, t := range r.Terms {
			put(&out, i, t.Times.Sign(), name(t))
		}
		return "(" + out.String() + ")" + factor(times, over)
	}
	for i, t := range r.Terms {
		sign := t.Times.Sign()
		if n := name(t); n == "" {
			constant := s.constant(t)
			if constant.Sign() == 0 {
				continue
			}
			put(&out, i, constant.Sign(), constant.Abs().Print())
			continue
		} else {
			put(&out, i, sign, n+factor(t.Times.Abs(), t.Over))
		}
	}
	return out.String()
}

// sameFactor is the factor that all terms of a line have, if it is another than 1 and none
// of them is a constant.
func sameFactor(r align.Rung) (times, over units.Number, ok bool) {
	if len(r.Terms) < 2 {
		return times, over, false
	}
	times, over = r.Terms[0].Times.Abs(), r.Terms[0].Over
	for _, t := range r.Terms {
		if t.Reading == nil && t.Rung < 0 || t.Times.Abs().Cmp(times) != 0 || t.Over.Cmp(over) != 0 {
			return times, over, false
		}
	}
	return times, over, times.Cmp(over) != 0
}

// put adds a term with its sign.
func put(out *strings.Builder, i, sign int, text string) {
	switch {
	case sign < 0 && i == 0:
		out.WriteString("−")
	case sign < 0:
		out.WriteString(" − ")
	case i > 0:
		out.WriteString(" + ")
	}
	out.WriteString(text)
}

// factor is what a term is multiplied by: × 420/200, ÷ 2, nothing.
func factor(times, over units.Number) string {
	one := units.Whole(1)
	switch {
	case times.Cmp(over) == 0:
		return ""
	case times.Cmp(one) == 0:
		return " ÷ " + over.Print()
	case over.Cmp(one) == 0:
		return " × " + times.Print()
	}
	return " × " + times.Print() + "/" + over.Print()
}

// rungWords say what a line gives.
func (s sheet) rungWords(r align.Rung) string {
	w, of := s.W, s.W.Alignment.Dial[r.Dial]
	switch {
	case r.Foot >= 0 && r.Foot < len(s.a.Setup.Feet):
		of = s.a.Setup.Feet[r.Foot].Name
	case r.Code == align.AngleUp || r.Code == align.AngleRight:
		of = print(s.a.Limits.Over)
	case r.Code == align.OffsetAtUp || r.Code == align.OffsetAtRight:
		of = print(s.a.Limits.At)
	}
	text := w.Alignment.Rung[r.Code].With(of)
	for _, t := range r.Terms {
		switch {
		case t.Reading == nil && t.Rung < 0 && t.Target:
			text += " " + w.Alignment.Target
		case t.Reading == nil && t.Rung < 0 && t.Times.Sign() != 0:
			text += " " + w.Alignment.TwiceSag
		}
	}
	switch r.Code {
	case align.MoveUp:
		text += w.Common.Colon + w.Alignment.RaiseIf
	case align.MoveRight:
		text += w.Common.Colon + w.Alignment.RightIf
	}
	return text
}

// sideways reports whether a line belongs to the moves to the right.
func sideways(c align.RungCode) bool {
	switch c {
	case align.OffsetRight, align.FaceRight, align.MoveRight, align.AngleRight, align.OffsetAtRight:
		return true
	}
	return false
}

// rungBox is the widest box of a line of the ladder.
func (s sheet) rungBox() layout.Block {
	return s.Value(layout.Number{Before: s.before(), After: s.after() + 1, Sign: true, Ref: s.a.At})
}

// rung is one line of the ladder: its letter and sum, what it gives, and the box of each
// set, below the title of those that it is the first of. A line by which the feet are moved
// is framed.
func (t setTable) rung(i int, r align.Rung, title string) layout.Block {
	runs := []layout.Run{layout.T(layout.Strong, t.W.Alignment.Line.With(t.letter(i), t.formula(r)))}
	text := layout.Above(0.2, t.Para(t.text, runs, layout.ParaOpts{Ref: t.a.At, Role: roleSum}),
		t.Para(t.text, []layout.Run{layout.T(layout.Caption, t.rungWords(r))}, layout.ParaOpts{Ref: t.a.At}))
	if title != "" {
		text = layout.Above(0.2, t.words(layout.Strong, title), text)
	}
	row := t.row(text, func(int) layout.Block {
		return t.Value(layout.Number{Before: t.before(), After: t.decimals(r), Sign: true, Ref: t.a.At})
	})
	if last(r.Code) && r.Code <= align.MoveRight {
		row = row.Under(layout.Drawn(row.W, row.H, layout.Item{X: -1.2, Y: -0.8, Shape: layout.Rect{W: row.W + 2.4, H: row.H + 1.6, Weight: layout.Heavy}}))
	}
	return row
}

// example does the ladder for readings that are made up.
func (s sheet) example(head *layout.Block) []layout.Piece {
	w, ex := s.W, s.a.Example
	var lines []layout.Block
	for _, d := range s.a.Setup.Dials() {
		var four []string
		for _, at := range clock {
			four = append(four, w.Alignment.Clock[at]+" "+signed(ex.Readings[align.Reading{Dial: d, At: at}].Number))
		}
		lines = append(lines, s.line(layout.Body, w.Alignment.Dial[d]+w.Common.Colon+strings.Join(four, ", ")))
	}
	const gap layout.Mm = 6
	width := (s.Span - gap) / 2
	var cols [2][]layout.Block
	for i, r := range s.a.Ladder {
		k := 0
		if sideways(r.Code) {
			k = 1
		}
		runs := []layout.Run{layout.T(layout.Body, w.Alignment.Line.With(s.letter(i), s.worked(i)))}
		cols[k] = append(cols[k], s.Para(width, runs, layout.ParaOpts{Ref: s.a.At, Hang: 5, Role: "align-example"}))
	}
	left, right := layout.Above(0.3, cols[0]...), layout.Above(0.3, cols[1]...)
	lines = append(lines, layout.Beside(gap, left.Fill(width, left.H, 0, 0), right))
	return []layout.Piece{{Block: layout.Above(1.2, s.Heading(w.Alignment.ExampleTitle), layout.Above(0.6, lines...)), Gap: 3, Under: []*layout.Block{head}}}
}

// clock are the places of a dial in the order in which they are read.
var clock = []align.Clock{align.Top, align.Right, align.Bottom, align.Left}
