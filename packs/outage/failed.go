package outage

import (
	"fmt"
	"path"
	"strconv"

	"matchmark/packs/source"
)

// Refused says for paper in another language why a job is not printed: how many errors
// it has, and the first of them with its place. It is nil without an error.
func Refused(found source.Problems) source.Sentence {
	for _, p := range found {
		if p.Severity == source.Error {
			return refused{found.Errors(), p}
		}
	}
	return nil
}

type refused struct {
	errors int
	first  source.Problem
}

// In implements source.Sentence.
func (r refused) In(t source.Tongue) string {
	at := path.Base(r.first.Pos.File)
	if r.first.Pos.Line > 0 {
		at += " " + strconv.Itoa(r.first.Pos.Line)
	}
	return fmt.Sprintf(t.Said("problems: %d; the first, %s, [%s]: %s"), r.errors, at, r.first.Code, r.first.In(t))
}
