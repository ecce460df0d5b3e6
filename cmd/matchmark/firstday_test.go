package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// TestFirstDay does what the README tells a new planner to do, in an empty folder, and
// sees what it says one will see: console blocks are run, diff blocks are typed. Where a
// block stops, what is printed may go on.
func TestFirstDay(t *testing.T) {
	text, _ := readme(t)
	start := strings.Index(text, "## Your first pack")
	if start < 0 {
		t.Fatal("README.md has no first pack")
	}
	day, _, _ := strings.Cut(text[start+3:], "\n## ")
	t.Chdir(t.TempDir())
	ran, typed := 0, 0
	for _, m := range regexp.MustCompile("(?ms)^```(console|diff)\n(.*?)^```$").FindAllStringSubmatch(day, -1) {
		if m[1] == "diff" {
			typed++
			typeIn(t, "sump-pump.yaml", m[2])
			continue
		}
		for _, session := range strings.Split("\n"+m[2], "\n$ matchmark ")[1:] {
			ran++
			command, want, _ := strings.Cut(session, "\n")
			var out bytes.Buffer
			run(commandLine(command), strings.NewReader(""), &out, &out)
			want = strings.TrimSuffix(want, "\n")
			if got := out.String(); !strings.HasPrefix(filepath.ToSlash(got), want) || want == "" && got != "" {
				t.Errorf("%s: the README shows\n%s\nand it says\n%s", command, want, got)
			}
		}
	}
	if ran < 6 || typed < 3 {
		t.Errorf("%d commands were run and %d changes typed", ran, typed)
	}
}

// commandLine cuts a command line, whose names with blanks stand in double quotes.
func commandLine(line string) []string {
	var out []string
	for i, part := range strings.Split(line, `"`) {
		if i%2 == 1 {
			out = append(out, part)
		} else {
			out = append(out, strings.Fields(part)...)
		}
	}
	return out
}

// typeIn makes the changes of a diff: a line with - is replaced by the one with + below
// it, or taken out; a line with + below one without a sign is put in behind it.
func typeIn(t *testing.T, file, diff string) {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	text := string(data)
	lines := strings.Split(strings.TrimSuffix(diff, "\n"), "\n")
	for i := 0; i < len(lines); i++ {
		old, with := lines[i][1:]+"\n", ""
		if lines[i][0] == ' ' {
			with = old
		}
		if i+1 < len(lines) && lines[i+1][0] == '+' {
			i++
			with += lines[i][1:] + "\n"
		}
		if strings.Count(text, old) != 1 {
			t.Fatalf("%q stands %d times in %s", old, strings.Count(text, old), file)
		}
		text = strings.Replace(text, old, with, 1)
	}
	if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// TestReadmeCounts: what the README counts of the storm pump is what its pack has, and
// the field files are as many as it says.
func TestReadmeCounts(t *testing.T) {
	t.Parallel()
	text, _ := readme(t)
	text = strings.Join(strings.Fields(text), " ")
	jb, _ := composed(t, "storm-pump.yaml", templates.Options{Paper: layout.A4})
	bases := map[string]bool{}
	for _, d := range jb.Dims {
		bases[d.Base] = true
	}
	fields, err := filepath.Glob(filepath.Join(testdata, "good", "field-*.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	numbers := strings.Fields("no one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen")
	for _, want := range []string{
		fmt.Sprintf("%d dimensions", len(bases)), fmt.Sprintf("%s lifts", numbers[len(jb.Lifts)]), fmt.Sprintf("%d tags", jb.Tagged()),
		fmt.Sprintf("`testdata/good/field-*.yaml` are %s published procedures", numbers[min(len(fields), 15)]),
	} {
		if !strings.Contains(text, want) {
			t.Errorf("the README does not say %q", want)
		}
	}
}
