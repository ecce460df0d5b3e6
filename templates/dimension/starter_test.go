package dimension

import (
	"os"
	"sync"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

var startersRead sync.Map // by file

// starter is a definition that ships, read once for all tests, which must not change it, and a
// composer of it for sheets of a width.
func starter(file string, span layout.Mm) (*job.Job, *block.Composer) {
	once, _ := startersRead.LoadOrStore(file, sync.OnceValue(func() *job.Job {
		jb, _ := packs.Load(os.DirFS("../../packs/starters"), packs.Inputs{Definition: file})
		return jb
	}))
	jb := once.(func() *job.Job)()
	return jb, block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, span)
}
