package pdf

import (
	"fmt"
	"regexp"
	"time"
	"unicode/utf8"

	"matchmark/layout"
)

// The PDF library panics on text that is not well-formed UTF-8 and on characters
// beyond the basic plane, and writes lengths that are no numbers into the file as
// words. All of that is refused here, before the library sees it.

// checkText refuses text that the library cannot write.
func checkText(s string) error {
	for i, r := range s {
		switch {
		case r == utf8.RuneError && !isReplacement(s[i:]):
			return fmt.Errorf("text %q is not well-formed UTF-8 at byte %d", s, i)
		case r > 0xffff:
			return fmt.Errorf("text %q holds %U, which the page cannot carry", s, r)
		}
	}
	return nil
}

// isReplacement tells U+FFFD as written from a byte that could not be read.
func isReplacement(s string) bool {
	_, n := utf8.DecodeRuneInString(s)
	return n == len("\uFFFD")
}

// checkDoc refuses a document before anything is painted, as far as this does not
// need a look at each item.
func checkDoc(d *layout.Doc) error {
	if len(d.Pages) == 0 {
		return fmt.Errorf("the document has no pages")
	}
	if d.Lang != "" && !langTag.MatchString(d.Lang) {
		return fmt.Errorf("language %q is not a language tag such as en or de-CH", d.Lang)
	}
	if d.Date != "" {
		if _, err := time.Parse(time.DateOnly, d.Date); err != nil {
			return fmt.Errorf("date %q is not written like 2026-03-02", d.Date)
		}
	}
	for _, s := range []string{d.Title, d.Subject, d.Author} {
		if !utf8.ValidString(s) {
			return fmt.Errorf("text %q is not well-formed UTF-8", s)
		}
	}
	for _, e := range d.Outline {
		if e.Page < 0 || e.Page >= len(d.Pages) {
			return fmt.Errorf("outline entry %q leads to page %d of %d", e.Title, e.Page+1, len(d.Pages))
		}
		if !utf8.ValidString(e.Title) {
			return fmt.Errorf("text %q is not well-formed UTF-8", e.Title)
		}
	}
	return nil
}

// langTag is the form of a language tag, as far as it matters here: letters,
// figures and hyphens, nothing that ends a string in the file.
var langTag = regexp.MustCompile(`^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$`)
