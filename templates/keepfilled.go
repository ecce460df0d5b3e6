package templates

import "slices"

// filledSheets are those of a pack that is printed filled: what is asked for first, then
// the sheets with boxes that are copied from what was found.
var filledSheets = []string{"filled", "readings", "reassembly"}

// KeepFilled leaves only the sheets that the readings which came back are printed on,
// what they ask for in front, and no tags. Pages keep their numbers.
func (p *Pack) KeepFilled() {
	front := p.Pages.OnlySheets(func(sheet string) bool { return sheet == filledSheets[0] })
	rest := p.Pages.OnlySheets(func(sheet string) bool { return slices.Contains(filledSheets[1:], sheet) })
	for _, e := range rest.Outline {
		e.Page += len(front.Pages)
		front.Outline = append(front.Outline, e)
	}
	front.Pages = append(front.Pages, rest.Pages...)
	p.Pages, p.Tags, p.TagCount = front, p.Tags.OnlySheets(func(string) bool { return false }), 0
}
