package main

import (
	"bytes"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"
)

// stdinName is how problems speak of standard input.
const stdinName = "standard input"

// disk opens any path that the planner may type, absolute or with .. in it, which
// os.DirFS would refuse; the name - is standard input.
type disk struct{ stdin io.Reader }

// Open implements fs.FS.
func (d disk) Open(name string) (fs.File, error) {
	if name == stdinName {
		return &stream{Reader: d.stdin}, nil
	}
	return os.Open(name)
}

// Within reports whether a file really lies, behind all links, in the folder of another
// or below. A file that is not there lies where its name says.
func (d disk) Within(file, root string) bool {
	real, err := filepath.EvalSymlinks(file)
	if err != nil {
		return errors.Is(err, fs.ErrNotExist)
	}
	dir := "."
	if root != stdinName {
		dir = filepath.Dir(root)
	}
	folder, err := filepath.EvalSymlinks(dir)
	if err != nil {
		return false
	}
	rel, err := filepath.Rel(folder, real)
	return err == nil && rel != ".." && !strings.HasPrefix(rel, ".."+string(filepath.Separator))
}

// stream is standard input as a file.
type stream struct{ io.Reader }

func (s *stream) Stat() (fs.FileInfo, error) { return streamInfo{}, nil }
func (s *stream) Close() error               { return nil }

// streamInfo says no more than that standard input is an ordinary file of
// unknown size.
type streamInfo struct{}

func (streamInfo) Name() string       { return stdinName }
func (streamInfo) Size() int64        { return 0 }
func (streamInfo) Mode() fs.FileMode  { return 0 }
func (streamInfo) ModTime() time.Time { return time.Time{} }
func (streamInfo) IsDir() bool        { return false }
func (streamInfo) Sys() any           { return nil }

// inputName is the name under which a file given on the command line is read.
func inputName(arg string) string {
	if arg == "-" {
		return stdinName
	}
	return arg
}

// output is one file to be written, complete in memory.
type output struct {
	path string
	data *bytes.Buffer
}
