package main

import (
	"encoding/json"
	"errors"
	"io"
	"os/exec"
	"strings"
	"testing"
)

// arrows are the imports of our own that each package may have: the house of
// DEVELOPERS.md. A package that is not listed may have none.
var arrows = map[string][]string{
	"cmd/matchmark": {"packs", "packs/job", "packs/bom", "packs/codes", "packs/def", "packs/filled", "packs/keep", "packs/nearest", "packs/outage", "packs/revise", "packs/stock", "packs/source", "packs/starters", "templates", "layout", "layout/pdf"},

	"packs/outage": {"packs/job", "packs/keep", "packs/source", "packs/units"},

	"templates": {"packs/outage", "templates/words", "templates/block", "templates/dimension", "templates/step", "templates/liftsheet", "templates/heatsheet", "templates/jointsheet", "templates/alignsheet",
		"packs/filled", "packs/job", "packs/stock", "packs/source", "packs/reading", "packs/units", "packs/align", "packs/heat", "layout", "layout/draw", "layout/sign", "layout/svg"},
	"templates/step":       {"templates/words", "templates/block", "templates/dimension", "templates/liftsheet", "templates/heatsheet", "templates/jointsheet", "templates/alignsheet", "packs/job", "packs/reading", "layout", "layout/draw"},
	"templates/liftsheet":  {"templates/words", "templates/block", "templates/picture", "packs/job", "packs/lift", "packs/units", "layout"},
	"templates/heatsheet":  {"templates/words", "templates/block", "templates/picture", "templates/figure", "packs/job", "packs/fit", "packs/heat", "packs/units", "layout"},
	"templates/jointsheet": {"templates/words", "templates/block", "templates/picture", "templates/figure", "packs/job", "packs/joint", "packs/units", "layout"},
	"templates/alignsheet": {"templates/words", "templates/block", "templates/picture", "packs/job", "packs/align", "packs/units", "layout"},
	"templates/dimension":  {"templates/words", "templates/block", "templates/picture", "packs/filled", "packs/job", "packs/reading", "packs/units", "packs/shim", "layout", "layout/draw"},
	"templates/block":      {"templates/words", "packs/filled", "packs/job", "packs/units", "layout", "layout/sign"},
	"templates/picture":    {"templates/words", "templates/figure", "packs/job", "packs/lift", "packs/heat", "packs/joint", "packs/align", "packs/units", "layout", "layout/draw"},
	"templates/figure":     {"packs/job", "packs/fit", "packs/heat", "packs/units"},
	"templates/words":      {"packs/reading", "packs/joint", "packs/align"},

	"packs":           {"packs/job", "packs/names", "packs/choose", "packs/expand", "packs/plan", "packs/putback", "packs/hazard", "packs/keep", "packs/walk", "packs/proof", "packs/proofread", "packs/blocks", "packs/def", "packs/source"},
	"packs/names":     {"packs/phrase", "packs/def", "packs/choose", "packs/job", "packs/source", "packs/units", "packs/reading", "packs/fit"},
	"packs/expand":    {"packs/phrase", "packs/names", "packs/stock", "packs/lifting", "packs/heating", "packs/hazard", "packs/def", "packs/job", "packs/source", "packs/units", "packs/reading", "packs/fit", "packs/thread", "packs/shim", "packs/lift", "packs/heat", "packs/joint", "packs/align"},
	"packs/lifting":   {"packs/phrase", "packs/names", "packs/def", "packs/job", "packs/source", "packs/units", "packs/lift"},
	"packs/heating":   {"packs/names", "packs/def", "packs/job", "packs/source", "packs/units", "packs/reading", "packs/fit", "packs/heat"},
	"packs/proofread": {"packs/phrase", "packs/nearest", "packs/names", "packs/def", "packs/job", "packs/source", "packs/units", "packs/reading"},
	"packs/plan":      {"packs/job", "packs/source", "packs/units", "packs/reading", "packs/shim", "packs/joint", "packs/align"},
	"packs/choose":    {"packs/phrase", "packs/def", "packs/job", "packs/source"},
	"packs/putback":   {"packs/job", "packs/source"},
	"packs/walk":      {"packs/phrase", "packs/job", "packs/source", "packs/units"},
	"packs/proof":     {"packs/phrase", "packs/align", "packs/walk", "packs/job", "packs/source", "packs/units", "packs/lift"},
	"packs/hazard":    {"packs/phrase", "packs/job", "packs/source", "packs/heat"},
	"packs/keep":      {"packs/phrase", "packs/job", "packs/stock", "packs/source", "packs/units"},
	"packs/revise":    {"packs/job", "packs/keep", "packs/source"},
	"packs/blocks":    {"packs/job", "packs/reading"},
	"packs/filled":    {"packs/phrase", "packs/job", "packs/source", "packs/units", "packs/reading", "packs/shim", "packs/align"},
	"packs/job":       {"packs/phrase", "packs/source", "packs/stock", "packs/units", "packs/reading", "packs/fit", "packs/thread", "packs/shim", "packs/lift", "packs/heat", "packs/joint", "packs/align"},
	"packs/bom":       {"packs/phrase", "packs/source", "packs/starters", "packs/units"},
	"packs/reading":   {"packs/phrase", "packs/nearest", "packs/units"},
	"packs/def":       {"packs/phrase", "packs/nearest", "packs/source", "packs/units", "packs/reading"},
	"packs/source":    {"packs/phrase", "packs/nearest"},
	"packs/units":     {"packs/phrase", "packs/nearest"},
	"packs/lift":      {"packs/refused", "packs/units"},
	"packs/shim":      {"packs/units"},
	"packs/fit":       {"packs/units"},
	"packs/heat":      {"packs/fit", "packs/units"},
	"packs/joint":     {"packs/refused", "packs/thread", "packs/units"},
	"packs/align":     {"packs/refused", "packs/units"},
	"packs/thread":    {"packs/phrase"},
	"layout/draw":     {"layout"},
	"layout/sign":     {"layout", "layout/draw"},
	"layout/svg":      {"layout"},
	"layout/pdf":      {"layout"},
}

// soleImporters are the only packages that may import a library.
var soleImporters = map[string]string{
	"github.com/go-pdf/fpdf":        "layout/pdf",
	"golang.org/x/image":            "layout/pdf",
	"github.com/klauspost/compress": "layout/pdf",
	"github.com/skip2/go-qrcode":    "layout",
	"gopkg.in/yaml.v3":              "packs/def",
	"github.com/spf13/pflag":        "cmd/matchmark",
	"golang.org/x/text":             "packs/source",
}

// otherImporters may import packages of a library that another one owns, these alone:
// the words are counted in the plural forms of their language.
var otherImporters = map[string][]string{
	"templates/words": {"golang.org/x/text/feature/plural", "golang.org/x/text/language"},
}

// TestArrows keeps the imports of the tree as the house has them.
func TestArrows(t *testing.T) {
	out, err := exec.Command("go", "list", "-json=ImportPath,Imports", "matchmark/...").Output()
	if err != nil {
		t.Fatalf("go list: %v", err)
	}
	dec := json.NewDecoder(strings.NewReader(string(out)))
	seen := 0
	for {
		var p struct {
			ImportPath string
			Imports    []string
		}
		if err := dec.Decode(&p); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			t.Fatal(err)
		}
		seen++
		checkImports(t, strings.TrimPrefix(p.ImportPath, "matchmark/"), p.Imports)
	}
	if seen < 10 {
		t.Errorf("go list named %d packages, the house has more", seen)
	}
}

func checkImports(t *testing.T, name string, imports []string) {
	for _, imp := range imports {
		if ours, ok := strings.CutPrefix(imp, "matchmark/"); ok {
			if !listed(arrows[name], ours) {
				t.Errorf("%s imports %s, which the house does not allow", name, ours)
			}
			continue
		}
		if imp == "regexp" && strings.HasPrefix(name, "packs") && name != "packs/phrase" {
			t.Errorf("%s imports regexp: what is looked for in words is an expression of packs/phrase, compiled when it is needed", name)
		}
		if strings.Contains(strings.Split(imp, "/")[0], ".") {
			checkLibrary(t, name, imp)
		}
	}
}

func checkLibrary(t *testing.T, name, imp string) {
	for lib, owner := range soleImporters {
		if imp == lib || strings.HasPrefix(imp, lib+"/") {
			if name != owner && !listed(otherImporters[name], imp) {
				t.Errorf("%s imports %s, which only %s may", name, imp, owner)
			}
			return
		}
	}
	t.Errorf("%s imports %s, a library that no package owns", name, imp)
}

func listed(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}
