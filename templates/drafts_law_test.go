package templates_test

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"
	"unicode"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
	"matchmark/templates/words"
)

// wordsOf are the words of a text, in lower case.
func wordsOf(text string) []string {
	return strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !unicode.IsLetter(r) })
}

// loadWith loads a definition of a folder in a language, with the job file and the site
// file that stand beside it.
func loadWith(dir, name, lang string) (*job.Job, source.Problems) {
	in := packs.Inputs{Definition: name, Language: lang}
	stem := strings.TrimSuffix(name, ".yaml")
	for file, at := range map[string]*string{stem + ".job.yaml": &in.Job, stem + ".site.yaml": &in.Site} {
		if _, err := os.Stat(filepath.Join(dir, file)); err == nil {
			*at = file
		}
	}
	return packs.Load(os.DirFS(dir), in)
}

// What a page of another language has of English: codes in brackets, the beginning or the
// end of a word of the file that is quoted cut off, and the codes, digests and sources that
// calculations bring along.
var (
	inBrackets = regexp.MustCompile(`\[[a-z-]+\]?|[\pL-]*…[\pL-]*`)
	sourceName = regexp.MustCompile(`^(asme|nfpa|noao|gnirs|wac|cfr|osha|army|navy|nasa|bloch|lamé|incropera|gere|iso|vdi|ohio|administrative|handbook)$`)
)

// catalogueWords are the words of the catalogues, by language.
var catalogueWords sync.Map

// wordSet are the words of some texts.
func wordSet(texts []string) map[string]bool {
	out := map[string]bool{}
	for _, text := range texts {
		for _, x := range wordsOf(text) {
			out[x] = true
		}
	}
	return out
}

// strangers gives the words of a pack that are neither of its language nor of the files
// that it was made from, each with the text that it stands in.
func strangers(j *job.Job, w *words.Catalogue, pack *templates.Pack) map[string]string {
	once, _ := catalogueWords.LoadOrStore(w.Lang, sync.OnceValue(func() map[string]bool { return wordSet(textsOf(w)) }))
	fixed := once.(func() map[string]bool)()
	var written []string
	for name, data := range j.Files {
		written = append(written, name, string(data))
	}
	own := wordSet(written)
	out := map[string]string{}
	parted, open := false, false // a word, a code goes on from the line above
	for _, f := range pack.Pages.Pages {
		for _, it := range f.Items {
			x, ok := it.Shape.(layout.Text)
			if !ok || strings.HasPrefix(it.Role, "code") {
				continue
			}
			text := x.S
			if i := strings.IndexByte(text, ']'); open && i >= 0 {
				text = text[i+1:]
			}
			open = strings.LastIndexByte(text, '[') > strings.LastIndexByte(text, ']')
			list := wordsOf(inBrackets.ReplaceAllString(text, " "))
			if parted && len(list) > 0 {
				list = list[1:]
			}
			if parted = strings.HasSuffix(text, "-"); parted && len(list) > 0 {
				list = list[:len(list)-1]
			}
			for _, word := range list {
				if len(word) > 3 && !own[word] && !fixed[word] && !sourceName.MatchString(word) && !strings.Contains(j.Digest, word) {
					out[word] = f.Sheet + ": " + x.S
				}
			}
		}
	}
	return out
}

// No word of a pack is English by itself, of a draft with errors neither: it is one of the
// language, or of what the author wrote. The front sheet of a Spanish draft told its
// errors in English, and its lift sheets why they had no figures.
func TestDraftsHaveNoEnglish(t *testing.T) {
	t.Parallel()
	n := 0
	for _, dir := range []string{"../packs/starters", "../testdata/good", "../testdata/bad"} {
		files, err := filepath.Glob(dir + "/*.yaml")
		if err != nil || len(files) == 0 {
			t.Fatal(dir, err)
		}
		for _, file := range files {
			name := filepath.Base(file)
			if strings.HasSuffix(name, ".site.yaml") || strings.HasSuffix(name, ".job.yaml") {
				continue
			}
			langs := words.Languages()[1:]
			if os.Getenv("PAPER_LAW") != "full" {
				n++
				langs = langs[n%len(langs):][:1]
			}
			for _, lang := range langs {
				w, err := words.In(lang)
				if err != nil {
					t.Fatal(err)
				}
				j, found := loadWith(dir, name, lang)
				pack, misfits := templates.Compose(j, templates.Options{Paper: layout.A4, Draft: found.Errors() > 0}, pdf.NewFaces(), found)
				if found.Errors() == 0 && misfits.Errors() > 0 && !strings.Contains(dir, "bad") {
					t.Errorf("%s in %s: %v", name, lang, misfits)
				}
				for word, text := range strangers(j, w, pack) {
					t.Errorf("%s in %s: %q in %s", name, lang, word, text)
				}
			}
		}
	}
}
