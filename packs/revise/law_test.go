package revise_test

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"pgregory.net/rapid"

	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/keep"
	"matchmark/packs/revise"
)

// load reads a definition given as text.
func load(text string) (*job.Job, bool) {
	jb, problems := packs.Load(fstest.MapFS{"x.yaml": &fstest.MapFile{Data: []byte(text)}}, packs.Inputs{Definition: "x.yaml"})
	return jb, problems.Errors() == 0
}

// edits are what planners do to a definition between two revisions, each at a place that
// is drawn.
var edits = []struct {
	name string
	line *regexp.Regexp
	make func(line string) string
}{
	{"a word of a name", regexp.MustCompile(`name: [A-Z][a-z]+`), func(l string) string { return strings.Replace(l, "name: ", "name: New ", 1) }},
	{"how it is kept", regexp.MustCompile(`keep: [a-z]+`), func(l string) string { return strings.Replace(l, "keep: ", "keep: well ", 1) }},
	{"a count", regexp.MustCompile(`count: 4\b`), func(l string) string { return strings.Replace(l, "count: 4", "count: 6", 1) }},
	{"what is done", regexp.MustCompile(`^ +do: `), func(l string) string { return strings.Replace(l, "do: ", "do: Slowly. ", 1) }},
	{"what is missed", regexp.MustCompile(`^ +missed: [a-z]`), func(l string) string { return strings.Replace(l, "missed: ", "missed: mind, ", 1) }},
	{"one line less", regexp.MustCompile(`^      - step: |^  [CB][0-9]+: |^ +keep: `), func(string) string { return "" }},
	{"another mark", regexp.MustCompile(`^  C[0-9]+: `), func(l string) string { return regexp.MustCompile(`C[0-9]+`).ReplaceAllString(l, "C98") }},
}

// Random edits of the starters: a tag whose machine, job and mark are as before has the key
// of before; one that says something else is never told to stay; and one that says the
// same is never printed again.
func TestTagsOverRevisions(t *testing.T) {
	files, err := filepath.Glob("../starters/*.yaml")
	if err != nil || len(files) == 0 {
		t.Fatal("no starters", err)
	}
	texts := map[string]string{}
	jobs := map[string]*job.Job{}
	for _, f := range files {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		texts[f] = string(data)
		jb, ok := load(texts[f])
		if !ok {
			t.Fatalf("%s has problems", f)
		}
		jobs[f] = jb
	}
	good := 0
	rapid.Check(t, func(t *rapid.T) {
		f := rapid.SampledFrom(files).Draw(t, "starter")
		lines := strings.Split(texts[f], "\n")
		for range rapid.IntRange(1, 3).Draw(t, "edits") {
			e := rapid.SampledFrom(edits).Draw(t, "edit")
			var at []int
			for i, l := range lines {
				if e.line.MatchString(l) {
					at = append(at, i)
				}
			}
			if len(at) > 0 {
				i := rapid.SampledFrom(at).Draw(t, "line")
				lines[i] = e.make(lines[i])
			}
		}
		now, ok := load(strings.Join(lines, "\n"))
		if !ok {
			return // check tells of it: no such revision is printed
		}
		good++
		checkTags(t, jobs[f], now)
	})
	if good < 10 {
		t.Errorf("only %d of the edited definitions are free of problems", good)
	}
	t.Logf("%d edited definitions compared", good)
}

// checkTags holds what compare says of the tags against the tags themselves.
func checkTags(t *rapid.T, old, now *job.Job) {
	before := map[string]*job.Tag{}
	for _, x := range old.Tags {
		before[x.Mark] = x
	}
	verdicts := map[string]revise.Fate{}
	for _, v := range revise.Compare(old, now).Tags {
		verdicts[v.Mark] = v.Fate
	}
	keys := map[string]bool{}
	for _, is := range now.Tags {
		if keys[is.Key] {
			t.Fatalf("two tags have the key %s", is.Key)
		}
		keys[is.Key] = true
		fate, told := verdicts[is.Mark]
		was := before[is.Mark]
		switch {
		case !told:
			t.Fatalf("nothing is said of %s", is.Mark)
		case was == nil:
			if fate != revise.New {
				t.Fatalf("%s has not hung before and is told %d", is.Mark, fate)
			}
		case was.Key != is.Key:
			t.Fatalf("%s had the key %s and has %s", is.Mark, was.Key, is.Key)
		case slices.Equal(keep.Says(was), keep.Says(is)) != (fate == revise.Stays || fate == revise.StepsMoved):
			t.Fatalf("%s said %q, says %q, and is told %d", is.Mark, keep.Says(was), keep.Says(is), fate)
		case keep.Content(was) != keep.Content(is) && was.Content == is.Content:
			t.Logf("%s: the letters of another content are the same, one in 4096", is.Mark)
		}
	}
	for mark := range before {
		if _, told := verdicts[mark]; !told && !before[mark].Spare {
			t.Fatalf("nothing is said of %s, which is gone", mark)
		}
	}
}

// A mark that goes to another thing is told, whatever else is so.
func TestMarkThatMoves(t *testing.T) {
	const text = `pack: 1
equipment: {tag: P-1, name: Pump}
job: {number: WO-1, title: Seal, revision: A, issued: 2026-03-02}
parts: {ring: {name: Ring}, key: {name: Key}}
containers: {C1: {name: Ring, kind: bag}, C2: {name: Key, kind: bag}}
steps:
  - {step: ring, do: Take the ring off., remove: [ring], into: C1}
  - {step: key, do: Take the key out., remove: [key], into: C2}
`
	old, ok := load(text)
	swapped := strings.NewReplacer("C1", "C2", "C2", "C1").Replace(text)
	now, ok2 := load(swapped)
	if !ok || !ok2 {
		t.Fatal("the definitions have problems")
	}
	for _, v := range revise.Compare(old, now).Tags {
		if v.Mark[0] == 'C' && v.Fate != revise.OtherThing {
			t.Errorf("%s has gone to another thing and is told %d", v.Mark, v.Fate)
		}
	}
}
