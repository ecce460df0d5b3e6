package filled_test

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"testing"

	"matchmark/packs"
	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

var update = flag.Bool("update", false, "rewrite the expected outputs under testdata/filled")

const testdata = "../../testdata/filled"

// stormPump is the job of the starter.
func stormPump(t testing.TB) *job.Job {
	t.Helper()
	return starter(t, "storm-pump.yaml")
}

func starter(t testing.TB, name string) *job.Job {
	t.Helper()
	jb, problems := packs.Load(os.DirFS("../starters"), packs.Inputs{Definition: name})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	return jb
}

// come reads files of testdata for a job and works them out; told is all that is said.
func come(t testing.TB, jb *job.Job, names ...string) (r *filled.Result, told source.Problems) {
	t.Helper()
	var files []*filled.File
	for _, name := range names {
		data, err := os.ReadFile(filepath.Join(testdata, name))
		if err != nil {
			t.Fatal(err)
		}
		jb.Files[name] = data
		f := filled.Read(name, data, jb)
		files, told = append(files, f), append(told, f.Told...)
	}
	values, conflicts := filled.Merge(files)
	r = filled.Work(jb, values)
	told = append(append(told, conflicts...), r.Problems...)
	told.Sort()
	return r, told
}

// TestWhatIsRefused holds all that is said of two files full of mistakes against what
// was last read: each value that may have been misread, with its row, column and what to
// write instead.
func TestWhatIsRefused(t *testing.T) {
	jb := stormPump(t)
	_, told := come(t, jb, "bad.csv", "bad-2.csv")
	var out bytes.Buffer
	told.Write(&out, jb.Files)
	path := filepath.Join(testdata, "bad.out")
	want, _ := os.ReadFile(path)
	if out.String() == string(want) {
		return
	}
	if !*update {
		t.Errorf("what is told has changed; -update rewrites %s:\n%s", path, out.String())
		return
	}
	if err := os.WriteFile(path, out.Bytes(), 0o644); err != nil {
		t.Fatal(err)
	}
	t.Error("rewritten: " + path)
}
