package def

import (
	"regexp"
	"sync"
)

// pattern is an expression that is compiled when it is first asked for: those of letters
// in all scripts take longer than the reading of a short file, and most of them are only
// asked for where something is wrong.
func pattern(text string) func() *regexp.Regexp {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(text) })
}
