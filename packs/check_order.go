package packs

import (
	"strings"

	"matchmark/packs/source"
)

// checkHeadings sees that no two sections have one name: put-backs go by it.
func (b *builder) checkHeadings() {
	first := map[string]source.Pos{}
	for _, ds := range b.def.Sections {
		name := strings.TrimSpace(ds.Name.One.Value)
		if name == "" {
			continue
		}
		if at, ok := first[name]; ok {
			b.problems.AddWith(ds.Name.One.At, "section-twice", "two sections are called "+source.Quote(name)+"; reverse: goes by the name", at, "the first one", "give this one another name")
			continue
		}
		first[name] = ds.Name.One.At
	}
}
