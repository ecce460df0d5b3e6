package words

import "strings"

// Unit gives the unit that a text is, or ends with behind a no-break space, in the
// catalogue's language, where it is a word; any other text stays.
func (c *Catalogue) Unit(text string) string {
	i := 0
	if at := strings.LastIndex(text, noBreak); at >= 0 {
		i = at + len(noBreak)
	}
	if name, ok := c.Common.Units[text[i:]]; ok {
		return text[:i] + name
	}
	return text
}

const noBreak = "\u00a0"

// Sayings are the sentences of calculations and hazard notes by their English text.
type Sayings map[string]string

// Said gives a fixed sentence of a calculation in the catalogue's language; it makes
// the catalogue a units.Tongue. What is no fixed sentence, as a name, stays as it is.
func (c *Catalogue) Said(english string) string {
	if text, ok := c.Sayings[english]; ok {
		return text
	}
	return english
}

// Causes tell by code what stands behind a problem that is printed on paper.
type Causes map[string]string

// Cause tells in a sentence what stands behind a code; empty in English, whose paper has
// the message itself. With Said it makes the catalogue a source.Tongue.
func (c *Catalogue) Cause(code string) string { return c.Causes[code] }
