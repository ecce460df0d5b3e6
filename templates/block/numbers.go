package block

import (
	"strings"

	"matchmark/layout"
)

// mayBreak is put where a line may end inside of a word.
const mayBreak = "\u200b"

// Breakable lets a line end between any two signs of those words of a text that are wider
// than the room: the number of a job or a machine has no blank to break at, and other
// systems make it 20 signs long.
func (c *Composer) Breakable(st layout.Style, room layout.Mm, text string) string {
	words := strings.Split(text, " ")
	for i, w := range words {
		if c.Width(st, w) > room {
			words[i] = strings.Join(strings.Split(w, ""), mayBreak)
		}
	}
	return strings.Join(words, " ")
}
