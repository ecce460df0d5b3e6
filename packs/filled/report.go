package filled

import (
	"encoding/csv"
	"io"
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// A Line is one reading of a report: what it was found and left at, and how far it went
// since the last outage.
type Line struct {
	Dim         *job.Dim
	N           int    // which position, from 0
	Position    string // its name, empty for the only one
	Found, Left *units.Quantity
	// FoundText and LeftText are the readings in the digits of their box, or what was
	// answered; empty where nothing was.
	FoundText, LeftText       string
	FoundVerdict, LeftVerdict Outcome // of this reading
	Last                      string  // in the digits of its box, empty where there was none
	LastWhen                  job.When
	LastOn                    string
	Wear                      *Wear
}

// Lines lists every reading of a job that has a box, in the order of the dimensions.
func (r *Result) Lines(h *History) []Line {
	var out []Line
	for _, d := range r.Job.Dims {
		found, left := r.reads(d, job.AsFound), r.reads(d, job.AsLeft)
		if !found && !left {
			continue
		}
		names := d.Positions.Labels()
		last, hasLast := h.Last(d)
		for n := range max(d.Positions.Boxes(), 1) {
			l := Line{Dim: d, N: n}
			if n < len(names) {
				l.Position = names[n]
			}
			l.Found, l.FoundText, l.FoundVerdict = r.one(d, job.AsFound, n)
			l.Left, l.LeftText, l.LeftVerdict = r.one(d, job.AsLeft, n)
			if hasLast && n < len(last.Readings) && last.Readings[n] != nil {
				l.Last, l.LastWhen, l.LastOn = Rounded(*last.Readings[n], d.Box).Number.Print(), last.When, last.On
			}
			if w, there := h.Change(r, d, n); there {
				l.Wear = &w
			}
			out = append(out, l)
		}
	}
	return out
}

// one is one reading with its own verdict.
func (r *Result) one(d *job.Dim, when job.When, n int) (*units.Quantity, string, Outcome) {
	v, there := r.Verdict(d, when)
	if !there {
		return nil, "", Empty
	}
	text := r.Typed(job.BlankKey(d.Mark, when, d.ReadingKind(), n))
	o := v.Outcome
	switch e, typed := r.entry(d, when, d.ReadingKind(), n); {
	case typed && e.NotTaken != "":
		o = NotTaken
	case text == "":
		o = Empty
	case v.each != nil:
		o = v.each[n]
	}
	return r.readings(d, when).readings[n], text, o
}

// outcomeWords are the outcomes in a file.
var outcomeWords = [...]string{"", "not taken", "recorded", "open", "in", "old part in", "mend", "out"}

// reportColumns are those of the report as a file.
var reportColumns = []string{"mark", "place", "what", "position", "unit", "limit", "found", "found is", "left", "left is", "last", "last read as", "last on", "change", "running hours between", "change in 1000 h", "running hours to the limit", "what to do", "typed by"}

// plainNumber is what a spreadsheet takes for a number and not for a formula.
var plainNumber = phrase.Of(`^-?[0-9]+([.,][0-9]+)?$`)

// WriteReport writes the report as CSV (RFC 4180, UTF-8 with a byte order mark, a header
// line), a row a reading.
func WriteReport(w io.Writer, r *Result, h *History) error {
	if _, err := io.WriteString(w, "\ufeff"); err != nil {
		return err
	}
	out := csv.NewWriter(w)
	out.UseCRLF = true
	number := func(text string) string {
		text = units.Plain(text)
		if r.Job.Site.Comma {
			text = strings.Replace(text, ".", ",", 1)
		}
		return text
	}
	out.Write(reportColumns)
	for _, l := range r.Lines(h) {
		d := l.Dim
		row := []string{d.Mark, d.Place.Name, d.What, units.Pointed(l.Position), d.Box.Unit.Text(), limitText(job.Blank{Dim: d, When: job.AsFound, N: l.N}),
			number(l.FoundText), outcomeWords[l.FoundVerdict], number(l.LeftText), outcomeWords[l.LeftVerdict], number(l.Last), "", l.LastOn, "", "", "", "", r.action(l), strings.Join(r.Values.Typed(), "; ")}
		if l.Last != "" {
			row[11] = sides[l.LastWhen]
		}
		if x := l.Wear; x != nil {
			row[13] = number(ChangeText(l))
			if x.Rate != nil {
				row[14], row[15] = x.Hours.Number.Text(), number(RateText(l))
			}
		}
		if hours, known := l.Reaches(); known {
			row[16] = hours.Number.Text()
		}
		for i, cell := range row {
			if !plainNumber.MatchString(cell) {
				row[i] = safe(cell)
			}
		}
		out.Write(row)
	}
	out.Flush()
	return out.Error()
}

// action is what to do about a reading that is out, as found and as left.
func (r *Result) action(l Line) string {
	var out []string
	for _, x := range []struct {
		when job.When
		is   Outcome
	}{{job.AsFound, l.FoundVerdict}, {job.AsLeft, l.LeftVerdict}} {
		if v, there := r.Verdict(l.Dim, x.when); there && v.Bad() && x.is == v.Outcome && len(v.Actions) > 0 {
			out = append(out, strings.Join(v.Actions, "; "))
		}
	}
	return strings.Join(slices.Compact(out), "; ")
}

// ChangeText is how far a reading went, in the digits of its box.
func ChangeText(l Line) string {
	if l.Wear == nil {
		return ""
	}
	return Rounded(l.Wear.Change, l.Dim.Box).Number.Print()
}

// rateDigits is how many digits more than a reading the wear in 1000 h is told with.
const rateDigits = 2

// RateText is how far a reading goes in 1000 h; empty where the hours are not known.
func RateText(l Line) string {
	if l.Wear == nil || l.Wear.Rate == nil {
		return ""
	}
	after := l.Dim.Box.After
	if l.Dim.Box.Form == reading.Fraction {
		after = 2
	}
	return l.Wear.Rate.Number.Round(after+rateDigits, units.Nearest).Print()
}
