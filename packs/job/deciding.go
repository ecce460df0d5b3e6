package job

import (
	"strconv"

	"matchmark/packs/phrase"
)

// markRange is a mark of a dimension in a sentence, or from one to another: D4 to D6. A
// number of more digits is no mark.
var markRange = phrase.Of(`\bD([0-9]{1,4})(?:(?:\s+(?:to|bis|a|à|do)\s+|\s*[–-]\s*)D([0-9]{1,4}))?\b`)

// Deciding are the dimensions, by their marks without place, that holds name: who releases
// one looks at their readings.
func (j *Job) Deciding() map[string]bool {
	out := map[string]bool{}
	for _, h := range j.Holds {
		for _, m := range markRange.FindAllStringSubmatch(h.What, -1) {
			from, _ := strconv.Atoi(m[1])
			to := from
			if n, err := strconv.Atoi(m[2]); err == nil {
				to = min(n, from+mostMarks)
			}
			for n := from; n <= to; n++ {
				out["D"+strconv.Itoa(n)] = true
			}
		}
	}
	return out
}

// mostMarks is how many marks one range in a sentence has at the most.
const mostMarks = 99
