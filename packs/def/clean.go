package def

import (
	"bytes"
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"matchmark/packs/source"
)

// maxEntries is the most lines, commas and brackets that a file may have; the
// largest definition expected has some five thousand. It bounds the time and
// memory that any file can cost: YAML takes about 500 bytes for each of them.
const maxEntries = 100_000

// clean makes text of the bytes of a file that YAML reads to the end and counts
// lines of as package source does. Characters that have no business in a text
// are reported, and a blank stands in for each. It gives false when the file is
// no text at all.
func (r *reader) clean(data []byte) ([]byte, bool) {
	data = bytes.TrimPrefix(data, []byte("\xef\xbb\xbf"))
	if bytes.HasPrefix(data, []byte{0xFF, 0xFE}) || bytes.HasPrefix(data, []byte{0xFE, 0xFF}) {
		r.add(r.at(1, 1, 1), "not-utf-8", "the file is saved as UTF-16", "save it as UTF-8 in the editor")
		return nil, false
	}
	entries := 0
	for _, c := range data {
		switch c {
		case '\n', ',', '[', '{', '\r':
			entries++
		}
	}
	if entries > maxEntries {
		line, col := position(data, nthEntry(data, maxEntries))
		r.add(r.at(line, col, 1), "too-large", fmt.Sprintf("the file has over %d lines, commas and brackets, too many for a definition", maxEntries),
			"is it the right file?")
		return nil, false
	}
	return r.cleanRunes(data)
}

// nthEntry is the offset of the nth of what clean counts.
func nthEntry(data []byte, n int) int {
	for i, c := range data {
		if strings.IndexByte("\n,[{\r", c) >= 0 {
			if n--; n == 0 {
				return i
			}
		}
	}
	return len(data)
}

// cleanRunes goes through a text rune by rune; see clean.
func (r *reader) cleanRunes(data []byte) ([]byte, bool) {
	out := make([]byte, 0, len(data))
	line, col := 1, 1
	lead := leading{r: r}
	defer lead.tell()
	for i := 0; i < len(data); {
		c, size := utf8.DecodeRune(data[i:])
		switch {
		case c == 0:
			r.add(r.at(line, col, 1), "not-text", "this is no text file: a zero byte stands here", "is it the right file? A definition is a text file with the ending .yaml")
			return nil, false
		case c == utf8.RuneError && size == 1 && r.full():
			r.left++
			out = append(out, ' ')
		case c == utf8.RuneError && size == 1:
			r.add(r.at(line, col, 1), "not-utf-8", fmt.Sprintf("the byte %#02x is no letter of UTF-8: the file is saved in an older encoding, or damaged", data[i]),
				"save it as UTF-8 in the editor")
			out = append(out, ' ')
		case c == '\r':
			out = append(out, '\n')
			if i+1 < len(data) && data[i+1] == '\n' {
				size++
			}
		case lead.plain(data[i:]) != 0:
			out = append(out, lead.plain(data[i:]))
			lead.note(c, line, col)
		case c != '\n' && c != '\t' && source.Invisible(c):
			r.unseen(r.at(line, col, 1), c, "stands here")
			out = append(out, ' ')
		default:
			out = append(out, data[i:i+size]...)
		}
		lead.pass(c)
		i += size
		col++
		if c == '\n' || c == '\r' {
			line, col = line+1, 1
		}
	}
	return out, true
}

// unseen reports a character that cannot be seen.
func (r *reader) unseen(at source.Pos, c rune, where string) {
	if r.full() {
		r.left++
		return
	}
	code, what := "invisible", "an invisible character"
	if unicode.IsControl(c) {
		code, what = "control-character", "an invisible control character"
	}
	r.add(at, code, what+" "+where+": "+source.RuneName(c), "take it out; it often comes along when text is copied")
}

// position gives line and column of a byte offset, both from 1.
func position(text []byte, offset int) (line, col int) {
	offset = min(max(offset, 0), len(text))
	before := text[:offset]
	line = bytes.Count(before, []byte{'\n'}) + 1
	return line, utf8.RuneCount(before[bytes.LastIndexByte(before, '\n')+1:]) + 1
}
