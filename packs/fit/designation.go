package fit

import (
	"fmt"
	"strconv"
	"strings"
)

const howToWrite = "write the size, the letter and the grade: Ø130 m6 for a shaft, Ø120 H7 for a bore"

// Parse reads one toleranced size: "Ø130 m6", "130m6", "120 mm H7", "⌀50 js6". The
// size is in millimetres with at most six decimals; the mark of diameter, the
// blanks and "mm" may be left out.
func Parse(s string) (Zone, error) {
	nominal, class, err := splitSize(s)
	if err != nil {
		return Zone{}, err
	}
	if strings.ContainsAny(class, "/-") {
		return Zone{}, fmt.Errorf("%q names a bore and a shaft: write one of them here", s)
	}
	return parseClass(s, nominal, class)
}

// ParseFit reads a fit, the bore first: "120 H7/r6", "Ø50 H7/s6".
func ParseFit(s string) (Fit, error) {
	nominal, classes, err := splitSize(s)
	if err != nil {
		return Fit{}, err
	}
	bore, seat, ok := strings.Cut(classes, "/")
	if !ok {
		return Fit{}, fmt.Errorf("%q names only one part: write bore and shaft with a slash between them, as in 120 H7/r6", s)
	}
	hole, err := parseClass(s, nominal, strings.TrimSpace(bore))
	if err != nil {
		return Fit{}, err
	}
	shaft, err := parseClass(s, nominal, strings.TrimSpace(seat))
	if err != nil {
		return Fit{}, err
	}
	if !hole.Hole() || shaft.Hole() {
		return Fit{}, fmt.Errorf("%q: the bore stands first, in capitals, and the shaft second, in small letters, as in 120 H7/r6", s)
	}
	return Fit{Hole: hole, Shaft: shaft}, nil
}

// splitSize takes the size off the front of a designation.
func splitSize(s string) (size Nanometre, rest string, err error) {
	t := strings.TrimSpace(s)
	for _, mark := range []string{"Ø", "ø", "⌀", "dia."} {
		t = strings.TrimSpace(strings.TrimPrefix(t, mark))
	}
	end := strings.IndexFunc(t, func(r rune) bool { return r != '.' && (r < '0' || r > '9') })
	if end < 0 {
		end = len(t)
	}
	digits, rest := t[:end], strings.TrimSpace(t[end:])
	switch {
	case digits == "":
		return 0, "", fmt.Errorf("%q begins with no size: %s", s, howToWrite)
	case strings.HasPrefix(rest, ","):
		return 0, "", fmt.Errorf("%q has a decimal comma: write a point, as in 130.5 m6", s)
	case strings.HasPrefix(rest, "in") || strings.HasPrefix(rest, `"`) || strings.HasPrefix(rest, "/"):
		return 0, "", fmt.Errorf("%q: limits by letter and grade are for sizes in millimetres; write the size in mm, or the limits themselves", s)
	}
	if after, ok := strings.CutPrefix(rest, "mm"); ok {
		rest = strings.TrimSpace(after)
	}
	size, ok := parseMm(digits)
	if !ok {
		return 0, "", fmt.Errorf("%q: %s is no size in millimetres (at most six decimals): %s", s, digits, howToWrite)
	}
	return size, rest, nil
}

// parseClass reads "m6" and looks it up.
func parseClass(whole string, nominal Nanometre, class string) (Zone, error) {
	end := strings.IndexFunc(class, func(r rune) bool { return r >= '0' && r <= '9' })
	if end <= 0 {
		return Zone{}, fmt.Errorf("%q has no letter with a grade after it: %s", whole, howToWrite)
	}
	letter, digits := strings.TrimSpace(class[:end]), class[end:]
	if digits == "0" || digits == "01" {
		return Zone{}, fmt.Errorf("%q: the grades 0 and 01 are for gauges and are not carried here: write the limits themselves", whole)
	}
	grade, err := strconv.Atoi(digits)
	if err != nil || digits[0] == '0' {
		return Zone{}, fmt.Errorf("%q: %q is no grade; grades run from 1 to 18: %s", whole, digits, howToWrite)
	}
	return Lookup(nominal, letter, grade)
}

// knownLetter refuses a letter that the standard does not have.
func knownLetter(letter string) error {
	lower, upper := strings.ToLower(letter), strings.ToUpper(letter)
	_, ok := shaftTable[lower]
	switch {
	case !ok && lower != "j" && lower != "js":
		return fmt.Errorf("%q is no letter of ISO 286, which has A to ZC for bores and a to zc for shafts, without I, L, O, Q and W", letter)
	case letter != lower && letter != upper:
		return fmt.Errorf("%q mixes capitals and small letters: %s is a bore, %s a shaft", letter, upper, lower)
	}
	return nil
}

// isUpper reports whether a letter of the standard is written in capitals.
func isUpper(letter string) bool { return letter == strings.ToUpper(letter) }
