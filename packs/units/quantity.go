package units

import (
	"strings"
	"unicode"
)

// A Quantity is a number with its unit. Its zero value is the bare number 0.
type Quantity struct {
	Number Number
	Unit   Unit
}

// Text writes the quantity as it is typed: 36 kg, 60 C rise, 20°.
func (q Quantity) Text() string { return join(q.Number.Text(), q.Unit.Text(), " ") }

// Print writes the quantity for paper, with a no-break space before the unit and
// a true minus sign.
func (q Quantity) Print() string { return join(q.Number.Print(), q.Unit.Print(), "\u00a0") }

// join puts a unit behind a number; the degree of angle stands close.
func join(number, unit, blank string) string {
	if unit == "" || unit == "°" {
		return number + unit
	}
	return number + blank + unit
}

// Convert gives the same quantity in another unit, exactly; the result has as
// many decimals as that takes, and wants rounding before it is printed. Between
// dimensions there is no conversion, nor between a temperature and a rise: the
// error, a *Fault without a place, says which two were meant to be the same.
func (q Quantity) Convert(to Unit) (Quantity, error) {
	if q.Unit == to {
		return q, nil
	}
	from, want := q.Unit.Dimension(), to.Dimension()
	if from != want {
		f := &Fault{Code: "dimension", Message: q.Text() + " is a " + from.String() + ", not a " + want.String()}
		if from == Temperature && want == Rise {
			f.Help = []string{Quantity{q.Number, q.Unit.RiseUnit()}.Text() + ", if a difference is meant"}
		}
		return Quantity{}, f
	}
	return Quantity{Number{val: to.fromBase(q.Unit.toBase(q.Number.Rat()))}, to}, nil
}

// Round rounds the number to so many decimals.
func (q Quantity) Round(decimals int, how Rounding) Quantity {
	return Quantity{q.Number.Round(decimals, how), q.Unit}
}

// Cmp compares two quantities of one dimension, whatever their units: -1 when q
// is the smaller, +1 when it is the larger. The error is that of Convert.
func (q Quantity) Cmp(r Quantity) (int, error) {
	same, err := r.Convert(q.Unit)
	if err != nil {
		return 0, err
	}
	return q.Number.Cmp(same.Number), nil
}

// Add gives q + r in the unit of q. Two temperatures have no sum.
func (q Quantity) Add(r Quantity) (Quantity, error) { return q.sum(r, Number.Add) }

// Sub gives q - r in the unit of q; of two temperatures the rise from r to q.
func (q Quantity) Sub(r Quantity) (Quantity, error) {
	if q.Unit.Dimension() == Temperature && r.Unit.Dimension() == Temperature {
		same, err := r.Convert(q.Unit)
		return Quantity{q.Number.Sub(same.Number), q.Unit.RiseUnit()}, err
	}
	return q.sum(r, Number.Sub)
}

func (q Quantity) sum(r Quantity, op func(Number, Number) Number) (Quantity, error) {
	same, err := r.Convert(q.Unit.RiseUnit())
	if err != nil {
		return Quantity{}, err
	}
	return Quantity{op(q.Number, same.Number), q.Unit}, nil
}

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
		n := len([]rune(spelled))
		if n <= width || !strings.HasPrefix(text, spelled) {
			return
		}
		last := []rune(spelled)[n-1]
		if rest := text[len(spelled):]; rest != "" && unicode.IsLetter(last) {
			if next := []rune(rest)[0]; unicode.IsLetter(next) || unicode.IsDigit(next) || strings.ContainsRune("²³/^", next) {
				return
			}
			if next := []rune(rest); (next[0] == '-' || next[0] == '·' || next[0] == '⋅' || next[0] == '*') && len(next) > 1 && unicode.IsLetter(next[1]) {
				return // lb-ft begins with lb
			}
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

func skipBlanks(runes []rune, i int) int {
	for i < len(runes) && (runes[i] == ' ' || runes[i] == '\u00a0' || runes[i] == '\u202f') {
		i++
	}
	return i
}

// noUnit is the fault of a number without its unit.
func noUnit(text, number string) *Fault {
	runes := []rune(text)
	end := skipBlanks(runes, len([]rune(number)))
	rest := string(runes[min(end, len(runes)):])
	if rest == "" {
		return &Fault{Width: len(runes), Code: "no-unit", Message: "no unit: " + text + " what?", Help: []string{number + " mm"}}
	}
	return unknownUnit(rest, end, number)
}

// unknownUnit names the nearest unit for what stands behind a number.
func unknownUnit(word string, offset int, number string) *Fault {
	f := &Fault{Offset: offset, Width: len([]rune(word)), Code: "unknown-unit", Message: "\"" + word + "\" is not a unit known here"}
	if hint := unitTraps[strings.ToLower(word)]; hint != "" {
		f.Message += ": " + hint
		return f
	}
	if near := NearestWord(word, UnitWords()); near != "" {
		f.Help = []string{number + " " + near}
		return f
	}
	f.Help = []string{"one of: " + strings.Join(UnitWords(), ", ")}
	return f
}

// unitTraps are spellings that are not read because they can mean two things.
var unitTraps = map[string]string{
	"ton": "2000 lb, 2240 lb or 1000 kg? Write t for 1000 kg, or lb", "tons": "2000 lb, 2240 lb or 1000 kg? Write t for 1000 kg, or lb",
	"\"": "write in for inches", "'": "write ft for feet", "”": "write in for inches", "″": "write in for inches",
	"thou": "write mil, or in with three decimals", "ksi": "write MPa or psi", "kgf": "write N", "kgm": "write N·m",
	"ft-lb": "write lb-ft", "ft·lb": "write lb-ft", "ft-lbs": "write lb-ft", "in-lb": "write lb-in",
}

// UnitWords lists the units as they are typed, in the order of their table.
func UnitWords() []string {
	var out []string
	for _, s := range spellings {
		if s.text != "" {
			out = append(out, s.text)
		}
	}
	return out
}

// notARange says what is wrong where "to" should stand.
func notARange(runes []rune, at int, a Number) *Fault {
	if at < len(runes) && strings.ContainsRune("-–—", runes[at]) {
		return &Fault{
			Width: len(runes), Code: "dash", Message: "a dash between two sizes can mean \"to\" or \"less\"",
			Help: []string{"0 to 150 mm"},
		}
	}
	return &Fault{Width: len(runes), Code: "not-a-range", Message: "\"" + string(runes) + "\" is not a range", Help: []string{a.Text() + " to 150 mm"}}
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
