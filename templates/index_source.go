package templates

import (
	"strings"
	"unicode/utf8"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// coarseText is why an instrument with so coarse a step will do, for who looks through the
// limits and the instruments together.
func (c *composer) coarseText(d *job.Dim) string {
	if d.WhyCoarse == "" || d.By == nil {
		return d.WhyCoarse
	}
	return d.By.Name + ": " + d.WhyCoarse
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
