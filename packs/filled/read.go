package filled

import (
	"strconv"
	"strings"
	"time"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// Read takes a file of readings back for a job. A value that cannot be read for certain
// is left out and told with its row and column; so is one for which the job has no box,
// which is kept as Lost. Nothing that is read alters the job.
func Read(name string, data []byte, j *job.Job) *File {
	t := readTable(name, data)
	r := &reader{table: t, job: j, file: &File{Name: name, Pages: map[string]int{}}, blanks: map[string]job.Blank{}, first: map[string]cells{}}
	for _, b := range j.Blanks() {
		r.blanks[keyOf(b.Dim.Mark, sides[b.When], position(b))] = b
	}
	whole := len(t.problems) == 0 // else the rows above the boxes may not have been read
	for _, row := range t.rows {
		r.row(row)
	}
	if whole {
		r.about()
	}
	r.file.Told = t.problems
	return r.file
}

// A reader holds what is known while a file is read.
type reader struct {
	*table
	job    *job.Job
	file   *File
	blanks map[string]job.Blank
	first  map[string]cells // the row that gave each box its value
	heads  map[string]source.Pos
}

// keyOf finds a box by what its row says: without regard to blanks and letter case.
func keyOf(mark, side, position string) string {
	return strings.ToLower(strings.Join(strings.Fields(mark+" | "+side+" | "+position), " "))
}

// row reads one row.
func (r *reader) row(row cells) {
	mark, at := r.get(row, colMark)
	side, sideAt := r.get(row, colSide)
	pos, _ := r.get(row, colPosition)
	value, valueAt := r.get(row, colValue)
	r.page(row, keyOf(mark, side, pos))
	switch {
	case side == "" && r.head(row, strings.ToLower(mark), value, valueAt):
		return
	case value == "":
		return
	case mark == "":
		r.problems.Add(valueAt, "no-mark", row.said(colValue)+source.Quote(value)+" has no mark beside it, so no box takes it", "write the mark of its box, as D7/DE")
		return
	case side != sides[job.AsFound] && side != sides[job.AsLeft]:
		r.problems.Add(sideAt, "side", row.said(colSide)+source.Quote(side)+" is neither found nor left", "found, as before parting", "left, as in putting back")
		return
	}
	for i := range dayMarks {
		if strings.EqualFold(mark, dayMark(i)) {
			r.file.Day = append(r.file.Day, Day{At: valueAt, Mark: dayMark(i), Side: side, Text: value})
			return
		}
	}
	key := keyOf(mark, side, pos)
	b, known := r.blanks[key]
	if !known {
		r.file.Lost = append(r.file.Lost, Lost{At: valueAt, Mark: mark, Position: pos, Side: side, Text: value})
		r.problems.Warn(at, "box-gone", row.said(colMark)+r.noBox(mark, side, pos)+"; its value "+source.Quote(value)+" is kept in the report and judged by nothing")
		return
	}
	if before, twice := r.first[key]; twice {
		r.problems.AddWith(valueAt, "row-twice", row.said(colValue)+"a second row for "+b.Dim.Mark+" "+side+" "+pos, before.pos[0], "the first one", "take one of the rows out")
		return
	}
	r.first[key] = row
	looked, _ := r.get(row, colLooked)
	e, no := readValue(b, value, looked, r.job.Site.Comma)
	if no != nil {
		at := valueAt
		if no.width > 0 && no.offset+no.width <= at.Width {
			at.Col, at.Width = at.Col+no.offset, no.width
		}
		r.file.Refused = append(r.file.Refused, b)
		r.problems.Add(at, no.code, row.said(colValue)+b.Dim.Mark+" "+side+inBrackets(pos)+": "+no.message, no.help...)
		return
	}
	e.At = valueAt
	r.file.Entries = append(r.file.Entries, e)
}

// page takes the page of a box on the paper, which its row tells whether it is filled or not.
func (r *reader) page(row cells, key string) {
	text, _ := r.get(row, colPage)
	n, err := strconv.Atoi(strings.TrimSpace(text))
	if b, known := r.blanks[key]; known && err == nil && n > 0 {
		r.file.Pages[b.Key()] = n
	}
}

func inBrackets(pos string) string {
	if pos == "" {
		return ""
	}
	return ", " + pos
}

// noBox says what the job lacks of a box.
func (r *reader) noBox(mark, side, pos string) string {
	var at, sideThere bool
	for _, b := range r.blanks {
		if strings.EqualFold(b.Dim.Mark, mark) {
			at = true
			sideThere = sideThere || sides[b.When] == side
		}
	}
	switch {
	case !at:
		return "this revision has no " + mark
	case !sideThere:
		return "this revision does not write " + mark + " as " + side
	case pos == "":
		return mark + " as " + side + " has several boxes, and the row names none"
	}
	return mark + " as " + side + " has no box " + source.Quote(pos)
}

// head takes one of the rows above the boxes.
func (r *reader) head(row cells, name, value string, at source.Pos) bool {
	f := r.file
	if r.heads == nil {
		r.heads = map[string]source.Pos{}
	}
	switch name {
	case headJob:
		f.Job = value
	case headMachine:
		f.Machine = bare(value, machineWord)
	case headSerial:
		f.Serial = bare(value, serialWord)
	case headRevision:
		f.Revision = value
	case headPack:
		f.Pack = value
	case headBy:
		f.By = value
	case headOn:
		if value != "" {
			r.day(row, value, at)
		}
	case headHours:
		if value != "" {
			r.hours(row, value, at)
		}
	default:
		return false
	}
	if value != "" {
		r.heads[name] = at
	}
	return true
}

// dayForms are the ways to write a day that are read one way only.
var dayForms = []string{"2006-01-02", "2 Jan 2006", "2 January 2006", "02-Jan-2006", "2-Jan-2006", "January 2, 2006", "Jan 2, 2006"}

// day reads the day on which the file was typed.
func (r *reader) day(row cells, value string, at source.Pos) {
	for _, form := range dayForms {
		if d, err := time.Parse(form, value); err == nil {
			r.file.On, r.file.OnAt = d, at
			return
		}
	}
	r.problems.Add(at, "day", row.said(colValue)+source.Quote(value)+" is no day that can be read one way only", "2026-03-14", "14 Mar 2026")
}

// hours reads the running hours of the machine.
func (r *reader) hours(row cells, value string, at source.Pos) {
	text, fault := pointed(value, r.job.Site.Comma)
	var q units.Quantity
	if fault == nil {
		var err error
		if q, err = units.ParseQuantity(text); err != nil || q.Unit != units.Hour || q.Number.Sign() < 0 {
			fault = &refusal{message: source.Quote(value) + " are no running hours"}
		}
	}
	if fault != nil {
		r.problems.Add(at, "running-hours", row.said(colValue)+fault.message, "41200 h")
		return
	}
	r.file.Hours = &q
}

// about holds what the file says of its job against the job.
func (r *reader) about() {
	f, o := r.file, r.job.Order
	whole := source.Pos{File: f.Name}
	at := func(name string) source.Pos {
		if p, there := r.heads[name]; there {
			return p
		}
		return whole
	}
	if f.Job != "" && f.Job != o.Number {
		r.problems.Add(at(headJob), "other-job", "the readings are of job "+f.Job+", and the definition is of "+o.Number, "give the definition, or the job file, that the paper was printed from")
	}
	r.machine(at)
	if f.Revision != "" && f.Revision != o.Revision {
		r.problems.Warn(at(headRevision), "other-revision", "the readings were written on revision "+f.Revision+", and this is revision "+o.Revision+": boxes are found by mark and position")
	} else if f.Pack != "" && !r.job.SameContent(f.Pack) {
		r.problems.Warn(at(headPack), "other-pack", "the paper was printed as pack "+f.Pack+", and the definition now makes "+r.job.Digest+": boxes are found by mark and position")
	}
	if len(f.Entries)+len(f.Lost) > 0 {
		if f.By == "" {
			r.problems.Add(at(headBy), "typed-by", "nobody is named who typed the values from the paper", "write a name into the value of the row \"typed by\"")
		}
		if f.On.IsZero() && r.heads[headOn].IsZero() {
			r.problems.Add(at(headOn), "typed-on", "the day is missing on which the values were typed", "write it into the value of the row \"typed on\", as 2026-03-14")
		}
	}
}
