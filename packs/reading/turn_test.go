package reading

import (
	"strings"
	"testing"

	"matchmark/packs/units"
)

// A screw is counted in turns and their shares, a nut in flats, a ring in notches:
// common practice, no source.
func TestTurnsFlatsNotches(t *testing.T) {
	for typed, paper := range map[string]string{
		"1/4 +/- 1/12 turn":         "1/4 ± 1/12 turn",
		"2 to 4 turns":              "2 – 4 turns",
		"as found +/- 1/12 turn":    "as found ± 1/12 turn",
		"as found +/- 0 notches":    "as found ± 0 notches",
		"exactly 9 notches":         "exactly 9 notches",
		"at least 2 flats":          "at least 2 flats",
		"record to 1/12 turn":       "record",
		"2-1/2 turns +/- 1/12 turn": "2-1/2 ± 1/12 turn",
	} {
		l := limit(t, typed)
		words := strings.ReplaceAll(English(l.Words().Main[0], "▢"), "\u00a0", " ")
		if words != paper {
			t.Errorf("%s prints %q, want %q", typed, words, paper)
		}
		again := limit(t, l.Text())
		if again.Text() != l.Text() {
			t.Errorf("%s is told as %s, which reads as %s", typed, l.Text(), again.Text())
		}
	}
	for typed, help := range map[string]string{
		"at most 1/2 flat":      "1/4 +/- 1/12 turn",
		"at least 1.5 notches":  "exactly 8 notches",
		"record to 1/2 notch":   "exactly 8 notches",
		"2 to 4 turns (2 mm)":   "",
		"2 flats to 1/3 turn":   "",
		"exactly 1/2 turn":      "",
		"as found +/- 0 turns":  "",
		"1/4 turn":              "1/4 +/- 1/4 turn",
		"exactly 8":             "exactly 8 pcs",
		"60° to 1/4 turn":       "",
		"at most 0.1 of a turn": "",
	} {
		l, fault := Parse(typed)
		if fault == nil {
			t.Errorf("%s was read as %s", typed, l.Text())
			continue
		}
		if help != "" && !strings.Contains(strings.Join(fault.Help, "|"), help) {
			t.Errorf("%s: %s; help %q lacks %q", typed, fault.Message, fault.Help, help)
		}
		checkTone(t, typed, fault)
	}
}

// A box for twelfths has the denominator printed, one for whole notches no point.
func TestBoxesOfTurns(t *testing.T) {
	box, err := BoxFor([]*Limit{limit(t, "record to 1/12 turn")}, Hint{High: ptr(size(t, "9 turns"))})
	if err != nil || box.Form != Fraction || box.Denominator != 12 || box.Unit != units.Turn || box.Before != 1 {
		t.Errorf("record to 1/12 turn has the box %+v (%v)", box, err)
	}
	box, err = BoxFor([]*Limit{limit(t, "as found +/- 0 notches")}, Hint{Nominal: ptr(size(t, "24 notches"))})
	if err != nil || box.Form != Digits || box.After != 0 || box.Before != 2 {
		t.Errorf("notches have the box %+v (%v)", box, err)
	}
}

func ptr(q units.Quantity) *units.Quantity { return &q }

// A share of a turn judges as an angle does: 5/12 turn is 150°, geometry.
func TestTurnsAreJudged(t *testing.T) {
	l := limit(t, "at most 5/12 turn")
	for typed, want := range map[string]bool{"5/12 turn": true, "150°": true, "151°": false, "1/2 turn": false} {
		v := l.Judge([]*units.Quantity{ptr(size(t, typed))}, Env{})
		if (v.Verdict == In) != want {
			t.Errorf("%s against %s: %+v", typed, l.Text(), v)
		}
	}
}

// Turns of a screw as travel, by its lead: 2-1/2 turns of M36x4 are 10 mm (geometry).
func TestTravelByTurns(t *testing.T) {
	v, fault := ParseFormula("4 mm per turn of D3")
	if fault != nil {
		t.Fatal(fault.Message)
	}
	turned := Env{Readings: func(Mark) []*units.Quantity { return []*units.Quantity{ptr(size(t, "2-1/2 turns"))} }}
	got, err := v.Work(turned)
	if err != nil || got.Text() != "10 mm" {
		t.Errorf("%s of 2-1/2 turns is %s (%v), want 10 mm", v.Text(), got.Text(), err)
	}
	if v.Text() != "4 mm per turn of D3" {
		t.Errorf("reads back as %s", v.Text())
	}
}
