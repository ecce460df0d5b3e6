package main

import (
	"crypto/sha256"
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/templates"
)

// goldenSheets gives the text of each kind of sheet of a pack by the name of its
// file: what stands on every page of it once, then what is on each page. What
// changes on every page when anything changes stands for itself: <page>, <pages>
// and <digest>. Those are held by TestPageCodesReadBack and the hashes.
func goldenSheets(digest string, pack *templates.Pack) map[string]string {
	pages := map[string][][]string{}
	for _, doc := range []*layout.Doc{pack.Pages, pack.Tags} {
		for i, f := range doc.BySheet() {
			page := f.Number
			if page == 0 {
				page = i + 1
			}
			text := masked(layout.Readable(f), digest, page, len(doc.Pages))
			pages[f.Sheet] = append(pages[f.Sheet], strings.Split(strings.TrimSuffix(text, "\n"), "\n"))
		}
	}
	files := map[string]string{}
	for sheet, of := range pages {
		files[sheet+".txt"] = sheetText(of)
	}
	return files
}

// masked takes the numbers of the page and the digest of the pack out of a text.
func masked(text, digest string, page, pages int) string {
	text = strings.NewReplacer(digest, "<digest>", strings.ToUpper(digest), "<digest>").Replace(text)
	printed := regexp.MustCompile(`\b` + strconv.Itoa(page) + `( of |/)` + strconv.Itoa(pages) + `\b`)
	coded := regexp.MustCompile(`<digest> ` + strconv.Itoa(page) + ` ` + strconv.Itoa(pages) + `\b`)
	return coded.ReplaceAllString(printed.ReplaceAllString(text, "<page>$1<pages>"), "<digest> <page> <pages>")
}

// sheetText writes the pages of a sheet, the lines with which all of them begin and
// end only once. Pages without a head, as those of the tags, have no foot either.
func sheetText(pages [][]string) string {
	head, foot := 0, 0
	if len(pages) > 1 {
		head = common(pages, 0, func(lines []string, i int) string { return lines[i] })
	}
	if head > 0 {
		foot = common(pages, head, func(lines []string, i int) string { return lines[len(lines)-1-i] })
	}
	var b strings.Builder
	write := func(title string, lines []string) {
		fmt.Fprintf(&b, "--- %s\n", title)
		for _, l := range lines {
			b.WriteString(l + "\n")
		}
	}
	if head > 0 {
		write("at the head of each page", pages[0][:head])
	}
	if foot > 0 {
		write("at the foot of each page", pages[0][len(pages[0])-foot:])
	}
	for i, p := range pages {
		write(fmt.Sprintf("page %d of this sheet", i+1), p[head:len(p)-foot])
	}
	return b.String()
}

// common counts the lines that all pages share, as at gives them, leaving alone so
// many that are taken.
func common(pages [][]string, taken int, at func(lines []string, i int) string) int {
	for n := 0; ; n++ {
		for _, p := range pages {
			if n+taken >= len(p) || at(p, n) != at(pages[0], n) {
				return n
			}
		}
	}
}

// frameHashes tells for each page the first 16 digits of the SHA-256 of its items
// with their places and sizes.
func frameHashes(pack *templates.Pack) string {
	var b strings.Builder
	for _, doc := range []*layout.Doc{pack.Pages, pack.Tags} {
		seen := map[string]int{}
		for _, f := range doc.Pages {
			seen[f.Sheet]++
			sum := sha256.Sum256([]byte(layout.Dump(f)))
			fmt.Fprintf(&b, "%s %d: %x\n", f.Sheet, seen[f.Sheet], sum[:8])
		}
	}
	return b.String()
}
