package reading

import "testing"

func TestCheckReuse(t *testing.T) {
	for _, c := range []struct{ left, reuse, message string }{
		{"0.05 to 0.12 mm", "at most 0.20 mm", ""},
		{"0.05 to 0.12 mm", "at most 0.12 mm", ""},
		{"at least 59.5 mm", "at least 58.0 mm", ""},
		{"62.0 +/- 0.8 mm", "at least 59.5 mm", ""},
		{"0.05 to 0.12 mm", "0.04 to 0.20 mm", ""},
		{"0.05 to 0.12 mm", "at most 0.008 in", ""}, // 0.2032 mm
		{"as found +/- 0.10 mm", "at most 0.20 mm", ""},
		{"mean 0.05 to 0.12 mm", "each at most 0.10 mm", ""},
		{"0.05 to 0.12 mm", "at most 0.10 mm", "worn limit 0.10 mm is inside the limits for new parts 0.05 to 0.12 mm: wrong side or a slipped decimal"},
		{"0.05 to 0.12 mm", "at least 0.06 mm", "worn limit 0.06 mm is inside the limits for new parts 0.05 to 0.12 mm: wrong side or a slipped decimal"},
		{"0.05 to 0.12 mm", "at most 0.02 mm", "worn limit 0.02 mm is below all of the limits for new parts 0.05 to 0.12 mm: wrong side or a slipped decimal"},
		{"0.05 to 0.12 mm", "at least 0.20 mm", "worn limit 0.20 mm is above all of the limits for new parts 0.05 to 0.12 mm: wrong side or a slipped decimal"},
		{"at least 59.5 mm", "at most 58.0 mm", "worn limit 58.0 mm is below all of the limits for new parts at least 59.5 mm: wrong side or a slipped decimal"},
		{"0.05 to 0.12 mm", "at most 5 N", "worn limit in N, limits for new parts in mm"},
	} {
		f := CheckReuse(limit(t, c.left), limit(t, c.reuse))
		got := ""
		if f != nil {
			got = f.Message
			checkTone(t, c.reuse, f)
			if f.Offset+f.Width > len([]rune(c.reuse)) {
				t.Errorf("%q: place %d+%d outside", c.reuse, f.Offset, f.Width)
			}
		}
		if got != c.message {
			t.Errorf("new %q, worn %q:\n got %q\nwant %q", c.left, c.reuse, got, c.message)
		}
	}
}

// "The limits for new parts at most 120.10 mm" was said of what old parts may be.
func TestCheckRepair(t *testing.T) {
	for _, c := range []struct{ left, reuse, repair, message string }{
		{"120.00 to 120.04 mm", "at most 120.10 mm", "at most 120.50 mm", ""},
		{"120.00 to 120.04 mm", "", "at most 120.50 mm", ""},
		{"", "at most 120.10 mm", "at most 120.10 mm", ""},
		{"120.00 to 120.04 mm", "at most 120.10 mm", "at most 120.06 mm", "repair limit 120.06 mm is inside the limits for old parts at most 120.10 mm: wrong side or a slipped decimal"},
		{"", "at most 120.10 mm", "at least 120.50 mm", "repair limit 120.50 mm is above all of the limits for old parts at most 120.10 mm: wrong side or a slipped decimal"},
		{"120.00 to 120.04 mm", "at most 120.10 mm", "at most 120.02 mm", "repair limit 120.02 mm is inside the limits for new parts 120.00 to 120.04 mm: wrong side or a slipped decimal"},
		{"", "at most 120.10 mm", "at most 5 N", "repair limit in N, limits for old parts in mm"},
	} {
		of := func(text string) *Limit {
			if text == "" {
				return nil
			}
			return limit(t, text)
		}
		got := ""
		if f := CheckRepair(of(c.left), of(c.reuse), of(c.repair)); f != nil {
			got = f.Message
			checkTone(t, c.repair, f)
		}
		if got != c.message {
			t.Errorf("new %q, old %q, mended %q:\n got %q\nwant %q", c.left, c.reuse, c.repair, got, c.message)
		}
	}
}

func TestCheckSame(t *testing.T) {
	for _, c := range []struct {
		left, found string
		bad         bool
	}{
		{"as found", "", true}, {"as found", "record to 0.01 mm", true}, {"as found", "choose A or B", false}, {"as found", "words", false},
		{"as found +/- 0.10 mm", "", false},
	} {
		var found *Limit
		if c.found != "" {
			found = limit(t, c.found)
		}
		if f := CheckSame(limit(t, c.left), found); (f != nil) != c.bad || f != nil && f.Code != "how-near" {
			t.Errorf("left %q, found %q: %+v, want a fault: %v", c.left, c.found, f, c.bad)
		}
	}
}

func TestCheckBoxes(t *testing.T) {
	l := limit(t, "0.05 to 0.12 mm and spread at most 0.02 mm")
	if f := CheckBoxes(l, 1); f == nil || f.Message != `"spread" of a reading with one box` || f.Offset != 20 || f.Width != 22 {
		t.Errorf("spread of one box: %+v", f)
	}
	if f := CheckBoxes(l, 2); f != nil {
		t.Errorf("spread of two boxes: %s", f.Message)
	}
}

func TestCheckRise(t *testing.T) {
	if f := CheckRise(limit(t, "60 to 80 C rise")); f != nil {
		t.Errorf("60 to 80 C rise: %s", f.Message)
	}
	for typed, want := range map[string]string{
		"at most 60 C":    "60 °C is a temperature; over the other part it is 60 C rise",
		"at most 5.0 mm":  "at most 5.0 mm is no rise of temperature",
		"at least 140 °F": "140 °F is a temperature; over the other part it is 140 F rise",
	} {
		if f := CheckRise(limit(t, typed)); f == nil || f.Message != want {
			t.Errorf("%q: %+v, want %q", typed, f, want)
		}
	}
}
