package templates

import (
	"path"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/source"
)

// warningList repeats what the check said, right below the name of the job:
// errors first, which only a draft has, then warnings, each with its line in the
// file and the second place that matters.
func (c *composer) warningList() []layout.Block {
	var errors, warnings source.Problems
	for _, p := range c.warn {
		if p.Severity == source.Error {
			errors = append(errors, p)
		} else {
			warnings = append(warnings, p)
		}
	}
	var out []layout.Block
	add := func(heading, word string, list source.Problems) {
		if len(list) == 0 {
			return
		}
		head := []layout.Run{{Text: heading, Style: layout.Strong, Deco: layout.Inverse}}
		rows := []layout.Block{layout.Above(1, c.Para(c.Span, head, layout.ParaOpts{}), c.Rule(layout.Heavy))}
		for _, p := range list {
			rows = append(rows, c.warning(word, p))
		}
		// The first stays under its heading; the others may go on to a next page.
		out = append(out, layout.Above(1.5, rows[:2]...))
		out = append(out, rows[2:]...)
	}
	add(c.W.Count(c.W.Front.PrintedInSpite, len(errors)), c.W.Front.ErrorWord, errors)
	add(c.W.Count(c.W.Front.FromCheck, len(warnings)), c.W.Front.WarningWord, warnings)
	return out
}

// warning is one problem: the word, what is wrong, and where it stands.
func (c *composer) warning(word string, p source.Problem) layout.Block {
	wordW := max(22, c.Width(layout.SubBold, word)+2)
	says := p.In(c.W)
	runs := []layout.Run{layout.T(layout.Body, says)}
	plate := c.Words(layout.SubBold, word)
	plate.W = wordW
	return layout.Beside(0, plate, layout.Above(0.3,
		c.Para(c.Span-wordW, runs, layout.ParaOpts{Ref: p.Pos}),
		c.Para(c.Span-wordW, []layout.Run{layout.T(layout.Sub, strings.Join(c.standsAt(p, says == p.Message), " · "))}, layout.ParaOpts{Ref: p.Pos})))
}

// standsAt tells where a problem stands, and the second places that matter. Where the
// paper does not have the message, with the value in it, it quotes what is written there
// and gives the code, by which explain tells more.
func (c *composer) standsAt(p source.Problem, whole bool) []string {
	out := []string{path.Base(p.Pos.File)}
	if p.Pos.Line > 0 {
		out[0] = c.W.Front.AtLine.With(out[0], strconv.Itoa(p.Pos.Line))
	}
	if !whole {
		if text := source.Quoted(c.Job.Files[p.Pos.File], p.Pos); text != "" {
			out = append(out, c.W.Front.Written.With(text))
		}
		out = append(out, "["+p.Code+"]")
	}
	for _, s := range p.See {
		if whole {
			out = append(out, c.W.Front.SeeAlso.With(strconv.Itoa(s.Pos.Line), s.What))
		} else {
			out = append(out, c.W.Front.SeeLine.With(strconv.Itoa(s.Pos.Line)))
		}
	}
	return out
}
