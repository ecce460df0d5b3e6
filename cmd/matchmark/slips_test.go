package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs"
	"matchmark/packs/source"
)

// TestSlips: a planner mends his mistake from the first message alone. Of the
// mistakes of the table all are found, and at least 95 of 100 at the right line and
// with what to write in the message.
func TestSlips(t *testing.T) {
	t.Parallel()
	if len(slips) < 100 {
		t.Fatalf("the table has %d mistakes", len(slips))
	}
	base := fan(t)
	found, placed, mended := 0, 0, 0
	for _, s := range slips {
		text := s.in(t, base)
		first, ok := firstSaid(text)
		line := s.lineIn(base, text)
		if !ok {
			t.Errorf("%s: nothing is said", s.name)
			continue
		}
		found++
		inPlace := first.Pos.Line == line
		if inPlace {
			placed++
		}
		words := first.Message + "\n" + strings.Join(first.Help, "\n")
		if inPlace && first.Code == s.code && strings.Contains(words, s.says) {
			mended++
			continue
		}
		t.Logf("%s: at line %d, not %d: [%s] %s", s.name, first.Pos.Line, line, first.Code, words)
	}
	t.Logf("%d mistakes: %d found, %d at the right line, %d mended from the message alone", len(slips), found, placed, mended)
	if found < len(slips) || 100*placed < 95*len(slips) || 100*mended < 95*len(slips) {
		t.Errorf("of %d mistakes %d are found, %d placed and %d mended", len(slips), found, placed, mended)
	}
}

// TestUnderstood: what cannot mean anything else is read as it was meant.
func TestUnderstood(t *testing.T) {
	t.Parallel()
	base := fan(t)
	for _, s := range understood {
		if p, said := firstSaid(s.in(t, base)); said {
			t.Errorf("%s: %s", s.name, p.Message)
		}
	}
}

// TestProposalsAreNotRefused: what a message says to write is not refused in its turn
// for the same reason, nor for what it says itself.
func TestProposalsAreNotRefused(t *testing.T) {
	t.Parallel()
	base := fan(t)
	tried := 0
	for _, s := range slips {
		if !strings.HasPrefix(s.old, "at least") && !strings.Contains(s.old, " mm") {
			continue
		}
		// What is told of a number is told of its words, before anything is on paper.
		_, problems := loadText(s.in(t, base))
		if len(problems) == 0 || len(problems[0].Help) == 0 {
			continue
		}
		first := problems[0]
		proposal := first.Help[0]
		if strings.HasPrefix(proposal, "for example ") || strings.ContainsAny(proposal, ":?") || first.Code == "unknown-unit" {
			continue
		}
		tried++
		again := s
		again.typed = proposal
		if _, problems = loadText(again.in(t, base)); len(problems) > 0 && problems[0].Code == first.Code {
			t.Errorf("%s: %q is proposed, and then: %s", s.name, proposal, problems[0].Message)
		}
	}
	if tried < 10 {
		t.Errorf("only %d proposals were tried", tried)
	}
}

func fan(t *testing.T) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(startersDir, "exhaust-fan.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// in makes the mistake in a text.
func (s slip) in(t *testing.T, base string) string {
	t.Helper()
	if !strings.Contains(base, s.old) {
		t.Fatalf("%s: %q is not in the fan", s.name, s.old)
	}
	return strings.Replace(base, s.old, s.typed, 1)
}

// lineIn is the line at which a mistake should be told.
func (s slip) lineIn(base, text string) int {
	at, same := strings.Index(base, s.old), 0
	for same < len(s.old) && same < len(s.typed) && s.old[same] == s.typed[same] {
		same++
	}
	line := 1 + strings.Count(text[:at+same], "\n")
	if s.at != "" {
		for i, l := range strings.Split(text, "\n") {
			if strings.HasPrefix(strings.TrimSpace(l), s.at) {
				line = i + 1
			}
		}
	}
	return line
}

// firstSaid is the first problem that check tells of a text.
func firstSaid(text string) (first source.Problem, said bool) {
	_, problems := proof(fstest.MapFS{"fan.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "fan.yaml"})
	if len(problems) == 0 {
		return source.Problem{}, false
	}
	return problems[0], true
}
