package def

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"matchmark/packs/source"
)

// InWords tells a problem of the file in its own words, and reports whether it spoke of
// this copy.
func (c *Copied) InWords(p *source.Problem) bool {
	was := p.Message
	p.Message = c.inWordsOf(p.Message)
	for i := range p.Help {
		p.Help[i] = once(c.inWordsOf(p.Help[i]))
	}
	return p.Message != was
}

// once leaves out of a list in a line of help what stands in it already: two copies have
// the same names in the words of their file.
func once(s string) string {
	list := strings.Split(s, ", ")
	seen := map[string]bool{}
	out := list[:0]
	for _, item := range list {
		word := item[strings.LastIndexByte(item, ' ')+1:]
		if !seen[word] || word != item {
			out = append(out, item)
		}
		seen[word] = true
	}
	return strings.Join(out, ", ")
}

// inWordsOf gives a text in the words of the file.
func (c *Copied) inWordsOf(s string) string {
	var out strings.Builder
	before := ' '
	for i := 0; i < len(s); {
		if here := c.nameAt(s[i:]); here != "" && !unicode.IsLetter(before) && !unicode.IsDigit(before) && before != '-' {
			out.WriteString(c.Names[here])
			i, before = i+len(here), 'x'
			continue
		}
		r, size := utf8.DecodeRuneInString(s[i:])
		out.WriteString(s[i : i+size])
		i, before = i+size, r
	}
	return markInText.ReplaceAllStringFunc(out.String(), func(m string) string {
		if there, ok := c.Marks[m]; ok {
			return there
		}
		return m
	})
}

// nameAt is the longest name of this copy that a text begins with, empty if it begins
// with none.
func (c *Copied) nameAt(s string) string {
	longest := ""
	if !strings.HasPrefix(s, c.As) {
		return longest
	}
	for here := range c.Names {
		if len(here) > len(longest) && strings.HasPrefix(s, here) {
			longest = here
		}
	}
	return longest
}
