package main

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/def"
	"matchmark/packs/job"
)

// printing is how the flags put a job on a paper, of which its digest is told.
func (p *printFlags) printing(on layout.Paper, since *job.Since, old *job.Job) job.Printing {
	out := job.Printing{Letter: on == layout.Letter, BothSides: p.duplex, Second: slices.Index(def.Tongues, string(p.second)) + 1}
	if since != nil && old != nil {
		out.Since = old.Digest
	}
	return out
}

// again is what a command line says besides the files, to print a pack as it was printed
// with these flags; below it, that change bars are missing, for the definition that they
// stand against is not kept.
func (p *printFlags) again() (out string) {
	if p.paper != "" {
		out += " --paper " + strings.ToLower(p.paper)
	}
	if p.language != "" {
		out += " --language " + string(p.language)
	}
	if p.second != "" {
		out += " --second " + string(p.second)
	}
	if p.duplex {
		out += " --duplex"
	}
	if p.draft {
		out += " --draft"
	}
	for _, use := range slices.Sorted(maps.Keys(p.tags.spares)) {
		out += fmt.Sprintf(" --spares %s=%d", use, p.tags.spares[use])
	}
	if p.since != (sinceFlags{}) {
		out += "\nnot kept: what the change bars stand against; without --since the pack has another digest"
	}
	return out
}
