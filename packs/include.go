package packs

import (
	"io/fs"
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// mostIncluded is the most files that one definition may include, in all.
const mostIncluded = 50

// A resolver is a file system that knows where a file really lies, behind the links of
// the disk. One that does not has no links.
type resolver interface {
	// Within reports whether a file lies in the folder of another, or below.
	Within(file, root string) bool
}

// include takes the things of included files into the definition, depth first, each
// file once. A file that is being included already is a ring.
func include(ix *names.Index, root string, files fs.FS, read func(string) ([]byte, bool)) {
	met := map[string]bool{}
	var from func(file string, list []source.Text, open []string)
	from = func(file string, list []source.Text, open []string) {
		for _, t := range list {
			name, ok := beside(ix, files, root, file, t)
			switch {
			case !ok:
				continue
			case slices.Contains(open, name):
				ix.Problems.Add(t.At, "include-ring", source.Quote(t.Value)+" includes itself: "+strings.Join(append(open[slices.Index(open, name):], name), " includes "), "take one of the include: lines out")
				continue
			case met[name]:
				continue // taken already, by another way
			case len(met) == mostIncluded:
				ix.Problems.Add(t.At, "too-many", "over 50 files are included", "put what belongs together into one file")
				return
			}
			met[name] = true
			told := len(ix.Problems)
			data, ok := read(name)
			if !ok {
				for i := range ix.Problems[told:] { // stands where the file is named
					p := &ix.Problems[told+i]
					p.Pos, p.Message = t.At, source.Quote(t.Value)+": "+p.Message
				}
				continue
			}
			d, problems := ix.Tongue.ReadIncluded(name, data)
			ix.Problems = append(append(ix.Problems, problems...), ix.Def.Take(d)...)
			ix.Def.KnowEnglish(d.English)
			from(name, d.Include, append(slices.Clone(open), name))
		}
	}
	from(root, ix.Def.Include, []string{root})
}

// beside finds the file that another one names, which may not lie outside the folder of
// the root. What may not be read is told.
func beside(ix *names.Index, files fs.FS, root, file string, t source.Text) (string, bool) {
	name, ok := def.Beside(file, t.Value)
	if r, knows := files.(resolver); ok && knows {
		ok = r.Within(name, root)
	}
	if !ok {
		ix.Problems.Add(t.At, "include-path", source.Quote(t.Value)+" does not lie beside this file or in a folder below it", "put it there and name it by its path from here, as common/cautions.yaml")
	}
	return name, ok
}
