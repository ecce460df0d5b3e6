package names

import (
	"strings"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// aSize is a number with a word behind it, somewhere in a text.
var aSize = phrase.Of(`\d[\d.,/ -]*[\p{L}°%µ][^\s,;]*`)

// amountFault tells what is wrong with a quantity, with what to write made of the
// author's own text: the unit that is missing is that of the example, which has the
// right one, and units of another dimension are not offered.
func (b *Index) amountFault(t source.Text, f *units.Fault, example string) {
	help := f.Help
	first, _, _ := strings.Cut(example, ", or ")
	of, err := units.ParseQuantity(strings.Replace(first, "…", "1", 1))
	switch {
	case f.Code == "no-unit" && err == nil:
		help = []string{"for example " + strings.TrimSpace(t.Value) + " " + of.Unit.Text()}
		if words := units.WordsOf(of.Unit.Dimension()); len(words) > 1 {
			help = append(help, "units of "+of.Unit.Dimension().String()+": "+strings.Join(words, ", "))
		}
	case f.Code == "unknown-unit" && err == nil:
		help = ofDimension(f.Help, of.Unit.Dimension())
	case f.Code == "not-a-number":
		help = []string{"for example " + example}
		if said := aSize.FindString(t.Value); said != "" {
			if q, err := units.ParseQuantity(strings.TrimSpace(said)); err == nil {
				help = []string{"write: " + q.Text()}
			}
		}
	}
	b.Problems.Add(t.Part(f.Offset, max(f.Width, 1)), f.Code, f.Message, help...)
}

// ofDimension keeps what was meant for a unit if it has the right dimension, else lists
// the units that have.
func ofDimension(help []string, d units.Dimension) []string {
	if len(help) == 1 {
		if q, err := units.ParseQuantity(help[0]); err == nil && q.Unit.Dimension() == d {
			return help
		}
	}
	return []string{"units of " + d.String() + ": " + strings.Join(units.WordsOf(d), ", ")}
}
