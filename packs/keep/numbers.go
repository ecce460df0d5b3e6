package keep

import (
	"strconv"
	"unicode/utf8"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// The most signs that the numbers on every page and tag may have: the head of a page and
// the smallest label have room for so many of any letters, and no more.
const (
	MostNumber   = 20 // of a job number and of a machine's tag
	MostRevision = 4
)

// Numbers tells of a job number, a revision and a machine's tag that are too long for
// the heads of pages and for labels: each once, for it stands on all of them.
func Numbers(j *job.Job) source.Problems {
	var problems source.Problems
	tell := func(at source.Pos, what, text string, most int) {
		if n := utf8.RuneCountInString(text); n > most {
			problems.Add(at, "long-number", what+" "+source.Quote(text)+" has "+strconv.Itoa(n)+" signs; the heads of the pages and the labels have room for "+strconv.Itoa(most),
				"write it without what all numbers of the plant have in common")
		}
	}
	tell(j.Order.At, "the job number", j.Order.Number, MostNumber)
	tell(j.Order.At, "the revision", j.Order.Revision, MostRevision)
	tell(j.Equipment.At, "the machine's tag", j.Equipment.Tag, MostNumber)
	return problems
}
