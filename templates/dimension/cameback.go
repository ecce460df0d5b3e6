package dimension

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// cameBack are the lines about readings that are known when the sheet is printed: what
// was read last time, and of a pack that is printed filled what was found out of limits
// and what it is to be set to. None where nothing is known.
func cameBack(c *block.Composer, d *job.Dim, back bool, width layout.Mm) []layout.Block {
	var out []layout.Block
	add := func(runs ...layout.Run) {
		out = append(out, c.Para(width, runs, layout.ParaOpts{Ref: d.At}))
	}
	chip := func(text string) layout.Run {
		return layout.Run{Text: text, Style: layout.SubBold, Deco: layout.Inverse}
	}
	if text := LastText(c, d); text != "" {
		add(layout.T(layout.Sub, text))
	}
	if c.Filled == nil || !back {
		return out
	}
	for _, one := range singles(d) {
		if v, known := c.Filled.Verdict(one, job.AsFound); known && v.Bad() {
			action := strings.Join(v.Actions, c.W.Common.Semicolon)
			if action == "" {
				action = c.W.Filled.NoAction
			}
			if one != d {
				action = one.Mark + " " + action
			}
			add(chip(c.W.Filled.FoundOut.Bare()), layout.T(layout.SubBold, " "+action)) // a chip is never broken
		}
	}
	if text := adviceText(c, d); text != "" {
		add(chip(c.W.Filled.WorkedOut), layout.T(layout.SubBold, " "+text))
	}
	return out
}

// singles are the dimensions of a merged one, or d itself.
func singles(d *job.Dim) []*job.Dim {
	if len(d.Merged) > 0 {
		return d.Merged
	}
	return []*job.Dim{d}
}

// LastText words what a dimension was last left at, or found at; empty where that is
// not known.
func LastText(c *block.Composer, d *job.Dim) string {
	var out []string
	for _, one := range singles(d) {
		b, known := c.Last.Last(one)
		if !known {
			continue
		}
		sentence := c.W.Filled.LastFound
		if b.When == job.AsLeft {
			sentence = c.W.Filled.LastLeft
		}
		text := sentence.With(ReadingsText(c.W, one, b.Readings), month(b.On))
		if one != d {
			text = one.Mark + " " + text
		}
		out = append(out, text)
	}
	return strings.Join(out, " · ")
}

// month is the year and month of a day.
func month(day string) string { return day[:min(len(day), len("2026-03"))] }

// ReadingsText writes readings in the digits of their box, one after the other, the unit
// behind the last; a dash where one was not taken.
func ReadingsText(w *words.Catalogue, d *job.Dim, readings []*units.Quantity) string {
	var out []string
	for _, q := range readings {
		if q == nil {
			out = append(out, "–")
			continue
		}
		out = append(out, filled.Rounded(*q, d.Box).Number.Print())
	}
	text := strings.Join(out, "  ")
	if u := w.Unit(d.Box.Unit.Print()); u != "" {
		text += "\u00a0" + u
	}
	return text
}

// adviceText words what a dimension is to be set to; empty where that is not known.
func adviceText(c *block.Composer, d *job.Dim) string {
	a, known := c.Filled.Advise(d)
	if !known {
		return ""
	}
	w := c.W
	print := func(q *units.Quantity) string { return filled.Exactly(*q, d.Box, units.Nearest).Print() }
	low := func(q *units.Quantity) string { return filled.Exactly(*q, d.Box, units.Up).Print() }
	high := func(q *units.Quantity) string { return filled.Exactly(*q, d.Box, units.Down).Print() }
	var out []string
	ends := ""
	switch {
	case a.Low != nil && a.High != nil:
		ends = w.Filled.Between.With(low(a.Low), high(a.High))
	case a.Low != nil:
		ends = w.Filled.AtLeast.With(low(a.Low))
	case a.High != nil:
		ends = w.Filled.AtMost.With(high(a.High))
	}
	if a.Target != nil {
		ends = w.Filled.Target.With(print(a.Target)) + ", " + ends
	}
	if a.Expected {
		ends = w.Filled.Expected + " " + ends
	}
	out = append(out, ends)
	switch {
	case a.Pack != nil:
		out = append(out, w.Filled.Pack.With(packText(*a.Pack), a.Pack.Thickness.Print()+"\u00a0"+c.W.Unit(d.Box.Unit.Print())))
	case a.NoPack:
		out = append(out, w.Filled.OutsideTable)
	}
	if a.ToGo != nil {
		from := c.Filled.Readings(d, a.When)[0]
		out = append(out, w.Filled.ToGo.With(print(from), signedPrint(*a.ToGo, d)+turnsText(c, a)))
	}
	if a.Shims != nil {
		out = append(out, w.Filled.Shims.With(signedText(a.Shims.Round(2, units.Nearest))))
	}
	return strings.Join(out, " · ")
}

// turnsText is how far an adjuster is turned, to a tenth.
func turnsText(c *block.Composer, a filled.Advice) string {
	if a.Turns == nil {
		return ""
	}
	what := c.W.Filled.Turns
	if a.Flats {
		what = c.W.Filled.Flats
	}
	return " = " + a.Turns.Round(1, units.Nearest).Print() + " " + what
}

func signedPrint(q units.Quantity, d *job.Dim) string {
	return signedText(filled.Exactly(q, d.Box, units.Nearest))
}

// signedText is a quantity with its sign.
func signedText(q units.Quantity) string {
	if q.Number.Sign() > 0 {
		return "+" + q.Print()
	}
	return q.Print()
}

// typedEnds are the two ends of "as found ± …" for the boxes of its line, none where what
// was found is not known or the line has other boxes.
func typedEnds(c *block.Composer, d *job.Dim, parts []reading.Part) []string {
	results := 0
	for _, p := range parts {
		if p.Blank == reading.BlankResult {
			results++
		}
	}
	a, known := c.Filled.Advise(d)
	if results != 2 || !known || a.Low == nil || a.High == nil || a.Expected {
		return nil
	}
	low, high := filled.Ends(*a.Low, *a.High, d.Box)
	return []string{low.Number.Print(), high.Number.Print()}
}
