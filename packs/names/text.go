package names

import (
	"strconv"
	"strings"

	"matchmark/packs/source"
)

// Cut parts a written name from the place after its slash.
func Cut(s string) (key, rest string, named bool) { return strings.Cut(s, "/") }

// WholeNumber is a count of pieces, which the reader has found to be a whole number
// from 1 up; what it could not read counts as left out.
func WholeNumber(t source.Text) (int, bool) {
	n, err := strconv.Atoi(t.Value)
	return n, err == nil
}

func Texts(list []source.Text) []string {
	out := make([]string, len(list))
	for i, t := range list {
		out[i] = t.Value
	}
	return out
}

// NoneBecause reads "none, because ...": the reason, and whether it is that form.
func NoneBecause(t source.Text) (reason string, none bool) {
	if t.Value == "none" {
		return "", true
	}
	rest, ok := strings.CutPrefix(t.Value, "none")
	if !ok || strings.TrimLeft(rest, ", ") == rest {
		return "", false
	}
	rest = strings.TrimLeft(rest, ", ")
	return strings.TrimSpace(strings.TrimPrefix(rest, "because")), true
}
