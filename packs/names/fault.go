package names

import (
	"matchmark/packs/reading"
	"matchmark/packs/source"
)

// Fault reports what is wrong with a text, which is a *reading.Fault, at its place
// within it, with the help that it brings along, or else this one.
func (b *Index) Fault(t source.Text, err error, help ...string) {
	f := err.(*reading.Fault)
	if len(f.Help) > 0 {
		help = f.Help
	}
	b.Problems.Add(t.Part(f.Offset, max(f.Width, 1)), f.Code, f.Message, help...)
}
