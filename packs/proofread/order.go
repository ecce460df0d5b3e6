package proofread

import (
	"strings"

	"matchmark/packs/source"
)

// checkHeadings sees that no two sections have one name: put-backs go by it.
func (b *proofreader) checkHeadings() {
	first := map[string]source.Pos{}
	for _, ds := range b.Def.Sections {
		name := strings.TrimSpace(ds.Name.One.Value)
		if name == "" {
			continue
		}
		if at, ok := first[name]; ok {
			b.Problems.AddWith(ds.Name.One.At, "section-twice", "two sections are called "+source.Quote(name)+"; reverse: goes by the name", at, "the first one", "give this one another name")
			continue
		}
		first[name] = ds.Name.One.At
	}
}
