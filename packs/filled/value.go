package filled

import (
	"errors"
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A refusal is why a value is not taken: in a planner's words, with what to write. The
// offset is in runes of the value; a width of 0 means the whole value.
type refusal struct {
	code          string
	message       string
	help          []string
	offset, width int
}

func no(code, message string, help ...string) *refusal {
	return &refusal{code: code, message: message, help: help}
}

// notTakenWords begin the value of a box that was left empty honestly.
var notTakenWords = []string{"not taken because", "not taken, because", "not taken:", "not taken,", "not taken"}

// readValue reads one value for a box. looked names who looked again at one that may
// have been misread.
func readValue(b job.Blank, text, looked string, comma bool) (Entry, *refusal) {
	e := Entry{Blank: b, Text: text, Looked: looked}
	lower := strings.ToLower(text)
	for _, w := range notTakenWords {
		if !strings.HasPrefix(lower, w) {
			continue
		}
		if e.NotTaken = strings.TrimSpace(text[len(w):]); e.NotTaken == "" {
			return e, no("not-taken", "not taken, and no reason why", "not taken, because the gauge was out for calibration")
		}
		return e, nil
	}
	switch b.Box.Form {
	case reading.Line, reading.Grid:
		e.Answer = text
		return e, nil
	case reading.Ticks:
		for _, a := range b.Dim.Answers() {
			if strings.EqualFold(a, strings.Join(strings.Fields(text), " ")) {
				e.Answer = a
				return e, nil
			}
		}
		return e, no("not-an-answer", source.Quote(text)+" is none of its answers", "one of: "+strings.Join(b.Dim.Answers(), ", "))
	}
	q, fault := readNumber(b, text, comma)
	if fault == nil {
		fault = fits(b, q)
	}
	if fault == nil && looked == "" {
		fault = doubtful(b, q)
	}
	if fault != nil {
		return e, fault
	}
	e.Quantity = &q
	return e, nil
}

// readNumber reads a number with the unit of its box.
func readNumber(b job.Blank, text string, comma bool) (units.Quantity, *refusal) {
	pointed, fault := pointed(text, comma)
	if fault != nil {
		return units.Quantity{}, fault
	}
	if b.Box.Unit == units.None {
		n, err := units.ParseNumber(pointed)
		if err != nil {
			return units.Quantity{}, faulty(err, text, b, comma)
		}
		return units.Quantity{Number: n}, nil
	}
	q, err := units.ParseQuantity(pointed)
	if err != nil {
		return q, faulty(err, text, b, comma)
	}
	if q.Unit != b.Box.Unit {
		return q, no("typed-unit", source.Quote(text)+" has the unit "+q.Unit.Text()+", and the box has "+b.Box.Unit.Text(), "write what stands on the paper, in "+b.Box.Unit.Text())
	}
	return q, nil
}

// pointed is a value with a decimal point, as the readers of limits take it. Where the
// site writes a comma a point may be one between thousands, so it is refused. A minus
// may be written as a word, which no spreadsheet takes for a formula.
func pointed(text string, comma bool) (string, *refusal) {
	t := text
	if rest, minus := strings.CutPrefix(strings.ToLower(t), "minus "); minus {
		t = "-" + strings.TrimSpace(t[len(t)-len(rest):])
	}
	if !comma {
		return t, nil
	}
	if i := strings.IndexByte(t, '.'); i >= 0 {
		return t, no("point", source.Quote(text)+" has a point, and this site writes a decimal comma", strings.Replace(text, ".", ",", 1))
	}
	return strings.Replace(t, ",", ".", 1), nil
}

// faulty words what the reader of quantities refuses.
func faulty(err error, text string, b job.Blank, comma bool) *refusal {
	var f *units.Fault
	if !errors.As(err, &f) {
		return no("", err.Error(), example(b, comma)) // the reader of quantities gives faults alone
	}
	if f.Code == "no-unit" {
		return no("no-unit", source.Quote(text)+" has no unit, and the box is in "+b.Box.Unit.Text(), strings.TrimSpace(text)+" "+b.Box.Unit.Text())
	}
	out := no(f.Code, f.Message, example(b, comma))
	if typed := []rune(text); f.Code == "decimal-comma" && !comma && f.Offset+f.Width <= len(typed) {
		out.help = nil // the value itself with a point, not a made-up one
		for _, h := range f.Help {
			rest := string(typed[f.Offset+f.Width:])
			if unit := b.Box.Unit.Text(); strings.TrimSpace(rest) == "" && unit != "" { // else the next run refuses what this one said
				rest = " " + unit
			}
			out.help = append(out.help, string(typed[:f.Offset])+h+rest)
		}
	}
	if text != "" && !comma {
		out.offset, out.width = f.Offset, f.Width
	}
	return out
}

// example is a value that the box would take.
func example(b job.Blank, comma bool) string {
	number := "3"
	switch {
	case b.Box.Form == reading.Fraction:
		number = "1-3/" + strconv.FormatInt(max(b.Box.Denominator, 8), 10)
	case b.Box.After > 0:
		number = "1." + strings.Repeat("0", b.Box.After-1) + "5"
	}
	if comma {
		number = strings.Replace(number, ".", ",", 1)
	}
	return strings.TrimSpace(number + " " + b.Box.Unit.Text())
}

// fits holds a number against the box that it was written into: sign, digits before
// and behind the point, parts of an inch.
func fits(b job.Blank, q units.Quantity) *refusal {
	n, box := q.Number, b.Box
	switch {
	case n.Sign() < 0 && !box.Signed:
		return no("no-sign-box", q.Text()+" is below nothing, and the box has no room for a sign", "look at the paper again")
	case box.Form == reading.Fraction && (n.Denominator() == 0 && !n.Rat().IsInt() || n.Denominator() == 0 && n.Decimals() > 0):
		return no("typed-fraction", q.Text()+" is a decimal, and the box takes a fraction", example(b, false))
	case box.Form == reading.Fraction && n.Denominator() > box.Denominator:
		return no("typed-fraction", q.Text()+" is finer than 1/"+strconv.FormatInt(box.Denominator, 10)+" "+box.Unit.Text()+", which is what the box is read to", "look at the paper again")
	case box.Form == reading.Digits && n.Denominator() > 0:
		return no("typed-fraction", q.Text()+" is a fraction, and the box takes "+decimals(box.After), example(b, false))
	case n.Figures() > max(box.Before, 1):
		return no("too-large-for-box", q.Text()+" does not go into the box "+digits(b), "look for a slipped point")
	case box.Form == reading.Digits && b.Whole() && n.Decimals() > box.After, box.Form == reading.Digits && !b.Whole() && n.Decimals() != box.After:
		return no("typed-decimals", q.Text()+" has "+decimals(n.Decimals())+", and the box has "+decimals(box.After), noughts(b, q))
	}
	return nil
}

// noughts is the help for a number with other decimals than its box.
func noughts(b job.Blank, q units.Quantity) string {
	if q.Number.Decimals() > b.Box.After {
		return "look at the paper again"
	}
	return "look at the paper again; if a nought stands at the end, write it too: " + q.Round(b.Box.After, units.Nearest).Text()
}

// decimals counts digits behind the point.
func decimals(n int) string {
	switch n {
	case 0:
		return "no decimals"
	case 1:
		return "1 decimal"
	}
	return strconv.Itoa(n) + " decimals"
}

// lookedAgain is the help of a value that may be right after all.
const lookedAgain = `if it stands on the paper like this, have it read again and write who did into the column "looked again"`

// doubtful refuses a value that its instrument cannot read, and one that a slipped
// point would bring to where it belongs.
func doubtful(b job.Blank, q units.Quantity) *refusal {
	if b.Kind != job.ReadingBlank && b.Kind != job.LeafBlank {
		return nil
	}
	if in := b.Dim.By; in != nil {
		at := q
		if in.Low != nil && in.Low.Number.Sign() >= 0 {
			at.Number = q.Number.Abs() // a dial that reads 0 to 10 mm reads as far down from its nought
		}
		nought := b.Dim.Gap() && q.Number.Sign() == 0 // not even the thinnest leaf goes in
		if !nought && in.Low != nil && in.High != nil && (beyond(*in.Low, at, 1) || beyond(*in.High, at, -1)) {
			return no("instrument", q.Text()+" is outside what the "+in.Name+" reads, "+in.Low.Number.Text()+" to "+in.High.Text(), lookedAgain)
		}
	}
	if b.Kind == job.LeafBlank {
		return leafDoubt(b.Dim, q)
	}
	low, high := b.Dim.Expected()
	if nominal := b.Dim.Hint.Nominal; low == nil && high == nil && nominal != nil && nominal.Unit == q.Unit {
		low, high = &nominal.Number, &nominal.Number // its limit hangs on other readings
	}
	if by := slipped(q.Number.Abs(), low, high); by != "" {
		return no("ten-times", q.Text()+" is far from what is expected, and "+by+" would not be: a slipped point?", lookedAgain)
	}
	return nil
}

// beyond reports whether a value lies beyond an end of a range: sign 1 for the lower.
func beyond(end, q units.Quantity, sign int) bool {
	c, err := end.Cmp(q)
	return err == nil && c == sign
}

// leafDoubt refuses a leaf of a thickness that is not in hand.
func leafDoubt(d *job.Dim, q units.Quantity) *refusal {
	stock := d.Shims.Stock.Stock
	var have []string
	for _, l := range stock.Leaves {
		if l.Thickness.Cmp(q.Number) == 0 {
			return nil
		}
		have = append(have, l.Thickness.Text())
	}
	return no("leaf", q.Text()+" is none of the leaves in hand, "+strings.Join(have, ", ")+" "+stock.Unit.Text(), lookedAgain)
}

// far is how many times beyond what is expected a value must lie to be doubted: wear
// can double or treble a clearance, a slipped point makes ten of one (common practice,
// no source).
const far = 5

// slipped tells which value a slipped point was, if one explains a number that lies far
// from what is expected; empty if not.
func slipped(n units.Number, low, high *units.Number) string {
	if n.Sign() == 0 || low == nil && high == nil {
		return ""
	}
	near := func(x units.Number) bool {
		two := units.Whole(2)
		return (low == nil || x.Mul(two).Cmp(*low) >= 0) && (high == nil || x.Cmp(high.Mul(two)) <= 0)
	}
	ten, five := units.Whole(10), units.Whole(far)
	switch {
	case high != nil && high.Sign() > 0 && n.Cmp(high.Mul(five)) >= 0 && near(n.Quo(ten)):
		return n.Quo(ten).Text()
	case low != nil && low.Sign() > 0 && n.Mul(five).Cmp(*low) <= 0 && near(n.Mul(ten)):
		return n.Mul(ten).Text()
	}
	return ""
}
