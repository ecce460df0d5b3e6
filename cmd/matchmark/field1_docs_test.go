package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"matchmark/packs/reading"
)

// TestReadmeKeysAreKeys: what the README tells to write for what a procedure asks has
// keys that there are, limits and formulas that can be read, and files that are there.
func TestReadmeKeysAreKeys(t *testing.T) {
	t.Parallel()
	text, _ := readme(t)
	keys, err := os.ReadFile("../../packs/def/KEYS.md")
	if err != nil {
		t.Fatal(err)
	}
	_, table, found := strings.Cut(text, "| the procedure says |")
	if !found {
		t.Fatal("the README has no table of what a procedure asks")
	}
	table, _, _ = strings.Cut(table, "\n## ")
	seen := 0
	for _, m := range regexp.MustCompile("`([a-z-]+):( [^`]*)?`").FindAllStringSubmatch(table, -1) {
		seen++
		key, value := m[1], strings.TrimSpace(m[2])
		if !strings.Contains(string(keys), "`"+key+"`") {
			t.Errorf("%s: is no key", key)
		}
		if value == "" || strings.HasPrefix(value, "{") || value == "not taken" {
			continue
		}
		switch key {
		case "found", "left", "reuse", "repair":
			if _, fault := reading.Parse(value); fault != nil {
				t.Errorf("%s: %s: %s", key, value, fault.Message)
			}
		case "formula":
			if _, fault := reading.ParseFormula(value); fault != nil {
				t.Errorf("formula: %s: %s", value, fault.Message)
			}
		case "if", "until":
			if _, fault := reading.ParseCondition(value); fault != nil {
				t.Errorf("%s: %s: %s", key, value, fault.Message)
			}
		}
	}
	if seen < 30 {
		t.Errorf("only %d keys are found in the table", seen)
	}
	for _, m := range regexp.MustCompile("`(field-[a-z-]+\\.yaml)`").FindAllStringSubmatch(table, -1) {
		if _, err := os.Stat(filepath.Join(testdata, "good", m[1])); err != nil {
			t.Error(err)
		}
	}
}
