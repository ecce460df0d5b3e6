package packs

import (
	"io/fs"
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// mostIncluded is the most files that one definition may include, and the most copies of
// files that it may use, in all.
const mostIncluded = 50

// A resolver is a file system that knows where a file really lies, behind the links of
// the disk. One that does not has no links.
type resolver interface {
	// Within reports whether a file lies in the folder of another, or below.
	Within(file, root string) bool
}

// A gatherer takes what other files describe into a definition.
type gatherer struct {
	ix    *names.Index
	root  string // the file of the definition
	files fs.FS
	read  func(string) ([]byte, bool)
	met   map[string]bool            // files that were included
	used  map[string]*def.Definition // files that were used, with all that they use themselves
}

// gather takes the things of included files into the definition, depth first, each file
// once, and the copies of those that it uses. A file that is being read already is a ring.
func gather(ix *names.Index, root string, files fs.FS, read func(string) ([]byte, bool)) {
	g := &gatherer{ix: ix, root: root, files: files, read: read, met: map[string]bool{}, used: map[string]*def.Definition{}}
	g.include(root, ix.Def.Include, []string{root})
	g.use(ix.Def, root, []string{root})
}

// include takes the things of included files into the definition.
func (g *gatherer) include(file string, list []source.Text, open []string) {
	ix := g.ix
	for _, t := range list {
		name, ok := beside(ix, g.files, g.root, file, t)
		switch {
		case !ok:
			continue
		case slices.Contains(open, name):
			ix.Problems.Add(t.At, "include-ring", way(t, "include", name, open), "take one of the include: lines out")
			continue
		case g.met[name]:
			continue // taken already, by another way
		case len(g.met) == mostIncluded:
			ix.Problems.Add(t.At, "too-many", "over 50 files are included", "put what belongs together into one file")
			return
		}
		g.met[name] = true
		data, ok := g.named(name, t)
		if !ok {
			continue
		}
		d, problems := ix.Tongue.ReadIncluded(name, data)
		ix.Problems = append(append(ix.Problems, problems...), ix.Def.Take(d)...)
		ix.Def.KnowEnglish(d.English)
		g.include(name, d.Include, append(slices.Clone(open), name))
	}
}

// use puts the copies of the files that a definition uses in their places.
func (g *gatherer) use(d *def.Definition, file string, open []string) {
	for i := 0; i < len(d.Sections); {
		u := d.Sections[i].Use
		if u == nil {
			i++
			continue
		}
		from, name := &def.Definition{}, ""
		if u.File.Written() {
			name, from = g.take(u.File, file, open)
		}
		if len(d.Copied)+len(from.Copied) >= mostIncluded {
			g.ix.Problems.Add(u.At, "too-many", "over 50 copies of files are used", "make definitions of their own for parts of the machine")
			d.Sections = slices.DeleteFunc(d.Sections, func(s *def.Section) bool { return s.Use != nil })
			return
		}
		g.ix.Problems = append(g.ix.Problems, d.Use(i, name, from)...)
	}
}

// take reads a file that is used, with all that it includes and uses itself; what could
// not be read is empty.
func (g *gatherer) take(t source.Text, file string, open []string) (string, *def.Definition) {
	name, ok := beside(g.ix, g.files, g.root, file, t)
	switch {
	case !ok:
		return name, &def.Definition{}
	case slices.Contains(open, name):
		g.ix.Problems.Add(t.At, "use-ring", way(t, "use", name, open), "take one of the use: lines out")
		return name, &def.Definition{}
	case g.used[name] != nil:
		return name, g.used[name]
	case len(g.used)+len(open) > mostIncluded:
		g.ix.Problems.Add(t.At, "too-many", "over 50 files are used", "put what belongs together into one file")
		return name, &def.Definition{}
	}
	d := &def.Definition{}
	if data, ok := g.named(name, t); ok {
		var problems source.Problems
		d, problems = g.ix.Tongue.ReadUsed(name, data)
		g.ix.Problems = append(g.ix.Problems, problems...)
		g.ix.Def.KnowEnglish(d.English)
		open = append(slices.Clone(open), name)
		g.include(name, d.Include, open)
		d.English = g.ix.Def.English // where the copies find the English of their names
		g.use(d, name, open)
	}
	g.used[name] = d
	return name, d
}

// way tells how a file comes to name itself.
func way(t source.Text, verb, name string, open []string) string {
	return source.Quote(t.Value) + " " + verb + "s itself: " + strings.Join(append(open[slices.Index(open, name):], name), " "+verb+"s ")
}

// named reads a file that another one names; one that cannot be read is told where it is
// named.
func (g *gatherer) named(name string, t source.Text) ([]byte, bool) {
	told := len(g.ix.Problems)
	data, ok := g.read(name)
	if !ok {
		for i := range g.ix.Problems[told:] {
			p := &g.ix.Problems[told+i]
			p.Pos, p.Message = t.At, source.Quote(t.Value)+": "+p.Message
		}
	}
	return data, ok
}

// inTheirWords tells each problem of a used file in the words of that file, with the
// places where it is used.
func inTheirWords(ix *names.Index) {
	if ix.Def == nil || len(ix.Def.Copied) == 0 {
		return
	}
	for i := range ix.Problems {
		p := &ix.Problems[i]
		var of, named []*def.Copied
		for _, as := range names.Keys(ix.Def.Copied) {
			c := ix.Def.Copied[as]
			if c.File != p.Pos.File || strings.HasPrefix(p.Code, "use-") {
				continue
			}
			of = append(of, c)
			if c.InWords(p) {
				named = append(named, c)
			}
		}
		if len(named) > 0 {
			of = named
		}
		for _, c := range of {
			p.See = append(p.See, source.Also{Pos: c.At, What: "used as " + c.As})
		}
	}
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
