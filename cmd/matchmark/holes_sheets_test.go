package main

import (
	"bytes"
	"fmt"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/filled"
	"matchmark/packs/keep"
	"matchmark/packs/source"
	"matchmark/templates"
)

// holesLookedAt is how many of the spoilt definitions go through all sheets in a usual run;
// with HOLES=n it is every nth, with HOLES=1 all.
const holesLookedAt = 25

// TestAHoleMeetsEverySheet: whatever key or entry is left out, emptied or a word in place of a
// figure, check tells it within the file, and the draft, and the sheets that readings come back
// on, are set without a panic and without a hole in a sentence.
func TestAHoleMeetsEverySheet(t *testing.T) {
	longTest(t)
	t.Parallel()
	files := ownWith(t, 40)
	var all []leftOut
	for _, how := range []spoil{gone, emptied, blanked, worded} {
		all = append(all, eachKey(t, how, 300, files)...)
	}
	every := len(all) / holesLookedAt
	if n, err := strconv.Atoi(os.Getenv("HOLES")); err == nil {
		every = n
	}
	for i := every / 2; i < len(all); i += every {
		for _, fault := range holeFaults(t, all[i].text()) {
			t.Errorf("%s: %s", all[i].where, fault)
		}
	}
}

// holeFaults takes one definition through check, the draft and, where it may be printed, what
// is printed of readings.
func holeFaults(t *testing.T, text string) (faults []string) {
	t.Helper()
	defer func() {
		if no := recover(); no != nil {
			faults = append(faults, fmt.Sprintf("a panic: %v", no))
		}
	}()
	said := func(where, s string) {
		if no := brokenSaying(s); no != "" {
			faults = append(faults, fmt.Sprintf("%s: %s: %q", where, no, s))
		}
	}
	jb, problems := loadText(text)
	faces := pdf.NewFaces()
	pack, misfits := templates.Compose(jb, templates.Options{Paper: layout.A4, Draft: problems.Errors() > 0}, faces, problems)
	lines := strings.Count(text, "\n") + 1
	for _, p := range append(append(source.Problems{}, problems...), misfits...) {
		if p.Pos.File != "x.yaml" || p.Pos.Line < 1 || p.Pos.Line > lines || p.Pos.Col < 1 || p.Message == "" || p.Code == "" {
			faults = append(faults, fmt.Sprintf("a problem without place or words: %+v", p))
		}
		said("check", p.Message)
		for _, h := range p.Help {
			said("check", h)
		}
	}
	onSheets := func(where string, d *layout.Doc) {
		for _, f := range d.Pages {
			for _, it := range f.Items {
				if x, ok := it.Shape.(layout.Text); ok {
					said(where+" "+f.Sheet, x.S)
				}
			}
		}
	}
	onSheets("pack", pack.Pages)
	onSheets("tags", pack.Tags)
	var lists bytes.Buffer
	if err := keep.WriteRegister(&lists, jb, false); err == nil {
		err = keep.WriteIssued(&lists, jb, false)
		if err != nil {
			faults = append(faults, err.Error())
		}
	}
	if strings.Contains(lists.String(), "%!") {
		faults = append(faults, "a list has a hole")
	}
	if problems.Errors() > 0 || len(jb.Blanks()) == 0 {
		return faults
	}
	f := filled.Read("x.csv", worstReadings(t, jb, false, "A. Typist"), jb)
	values, _ := filled.Merge([]*filled.File{f})
	o := templates.Options{Paper: layout.A4, Filled: filled.Work(jb, values)}
	report, _ := templates.ComposeReport(jb, o, faces)
	onSheets("report", report)
	back, _ := templates.Compose(jb, o, faces, nil)
	back.KeepFilled()
	onSheets("filled", back.Pages)
	return faults
}

var brokenSayings = []struct {
	what string
	is   *regexp.Regexp
}{
	{"a verb of the printer", regexp.MustCompile(`%!|<nil>|\bNaN\b|\bInf\b`)},
	{"empty quotes", regexp.MustCompile(`(^|[^"])""([^"]|$)`)},
	{"two blanks", regexp.MustCompile(`\S  \S`)},
	{"a blank before a mark", regexp.MustCompile(` (?:[.,;!?](?:\s|$)|:(?: [^0-9]|$))`)},
	{"two marks", regexp.MustCompile(`[,;][.,;:](\s|$)|\(\)|· ·`)},
}

// brokenSaying is what is wrong with a sentence that has a hole, "" for none.
func brokenSaying(s string) string {
	for _, b := range brokenSayings {
		if b.is.MatchString(s) {
			return b.what
		}
	}
	return ""
}
