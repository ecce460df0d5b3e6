// Package outage puts many jobs of one outage side by side: what each has on paper, and
// whom and what it needs on which day. It reads job after job and keeps of each only
// these lines, so that memory does not grow with the paper.
package outage

import (
	"encoding/csv"
	"io"
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/keep"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A Summary is what is kept of one job.
type Summary struct {
	Job, Revision, Title, Tag, Machine, Issued string
	Language                                   string // of its paper, by ISO 639-1
	Folder                                     string // in which its files lie, under that of the outage
	Pages, Tags                                int
	Hours, CrewHours                           units.Number
	Holds                                      []Need          // who has to be there
	Lifts                                      []Need          // by crane
	Heats                                      []Need          // by permit
	Failed                                     string          // why it is not printed, empty if it is
	Why                                        source.Sentence // the same for paper in another language; nil where there is none
}

// A Need is one line of a list: by what it is sorted (a date, a crane, a permit), the
// mark, and what it is.
type Need struct {
	By, Mark, What string
	ByIn           source.Sentence // By in another language; nil where it is a name or a date
	order          string          // by which it is sorted
}

// none is what stands for a crane or permit that is not named.
const none = "not named"

// Of makes the summary of a job that is printed on so many pages.
func Of(j *job.Job, folder string, pages int) Summary {
	o, e := j.Order, j.Equipment
	s := Summary{
		Job: o.Number, Revision: o.Revision, Title: o.Title, Tag: e.Tag, Machine: e.Name, Issued: o.Issued, Folder: folder,
		Language: j.Language, Pages: pages, Tags: j.Tagged(), Hours: j.Hours, CrewHours: j.CrewHours,
	}
	for _, h := range j.Holds {
		n := due(j, h)
		n.Mark, n.What = h.Mark, h.What+": "+h.Releases
		s.Holds = append(s.Holds, n)
	}
	for _, l := range j.Lifts {
		s.Lifts = append(s.Lifts, named(l.Plan.Crane.Name, l.Mark, l.What))
	}
	for _, h := range j.Heats {
		s.Heats = append(s.Heats, named(strings.Join(permits(h), ", "), h.Mark, h.What))
	}
	return s
}

// named is a need by a crane or permit, which may be named or not.
func named(by, mark, what string) Need {
	n := Need{By: by, Mark: mark, What: what, order: by}
	if by == "" {
		n.By, n.order, n.ByIn = none, none, source.Fixed("", none)
	}
	return n
}

// permits are those of the steps that do a heat, each once.
func permits(h *job.Heat) []string {
	var out []string
	for _, st := range []*job.Step{h.PulledAt, h.PutOnAt} {
		if st == nil {
			continue
		}
		for _, p := range st.Permits {
			if p != nil && !slices.Contains(out, p.What) {
				out = append(out, p.What)
			}
		}
	}
	return out
}

// A Line is one need of one job.
type Line struct {
	Job, Revision string
	Need
}

// By sorts one list of all jobs by date, crane or permit, then by job as they stand.
func By(jobs []Summary, list func(Summary) []Need) []Line {
	var out []Line
	for _, s := range jobs {
		if s.Failed == "" {
			for _, n := range list(s) {
				out = append(out, Line{s.Job, s.Revision, n})
			}
		}
	}
	slices.SortStableFunc(out, func(a, b Line) int { return strings.Compare(a.order, b.order) })
	return out
}

// Lists are the lists of needs, each with the word by which tables name it.
var Lists = []struct {
	Word string
	Of   func(Summary) []Need
}{
	{"hold", func(s Summary) []Need { return s.Holds }},
	{"lift", func(s Summary) []Need { return s.Lifts }},
	{"heat", func(s Summary) []Need { return s.Heats }},
}

// WriteCSV writes the jobs, then the needs, as one table: a column says which a line is. An
// apostrophe stands before a text that a spreadsheet would run, count or date (keep.Cell), but
// not before the days that the table is sorted by. The error is that of w.
func WriteCSV(w io.Writer, jobs []Summary) error {
	c := csv.NewWriter(w)
	rows := [][]string{{"line", "job", "revision", "tag", "machine", "title", "date", "by", "mark", "what", "pages", "tags", "hours", "crew hours", "folder", "failed"}}
	for _, s := range jobs {
		rows = append(rows, []string{
			"job", keep.Cell(s.Job), keep.Cell(s.Revision), keep.Cell(s.Tag), keep.Cell(s.Machine), keep.Cell(s.Title), s.Issued, "", "", "",
			strconv.Itoa(s.Pages), strconv.Itoa(s.Tags), s.Hours.Text(), s.CrewHours.Text(), keep.Cell(s.Folder), keep.Cell(s.Failed),
		})
	}
	for _, l := range Lists {
		for _, line := range By(jobs, l.Of) {
			by := line.By
			if l.Word != "hold" {
				by = keep.Cell(by) // a name, where that of a hold is a day
			}
			rows = append(rows, []string{l.Word, keep.Cell(line.Job), keep.Cell(line.Revision), "", "", "", "", by, line.Mark, keep.Cell(line.What), "", "", "", "", "", ""})
		}
	}
	return c.WriteAll(rows)
}

// Total sums what is printed.
func Total(jobs []Summary) (pages, tags int, hours, crew units.Number) {
	hours, crew = units.Whole(0), units.Whole(0)
	for _, s := range jobs {
		if s.Failed == "" {
			pages, tags = pages+s.Pages, tags+s.Tags
			hours, crew = hours.Add(s.Hours), crew.Add(s.CrewHours)
		}
	}
	return pages, tags, hours, crew
}

// Language is the language that the jobs which are printed agree on, empty where they do
// not.
func Language(jobs []Summary) string {
	lang, met := "", false
	for _, s := range jobs {
		switch {
		case s.Failed != "":
		case !met:
			lang, met = s.Language, true
		case s.Language != lang:
			return ""
		}
	}
	return lang
}
