package templates_test

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/outage"
	"matchmark/packs/source"
	"matchmark/packs/units"
	"matchmark/templates"
	"matchmark/templates/words"
)

// The index of an outage is in the language of its jobs: that of a folder of Spanish jobs
// was English, with points in its hours.
func TestOutageIndexInALanguage(t *testing.T) {
	t.Parallel()
	hours, err := units.ParseNumber("10.5")
	if err != nil {
		t.Fatal(err)
	}
	var wrong source.Problems
	wrong.Add(source.Pos{File: "a.yaml", Line: 7}, "no-unit", "0.05 what?")
	done := outage.Summary{
		Job: "A-1", Revision: "B", Title: "X", Tag: "P-1", Machine: "M", Pages: 9, Hours: hours, CrewHours: hours, Language: "es",
		Lifts: []outage.Need{{By: "not named", ByIn: source.Fixed("", "not named"), Mark: "L1", What: "X"}},
	}
	failed := outage.Summary{Job: "A-2", Failed: "1 problem, the first: a.yaml:7", Why: outage.Refused(wrong), Language: "es"}
	other := outage.Summary{Job: "A-3", Failed: "the disk is full", Language: "es"}
	jobs := []outage.Summary{done, failed, other}
	if got := outage.Language(jobs); got != "es" {
		t.Errorf("jobs in Spanish have their index in %q", got)
	}
	if got := outage.Language([]outage.Summary{done, {Language: "pl"}}); got != "" {
		t.Errorf("jobs in two languages have their index in %q", got)
	}
	for _, lang := range words.Languages()[1:] {
		doc, misfits := templates.ComposeOutage(jobs, lang, layout.A4, pdf.NewFaces())
		if len(misfits) > 0 {
			t.Error(misfits)
		}
		w, err := words.In(lang)
		if err != nil {
			t.Fatal(err)
		}
		var all []string
		for _, f := range doc.Pages {
			for _, it := range f.Items {
				if x, ok := it.Shape.(layout.Text); ok {
					all = append(all, x.S)
				}
			}
		}
		page := squeeze(strings.Join(all, " "))
		for _, want := range []string{w.Said("not named"), "10,5", w.Cause("no-unit"), w.Outage.SeeTable, w.Outage.Total} {
			if !strings.Contains(page, squeeze(want)) {
				t.Errorf("%s: the index does not say %q:\n%s", lang, want, page)
			}
		}
		for _, not := range []string{"not named", "problem,", "the first", "disk", "10.5"} {
			if strings.Contains(page, squeeze(not)) {
				t.Errorf("%s: the index says %q", lang, not)
			}
		}
	}
}

// A table of jobs in a deep folder stopped the index, and the whole outage with it: its path had no
// room in the row of a job that was not printed.
func TestOutageIndexTakesAnyPath(t *testing.T) {
	t.Parallel()
	for _, path := range []string{"jobs.csv", "/srv/plant/Outage1688276313/001/jobs.csv", `C:\Users\planner\Outage1688276313\jobs.csv`, strings.Repeat("deep", 30) + ".csv"} {
		for _, lang := range words.Languages() {
			_, misfits := templates.ComposeOutage([]outage.Summary{
				{Job: "WO-100", Revision: "A", Title: path + " row 32", Failed: "number and revision are those of " + path + " row 2"},
				{Job: path + " row 33", Title: path + " row 33", Failed: path + ":7:1: no number"},
			}, lang, layout.Letter, pdf.NewFaces())
			if len(misfits) > 0 {
				t.Errorf("%s in %s: %v", path, lang, misfits)
			}
		}
	}
}
