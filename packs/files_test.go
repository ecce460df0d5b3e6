package packs_test

import (
	"io/fs"
	"testing/fstest"

	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// mapFS is a file system of one file.
func mapFS(name, text string) fs.FS {
	return fstest.MapFS{name: &fstest.MapFile{Data: []byte(text)}}
}

// loadLaw loads a definition that is one text, with its problems.
func loadLaw[T ~string | ~[]byte](text T) (*job.Job, source.Problems) {
	return packs.Load(mapFS("law.yaml", string(text)), packs.Inputs{Definition: "law.yaml"})
}
