package dimension

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// A Told is one thing that is told of a dimension in a table of like places: what it
// is, a limit, what to do when it is out. Those that are alike at all places stand
// above the table, the others in the row of their place.
type Told struct {
	Key string // alike for what reads alike
	Set func(width layout.Mm) layout.Block
}

// TableLines are all that a table tells of a dimension besides its boxes. A limit by
// what was found names no page: the rows of a table may go on to another.
func TableLines(c *block.Composer, d *job.Dim, back bool) []Told {
	c = c.Now() // texts are compared
	var out []Told
	add := func(set func(width layout.Mm) layout.Block) {
		if key := wordsOf(set(c.Span)); key != "" {
			out = append(out, Told{key, set})
		}
	}
	note := ""
	if !back {
		note = lastChanceNote(c, d)
	}
	plain := *d
	plain.Place.Label = "" // the row says where
	for i := range Head(c, &plain, note, c.Span) {
		add(func(w layout.Mm) layout.Block { return Head(c, &plain, note, w)[i] })
	}
	for _, line := range tableLimits(c, d, back) {
		add(func(w layout.Mm) layout.Block {
			return c.Para(w, []layout.Run{layout.T(layout.Strong, line)}, layout.ParaOpts{Ref: d.At})
		})
	}
	for i := range LimitNotes(c, d, c.Span, back) {
		add(func(w layout.Mm) layout.Block { return LimitNotes(c, d, w, back)[i] })
	}
	return out
}

// TableLimit is the limit that stands above the boxes of a column, or above the box of
// a row where it differs by place; empty where the reading is only recorded.
func TableLimit(c *block.Composer, d *job.Dim, back bool) string {
	switch {
	case d.Left == nil && d.WatchedOnly() && !back:
		return zoned(c, d, d.Found)
	case d.Left == nil || d.FoundIsRecorded() && !back:
		return ""
	}
	return zoned(c, d, d.Left)
}

// tableLimits are the limits of a dimension that do not stand above its boxes: how it is
// to be left, and those of old and mended parts.
func tableLimits(c *block.Composer, d *job.Dim, back bool) []string {
	var out []string
	if d.FoundIsRecorded() && !back && d.Left.Kind != reading.Record {
		out = append(out, c.W.Dimension.LeftAs.With(PlainWords(c.W, d.Left)))
	}
	for _, old := range []struct {
		limit *reading.Limit
		name  string
	}{{nil, ""}, {d.Reuse, c.W.Common.OldPart}, {d.Repair, c.W.Common.Mended}} {
		l := old.limit
		if old.name == "" {
			l = limitHere(d, back)
		} else if l != nil {
			out = append(out, OldWords(c.W, old.name, l, WornWords(c, d, l)))
		}
		if l == nil {
			continue
		}
		for _, line := range l.Words().Small {
			switch words := PartWords(c.W, line); {
			case hasBlank(line):
			case old.name != "": // the name stands once, before all of it
				out[len(out)-1] += ", " + words
			default:
				out = append(out, words)
			}
		}
	}
	return out
}

// limitHere is the limit that a reading is judged by on one of the two sheets of work,
// nil if by none.
func limitHere(d *job.Dim, back bool) *reading.Limit {
	switch {
	case d.Left == nil && d.WatchedOnly() && !back:
		return d.Found
	case d.Left != nil && (back || !d.FoundIsRecorded()):
		return d.Left
	}
	return nil
}

// zoned is the main line of a limit as text, its size by letter and grade before it if
// it was written so.
func zoned(c *block.Composer, d *job.Dim, l *reading.Limit) string {
	return strings.TrimSpace(zone(d, l) + " " + PlainWords(c.W, l))
}

// TableVerdict are the boxes to tick below the box of a row: in or out, and for an old
// part whether it goes back.
func TableVerdict(c *block.Composer, d *job.Dim, back bool) []layout.Block {
	sides := []Side{{work: &d.FoundWork}}
	if back {
		sides = []Side{{Copied: true}, {work: &d.LeftWork}}
	}
	return verdictList(c, d, sides, back)
}

// wordsOf are the words of a block in one line.
func wordsOf(b layout.Block) string {
	var out []string
	for _, it := range b.Items() {
		if t, ok := it.Shape.(layout.Text); ok {
			out = append(out, t.S)
		}
	}
	return strings.Join(out, " ")
}

// FoundOut is what is done with a reading that is out as found, where both readings are told of
// together.
func FoundOut(w *words.Catalogue, d *job.Dim) string {
	return w.Common.AsFound + ", " + w.Common.IfOut.With(d.FoundOut)
}
