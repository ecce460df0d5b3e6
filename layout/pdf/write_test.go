package pdf

import (
	"bytes"
	"errors"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"io"
	"math"
	"strings"
	"sync"
	"testing"

	"matchmark/layout"
)

// one is a document of one page with the given items.
func one(items ...layout.Item) *layout.Doc {
	return &layout.Doc{Pages: []layout.Frame{{W: 210, H: 297, Items: items}}}
}

func text(s string) layout.Item { return layout.Item{X: 20, Y: 20, Shape: layout.Text{S: s, Size: 10}} }

// The same document gives the same bytes, one after the other and side by side.
func TestSameBytes(t *testing.T) {
	t.Parallel()
	want := painted(t, sample(layout.A4))
	var wg sync.WaitGroup
	for range 4 {
		wg.Go(func() {
			var b bytes.Buffer
			if err := Write(&b, sample(layout.A4)); err != nil || !bytes.Equal(b.Bytes(), want) {
				t.Errorf("error %v, the same bytes: %v", err, bytes.Equal(b.Bytes(), want))
			}
		})
	}
	wg.Wait()
	if other := painted(t, sample(layout.Letter)); bytes.Equal(other, want) {
		t.Error("another paper gives the same bytes")
	}
}

func TestRefused(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name string
		d    *layout.Doc
		word string
	}{
		{"no pages", &layout.Doc{}, "no pages"},
		{"a character beyond the basic plane", one(text("tool 🔧")), "U+1F527"},
		{"the first one beyond", one(text("\U00010000")), "U+10000"},
		{"broken bytes", one(text("a\xc3")), "UTF-8"},
		{"broken bytes in a drawing", one(layout.Item{Shape: layout.Path{Alt: "\xe2\x8c"}}), "UTF-8"},
		{"a length that is no number", one(layout.Item{X: layout.Mm(math.NaN()), Shape: layout.Line{DX: 1, Weight: 1}}), "NaN"},
		{"a length without end", one(layout.Item{Shape: layout.Rect{W: layout.Mm(math.Inf(1)), H: 1, Weight: 1}}), "Inf"},
		{"a face that does not exist", one(layout.Item{Shape: layout.Text{S: "a", Face: 9, Size: 10}}), "face"},
		{"a language with a bracket", &layout.Doc{Lang: "en)", Pages: one().Pages}, "language"},
		{"a date in another form", &layout.Doc{Date: "2.3.2026", Pages: one().Pages}, "2.3.2026"},
		{"a title of broken bytes", &layout.Doc{Title: "\xff", Pages: one().Pages}, "UTF-8"},
		{"an outline that leads nowhere", &layout.Doc{Outline: []layout.Entry{{Title: "x", Page: 1}}, Pages: one().Pages}, "page 2 of 1"},
		{"a picture that is none", one(layout.Item{Shape: layout.Image{W: 9, H: 9, Kind: "png", Data: []byte("no")}}), "picture"},
	} {
		var b bytes.Buffer
		err := Write(&b, c.d)
		if err == nil || !strings.Contains(err.Error(), c.word) {
			t.Errorf("%s: error %v, want one that says %q", c.name, err, c.word)
		}
		if b.Len() > 0 {
			t.Errorf("%s: %d bytes are written all the same", c.name, b.Len())
		}
	}
}

// broken is a writer that fails.
type broken struct{}

var errFull = errors.New("disk full")

func (broken) Write([]byte) (int, error) { return 0, errFull }

func TestWriterError(t *testing.T) {
	t.Parallel()
	if err := Write(broken{}, one(text("a"))); !errors.Is(err, errFull) {
		t.Errorf("error %v, want that of the writer", err)
	}
}

// A file with no date holds no time at all; with one, that date and midnight.
func TestDates(t *testing.T) {
	t.Parallel()
	if b := painted(t, one(text("a"))); bytes.Contains(b, []byte("Date")) {
		t.Error("a document without a date gets one")
	}
	d := one(text("a"))
	d.Date, d.Lang = "2026-03-02", "en"
	b := painted(t, d)
	for _, want := range []string{"/CreationDate (D:20260302000000Z)", "/Lang (en)", "/DisplayDocTitle true", "/PrintScaling /None", "/Duplex /Simplex"} {
		if !bytes.Contains(b, []byte(want)) {
			t.Errorf("the file does not hold %q", want)
		}
	}
}

// A choice of sheets is counted by a viewer as the paper is.
func TestPageLabels(t *testing.T) {
	t.Parallel()
	d := &layout.Doc{}
	for _, n := range []int{2, 3, 7} {
		d.Pages = append(d.Pages, layout.Frame{W: 210, H: 297, Number: n})
	}
	if b := painted(t, d); !bytes.Contains(b, []byte("/PageLabels <</Nums [ 0 <</S /D /St 2>> 2 <</S /D /St 7>>]>>")) {
		t.Error("pages 2, 3 and 7 are not labelled so")
	}
	d.Pages[0].Number, d.Pages[1].Number, d.Pages[2].Number = 1, 2, 3
	if b := painted(t, d); bytes.Contains(b, []byte("/PageLabels")) {
		t.Error("pages 1, 2, 3 are labelled without need")
	}
}

// Pictures of both kinds, one of them turned, one on two pages.
func TestPictures(t *testing.T) {
	t.Parallel()
	img := image.NewGray(image.Rect(0, 0, 40, 20))
	for x := range 40 {
		img.SetGray(x, x/2, color.Gray{Y: 200})
	}
	var p, j bytes.Buffer
	if err := png.Encode(&p, img); err != nil {
		t.Fatal(err)
	}
	if err := jpeg.Encode(&j, img, nil); err != nil {
		t.Fatal(err)
	}
	d := one(
		layout.Item{X: 20, Y: 20, Shape: layout.Image{W: 40, H: 20, Kind: "png", Data: p.Bytes()}},
		layout.Item{X: 20, Y: 90, Turn: 90, Shape: layout.Image{W: 40, H: 20, Kind: "jpg", Data: j.Bytes()}},
		text("after"))
	d.Pages = append(d.Pages, d.Pages[0])
	b := painted(t, d)
	if n := bytes.Count(b, []byte("/Subtype /Image")); n != 2 {
		t.Errorf("%d pictures are stored, want 2", n)
	}
	out := outside(t, b, "pdfimages", "-list", "FILE")
	if n := strings.Count(out, "\n") - 2; n != 4 { // two lines of head
		t.Errorf("pdfimages finds %d pictures, want 2 on each page:\n%s", n, out)
	}
	outside(t, b, "qpdf", "--check", "FILE")
}

func TestNumbers(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		v    float64
		want string
	}{
		{0, "0 "}, {1, "1 "}, {-1, "-1 "}, {0.5, "0.5 "}, {0.05, "0.05 "}, {0.0004, "0 "}, {-0.0004, "0 "},
		{12.3456, "12.346 "}, {-12.3456, "-12.346 "}, {0.9996, "1 "}, {841.89, "841.89 "}, {3.001, "3.001 "},
	} {
		if got := string(appendNum(nil, c.v, 3)); got != c.want {
			t.Errorf("%v is written %q, want %q", c.v, got, c.want)
		}
	}
}

// FuzzWrite sees that no text makes the painter panic, set by layout or handed
// over raw, and that text which layout has set is never refused.
func FuzzWrite(f *testing.F) {
	for _, s := range []string{"", "nut", "a\xffb", "tool 🔧", "שלום", "⌀ 130\u202fmm", "(\\)\r\n\x00", "\uFFFD\uFFFF\U00010000"} {
		f.Add(s)
	}
	faces := NewFaces()
	f.Fuzz(func(t *testing.T, s string) {
		set := layout.NewSetter(faces, layout.Pen{})
		b := set.Para(60, []layout.Run{{Text: s, Style: layout.Body}, {Text: s, Style: layout.Strong, Deco: layout.Boxed}}, layout.ParaOpts{})
		p := layout.Paginate(layout.A4, []layout.Sheet{{Pieces: []layout.Piece{{Block: b}}}})
		if err := Write(io.Discard, &layout.Doc{Title: "t", Pages: p.Frames}); err != nil {
			t.Errorf("%q was set and then refused: %v", s, err)
		}
		d := one(text(s))
		d.Title = s
		_ = Write(io.Discard, d) // may refuse, must not panic
	})
}

func BenchmarkWrite(b *testing.B) {
	d := sample(layout.A4)
	for i := 0; len(d.Pages) < 33; i++ {
		d.Pages = append(d.Pages, d.Pages[i])
	}
	b.ReportAllocs()
	for b.Loop() {
		if err := Write(io.Discard, d); err != nil {
			b.Fatal(err)
		}
	}
}
