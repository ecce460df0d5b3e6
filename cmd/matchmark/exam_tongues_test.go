package main

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates"
)

// An examQuestion is one that a reader answers from the printed pages alone: what is asked
// and answered, by language, and the sheet and the texts by which its page is found.
type examQuestion struct {
	Sheet, Step string
	Find        []string
	Ask, Answer map[string]string
}

// examHeads are the heads of the two lists, by language.
var examHeads = map[string][2]string{
	"de": {"Fragen zur Mappe der Regenwasserpumpe (storm-pump, --language de, A4)", "Schlüssel"},
	"es": {"Preguntas sobre el dosier de la bomba de aguas pluviales (storm-pump, --language es, A4)", "Clave"},
	"fr": {"Questions sur le dossier de la pompe à eaux pluviales (storm-pump, --language fr, A4)", "Corrigé"},
	"pl": {"Pytania do pakietu pompy wód opadowych (storm-pump, --language pl, A4)", "Klucz"},
}

// Twenty questions a language about the storm pump, each answered on the page that the key
// names: the key is written from the pages, and a question whose answer is on none fails.
func TestExamInEveryLanguage(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile(filepath.Join(testdata, "exam", "tongues.json"))
	if err != nil {
		t.Fatal(err)
	}
	var list []examQuestion
	if err := json.Unmarshal(data, &list); err != nil || len(list) != 20 {
		t.Fatalf("%d questions, %v", len(list), err)
	}
	for lang, head := range examHeads {
		jb, pack := inTongue(t, "storm-pump.yaml", lang, layout.A4)
		var asks, keys strings.Builder
		for i, q := range list {
			page := examPage(pack, q)
			if page == 0 {
				t.Errorf("%s, question %d: no page of %s has all of %q", lang, i+1, q.Sheet, q.Find)
			}
			if q.Step != "" && !hasStep(jb, q.Step) {
				t.Errorf("%s, question %d: there is no step %s", lang, i+1, q.Step)
			}
			fmt.Fprintf(&asks, "%d. %s\n", i+1, q.Ask[lang])
			fmt.Fprintf(&keys, "%d. %s (%s)\n", i+1, q.Answer[lang], strings.TrimPrefix(q.Step+", p. "+fmt.Sprint(page), ", "))
		}
		expect(t, "exam/"+lang+".md", "# "+head[0]+"\n\n"+asks.String()+"\n## "+head[1]+"\n\n"+keys.String())
	}
}

// examPage is the first page of a question's sheet that has all its texts, 0 for none.
func examPage(pack *templates.Pack, q examQuestion) int {
	for i, f := range pack.Pages.Pages {
		of, ok := f.Of(func(sheet string) bool { return sheet == q.Sheet })
		if !ok {
			continue
		}
		text := tight(layout.Readable(of))
		all := true
		for _, find := range q.Find {
			all = all && strings.Contains(text, tight(find))
		}
		if all {
			return i + 1
		}
	}
	return 0
}

// tight leaves the blanks of a text out.
func tight(s string) string {
	return strings.NewReplacer(" ", "", "\u00a0", "", "\n", "", "|", "").Replace(s)
}

// hasStep reports whether a job has a step of a number.
func hasStep(jb *job.Job, no string) bool {
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			if st.No == no {
				return true
			}
		}
	}
	return false
}
