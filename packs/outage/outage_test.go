package outage

import (
	"bytes"
	"encoding/csv"
	"slices"
	"testing"

	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/packs/units"
)

// twoJobs are the summaries of two jobs that are printed, and of one that is not.
func twoJobs(t *testing.T) []Summary {
	t.Helper()
	hours := func(s string) units.Number {
		n, err := units.ParseNumber(s)
		if err != nil {
			t.Fatal(err)
		}
		return n
	}
	flame, entry := &job.Permit{What: "hot work"}, &job.Permit{What: "entry"}
	pull, puton := &job.Step{Permits: []*job.Permit{flame}}, &job.Step{Permits: []*job.Permit{flame, nil, entry}}
	fan := &job.Job{
		Language: "de", Equipment: job.Equipment{Tag: "FN-1", Name: "Fan"}, Hours: hours("10.5"), CrewHours: hours("21"),
		Order: job.Order{Number: "00123", Revision: "A", Title: "=Bearings", Issued: "2026-03-02"},
		Lifts: []*job.Lift{{Mark: "L1", What: "Rotor", Plan: lift.Plan{Crane: lift.Crane{Name: "3-4"}}}, {Mark: "L2", What: "Cover"}},
		Heats: []*job.Heat{{Mark: "H1", What: "Hub", PulledAt: pull, PutOnAt: puton}, {Mark: "H2", What: "Ring"}},
		Holds: []*job.Hold{{Mark: "W1", What: "Seats seen", Releases: "engineer"}},
	}
	pump := &job.Job{Language: "de", Order: job.Order{Number: "WO-2", Revision: "B"}, Hours: hours("4"), CrewHours: hours("6.5"),
		Lifts: []*job.Lift{{Mark: "L1", What: "Pump", Plan: lift.Plan{Crane: lift.Crane{Name: "3-4"}}}}}
	return []Summary{Of(fan, "00123-A", 19), {Job: "WO-9", Failed: "2 problems", Hours: hours("99"), CrewHours: hours("99"), Pages: 99, Lifts: []Need{{By: "3-4"}}}, Of(pump, "WO-2-B", 7)}
}

// Hours and crew hours are summed each for itself, of the jobs that are printed: added up by
// hand; common practice, no source.
func TestTotal(t *testing.T) {
	t.Parallel()
	jobs := twoJobs(t)
	pages, tags, hours, crew := Total(jobs)
	if pages != 26 || tags != 0 || hours.Text() != "14.5" || crew.Text() != "27.5" {
		t.Errorf("%d pages, %d tags, %s h, %s crew h; want 26, 0, 14.5 and 27.5", pages, tags, hours.Text(), crew.Text())
	}
	if lang := Language(jobs); lang != "de" {
		t.Errorf("jobs in German alone are summed up in %q", lang)
	}
	jobs[2].Language = "pl"
	if lang := Language(jobs); lang != "" {
		t.Errorf("jobs in German and Polish are summed up in %q", lang)
	}
}

// A heat is listed by the permits of its pull and of its refit, each once; a lift by its crane;
// what names none stands under that, last by its words; a job that is not printed has no line.
func TestNeeds(t *testing.T) {
	t.Parallel()
	var got []string
	for _, l := range Lists {
		for _, line := range By(twoJobs(t), l.Of) {
			got = append(got, l.Word+" "+line.Job+" "+line.Mark+" "+line.By)
		}
	}
	want := []string{"hold 00123 W1 no hours planned", "lift 00123 L1 3-4", "lift WO-2 L1 3-4", "lift 00123 L2 not named",
		"heat 00123 H1 hot work, entry", "heat 00123 H2 not named"}
	if !slices.Equal(got, want) {
		t.Errorf("the lists are\n%q\nwant\n%q", got, want)
	}
}

// A job number 00123 came back from a spreadsheet as 123, a crane 3-4 as a day in March, and a
// title that begins with = was run.
func TestIndexIsSafeInASpreadsheet(t *testing.T) {
	t.Parallel()
	var b bytes.Buffer
	if err := WriteCSV(&b, twoJobs(t)); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(&b).ReadAll()
	if err != nil || len(rows) != 1+3+6 {
		t.Fatalf("%d rows, %v", len(rows), err)
	}
	at := func(row int, head string) string { return rows[row][slices.Index(rows[0], head)] }
	for _, c := range []struct {
		row        int
		head, want string
	}{
		{1, "job", "'00123"}, {1, "title", "'=Bearings"}, {1, "date", "2026-03-02"}, {1, "pages", "19"}, {1, "hours", "10.5"}, {1, "crew hours", "21"},
		{2, "failed", "2 problems"}, {3, "job", "WO-2"}, {4, "line", "hold"}, {4, "by", "no hours planned"}, {4, "what", "Seats seen: engineer"}, {5, "by", "'3-4"}, {5, "job", "'00123"},
	} {
		if got := at(c.row, c.head); got != c.want {
			t.Errorf("row %d, %s: %q, want %q", c.row, c.head, got, c.want)
		}
	}
}
