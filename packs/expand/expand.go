// Package expand makes a job of a definition: everything repeated over its places,
// every name resolved to the thing that it stands for, every limit and quantity
// read. It knows names as they are written, and nothing of the order of work.
package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/heating"
	"matchmark/packs/lifting"
	"matchmark/packs/names"
)

// A builder holds what is known while a job is made.
type builder struct {
	*names.Index
	bigs map[string]*def.BigPart // by the part they are
}

// Job makes a job of what the index holds the definition of. The job has a hole
// where something could not be read, which is told. It reports whether the job can
// be walked; one with too many things is not.
func Job(ix *names.Index) bool {
	b := &builder{Index: ix}
	b.readOrder()
	b.readPlaces()
	b.readInstruments()
	b.readSets()
	b.readStacks()
	b.readParts()
	b.readJoints()
	b.readDims()
	b.readFormulas()
	b.readContainers()
	lifting.Read(ix)
	b.readHolds()
	b.readSays()
	heating.Read(ix)
	b.readCautions()
	b.readGuards()
	b.readSections()
	if b.Crowded {
		return false
	}
	b.resolveSteps()
	b.resolveLost()
	b.readBranches()
	b.resolveNoted()
	b.resolveJudged()
	b.readSupplies()
	return true
}

// Site takes over what a plant has decided once; an empty file leaves what is usual.
func Site(ix *names.Index, s *def.SiteFile) { (&builder{Index: ix}).readSite(s) }
