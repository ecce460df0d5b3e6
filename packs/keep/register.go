package keep

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"

	"matchmark/packs/job"
)

// A column of the register: its heading, and what stands in it for a tag. Numbers that are
// counted are written as they are, all other texts through Cell.
type column struct {
	head string
	of   func(*job.Job, *job.Tag) string
}

// columns of the register. Those without a text are filled in by the storeroom.
func columns() []column {
	blank := func(*job.Job, *job.Tag) string { return "" }
	return []column{
		{"key", func(_ *job.Job, t *job.Tag) string { return Cell(t.Key) }},
		{"code", func(_ *job.Job, t *job.Tag) string { return Cell(t.Code) }},
		{"mark", func(_ *job.Job, t *job.Tag) string { return Cell(t.Mark) }},
		{"n", func(_ *job.Job, t *job.Tag) string { return whole(t.N) }},
		{"of", func(_ *job.Job, t *job.Tag) string { return whole(t.Of) }},
		{"kind", func(_ *job.Job, t *job.Tag) string { return kindOf(t) }},
		{"name", func(_ *job.Job, t *job.Tag) string { return Cell(t.Name) }},
		{"parent", func(_ *job.Job, t *job.Tag) string { return Cell(parent(t)) }},
		{"pocket", func(_ *job.Job, t *job.Tag) string { return Cell(t.Pocket) }},
		{"place", func(_ *job.Job, t *job.Tag) string { return Cell(t.PlaceName) }},
		{"pieces", func(_ *job.Job, t *job.Tag) string { return strconv.Itoa(job.Pieces(t.All())) }},
		{"contents", func(_ *job.Job, t *job.Tag) string { return Cell(contents(t)) }},
		{"scrap", func(_ *job.Job, t *job.Tag) string { return map[bool]string{true: "yes", false: "no"}[t.Scrap] }},
		{"off at", func(_ *job.Job, t *job.Tag) string { return Cell(stepNos(t.All())) }},
		{"back at", func(_ *job.Job, t *job.Tag) string { return Cell(stepNos(t.Out)) }},
		{"keep", func(_ *job.Job, t *job.Tag) string { return Cell(t.Keep) }},
		{"note", func(_ *job.Job, t *job.Tag) string { return Cell(t.Note) }},
		{"matched set", func(_ *job.Job, t *job.Tag) string { return Cell(setMarks(t.Sets)) }},
		{"machine", func(j *job.Job, _ *job.Tag) string { return Cell(j.Equipment.Tag) }},
		{"machine name", func(j *job.Job, _ *job.Tag) string { return Cell(j.Equipment.Name) }},
		{"job", func(j *job.Job, _ *job.Tag) string { return Cell(j.Order.Number) }},
		{"revision", func(j *job.Job, _ *job.Tag) string { return Cell(j.Order.Revision) }},
		{"pack", func(j *job.Job, _ *job.Tag) string { return Cell(j.Digest) }},
		{"shelf", blank}, {"counted in", blank}, {"date in", blank}, {"counted all apart", blank}, {"counted out", blank}, {"date out", blank},
		{"rest out", blank}, {"date rest out", blank}, {"scrapped", blank}, {"missing", blank}, {"left over", blank},
	}
}

// utf8Mark is the mark by which some spreadsheets know that a file is UTF-8.
const utf8Mark = "\ufeff"

// newTable begins a CSV (RFC 4180, UTF-8), with the mark of UTF-8 where it is asked for.
func newTable(w io.Writer, marked bool) (*csv.Writer, error) {
	if marked {
		if _, err := io.WriteString(w, utf8Mark); err != nil {
			return nil, err
		}
	}
	out := csv.NewWriter(w)
	out.UseCRLF = true
	return out, nil
}

// WriteRegister writes one line a tag as CSV (RFC 4180, UTF-8, a header line), for the
// storeroom's own lists, with the mark of UTF-8 before it where that is asked for.
func WriteRegister(w io.Writer, j *job.Job, marked bool) error {
	out, err := newTable(w, marked)
	if err != nil {
		return err
	}
	all := columns()
	line := make([]string, len(all))
	for i, c := range all {
		line[i] = c.head
	}
	out.Write(line)
	for _, t := range j.Tags {
		for i, c := range all {
			line[i] = c.of(j, t)
		}
		out.Write(line)
	}
	out.Flush()
	return out.Error()
}

// whole is a number, nothing for none.
func whole(n int) string {
	if n == 0 {
		return ""
	}
	return strconv.Itoa(n)
}

// kindOf says what a tag hangs on.
func kindOf(t *job.Tag) string {
	switch {
	case t.Spare:
		return "spare"
	case t.Scrap:
		return "scrap bag"
	case t.Part != nil:
		return "big part"
	case t.Pocket != "":
		return "bag inside"
	case t.Container != nil:
		return t.Container.Kind
	}
	return ""
}

// parent is the mark of the container that a bag lies in.
func parent(t *job.Tag) string {
	if t.Pocket == "" || t.Container == nil {
		return ""
	}
	return t.Container.Mark
}

// contents are the pieces in a tag, and those that come to it later with the step at which
// they do.
func contents(t *job.Tag) string {
	var out []string
	for _, x := range job.Contents(t.In) {
		out = append(out, strconv.Itoa(x.N)+" "+x.Name)
	}
	for _, m := range t.Later {
		out = append(out, "later, at "+m.OldOne().Step.No+": "+strconv.Itoa(m.N)+" old "+m.Part.Name)
	}
	return strings.Join(out, "; ")
}

// stepNos lists the steps of some moves, each once.
func stepNos(ms []*job.Move) string {
	var out []string
	for _, m := range ms {
		if len(out) == 0 || out[len(out)-1] != m.Step.No {
			out = append(out, m.Step.No)
		}
	}
	return strings.Join(out, "; ")
}

func setMarks(ss []*job.Set) string {
	var out []string
	for _, s := range ss {
		out = append(out, s.Mark)
	}
	return strings.Join(out, "; ")
}
