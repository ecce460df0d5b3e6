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

// writeAll writes every file under a temporary name in its folder, and renames
// them only when all are whole, the last of the list last. When it fails, old
// files are as they were and no temporary file is left.
func writeAll(files []output) (err error) {
	var temps []string
	defer func() {
		if err != nil {
			for _, t := range temps {
				os.Remove(t)
			}
		}
	}()
	for _, f := range files {
		t, err := writeTemp(f)
		if t != "" {
			temps = append(temps, t)
		}
		if err != nil {
			return err
		}
	}
	return renameAll(files, temps)
}

// renameAll puts the temporary files in their places. When one cannot be put there,
// those already replaced get their old content back.
func renameAll(files []output, temps []string) error {
	old := make([][]byte, len(files))
	for i, f := range files {
		data, err := os.ReadFile(f.path)
		if err != nil && !errors.Is(err, fs.ErrNotExist) {
			return err
		}
		old[i] = data
	}
	for i, f := range files {
		err := os.Rename(temps[i], f.path)
		if err == nil {
			continue
		}
		for k := range i {
			if old[k] == nil {
				err = errors.Join(err, os.Remove(files[k].path))
			} else {
				err = errors.Join(err, os.WriteFile(files[k].path, old[k], 0o644))
			}
		}
		return err
	}
	return nil
}

// writeTemp writes a file under a temporary name beside its own, which it returns
// as soon as there is such a file.
func writeTemp(f output) (name string, err error) {
	if err := os.MkdirAll(filepath.Dir(f.path), 0o755); err != nil {
		return "", err
	}
	t, err := os.CreateTemp(filepath.Dir(f.path), ".matchmark-*")
	if err != nil {
		return "", err
	}
	return t.Name(), writeClose(t, f.data.Bytes())
}

func writeClose(t *os.File, data []byte) error {
	if _, err := t.Write(data); err != nil {
		t.Close()
		return err
	}
	if err := t.Chmod(0o644); err != nil {
		t.Close()
		return err
	}
	return t.Close()
}

// fileName makes part of a file name of a job number or revision: letters,
// digits, dash, dot and underscore stay, all else becomes a dash.
func fileName(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r >= 'a' && r <= 'z', r >= 'A' && r <= 'Z', r >= '0' && r <= '9', r == '-', r == '_', r == '.':
			return r
		}
		return '-'
	}, s)
}
