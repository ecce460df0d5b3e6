package job

import (
	"strconv"
	"strings"

	"matchmark/packs/source"
)

// A Place is one of the places that a thing repeats over, as the drive end; the
// zero Place stands for a thing that does not repeat.
type Place struct {
	Label      string   // as printed after the slash: DE, 3-inlet
	Keys       []string // the place of each group, as DE
	Groups     []string // the group of each key, as end
	Name       string   // "drive end"
	ViewedFrom string

	At source.Pos // where it is described

	CountedFrom string // where the counting of its group starts, empty if not said
}

// Or is p, or q where p is no place at all.
func (p Place) Or(q Place) Place {
	if p.Label == "" {
		return q
	}
	return p
}

// Cross joins two places into one, as cylinder 3 and its inlet valve.
func (p Place) Cross(q Place) Place {
	if p.Label == "" {
		return q
	}
	if q.Label == "" {
		return p
	}
	view := q.ViewedFrom
	if view == "" {
		view = p.ViewedFrom
	}
	counted := p.CountedFrom
	if counted == "" {
		counted = q.CountedFrom
	}
	return Place{
		Label:       p.Label + "-" + q.Label,
		Keys:        append(append([]string{}, p.Keys...), q.Keys...),
		Groups:      append(append([]string{}, p.Groups...), q.Groups...),
		Name:        p.Name + ", " + q.Name,
		ViewedFrom:  view,
		CountedFrom: counted,
	}
}

// Agrees reports whether p and q can be the same place: wherever both name a
// place of the same group, it is the same one.
func (p Place) Agrees(q Place) bool {
	for i, g := range p.Groups {
		for k, h := range q.Groups {
			if g == h && p.Keys[i] != q.Keys[k] {
				return false
			}
		}
	}
	return true
}

// Mark is a printed key with its place: D7/DE.
func (p Place) Mark(base string) string {
	if p.Label == "" {
		return base
	}
	return base + "/" + p.Label
}

// ByNumber puts marks in the order of their numbers, D9 before D29, in which they are looked
// for on a list.
func ByNumber(a, b string) int { return numberOf(a) - numberOf(b) }

// numberOf is the number behind the letter of a mark, 0 for another.
func numberOf(mark string) int {
	n, _ := strconv.Atoi(strings.TrimLeft(mark, "ABCDEFGHIJKLMNOPQRSTUVWXYZ"))
	return n
}
