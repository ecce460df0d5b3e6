package outage

import (
	"testing"

	"matchmark/packs/job"
	"matchmark/packs/units"
)

// TestDue: days are counted by hand on a calendar; common practice, no source.
func TestDue(t *testing.T) {
	hours := func(s string) *units.Number {
		if s == "" {
			return nil
		}
		n, err := units.ParseNumber(s)
		if err != nil {
			t.Fatal(err)
		}
		return &n
	}
	for _, c := range []struct {
		starts     string
		aDay       int
		one, two   string
		want, sort string
	}{
		{"2026-02-27", 10, "4", "6", "2026-02-27", "02026-02-27"},             // the tenth hour is on the first day
		{"2026-02-27", 10, "4", "6.5", "2026-02-28", "02026-02-28"},           // half an hour of the second
		{"2026-02-27", 10, "10", "10.5", "2026-03-01", "02026-03-01"},         // over the end of the month
		{"2026-02-27", 24, "30", "30", "2026-03-01", "02026-03-01"},           // 60 h round the clock
		{"2026-02-27", 10, "", "6.5", "2026-02-27 or later", "02026-02-27"},   // a step before has no hours
		{"2026-02-27", 0, "4", "6.5", "at 10.5 h", "1" + "00000010.500"},      // no length of a day
		{"", 10, "4", "6", "at 10 h", "1" + "00000010.000"},                   // no start
		{"", 0, "", "6", "at 6 h or later", "1" + "00000006.000"},             //
		{"", 0, "", "", "no hours planned", "2"},                              //
		{"2026-02-27", 10, "", "", "2026-02-27 or later", "0" + "2026-02-27"}, //
	} {
		hold := &job.Hold{Mark: "W1"}
		first, second := &job.Step{Hours: hours(c.one)}, &job.Step{Hours: hours(c.two)}
		hold.Step = second
		j := &job.Job{Order: job.Order{Starts: c.starts, HoursADay: c.aDay}, Sections: []*job.Section{{Steps: []*job.Step{first, second, {Hours: hours("50")}}}}}
		if n := due(j, hold); n.By != c.want || n.order != c.sort {
			t.Errorf("%+v: %q, %q", c, n.By, n.order)
		}
	}
	if n := due(&job.Job{}, &job.Hold{}); n.By != "no hours planned" {
		t.Errorf("a hold at no step: %q", n.By)
	}
}
