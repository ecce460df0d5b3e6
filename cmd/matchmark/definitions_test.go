package main

import (
	"bytes"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"matchmark/packs"
)

// definitions lists the definitions of a folder of testdata; X.job.yaml is the job
// file of X.yaml, and X.site.yaml its site file.
func definitions(t *testing.T, dir string) []string {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(testdata, dir, "*.yaml"))
	if err != nil || len(files) == 0 {
		t.Fatalf("no definitions in testdata/%s: %v", dir, err)
	}
	var out []string
	for _, f := range files {
		if name := filepath.Base(f); !strings.HasSuffix(name, ".job.yaml") && !strings.HasSuffix(name, ".site.yaml") {
			out = append(out, name)
		}
	}
	return out
}

// told is all that check prints about one definition of a folder of testdata.
func told(t *testing.T, dir, name string) string {
	t.Helper()
	files := os.DirFS(filepath.Join(testdata, dir))
	in := packs.Inputs{Definition: name}
	if jb := strings.TrimSuffix(name, ".yaml") + ".job.yaml"; exists(files, jb) {
		in.Job = jb
	}
	if site := strings.TrimSuffix(name, ".yaml") + ".site.yaml"; exists(files, site) {
		in.Site = site
	}
	var out bytes.Buffer
	jb, problems := proof(files, in)
	report(&out, problems, jb.Files)
	return out.String()
}

func exists(files fs.FS, name string) bool {
	_, err := fs.Stat(files, name)
	return err == nil
}

// TestGoodDefinitions: check has nothing to say about the definitions in good.
func TestGoodDefinitions(t *testing.T) {
	t.Parallel()
	for _, name := range definitions(t, "good") {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			if got := told(t, "good", name); got != "" {
				t.Errorf("check speaks:\n%s", got)
			}
		})
	}
}

// TestBadDefinitions: what check says about each definition in bad is the text
// beside it, to the letter. The messages were written for the mistake first; a
// change here is a change of what a planner reads.
func TestBadDefinitions(t *testing.T) {
	t.Parallel()
	for _, name := range definitions(t, "bad") {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			got := told(t, "bad", name)
			if got == "" {
				t.Fatal("check is silent")
			}
			expect(t, "bad/"+strings.TrimSuffix(name, ".yaml")+".out", got)
		})
	}
}
