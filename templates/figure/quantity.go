package figure

import (
	"strings"

	"matchmark/packs/units"
)

// apart is the number of digits from which on the thousands of a figure stand apart.
const apart = 5

// Quantity is a figure with its unit, its thousands apart where it is long: 39 000 lbf.
func Quantity(q units.Quantity) string {
	text := q.Print()
	digits := 0
	for digits < len(text) && text[digits] >= '0' && text[digits] <= '9' {
		digits++
	}
	if digits < apart {
		return text
	}
	var out []string
	whole := text[:digits]
	for len(whole) > 3 {
		out = append([]string{whole[len(whole)-3:]}, out...)
		whole = whole[:len(whole)-3]
	}
	return strings.Join(append([]string{whole}, out...), NBSP) + text[digits:]
}
