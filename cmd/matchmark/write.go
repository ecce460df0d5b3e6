package main

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// tempPattern names the files that are not whole yet, and the old ones until all new
// ones stand in their places.
const tempPattern = ".matchmark-*"

// writeAll writes every file under a temporary name in its folder, and renames them only
// when all are whole, the last of the list last. When it fails, old files are as they
// were and no temporary file is left. A program that is killed leaves each file whole,
// old or new, and perhaps temporary ones, which the next print takes away. Two prints
// into one folder come one after the other, where the system can say so.
func writeAll(files []output) (err error) {
	for _, dir := range folders(files) {
		if err := os.MkdirAll(dir, 0o755); err != nil {
			return err
		}
		if unlock, alone := lock(dir); alone {
			defer unlock()
			sweep(dir)
		}
	}
	var temps, old []string
	defer func() {
		for _, t := range append(temps, old...) {
			if t != "" {
				os.Remove(t)
			}
		}
	}()
	for _, f := range files {
		t, err := writeTemp(filepath.Dir(f.path), f.data.Bytes())
		temps = append(temps, t)
		if err != nil {
			return err
		}
	}
	for _, f := range files {
		o, err := setAside(f.path)
		old = append(old, o)
		if err != nil {
			return err
		}
	}
	return renameAll(files, temps, old)
}

// folders are those that the files go to, each once.
func folders(files []output) (out []string) {
	seen := map[string]bool{}
	for _, f := range files {
		if dir := filepath.Dir(f.path); !seen[dir] {
			seen[dir] = true
			out = append(out, dir)
		}
	}
	return out
}

// sweep takes away what a killed print has left.
func sweep(dir string) {
	left, _ := filepath.Glob(filepath.Join(dir, tempPattern))
	for _, name := range left {
		os.Remove(name)
	}
}

// renameAll puts the temporary files in their places. When one cannot be put there,
// those already replaced get their old files back, which lie beside them.
func renameAll(files []output, temps, old []string) error {
	for i, f := range files {
		err := os.Rename(temps[i], f.path)
		if err == nil {
			temps[i] = ""
			continue
		}
		for k := range i {
			if old[k] == "" {
				err = errors.Join(err, os.Remove(files[k].path))
				continue
			}
			err = errors.Join(err, os.Rename(old[k], files[k].path))
			old[k] = ""
		}
		return err
	}
	return nil
}

// setAside keeps an old file under a second name until all new ones are in place: as a
// link where the disk has them, else as a copy. A file that is not there has none. A link
// that stands in the place of a file is itself kept, never what it leads to.
func setAside(path string) (string, error) {
	info, err := os.Lstat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return "", nil
	case err != nil:
		return "", err
	case info.IsDir():
		return "", &fs.PathError{Op: "write", Path: path, Err: errors.New("a folder has this name")}
	}
	dir := filepath.Dir(path)
	name, err := writeTemp(dir, nil)
	if err != nil {
		return name, err
	}
	if err := os.Remove(name); err != nil {
		return name, err
	}
	if os.Link(path, name) == nil {
		return name, nil
	}
	data, err := os.ReadFile(path)
	if err != nil {
		return "", err
	}
	return writeTemp(dir, data)
}

// writeTemp writes a file under a temporary name in a folder, which it returns as soon as
// there is such a file. The data is on the disk when it returns: a full disk is told here.
func writeTemp(dir string, data []byte) (name string, err error) {
	t, err := os.CreateTemp(dir, tempPattern)
	if err != nil {
		return "", err
	}
	if _, err = t.Write(data); err == nil {
		err = t.Chmod(0o644)
	}
	if err == nil && len(data) > 0 {
		err = t.Sync()
	}
	return t.Name(), errors.Join(err, io.Closer(t).Close())
}
