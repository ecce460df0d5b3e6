package phrase

import (
	"hash/maphash"
	"strings"
	"sync/atomic"
)

// signs is which three signs stand behind one another in a text, each at a place that it
// may share with others: what is not there is not in the text, what is there may be in it.
type signs [wide / 64]uint64

const wide = 2048

// plain is how a text is read: letters small, figures and the underscore as they are, and
// a space for what is no part of a word to regexp's \b.
var plain = func() (t [256]byte) {
	for c := range t {
		switch {
		case c >= 'a' && c <= 'z', c >= '0' && c <= '9', c == '_':
			t[c] = byte(c)
		case c >= 'A' && c <= 'Z':
			t[c] = byte(c) + 'a' - 'A'
		default:
			t[c] = ' '
		}
	}
	return t
}()

// place is where three signs are noted.
func place(a, b, c byte) uint32 {
	return (uint32(a)<<16 | uint32(b)<<8 | uint32(c)) * 2654435761 >> 21
}

// read notes the signs of a text, a space before and behind it.
func (s *signs) read(text string) {
	a, b, beyond := byte(0), byte(' '), byte(0)
	for i := 0; i <= len(text); i++ {
		c := byte(' ')
		if i < len(text) {
			beyond |= text[i]
			c = plain[text[i]]
		}
		if c == ' ' && b == ' ' {
			continue
		}
		if a != 0 {
			at := place(a, b, c)
			s[at/64] |= 1 << (at % 64)
		}
		a, b = b, c
	}
	// Two letters outside of ASCII are capital or small ones of s and k to regexp.
	if beyond >= 0x80 && (strings.Contains(text, "\u017f") || strings.Contains(text, "\u212a")) {
		for i := range s {
			s[i] = ^uint64(0)
		}
	}
}

// A kept text has been read.
type kept struct {
	text string
	signs
}

// texts are those that were read lately, each at a place that follows from what it says. It
// is a store alone: whether a text is found there changes nothing but the time it takes.
var (
	texts [1024]atomic.Pointer[kept]
	seed  = maphash.MakeSeed()
)

// short is a text that is read again sooner than it is found.
const short = 24

// signsOf reads a text, or has read it.
func signsOf(text string) *signs {
	at := &texts[maphash.String(seed, text)%uint64(len(texts))]
	k := at.Load()
	if k == nil || k.text != text {
		k = &kept{text: text}
		k.read(text)
		at.Store(k)
	}
	return &k.signs
}
