package layout

import (
	"slices"
	"strings"
	"testing"
)

// The rules of line breaking kept here are those of the Unicode line breaking
// algorithm (UAX #14) as far as trade text needs them: classes GL and WJ forbid a
// break, BA and HY allow one after, SHY shows a hyphen. The narrower rule for
// hyphens and slashes (letters on both sides) is the project's own: a mark such
// as C4/DE or a size such as M12-6g must never part.

func TestParaLines(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name  string
		width Mm
		runs  []Run
		want  []string
	}{
		{"text that fills the line exactly", 11, []Run{T(ten, "take it off")}, []string{"take it off"}},
		{"one sign too many", 10, []Run{T(ten, "take it off")}, []string{"take it", "off"}},
		{"spaces fold and do not start a line", 20, []Run{T(ten, "  take \t it  ")}, []string{"take it"}},
		{"a line feed starts a line", 20, []Run{T(ten, "one\ntwo\n\nfour")}, []string{"one", "two", "four"}},
		{"a number stays with its unit", 12, []Run{T(ten, "torque 210\u00a0N·m")}, []string{"torque", "210\u00a0N·m"}},
		{"a narrow no-break space too", 10, []Run{T(ten, "heat to 90\u202f°C")}, []string{"heat to", "90\u00a0°C"}},
		{"what no line of its width holds together is torn where it was held", 9, []Run{T(ten, "at\u00a0least\u00a00.06\u00a0mm")}, []string{"at\u00a0least", "0.06\u00a0mm"}},
		{"but not a number at its thousands", 7, []Run{T(ten, "of\u00a012\u202f500\u00a0N")}, []string{"of", "12\u00a0500", "N"}},
		{"a word joiner and a no-break hyphen", 9, []Run{T(ten, "a b\u2011c\u2060d\u2011e")}, []string{"a b-cd-e"}},
		{"between words a slash ends a line", 11, []Run{T(ten, "bearing and/or seal")}, []string{"bearing", "and/or seal"}},
		{"after the slash", 12, []Run{T(ten, "bearings and/or seal")}, []string{"bearings", "and/or seal"}},
		{"inside it when it must", 8, []Run{T(ten, "inlet/outlet")}, []string{"inlet/", "outlet"}},
		{"a hyphen between words", 10, []Run{T(ten, "left-handed nut")}, []string{"left-", "handed nut"}},
		{"no line begins with the point between two facts", 9, []Run{T(ten, "off at · in use, new")}, []string{"off at ·", "in use,", "new"}},
		{"the word before it goes with it", 10, []Run{T(ten, "with oil in · new oil")}, []string{"with oil", "in · new", "oil"}},
		{"unless that takes a line more", 10, []Run{T(ten, "with oil in · new")}, []string{"with oil", "in · new"}},
		{"or it stands where it must", 6, []Run{T(ten, "in oil · new")}, []string{"in oil", "· new"}},
		{"after what is larger it is left out there", 6, []Run{T(ten.With(Bold), "in oil"), T(Style{Face: Regular, Size: Mm(1.5).Pt(), Lead: 5}, " · new")}, []string{"in oil", "new"}},
		{"a mark does not part at its slash", 10, []Run{T(ten, "into bag C4/NDE")}, []string{"into bag", "C4/NDE"}},
		{"nor a size at its hyphen", 10, []Run{T(ten, "bolt M12-6g")}, []string{"bolt", "M12-6g"}},
		{"nor a range of numbers", 12, []Run{T(ten, "within 130–140")}, []string{"within", "130–140"}},
		{"a soft hyphen shows where it is used", 9, []Run{T(ten, "the bear\u00ading")}, []string{"the bear-", "ing"}},
		{"and nowhere else", 20, []Run{T(ten, "the bear\u00ading")}, []string{"the bearing"}},
		{"its hyphen must fit too", 8, []Run{T(ten, "the bear\u00ading")}, []string{"the", "bearing"}},
		{"styles change inside a word", 20, []Run{T(ten, "step "), T(ten.With(Bold), "3.2"), T(ten, ".")}, []string{"step 3.2."}},
		{"and the word moves as one", 8, []Run{T(ten, "see step"), T(ten.With(Bold), "s.")}, []string{"see", "steps."}},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			b := newFake().Para(c.width, c.runs, ParaOpts{})
			if got := linesOf(b); !slices.Equal(got, c.want) {
				t.Errorf("lines %q, want %q", got, c.want)
			}
			if len(b.Misfits()) > 0 {
				t.Errorf("misfits %v", b.Misfits())
			}
		})
	}
}

func TestParaLongWords(t *testing.T) {
	t.Parallel()
	s := newFake()
	b := s.Para(14, []Run{T(ten, "the Lagergehäusedeckel is off")}, ParaOpts{})
	if len(b.Misfits()) > 0 {
		t.Errorf("a long word of letters: misfits %v", b.Misfits())
	}
	got := linesOf(b)
	if whole := strings.ReplaceAll(strings.Join(got, " "), "- ", ""); whole != "the Lagergehäusedeckel is off" {
		t.Errorf("lines %q lose letters", got)
	}
	for _, l := range got {
		if n := len([]rune(l)); n > 14 {
			t.Errorf("line %q is %d wide, want at most 14", l, n)
		}
	}
	for _, word := range []string{"WO-5512-FN11-NDE-22220", "C14/DE/suction/7", "130.015–130.040"} {
		b := s.Para(9, []Run{{Text: "to " + word, Style: ten, Ref: "here"}}, ParaOpts{})
		if got := linesOf(b); !slices.Contains(got, word) {
			t.Errorf("%s: lines %q, want the word whole", word, got)
		}
		if len(b.Misfits()) != 1 || b.Misfits()[0].Kind != TooWide || b.Misfits()[0].Ref != "here" || b.Misfits()[0].Text != word {
			t.Fatalf("%s: misfits %v, want one", word, b.Misfits())
		}
		if want := Mm(len([]rune(word)) - 9); b.Misfits()[0].Over < want-slack || b.Misfits()[0].Over > want+slack {
			t.Errorf("%s: over by %.2f mm, want %.2f", word, b.Misfits()[0].Over, want)
		}
	}
}

func TestParaSigns(t *testing.T) {
	t.Parallel()
	s := newFake()
	for _, c := range []struct {
		name, text string
		kind       Kind
		r          rune
		many       int
	}{
		{"a sign the face lacks", "ring ㊙ here", NoGlyph, '㊙', 1},
		{"beyond the basic plane", "tool 🔧", NoGlyph, '🔧', 1},
		{"an accent apart from its letter", "Gehau\u0308se", NoGlyph, '\u0308', 1},
		{"a control character", "a\x00b", NoGlyph, 0, 1},
		{"broken bytes", "a\xffb", NoGlyph, '\uFFFD', 1},
		{"Hebrew, told once", "שלום", RightToLeft, 'ש', 1},
		{"Arabic, told once", "bolt محور x", RightToLeft, 'م', 1},
		{"a sign that turns the direction", "a\u202eb", NoGlyph, '\u202e', 1},
		{"drawn signs", "⌀ 130 ☐ ✓ ⚠", 0, 0, 0},
		{"accents composed with their letters", "Gehäuse, Größe, l'éclisse", 0, 0, 0},
	} {
		b := s.Para(100, []Run{T(ten, c.text)}, ParaOpts{Ref: 7})
		if len(b.Misfits()) != c.many {
			t.Errorf("%s: misfits %v, want %d", c.name, b.Misfits(), c.many)
			continue
		}
		if c.many > 0 && (b.Misfits()[0].Kind != c.kind || b.Misfits()[0].Rune != c.r || b.Misfits()[0].Ref != 7) {
			t.Errorf("%s: misfit %+v", c.name, b.Misfits()[0])
		}
	}
	b := s.Para(100, []Run{T(ten, "⌀ 130")}, ParaOpts{})
	if got := linesOf(b); !slices.Equal(got, []string{"⌀ 130"}) {
		t.Errorf("a drawn sign keeps its character: %q", got)
	}
}

func TestParaPlaces(t *testing.T) {
	t.Parallel()
	s := newFake()
	b := s.Para(20, []Run{T(ten, "one two three four five")}, ParaOpts{Hang: 4})
	if b.H != 10 || b.W != 20 {
		t.Errorf("block %v x %v, want 20 x 10 (two lines of 5)", b.W, b.H)
	}
	if x := b.Items()[1].X; x != 4 {
		t.Errorf("second line at %v, want 4", x)
	}
	if x := s.Para(20, []Run{T(ten, "right")}, ParaOpts{Align: RightEnd}).Items()[0].X; x != 15 {
		t.Errorf("right end: at %v, want 15", x)
	}
	if x := s.Para(20, []Run{T(ten, "mid!")}, ParaOpts{Align: Centered}).Items()[0].X; x != 8 {
		t.Errorf("centred: at %v, want 8", x)
	}
	l := s.Line(10, []Run{T(ten, "twelve signs")}, ParaOpts{})
	if len(l.Misfits()) != 1 || l.Misfits()[0].Over != 2 || l.H != 5 {
		t.Errorf("line: misfits %v, height %v, want one over by 2 mm in one line", l.Misfits(), l.H)
	}
}

// A line takes a line feed as a space.
func TestLineFeeds(t *testing.T) {
	t.Parallel()
	b := newFake().Line(0, []Run{T(ten, "one\ntwo\n\nthree")}, ParaOpts{})
	if got := linesOf(b); !slices.Equal(got, []string{"one two three"}) {
		t.Errorf("lines %q, want one", got)
	}
}

// A field of a hundred thousand signs, with or without places to break, is set in
// a moment: no work grows with the square of the text.
func TestParaHuge(t *testing.T) {
	t.Parallel()
	s := newFake()
	for _, unit := range []string{"x", "x-", "aaa-", "ab ", "1-", "\u00ad", "a\u00ad", "㊙", "/", "⌀", "a\n"} {
		s.Para(60, []Run{T(ten, strings.Repeat(unit, 100_000/len(unit)))}, ParaOpts{})
		s.Line(60, []Run{T(ten, strings.Repeat(unit, 100_000/len(unit)))}, ParaOpts{})
	}
}

// A plate never parts and holds its words; its rectangle lies about the text.
func TestParaPlates(t *testing.T) {
	t.Parallel()
	b := newFake().Para(30, []Run{T(ten, "take the nut off "), {Text: "left-hand thread", Style: ten, Deco: Inverse}}, ParaOpts{})
	if got := linesOf(b); !slices.Equal(got, []string{"take the nut off", "left-hand\u00a0thread"}) {
		t.Fatalf("lines %q", got)
	}
	plate, text := b.Items()[1], b.Items()[2]
	r, ok := plate.Shape.(Rect)
	if !ok || r.Fill != Black || text.Shape.(Text).Ink != White {
		t.Fatalf("plate %+v, text %+v: want white on black, the plate first", plate, text)
	}
	pl, pt, pr, pb := plate.Bounds()
	if pl > text.X || pr < text.X+16 || pt > text.Y-ten.CapHeight() || pb < text.Y {
		t.Errorf("the plate %v %v %v %v does not lie about the text at %v, %v", pl, pt, pr, pb, text.X, text.Y)
	}
	if pt < 5-slack || pb > 10+slack {
		t.Errorf("the plate from %v to %v leaves its line from 5 to 10", pt, pb)
	}
}

func BenchmarkPara(b *testing.B) {
	s := newFake()
	runs := []Run{
		T(Body, "Measure how far the lock nut stands from the shaft end, then take the nut and tab washer off. "),
		{Text: "left-hand thread", Style: Strong, Deco: Inverse},
		T(Sub, "\nafter 2.6 — coupling is apart · may be done any time before 3.4"),
	}
	b.ReportAllocs()
	for b.Loop() {
		s.Para(90, runs, ParaOpts{})
	}
}

// TestHyphenHasRoom: a word that fills the line is parted earlier where its hyphen
// would reach beyond it.
func TestHyphenHasRoom(t *testing.T) {
	t.Parallel()
	s := newFake()
	b := s.Para(3, []Run{{Text: "aaa\u00ada", Style: ten}}, ParaOpts{})
	for _, it := range b.Items() {
		if text, ok := it.Shape.(Text); ok && !(it.X + text.Width).Fits(3) && len(b.Misfits()) == 0 {
			t.Errorf("%q is %v wide in 3 mm", text.S, text.Width)
		}
	}
	if len(b.Items()) == 0 {
		t.Error("nothing is set")
	}
}
