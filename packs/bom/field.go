package bom

import (
	"fmt"
	"strings"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// field takes over one field of a row; text is not empty.
func (t *table) field(p *Part, i int, text string) {
	switch t.columns[i] {
	case nameColumn:
		p.Name = strings.TrimLeft(text, "=+-@ ") // with which a spreadsheet would begin a formula
	case countColumn:
		p.Count = t.count(i, text)
	case massColumn:
		p.Mass = t.mass(i, text)
	case threadColumn:
		p.Thread = text
	case renewColumn:
		p.Renew = t.yes(i, text)
	case noteColumn:
		p.Note = strings.TrimLeft(text, "=+-@ ")
	}
}

// where names a field for a person who looks at the table.
func (t *table) where(i int) string {
	return fmt.Sprintf("row %d, column %s: ", t.rows, source.Quote(t.titles[i]))
}

var (
	wholeCount = phrase.Of(`^([1-9]\d{0,3})(?:[.,]0+)?(?: *(?:x|pcs?|pieces|st|off|ea)\.?)?$`)
	justNumber = phrase.Of(`^\d+(?:[.,]\d+)?$`)
)

// count reads a number of pieces; a spreadsheet may have written it as 4.00.
func (t *table) count(i int, text string) string {
	m := wholeCount.FindStringSubmatch(strings.ToLower(text))
	if m == nil {
		t.problems.Add(t.at(i), "number-form", t.where(i)+source.Quote(text)+" is not a number of pieces from 1 to 9999", "write its digits, or leave the field empty for one")
		return ""
	}
	return m[1]
}

// mass reads a mass, with its unit or in that of the head. A comma is the decimal
// comma of the spreadsheet, unless three digits stand behind it, when it may part
// thousands.
func (t *table) mass(i int, text string) units.Quantity {
	typed := text
	if justNumber.MatchString(text) {
		if t.unit == "" {
			t.problems.Add(t.at(i), "no-unit", t.where(i)+source.Quote(text)+" has no unit", "write "+text+" kg, or the unit into the head of the column: Mass (kg)")
			return units.Quantity{}
		}
		text += " " + t.unit
	}
	if before, after, ok := strings.Cut(text, ","); ok && !thousands.MatchString(after) {
		text = before + "." + after
	}
	q, err := units.ParseQuantity(text)
	if err == nil && q.Unit.Dimension() == units.Mass && q.Number.Sign() > 0 {
		return q
	}
	why := " is not a mass"
	if err != nil {
		why += ": " + err.Error()
	}
	t.problems.Add(t.at(i), "not-a-mass", t.where(i)+source.Quote(typed)+why, "for example 22 kg; leave the field empty if nobody knows")
	return units.Quantity{}
}

var thousands = phrase.Of(`^\d{3}(\D|$)`)

// yes reads whether a part is always renewed.
func (t *table) yes(i int, text string) bool {
	switch strings.ToLower(strings.TrimRight(text, ".")) {
	case "yes", "y", "x", "true", "1", "always", "ja", "oui", "✓":
		return true
	case "no", "n", "-", "false", "0", "never", "nein", "non":
		return false
	}
	t.problems.Add(t.at(i), "yes-or-no", t.where(i)+source.Quote(text)+" is neither yes nor no", "write yes, or leave the field empty")
	return false
}
