package keep

import (
	"io"
	"strconv"
	"strings"

	"matchmark/packs/job"
)

// An issue is one line of the list of what the storeroom gives out.
type issue struct {
	kind, what, number, count, size, note string
	renewed                               bool
	steps                                 []*job.Step
}

// issues are all lines: instruments, tools, spares and consumables, as on the gather list.
func issues(j *job.Job) []issue {
	var out []issue
	s := j.Supplies
	for _, in := range s.Instruments {
		out = append(out, issue{kind: "instrument", what: in.Name, number: in.Number, count: strconv.Itoa(max(in.Count, 1))})
	}
	for _, l := range []struct {
		kind string
		list []*job.Supply
	}{{"tool", s.Tools}, {"spare", s.Spares}, {"consumable", s.Consumables}} {
		for _, x := range l.list {
			out = append(out, issue{kind: l.kind, what: x.What, count: x.Count, size: x.Size, note: x.Note, renewed: x.Must, steps: x.Steps})
		}
	}
	return out
}

// Issued is the number of lines of the list of what the storeroom gives out.
func Issued(j *job.Job) int { return len(issues(j)) }

// WriteIssued writes one line as CSV (RFC 4180, UTF-8, a header line) for each instrument,
// tool, spare and consumable, with empty columns for what was issued, used and returned, and
// the numbers of machine and job on each line, by which what comes back is booked; with the
// mark of UTF-8 before it where that is asked for.
func WriteIssued(w io.Writer, j *job.Job, marked bool) error {
	out, err := newTable(w, marked)
	if err != nil {
		return err
	}
	out.Write([]string{"kind", "what", "number", "how much", "size", "always renewed", "for steps", "note", "machine", "job", "revision",
		"issued", "date issued", "used", "returned", "date returned", "initials"})
	for _, x := range issues(j) {
		var nos []string
		for _, st := range x.steps {
			nos = append(nos, st.No)
		}
		out.Write([]string{x.kind, Cell(x.what), Cell(x.number), Cell(x.count), Cell(x.size), map[bool]string{true: "yes", false: "no"}[x.renewed],
			Cell(strings.Join(nos, "; ")), Cell(x.note), Cell(j.Equipment.Tag), Cell(j.Order.Number), Cell(j.Order.Revision), "", "", "", "", "", ""})
	}
	out.Flush()
	return out.Error()
}
