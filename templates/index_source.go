package templates

import (
	"slices"
	"strings"
	"unicode/utf8"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// coarseLine tells below the list why instruments with so coarse a step will do, for who looks
// through the limits and the instruments together: each reason once, behind its marks.
func (c *composer) coarseLine(rows [][]*job.Dim) []layout.Piece {
	var whys []string
	marks := map[string][]string{}
	for _, d := range slices.Concat(rows...) {
		if d.WhyCoarse == "" {
			continue
		}
		why := d.WhyCoarse
		if d.By != nil {
			why = d.By.Name + c.W.Common.Colon + why
		}
		if len(marks[why]) == 0 {
			whys = append(whys, why)
		}
		if !slices.Contains(marks[why], d.Base) {
			marks[why] = append(marks[why], d.Base)
		}
	}
	var runs []layout.Run
	for i, why := range whys {
		if i > 0 {
			runs = append(runs, layout.T(layout.Caption, " · "))
		}
		runs = append(runs, layout.T(layout.Caption, strings.Join(marks[why], ", ")+" "+why))
	}
	if len(runs) == 0 {
		return nil
	}
	return []layout.Piece{{Block: c.Para(c.Span, runs, layout.ParaOpts{Ref: rows[0][0].At}), Gap: 1}}
}

// sourceText is where a limit comes from, or that nobody has said.
func (c *composer) sourceText(d *job.Dim) string {
	if d.NotSourced() {
		return c.W.Index.NotSourced
	}
	return numberBreaks(d.Source)
}

// indexSource is the source in its column.
func (c *composer) indexSource(g block.Grid, d *job.Dim) layout.Block {
	if d.NotSourced() {
		return c.Para(g.Table.Room(2), []layout.Run{{Text: c.sourceText(d), Style: layout.SubBold, Deco: layout.Boxed}}, layout.ParaOpts{Ref: d.At})
	}
	return g.Text(2, layout.Sub, c.sourceText(d), d.At)
}

// longNumber is from how many signs the number of a document may be parted.
const longNumber = 15

// numberBreaks lets long numbers of documents go on in the next line behind a dash;
// unlike marks and sizes they are not copied by hand.
func numberBreaks(source string) string {
	words := strings.Split(source, " ")
	for i, w := range words {
		if utf8.RuneCountInString(w) >= longNumber {
			words[i] = strings.ReplaceAll(w, "-", "-\u200b")
		}
	}
	return strings.Join(words, " ")
}
