package layout

import (
	"strings"
	"testing"
)

// readable gives the lines of a block as Readable writes them.
func readable(b Block) string { return strings.TrimSuffix(Readable(Frame{Items: b.Items()}), "\n") }

func TestReadable(t *testing.T) {
	t.Parallel()
	s := newFake()
	line := func(text string) Block { return s.Words(ten, text) }
	code := s.QR("WO-1 A C2", 20, 0.3, nil)
	stroke := Item{Role: "sign:W001", Shape: Path{Ops: Circle(Point{4, 4}, 4)}}
	sign := Drawn(9, 9, stroke, stroke)
	for _, c := range []struct {
		name string
		b    Block
		want string
	}{
		{"a paragraph keeps its lines", s.Para(10, []Run{T(ten, "nut and washer off")}, ParaOpts{}), "nut and\nwasher off"},
		{"runs of a line are joined as printed", s.Line(0, []Run{T(ten, "at "), T(ten.With(Bold), "⌀"), T(ten, "9\u00a0mm")}, ParaOpts{}), "at ⌀9 mm"},
		{"columns are parted", Beside(10, line("mark"), line("limit")), "mark | limit"},
		{"columns of several lines do not mix", Beside(10, Above(0, line("a"), line("b")), Above(0, line("c"), line("d"))), "a\nb\nc\nd"},
		{"type of another size on the same line", Level(1, s.Words(Section, "D1"), line("gap")), "D1 gap"},
		{"value box with its caption and unit", s.Value(Number{Before: 3, After: 2, Sign: true, Unit: "mm", Caption: "as found"}), "as found: [±] [___.__] mm"},
		{"whole number, copied", s.Value(Number{Before: 2, Copied: true}), "[=__]"},
		{"inch fraction", s.Fraction("", "in", false, nil), "[__] [__] [__] in"},
		{"ticks", Beside(GapX, s.Tick(ten, "OK", nil), s.Tick(ten, "not OK", nil)), "[ ] OK | [ ] not OK"},
		{"a strip of boxes", Beside(0, s.WideBox(RoleWords, 40, 1, "step", nil), s.WideBox(RoleWords, 40, 2, "", nil)), "[step ____] [____]"},
		{"boxes with a role", Beside(GapX, s.Box(RoleInitials, "", nil), s.Box(RoleInitials, "initials", nil)), "[__initials__] | [initials ____]"},
		{"a caption to a box stands above it", Beside(GapX,
			Above(0.3, s.Words(Caption, "0°"), s.Value(Number{Before: 1})),
			Above(0.3, s.Words(Caption, "90°"), s.Value(Number{Before: 1}))), "0°: [_]\n90°: [_]"},
		{"a box is not on the last line of the text beside it", Bottom(10, Above(0, s.Words(Sub, "hub face"), s.Words(Sub, "to shaft")), s.Box(RoleInitials, "", nil)), "hub face\nto shaft\n[__initials__]"},
		{"a code says its text", Middle(5, line("C2"), code), "C2 | (QR WO-1 A C2)"},
		{"a drawing is named once, its text has its own line", Middle(2, sign, sign, line("hot")), "(sign:W001)\nhot"},
		{"rules and frames say nothing", line("x").Border(Rect{Weight: 1}).Under(Drawn(9, 1, Item{Shape: Line{DX: 9}})), "x"},
		{"nothing", Block{}, ""},
	} {
		if got := readable(c.b); got != c.want {
			t.Errorf("%s:\n%s\nwant\n%s", c.name, got, c.want)
		}
	}
}

// A sheet that lies is read as it is when the paper is turned.
func TestReadableTurned(t *testing.T) {
	t.Parallel()
	s := newFake()
	b := Above(2,
		Beside(10, s.Words(ten, "mark"), s.Words(ten, "limit")),
		s.WideBox(RoleWords, 40, 1, "step", nil),
		s.Value(Number{Before: 1, After: 3, Sign: true, Unit: "mm"}))
	if got, want := readable(b.Turned()), readable(b); got != want || !strings.Contains(got, "mark | limit\n[step ____]\n[±] [_.___] mm") {
		t.Errorf("turned:\n%s\nupright:\n%s", got, want)
	}
	upright := Overlay(s.Words(ten, "up"), s.Words(ten, "across").Turned())
	if got := readable(upright); got != "up\nacross" {
		t.Errorf("texts in two directions: %q", got)
	}
}

// A page has its head, its flow and its foot in this order, whatever was drawn.
func TestReadablePage(t *testing.T) {
	t.Parallel()
	s := newFake()
	paper := Paper{W: 80, H: 60, Left: 5, Right: 5, Top: 5, Bottom: 5}
	word := func(text string) func(int, int) Block {
		return func(int, int) Block { return s.Words(ten, text) }
	}
	tab := Table{Columns: []Column{{Width: 20, Head: s.Words(ten, "no.")}, {Width: 40, Head: s.Words(ten, "part")}}, PadX: 1, PadY: 1, Grid: true}
	p := Paginate(paper, []Sheet{{Name: "x", Head: word("head"), Foot: word("foot"), Pieces: tab.Pieces([]Row{
		{Cells: []Block{s.Words(ten, "1"), s.Para(10, []Run{T(ten, "nut, washer")}, ParaOpts{})}},
		{Cells: []Block{s.Words(ten, "2"), s.Tick(ten, "cap", nil)}, Middle: true},
	})}})
	const want = "head\nno. | part\n1 | nut,\nwasher\n2 | [ ] cap\nfoot\n"
	if got := Readable(p.Frames[0]); got != want {
		t.Errorf("got\n%swant\n%s", got, want)
	}
}
