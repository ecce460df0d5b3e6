package reading

import (
	"fmt"
	"strings"
	"testing"
)

func ExampleParse() {
	l, _ := Parse("80.00 +0.02/-0.00 mm")
	p := l.Words()
	plain := strings.NewReplacer("\u00a0", " ") // no-break spaces on paper
	fmt.Println(plain.Replace(English(p.Main[0], "▢")))
	fmt.Println(plain.Replace(English(p.Small[0], "▢")))
	_, fault := Parse("0.05-0.12 mm")
	fmt.Println(fault.Message)
	// Output:
	// 80.00 +0.02 / −0.00 mm
	// 80.00 – 80.02
	// a dash between two sizes can mean "to" or "less": for limits write 0.05 to 0.12 mm
}

// lines are limits as a manual prints them, what they print back, and what stands
// on paper: lines of the cell, then behind ~ the small lines, each parted by " / ".
// Spelling and looks are the project's own, so only the numbers of the small lines
// can be wrong against arithmetic; those of rises are checked in outside_test.go.
var lines = []struct{ typed, text, paper string }{
	// one end
	{"at least 4.0 mm", "", "at least 4.0 mm"},
	{"at most 0.15 mm", "", "at most 0.15 mm"},
	{"min 4.0 mm", "at least 4.0 mm", "at least 4.0 mm"},
	{"max 0.15mm", "at most 0.15 mm", "at most 0.15 mm"},
	{"at least 59.5 mm", "", "at least 59.5 mm"},
	{"at most 200 °C", "", "at most 200 °C"},
	{"at most 200 C", "at most 200 °C", "at most 200 °C"},
	{"at least 70 %", "", "at least 70 %"},
	{"at most 5/16 in", "", "at most 5/16 in"},
	{"at most 2 mil", "", "at most 2 mil"},
	{"at least 45 N·m", "", "at least 45 N·m"},
	{"at least 45 Nm", "at least 45 N·m", "at least 45 N·m"},
	{"at most 0.05 mm", "", "at most 0.05 mm"},
	{"at most 3 pcs", "", "at most 3 pcs"},
	{"at most 0.5°", "", "at most 0.5°"},
	// two ends
	{"0.05 to 0.12 mm", "", "0.05 – 0.12 mm"},
	{"0.05 mm to 0.12 mm", "0.05 to 0.12 mm", "0.05 – 0.12 mm"},
	{"130.015 to 130.040 mm", "", "130.015 – 130.040 mm"},
	{"-0.04 to +0.04 mm", "", "−0.04 to +0.04 mm"},
	{"410 to 450 N", "", "410 – 450 N"},
	{"0 to 5 pcs", "", "0 – 5 pcs"},
	{"1-3/8 to 1-1/2 in", "", "1-3/8 – 1-1/2 in"},
	{"0.0005 to 0.0012 in", "", "0.0005 – 0.0012 in"},
	{"4 to 9 min", "", "4 – 9 min"},
	// a size and how near
	{"12.5 +/- 0.1 mm", "", "12.5 ± 0.1 mm ~ 12.4 – 12.6"},
	{"12.5 ±0.1 mm", "12.5 +/- 0.1 mm", "12.5 ± 0.1 mm ~ 12.4 – 12.6"},
	{"12.5 mm +/- 0.1 mm", "12.5 +/- 0.1 mm", "12.5 ± 0.1 mm ~ 12.4 – 12.6"},
	{"80.00 +0.02/-0.00 mm", "", "80.00 +0.02 / −0.00 mm ~ 80.00 – 80.02"},
	{"8.0 +0.5/-0 mm", "", "8.0 +0.5 / −0 mm ~ 8.0 – 8.5"},
	{"45.000 -0.025/-0.050 mm", "", "45.000 −0.025 / −0.050 mm ~ 44.950 – 44.975"},
	{"120.000 +0.076/+0.054 mm", "", "120.000 +0.076 / +0.054 mm ~ 120.054 – 120.076"},
	{"1.500 +0.000/-0.003 in", "", "1.500 +0.000 / −0.003 in ~ 1.497 – 1.500"},
	{"3/16 +/- 1/32 in", "", "3/16 ± 1/32 in ~ 5/32 – 7/32"},
	{"0.00 +/- 0.05 mm", "", "0.00 ± 0.05 mm ~ −0.05 … 0.05"},
	{"80 +/- 5 °C", "", "80 ± 5 °C ~ 75 – 85"},
	// found, and other readings
	{"as found +/- 0.10 mm", "", "as found ± 0.10 mm ~ found ▢ → from ▢ to ▢"},
	{"as found +0.10/-0.00 mm", "", "as found +0.10 / −0.00 mm ~ found ▢ → from ▢ to ▢"},
	{"D1 - D2 + 0.20 mm +/- 0.03 mm", "", "worked out ± 0.03 mm"},
	{"D1 - D2 + 0.20 +/- 0.03 mm", "D1 - D2 + 0.20 mm +/- 0.03 mm", "worked out ± 0.03 mm"},
	{"40.00 mm + D2 +/- 0.02 mm", "", "worked out ± 0.02 mm"},
	{"D6 + 0.15 mm +/- 0.02 mm", "", "worked out ± 0.02 mm"},
	{"half of D10 +/- 0.25 mm", "", "half of D10 ± 0.25 mm"},
	{"half of (D1 - D2) +/- 0.05 mm", "", "worked out ± 0.05 mm"},
	{"70 % of D9 +/- 0.05 mm", "", "70 % of D9 ± 0.05 mm"},
	{"0.5 x D9 +/- 0.05 mm", "", "0.5 × D9 ± 0.05 mm"},
	{"at most 25 % of D6", "", "at most 25 % of D6"},
	{"at most 0.5 mm per m of D4", "", "at most 0.5 mm for each m of D4"},
	{"D1 - D2 to D1 + D2", "", "worked out"},
	{"at most 0.002 in per D5 of D4", "", "at most 0.002 in for each D5 in D4"},
	{"at most 0.001 in per in of (D4 - D5)", "", "at most 0.001 in for each in of (D4 − D5)"},
	{"60 to 80 C rise (108 to 144 F rise)", "", "60 – 80 °C above the part beside it ~ = 108 – 144 °F warmer, never 140 – 176 / 108 – 144 °F above the part beside it as printed in the source"},
	{"at most 0.0005 in per in of D4", "", "at most 0.0005 in for each in of D4"},
	{"at most 0.005 % of D4", "", "at most 0.005 % of D4"},
	{"mean of D3 and D4 - 0.50 mm +/- 0.02 mm", "", "worked out ± 0.02 mm"},
	{"at least largest of D3 and D4/DE", "", "at least largest of D3 and D4/DE"},
	{"D3/NDE to D4/15-1", "", "D3/NDE to D4/15-1"},
	{"about D2", "", "about D2 ~ no tolerance in the source: judge and sign"},
	{"about 12.5 mm", "", "about 12.5 mm ~ no tolerance in the source: judge and sign"},
	{"about as found", "", "about as found ~ no tolerance in the source: judge and sign"},
	// several tests
	{"mean 1.10 to 1.40 mm and spread at most 0.10 mm", "", "mean 1.10 – 1.40 mm / spread at most 0.10 mm"},
	{"each 1.10 to 1.40 mm and spread at most 0.10 mm", "1.10 to 1.40 mm and spread at most 0.10 mm", "1.10 – 1.40 mm / spread at most 0.10 mm"},
	{"sum 0.80 to 1.20 mm", "", "sum 0.80 – 1.20 mm"},
	{"mean of D3 and D4 +/- 0.10 mm and spread at most 0.05 mm", "", "mean of D3 and D4 ± 0.10 mm / spread at most 0.05 mm"},
	{"20 to 60 °C and spread at most 10 C rise", "", "20 – 60 °C / spread at most 10 °C"},
	// the same in another unit
	{"0.30 to 0.40 mm (0.012 to 0.016 in)", "", "0.30 – 0.40 mm ~ 0.012 – 0.016 in as printed in the source"},
	{"at most 0.30 mm (0.012 in)", "", "at most 0.30 mm ~ 0.012 in as printed in the source"},
	{"12.5 +/- 0.1 mm (0.492 +/- 0.004 in)", "", "12.5 ± 0.1 mm ~ 12.4 – 12.6 / 0.492 ± 0.004 in as printed in the source"},
	{"at most 100 °C (212 °F)", "", "at most 100 °C ~ 212 °F as printed in the source"},
	// rises
	{"60 to 80 C rise", "", "60 – 80 °C above the part beside it ~ = 108 – 144 °F warmer, never 140 – 176"},
	{"at most 90 K", "", "at most 90 K above the part beside it ~ = 162 °F warmer, never 194"},
	// no numbers
	{"record", "", "record"},
	{"record to 0.01 mm", "", "record"},
	{"record to 1/64 in", "", "record"},
	{"none", "", "none allowed"},
	{"must be free", "", "free"},
	{"must be  flush or below", "must be flush or below", "flush or below"},
	{"yes or no", "", ""},
	{"choose A or B", "", ""},
	{"choose size S or size M or size L", "", ""},
	{"words", "", ""},
	{"sketch", "", ""},
	{"tick", "", ""},
	{"as found", "", "as found"},
	{"exactly 8 pcs", "", "exactly 8 pcs"},
}

// onPaper joins printed lines as the table above writes them.
func onPaper(p Printed) string {
	join := func(lines [][]Part) string {
		var out []string
		for _, l := range lines {
			out = append(out, English(l, "▢"))
		}
		return strings.ReplaceAll(strings.Join(out, " / "), "\u00a0", " ")
	}
	s := join(p.Main)
	if len(p.Small) > 0 {
		s += " ~ " + join(p.Small)
	}
	return s
}

func TestLinesReadAndPrint(t *testing.T) {
	for _, c := range lines {
		l, fault := Parse(c.typed)
		if fault != nil {
			t.Errorf("%q: [%d+%d] %s", c.typed, fault.Offset, fault.Width, fault.Message)
			continue
		}
		want := c.text
		if want == "" {
			want = c.typed
		}
		if got := l.Text(); got != want {
			t.Errorf("%q prints back %q, want %q", c.typed, got, want)
		}
		if got := onPaper(l.Words()); got != c.paper {
			t.Errorf("%q on paper:\n got %q\nwant %q", c.typed, got, c.paper)
		}
		again, fault := Parse(l.Text())
		if fault != nil || again.Text() != l.Text() {
			t.Errorf("%q does not read again: %v", l.Text(), fault)
		}
	}
}

func TestMarksAndFound(t *testing.T) {
	for _, c := range []struct {
		typed string
		marks string
		found bool
	}{
		{"0.05 to 0.12 mm", "", false},
		{"as found +/- 0.10 mm", "", true},
		{"as found", "", true},
		{"D1 - D2/DE + D1 +/- 0.03 mm", "D1 D2/DE", false},
		{"half of (D1 - as found) +/- 0.05 mm and spread at most 10 % of mean of D3 and D4", "D1 D3 D4", true},
		{"at most 0.5 mm per m of D4", "D4", false},
	} {
		l, fault := Parse(c.typed)
		if fault != nil {
			t.Errorf("%q: %s", c.typed, fault.Message)
			continue
		}
		if got := joinMarks(l.Marks(), " "); got != c.marks || l.NeedsFound() != c.found {
			t.Errorf("%q needs %q, found %v; want %q, %v", c.typed, got, l.NeedsFound(), c.marks, c.found)
		}
	}
}
