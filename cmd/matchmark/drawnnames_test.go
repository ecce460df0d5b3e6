package main

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/layout"
)

// A reporter is a test, or a draw of a random one.
type reporter interface {
	Helper()
	Errorf(format string, args ...any)
}

// drawnNames are the definitions that have drawings of lifts, heats, joints and dimensions,
// with the names that stand in the drawings besides those of parts.
var drawnNames = map[string][]string{
	"heat-bearings.yaml":   nil,
	"heat-coupling.yaml":   nil,
	"inch-heats.yaml":      nil,
	"joints.yaml":          {"the pipe", "inlet", "the drive end", "the duct", "the hinge", "the side"},
	"ladders.yaml":         nil,
	"lift-casing.yaml":     {"DE flange", "NDE flange", "DE journal", "NDE journal", "DE-DIS", "NDE-SUC"},
	"lift-crankshaft.yaml": {"gear end", "free end"},
	"lift-gearbox.yaml":    {"output side", "input side", "left journal", "right journal"},
	"shims.yaml":           nil,
}

var partName = regexp.MustCompile(`(?:name|what): ([A-Z][A-Za-z ]+)[,}\n]`)

// TestDrawingsKeepLongNames: whatever the parts, ends, legs and sides in the drawings are
// called, every text of the pack stands within its page and on no other text, or the name
// is refused at its line. A long name beside a section ran off the paper.
func TestDrawingsKeepLongNames(t *testing.T) {
	longTest(t)
	t.Parallel()
	held := 0
	files := map[string]string{}
	var names []string
	for file := range drawnNames {
		data, err := os.ReadFile(filepath.Join(testdata, "good", file))
		if err != nil {
			t.Fatal(err)
		}
		files[file] = string(data)
		names = append(names, file)
	}
	slices.Sort(names)
	rapid.Check(t, func(t *rapid.T) {
		file := rapid.SampledFrom(names).Draw(t, "file")
		text := files[file]
		var pairs []string
		add := func(old string) {
			if rapid.Bool().Draw(t, old) {
				pairs = append(pairs, old, longName(t))
			}
		}
		for _, n := range drawnNames[file] {
			add(n)
		}
		for _, m := range partName.FindAllStringSubmatch(text, -1) {
			add(m[1])
		}
		text = strings.NewReplacer(pairs...).Replace(text)
		paper := rapid.SampledFrom(papers).Draw(t, "paper")
		d := drafted(text, paper)
		for _, p := range d.misfits {
			if p.Pos.Line < 1 {
				t.Errorf("%s: a problem without a line: %s", file, p.Message)
			}
		}
		if len(d.misfits) > 0 {
			return
		}
		held++
		for i, f := range d.pack.Pages.Pages {
			if d.problems.Errors() > 0 {
				continue // the stamp of a draft lies across the page
			}
			withinPage(t, file, i+1, f)
			checkOverlaps(t, file+" on "+paper.Name, i+1, f)
		}
	})
	if held < 10 {
		t.Errorf("only %d packs hold their names", held)
	}
}

// longName is a name longer than a planner would hope for, of words or in one piece.
func longName(t *rapid.T) string {
	if rapid.IntRange(0, 4).Draw(t, "one piece") == 0 {
		return rapid.StringMatching(`[A-Z][a-z]{20,40}`).Draw(t, "name")
	}
	return "Q" + strings.Join(rapid.SliceOfN(rapid.StringMatching(`[a-z]{2,12}`), 2, 9).Draw(t, "name"), " ")
}

// withinPage sees that every text stands within its page.
func withinPage(t reporter, what string, page int, f layout.Frame) {
	t.Helper()
	for _, it := range f.Items {
		if _, ok := it.Shape.(layout.Text); !ok {
			continue
		}
		if l, top, r, b := it.Bounds(); l < edge || top < edge || r > f.W-edge || b > f.H-edge {
			t.Errorf("%s %s page %d: %s runs off the page", what, f.Sheet, page, saidAt(it))
		}
	}
}
