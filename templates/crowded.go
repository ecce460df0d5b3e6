package templates

import (
	"bytes"
	"fmt"
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
)

// wideLetter is wider than any letter of the texts on pages, mm: a text that is over by
// more than all its letters would not fit if it were empty, for something else has
// taken its room.
const wideLetter = 3

// crowded words what does not fit through no fault of a text: the boxes beside it take
// the room, or the text is none that the author wrote. Each entry is told once, with
// what its author can do. It reports which of the misfits that speaks for.
func crowded(j *job.Job, all []misfit, out *source.Problems) map[int]bool {
	spoken := map[int]bool{}
	most := map[source.Pos]layout.Mm{}
	var order []source.Pos
	for i, m := range all {
		if m.Kind != layout.TooWide && m.Kind != layout.TooHigh || m.onTag || !beyondWords(j, m) {
			continue
		}
		spoken[i] = true
		at, _ := m.Ref.(source.Pos)
		if _, known := most[at]; !known {
			order = append(order, at)
		}
		most[at] = max(most[at], m.Over)
	}
	for _, at := range order {
		d := dimAt(j, at)
		switch {
		case at.IsZero() && len(order) > 1:
			// The fixed words of a sheet, squeezed by an entry that is told.
		case d != nil && narrower(j, d, most, at):
			// It stands in one table with the one whose boxes are too wide.
		case d != nil:
			out.Add(at, "too-wide", fmt.Sprintf("the boxes of %s take %.1f mm more room than the paper has", d.Mark, tenths(most[at])), append(roomFor(d), untabled(j, at)...)...)
		default:
			out.Add(at, "too-wide", fmt.Sprintf("what is printed for this entry takes %.1f mm more room than the paper has", tenths(most[at])),
				append([]string{"write the names and words of this entry shorter, or make two entries of it; the words printed around them stay as they are"}, untabled(j, at)...)...)
		}
	}
	return spoken
}

// untabled says that a step, or one that reads or moves what is written at a place, need not be
// printed in one table with the same step at other places; nothing where it is not.
func untabled(j *job.Job, at source.Pos) []string {
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			read := slices.ContainsFunc(slices.Concat(st.Measure, st.Set), func(d *job.Dim) bool { return d.At == at })
			moved := slices.ContainsFunc(slices.Concat(st.Remove, st.Fit), func(m *job.Move) bool { return m.At == at })
			if st.Table && (st.At == at || read || moved) {
				return []string{"or take as-table: yes out at " + st.Name() + ", where each place then has a step of its own"}
			}
		}
	}
	return nil
}

// narrower reports whether another dimension lacks the same room and has boxes of more
// digits: both stand in one table, whose columns the other has made too wide.
func narrower(j *job.Job, d *job.Dim, most map[source.Pos]layout.Mm, at source.Pos) bool {
	for other, over := range most {
		if o := dimAt(j, other); o != nil && over == most[at] && o.Box.Before+o.Box.After > d.Box.Before+d.Box.After {
			return true
		}
	}
	return false
}

// beyondWords reports whether no shorter text of the author would make a misfit fit.
func beyondWords(j *job.Job, m misfit) bool {
	if m.Kind == layout.TooWide && m.Over > layout.Mm(wideLetter*len([]rune(m.Text))) {
		return true
	}
	return !authored(j.Files, m.Text)
}

// authored reports whether a text, or a word of it, stands in one of the files: a mark
// with its place is put together from two words.
func authored(files source.Files, text string) bool {
	words := append(strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return strings.ContainsRune(" /\u00a0", r) }), strings.ToLower(text))
	for _, data := range files {
		data = bytes.ToLower(data)
		for _, w := range words {
			if len([]rune(w)) >= leastAuthored && bytes.Contains(data, []byte(w)) {
				return true
			}
		}
	}
	return false
}

// leastAuthored is the shortest word, in letters, that is taken for one of the author's:
// shorter ones stand in every file.
const leastAuthored = 5

// dimAt is the dimension that is written at a place of the file, nil if none is.
func dimAt(j *job.Job, at source.Pos) *job.Dim {
	for _, d := range j.Dims {
		if d.At == at && !at.IsZero() {
			return d
		}
	}
	return nil
}

// roomFor says how the boxes of a dimension can be made to take less room.
func roomFor(d *job.Dim) []string {
	var out []string
	switch d.Box.Form {
	case reading.Digits, reading.Fraction:
		out = append(out, fmt.Sprintf("fewer digits: its limits, nominal: and the reads: of its instrument make %d of them", d.Box.Before+d.Box.After))
	case reading.Ticks:
		out = append(out, "fewer answers, or shorter ones")
	}
	if d.Positions.Boxes() > 1 {
		out = append(out, "fewer places beside each other in at:, or a dimension of its own for some of them")
	}
	if len(out) == 0 {
		out = append(out, "shorter words in what:, with: and viewed-from:")
	}
	return out
}
