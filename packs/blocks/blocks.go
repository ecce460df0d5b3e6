// Package blocks says which readings are printed together in one block of boxes.
// It changes only what is printed; all laws look at the single dimensions.
package blocks

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/reading"
)

// From so many readings of one dimension on, at one step, they are printed in one
// block of rows and columns; above so many boxes that block has a sheet of its own, on
// which those found and left stand below each other. Boxes of one side, not more than go in
// four rows of a step, stay where they are filled.
const (
	fewReadings  = 3
	sheetBoxes   = 12
	oneSideBoxes = 4 * job.RowBoxes
)

// Merge puts the readings of one dimension that a step takes at several places
// into one block, as the valves of twelve cylinders.
func Merge(j *job.Job) {
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			for _, list := range []*[]*job.Dim{&st.Measure, &st.Set, &st.Recall} {
				*list = merged(*list, st)
			}
		}
	}
	for _, d := range j.Dims {
		d.Sheet = d.In == nil && bigBlock(d)
	}
}

// bigBlock reports whether the boxes of a dimension need a sheet of their own.
func bigBlock(d *job.Dim) bool {
	digits := d.Box.Form == reading.Digits || d.Box.Form == reading.Fraction
	most := sheetBoxes
	if d.Positions.Kind == job.Grid && (d.FoundAt == nil || d.LeftAt == nil || d.Left == nil) {
		most = oneSideBoxes
	}
	return digits && !d.ByHand() && d.Positions.Kind != job.Clock && d.Positions.Boxes() > most
}

// merged gives a list of dimensions with those of one mark together in one where
// there are several.
func merged(list []*job.Dim, st *job.Step) []*job.Dim {
	var out []*job.Dim
	for _, d := range list {
		if d.In == nil {
			var same []*job.Dim
			for _, x := range list {
				if x.Base == d.Base && x.In == nil {
					same = append(same, x)
				}
			}
			if len(same) >= fewReadings {
				joinDims(same, st)
			}
		}
		if d.In != nil && (d.In.Sheet || whole(list, d.In)) {
			d = d.In
		}
		if !slices.Contains(out, d) {
			out = append(out, d)
		}
	}
	return out
}

// whole reports whether a list holds all that a merged dimension stands for.
func whole(list []*job.Dim, m *job.Dim) bool {
	for _, d := range m.Merged {
		if !slices.Contains(list, d) {
			return false
		}
	}
	return true
}

// joinDims makes one dimension that prints several of one mark, if one block can hold
// them: boxes of one form, and limits that differ along the columns at most.
func joinDims(ds []*job.Dim, st *job.Step) {
	first := ds[0]
	digits := first.Box.Form == reading.Digits || first.Box.Form == reading.Fraction
	for _, d := range ds {
		if d.ByHand() || !sameFaces(d, first) {
			return // each has a ladder of its own, or a part called otherwise
		}
	}
	if !digits || len(first.Positions.Rows) > 0 && len(first.Positions.Cols) > 0 {
		return
	}
	m := *first
	m.Place, m.Mark = st.Place, st.Place.Mark(first.Base)
	m.Merged = ds
	if st.Place.CountedFrom == "" {
		m.CountedFrom = first.Place.CountedFrom
	}
	if !arrange(&m, ds, st) || !sharedLimits(&m, ds) || !tellAll(&m, ds) {
		return
	}
	for _, d := range ds {
		d.In = &m
		m.Box.Before = max(m.Box.Before, d.Box.Before)
		m.Box.After = max(m.Box.After, d.Box.After)
		m.Box.Signed = m.Box.Signed || d.Box.Signed
		if d.LastChance != nil && (m.LastChance == nil || d.LastChance.Index < m.LastChance.Index) {
			m.LastChance, m.LostAt, m.LostVerb = d.LastChance, d.LostAt, d.LostVerb
		}
	}
	m.Sheet = bigBlock(&m)
}

// sameFaces reports whether two dimensions are taken at faces of the same names, of parts of
// the same names: one heading is to hold for both.
func sameFaces(a, b *job.Dim) bool {
	called := func(f job.Face) string {
		if f.Part == nil {
			return ""
		}
		return f.Part.Name + "\n" + f.Name
	}
	return called(a.From) == called(b.From) && called(a.To) == called(b.To) && called(a.Of) == called(b.Of)
}

// arrange lays the places out: the first group that the step does not name goes
// down, what remains and the positions go across.
func arrange(m *job.Dim, ds []*job.Dim, st *job.Step) bool {
	var rows, cols []string
	names := ds[0].Positions.Names()
	at := map[[2]string]bool{}
	for _, d := range ds {
		var own, groups []string
		for i, g := range d.Place.Groups {
			if !slices.Contains(st.Place.Groups, g) {
				own, groups = append(own, d.Place.Keys[i]), append(groups, g)
			}
		}
		if len(own) == 0 || len(d.Positions.Names()) != len(names) {
			return false
		}
		row, rest := rowName(groups[0], own[0]), own[1:]
		m.Positions.RowName, m.Positions.ColName = groups[0], strings.Join(groups[1:], ", ")
		if !slices.Contains(rows, row) {
			rows = append(rows, row)
		}
		for _, n := range orNone(names) {
			col := strings.Join(append(rest[:len(rest):len(rest)], n...), ", ")
			if !slices.Contains(cols, col) {
				cols = append(cols, col)
			}
			at[[2]string{row, col}] = true
		}
	}
	if len(at) != len(rows)*len(cols) {
		return false // a hole in the table
	}
	if m.Positions.ColName == "" {
		m.Positions.ColName = ds[0].Positions.ColName
	}
	m.Positions.Kind, m.Positions.Rows, m.Positions.Cols = job.Grid, rows, cols
	if len(cols) == 1 && len(rows) <= job.RowBoxes {
		m.Positions = job.Positions{Kind: job.Row, ColName: m.Positions.RowName, Cols: rows}
	} else if len(cols) == 1 {
		m.Positions.Cols = nil
	}
	return true
}

// rowName is the name of a row: the place, with its group before it where the place is
// a mere number, as in line 2.
func rowName(group, place string) string {
	if place[0] >= '0' && place[0] <= '9' {
		return group + " " + place
	}
	return place
}

// orNone gives each name as a list of one, and one empty list where there is none.
func orNone(names []string) [][]string {
	if len(names) == 0 {
		return [][]string{nil}
	}
	out := make([][]string, len(names))
	for i, n := range names {
		out[i] = []string{n}
	}
	return out
}

// sharedLimits takes over the limits of the single dimensions: one for all, or one for
// each name of the positions. It reports whether that can be told.
func sharedLimits(m *job.Dim, ds []*job.Dim) bool {
	var ok [4]bool
	m.Found, m.FoundBy, ok[0] = alikeIn(m, ds, func(d *job.Dim) (*reading.Limit, []*reading.Limit) { return d.Found, d.FoundBy })
	m.Left, m.LeftBy, ok[1] = alikeIn(m, ds, func(d *job.Dim) (*reading.Limit, []*reading.Limit) { return d.Left, d.LeftBy })
	ok[2] = same(ds, func(d *job.Dim) *reading.Limit { return d.Reuse })
	ok[3] = same(ds, func(d *job.Dim) *reading.Limit { return d.Repair })
	for _, d := range ds {
		// Of one block there is one reading found to compare with, one adjuster.
		if d.Adjuster != ds[0].Adjuster || len(d.Groups()) > 0 {
			return false
		}
	}
	return ok == [4]bool{true, true, true, true}
}

// same reports whether all have the same limit in words, or none.
func same(ds []*job.Dim, of func(*job.Dim) *reading.Limit) bool {
	for _, d := range ds {
		if lineOf(of(d)) != lineOf(of(ds[0])) {
			return false
		}
	}
	return true
}

func lineOf(l *reading.Limit) string {
	if l == nil {
		return ""
	}
	return l.Text()
}

// alikeIn gives the one limit of all boxes, or one for each column (each row, where
// there are no columns).
func alikeIn(m *job.Dim, ds []*job.Dim, of func(*job.Dim) (*reading.Limit, []*reading.Limit)) (one *reading.Limit, by []*reading.Limit, ok bool) {
	names := m.Positions.Names()
	// The limit of each box, in the order of rows and columns.
	var boxes []*reading.Limit
	for _, d := range ds {
		l, list := of(d)
		n := max(d.Positions.Boxes(), 1)
		if len(list) == n {
			boxes = append(boxes, list...)
			continue
		}
		for range n {
			boxes = append(boxes, l)
		}
	}
	first := boxes[0]
	equal := true
	for _, l := range boxes {
		equal = equal && lineOf(l) == lineOf(first)
	}
	if equal {
		return first, nil, true
	}
	if len(names) == 0 || len(boxes)%len(names) != 0 {
		return nil, nil, false
	}
	for i, l := range boxes {
		k := i % len(names)
		switch {
		case l == nil:
			return nil, nil, false
		case i < len(names):
			by = append(by, l)
		case lineOf(by[k]) != lineOf(l):
			return nil, nil, false
		}
	}
	return by[0], by, true
}
