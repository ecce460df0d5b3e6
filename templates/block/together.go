package block

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/units"
)

// Together holds each number of a text that an author wrote and its unit on one line: "the
// last 9" at the end of a line, and "mm" at the beginning of the next, is read as nine of
// something else. ISO 80000-1, 7.1.4, has them as one; that no line parts them is common
// practice, no source. What a step says passes through it, its remark, what is easily missed,
// what is done out of limits and the state at a reading; not the short list of all steps.
func Together(text string) string {
	var out strings.Builder
	from := 0
	for i := 1; i+1 < len(text); i++ {
		if text[i] != ' ' || text[i-1] < '0' || text[i-1] > '9' || !isUnit(text[i+1:]) {
			continue
		}
		out.WriteString(text[from:i])
		out.WriteString(layout.NoBreak)
		from = i + 1
	}
	if from == 0 {
		return text
	}
	out.WriteString(text[from:])
	return out.String()
}

// isUnit reports whether a text begins with a unit as a quantity has it.
func isUnit(text string) bool {
	word := text
	if end := strings.IndexAny(text, " \n"); end >= 0 {
		word = text[:end]
	}
	return units.IsQuantity("1 " + strings.TrimRight(word, ".,;:)?!"))
}
