package reading

import (
	"strings"
	"testing"
)

// mistakes are what people type, the place that is marked, and what they read.
// Empty fields are not looked at.
var mistakes = []struct{ typed, marked, code, message, help string }{
	// the ten likeliest
	{"0.05 - 0.12 mm", "0.05 - 0.12 mm", "dash", `a dash between two sizes can mean "to" or "less": for limits write 0.05 to 0.12 mm`, "0.05 to 0.12 mm"},
	{"0.05-0.12 mm", "0.05-0.12 mm", "dash", `a dash between two sizes can mean "to" or "less": for limits write 0.05 to 0.12 mm`, "0.05 to 0.12 mm"},
	{"0.05–0.12 mm", "0.05–0.12 mm", "dash", `a dash between two sizes can mean "to" or "less": for limits write 0.05 to 0.12 mm`, "0.05 to 0.12 mm"},
	{"mean 1.10 - 1.40 mm", "1.10 - 1.40 mm", "dash", "", "mean 1.10 to 1.40 mm"},
	{"0,05 to 0,12 mm", "0,05", "decimal-comma", "decimal comma: write 0.05 to 0.12 mm", "0.05 to 0.12 mm"},
	{"D5 as found - D4 +/- 0.03 mm", "as found", "unknown-word", `"as found" cannot stand behind the mark of a reading: D5 alone names it`, "D5 - D4 +/- 0.03 mm"},
	{"as found - change of D11 +/- 0.05 mm", "change of D11", "unknown-word", `"change of D11": what came out and what goes in are two readings, each with a mark of its own`, "as found - D12 + D11 +/- 0.05 mm"},
	{"D5 as left +/- 0.03 mm", "as left", "unknown-word", "", "D5 +/- 0.03 mm"},
	{">= 4.0 mm", ">=", "unknown-word", `">=" is not a word of limits: write at least 4.0 mm`, "at least 4.0 mm"},
	{"<= 0.15 mm", "<=", "unknown-word", `"<=" is not a word of limits: write at most 0.15 mm`, "at most 0.15 mm"},
	{"≤ 0.15 mm", "≤", "unknown-word", "", "at most 0.15 mm"},
	{"12.5", "12.5", "no-unit", "12.5 alone is no limit: it has no unit, and does not say how near", "for example 12.5 +/- 0.1 mm"},
	{"0.05 to 0.12", "0.05 to 0.12", "no-unit", "no unit: 0.05 to 0.12 what? Write the unit once, at the end: 0.05 to 0.12 mm", "0.05 to 0.12 mm"},
	{"12.5 mm", "12.5 mm", "no-tolerance", "12.5 mm alone is no limit: add +/- 0.1 mm, or at least / at most, or about 12.5 mm if the source gives no tolerance", "12.5 +/- 0.1 mm"},
	{"0.12 to 0.05 mm", "0.12 to 0.05 mm", "limit-order", "the smaller limit comes first: 0.05 to 0.12 mm", "0.05 to 0.12 mm"},
	{"same as found", "same as found", "how-near", "as found: how near? Write as found +/- 0.10 mm (or about as found)", "as found +/- 0.10 mm"},
	{"D3 - 0.5 mm", "D3 - 0.5 mm", "no-tolerance", "", "D3 - 0.5 mm +/- 0.1 mm"},
	{"D1-D2 +/- 0.02 mm", "D1-D2", "blanks", "a blank on both sides of the minus: D1 - D2 (D1-D2 could be a name)", "D1 - D2 +/- 0.02 mm"},
	{"D1 -D2 +/- 0.02 mm", "D1 -D2", "blanks", "", "D1 - D2 +/- 0.02 mm"},
	{"D1 +0.2 mm", "D1 +0.2", "blanks", "", "D1 + 0.2 mm"},
	{"0.30 mm (0.12 in)", "(0.12 in)", "dual", "0.30 mm is 0.012 in, not 0.12 in: a factor of 10", "(0.012 in)"},
	{"at most 134 C rise (273.2 F)", "(273.2 F)", "rise", "134 C rise is 241.2 F rise, not 273.2 °F: a rise is a difference, no 32 is added", "(241.2 F rise)"},
	{"at most 60 C (108 F rise)", "(108 F rise)", "rise", "", ""},
	// also wanted
	{"0.05 to 0.12 mm and 0.02 to 0.03 in", "0.02 to 0.03 in", "two-units", "two units in one limit: mm and in; the second goes in brackets", ""},
	{"0.05 mm to 0.12 in", "0.05 mm to 0.12 in", "two-units", "", ""},
	{"12.5 +/- 0.10 mm", "12.5 +/- 0.10 mm", "decimals", "12.5 and 0.10: decimals differ, the box takes two", "12.50 +/- 0.10 mm"},
	{"45 -0.025/-0.050 mm", "", "decimals", "", "45.000 -0.025/-0.050 mm"},
	{"1/2 +/- 0.01 in", "", "mixed-forms", "", ""},
	// words
	{"atleast 4.0 mm", "atleast", "unknown-word", `"atleast" is not known here`, "at least 4.0 mm"},
	{"at lest 4.0 mm", "at lest", "unknown-word", "", "at least 4.0 mm"},
	{"at-most 4.0 mm", "at-most", "unknown-word", "", "at most 4.0 mm"},
	{"abuot 4.0 mm", "abuot", "unknown-word", "", "about 4.0 mm"},
	{"as-found +/- 0.10 mm", "as-found", "unknown-word", "", "as found +/- 0.10 mm"},
	{"12.5 +- 0.1 mm", "+-", "unknown-word", "", "12.5 +/- 0.1 mm"},
	{"12.5 +/ - 0.1 mm", "+/ -", "unknown-word", "", "12.5 +/- 0.1 mm"},
	{"4.0 mm min", "4.0 mm min", "word-order", "the word comes first: at least 4.0 mm", "at least 4.0 mm"},
	{"0.15 mm max", "0.15 mm max", "word-order", "", "at most 0.15 mm"},
	{"between 0.05 and 0.12 mm", "between", "unknown-word", "", "0.05 to 0.12 mm"},
	{"maximum 0.15 mm", "maximum", "unknown-word", "", "at most 0.15 mm"},
	{"Ø12.5 +/- 0.1 mm", "Ø", "unknown-word", "", "12.5 +/- 0.1 mm"},
	{"12.5 +/- 0.1 millimeter", "millimeter", "unknown-unit", `"millimeter" is not a unit known here: write mm`, "12.5 +/- 0.1 mm"},
	{"12.5 +/- 0.1 \"", "\"", "unknown-unit", "", "12.5 +/- 0.1 in"},
	{"at most 3 ton", "ton", "unknown-unit", "", "at most 3 t"},
	{"12.5 +/- 0.1 mmm", "mmm", "unknown-word", "", "12.5 +/- 0.1 mm"},
	{"banana", "banana", "unknown-word", "", ""},
	// a feeler that goes in, or does not
	{"0.02 mm feeler must not go in", "0.02 mm feeler must not go in", "unknown-word", "whether a feeler goes in is to be seen, not to be read: a tick for yes and one for no", "must be tight to the 0.02 mm feeler"},
	{"no 0.002 in leaf goes in", "", "unknown-word", "", "must be tight to the 0.002 in feeler"},
	{"feeler does not enter", "", "unknown-word", "", "must be tight to the … feeler"},
	{"0.05 mm feeler must go in", "", "unknown-word", "that a feeler goes in is a size: at least 0.05 mm", "at least 0.05 mm"},
	{"0.00 to 0.00 mm", "0.00 to 0.00 mm", "same-limits", "", "at most 0.00 mm"},
	{"0.10 to 0.10 mm", "0.10 to 0.10 mm", "same-limits", "", "about 0.10 mm"},
	// marks
	{"d7 +/- 0.1 mm", "d7", "mark", "the mark of a reading has a capital: D7", "D7 +/- 0.1 mm"},
	{"D07 +/- 0.1 mm", "D07", "mark", "", ""},
	{"D7a +/- 0.1 mm", "D7a", "mark", "", ""},
	{"mean of +/- 0.1 mm", "+/-", "", "", ""},
	// tolerances
	{"80.00 +0.02 mm", "+0.02 mm", "one-deviation", "", "80.00 +0.02/-0.00 mm"},
	{"80.00 -0.02/+0.00 mm", "-0.02/+0.00", "tolerance", "the larger deviation comes first: +0.00/-0.02", "80.00 +0.00/-0.02 mm"},
	{"80.00 +0.02/0.00 mm", "+0.02/0.00", "tolerance", "", ""},
	{"12.5 +/- 0 mm", "", "tolerance", "", ""},
	{"12.5 +/- -0.1 mm", "", "tolerance", "", ""},
	{"0.1 +/- 12.5 mm", "0.1 +/- 12.5 mm", "tolerance-size", "the tolerance 12.5 mm is larger than the size 0.1 mm: turned round?", "12.5 +/- 0.1 mm"},
	{"0.02 +80.00/-0.00 mm", "", "tolerance-size", "", ""},
	{"0.05 to 0.05 mm", "0.05 to 0.05 mm", "same-limits", "", ""},
	{"at least 4.0 to 5.0 mm", "to", "two-rules", "", ""},
	{"at most 12.5 +/- 0.1 mm", "+/- 0.1 mm", "two-rules", "", ""},
	// brackets
	{"0.30 mm (0.012 in) to 0.40 mm (0.016 in)", "(0.012 in)", "brackets", "", "0.30 to 0.40 mm (0.012 to 0.016 in)"},
	{"0.30 to 0.40 mm (0.012 in)", "", "brackets", "", ""},
	{"0.30 to 0.40 mm (300 to 400 N)", "(300 to 400 N)", "brackets", "", "0.30 to 0.40 mm"},
	{"0.30 to 0.40 mm (0.30 to 0.40 mm)", "", "brackets", "", ""},
	{"0.30 to 0.40 mm (0.011 to 0.016 in)", "(0.011 to 0.016 in)", "dual", "0.30 mm is 0.012 in, not 0.011 in", ""},
	{"half of (D1 - D2 +/- 0.1 mm", "", "", "", ""},
	// the rest
	{"spread at most 10 °C", "", "rise", "a spread is a difference, °C a temperature: write C rise", "spread at most 10 C rise"},
	{"exactly 8 mm", "", "exactly", "", "exactly 8 pcs"},
	{"8 pcs", "", "no-tolerance", "", "exactly 8 pcs"},
	{"0.5 to 1.5 pcs", "", "pieces", "", ""},
	{"at least 4.0 mm, at most 5.0 mm", ",", "comma", "", "at least 4.0 mm and at most 5.0 mm"},
	{"must be free, dry", ",", "sign", "", "must be free and dry"},
	{"at most 0.15 mm # hot", "#", "sign", "", "at most 0.15 mm"},
	{"012 to 13 mm", "012", "leading-zero", "", "12 to 13 mm"},
	{"1e3 to 2e3 mm", "1e3", "power", "", ""},
	{"1_000 to 2_000 mm", "1_000", "marks-in-number", "", ""},
	{"record to 0 mm", "", "record", "", ""},
	{"record to 0.01", "", "no-unit", "", ""},
	{"choose A", "", "choose", "", "choose A or B"},
	{"choose A or A", "", "choose", "", ""},
	{"must be", "", "phrase", "", "must be free"},
	{"", "", "empty", "", ""},
	{"at least", "", "unfinished", "", ""},
	{"at most 0.5 mm per of D4", "", "per", "", ""},
	{"at most 0.5 mm per m", "", "per", "", ""},
	{"at most 1 mm per 60 mm of D4", "1 mm per 60", "per", "1 mm per 60: a rate is written for one unit, so divide it: 1 mm per 50 mm is 0.02 mm per mm", "at most 0.02 mm per mm of D4"},
	{"0.05 to 0.12 mm bolt", "bolt", "unknown-word", "", ""},
}

func TestMistakesAreExplained(t *testing.T) {
	for _, c := range mistakes {
		l, f := Parse(c.typed)
		if f == nil {
			t.Errorf("%q was read as %q", c.typed, l.Text())
			continue
		}
		runes := []rune(c.typed)
		if f.Offset < 0 || f.Width < 0 || f.Offset+f.Width > len(runes) {
			t.Errorf("%q: place %d+%d outside", c.typed, f.Offset, f.Width)
			continue
		}
		if marked := string(runes[f.Offset : f.Offset+f.Width]); c.marked != "" && marked != c.marked {
			t.Errorf("%q: marked %q, want %q (%s)", c.typed, marked, c.marked, f.Message)
		}
		if c.code != "" && f.Code != c.code {
			t.Errorf("%q: %s (%s), want %s", c.typed, f.Code, f.Message, c.code)
		}
		if c.message != "" && f.Message != c.message {
			t.Errorf("%q:\n got %q\nwant %q", c.typed, f.Message, c.message)
		}
		if c.help != "" && (len(f.Help) == 0 || f.Help[0] != c.help) {
			t.Errorf("%q: help %q, want first %q", c.typed, f.Help, c.help)
		}
		checkTone(t, c.typed, f)
	}
}

// checkTone keeps messages in the trade's words, and short on help.
func checkTone(t *testing.T, typed string, f *Fault) {
	t.Helper()
	if f.Message == "" || len(f.Help) == 0 || len(f.Help) > 3 || f.Code == "" {
		t.Errorf("%q: message %q, code %q, help %q", typed, f.Message, f.Code, f.Help)
	}
	for _, word := range []string{"invalid", "failed to", "parse", "token", "float", "string", "sorry"} {
		if strings.Contains(f.Message, word) {
			t.Errorf("%q: %q says %q", typed, f.Message, word)
		}
	}
	if strings.HasSuffix(f.Message, ".") {
		t.Errorf("%q: full stop behind %q", typed, f.Message)
	}
}

// Where one word or number is at fault, the first line of help reads as a limit.
func TestHelpIsRight(t *testing.T) {
	for _, c := range mistakes {
		_, f := Parse(c.typed)
		if f == nil || c.help == "" || strings.HasPrefix(c.help, "(") || f.Code == "no-unit" || f.Code == "blanks" {
			continue // no-unit and blanks put one thing right where two can be wrong
		}
		if _, again := Parse(f.Help[0]); again != nil {
			t.Errorf("%q: help %q: %s", c.typed, f.Help[0], again.Message)
		}
	}
}
