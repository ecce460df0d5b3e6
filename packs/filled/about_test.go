package filled_test

import (
	"strings"
	"testing"

	"matchmark/packs/filled"
)

// TestOfAnotherJob: that a file is of another job or revision, and that nobody is named who
// typed it, is told whatever else is said of it. One value without a box, which a file of
// another job nearly always has, kept all of that silent, and its values were taken.
func TestOfAnotherJob(t *testing.T) {
	jb := stormPump(t)
	for _, row := range []string{"D999,,found,2.35 mm,\n", "D4,,found,2.3 mm,\n", "D4,,found,2.35 mm,\nD4,,found,2.35 mm,\n"} {
		for _, x := range []struct{ code, head string }{
			{"other-job", head + "job,,,WO-9999,\n"},
			{"other-revision", head + "revision,,,Z,\n"},
			{"other-pack", head + "pack,,,00000000,\n"},
		} {
			var told []string
			for _, p := range filled.Read("x.csv", []byte(x.head+row), jb).Told {
				told = append(told, p.Code)
			}
			if len(told) < 2 || !strings.Contains(strings.Join(told, " "), x.code) {
				t.Errorf("a file with %q tells %v, want %s among them", row, told, x.code)
			}
		}
	}
	// Behind a quote mark that stands alone nothing is read: what is missing is not told.
	for _, p := range filled.Read("x.csv", []byte("mark,position,side,value\nD4,,\"found,2.35 mm\n"), jb).Told {
		if p.Code == "typed-by" {
			t.Errorf("told of a file that is not read to its end: %s", p.Message)
		}
	}
}

// TestEarlierIsEarlier: of the files that are given as earlier outages those count that were
// typed no later than the readings of this one; wear came out with the wrong sign. Two outages
// may be typed on one day, of which the earlier was lost; a file is not earlier than itself.
func TestEarlierIsEarlier(t *testing.T) {
	jb := stormPump(t)
	on := func(name, day, value string) *filled.File {
		rows := "mark,position,side,value\ntyped by,,,A. Penn\ntyped on,,," + day + "\nD4,,left," + value + "\n"
		return filled.Read(name, []byte(rows), jb)
	}
	d4 := dim(t, jb, "D4")
	for _, x := range []struct{ now, last, told string }{
		{"2026-03-14", "2.50 mm", "later.csv"},
		{"2026-03-13", "2.40 mm", "later.csv same.csv"},
		{"2027-03-15", "2.60 mm", ""},
		{"2020-01-01", "", "first.csv later.csv same.csv"},
		{"", "2.60 mm", ""},
	} {
		h := filled.NewHistory(jb, []*filled.File{on("later.csv", "2027-03-14", "2.60 mm"), on("same.csv", "2026-03-14", "2.50 mm"), on("first.csv", "2024-03-14", "2.40 mm")})
		now := &filled.Values{}
		if x.now != "" {
			now, _ = filled.Merge([]*filled.File{on("now.csv", x.now, "2.70 mm")})
		}
		h, told := h.Before(now)
		told.Sort()
		var files []string
		for _, p := range told {
			if files = append(files, p.Pos.File); p.Code != "not-earlier" || p.Pos.Line != 3 {
				t.Errorf("%s is told as [%s] in line %d", p.Pos.File, p.Code, p.Pos.Line)
			}
		}
		text := ""
		if b, there := h.Last(d4); there {
			text = b.Readings[0].Text()
		}
		if got := strings.Join(files, " "); text != x.last || got != x.told {
			t.Errorf("before %q it was left at %q last, want %q; left out %q, want %q", x.now, text, x.last, got, x.told)
		}
	}
	own := on("last.csv", "2026-03-14", "2.50 mm")
	now, _ := filled.Merge([]*filled.File{own})
	if h, told := filled.NewHistory(jb, []*filled.File{own}).Before(now); h != nil || len(told) != 1 || told[0].Code != "not-earlier" || told[0].Pos.File != "last.csv" {
		t.Errorf("its own file as an earlier outage: %v, told %v", h, told)
	}
}
