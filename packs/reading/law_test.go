package reading

import (
	"testing"

	"pgregory.net/rapid"
)

// genLine draws lines of the grammar; nearly all of them are right limits.
func genLine(t *rapid.T) string {
	decimals := rapid.IntRange(0, 3).Draw(t, "decimals")
	unit := rapid.SampledFrom([]string{"mm", "in", "µm", "N", "°C", "C rise", "%", "°", "N·m"}).Draw(t, "unit")
	digits := func(label string) string {
		n := rapid.StringMatching(`(0|[1-9][0-9]{0,3})`).Draw(t, label)
		if decimals > 0 {
			n += "." + rapid.StringMatching(`[0-9]{3}`).Draw(t, label+" decimals")[:decimals]
		}
		return n
	}
	mark := func(label string) string {
		return rapid.SampledFrom([]string{"D1", "D2/DE", "D10", "D8/15-1", "as found"}).Draw(t, label)
	}
	value := func(label string) string {
		switch rapid.IntRange(0, 6).Draw(t, label) {
		case 0:
			return mark(label) + " + " + digits(label) + " " + unit
		case 1:
			return "half of (" + mark(label) + " - " + mark(label+"2") + ")"
		case 2:
			return rapid.SampledFrom([]string{"70 % of ", "0.5 x ", "half of ", ""}).Draw(t, label+" factor") + mark(label)
		case 3:
			return rapid.SampledFrom([]string{"mean", "largest", "smallest", "spread", "sum"}).Draw(t, label+" of") + " of D3 and D4/NDE"
		case 4:
			return digits(label) + " " + unit + " per m of D4"
		}
		return digits(label) + " " + unit
	}
	test := func(label string) string {
		group := rapid.SampledFrom([]string{"", "", "each ", "mean ", "spread ", "sum "}).Draw(t, label+" group")
		switch rapid.IntRange(0, 5).Draw(t, label+" rule") {
		case 0:
			return group + "at least " + value(label)
		case 1:
			return group + "max " + value(label)
		case 2:
			return group + value(label) + " to " + value(label+"2")
		case 3:
			return group + value(label) + " +/- " + digits(label+" tolerance") + " " + unit
		case 4:
			return group + value(label) + " +" + digits(label+" upper") + "/-" + digits(label+" lower") + " " + unit
		}
		return "about " + value(label)
	}
	line := test("first")
	if rapid.Bool().Draw(t, "second test") {
		line += " and " + test("second")
	}
	return line
}

// What a limit prints reads as the same limit, and its words, box and judgement
// come without a panic.
func TestTextReadsAgain(t *testing.T) {
	read, all := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		line := genLine(t)
		all++
		l, fault := Parse(line)
		if fault != nil {
			if fault.Offset+fault.Width > len([]rune(line)) {
				t.Fatalf("%q: place %d+%d outside", line, fault.Offset, fault.Width)
			}
			return
		}
		read++
		checkLaw(t, line, l)
	})
	if read*4 < all {
		t.Errorf("only %d of %d lines were limits: the law is hardly tried", read, all)
	}
}

// checkLaw holds a limit to what is always true.
func checkLaw(t interface{ Errorf(string, ...any) }, line string, l *Limit) {
	text := l.Text()
	again, fault := Parse(text)
	if fault != nil {
		t.Errorf("%q prints %q, which does not read: %s", line, text, fault.Message)
		return
	}
	if again.Text() != text || again.Unit() != l.Unit() || again.Decimals() != l.Decimals() || again.Denominator() != l.Denominator() ||
		again.NeedsFound() != l.NeedsFound() || joinMarks(again.Marks(), " ") != joinMarks(l.Marks(), " ") {
		t.Errorf("%q prints %q, which reads as another limit", line, text)
	}
	if onPaper(again.Words()) != onPaper(l.Words()) {
		t.Errorf("%q and %q differ on paper", line, text)
	}
	l.Judge(nil, Env{})
	l.Band()
	_, _ = BoxFor([]*Limit{l}, Hint{})
	CheckReuse(l, l)
	CheckRise(l)
	CheckBoxes(l, 1)
	CheckTable([]*Limit{l, l, l})
	if low, high, ok := ends1(l); ok && low > 0 && high {
		t.Errorf("%q: the lower end is not below the upper one", line)
	}
}

// ends1 compares the ends of the first test of a limit.
func ends1(l *Limit) (cmp int, both, ok bool) {
	if len(l.Tests) == 0 {
		return 0, false, false
	}
	low, high, ok := l.Tests[0].Limits()
	if !ok || low == nil || high == nil {
		return 0, false, ok
	}
	return low.Number.Cmp(high.Number), true, true
}

// FuzzParse: no line breaks the reader, a fault lies inside the line and says
// something, and a limit obeys the law.
func FuzzParse(f *testing.F) {
	for _, c := range lines {
		f.Add(c.typed)
	}
	for _, c := range mistakes {
		f.Add(c.typed)
	}
	for _, s := range []string{
		"\x00", "\xff", "((((((((((D1", "D1 - - D2", "+/-", "1 mm (", "1 mm ()", "1 to 2 mm (1 to", "1/1/1 mm", "mean of D1 and", "D1/ + 1 mm", "D1/-/- +/- 1 mm",
		"1 mm per m of 1 mm per m of D1", "at most 1 %", "1 % of 1 % of D1", "\u200f0.05 to 0.12 mm", "0.05 to\t0.12\nmm", "choose or or or", "as  found  +/-  1 mm", "−1 to −0.5 mm",
	} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		runes := len([]rune(s))
		inside := func(fault *Fault) {
			if fault != nil && (fault.Offset < 0 || fault.Width < 0 || fault.Offset+fault.Width > runes || fault.Message == "" || fault.Code == "" || len(fault.Help) == 0) {
				t.Errorf("%q: fault %+v", s, fault)
			}
		}
		l, fault := Parse(s)
		if fault == nil {
			checkLaw(t, s, l)
		}
		inside(fault)
		v, fault := ParseFormula(s)
		if fault == nil {
			if again, f := ParseFormula(v.Text()); f != nil || again.Text() != v.Text() {
				t.Errorf("formula %q prints %q", s, v.Text())
			}
			_, _ = v.Work(Env{})
		}
		inside(fault)
		c, fault := ParseCondition(s)
		if fault == nil {
			if again, f := ParseCondition(c.Text()); f != nil || again.Text() != c.Text() {
				t.Errorf("condition %q prints %q", s, c.Text())
			}
		}
		inside(fault)
		st, fault := ParseStage(s)
		if fault == nil {
			if again, f := ParseStage(st.Text()); f != nil || again.Text() != st.Text() {
				t.Errorf("stage %q prints %q", s, st.Text())
			}
		}
		inside(fault)
	})
}

// BenchmarkParse reads every line of the table and tells its words.
func BenchmarkParse(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		for _, c := range lines {
			if l, _ := Parse(c.typed); l != nil {
				l.Words()
			}
		}
	}
}
