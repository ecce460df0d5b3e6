package units

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"matchmark/packs/phrase"
)

// ParseQuantity reads a text that is one number with its unit: 36 kg, 0.02 mm,
// 1-3/8 in, 60 C rise. The error is a *Fault.
func ParseQuantity(text string) (Quantity, error) {
	n, unit, width, fault := quantityAt([]rune(text), 0)
	if fault != nil {
		return Quantity{}, fault
	}
	if unit == None {
		return Quantity{}, noUnit(text, n.Text())
	}
	if fault := nothingMore([]rune(text), width, Quantity{n, unit}.Text()); fault != nil {
		return Quantity{}, fault
	}
	return Quantity{n, unit}, nil
}

// IsQuantity reports whether ParseQuantity reads a text, without a word of what is wrong with it.
func IsQuantity(text string) bool {
	runes := []rune(text)
	_, unit, width, fault := quantityAt(runes, 0)
	return fault == nil && unit != None && skipBlanks(runes, width) == len(runes)
}

// ParseRange reads two numbers with "to" between them and their unit at the end,
// or behind each: 0 to 150 mm. The smaller comes first. The error is a *Fault.
func ParseRange(text string) (low, high Quantity, err error) {
	runes := []rune(text)
	a, unitA, width, fault := quantityAt(runes, 0)
	if fault != nil {
		return low, high, fault
	}
	next := skipBlanks(runes, width)
	if !strings.HasPrefix(string(runes[next:]), "to ") {
		return low, high, notARange(runes, next, a)
	}
	b, unitB, end, fault := quantityAt(runes, skipBlanks(runes, next+2))
	switch {
	case fault != nil:
		return low, high, fault
	case unitB == None:
		return low, high, noUnit(text, a.Text()+" to "+b.Text())
	case unitA != None && unitA != unitB:
		return low, high, &Fault{
			Width: end, Code: "two-units", Message: "two units in one range: " + unitA.Text() + " and " + unitB.Text(),
			Help: []string{a.Text() + " to " + b.Text() + " " + unitB.Text()},
		}
	}
	low, high = Quantity{a, unitB}, Quantity{b, unitB}
	if a.Cmp(b) >= 0 {
		return low, high, &Fault{
			Width: end, Code: "range-order", Message: "the smaller comes first, and the two differ: " + text,
			Help: []string{join(b.Text()+" to "+a.Text(), unitB.Text(), " ")},
		}
	}
	if fault := nothingMore(runes, end, join(a.Text()+" to "+b.Text(), unitB.Text(), " ")); fault != nil {
		return low, high, fault
	}
	return low, high, nil
}

// quantityAt reads a number and, if one follows, its unit; end is the place
// behind them.
func quantityAt(runes []rune, from int) (n Number, u Unit, end int, fault *Fault) {
	n, width, fault := LeadingNumber(string(runes[from:]))
	if fault != nil {
		return n, None, 0, fault.at(from)
	}
	end = from + width
	at := skipBlanks(runes, end)
	if u, width := LeadingUnit(string(runes[at:])); width > 0 {
		return n, u, at + width, nil
	}
	return n, None, end, nil
}

// LeadingUnit reads the unit that text begins with and tells how many runes it
// takes, 0 when none does. A unit is never part of a longer word.
func LeadingUnit(text string) (u Unit, width int) {
	try := func(spelled string, unit Unit) {
		if !strings.HasPrefix(text, spelled) {
			return
		}
		n := utf8.RuneCountInString(spelled)
		if last, _ := utf8.DecodeLastRuneInString(spelled); n <= width || unicode.IsLetter(last) && goesOn(text[len(spelled):]) {
			return
		}
		u, width = unit, n
	}
	for i, s := range spellings {
		if s.text != "" {
			try(s.text, Unit(i))
		}
	}
	for _, o := range otherSpellings {
		try(o.text, o.unit)
	}
	return u, width
}

// goesOn reports whether the word before rest is longer than a unit: mm2, m/s, and
// lb-ft after lb.
func goesOn(rest string) bool {
	next, size := utf8.DecodeRuneInString(rest)
	switch {
	case rest == "":
		return false
	case unicode.IsLetter(next), unicode.IsDigit(next), strings.ContainsRune("²³/^", next):
		return true
	case strings.ContainsRune("-·⋅*", next):
		behind, _ := utf8.DecodeRuneInString(rest[size:])
		return unicode.IsLetter(behind)
	}
	return false
}

func skipBlanks(runes []rune, i int) int {
	for i < len(runes) && (runes[i] == ' ' || runes[i] == '\u00a0' || runes[i] == '\u202f') {
		i++
	}
	return i
}

// notARange says what is wrong where "to" should stand.
func notARange(runes []rune, at int, a Number) *Fault {
	if at < len(runes) && strings.ContainsRune("-–—", runes[at]) {
		return &Fault{
			Width: len(runes), Code: "dash", Message: "a dash between two sizes can mean \"to\" or \"less\"",
			Help: []string{dashed.ReplaceAllString(string(runes), "$1 to $2")},
		}
	}
	return &Fault{Width: len(runes), Code: "not-a-range", Message: "\"" + string(runes) + "\" is not a range", Help: []string{rangeFrom0(runes, a)}}
}

// dashed is a dash between two numbers.
var dashed = phrase.Of(`(\d) *[-–—] *(\d)`)

// rangeFrom0 is the range that one size alone probably ends.
func rangeFrom0(runes []rune, a Number) string {
	if q, err := ParseQuantity(string(runes)); err == nil && a.Sign() > 0 {
		return "0 to " + q.Text()
	}
	return "for example 0 to 150 mm"
}

// nothingMore sees that the text ends at end.
func nothingMore(runes []rune, end int, good string) *Fault {
	if at := skipBlanks(runes, end); at < len(runes) {
		return &Fault{
			Offset: at, Width: len(runes) - at, Code: "text-behind-unit",
			Message: "\"" + string(runes[at:]) + "\" behind " + good, Help: []string{good},
		}
	}
	return nil
}
