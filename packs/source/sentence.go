package source

import (
	"fmt"
	"strings"
)

// A Tongue has the language of the paper on which a problem is printed.
type Tongue interface {
	// Said gives a fixed sentence of a calculation by its English; one that it does not
	// know it gives as it is.
	Said(english string) string
	// Cause tells in a sentence what stands behind a code. It is empty in English, whose
	// paper has the message itself.
	Cause(code string) string
}

// A Sentence is a message that can be told in another language with its figures, as that
// of a calculation.
type Sentence interface {
	// In gives the sentence, empty where the language does not have it.
	In(t Tongue) string
}

// In gives what the paper says of the problem: in English its message, in another
// language the sentence of the calculation that found it, else what stands behind its
// code, in words that fit every problem of that code.
func (p Problem) In(t Tongue) string {
	if t == nil {
		return p.Message
	}
	cause := t.Cause(p.Code)
	if cause == "" {
		return p.Message
	}
	if p.Sentence != nil {
		if text := p.Sentence.In(t); text != "" {
			cause = text
		}
	}
	if p.More > 0 {
		return strings.TrimSuffix(cause, ".") + moreSaid(t, p.More)
	}
	return cause
}

// moreSaid says at how many further places the same holds.
func moreSaid(t Tongue, n int) string {
	said := func(english string) string {
		if t == nil {
			return english
		}
		return t.Said(english)
	}
	if n == 1 {
		return said(onePlace)
	}
	return fmt.Sprintf(said(morePlaces), n)
}

// onePlace and morePlaces are the forms of moreSaid in English.
const (
	onePlace   = "; the same at 1 more place"
	morePlaces = "; the same at %d more places"
)

// Says gives the problem that was added last its sentence.
func (ps Problems) Says(s Sentence) { ps[len(ps)-1].Sentence = s }

// About puts the mark of a thing before what is said of it.
func About(t Tongue, mark, text string) string {
	if mark == "" || text == "" {
		return text
	}
	return fmt.Sprintf(t.Said(aboutMark), mark, text)
}

// aboutMark is the form of About in English.
const aboutMark = "%s: %s"

// NotWritten says that something is not written, named in English as Said knows it.
func NotWritten(what string) Sentence { return notWritten(what) }

type notWritten string

func (w notWritten) In(t Tongue) string {
	what := t.Said(string(w))
	if what == string(w) {
		return ""
	}
	return fmt.Sprintf(t.Said("%s is not written"), what)
}

// Fixed is a sentence about a thing by its mark, with holes for texts of the author. Said
// knows it by its English.
func Fixed(mark, english string, holes ...any) Sentence { return fixed{mark, english, holes} }

type fixed struct {
	mark, english string
	holes         []any
}

func (f fixed) In(t Tongue) string {
	text := t.Said(f.english)
	if text == f.english {
		return ""
	}
	return About(t, f.mark, fmt.Sprintf(text, f.holes...))
}
