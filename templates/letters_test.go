package templates_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
)

// The letters of the alphabets in which a crew may write, each composed with its accent:
// the languages of the paper, Greek, and the Cyrillic of Russian, Ukrainian, Bulgarian,
// Belarusian, Macedonian and Serbian.
const (
	latin    = "ÄÖÜäöüß ÁÉÍÓÚÑáéíóúñ¿¡ ÀÂÆÇÈÉÊËÎÏÔŒÙÛÜŸàâæçèéêëîïôœùûüÿ ĄĆĘŁŃÓŚŹŻąćęłńóśźż ČŠŽčšžĐđ ÅØåø ĂÂÎȘȚăâîșț ĞİŞğış ŐŰőű «»„“”’‚…–—"
	greek    = "ΑΒΓΔΕΖΗΘΙΚΛΜΝΞΟΠΡΣΤΥΦΧΨΩ αβγδεζηθικλμνξοπρσςτυφχψω ΆΈΉΊΌΎΏΪΫ άέήίόύώϊϋΐΰ"
	cyrillic = "АБВГДЕЁЖЗИЙКЛМНОПРСТУФХЦЧШЩЪЫЬЭЮЯ абвгдеёжзийклмнопрстуфхцчшщъыьэюя ҐЄІЇґєії Ўў ЂЈЉЊЋЏђјљњћџ ЃЅЌѓѕќ"
)

// Texts in Greek and Cyrillic are printed as written, in every face.
func TestGreekAndCyrillicOnPaper(t *testing.T) {
	t.Parallel()
	faces := pdf.NewFaces()
	for face := range layout.NumFaces {
		for _, r := range latin + greek + cyrillic {
			if !faces.Has(face, r) {
				t.Errorf("%s lacks %q", face, r)
			}
		}
	}
	texts := []string{"Δακτύλιος στεγανοποίησης", "Μετρήστε το διάκενο πριν λύσετε τους κοχλίες.", "Гайка стопорная", "Замерьте зазор и снимите гайку."}
	data := "pack: 1\nequipment: {tag: P-1, name: " + texts[0] + "}\njob: {number: \"1\", title: " + texts[2] + ", revision: A, issued: 2026-03-02}\n" +
		"steps:\n  - {step: a, do: " + texts[1] + "}\n  - {step: b, do: " + texts[3] + "}\n"
	j, problems := packs.Load(fstest.MapFS{"p.yaml": {Data: []byte(data)}}, packs.Inputs{Definition: "p.yaml"})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	pack, misfits := templates.Compose(j, templates.Options{Paper: layout.A4}, faces, nil)
	if len(misfits) > 0 {
		t.Error(misfits)
	}
	var page strings.Builder
	eachTextOf(pack, func(_ layout.Frame, text string) { page.WriteString(squeeze(text)) })
	for _, text := range texts {
		if !strings.Contains(page.String(), squeeze(text)) {
			t.Errorf("%q is not on paper", text)
		}
	}
}

// A letter that the faces lack is told where it stands, and with it nothing else.
func TestALetterThatLacksIsToldAtItsPlace(t *testing.T) {
	t.Parallel()
	data := "pack: 1\nequipment: {tag: P-1, name: Насос}\njob: {number: \"1\", title: Job, revision: A, issued: 2026-03-02}\nsteps:\n  - {step: a, do: Снимите ⴰ гайку.}\n"
	j, _ := packs.Load(fstest.MapFS{"p.yaml": {Data: []byte(data)}}, packs.Inputs{Definition: "p.yaml"})
	_, misfits := templates.Compose(j, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
	if len(misfits) != 1 || misfits[0].Code != "no-sign" || misfits[0].Pos.Line != 5 || !strings.Contains(misfits[0].Message, "ⴰ") {
		t.Errorf("told: %v", misfits)
	}
}
