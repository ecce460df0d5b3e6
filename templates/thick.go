package templates

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// mostPages is how many pages one pack may have, a ream: more cannot be bound, carried or found
// one's way in, and come of a slip in an each:. The largest machines have about 300.
const mostPages = 500

// tooThick tells of a pack of too many pages, and which sheets take most of them.
func tooThick(j *job.Job, frames []layout.Frame) (out source.Problems) {
	if len(frames) <= mostPages {
		return nil
	}
	on := map[string]int{}
	for _, f := range frames {
		on[f.Sheet]++
	}
	sheets := slices.SortedFunc(maps.Keys(on), func(a, b string) int { return cmp.Or(on[b]-on[a], strings.Compare(a, b)) })
	out.Add(j.At, "too-many", fmt.Sprintf("the pack has %d pages, and %d can be bound and carried; the sheet %s alone has %d",
		len(frames), mostPages, sheets[0], on[sheets[0]]),
		"make definitions of their own for parts of the machine")
	return out
}
