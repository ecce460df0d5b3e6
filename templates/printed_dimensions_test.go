package templates_test

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/reading"
)

// boxes asks for all that belongs to the boxes of a dimension at a step.
func (w *wants) boxes(d *job.Dim, st *job.Step, text *stepText, back bool) {
	where, block := d.Mark+" at "+st.No, ""
	if d.Sheet {
		where, block = d.Mark+" on the readings sheet", w.p.sheets["readings"]
	} else {
		block = text.frames(d, append(append(append([]*job.Dim{}, st.Measure...), st.Set...), st.Recall...))
	}
	w.told(d, where, block, back)
	for _, x := range places(d, st, back) {
		w.others(d, x, where, block)
	}
}

// places are the dimensions of the same mark at other places that have boxes of their
// own at the same step.
func places(d *job.Dim, st *job.Step, back bool) []*job.Dim {
	var list []*job.Dim
	for _, x := range st.Section.Steps {
		if x != st && (!x.Alike || x.At != st.At) {
			continue
		}
		if back {
			list = append(list, x.Set...)
		} else {
			list = append(list, x.Measure...)
		}
	}
	var out []*job.Dim
	for _, x := range list {
		if x != d && x.Base == d.Base && !d.Sheet {
			out = append(out, x)
		}
	}
	return out
}

// tableRow asks for the readings of a row of a table: in the row, or above all rows.
func (w *wants) tableRow(st *job.Step, text *stepText) {
	for i, list := range [][]*job.Dim{st.Measure, st.Set} {
		for _, d := range list {
			w.told(d, d.Mark+" in row "+st.No, text.above+text.text, i == 1)
			for _, s := range st.Section.Steps {
				if s == st || !s.Table || s.At != st.At {
					continue
				}
				for _, x := range append(append([]*job.Dim{}, s.Measure...), s.Set...) {
					if x.Base == d.Base {
						w.others(d, x, d.Mark+" in row "+st.No, text.above+text.text)
					}
				}
			}
		}
	}
}

// texts are the words of a dimension that its author may write by place.
func texts(d *job.Dim, back bool) []string {
	acts := []string{d.Over, d.Under, d.Out}
	if !back && d.FoundOut != "" {
		acts = []string{d.FoundOut}
	}
	return append(acts, d.What, d.State.With, d.State.Pushed, d.State.Load, d.State.Plane, d.Source)
}

// said are all those words.
func said(d *job.Dim) []string {
	seen := d.ViewedFrom
	if seen != "" {
		seen = "seen from " + seen
	}
	return append(texts(d, true), d.FoundOut, seen)
}

// told asks for the words and numbers of a dimension in its block.
func (w *wants) told(d *job.Dim, where, block string, back bool) {
	own := func(what, why string) { w.add(where, block, what, why) }
	for _, x := range texts(d, back) {
		if (x == d.Over || x == d.Under || x == d.Out || x == d.Source) && d.Left == nil && !d.WatchedOnly() {
			continue // nothing is judged
		}
		own(x, "said of "+d.Mark)
	}
	for _, x := range d.Merged {
		for _, t := range texts(x, back) {
			own(t, "said of "+x.Mark)
		}
	}
	own(d.Note, "the note of "+d.Mark)
	if d.ViewedFrom != "" && (d.ViewedFrom != d.Place.ViewedFrom || d.Positions.Kind == job.Clock) {
		own("seen from "+d.ViewedFrom, "from where "+d.Mark+" is seen") // that of the place stands above all its steps
	}
	if d.CountedFrom != "" {
		own("counted from "+d.CountedFrom, "where "+d.Mark+" begins to count")
	}
	for _, f := range []job.Face{d.From, d.To, d.Of} {
		own(f.Name, "a face of "+d.Mark)
	}
	if d.By != nil && !d.ByHand() {
		own(instrumentSaid(d), "what it is read with")
	}
	if d.NotSourced() && !back {
		own("LIMIT NOT SOURCED", "no source")
	}
	if d.Adjuster != nil && d.Adjuster.LeaveAlone != "" {
		own(d.Adjuster.LeaveAlone, "why it is left alone")
	}
	if d.BackOff != nil && back {
		own(d.BackOff.Text, "how far it is backed off")
	}
	if d.LastChance != nil && !back && d.FoundAt != nil {
		own("LAST CHANCE", "it is gone after "+d.LastChance.No)
	}
	for _, s := range d.Says {
		own(s.Text, "what a source says")
	}
	w.limits(d, where, block, back)
}

// limits asks for the numbers of the limits, at each position its own.
func (w *wants) limits(d *job.Dim, where, block string, back bool) {
	if d.Left == nil && back {
		return
	}
	late := d.FoundWork.Late != nil && !back
	for _, l := range []*reading.Limit{d.Left, d.Reuse, d.Repair} {
		switch {
		case l == nil, l == d.Left && len(d.LeftBy) > 0, late && l != d.Left:
			continue
		case !back && (late || l == d.Left && d.FoundIsRecorded()):
			w.add(where, block, limitText(l), "how it is to be left") // worked out later
			continue
		}
		for _, n := range numbers(l) {
			w.add(where, block, n, "of the limit "+l.Text())
		}
	}
	if d.WatchedOnly() && !back && len(d.FoundBy) == 0 {
		for _, n := range numbers(d.Found) {
			w.add(where, block, n, "of the limit "+d.Found.Text())
		}
	}
	by := d.LeftBy
	if d.Left == nil {
		by = d.FoundBy
	}
	for _, at := range d.ByLimit(by) {
		w.add(where, block, strings.Join(at.Names, ", ")+": "+strings.TrimSpace(d.Zone(at.Limit)+" "+main(at.Limit)), "the limit at some positions")
	}
	if tabled := []*job.Step{d.FoundAt, d.LeftAt}[map[bool]int{true: 1}[back]]; tabled != nil && tabled.Table {
		return // the verdicts of all readings stand in one row
	}
	if judged := d.Judged() && (back && !d.Left.NeedsFound() || !d.FoundIsRecorded()); judged && !late && d.Reuse == nil && d.Repair == nil {
		n := max(len(d.ByLimit(d.LeftBy)), 1)
		if got := strings.Count(block, "not OK"); block != "" && got < n && !d.Sheet {
			w.add(where, block, strconv.Itoa(n)+" verdicts", "each limit is judged by itself")
		}
	} else if d.Left != nil && !back && !d.Sheet && d.FoundIsRecorded() && d.Reuse == nil {
		w.never(where, block, "not OK", "a verdict on what is only recorded")
	}
}

// main is the main line of a limit in words.
func main(l *reading.Limit) string { return limitText(l) }

var number = regexp.MustCompile(`[-+]?\d+(?:[.]\d+)?(?:[-/]\d+)*(?:/\d+)?`)

// numbers are the numbers that a limit is written with, as they stand on paper: without
// the marks of readings, and of a size that is worked out without its sign.
func numbers(l *reading.Limit) []string {
	text := l.Text()
	for _, m := range l.Marks() {
		text = strings.ReplaceAll(text, string(m), "")
	}
	if l.Kind != reading.Measured {
		return nil
	}
	var out []string
	for _, n := range number.FindAllString(text, -1) {
		n = strings.TrimLeft(n, "+-")
		out = append(out, n)
	}
	return out
}

// others sees that a block does not say what is true of another place only.
func (w *wants) others(d, x *job.Dim, where, block string) {
	mine := strings.Join(append(said(d), d.Note), "\n")
	other := said(x)
	for i, t := range said(d) {
		if other[i] != t && other[i] != "" && len(other[i]) > 4 && !strings.Contains(squeeze(mine), squeeze(other[i])) {
			w.never(where, block, other[i], "said of "+x.Mark)
		}
	}
	for _, pair := range [][2]*reading.Limit{{d.Left, x.Left}, {d.Reuse, x.Reuse}, {d.Repair, x.Repair}} {
		if pair[0] == nil || pair[1] == nil || pair[0].Text() == pair[1].Text() {
			continue
		}
		text := limitText(pair[1])
		if text != "" && !slices.ContainsFunc(beside(d), func(y *job.Dim) bool { return mentions(y, text) }) {
			w.never(where, block, text, "the limit of "+x.Mark)
		}
	}
}

// beside are the dimensions that are read at the same steps as one.
func beside(d *job.Dim) []*job.Dim {
	out := []*job.Dim{d}
	for _, st := range []*job.Step{d.FoundAt, d.LeftAt} {
		if st != nil && st.Table {
			out = append(append(out, st.Measure...), st.Set...)
		}
	}
	return out
}

// mentions reports whether a limit in words is one of a dimension's own.
func mentions(d *job.Dim, text string) bool {
	for _, l := range d.Limits() {
		if strings.Contains(squeeze(limitText(l)), squeeze(text)) {
			return true
		}
	}
	return false
}

// instrumentSaid is the name of an instrument, with which of several alike it is.
func instrumentSaid(d *job.Dim) string {
	if d.ByPiece == 0 {
		return d.By.Name
	}
	return fmt.Sprintf("%s, %d of %d", d.By.Name, d.ByPiece, d.By.Count)
}
