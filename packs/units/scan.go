package units

import "strings"

// ParseNumber reads a text that is one number and nothing else: 12, +0.02, -0.04,
// 3/16, 1-3/8, 1 3/8. The error is a *Fault.
func ParseNumber(text string) (Number, error) {
	n, width, fault := LeadingNumber(text)
	if fault != nil {
		return Number{}, fault
	}
	if rest := []rune(text)[width:]; len(rest) > 0 {
		return Number{}, &Fault{
			Offset: width, Width: len(rest), Code: "not-a-number",
			Message: "\"" + string(rest) + "\" after the number " + n.Text(), Help: []string{n.Text()},
		}
	}
	return n, nil
}

// LeadingNumber reads the number that text begins with and tells how many runes
// it takes. A sign belongs to the number only where a digit follows at once.
func LeadingNumber(text string) (n Number, width int, fault *Fault) {
	s := scanner{runes: []rune(text)}
	s.sign()
	whole := s.digits()
	if whole == "" {
		return Number{}, 0, s.noDigits()
	}
	if fault := s.looksWrong(whole); fault != nil {
		return Number{}, 0, fault
	}
	switch {
	case s.peek(0) == '/' && isDigit(s.peek(1)):
		return s.fraction("", whole)
	case (s.peek(0) == '-' || s.peek(0) == ' ') && s.fractionAhead():
		s.pos++
		return s.fraction(whole, s.digits())
	case s.peek(0) == '.' && isDigit(s.peek(1)):
		s.pos++
		return s.decimal(whole, s.digits())
	case s.peek(0) == '.':
		return Number{}, 0, s.fault(s.pos+1, "no-digit-behind-point", "no digit behind the point: "+s.typed(s.pos+1), s.text(s.pos), s.typed(s.pos+1)+"0")
	}
	return s.decimal(whole, "")
}

// A scanner steps through the runes of a number.
type scanner struct {
	runes []rune
	pos   int
	neg   bool
}

// peek gives the rune so many places on, 0 beyond the end.
func (s *scanner) peek(ahead int) rune {
	if s.pos+ahead < len(s.runes) {
		return s.runes[s.pos+ahead]
	}
	return 0
}

func isDigit(r rune) bool { return r >= '0' && r <= '9' }

// sign takes a sign that stands right before a digit or a point.
func (s *scanner) sign() {
	if next := s.peek(1); !isDigit(next) && next != '.' {
		return
	}
	switch s.peek(0) {
	case '+':
		s.pos++
	case '-', '−':
		s.neg = true
		s.pos++
	}
}

// digits takes the digits that come next.
func (s *scanner) digits() string {
	from := s.pos
	for isDigit(s.peek(0)) {
		s.pos++
	}
	return string(s.runes[from:s.pos])
}

// typed gives what stands before end as it was typed.
func (s *scanner) typed(end int) string { return string(s.runes[:min(end, len(s.runes))]) }

// text gives the same with a plain minus, as it is kept.
func (s *scanner) text(end int) string { return strings.Replace(s.typed(end), "−", "-", 1) }

// fault makes a fault over the runes before end; help holds what to write.
func (s *scanner) fault(end int, code, message string, help ...string) *Fault {
	return &Fault{Width: min(end, len(s.runes)), Code: code, Message: message, Help: help}
}

// noDigits says why no number begins here.
func (s *scanner) noDigits() *Fault {
	if s.peek(0) == '.' && isDigit(s.peek(1)) {
		s.pos++
		tail := s.digits()
		head := strings.TrimSuffix(s.text(s.pos), "."+tail)
		return s.fault(s.pos, "no-digit-before-point", "no digit before the point: "+s.typed(s.pos)+" (a point is easily lost in print)", head+"0."+tail)
	}
	end := 0
	for end < len(s.runes) && s.runes[end] != ' ' {
		end++
	}
	if end == 0 {
		return s.fault(min(1, len(s.runes)), "not-a-number", "a number is missing", "12.5")
	}
	return s.fault(end, "not-a-number", "\""+s.typed(end)+"\" is not a number", "12.5")
}

// ungrouped takes the marks out that part digits.
var ungrouped = strings.NewReplacer("_", "", ",", "", "'", "", "’", "")

// looksWrong finds what people type inside numbers that can be read two ways.
// whole are the digits taken so far; the scanner stands behind them.
func (s *scanner) looksWrong(whole string) *Fault {
	end := s.pos
	for isDigit(s.at(end)) || (strings.ContainsRune("_,.'’", s.at(end)) && isDigit(s.at(end+1))) {
		end++
	}
	all := s.text(end)
	grouped := ungrouped.Replace(all)
	switch {
	case strings.Contains(all, "_"), strings.ContainsAny(all, "'’"):
		return s.fault(end, "marks-in-number", "digits parted by a mark: "+s.typed(end)+"; write them together", grouped)
	case strings.Contains(all, ","):
		return s.comma(all, grouped, end)
	case len(whole) > 1 && whole[0] == '0':
		return s.fault(end, "leading-zero", "leading zero: "+s.typed(end)+" can be a slipped point (0."+strings.TrimLeft(whole[1:], "0")+"?)", leadless(all))
	case strings.Count(all, ".") > 1:
		return s.fault(end, "two-points", "two points in one number: "+s.typed(end), "12.5")
	}
	// What follows the digits and one point.
	if r := s.at(end); (r == 'e' || r == 'E') && (isDigit(s.at(end+1)) || (s.at(end+1) == '+' || s.at(end+1) == '-') && isDigit(s.at(end+2))) {
		stop := end + 2
		for isDigit(s.at(stop)) {
			stop++
		}
		return s.fault(stop, "power", "power of ten: "+s.typed(stop)+"; write all its digits", "1000")
	}
	if (s.at(end) == ' ' || s.at(end) == '\u00a0' || s.at(end) == '\u202f') && threeDigits(s.runes, end+1) && len(whole) < 4 && !strings.Contains(all, ".") {
		return s.fault(end+4, "blank-in-number", "a blank inside a number: "+s.typed(end+4), all+string(s.runes[end+1:end+4]))
	}
	return nil
}

// comma words the fault of a comma in a number: a decimal comma, unless exactly
// three digits follow each comma, when it may part thousands.
func (s *scanner) comma(all, grouped string, end int) *Fault {
	parts := strings.Split(all, ",")
	thousands := len(parts[0]) <= 4 && !strings.HasPrefix(strings.TrimLeft(parts[0], "+-"), "0")
	for _, p := range parts[1:] {
		thousands = thousands && len(p) == 3
	}
	point := strings.Replace(all, ",", ".", 1)
	if thousands {
		return s.fault(end, "decimal-comma", "a comma in "+s.typed(end)+" can be a decimal comma or part thousands", point, grouped)
	}
	return s.fault(end, "decimal-comma", "decimal comma: "+s.typed(end), point)
}

// at gives the rune at a place from the start, 0 beyond the end.
func (s *scanner) at(i int) rune {
	if i < len(s.runes) {
		return s.runes[i]
	}
	return 0
}

// leadless writes a number without its leading zeros.
func leadless(text string) string {
	sign := ""
	if strings.HasPrefix(text, "+") || strings.HasPrefix(text, "-") {
		sign, text = text[:1], text[1:]
	}
	text = strings.TrimLeft(text, "0")
	if text == "" || text[0] == '.' {
		text = "0" + text
	}
	return sign + text
}

// threeDigits tells whether exactly three digits stand at i, and no stroke of a
// fraction behind them.
func threeDigits(r []rune, i int) bool {
	if i+3 > len(r) || !isDigit(r[i]) || !isDigit(r[i+1]) || !isDigit(r[i+2]) {
		return false
	}
	return i+3 == len(r) || (!isDigit(r[i+3]) && r[i+3] != '/' && r[i+3] != '.')
}

// fractionAhead tells whether the mark at hand is followed by digits/digits.
func (s *scanner) fractionAhead() bool {
	i := s.pos + 1
	for isDigit(s.at(i)) {
		i++
	}
	return i > s.pos+1 && s.at(i) == '/' && isDigit(s.at(i+1))
}

// decimal ends a decimal number.
func (s *scanner) decimal(whole, behind string) (Number, int, *Fault) {
	if len(whole)+len(behind) > MaxFigures {
		return Number{}, 0, s.fault(s.pos, "too-many-figures", "more than 15 figures: "+s.typed(s.pos), "12.5")
	}
	n := Number{text: s.text(s.pos), decimals: len(behind)}
	n.val = ratOf(whole+behind, len(behind), s.neg)
	return n, s.pos, nil
}

// fraction ends a fraction; the scanner stands at its stroke.
func (s *scanner) fraction(whole, top string) (Number, int, *Fault) {
	s.pos++
	bottom := s.digits()
	switch {
	case len(whole) > MaxFigures-8 || len(top) > 4 || len(bottom) > 4:
		return Number{}, 0, s.fault(s.pos, "too-many-figures", "too many figures for a fraction: "+s.typed(s.pos), "1-3/8")
	case bottom[0] == '0':
		return Number{}, 0, s.fault(s.pos, "fraction", "a fraction with nothing below the stroke: "+s.typed(s.pos), "3/16")
	case len(top) > 1 && top[0] == '0':
		return Number{}, 0, s.fault(s.pos, "leading-zero", "leading zero: "+s.typed(s.pos), "3/16")
	case whole == "0":
		return Number{}, 0, s.fault(s.pos, "fraction", "0 before a fraction: "+s.typed(s.pos), top+"/"+bottom)
	}
	n := fraction(s.neg, whole, top, bottom, s.text(s.pos))
	if whole != "" && (len(top) > len(bottom) || len(top) == len(bottom) && top >= bottom) {
		return Number{}, 0, s.fault(s.pos, "fraction", "the fraction of "+s.typed(s.pos)+" is one or more", mixed(n.Rat()))
	}
	return n, s.pos, nil
}
