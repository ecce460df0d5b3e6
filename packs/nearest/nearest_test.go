package nearest

import (
	"strings"
	"testing"
)

// The distances of kitten to sitting and of ca to abc are the usual examples of
// the Levenshtein and the optimal string alignment distance (from memory).
func TestFaultsBetweenWords(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{
		{"kitten", "sitting", 3}, {"ca", "abc", 3}, {"", "abc", 3}, {"abc", "", 3}, {"nmae", "name", 1}, {"same", "same", 0}, {"ab", "ba", 1},
	} {
		if got := faults([]rune(c.a), []rune(c.b)); got != c.want {
			t.Errorf("from %q to %q are %d faults, want %d", c.a, c.b, got, c.want)
		}
	}
}

func TestWordNamesWhatWasProbablyMeant(t *testing.T) {
	names := []string{"name", "note", "viewed-from", "left", "by", "at"}
	for _, c := range []struct{ word, want string }{
		{"nmae", "name"}, {"Name", "name"}, {"nam", "name"}, {"viewed_form", "viewed-from"}, {"viewed from", "viewed-from"},
		{"colour", ""}, {"", ""}, {"xy", "by"}, {"qz", ""}, {strings.Repeat("name", 40), ""},
	} {
		if got := Word(c.word, names); got != c.want {
			t.Errorf("nearest to %q is %q, want %q", c.word, got, c.want)
		}
	}
}

// TestWordOfUnits: units as people type them.
func TestWordOfUnits(t *testing.T) {
	units := []string{"mm", "in", "kg", "N·m", "lb-ft", "MPa"}
	for typed, want := range map[string]string{"kgs": "kg", "N-m": "N·m", "lbft": "lb-ft", "Mpa": "MPa", "banana": ""} {
		if got := Word(typed, units); got != want {
			t.Errorf("nearest to %q: %q, want %q", typed, got, want)
		}
	}
}
