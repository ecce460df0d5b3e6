package source

import (
	"testing"
	"unicode"
)

// The names and the general categories are those of the Unicode Standard, chapters
// 6.2 and 23.2; the list is from memory of its code charts.
func TestInvisible(t *testing.T) {
	for r, want := range map[rune]string{
		'\u200b': "U+200B zero width space", '\u200d': "U+200D zero width joiner", '\u00ad': "U+00AD soft hyphen",
		'\u202e': "U+202E right-to-left override", '\u2066': "U+2066 left-to-right isolate", '\ufeff': "U+FEFF zero width no-break space",
		'\u2060': "U+2060 word joiner", '\u034f': "U+034F combining grapheme joiner", '\u3164': "U+3164 hangul filler",
		'\ufe0f': "U+FE0F variation selector-16", '\U000E0041': "U+E0041 tag latin capital letter a", '\u2800': "U+2800 braille pattern blank",
		'\a': "U+0007",
	} {
		if !Invisible(r) {
			t.Errorf("%U passes for a character that can be seen", r)
		}
		if got := RuneName(r); got != want {
			t.Errorf("%U is named %q, want %q", r, got, want)
		}
	}
	for _, r := range " ~ø⌀\u00a0\u202f☐✓漢é" {
		if Invisible(r) {
			t.Errorf("%U %q passes for an invisible character", r, r)
		}
	}
}

// A look-alike is a letter of another alphabet, and its twin a Latin one.
func TestTwins(t *testing.T) {
	for r, l := range twins {
		if unicode.Is(unicode.Latin, r) && r < 0xFF00 || l > 0x7f {
			t.Errorf("%U %q stands for %q", r, r, l)
		}
	}
	for text, want := range map[string]rune{
		"lock-nut": 0, "сальник-2": 0, "Schauloch, отверстие": 0, "5 μm": 0, "10 kΩ": 0, "ΔT": 0, "Ø130 m6": 0,
		"l\u043eck-nut": 'о', "М12x1.75": 'М', "Cap of the bеaring": 'е',
	} {
		if got, _ := MixedLetter(text); got != want {
			t.Errorf("%q: look-alike %q, want %q", text, got, want)
		}
	}
}
