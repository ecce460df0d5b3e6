package phrase

import (
	"regexp"
	"sync"
)

// A Pattern is an expression of package regexp. Its methods are those of regexp.Regexp, and
// many goroutines may use it.
type Pattern struct {
	text     string
	take     sync.Once
	needs    need
	compiled func() *regexp.Regexp
}

// Of makes the pattern of an expression, which must be one that regexp can compile: if not,
// the first use panics.
func Of(expression string) *Pattern {
	return &Pattern{
		text:     expression,
		compiled: sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(expression) }),
	}
}

// Words makes the pattern of whole words, whatever their case; expression may have several,
// with a stroke between them.
func Words(expression string) *Pattern { return Of(`(?i)\b(?:` + expression + `)\b`) }

// Quoted is the expression of a text as it stands.
func Quoted(text string) string { return regexp.QuoteMeta(text) }

// may reports whether a text has the words without which the expression cannot match.
func (p *Pattern) may(text string) bool {
	p.take.Do(func() { p.needs = needOf(p.text) })
	if p.needs.open() {
		return true
	}
	if len(text) < short {
		var s signs
		s.read(text)
		return p.needs.metBy(&s)
	}
	return p.needs.metBy(signsOf(text))
}

// MatchString reports whether the text has a match.
func (p *Pattern) MatchString(text string) bool {
	return p.may(text) && p.compiled().MatchString(text)
}

// FindString is the text of the first match, empty if there is none.
func (p *Pattern) FindString(text string) string {
	if !p.may(text) {
		return ""
	}
	return p.compiled().FindString(text)
}

// FindStringIndex is where the first match begins and ends, nil if there is none.
func (p *Pattern) FindStringIndex(text string) []int {
	if !p.may(text) {
		return nil
	}
	return p.compiled().FindStringIndex(text)
}

// FindStringSubmatch is the first match and its groups, nil if there is none.
func (p *Pattern) FindStringSubmatch(text string) []string {
	if !p.may(text) {
		return nil
	}
	return p.compiled().FindStringSubmatch(text)
}

// FindStringSubmatchIndex is where the first match and its groups begin and end.
func (p *Pattern) FindStringSubmatchIndex(text string) []int {
	if !p.may(text) {
		return nil
	}
	return p.compiled().FindStringSubmatchIndex(text)
}

// FindAllString is the texts of the first n matches, of all if n is below 0.
func (p *Pattern) FindAllString(text string, n int) []string {
	if !p.may(text) {
		return nil
	}
	return p.compiled().FindAllString(text, n)
}

// FindAllStringIndex is where each of the first n matches begins and ends.
func (p *Pattern) FindAllStringIndex(text string, n int) [][]int {
	if !p.may(text) {
		return nil
	}
	return p.compiled().FindAllStringIndex(text, n)
}

// FindAllStringSubmatch is the first n matches with their groups.
func (p *Pattern) FindAllStringSubmatch(text string, n int) [][]string {
	if !p.may(text) {
		return nil
	}
	return p.compiled().FindAllStringSubmatch(text, n)
}

// FindAllStringSubmatchIndex is where the first n matches and their groups begin and end.
func (p *Pattern) FindAllStringSubmatchIndex(text string, n int) [][]int {
	if !p.may(text) {
		return nil
	}
	return p.compiled().FindAllStringSubmatchIndex(text, n)
}

// ReplaceAllString is the text with each match replaced, $1 in it for a group.
func (p *Pattern) ReplaceAllString(text, by string) string {
	if !p.may(text) {
		return text
	}
	return p.compiled().ReplaceAllString(text, by)
}

// ReplaceAllStringFunc is the text with each match replaced by what by makes of it.
func (p *Pattern) ReplaceAllStringFunc(text string, by func(string) string) string {
	if !p.may(text) {
		return text
	}
	return p.compiled().ReplaceAllStringFunc(text, by)
}
