package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
)

// hostile are files that no planner means to give. The sizes are those that the
// reader refuses: 4 MB, 100 levels, 10,000 alias nodes.
func hostile() []struct{ name, text string } {
	many := strings.Repeat
	head := "pack: 1\nequipment: {tag: PU-2, name: Rinse pump}\njob: {number: WO-1, revision: A, issued: 2026-03-02}\n"
	step := "steps: [{step: look, do: Look.}]\n"
	bomb := "a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n"
	for i := 1; i < 10; i++ {
		bomb += fmt.Sprintf("a%d: &a%d [%s*a%d]\n", i, i, many(fmt.Sprintf("*a%d, ", i-1), 9), i-1)
	}
	places := "places:\n"
	for _, g := range []string{"a", "b", "c", "d"} {
		places += fmt.Sprintf("  %s: {names: 1 to 200}\n", g)
	}
	return []struct{ name, text string }{
		{"empty", ""},
		{"blanks", "  \n\n\t\n"},
		{"binary", string([]byte{0x7f, 'E', 'L', 'F', 2, 1, 1, 0, 0, 0, 0xff, 0xfe, 0x80})},
		{"every byte", everyByte()},
		{"50 MB of letters", many("a", 50<<20)},
		{"50 MB of lines", many("- x\n", 50<<18)},
		{"just under 4 MB in one line", head + "steps: [{step: look, do: \"" + many("x", 4<<20-400) + "\"}]\n"},
		{"just under 4 MB of words", head + "steps: [{step: look, do: \"" + many("word ", (4<<20-400)/5) + "\"}]\n"},
		{"deep brackets", head + "parts: " + many("[", 100_000)},
		{"deep maps", head + "parts: " + many("{a: ", 20_000) + many("}", 20_000) + "\n" + step},
		{"alias bomb", head + bomb + step},
		{"alias ring", head + "parts: &p {a: *p}\n" + step},
		{"doubled keys", head + head + step},
		{"wrong types", "pack: [1]\nequipment: 7\njob: [a]\nparts: x\nsteps: {a: b}\n"},
		{"two documents", head + step + "---\n" + head + step},
		{"NUL", head + "parts: {a: {name: \"x\x00y\"}}\n" + step},
		{"surrogates and broken letters", head + "parts: {a: {name: \"\xed\xa0\x80\xf5\x80\"}}\n" + step},
		{"astral characters", head + "steps: [{step: look, do: \"Look at \U0001F527 and \U00020000.\"}]\n"},
		{"right to left", head + "steps: [{step: look, do: \"הסר את האום\"}]\n"},
		{"right to left without a word said", head + "steps: [{step: look, do: \"a\u202eb\"}]\n"},
		{"carriage returns and a mistake", strings.ReplaceAll(head+"prats: {}\n"+step, "\n", "\r\n")},
		{"byte order mark and a mistake", "\ufeff" + head + "prats: {}\n" + step},
		{"a hundred and one mistakes", head + "parts:\n" + lines(150, "  p%d: {nmae: Screw}\n") + step},
		{"crossed places", head + places + "parts: {x: {name: Part, each: [a, b, c, d]}}\n" + step},
		{"crossed places of steps", head + places + "steps: [{section: S, each: [a, b], steps: [{step: look, do: Look., each: [c, d]}]}]\n"},
		{"thousands of names that nothing has", head + "parts:\n" + lines(2000, "  p%d: {name: Part}\n") + "steps:\n" + lines(2000, "  - {step: s%d, do: Look., remove: [q1, q2, q3], into: bench}\n")},
		{"thousands of steps in a ring", head + "steps:\n" + lines(3000, "  - {step: s%d, do: Look., after: {s0: first}}\n") + "  - {step: s0, do: Look., after: {s2999: last}}\n"},
		{"more things than any machine", head + "parts:\n" + lines(20000, "  p%d: {name: Part}\n") + step},
		{"another language", "#include <stdio.h>\nint main(void) { return 0; }\n"},
		{"JSON", `{"pack": 1, "equipment": {"tag": "x"}, "steps": null}`},
	}
}

func everyByte() string {
	b := make([]byte, 256)
	for i := range b {
		b[i] = byte(i)
	}
	return string(b)
}

// TestHostileFiles: any file at all gets problems with their places and exit 1,
// from check and from print, and nothing is written.
func TestHostileFiles(t *testing.T) {
	longTest(t)
	t.Parallel()
	for _, h := range hostile() {
		t.Run(h.name, func(t *testing.T) {
			t.Parallel()
			dir := filepath.Join(t.TempDir(), "out")
			calls := [][]string{{"check", "-"}, {"print", "-", "--out", dir}}
			if len(h.text) < 10_000 {
				calls = append(calls, []string{"print", "-", "--draft", "--out", dir + "-draft"})
			}
			for _, args := range calls {
				var out, talk bytes.Buffer
				code := run(args, strings.NewReader(h.text), &out, &talk)
				said := out.String() + talk.String()
				if code != exitProblems && args[len(args)-1] != dir+"-draft" {
					t.Errorf("%v: exit %d, want %d\n%.500s", args, code, exitProblems, said)
				}
				if !strings.Contains(said, stdinName) || len(said) > 1<<18 {
					t.Errorf("%v: %d bytes are said: %.500s", args, len(said), said)
				}
			}
			if _, err := os.Stat(dir); err == nil {
				t.Error("the folder for the output is made")
			}
		})
	}
}

// TestOddButGoodFiles: line ends and a byte order mark of other systems are no
// mistake, nor are letters of other alphabets that the typeface has.
func TestOddButGoodFiles(t *testing.T) {
	t.Parallel()
	good, err := os.ReadFile(filepath.Join(testdata, "good", "smallest.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	text := string(good)
	for name, odd := range map[string]string{
		"carriage returns":      strings.ReplaceAll(text, "\n", "\r\n"),
		"byte order mark":       "\ufeff" + text,
		"no line end":           strings.TrimRight(text, "\n"),
		"letters from anywhere": strings.ReplaceAll(text, "inspection hole", "Schauloch, œil, отверстие, οπή"),
	} {
		var out, talk bytes.Buffer
		if code := run([]string{"check", "-"}, strings.NewReader(odd), &out, &talk); code != exitDone || out.Len() > 0 {
			t.Errorf("%s: exit %d, %s%s", name, code, &out, &talk)
		}
	}
}

// TestOldFilesStay: when a print fails at any point, the files of an earlier print
// are as they were and nothing else lies beside them.
func TestOldFilesStay(t *testing.T) {
	t.Parallel()
	starter := filepath.Join(startersDir, "exhaust-fan.yaml")
	bad := filepath.Join(testdata, "bad", "never-back.yaml")
	for _, c := range []struct {
		name  string
		args  []string
		taken string // a name that a folder has taken
		want  int
	}{
		{"a definition with a problem", []string{"print", bad}, "", exitProblems},
		{"a definition that is not there", []string{"print", "missing.yaml"}, "", exitFiles},
		{"a wrong flag", []string{"print", starter, "--paper", "a3"}, "", exitUsage},
		{"an unknown sheet", []string{"print", starter, "--sheets", "cover"}, "", exitUsage},
		{"the pack's name is taken by a folder", []string{"print", starter}, "WO-5512-B-pack.pdf", exitFiles},
		{"the register's name is taken by a folder", []string{"print", starter}, "WO-5512-B-register.csv", exitFiles},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			dir := t.TempDir()
			before := map[string]string{"WO-5512-B-tags.pdf": "old tags", "WO-5512-B-pack.pdf": "old pack", "7-A-pack.pdf": "another"}
			delete(before, c.taken)
			for name, text := range before {
				if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
					t.Fatal(err)
				}
			}
			if c.taken != "" {
				if err := os.MkdirAll(filepath.Join(dir, c.taken, "full"), 0o700); err != nil {
					t.Fatal(err)
				}
			}
			var out, talk bytes.Buffer
			if got := run(append(c.args, "--out", dir), strings.NewReader(""), &out, &talk); got != c.want {
				t.Errorf("exit %d, want %d: %s", got, c.want, &talk)
			}
			after := map[string]string{}
			entries, err := os.ReadDir(dir)
			if err != nil {
				t.Fatal(err)
			}
			for _, e := range entries {
				if e.Name() == c.taken {
					continue
				}
				data, err := os.ReadFile(filepath.Join(dir, e.Name()))
				if err != nil {
					t.Fatal(err)
				}
				after[e.Name()] = string(data)
			}
			if fmt.Sprint(after) != fmt.Sprint(before) {
				t.Errorf("the folder held %v and now %v", before, after)
			}
		})
	}
}

// FuzzPipeline: whatever a definition holds, it is read, composed on paper and
// painted without a panic; and what is not an error on the way has a place in the
// file.
func FuzzPipeline(f *testing.F) {
	for _, dir := range []string{startersDir, filepath.Join(testdata, "good"), filepath.Join(testdata, "bad")} {
		files, err := filepath.Glob(filepath.Join(dir, "*.yaml"))
		if err != nil {
			f.Fatal(err)
		}
		for i, name := range files {
			if strings.HasSuffix(dir, "bad") && i%8 != 0 {
				continue // the seeds run with every test
			}
			data, err := os.ReadFile(name)
			if err != nil {
				f.Fatal(err)
			}
			f.Add(data)
		}
	}
	faces := pdf.NewFaces()
	f.Fuzz(func(t *testing.T, data []byte) {
		files := fstest.MapFS{"x.yaml": &fstest.MapFile{Data: data, Mode: fs.ModePerm}}
		jb, problems := packs.Load(files, packs.Inputs{Definition: "x.yaml"})
		for _, p := range problems {
			if p.Pos.File != "x.yaml" || p.Message == "" || p.Code == "" {
				t.Errorf("a problem without place or words: %+v", p)
			}
			if strings.HasPrefix(p.Message, `""`) && !strings.HasPrefix(p.Message, `"""`) {
				t.Errorf("a problem of a name that is not written: %s", p.Message)
			}
		}
		// A job with errors is composed too, for a draft.
		pack, misfits := templates.Compose(jb, templates.Options{Paper: layout.Letter, Draft: problems.Errors() > 0}, faces, problems)
		if problems.Errors() == 0 {
			checkNamed(t, "a job without errors", misfits, len(bytes.Split(data, []byte("\n"))))
		}
		for _, p := range misfits {
			if strings.Contains(p.Message, " 0.0 mm ") {
				t.Errorf("a misfit of nothing: %s", p.Message)
			}
		}
		if err := pdf.Write(&bytes.Buffer{}, pack.Pages); err != nil {
			t.Errorf("the pack is not painted: %v", err)
		}
	})
}
