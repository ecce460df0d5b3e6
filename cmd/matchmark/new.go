package main

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/pflag"

	"matchmark/packs/bom"
	"matchmark/packs/def"
	"matchmark/packs/source"
	shipped "matchmark/packs/starters"
)

const newUsage = `usage: matchmark new NAME [--like STARTER] [--from PARTS.csv] [--out DIR]

Writes a first definition of the machine NAME that passes check and prints, and
beside it the schema by which editors complete and explain keys. With --like it
is one of the starters, with --from it is made of a table of parts, whose
columns are told by their heads: name, count, mass, thread, renew, note.

`

// newFlagSet are the flags of the new command.
type newFlagSet struct{ like, from, dir string }

func (n *newFlagSet) add(f *pflag.FlagSet) {
	f.StringVar(&n.like, "like", "", "begin with the `STARTER` of that name: "+strings.Join(shipped.Names(), ", "))
	f.StringVar(&n.from, "from", "", "make it of the table of parts in `FILE`, a CSV")
	f.StringVar(&n.dir, "out", ".", "write into `DIR`")
}

// newDefinition writes a first definition.
func newDefinition(args []string, s streams) int {
	var n newFlagSet
	flags := newFlags("new", s)
	n.add(flags)
	if err := parse(flags, args); err != nil {
		return s.usage(err, newUsage+flags.FlagUsages())
	}
	if flags.NArg() != 1 {
		return s.usage(errors.New("new takes the name of one machine"), "hint: matchmark new \"Sump pump\"\n")
	}
	if n.like != "" && n.from != "" {
		return s.usage(errors.New("--like and --from are two ways to begin"), "hint: take one of them\n")
	}
	name := strings.TrimSuffix(flags.Arg(0), ".yaml")
	text, code := firstText(name, n.like, n.from, s)
	if code != exitDone {
		return code
	}
	return writeNew(name, text, n.dir, s)
}

// firstText makes the definition.
func firstText(name, like, from string, s streams) (string, int) {
	switch {
	case like != "":
		text, ok := shipped.Like(name, like)
		if !ok {
			return "", s.usage(fmt.Errorf("no starter is called %q", like), "hint: the starters are "+andList(shipped.Names())+"\n")
		}
		return text, exitDone
	case from != "":
		data, problems := source.Read(disk{stdin: s.in}, inputName(from))
		var parts []bom.Part
		if problems.Errors() == 0 {
			parts, problems = bom.Read(inputName(from), data)
		}
		report(s.err, problems, source.Files{inputName(from): data})
		if problems.Errors() > 0 {
			return "", exitFor(problems)
		}
		var b bytes.Buffer
		if err := bom.Definition(&b, name, parts); err != nil {
			fmt.Fprintf(s.err, "error: %v\n", err)
			return "", exitFiles
		}
		return b.String(), exitDone
	}
	return shipped.New(name), exitDone
}

// writeNew writes the definition and, where there is none, the schema beside it. A file
// that is there already is left alone.
func writeNew(name, text, dir string, s streams) int {
	words := strings.FieldsFunc(allowedName(plainName(strings.ToLower(name))), func(c rune) bool { return c == '-' })
	path := filepath.Join(dir, cmp.Or(strings.Trim(strings.Join(words, "-"), "."), "machine")+".yaml")
	if _, err := os.Stat(path); !errors.Is(err, fs.ErrNotExist) {
		fmt.Fprintf(s.err, "error: %s is there already\nhint: give another name, or take it away first\n", path)
		return exitFiles
	}
	files := []output{{path: path, data: bytes.NewBufferString(text)}}
	said := path + ": a definition that passes check; read its comments first"
	schema := filepath.Join(dir, "matchmark.schema.json")
	if _, err := os.Stat(schema); errors.Is(err, fs.ErrNotExist) {
		var b bytes.Buffer
		if err := def.Schema(&b); err != nil {
			fmt.Fprintf(s.err, "error: %v\n", err)
			return exitFiles
		}
		files = append(files, output{path: schema, data: &b})
		said += "\n" + schema + ": for editors"
	}
	if err := writeAll(files); err != nil {
		fmt.Fprintf(s.err, "error: %v\n", err)
		return exitFiles
	}
	fmt.Fprintln(s.out, said)
	return exitDone
}
