package filled

import (
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// The columns of the file, in their order. Those of a key are found again by it; value
// and looked are written in; the rest is there to read.
const (
	colMark     = "mark"
	colPlace    = "place"
	colWhat     = "what"
	colPosition = "position"
	colSide     = "side"
	colValue    = "value"
	colLooked   = "looked again"
	colUnit     = "unit"
	colDigits   = "digits"
	colLimit    = "limit"
	colPage     = "page"
)

var columns = []string{colMark, colPlace, colWhat, colPosition, colSide, colValue, colLooked, colUnit, colDigits, colLimit, colPage}

// needed are the columns without which no value can be given its box.
var needed = []string{colMark, colPosition, colSide, colValue}

// The rows above the boxes: their first cell, the text stands in the column value.
const (
	headJob      = "job"
	headMachine  = "machine"
	headSerial   = "serial number"
	headRevision = "revision"
	headPack     = "pack"
	headBy       = "typed by"
	headOn       = "typed on"
	headHours    = "running hours"
)

// heads says what is written into each of these rows.
var heads = []struct{ name, hint string }{
	{headJob, "as printed"}, {headMachine, "its tag, as printed"}, {headSerial, "as printed"}, {headRevision, "as printed"}, {headPack, "as printed"},
	{headBy, "who types the values from the paper"}, {headOn, "the day, as 2026-03-14"},
	{headHours, "of the machine when it was stopped, as 41200 h; may stay empty"},
}

// Rows 51 to 54 are on the sheet of what is found on the day.
const (
	firstDayMark = 51
	dayMarks     = 4
)

// sides are the words of the column side.
var sides = map[job.When]string{job.AsFound: "found", job.AsLeft: "left"}

// position names a box among those of its dimension and side: empty for the only one,
// "no. 3: top left" for one of several, in brackets for what is no reading. Spreadsheets
// make a date of 1/2 and a time of 1:2, so the name does not begin with its number.
func position(b job.Blank) string {
	n := strconv.Itoa(b.N + 1)
	switch b.Kind {
	case job.LeafBlank:
		return "(leaf " + n + ")"
	case job.NumberBlank:
		return "(number on the part)"
	case job.GroupBlank:
		return "(" + [...]string{"", "mean", "spread", "sum"}[min(b.N, 3)] + ")"
	case job.PartBlank:
		return "(part at)"
	case job.SpareBlank:
		return "(spare " + n + ")"
	}
	if b.Dim.Leaves() > 0 {
		return "(sum of leaves)"
	}
	switch names := b.Dim.Positions.Labels(); {
	case b.N >= len(names):
		return ""
	case names[b.N] == n:
		return "no. " + n
	default:
		return "no. " + n + ": " + units.Pointed(names[b.N])
	}
}

// unitText is the unit of a box as it is typed.
func unitText(b job.Blank) string {
	if !numeric(b) {
		return ""
	}
	return b.Box.Unit.Text()
}

// numeric reports whether a number is written into a box.
func numeric(b job.Blank) bool {
	return b.Box.Form == reading.Digits || b.Box.Form == reading.Fraction
}

// digits shows the box: ±__.__ for a number with its point, the answers of one that is
// ticked.
func digits(b job.Blank) string {
	switch b.Box.Form {
	case reading.Fraction:
		return "__ __/__"
	case reading.Line:
		return "words"
	case reading.Grid:
		return "sketch, or the number of its photo"
	case reading.Ticks:
		return strings.Join(b.Dim.Answers(), " or ")
	}
	s := strings.Repeat("_", max(b.Box.Before, 1))
	if b.Box.After > 0 {
		s += "." + strings.Repeat("_", b.Box.After)
	}
	if b.Box.Signed {
		s = "±" + s
	}
	return s
}

// limitText is the limit of a box in words, as it is typed in the definition.
func limitText(b job.Blank) string {
	if b.Kind == job.PartBlank || b.Kind == job.NumberBlank || b.Kind == job.LeafBlank {
		return ""
	}
	d := b.Dim
	limits := d.LeftLimits()
	if b.When == job.AsFound && d.WatchedOnly() {
		if limits = d.FoundBy; len(limits) == 0 {
			limits = []*reading.Limit{d.Found}
		}
	}
	if len(limits) == 0 {
		return "record"
	}
	text := limitAt(limits, b.N).Text()
	for _, old := range []struct {
		limit *reading.Limit
		name  string
	}{{d.Reuse, "; old part "}, {d.Repair, "; mended "}} {
		if old.limit == nil {
			continue
		}
		if text += old.name + old.limit.Text(); d.EndAsNew(old.limit) {
			text += ", other end as of a new part"
		}
	}
	return text
}

// limitAt is the limit of one position: the only one, or that of its column.
func limitAt(limits []*reading.Limit, n int) *reading.Limit {
	if len(limits) == 1 {
		return limits[0]
	}
	return limits[n%len(limits)]
}

// safe is a cell that no spreadsheet takes for a formula: what begins like one gets the
// mark of a text before it, which Read takes off again.
func safe(cell string) string {
	if t := strings.TrimLeft(cell, " \t\r\n\u00a0"); t != "" && strings.ContainsRune("=+-@＝＋－＠'", firstRune(t)) || cell != strings.TrimLeft(cell, "\t\r\n") {
		return "'" + cell
	}
	return cell
}

func firstRune(s string) rune {
	for _, r := range s {
		return r
	}
	return 0
}
