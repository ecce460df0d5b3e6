package templates_test

import (
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
)

// definitions are the starters, the field procedures and the other good definitions.
func definitions(t *testing.T) []string {
	t.Helper()
	var out []string
	for _, dir := range []string{"../packs/starters", "../testdata/good"} {
		all, err := filepath.Glob(filepath.Join(dir, "*.yaml"))
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range all {
			if !strings.HasSuffix(f, ".job.yaml") && !strings.HasSuffix(f, ".site.yaml") {
				out = append(out, f)
			}
		}
	}
	if len(out) < 30 {
		t.Fatalf("only %d definitions", len(out))
	}
	return out
}

// loadFile loads a definition with the job and site files that lie beside it.
func loadFile(t *testing.T, file string) *job.Job {
	t.Helper()
	dir, in := inputsOf(file)
	jb, problems := packs.Load(os.DirFS(dir), in)
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	return jb
}

// A printedFile is a definition of the project on A4, with its problems and what does not fit.
type printedFile struct {
	jb                *job.Job
	pack              *templates.Pack
	problems, misfits source.Problems
}

var printedFiles sync.Map // by file

// onA4 sets a definition on A4, once for all tests, which must not change it.
func onA4(t *testing.T, file string) printedFile {
	t.Helper()
	dir, in := inputsOf(file)
	once, _ := printedFiles.LoadOrStore(file, sync.OnceValue(func() printedFile {
		jb, found := packs.Load(os.DirFS(dir), in)
		pack, misfits := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
		return printedFile{jb, &templates.Pack{Pages: pack.Pages, Tags: pack.Tags}, found, misfits} // the pages alone are kept
	}))
	x := once.(func() printedFile)()
	if x.problems.Errors() > 0 {
		t.Fatal(x.problems)
	}
	return x
}

// inputsOf are the inputs of a definition: itself, and the job and site files that lie
// beside it, in its folder.
func inputsOf(file string) (dir string, in packs.Inputs) {
	dir, in.Definition = filepath.Split(file)
	base := strings.TrimSuffix(in.Definition, ".yaml")
	for _, x := range []struct {
		name string
		to   *string
	}{{base + ".job.yaml", &in.Job}, {base + ".site.yaml", &in.Site}} {
		if _, err := os.Stat(filepath.Join(dir, x.name)); err == nil {
			*x.to = x.name
		}
	}
	return dir, in
}

// Every text and number that a job holds stands on each page where it belongs, in the
// block of its own place, and none of another place stands there.
func TestPaperSaysWhatTheJobHolds(t *testing.T) {
	for _, file := range definitions(t) {
		t.Run(filepath.Base(file), func(t *testing.T) {
			t.Parallel()
			x := onA4(t, file)
			jb, asked := x.jb, 0
			paper := readPaper(jb, x.pack)
			if jb.Site.Paper == "letter" {
				paper = paperOf(jb)
			}
			for sheet, text := range paper.sheets {
				if strings.Contains(text, "p. 00") { // the ticks of like joints were sent to no page
					t.Errorf("the sheet %s names a page that is none", sheet)
				}
			}
			for _, w := range allWants(jb, paper) {
				if w.want != "" {
					asked++
				}
				if m := w.miss(); m != "" {
					t.Error(m)
				}
			}
			t.Logf("%d texts and numbers looked up", asked)
		})
	}
}
