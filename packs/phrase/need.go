package phrase

import (
	"regexp/syntax"
	"slices"
	"strings"
)

// need is what a text must have before an expression can match: all of its parts, or any
// one of them. The zero need is met by every text.
type need struct {
	word  []uint16 // places of the signs of a word, nil of what has parts
	any   bool     // one of the parts is enough
	parts []need
}

// open reports whether every text meets it.
func (n need) open() bool { return n.word == nil && len(n.parts) == 0 }

func (n need) metBy(s *signs) bool {
	if n.word != nil {
		for _, at := range n.word {
			if s[at/64]&(1<<(at%64)) == 0 {
				return false
			}
		}
		return true
	}
	for _, p := range n.parts {
		if p.metBy(s) == n.any {
			return n.any
		}
	}
	return !n.any
}

// scripts are written for what stands for a letter or a figure in any script. Such a sign
// tells nothing here, and to take the classes of all scripts apart is slow.
var scripts = strings.NewReplacer(`\pL`, `\w`, `\p{L}`, `\w`, `\p{N}`, `\w`, `\pC`, `\w`)

// needOf takes an expression apart.
func needOf(expression string) need {
	re, err := syntax.Parse(scripts.Replace(expression), syntax.Perl)
	if err != nil {
		return need{} // compiling it will tell
	}
	f := formOf(re)
	if f.all != nil {
		return oneOf(f.all)
	}
	return f.needs
}

// A form is what a part of an expression can match: all texts of it, in the signs of
// plain, or else what is needed of any.
type form struct {
	all   []string
	needs need
}

// edge stands in a text of a form where a word begins or ends.
const edge = '|'

// most is how many texts a form may list, narrow how many signs one place.
const (
	most   = 64
	narrow = 4
)

func formOf(re *syntax.Regexp) form {
	switch re.Op {
	case syntax.OpLiteral:
		b := make([]byte, len(re.Rune))
		for i, r := range re.Rune {
			b[i] = sign(r)
		}
		return form{all: []string{string(b)}}
	case syntax.OpCharClass:
		return form{all: ofClass(re.Rune)}
	case syntax.OpWordBoundary:
		return form{all: []string{string(edge)}}
	case syntax.OpEmptyMatch, syntax.OpBeginText, syntax.OpEndText, syntax.OpBeginLine, syntax.OpEndLine, syntax.OpNoWordBoundary:
		return form{all: []string{""}}
	case syntax.OpCapture:
		return formOf(re.Sub[0])
	case syntax.OpQuest:
		if f := formOf(re.Sub[0]); f.all != nil {
			return form{all: append(slices.Clone(f.all), "")}
		}
	case syntax.OpPlus:
		return form{needs: formOf(re.Sub[0]).need()}
	case syntax.OpRepeat:
		if re.Min > 0 {
			return form{needs: formOf(re.Sub[0]).need()}
		}
	case syntax.OpConcat:
		return concat(re.Sub)
	case syntax.OpAlternate:
		return alternate(re.Sub)
	}
	return form{} // any text, or none
}

// need is what a text must have to match a form.
func (f form) need() need {
	if f.all != nil {
		return oneOf(f.all)
	}
	return f.needs
}

// sign is a rune as plain reads it.
func sign(r rune) byte {
	if r >= 0x80 {
		return ' '
	}
	return plain[r]
}

// ofClass lists the signs of a class, nil if they are many.
func ofClass(ranges []rune) []string {
	var out []string
	for i := 0; i < len(ranges); i += 2 {
		if ranges[i+1]-ranges[i] > 64 {
			return nil
		}
		for r := ranges[i]; r <= ranges[i+1]; r++ {
			if s := string(sign(r)); !slices.Contains(out, s) {
				out = append(out, s)
			}
		}
	}
	if len(out) > narrow {
		return nil
	}
	return out
}

// concat puts forms behind one another: texts are joined as long as they are few.
func concat(subs []*syntax.Regexp) form {
	all, whole := []string{""}, true
	var parts []need
	cut := func(next []string) {
		if n := oneOf(all); !n.open() {
			parts = append(parts, n)
		}
		all = next
	}
	for _, sub := range subs {
		f := formOf(sub)
		switch {
		case f.all == nil:
			cut([]string{""})
			whole = false
			if !f.needs.open() {
				parts = append(parts, f.needs)
			}
		case len(all)*len(f.all) > most:
			cut(f.all)
			whole = false
		default:
			all = joined(all, f.all)
		}
	}
	if whole {
		return form{all: all}
	}
	cut(nil)
	return form{needs: need{parts: parts}}
}

func joined(heads, tails []string) []string {
	out := make([]string, 0, len(heads)*len(tails))
	for _, h := range heads {
		for _, t := range tails {
			out = append(out, h+t)
		}
	}
	return out
}

// alternate is one form or another.
func alternate(subs []*syntax.Regexp) form {
	forms, few := make([]form, len(subs)), 0
	for i, sub := range subs {
		forms[i] = formOf(sub)
		few += len(forms[i].all)
		if forms[i].all == nil {
			few = most + 1
		}
	}
	if few <= most {
		all := make([]string, 0, few)
		for _, f := range forms {
			all = append(all, f.all...)
		}
		return form{all: all}
	}
	parts := make([]need, len(forms))
	for i, f := range forms {
		if parts[i] = f.need(); parts[i].open() {
			return form{}
		}
	}
	return form{needs: need{any: true, parts: parts}}
}

// oneOf is the need of any one of some texts; none where one of them is too short to be
// looked for.
func oneOf(texts []string) need {
	out := need{any: true, parts: make([]need, len(texts))}
	for k, t := range texts {
		word := wordOf(t)
		if len(word) < 3 {
			return need{}
		}
		places := make([]uint16, len(word)-2)
		for i := range places {
			places[i] = uint16(place(word[i], word[i+1], word[i+2]))
		}
		out.parts[k].word = places
	}
	if len(out.parts) == 1 {
		return out.parts[0]
	}
	return out
}

// wordOf is a text of a form as it stands in what is read: a space at an edge, and one for
// several.
func wordOf(text string) []byte {
	out := make([]byte, 0, len(text)+1)
	at := false // an edge stands before the next sign
	for i := range len(text) {
		c := text[i]
		if c == edge {
			at = true
			continue
		}
		if at && len(out) == 0 && c != ' ' {
			out = append(out, ' ')
		}
		at = false
		if c != ' ' || len(out) == 0 || out[len(out)-1] != ' ' {
			out = append(out, c)
		}
	}
	if at && len(out) > 0 && out[len(out)-1] != ' ' {
		out = append(out, ' ')
	}
	return out
}
