package templates_test

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/units"
	"matchmark/templates"
	"matchmark/templates/words"
)

// A setting is a starter on a paper in a language, with a second below it where one is
// named.
type setting struct {
	starter, lang, second string
	paper                 layout.Paper
}

// settings are every starter in every language; each language has both papers, and each of
// them with a second language and without. With PAPER_LAW=full there are all. With -short a starter has one language.
func settings() []setting {
	var out []setting
	papers, langs := []layout.Paper{layout.A4, layout.Letter}, words.Languages()
	for i, st := range starterFiles {
		for k, lang := range langs {
			next := langs[(k+1+i)%len(langs)]
			if next == lang {
				next = ""
			}
			switch {
			case os.Getenv("PAPER_LAW") == "full":
				for _, paper := range papers {
					for _, second := range append([]string{""}, langs...) {
						if second != lang {
							out = append(out, setting{st, lang, second, paper})
						}
					}
				}
			case testing.Short() && k != 1+i:
			case (i+k)%2 == 0:
				out = append(out, setting{st, lang, next, papers[(i/2+k)%2]})
			default:
				out = append(out, setting{st, lang, "", papers[(i/2+k)%2]})
			}
		}
	}
	return out
}

// foreign are the settings in one language alone that is not English.
func foreign() []setting {
	return slices.DeleteFunc(settings(), func(x setting) bool { return x.second != "" || x.lang == "en" })
}

// On paper of every language, with a second or without, everything has its room and lies on
// its page. In a language with a decimal comma no number that the program writes has a
// point; in English none has a comma. Codes, numbers of steps, revisions and what an author
// wrote stay as they are.
func TestPaperOfEveryLanguage(t *testing.T) {
	t.Parallel()
	for _, x := range settings() {
		name := x.starter + " in " + x.lang + " " + x.second + " on " + x.paper.Name
		j, pack, problems := composeIn(t, x)
		for _, p := range problems {
			t.Errorf("%s: %s [%s]", name, p.Message, p.Code)
		}
		for n, f := range pack.Pages.Pages {
			for _, it := range f.Items {
				if l, top, r, b := it.Bounds(); l < 0 || top < 0 || r > f.W || b > f.H {
					t.Errorf("%s, %s page %d: an item reaches over the page: %+v", name, f.Sheet, n+1, it.Shape)
				}
			}
		}
		decimalSigns(t, name, x, j, pack)
	}
}

// decimalSigns sees that every number of a pack has the sign of its language.
func decimalSigns(t *testing.T, name string, x setting, j *job.Job, pack *templates.Pack) {
	t.Helper()
	w, err := words.In(x.lang)
	if err != nil {
		t.Fatal(err)
	}
	foreign := pointed
	if w.Common.Decimal == "." {
		foreign = comma
	}
	theirs := append(ownTexts(j), textsOf(w)...)
	if x.second != "" {
		other, err := words.In(x.second)
		if err != nil {
			t.Fatal(err)
		}
		theirs = append(append(theirs, ownTexts(loadIn(t, x.starter, x.second))...), textsOf(other)...)
	}
	own := map[string]bool{}
	for _, text := range theirs {
		for _, bit := range figures(foreign, text) {
			own[bit] = true
		}
	}
	if units.DecimalMark != layout.DecimalMark {
		t.Fatal("numbers are written with another decimal mark than the one that is set")
	}
	told := map[string]bool{}
	eachTextOf(pack, func(f layout.Frame, text string) {
		for _, bit := range figures(foreign, text) {
			if !own[bit] && !told[bit] {
				told[bit] = true
				t.Errorf("%s, sheet %s: %q in %q", name, f.Sheet, bit, text)
			}
		}
		if strings.ContainsRune(text, layout.DecimalMark) {
			t.Errorf("%s, sheet %s: a mark is left in %q", name, f.Sheet, text)
		}
	})
	for _, e := range pack.Pages.Outline {
		if strings.ContainsRune(e.Title, layout.DecimalMark) {
			t.Errorf("%s: a mark is left in the outline, %q", name, e.Title)
		}
	}
	for _, f := range pack.Pages.Pages {
		for _, it := range f.Items {
			if r, ok := it.Shape.(layout.Rect); ok && r.Point > 0 && r.Comma != (w.Common.Decimal == ",") {
				t.Fatalf("%s, sheet %s: a box has the other decimal sign", name, f.Sheet)
			}
		}
	}
}

// What a job brings along in English that its author did not write: names of standards,
// books and theorems.
var citation = regexp.MustCompile(`^[0-9]+ CFR|^(ISO|EN|ASME|DOE|NASA|NFPA|WAC|GL) |Bloch|Lamé|Incropera|Gere|handbook`)

// Nothing that the program writes stays English on paper of another language: a text of
// the job that is on a page is its author's, part for part, or a citation.
func TestNothingStaysEnglish(t *testing.T) {
	t.Parallel()
	one := func(s string) string {
		return strings.Join(strings.Fields(strings.NewReplacer("\\", " ", "\"", " ", "'", " ", "\u00a0", " ").Replace(s)), " ")
	}
	told := map[string]bool{}
	for _, x := range foreign() {
		st, lang := x.starter, x.lang
		w, err := words.In(lang)
		if err != nil {
			t.Fatal(err)
		}
		j, pack, _ := composeIn(t, x)
		page := map[string]*strings.Builder{}
		eachTextOf(pack, func(f layout.Frame, text string) {
			if page[f.Sheet] == nil {
				page[f.Sheet] = &strings.Builder{}
			}
			page[f.Sheet].WriteString(squeeze(text))
		})
		data, err := os.ReadFile("../packs/starters/" + st)
		if err != nil {
			t.Fatal(err)
		}
		written := one(string(data))
		theirs := func(text string) bool {
			for _, part := range strings.FieldsFunc(text, func(r rune) bool { return r == ',' || r == '/' }) {
				if !strings.Contains(written, strings.TrimRight(one(part), "0123456789 ")) { // line 1 of a count of lines
					return false
				}
			}
			return true
		}
		for _, text := range ownTexts(j) {
			if len(strings.Fields(text)) < 2 || w.Said(text) != text || !english.MatchString(text) || citation.MatchString(text) || theirs(text) || told[text] {
				continue
			}
			told[text] = true
			for sheet, on := range page {
				if strings.Contains(on.String(), squeeze(text)) {
					t.Errorf("%s in %s, sheet %s: %q", st, lang, sheet, text)
				}
			}
		}
	}
}

var english = regexp.MustCompile(`[a-z]{4}`)

// No word of a page is English by itself: it is one of the language, or of a text of the
// job.
func TestWordsOfThePageAreOfItsLanguage(t *testing.T) {
	t.Parallel()
	split := func(text string) []string {
		return strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !unicode.IsLetter(r) })
	}
	for _, x := range foreign() {
		st, lang := x.starter, x.lang
		w, err := words.In(lang)
		if err != nil {
			t.Fatal(err)
		}
		j, pack, _ := composeIn(t, x)
		own := map[string]bool{}
		for _, text := range append(ownTexts(j), textsOf(w)...) {
			for _, x := range split(text) {
				own[x] = true
			}
		}
		told := map[string]bool{}
		parted := false // a word goes on from the line above
		eachTextOf(pack, func(f layout.Frame, text string) {
			list := split(text)
			if parted && len(list) > 0 {
				list = list[1:]
			}
			if parted = strings.HasSuffix(text, "-"); parted && len(list) > 0 {
				list = list[:len(list)-1]
			}
			for _, x := range list {
				if len(x) > 3 && !own[x] && !told[x] {
					told[x] = true
					t.Errorf("%s in %s, sheet %s: %q in %q", st, lang, f.Sheet, x, text)
				}
			}
		})
	}
}

// The pages that are named are links in every language. Those of a German pack, p. as S.,
// were none.
func TestPageNumbersAreLinksInEveryLanguage(t *testing.T) {
	t.Parallel()
	links := map[string]int{}
	for _, x := range settings() {
		if x.starter != "exhaust-fan.yaml" {
			continue
		}
		_, pack, _ := composeIn(t, x)
		n := 0
		for _, f := range pack.Pages.Pages {
			n += len(f.Links)
		}
		links[x.lang] = n
	}
	for lang, n := range links {
		if n < links["en"]*9/10 {
			t.Errorf("%s: %d pages are links, in English %d", lang, n, links["en"])
		}
	}
	if !testing.Short() && (len(links) != len(words.Languages()) || links["en"] == 0) {
		t.Errorf("links in %v", links)
	}
}
