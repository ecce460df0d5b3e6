package main

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
	"matchmark/templates"
)

// A block is a fenced piece of the README.
type block struct{ lang, text string }

func readme(t *testing.T) (text string, blocks []block) {
	t.Helper()
	data, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range regexp.MustCompile("(?ms)^```(\\w+)\n(.*?)^```$").FindAllStringSubmatch(string(data), -1) {
		blocks = append(blocks, block{m[1], m[2]})
	}
	return string(data), blocks
}

// TestReadmeDefinitions: a whole definition in the README has no problem and goes
// on paper; a line of YAML takes the place of the one with the same key in the
// definition before it, and what check then says of fan.yaml is the text below.
func TestReadmeDefinitions(t *testing.T) {
	t.Parallel()
	_, blocks := readme(t)
	var whole, now string
	defined, messages := 0, 0
	for _, b := range blocks {
		switch {
		case b.lang == "yaml" && strings.HasPrefix(b.text, "pack: 1"):
			defined++
			whole, now = b.text, b.text
			if got := saidOf(t, now); got != "" {
				t.Errorf("check speaks of the definition in the README:\n%s", got)
			}
			files := fstest.MapFS{"fan.yaml": &fstest.MapFile{Data: []byte(now)}}
			jb, problems := packs.Load(files, packs.Inputs{Definition: "fan.yaml"})
			if _, misfits := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), problems); len(misfits) > 0 {
				t.Error(misfits)
			}
		case b.lang == "yaml":
			key, _, _ := strings.Cut(b.text, ":")
			now = regexp.MustCompile(`(?m)^`+regexp.QuoteMeta(key)+`:.*\n`).ReplaceAllLiteralString(whole, b.text)
			if now == whole {
				t.Errorf("%q is no line of the definition before it", key)
			}
		case b.lang == "text":
			messages++
			if got := saidOf(t, now); got != b.text {
				t.Errorf("the README shows\n%sand check says\n%s", b.text, got)
			}
		}
	}
	if defined == 0 || messages == 0 {
		t.Errorf("%d definitions and %d messages are found in the README", defined, messages)
	}
}

func saidOf(t *testing.T, text string) string {
	t.Helper()
	files := fstest.MapFS{"fan.yaml": &fstest.MapFile{Data: []byte(text)}}
	jb, problems := proof(files, packs.Inputs{Definition: "fan.yaml"})
	var out bytes.Buffer
	report(&out, problems, jb.Files)
	return out.String()
}

// TestReadmeCommands runs every command of the README that starts the program, from
// the top of the tree.
func TestReadmeCommands(t *testing.T) {
	t.Parallel()
	_, blocks := readme(t)
	ran := 0
	for _, b := range blocks {
		for _, line := range strings.Split(b.text, "\n") {
			args, ok := strings.CutPrefix(line, "go run ./cmd/matchmark ")
			if b.lang != "sh" || !ok {
				continue
			}
			ran++
			args = strings.ReplaceAll(args, "packs/starters", startersDir)
			fields := strings.Fields(strings.ReplaceAll(args, " testdata/", " "+testdata+"/"))
			if slices.Contains([]string{"print", "fill", "report", "unpack"}, fields[0]) {
				fields = append(fields, "--out", t.TempDir())
			}
			var out, talk bytes.Buffer
			if code := run(fields, strings.NewReader(""), &out, &talk); code != exitDone || talk.Len() > 0 {
				t.Errorf("%s: exit %d\n%s", line, code, &talk)
			}
		}
	}
	if ran < 3 {
		t.Errorf("only %d commands are found in the README", ran)
	}
}

// TestReadmeStorm holds what the README says of the storm pump against its pack: how much there
// is in it, and a code of a tag, which the README had of a mark that the pump no longer has.
func TestReadmeStorm(t *testing.T) {
	t.Parallel()
	text, _ := readme(t)
	jb, _ := composed(t, "storm-pump.yaml", templates.Options{Paper: layout.A4})
	dims, steps := map[string]bool{}, map[string]bool{}
	for _, d := range jb.Dims {
		dims[d.Base] = true
	}
	for _, st := range jb.Steps() {
		steps[st.Key] = true
	}
	for _, c := range []struct {
		says string
		is   int
	}{{`(\d+)\s+dimensions`, len(dims)}, {`(\d+) tags\.`, jb.Tagged()}, {`(\d+) steps at its two ends`, len(steps)}} {
		m := regexp.MustCompile(c.says).FindStringSubmatch(text)
		if m == nil || m[1] != strconv.Itoa(c.is) {
			t.Errorf("the README says %q by %s, the storm pump has %d", m, c.says, c.is)
		}
	}
	pulls, puts := 0, 0
	for _, h := range jb.Heats {
		switch {
		case h.Pull != nil:
			pulls++
		case h.PutOn != nil:
			puts++
		}
	}
	if said := "two lifts, a hot pull, two bearings put on hot"; !strings.Contains(text, said) || len(jb.Lifts) != 2 || pulls != 1 || puts != 2 {
		t.Errorf("the README is to say %q: the storm pump has %d lifts, %d hot pulls, and %d parts put on hot alone", said, len(jb.Lifts), pulls, puts)
	}
	codes := regexp.MustCompile("`(P03 WO2408 [A-Z0-9 ]+)`").FindAllStringSubmatch(text, -1)
	if len(codes) == 0 {
		t.Error("the README shows no code of a tag")
	}
	for _, m := range codes {
		tag := slices.IndexFunc(jb.Tags, func(x *job.Tag) bool { return x.Code == m[1] })
		if tag < 0 {
			t.Errorf("%s is the code of no tag of the storm pump", m[1])
		} else if stamp := "`" + jb.Tags[tag].Stamp() + "`"; !strings.Contains(text, stamp) {
			t.Errorf("the README does not show %s, which is struck for %s", stamp, m[1])
		}
	}
}

// TestReadmeLimits reads every limit of the README's table, and finds what is
// printed of it in the column beside it.
func TestReadmeLimits(t *testing.T) {
	t.Parallel()
	text, _ := readme(t)
	rows := regexp.MustCompile("(?m)^\\| `([^`]+)` \\| (.*) \\|$").FindAllStringSubmatch(text, -1)
	if len(rows) < 12 {
		t.Errorf("only %d limits are found in the README", len(rows))
	}
	for _, r := range rows {
		l, fault := reading.Parse(r[1])
		if fault != nil {
			t.Errorf("%s: %s", r[1], fault.Message)
			continue
		}
		if l.Kind != reading.Measured || strings.HasPrefix(r[2], "a ") {
			continue
		}
		line, _, _ := strings.Cut(units.Pointed(templates.LimitText(l)), ", ") // its first test
		if flat(line) == "" || !strings.HasPrefix(flat(r[2]), flat(line)) {
			t.Errorf("%s is printed as %q, the README says %q", r[1], line, r[2])
		}
	}
}

func flat(s string) string {
	return strings.Join(strings.Fields(strings.ReplaceAll(s, "\u00a0", " ")), " ")
}

// TestReadmeLinks: every file that README and DEVELOPERS link to is there.
func TestReadmeLinks(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"README.md", "DEVELOPERS.md"} {
		data, err := os.ReadFile(filepath.Join("../..", name))
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range regexp.MustCompile(`\]\(([^)#]+)\)`).FindAllStringSubmatch(string(data), -1) {
			if _, err := os.Stat(filepath.Join("../..", m[1])); err != nil {
				t.Errorf("%s links to %s, which is not there", name, m[1])
			}
		}
	}
}

// TestDevelopersNamesEveryFolder: DEVELOPERS.md lists every folder that holds a
// package, and has at most 150 lines.
func TestDevelopersNamesEveryFolder(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile("../../DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	text := string(data)
	if n := strings.Count(text, "\n"); n > 150 {
		t.Errorf("DEVELOPERS.md has %d lines, over 150", n)
	}
	for _, pattern := range []string{"*/*.go", "*/*/*.go"} {
		files, err := filepath.Glob(filepath.Join("../..", pattern))
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range files {
			dir := strings.TrimPrefix(filepath.ToSlash(filepath.Dir(f)), "../../")
			if !strings.Contains(text, "`"+dir+"`") {
				t.Errorf("DEVELOPERS.md does not name the folder %s", dir)
			}
		}
	}
}
