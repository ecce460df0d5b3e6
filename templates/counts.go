package templates

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// counts sets the list by which every kind of fastener and loose part is counted over all
// containers: when all is apart, and when all is back and nothing may be left over.
func counts(c *composer) []layout.Piece {
	w := c.W
	kinds := c.Job.Kinds()
	if len(kinds) == 0 {
		return nil
	}
	g := c.TwoUp(block.Col(w.Counts.Kind, 0), block.Col(w.Register.Expected, 11), block.Col(w.Register.CountedApart, 11), block.Col(w.Counts.BackOn, 11),
		block.Col(w.Common.Scrap, 11), block.Col(w.Counts.OverShort, 11))
	var rows []layout.Row
	for _, k := range kinds {
		rows = append(rows, g.Row(k.At, g.About(0, k.Name, c.kindFacts(k), k.At), g.Text(1, layout.Strong, strconv.Itoa(k.Off), k.At)))
	}
	out := append([]layout.Piece{c.RuleLine(w.Counts.Rule)}, c.twoTables(g, append(rows, g.Blank(len(rows)%2)...))...)
	out[0] = anchored(out[0], "counts")
	out[len(out)-1].KeepNext = true
	var by []layout.Block
	for _, when := range []string{w.Register.CountedApart, w.Counts.AtEnd} {
		by = append(by, c.WideBox(layout.RoleName, (c.Span-layout.GapX)/2, 1, when+w.Common.Colon+w.Common.NameSign, nil))
	}
	return append(out, layout.Piece{Block: layout.Beside(layout.GapX, by...), Gap: layout.GapY})
}

// kindFacts are where the pieces of a kind lie, how many of them do not go back, and how
// many new ones go on.
func (c *composer) kindFacts(k job.Kind) string {
	var lie []string
	for _, x := range k.In {
		where := ""
		switch {
		case x.Container != nil:
			where = x.Container.Base
		case x.Scrap:
			where = job.ScrapMark
		case x.Bench:
			where = c.W.Step.Bench
		}
		if where != "" && !slices.Contains(lie, where) {
			lie = append(lie, where)
		}
	}
	facts := strings.Join(lie, ", ")
	if k.Scrap > 0 && k.Scrap < k.Off {
		facts = joinFacts(facts, c.W.Counts.OfThem.With(strconv.Itoa(k.Scrap)))
	}
	if k.New > 0 {
		facts = joinFacts(facts, c.W.Counts.NewOn.With(strconv.Itoa(k.New)))
	}
	return facts
}
