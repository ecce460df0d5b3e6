package words

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
