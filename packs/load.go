package packs

import (
	"io/fs"
	"strconv"

	"matchmark/packs/blocks"
	"matchmark/packs/choose"
	"matchmark/packs/def"
	"matchmark/packs/expand"
	"matchmark/packs/hazard"
	"matchmark/packs/job"
	"matchmark/packs/keep"
	"matchmark/packs/names"
	"matchmark/packs/plan"
	"matchmark/packs/proof"
	"matchmark/packs/proofread"
	"matchmark/packs/putback"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// Format is the number of the paper format. It is part of the digest: when what
// is printed for the same definition changes, it goes up.
const Format = 14

// Inputs names the files that a job is made from.
type Inputs struct {
	Definition string   // the equipment definition
	Job        string   // a job file that overrides number, tag and the like; may be empty
	Site       string   // a site file; may be empty
	Last       []string // readings of earlier outages, which are printed beside the boxes
	// Language is that of the paper, by ISO 639-1; empty takes the site's, else English.
	Language string
	// Spares are the blank tags of each kind; nil for the usual ones.
	Spares *keep.Spares
}

// Load reads the definition, and the job file if one is named, and decides the
// job. The Job is never nil: where a problem stands it has a hole. Problems are
// sorted by place. Only Problems without an error make a Job that may be
// printed.
func Load(files fs.FS, in Inputs) (*job.Job, source.Problems) {
	ix := &names.Index{Job: &job.Job{Files: source.Files{}}}
	site := read(files, in, ix)
	if ix.Def != nil {
		expand.Site(ix, site)
		if !ix.Def.At.IsZero() { // else nothing could be read, which has been told
			decide(ix, in.Spares)
		}
	}
	inTheirWords(ix)
	ix.Problems.Unless(def.AmountCodes...)
	ix.Problems.Sort()
	if left := len(ix.Problems) - source.Most; left > 0 {
		ix.Problems = ix.Problems[:source.Most]
		ix.Problems.Add(source.Pos{File: in.Definition}, "more-problems", strconv.Itoa(left)+" more problems are not listed: put these right first")
	}
	return ix.Job, ix.Problems
}

// decide runs the stages in order. Each leaves holes where it found problems and
// the next walks round them, so that one run tells everything.
func decide(ix *names.Index, spares *keep.Spares) {
	j := ix.Job
	tell := func(ps source.Problems) { ix.Problems = append(ix.Problems, ps...) }
	proofread.Limits(ix)
	ix.Chosen = choose.Machine(ix.Def, &ix.Problems)
	j.Choices, j.NotHere = ix.Chosen.Choices, ix.Chosen.NotHere()
	ok := expand.Job(ix)
	ix.Problems.Follow(ix.Read, 1)
	if !ok {
		return
	}
	named := len(ix.Problems)
	defer func() { ix.Problems.Follow(named, 2) }()
	tell(plan.Boxes(j))
	tell(putback.Rows(j))
	keep.Close(j)
	tell(keep.Supplies(j))
	tell(plan.Work(j))
	w := walk.Of(j)
	w.Note()
	tell(hazard.Attach(j))
	proof.Bind(w)
	tell(proof.All(w))
	proofread.All(ix)
	tell(keep.Numbers(j))
	tell(keep.Tags(j, spares))
	blocks.Merge(j)
}
