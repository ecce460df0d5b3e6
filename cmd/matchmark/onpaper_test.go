package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
)

// The project's own definitions, the starters and testdata/good, are loaded once and set
// on paper once for all tests that read them. Who asks for a job or a pack here must not
// change it.

const startersDir = "../../packs/starters"

var goodDir = filepath.Join(testdata, "good")

var papers = []layout.Paper{layout.A4, layout.Letter}

// starters lists the definitions that ship.
func starters(t *testing.T) []string {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(startersDir, "*.yaml"))
	if err != nil || len(files) == 0 {
		t.Fatalf("no starters in %s: %v", startersDir, err)
	}
	for i, f := range files {
		files[i] = filepath.Base(f)
	}
	return files
}

// ownWith lists the paths of the good definitions and the starters that have one of some
// keys on top; without a key all of them. There must be at least so many.
func ownWith(t *testing.T, least int, keys ...string) []string {
	t.Helper()
	var all, out []string
	for _, name := range definitions(t, "good") {
		all = append(all, filepath.Join(goodDir, name))
	}
	for _, name := range starters(t) {
		all = append(all, filepath.Join(startersDir, name))
	}
	for _, path := range all {
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		has := len(keys) == 0
		for _, key := range keys {
			has = has || strings.Contains(string(data), "\n"+key+":")
		}
		if has {
			out = append(out, path)
		}
	}
	if len(out) < least {
		t.Fatalf("only %d definitions with %v, there were %d", len(out), keys, least)
	}
	return out
}

// once keeps what is made from a key, made by the first who asks for it.
type once[T any] struct{ made sync.Map }

func (o *once[T]) of(key string, make func() T) T {
	found, ok := o.made.Load(key)
	if !ok {
		found, _ = o.made.LoadOrStore(key, sync.OnceValue(make))
	}
	return found.(func() T)()
}

type loadedJob struct {
	jb       *job.Job
	problems source.Problems
}

type composedPack struct {
	pack    *templates.Pack
	misfits source.Problems
}

var (
	loadedOnce   once[loadedJob]    // by path
	composedOnce once[composedPack] // by path and options
)

// loadedFile is the job of a definition of the project, with the job and site file that
// lie beside it. It must be without a problem.
func loadedFile(t *testing.T, path string) *job.Job {
	t.Helper()
	x := fileOnce(path)
	if len(x.problems) > 0 {
		t.Fatalf("%s: %v", path, x.problems)
	}
	return x.jb
}

// fileOnce is the job of a definition, with its problems.
func fileOnce(path string) loadedJob {
	return loadedOnce.of(path, func() loadedJob {
		files, in := os.DirFS(filepath.Dir(path)), packs.Inputs{Definition: filepath.Base(path)}
		base := strings.TrimSuffix(in.Definition, ".yaml")
		if exists(files, base+".job.yaml") {
			in.Job = base + ".job.yaml"
		}
		if exists(files, base+".site.yaml") {
			in.Site = base + ".site.yaml"
		}
		jb, problems := packs.Load(files, in)
		return loadedJob{jb, problems}
	})
}

// inTongue is a starter on paper in a language other than English, once for all tests.
func inTongue(t *testing.T, starter, lang string, paper layout.Paper) (*job.Job, *templates.Pack) {
	t.Helper()
	x := tonguesOnce.of(starter+" in "+lang+" on "+paper.Name, func() tongued {
		jb, problems := packs.Load(os.DirFS(startersDir), packs.Inputs{Definition: starter, Language: lang})
		pack, misfits := templates.Compose(jb, templates.Options{Paper: paper}, pdf.NewFaces(), nil)
		return tongued{jb, pack, append(problems, misfits...)}
	})
	if len(x.problems) > 0 {
		t.Fatalf("%s in %s on %s: %v", starter, lang, paper.Name, x.problems)
	}
	return x.jb, x.pack
}

// tongued is a starter in a language on a paper.
type tongued struct {
	jb       *job.Job
	pack     *templates.Pack
	problems source.Problems
}

var tonguesOnce once[tongued] // by starter, language and paper

// composedFile is a definition of the project on paper, shared but for gloves; all of it must
// fit.
func composedFile(t *testing.T, path string, o templates.Options) (*job.Job, *templates.Pack) {
	t.Helper()
	jb := loadedFile(t, path)
	compose := func() composedPack {
		pack, misfits := templates.Compose(jb, o, pdf.NewFaces(), nil)
		// Without what it was composed with, which takes many times the memory of the pages.
		return composedPack{&templates.Pack{Pages: pack.Pages, Tags: pack.Tags, Rolls: pack.Rolls, TagCount: pack.TagCount, Anchors: pack.Anchors}, misfits}
	}
	x := composedPack{}
	if o.Pen.Gloves {
		x = compose() // one test alone reads it
	} else {
		x = composedOnce.of(path+fmt.Sprint(o), compose)
	}
	if len(x.misfits) > 0 {
		t.Fatalf("%s on %s: %v", path, o.Paper.Name, x.misfits)
	}
	return jb, x.pack
}

// composed is a starter on paper.
func composed(t *testing.T, starter string, o templates.Options) (*job.Job, *templates.Pack) {
	t.Helper()
	return composedFile(t, filepath.Join(startersDir, starter), o)
}

// goodPack is a definition of testdata/good on paper, for bare hands or for gloves.
func goodPack(t *testing.T, name string, paper layout.Paper, gloves bool) (*job.Job, *templates.Pack) {
	t.Helper()
	return composedFile(t, filepath.Join(goodDir, name), templates.Options{Paper: paper, Pen: layout.Pen{Gloves: gloves}})
}

// A draft is a definition given as text on paper, with what check tells of it and what does
// not fit; with errors it is stamped as a draft.
type draft struct {
	jb                *job.Job
	pack              *templates.Pack
	problems, misfits source.Problems
}

// drafted loads and composes a text, whatever is wrong with it.
func drafted(text string, paper layout.Paper) draft {
	var d draft
	d.jb, d.problems = loadText(text)
	d.pack, d.misfits = templates.Compose(d.jb, templates.Options{Paper: paper, Draft: d.problems.Errors() > 0}, pdf.NewFaces(), d.problems)
	return d
}

// loadText loads a definition given as text.
func loadText(text string) (*job.Job, source.Problems) {
	return loadAs("x.yaml", text)
}

func loadAs(name, text string) (*job.Job, source.Problems) {
	return packs.Load(fstest.MapFS{name: {Data: []byte(text)}}, packs.Inputs{Definition: name})
}

// fresh loads a definition given as text, and composes it anew each time.
func fresh(t *testing.T, text string) func(layout.Paper) (*job.Job, *templates.Pack) {
	t.Helper()
	return freshAs(t, "x.yaml", text)
}

// freshAs is fresh for a text under the name of its file, which stands on paper.
func freshAs(t *testing.T, name, text string) func(layout.Paper) (*job.Job, *templates.Pack) {
	t.Helper()
	jb, problems := loadAs(name, text)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return func(paper layout.Paper) (*job.Job, *templates.Pack) {
		t.Helper()
		pack, problems := templates.Compose(jb, templates.Options{Paper: paper}, pdf.NewFaces(), nil)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		return jb, pack
	}
}

// sister loads a starter for another machine of its type, by a job file of its own, and sets
// it on each of the papers.
func sister(t *testing.T, starter, jobFile string) (*job.Job, []*templates.Pack) {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(startersDir, starter))
	if err != nil {
		t.Fatal(err)
	}
	files := fstest.MapFS{starter: {Data: data}, "job.yaml": {Data: []byte(jobFile)}}
	jb, problems := packs.Load(files, packs.Inputs{Definition: starter, Job: "job.yaml"})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	var out []*templates.Pack
	for _, paper := range papers {
		pack, misfits := templates.Compose(jb, templates.Options{Paper: paper}, pdf.NewFaces(), nil)
		if len(misfits) > 0 {
			t.Fatalf("on %s: %v", paper.Name, misfits)
		}
		out = append(out, pack)
	}
	return jb, out
}

// An onSheet is a text, squeezed, and the sheet that it stands on.
type onSheet struct{ sheet, text string }

// standOnSheets looks for each text on its sheet of a starter, on both papers.
func standOnSheets(t *testing.T, starter string, texts []onSheet) {
	t.Helper()
	for _, paper := range papers {
		_, pack := composed(t, starter, templates.Options{Paper: paper})
		sheets := map[string]string{}
		for _, f := range append(pack.Pages.BySheet(), pack.Tags.Pages...) {
			sheets[f.Sheet] += squeezed(f)
		}
		for _, w := range texts {
			if !strings.Contains(sheets[w.sheet], w.text) {
				t.Errorf("%s: %q is not on the %s sheet", paper.Name, w.text, w.sheet)
			}
		}
	}
}
