package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"matchmark/layout"
)

// TestHolesAreToldOnce: a limit or an instrument that is missing leaves boxes without
// digits; the draft told each of them again as 0.0 mm wider than its place, beside
// the problem that says what is missing.
func TestHolesAreToldOnce(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile(filepath.Join(startersDir, "exhaust-fan.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	text := strings.Replace(string(data), "left: 0.30 to 0.60 mm", "", 1)
	if text == string(data) {
		t.Fatal("the starter has no such limit")
	}
	d := drafted(text, layout.A4)
	if d.problems.Errors() == 0 {
		t.Fatal("the missing limit is not told")
	}
	for _, p := range d.misfits {
		t.Errorf("%s: %s", p.Pos, p.Message)
	}
}
