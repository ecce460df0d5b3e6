package expand

import (
	"strconv"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// positions reads the places at which a dimension is measured.
func (b *builder) positions(p def.Positions) job.Positions {
	if p.Every.Written() || p.Rows.Written() {
		return b.log(p)
	}
	switch {
	case len(p.Axes) == 1 && len(p.Axes[0].Values) == 1 && strings.HasPrefix(p.Axes[0].Values[0].Value, "clock"):
		return b.clock(p.Axes[0].Values[0])
	case len(p.Axes) == 1:
		out := job.Positions{Kind: job.Row, ColName: p.Axes[0].Name.Value, Cols: names.Texts(p.Axes[0].Values)}
		if len(out.Cols) > job.RowBoxes {
			return job.Positions{Kind: job.Grid, RowName: out.ColName, Rows: out.Cols}
		}
		return out
	case len(p.Axes) == 2:
		return job.Positions{
			Kind:    job.Grid,
			RowName: p.Axes[0].Name.Value, Rows: names.Texts(p.Axes[0].Values),
			ColName: p.Axes[1].Name.Value, Cols: names.Texts(p.Axes[1].Values),
		}
	}
	return job.Positions{}
}

// clock reads "clock", four places a quarter turn apart, or "clock of 8".
func (b *builder) clock(t source.Text) job.Positions {
	n := 4
	if of, ok := strings.CutPrefix(t.Value, "clock of "); ok {
		n, _ = strconv.Atoi(of)
	} else if t.Value != "clock" {
		n = 0
	}
	if n < 3 || n > 12 || 360%n != 0 {
		b.Problems.Add(t.At, "clock", source.Quote(t.Value)+": a clock face has 3, 4, 5, 6, 8, 9, 10 or 12 places, evenly round from the top", "at: clock", "or at: clock of 8")
		return job.Positions{}
	}
	out := job.Positions{Kind: job.Clock}
	for i := range n {
		out.Cols = append(out.Cols, strconv.Itoa(i*360/n)+"°")
	}
	return out
}

// maxLogRows is the most rows of a log: more than fill four pages.
const maxLogRows = 60

// log reads {every: 2 min, rows: 8, read: [hub, cover]}: the first row is at the
// start.
func (b *builder) log(p def.Positions) job.Positions {
	const example = "at: {every: 2 min, rows: 8, read: [hub, shaft, cover]}"
	if !p.Every.Written() || !p.Rows.Written() || len(p.Axes) > 1 {
		b.Problems.Add(p.At, "log", "a log has every, rows and one list of what is read each time", example)
		return job.Positions{}
	}
	every, ok := b.Quantity(p.Every, "2 min")
	if !ok {
		return job.Positions{}
	}
	if every.Unit.Dimension() != units.Time || every.Number.Sign() <= 0 {
		b.Problems.Add(p.Every.At, "log", source.Quote(p.Every.Value)+" is no time between two readings", "for example every: 2 min")
		return job.Positions{}
	}
	rows, ok := names.WholeNumber(p.Rows)
	if !ok || rows < 2 || rows > maxLogRows {
		b.Problems.Add(p.Rows.At, "log", source.Quote(p.Rows.Value)+" rows: a log has from 2 to "+strconv.Itoa(maxLogRows), "for example rows: 8")
		return job.Positions{}
	}
	out := job.Positions{Kind: job.Log}
	for i := range rows {
		at := every
		at.Number = every.Number.Mul(units.Whole(int64(i)))
		out.Rows = append(out.Rows, at.Print())
	}
	if len(p.Axes) == 1 {
		out.ColName, out.Cols = p.Axes[0].Name.Value, names.Texts(p.Axes[0].Values)
	}
	return out
}
