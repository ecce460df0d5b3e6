package main

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// TestJSON: each problem of a broken definition is one object, with the place that check
// prints, and nothing is lost.
func TestJSON(t *testing.T) {
	t.Parallel()
	file := filepath.Join(testdata, "bad", "storm-pump-broken.yaml")
	var plain, lines, talk bytes.Buffer
	code := run([]string{"check", file}, nil, &plain, &talk)
	if got := run([]string{"check", "--json", file}, nil, &lines, &talk); got != code || talk.Len() > 0 {
		t.Errorf("exit %d, without --json %d; %s", got, code, &talk)
	}
	n := 0
	for _, line := range strings.Split(strings.TrimSpace(lines.String()), "\n") {
		var p struct {
			Code, Severity, Message string
			At                      struct {
				File                    string
				Line, Column, EndColumn int
			}
			Help []string
		}
		if err := json.Unmarshal([]byte(line), &p); err != nil {
			t.Fatalf("%v in %s", err, line)
		}
		n++
		if p.Code == "" || p.Message == "" || p.At.Line == 0 || p.At.EndColumn <= p.At.Column || p.Help == nil || !strings.Contains(plain.String(), p.Message) {
			t.Errorf("%s", line)
		}
	}
	if want := strings.Count(plain.String(), "]\n"); n < 5 || n > want {
		t.Errorf("%d objects, and check prints about %d problems", n, want)
	}
}

// TestSARIF: the log names tool, rules and places as SARIF 2.1.0 has them (sections 3.13,
// 3.27 and 3.30, from memory).
func TestSARIF(t *testing.T) {
	t.Parallel()
	file := filepath.Join(testdata, "bad", "storm-pump-broken.yaml")
	var out, talk bytes.Buffer
	if code := run([]string{"check", "--sarif", file, filepath.Join(startersDir, "exhaust-fan.yaml")}, nil, &out, &talk); code != exitProblems {
		t.Fatalf("exit %d: %s", code, &talk)
	}
	var log struct {
		Version string
		Runs    []struct {
			Tool struct {
				Driver struct {
					Name  string
					Rules []struct{ ID string }
				}
			}
			Results []struct {
				RuleID    string
				RuleIndex int
				Level     string
				Message   struct{ Text string }
				Locations []struct {
					PhysicalLocation struct {
						ArtifactLocation struct{ URI string }
						Region           struct{ StartLine, StartColumn, EndColumn int }
					}
				}
			}
		}
	}
	if err := json.Unmarshal(out.Bytes(), &log); err != nil {
		t.Fatal(err)
	}
	if log.Version != "2.1.0" || len(log.Runs) != 1 || len(log.Runs[0].Results) < 5 {
		t.Fatalf("%.300s", &out)
	}
	rules := log.Runs[0].Tool.Driver.Rules
	for _, r := range log.Runs[0].Results {
		at := r.Locations[0].PhysicalLocation
		if rules[r.RuleIndex].ID != r.RuleID || r.Message.Text == "" || at.ArtifactLocation.URI != file || at.Region.StartLine == 0 || at.Region.EndColumn <= at.Region.StartColumn {
			t.Errorf("%+v", r)
		}
	}
}

// TestColour: colours add to the text and take nothing from it; a pipe and NO_COLOR get
// none.
func TestColour(t *testing.T) {
	text := "a.yaml:1:2: warning: too [x]\n  \t\n  one\n  ^~~\n  write: two\nb.yaml:2:1: bad [y]\n  one\n  ^\n2 problems, 1 warning\n"
	painted := colour(text)
	bare := painted
	for _, c := range []string{bold, red, yellow, plain} {
		bare = strings.ReplaceAll(bare, c, "")
	}
	if bare != text {
		t.Errorf("without its colours it is %q", bare)
	}
	if !strings.Contains(painted, yellow+"  ^~~"+plain) || !strings.Contains(painted, red+"  ^"+plain) {
		t.Errorf("painted as %q", painted)
	}
	if coloured(&bytes.Buffer{}) {
		t.Error("a buffer is taken for a terminal")
	}
	r, w, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	defer r.Close()
	defer w.Close()
	if coloured(w) {
		t.Error("a pipe is taken for a terminal")
	}
	terminal, err := os.OpenFile("/dev/ptmx", os.O_RDWR, 0)
	if err != nil {
		t.Skip("this system has no terminals to open")
	}
	defer terminal.Close()
	t.Setenv("TERM", "xterm")
	t.Setenv("NO_COLOR", "")
	if !coloured(terminal) {
		t.Error("a terminal gets no colours")
	}
	t.Setenv("NO_COLOR", "1")
	if coloured(terminal) {
		t.Error("NO_COLOR is not honoured")
	}
}

// TestCompletionsNameEverything: the script of each shell has every command and flag.
func TestCompletionsNameEverything(t *testing.T) {
	t.Parallel()
	for _, shell := range []string{"bash", "zsh", "fish", "powershell"} {
		var out, talk bytes.Buffer
		if code := run([]string{"completion", shell}, nil, &out, &talk); code != exitDone {
			t.Fatal(talk.String())
		}
		for _, c := range commands() {
			for _, word := range append(c.flagNames(streams{}), c.name) {
				if word != "--help" && !strings.Contains(out.String(), strings.TrimPrefix(word, "--")) {
					t.Errorf("%s does not know %s of %s", shell, word, c.name)
				}
			}
		}
	}
}
