package choose

import (
	"cmp"
	"maps"
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/phrase"
)

// aMark is a mark of the definition, as D7: other keys are not seen on paper.
var aMark = phrase.Of(`^[A-Z][0-9]+$`)

// NotHere lists the marks of what was left out, by their letters and numbers: who looks for the one
// that is missing in a row reads that it is not meant.
func (c *Chosen) NotHere() []string {
	out := slices.Collect(maps.Keys(c.marks))
	slices.SortFunc(out, func(a, b string) int { return cmp.Or(cmp.Compare(a[0], b[0]), job.ByNumber(a, b)) })
	return out
}

// leaveOut remembers what was left out by its key, with the reason.
func (b *chooser) leaveOut(x any, key, why string) {
	b.chosen.LeftOut[key] = why
	if marked(x) && aMark.MatchString(key) {
		b.chosen.marks[key] = true
	}
}

// marked reports whether a thing goes by its mark on paper. The keys of parts, locks, permits and
// openings are the author's own, and a valve V3 is a part with its name.
func marked(x any) bool {
	switch x.(type) {
	case *def.Part, *def.Isolation, *def.Permit, *def.Opening, *def.Caution:
		return false
	}
	return true
}
