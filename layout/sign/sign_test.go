package sign

import (
	"math"
	"strings"
	"testing"
	"unicode/utf8"

	"matchmark/layout"
)

// The numbers that a maintenance job's cautions call for, from the list of signs
// of ISO 7010 as read in an open list of them.
const wanted = "W001 W006 W010 W012 W015 W017 W019 W021 W022 W024 W035 W041 W071 M002 M003 M004 M008 M009 M013 M014 M017 M021 M028 P003 P007 P024"

func TestSigns(t *testing.T) {
	t.Parallel()
	if got := strings.Join(Codes(), " "); len(strings.Fields(wanted)) != len(Codes()) {
		t.Errorf("signs %s, want those of %s", got, wanted)
	}
	for _, code := range strings.Fields(wanted) {
		b, ok := Sign(code, 20, "r")
		if !ok {
			t.Errorf("%s is not drawn", code)
			continue
		}
		if b.W != 20 || b.H != 20 || b.Items()[0].Role != "sign:"+code || b.Items()[0].Ref != "r" {
			t.Errorf("%s: %v x %v, first item %q", code, b.W, b.H, b.Items()[0].Role)
		}
		for _, it := range b.Items() {
			if l, top, r, bottom := it.Bounds(); l < 0 || top < 0 || r > 20 || bottom > 20 {
				t.Errorf("%s: a part lies at %.1f %.1f %.1f %.1f, outside 20 x 20", code, l, top, r, bottom)
			}
		}
		inFrame(t, code)
	}
	if _, ok := Sign("W999", 20, nil); ok {
		t.Error("a number that does not exist is drawn")
	}
}

// inFrame sees that a pictogram stays within its frame: the inner edge of the
// triangle, the disc, the outer edge of the ring.
func inFrame(t *testing.T, code string) {
	t.Helper()
	for _, p := range pictograms[code] {
		if strings.Contains(p.path, "O") {
			continue // a circle's points are its corners too, judged by eye
		}
		for _, o := range parse(p.path, 1) {
			if o.Verb == layout.Close {
				continue
			}
			x, y := float64(o.P.X), float64(o.P.Y)
			ok := math.Hypot(x-50, y-50) <= 48
			if code[0] == 'W' {
				// The triangle's sides go from 50, 9 to 5, 87 and 95, 87.
				ok = y <= 87-3 && math.Abs(x-50) <= (y-9)*45/78-3
			}
			if !ok {
				t.Errorf("%s: the pictogram reaches to %v, %v", code, x, y)
			}
		}
	}
}

// Every sign is black and white: a photocopy loses nothing.
func TestNoTones(t *testing.T) {
	t.Parallel()
	for _, code := range Codes() {
		b, _ := Sign(code, 20, nil)
		for _, it := range b.Items() {
			if p := it.Shape.(layout.Path); p.Ink != layout.Black && p.Ink != layout.White {
				t.Errorf("%s is drawn in %v", code, p.Ink)
			}
		}
	}
}

type ruler struct{}

func (ruler) Width(_ layout.Face, size layout.Pt, s string) layout.Mm {
	return layout.Mm(utf8.RuneCountInString(s)) * size.Mm() / 2
}

func (ruler) Has(_ layout.Face, r rune) bool { return r < 0x180 }

// NOTICE stands without the alert triangle, the words that warn of injury with it
// (ANSI Z535.6); the word is white on black.
func TestPanel(t *testing.T) {
	t.Parallel()
	s := layout.NewSetter(ruler{}, layout.Pen{})
	for _, c := range []struct {
		word  string
		alert bool
		paths int
	}{{"WARNING", true, 4}, {"NOTICE", false, 0}} {
		b := Panel(s, c.word, c.alert, 14, 0, "r")
		paths, word := 0, layout.Item{}
		for _, it := range b.Items() {
			switch sh := it.Shape.(type) {
			case layout.Path:
				paths++
			case layout.Text:
				word = it
				if sh.S != c.word || sh.Ink != layout.White {
					t.Errorf("%s: text %+v", c.word, sh)
				}
			}
			if l, top, r, bottom := it.Bounds(); l < -0.01 || top < -0.01 || r > b.W+0.01 || bottom > b.H+0.01 {
				t.Errorf("%s: an item lies outside the panel at %v %v %v %v", c.word, l, top, r, bottom)
			}
		}
		if paths != c.paths || b.H != 14 || word.Shape == nil {
			t.Errorf("%s: %d parts of a triangle, %v high; want %d, 14", c.word, paths, b.H, c.paths)
		}
		if r, ok := b.Items()[0].Shape.(layout.Rect); !ok || r.Fill != layout.Black {
			t.Errorf("%s: the panel is %+v, want black", c.word, b.Items()[0])
		}
	}
}
