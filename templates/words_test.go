package templates

import (
	"testing"

	"matchmark/packs/reading"
)

// Every word that a limit can ask for has its text in the catalogue: one that lacks
// would leave a hole in a printed limit.
func TestTheCatalogueHasEveryWordOfLimits(t *testing.T) {
	for w := reading.Literal + 1; w < reading.NumWords; w++ {
		if english.reading[w] == "" {
			t.Errorf("word %d of limits has no text", w)
		}
	}
	for _, g := range []reading.Group{reading.Mean, reading.Spread, reading.Sum} {
		if english.dims.group[g] == "" {
			t.Errorf("group %d of readings has no text", g)
		}
	}
}
