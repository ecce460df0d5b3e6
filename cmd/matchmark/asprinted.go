package main

import (
	"io/fs"

	"matchmark/layout"
	"matchmark/packs"
	"matchmark/packs/def"
	"matchmark/packs/filled"
	"matchmark/packs/source"
)

// asPrinted takes from the digest in the files how the pack was printed that they are of, for
// its digest and its pages are told: on what paper, unless that was said, on both sides or with
// a second language. With change bars the front sheet has more on it, and against what they
// stand is not in the digest: the pages of the boxes are those in the files, and of all else
// too where the old revision is named. The problems are those of its files.
func (c *returned) asPrinted(disk fs.FS, in packs.Inputs, files []*filled.File, p cameBackFlags) source.Problems {
	for _, f := range files {
		as, barred, known := c.job.PrintedAs(f.Pack)
		if !known {
			continue
		}
		other := p.paper != "" && as.Letter != (c.paper == layout.Letter)
		if other {
			as.Letter = !as.Letter
		}
		if c.paper = layout.A4; as.Letter {
			c.paper = layout.Letter
		}
		c.duplex = as.BothSides
		if 0 < as.Second && as.Second <= len(def.Tongues) {
			also := in
			also.Language = def.Tongues[as.Second-1]
			if second, told := packs.Load(disk, also); told.Errors() == 0 {
				c.second = second
			}
		}
		if c.job.PrintAs(as); !other {
			c.job.PrintedIn(f.Pack)
		}
		if !barred {
			return nil
		}
		since, _, no := p.since.changes(disk, in, c.job)
		if c.since = since; since == nil && !other {
			c.pages = f.Pages
		}
		return no
	}
	return nil
}
