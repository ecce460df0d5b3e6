package reading

import (
	"strings"
	"testing"
)

func TestConditions(t *testing.T) {
	for _, c := range []struct{ typed, paper, marks string }{
		{"does the rotor turn by hand?", "does the rotor turn by hand?", ""},
		{"D3 is over 0.50 mm", "D3 is over 0.50 mm", "D3"},
		{"D3/DE is under D4 - 0.10 mm", "D3/DE is under worked out", "D3/DE D4"},
		{"D7 is in limits", "D7 is in limits", "D7"},
		{"D7 is out of limits", "D7 is out of limits", "D7"},
		{"D5 is flush or below", "D5 is flush or below", "D5"},
	} {
		got, fault := ParseCondition(c.typed)
		if fault != nil {
			t.Errorf("%q: %s", c.typed, fault.Message)
			continue
		}
		if got.Text() != c.typed {
			t.Errorf("%q prints back %q", c.typed, got.Text())
		}
		if paper := strings.ReplaceAll(English(got.Words(), "▢"), "\u00a0", " "); paper != c.paper || joinMarks(got.Marks(), " ") != c.marks {
			t.Errorf("%q: %q, marks %q; want %q, %q", c.typed, paper, got.Marks(), c.paper, c.marks)
		}
	}
	for _, c := range []struct{ typed, code, help string }{
		{"", "empty", ""},
		{"?", "condition", ""},
		{"the gap is small", "condition", "for example D3 is over 0.50 mm"},
		{"D3 over 0.50 mm", "condition", ""},
		{"D3 is over 0.50", "no-unit", "D3 is over 0.50 mm"},
		{"D3 is 0.50 mm", "condition", "D3 is over 0.50 mm"},
		{"D3 is more than 0.50 mm", "condition", "D3 is over 0.50 mm"},
		{"D3 is > 0.50 mm", "condition", "D3 is over 0.50 mm"},
		{"D3 is below 0.50 mm", "condition", "D3 is under 0.50 mm"},
		{"D3 is ok", "condition", "D3 is in limits"},
		{"D3 is in limits now", "unknown-word", ""},
		{"D3 is", "phrase", ""},
		{"D3 is over 0,50 mm", "decimal-comma", "D3 is over 0.50 mm"},
	} {
		got, fault := ParseCondition(c.typed)
		if fault == nil {
			t.Errorf("%q was read as %q", c.typed, got.Text())
			continue
		}
		if fault.Code != c.code || c.help != "" && fault.Help[0] != c.help {
			t.Errorf("%q: %s (%s), help %q; want %s, %q", c.typed, fault.Code, fault.Message, fault.Help, c.code, c.help)
		}
		checkTone(t, c.typed, fault)
	}
}

func TestStages(t *testing.T) {
	for typed, paper := range map[string]string{
		"30 N·m": "30 N·m", "30 to 35 N·m": "30 – 35 N·m", "20 to 25 lb-ft": "20 – 25 lb-ft", "by hand": "by hand", "slacken all": "slacken all",
		"back off 15°": "back off 15°", "turn 60°": "turn 60°", "again after 24 h": "again after 24 h", "600 bar": "600 bar", "210 kN": "210 kN", "90 +/- 10 lb-ft": "90 ± 10 lb-ft",
		"70 %": "70 %", "20 to 30 %": "20 – 30 %", "last round": "last round, until no nut moves", "again after running": "again after running",
	} {
		s, fault := ParseStage(typed)
		if fault != nil {
			t.Errorf("%q: %s", typed, fault.Message)
			continue
		}
		if got := strings.ReplaceAll(English(s.Words(), "▢"), "\u00a0", " "); s.Text() != typed || got != paper {
			t.Errorf("%q prints back %q, on paper %q; want %q", typed, s.Text(), got, paper)
		}
	}
	// A full turn is 360° (common practice, no source).
	for typed, paper := range map[string]string{"back off 1/6 turn": "back off 60°", "turn 1 1/4 turns": "turn 450°"} {
		if s, fault := ParseStage(typed); fault != nil || strings.ReplaceAll(English(s.Words(), "▢"), "\u00a0", " ") != paper {
			t.Errorf("%q is not %s on paper: %+v", typed, paper, fault)
		}
	}
	for _, c := range []struct{ typed, code, help string }{
		{"30", "no-unit", "for example 30 N·m, or 30 lb-ft"},
		{"back off 1/7 turn", "stage", "back off 15°"},
		{"10 +/- 90 lb-ft", "tolerance-size", "90 +/- 10 lb-ft"},
		{"90 +10/-5 lb-ft", "tolerance", "80 to 95 N·m"},
		{"90 N·m +/- 10 lb-ft", "two-units", ""},
		{"90.5 +/- 10 lb-ft", "decimals", "90 +/- 10 lb-ft"},
		{"200 lb-ft while it turns", "unknown-word", "write it into pattern: or do:, as pattern: while it turns"},
		{"30 kg", "stage", "30 N·m"},
		{"60°", "stage", "turn 60°"},
		{"turn 60", "no-unit", "turn 60°"},
		{"turn 60 mm", "stage", "turn 60°"},
		{"turn 0°", "stage", ""},
		{"0 N·m", "stage", ""},
		{"35 to 30 N·m", "limit-order", "30 to 35 N·m"},
		{"30 to 35.5 N·m", "decimals", ""},
		{"30-35 N·m", "dash", "30 to 35 N·m"},
		{"slaken all", "unknown-word", "slacken all"},
		{"backoff 15°", "unknown-word", "back off 15°"},
		{"tighten well", "unknown-word", ""},
		{"again after 24", "no-unit", "again after 24 h"},
		{"", "empty", ""},
		{"30 N·m then", "unknown-word", ""},
		{"30 ft-lb", "unknown-unit", "30 lb-ft"},
	} {
		s, fault := ParseStage(c.typed)
		if fault == nil {
			t.Errorf("%q was read as %q", c.typed, s.Text())
			continue
		}
		if fault.Code != c.code || c.help != "" && fault.Help[0] != c.help {
			t.Errorf("%q: %s (%s), help %q; want %s, %q", c.typed, fault.Code, fault.Message, fault.Help, c.code, c.help)
		}
		checkTone(t, c.typed, fault)
	}
}
