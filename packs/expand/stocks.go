package expand

import (
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/stock"
)

// onPages are the sizes of the pages that a stock may name (ISO 216; ANSI/ASME Y14.1).
var onPages = map[string][2]stock.Mm{"a4": {210, 297}, "letter": {215.9, 279.4}}

var (
	labelSide  = phrase.Of(`^([0-9]+(?:\.[0-9]+)?) mm$`)
	labelSides = phrase.Of(`^([0-9]+(?:\.[0-9]+)?) ?[x×] ?([0-9]+(?:\.[0-9]+)?) mm$`)
)

// readStocks takes over what a site prints its tags on.
func (b *builder) readStocks(s *def.SiteFile) {
	for _, l := range s.Stocks {
		before := len(b.Problems)
		out := b.readStock(l)
		if len(b.Problems) > before {
			continue
		}
		if err := out.Check(); err != nil {
			b.Problems.Add(l.Name.At, "stock", source.Quote(l.Name.Value)+": "+err.Error(), "measure the sheet: label:, pitch: and first: are from edge to edge")
			continue
		}
		b.Job.Site.Stocks = append(b.Job.Site.Stocks, out)
	}
}

// readStock reads one of them.
func (b *builder) readStock(l *def.LabelStock) stock.Stock {
	out := stock.Stock{Name: l.Name.Value, Roll: l.On.Value == "roll", Turned: l.Turn.Value == "yes", Across: 1, Down: 1}
	for u, word := range stock.Uses {
		if word == l.Use.Value {
			out.Use = stock.Use(u)
		}
	}
	b.sides(l.Label, &out.W, &out.H)
	out.Stub = stock.RoomForStub(out.Use, out.H)
	b.sides(l.Pitch, &out.PitchX, &out.PitchY)
	b.sides(l.First, &out.Left, &out.Top)
	b.labelLength(l.Corner, &out.Corner)
	b.labelLength(l.Hole, &out.Hole)
	b.labelLength(l.HoleAt, &out.HoleAt)
	b.labelLength(l.Gap, &out.Gap)
	b.wholeNumber(l.Across, &out.Across)
	b.wholeNumber(l.Down, &out.Down)
	b.wholeNumber(l.Resolution, &out.Resolution)
	if page, ok := onPages[l.On.Value]; ok {
		out.PageW, out.PageH = page[0], page[1]
	} else {
		out.PageW, out.PageH = out.W, out.H
	}
	return out
}

// sides reads two lengths, across and down.
func (b *builder) sides(t source.Text, x, y *stock.Mm) {
	if !t.Written() {
		return
	}
	m := labelSides.FindStringSubmatch(t.Value)
	if m == nil {
		b.Problems.Add(t.At, "two-sides", source.Quote(t.Value)+" is not two lengths in millimetres, across and down", "for example 99.1 x 67.7 mm")
		return
	}
	*x, *y = mm(m[1]), mm(m[2])
}

// labelLength reads one length.
func (b *builder) labelLength(t source.Text, l *stock.Mm) {
	if !t.Written() {
		return
	}
	m := labelSide.FindStringSubmatch(t.Value)
	if m == nil {
		b.Problems.Add(t.At, "label-length", source.Quote(t.Value)+" is not a length in millimetres", "for example 2.5 mm")
		return
	}
	*l = mm(m[1])
}

// wholeNumber reads a number of labels or dots.
func (b *builder) wholeNumber(t source.Text, n *int) {
	if !t.Written() {
		return
	}
	v, err := strconv.Atoi(t.Value)
	if err != nil || v < 1 {
		b.Problems.Add(t.At, "label-number", source.Quote(t.Value)+" is not a whole number from 1", "for example 2")
		return
	}
	*n = v
}

// mm is a number that the patterns above let pass.
func mm(digits string) stock.Mm {
	v, err := strconv.ParseFloat(digits, 64)
	if err != nil {
		return 0
	}
	return stock.Mm(v)
}
