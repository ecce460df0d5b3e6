package main

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"

	"github.com/spf13/pflag"

	"matchmark/layout"
	"matchmark/layout/pdf"
)

const unpackUsage = `usage: matchmark unpack PACK.pdf [--out DIR]

Writes the files that a pack was made from, byte for byte as they were when it was
printed: the definition, the job and site files, and a note of the command and the
version of the program. A file of the same name and other content is never replaced.

`

// unpackFlags are the flags of the unpack command.
type unpackFlags struct{ out string }

func (u *unpackFlags) add(f *pflag.FlagSet) {
	f.StringVar(&u.out, "out", "out", "write into `DIR`")
}

// unpack writes the files that are kept inside a pack.
func unpack(args []string, s streams) int {
	var u unpackFlags
	flags := newFlags("unpack", s)
	u.add(flags)
	if err := parse(flags, args); err != nil {
		return s.usage(err, unpackUsage+flags.FlagUsages())
	}
	if flags.NArg() != 1 {
		return s.usage(errors.New("unpack takes one pack"), "hint: matchmark unpack PACK.pdf [--out DIR]\n")
	}
	name := flags.Arg(0)
	files, err := inside(name, u.out)
	if err == nil {
		err = writeAll(files)
	}
	if err != nil {
		fmt.Fprintf(s.err, "error: %v\n", err)
		return exitFiles
	}
	for _, f := range files {
		fmt.Fprintf(s.out, "%s: %d bytes\n", f.path, f.data.Len())
	}
	return exitDone
}

// inside reads the files of a pack, to be written into a folder.
func inside(name, dir string) ([]output, error) {
	data, err := os.ReadFile(name)
	if err != nil {
		return nil, err
	}
	list, err := pdf.Attached(data)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	if len(list) == 0 {
		return nil, fmt.Errorf("%s: no files are kept inside; they are in the pack, not in its tags", name)
	}
	if err := writable(list, runtime.GOOS); err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	var out []output
	for _, a := range list {
		path := filepath.Join(dir, filepath.FromSlash(a.Name))
		if old, err := os.ReadFile(path); err == nil && !bytes.Equal(old, a.Data) {
			return nil, fmt.Errorf("%s is there and holds something else; unpack into another folder: --out", path)
		}
		out = append(out, output{path: path, data: bytes.NewBuffer(a.Data)})
	}
	return out, nil
}

// writable reports whether a system can hold the files of a pack as they are named: the
// definition names some of them, so they cannot get other names here.
func writable(list []layout.Attachment, system string) error {
	folded := map[string]string{}
	for _, a := range list {
		for _, part := range strings.Split(a.Name, "/") {
			if system == "windows" && !anywhere(part) {
				return fmt.Errorf("%s is a name that Windows does not have for a file; unpack it on another system, and rename it where the definition names it", a.Name)
			}
		}
		key := strings.ToLower(a.Name)
		if other, twice := folded[key]; twice && (system == "windows" || system == "darwin") {
			return fmt.Errorf("%s and %s are one file on this system; unpack them on another one", other, a.Name)
		}
		folded[key] = a.Name
	}
	return nil
}
