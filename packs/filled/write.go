package filled

import (
	"encoding/csv"
	"io"
	"maps"
	"sort"
	"strconv"

	"matchmark/packs/job"
)

// WriteBlank writes the file of a pack that is to be filled: UTF-8 with a byte order
// mark, so that a spreadsheet shows ° and ±, a header line, the rows about the job, then
// a row a box by the pages of the pack. pages are those of the keys of the boxes.
func WriteBlank(w io.Writer, j *job.Job, pages map[string]int) error {
	if _, err := io.WriteString(w, "\ufeff"); err != nil {
		return err
	}
	out := csv.NewWriter(w)
	out.UseCRLF = true
	write := func(cells map[string]string) {
		row := make([]string, len(columns))
		for i, c := range columns {
			row[i] = safe(cells[c])
		}
		out.Write(row)
	}
	out.Write(columns)
	known := map[string]string{headJob: j.Order.Number, headRevision: j.Order.Revision, headPack: j.Digest}
	maps.Copy(known, machineRows(j.Equipment))
	for _, h := range heads {
		if h.name == headSerial && known[h.name] == "" {
			continue
		}
		write(map[string]string{colMark: h.name, colWhat: h.hint, colValue: known[h.name]})
	}
	for _, b := range byPage(j.Blanks(), pages) {
		write(row(b, pages))
	}
	for i := range dayMarks {
		for _, side := range []job.When{job.AsFound, job.AsLeft} {
			write(map[string]string{colMark: dayMark(i), colWhat: "found on the day: write what it is with the value", colSide: sides[side], colDigits: "words"})
		}
	}
	out.Flush()
	return out.Error()
}

// dayMark is the mark of one of the rows for what is found on the day.
func dayMark(i int) string { return "X" + strconv.Itoa(firstDayMark+i) }

// byPage orders boxes by their pages, those of one page in the order of work.
func byPage(blanks []job.Blank, pages map[string]int) []job.Blank {
	sort.SliceStable(blanks, func(i, k int) bool { return pages[blanks[i].Key()] < pages[blanks[k].Key()] })
	return blanks
}

// row is the row of one box.
func row(b job.Blank, pages map[string]int) map[string]string {
	cells := map[string]string{
		colMark: b.Dim.Mark, colPlace: b.Dim.Place.Name, colWhat: b.Dim.What, colPosition: position(b), colSide: sides[b.When],
		colUnit: unitText(b), colDigits: digits(b), colLimit: limitText(b),
	}
	if p := pages[b.Key()]; p > 0 {
		cells[colPage] = strconv.Itoa(p)
	}
	return cells
}
