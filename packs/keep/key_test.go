package keep

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/job"
)

// A key holds capitals, figures and single blanks, whatever the numbers of other systems
// hold, and no revision: a letter more would change the key of every tag that hangs.
func TestKeys(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ machine, number, mark, begins string }{
		{"P-03", "WO-2408", "C8/NDE-DIS", "P03 WO2408 C8 NDEDIS "},
		{"Ø12/5", "ß", "C1", "125 0 C1 "},
		{"p-03", "wo-2408", "C4/s", "P03 WO2408 C4 S "},
		{"НС-2", "7", "B1/DE", "2 7 B1 DE "},
	} {
		got := Key(c.machine, c.number, c.mark)
		if !strings.HasPrefix(got, c.begins) || len(got) != len(c.begins)+keyLetters {
			t.Errorf("%s, %s, %s: %q, want %q and check letters", c.machine, c.number, c.mark, got, c.begins)
		}
	}
	long := Key("P-03", "MAINT-2026-000123456", "C2")
	if fields := strings.Fields(long); len(fields[1]) != 8 || !strings.HasSuffix(fields[1], "123456") {
		t.Errorf("a long number: %q", long)
	}
	// A sister machine under the same job, and the same machine under another.
	a, b, c := Key("P-03", "WO-1", "C2"), Key("P-04", "WO-1", "C2"), Key("P-03", "WO-2", "C2")
	if a == b || a == c || b == c {
		t.Errorf("the keys %q, %q and %q are not all different", a, b, c)
	}
}

// What folds alike is told apart by the check letters: P-03 and P03, s and S.
func TestFoldedAlikeIsToldApart(t *testing.T) {
	t.Parallel()
	for _, two := range [][2][3]string{
		{{"P-03", "WO-1", "C2"}, {"P03", "WO-1", "C2"}},
		{{"P-03", "WO-1", "C2"}, {"P-03", "WO1", "C2"}},
		{{"P-03", "WO-1", "C2/s"}, {"P-03", "WO-1", "C2/S"}},
		{{"Ø12", "WO-1", "C2"}, {"12", "WO-1", "C2"}},
		{{"P-03", "2025-000123456", "C2"}, {"P-03", "2026-000123456", "C2"}},
	} {
		a, b := Key(two[0][0], two[0][1], two[0][2]), Key(two[1][0], two[1][1], two[1][2])
		if a == b {
			t.Errorf("%v and %v have the key %q", two[0], two[1], a)
		}
	}
}

// Every key is made of signs that a scanner types, and its letters are on the same keys
// of English, German and French keyboards.
func TestKeysAreTyped(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		key := Key(rapid.String().Draw(t, "machine"), rapid.String().Draw(t, "number"), "C2/"+rapid.StringN(1, 10, 40).Draw(t, "place"))
		if strings.Trim(key, "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 ") != "" || strings.Contains(key, "  ") || key != strings.TrimSpace(key) {
			t.Fatalf("%q", key)
		}
		if check := key[len(key)-keyLetters:]; strings.ContainsAny(check, "AMQWYZ0123456789 ") {
			t.Fatalf("check letters %q", check)
		}
	})
}

// A scan is found whatever the keyboard, and what is not of this job is told.
func TestScanned(t *testing.T) {
	t.Parallel()
	bolt, hub := &job.Part{Key: "bolt", Name: "Bolt"}, &job.Part{Key: "hub", Name: "Hub"}
	st := &job.Step{No: "1.1"}
	j := &job.Job{Equipment: job.Equipment{Tag: "PY-03"}, Order: job.Order{Number: "WAZ-1"}}
	j.Containers = []*job.Container{
		{Mark: "C1", Base: "C1", Kind: "box", In: []*job.Move{{Part: bolt, N: 4, Step: st}}},
		{Mark: "C1/Y", Base: "C1", Kind: "box", Place: job.Place{Label: "Y"}, In: []*job.Move{{Part: hub, N: 1, Step: st}}},
		{Mark: "C1/Z", Base: "C1", Kind: "box", Place: job.Place{Label: "Z"}, In: []*job.Move{{Part: hub, N: 1, Step: st}}},
	}
	if ps := Tags(j, nil); len(ps) > 0 {
		t.Fatal(ps)
	}
	for _, tag := range j.Tags {
		for _, text := range []string{tag.Code, tag.Key, strings.ToLower(tag.Code), tag.Mark, keyboards[0].typed.Replace(tag.Code), keyboards[1].typed.Replace(tag.Code)} {
			got := Scanned(j, text)
			if got == nil || got.Tag != tag || got.Other || got.Changed {
				t.Errorf("%s typed %q: %+v", tag.Mark, text, got)
			}
		}
		// In the envelope of ISO/IEC 15434: as it is, with its separators lost, and with
		// other content; and what is struck into metal.
		whole := tag.Enveloped()
		for _, text := range []string{whole, strings.NewReplacer("\x1d", "", "\x1e", "", "\x04", "").Replace(whole), tag.Stamp()} {
			got := Scanned(j, text)
			if got == nil || got.Tag != tag || got.Other || got.Changed {
				t.Errorf("%s scanned as %q: %+v", tag.Mark, text, got)
			}
		}
		if got := Scanned(j, strings.Replace(whole, "\x1dZ"+tag.Content, "\x1dZBBB", 1)); got == nil || got.Tag != tag || !got.Changed {
			t.Errorf("%s in an envelope with other content: %+v", tag.Mark, got)
		}
		if got := Scanned(j, strings.TrimSuffix(tag.Stamp(), tag.Stamp()[len(tag.Stamp())-keyLetters:])+"BBBB"); got == nil || got.Tag != tag || !got.Other {
			t.Errorf("%s struck with the letters of another machine: %+v", tag.Mark, got)
		}
		if got := Scanned(j, tag.Key+" BBB"); got == nil || !got.Changed && tag.Content != "BBB" {
			t.Errorf("%s with other content: %+v", tag.Mark, got)
		}
		if got := Scanned(j, strings.Replace(tag.Code, "PY03", "PY04", 1)); got == nil || !got.Other || got.Tag != tag {
			t.Errorf("%s of a sister machine: %+v", tag.Mark, got)
		}
	}
	if got := Scanned(j, "C7"); got != nil {
		t.Errorf("C7 is %+v", got)
	}
}

// What a spreadsheet would run, count or date gets an apostrophe: step 3.10 came back as
// 3.1, job 00123 as 123, and a name that begins with = was run.
func TestCells(t *testing.T) {
	t.Parallel()
	for _, text := range []string{"3.10", "00123", "=1+1", "+4", "-3 mm", "@x", "\t=1", "3-4", "1/2", "MAR1", "1E5", "TRUE", "'x", "10 %", "2026-03-02", "|x"} {
		if got := Cell(text); got != "'"+text {
			t.Errorf("%q is written as %q", text, got)
		}
	}
	for _, text := range []string{"", "R6.2", "3.10; 3.11", "WO-0012", "C8/NDE", "8 Cover screw", "Märzbolzen", "P03 WO2408 C8"} {
		if got := Cell(text); got != text {
			t.Errorf("%q is written as %q", text, got)
		}
	}
}
