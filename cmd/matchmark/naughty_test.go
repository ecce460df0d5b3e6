package main

import (
	"bytes"
	"encoding/csv"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/keep"
	"matchmark/packs/source"
	"matchmark/templates"
)

// naughty are texts that some program on the way to the paper could take for
// something of its own: the file, the page, the code, the register, a spreadsheet.
// Each is printed as written, or named at its place.
var naughty = []string{
	`Cap) Tj ET (x`, `<</Type /Page>>`, `%PDF-1.7`, `endobj endstream`, `back\slash \n \(`, `(unbalanced`,
	`100 %d %s %!v(MISSING)`, `{{.}} ${HOME} $(id)`, `<b>Cap</b> &amp; co`, `Robert'); DROP`, `a,b;c"d"e`,
	`null`, `true`, `0x10`, `1e3`, `C4/DE`, `D7`, `p. 9 of 9`, `[___.__]`, `WO-1*A*C4*1`,
	"Øre, Œil, İstanbul ıi", "№ 5 ± µm ≤ 3 Ω ⌀8", "Подшипник", "a\u00a0b", "a\u202fb", "cafe\u0301",
	"ab\u200bcd", "ab\u00adcd", "ab\u202ecd", "ab\ufe0fcd", "שלום", "漢字", "\U0001F527", "\ue000", "Cарfilter",
	"=1+1", "@x", "+x", "-x", "=cmd|' /C calc'!A0",
}

// TestNaughtyTexts puts such texts into every field whose words are printed: what
// check accepts stands on the paper and in the register letter by letter.
func TestNaughtyTexts(t *testing.T) {
	longTest(t)
	t.Parallel()
	const data = `pack: 1
equipment: {tag: PU-2, name: Rinse pump, location: Bay four}
job: {number: WO-9, revision: A, issued: 2026-03-02, title: Seal change}
places: {end: {DE: {name: drive end}, NDE: {name: far end}}}
instruments: {gauge: {name: Depth gauge, range: 0 to 150 mm, reads: 0.02 mm}}
parts: {shaft: {name: Shaft}, cap: {name: Cap, each: end}}
dimensions:
  D1: {what: Stand-off of the cap, from: {cap: outer face}, to: {shaft: end face}, each: end, by: gauge, with: shaft pushed home, left: as found +/- 0.10 mm, source: sheet four}
containers: {C1: {name: Caps, kind: bag, each: end, keep: oiled}}
steps:
  - section: Strip the pump
    steps:
      - {step: cap, each: end, do: Take the cap off., measure: [D1], remove: [cap], into: C1, check: The face is clean., missed: It hides behind the guard., back: Push the cap home.}
  - reverse: [Strip the pump]
  - {step: gap, each: end, do: Set the stand-off., set: [D1]}
`
	var fields []field
	for _, f := range fieldsOf(t, data) {
		if kept, _ := keptWords(t, replaced(data, f, "Plain words"), "Plain words"); kept {
			fields = append(fields, f)
		}
	}
	if len(fields) < 8 {
		t.Fatalf("only %d fields take words of their own that are printed", len(fields))
	}
	printed, refused := 0, 0
	for i, f := range fields {
		for k, text := range naughty {
			if !everyStretch() && (i+k)%len(fields) != 0 {
				continue
			}
			kept, problems := keptWords(t, replaced(data, f, text), text)
			switch {
			case kept:
				printed++
			case problems.Errors() > 0:
				refused++
				checkNamed(t, f.path+", "+strconv.Quote(text), problems, strings.Count(data, "\n")+1)
			default:
				t.Errorf("%s: %q is accepted, and does not stand on paper", f.path, text)
			}
		}
	}
	t.Logf("%d fields: %d texts printed as written, %d refused", len(fields), printed, refused)
	if printed < 10 || refused < 10 {
		t.Errorf("%d printed and %d refused: the test has lost its subject", printed, refused)
	}
}

// keptWords prints a definition and reports whether a text stands on the paper as
// written, and sees that the register can be read back and holds no formula.
func keptWords(t *testing.T, definition, text string) (bool, source.Problems) {
	t.Helper()
	jb, problems := loadText(definition)
	if problems.Errors() > 0 {
		return false, problems
	}
	pack, misfits := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), problems)
	if misfits.Errors() > 0 {
		return false, misfits
	}
	var register bytes.Buffer
	if err := keep.WriteRegister(&register, jb, false); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(&register).ReadAll()
	if err != nil || len(rows) != len(jb.Tags)+1 {
		t.Errorf("%q: the register has %d lines for %d tags: %v", text, len(rows), len(jb.Tags), err)
	}
	for _, row := range rows {
		if i := slices.IndexFunc(row, func(cell string) bool { return strings.IndexAny(cell, "=+-@\t\r") == 0 }); i >= 0 {
			t.Errorf("%q: a spreadsheet would run the cell %q of the register", text, row[i])
		}
	}
	var on strings.Builder
	for _, doc := range []*layout.Doc{pack.Pages, pack.Tags} {
		for _, f := range doc.Pages {
			for _, it := range f.Items {
				switch s := it.Shape.(type) {
				case layout.Text:
					on.WriteString(s.S)
				case layout.Path:
					on.WriteString(s.Alt)
				}
			}
		}
	}
	return strings.Contains(blankless(on.String()), blankless(text)), problems
}

// blankless is a text without its blanks and its case: lines break at blanks, and some
// heads are set in capitals.
func blankless(s string) string {
	return strings.ToLower(strings.Map(func(r rune) rune {
		if unicode.IsSpace(r) {
			return -1
		}
		return r
	}, s))
}
