package packs_test

import (
	"io/fs"
	"testing/fstest"
)

// mapFS is a file system of one file.
func mapFS(name, text string) fs.FS {
	return fstest.MapFS{name: &fstest.MapFile{Data: []byte(text)}}
}
