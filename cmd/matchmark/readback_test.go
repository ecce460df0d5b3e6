package main

import (
	"bytes"
	"encoding/csv"
	"image"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/keep"
	"matchmark/templates"
)

// TestTagCodesReadBack reads every code of every tag and stub from the page as
// printed, with a decoder that was not made here (gozxing), and holds its text
// against the text printed beside it and the key in the register.
func TestTagCodesReadBack(t *testing.T) {
	longTest(t)
	t.Parallel()
	for _, starter := range starters(t) {
		for _, paper := range papers {
			t.Run(starter+" "+paper.Name, func(t *testing.T) {
				t.Parallel()
				jb, pack := composed(t, starter, templates.Options{Paper: paper})
				keys := registerKeys(t, jb)
				images := rendered(t, painted(t, pack.Tags), 0, 0, paper.W, paper.H)
				if len(images) != len(pack.Tags.Pages) {
					t.Fatalf("%d pages are rendered, the tags have %d", len(images), len(pack.Tags.Pages))
				}
				seen := map[string]bool{}
				for i, f := range pack.Tags.Pages {
					for _, label := range labels(f) {
						text := checkLabel(t, images[i], f, label)
						mark, known := keys[text]
						if !known {
							t.Errorf("page %d: %q is no key of the register", i+1, text)
						} else if !strings.Contains(label.text(f), strings.ReplaceAll(mark, "/", "")) {
							t.Errorf("page %d: the label with the code %q does not carry the mark %s: %s", i+1, text, mark, label.text(f))
						}
						if seen[text] {
							t.Errorf("%q is on two labels", text)
						}
						seen[text] = true
					}
				}
				for key := range keys {
					if !seen[key] {
						t.Errorf("the register's key %q is on no label", key)
					}
				}
			})
		}
	}
}

// registerKeys reads the register as another program would: from the text of the code to
// the mark.
func registerKeys(t *testing.T, jb *job.Job) map[string]string {
	t.Helper()
	var b bytes.Buffer
	if err := keep.WriteRegister(&b, jb, false); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(&b).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	keys := map[string]string{}
	for _, r := range rows[1:] {
		keys[r[1]] = r[2]
	}
	if len(keys) != len(rows)-1 {
		t.Errorf("%d rows of the register have %d keys", len(rows)-1, len(keys))
	}
	return keys
}

// An area is a part of a page: left, top, right, bottom.
type area [4]layout.Mm

// labels finds the tags and labels of a page by their frames.
func labels(f layout.Frame) []area {
	var out []area
	for _, it := range f.Items {
		if r, ok := it.Shape.(layout.Rect); ok && r.Radius >= 2 && min(r.W, r.H) >= 40 {
			l, top, right, b := it.Bounds()
			out = append(out, area{l, top, right, b})
		}
	}
	return out
}

// holds reports whether the middle of an item lies in the area.
func (a area) holds(it layout.Item) bool {
	l, top, r, b := it.Bounds()
	x, y := (l+r)/2, (top+b)/2
	return x >= a[0] && y >= a[1] && x <= a[2] && y <= a[3]
}

// text is all that is printed in an area in the typeface for people, without
// blanks and slashes: the place of a mark stands apart from it.
func (a area) text(f layout.Frame) string {
	var b strings.Builder
	for _, it := range f.Items {
		if s, ok := it.Shape.(layout.Text); ok && a.holds(it) && s.Face != layout.Mono {
			b.WriteString(s.S)
		}
	}
	return strings.NewReplacer(" ", "", "\u00a0", "", "/", "").Replace(b.String())
}

// checkLabel reads the codes of one label, which are all alike, and sees that
// their text is printed as often. It returns the text.
func checkLabel(t *testing.T, page image.Image, f layout.Frame, a area) string {
	t.Helper()
	var codes []string
	var beside strings.Builder
	for _, it := range f.Items {
		if !a.holds(it) {
			continue
		}
		switch s := it.Shape.(type) {
		case layout.Modules:
			codes = append(codes, decoded(t, page, it, 0, 0))
		case layout.Text:
			if s.Face == layout.Mono {
				beside.WriteString(s.S)
			}
		}
	}
	if len(codes) == 0 {
		t.Fatalf("a label at %.0f,%.0f has no code", a[0], a[1])
	}
	plain := func(s string) string { return strings.NewReplacer(" ", "", "\u00a0", "").Replace(s) }
	want := strings.Repeat(plain(codes[0]), len(codes))
	if r := []rune(codes[0]); a[3]-a[1] < 50 && a[2]-a[0] < 70 || a[2]-a[0] < 50 {
		want = plain(string(r[len(r)-8:])) // on a bag label the letters alone: the mark stands above them
	}
	if plain(beside.String()) != want {
		t.Errorf("the codes say %q, beside them is printed %q", codes, beside.String())
	}
	for _, c := range codes {
		if c != codes[0] {
			t.Errorf("one label has the codes %q and %q", codes[0], c)
		}
	}
	return codes[0]
}

// decoded reads the code that an item of a page is, from the page as rendered from
// left and top on.
func decoded(t *testing.T, page image.Image, it layout.Item, left, top layout.Mm) string {
	t.Helper()
	l, tp, r, b := it.Bounds()
	// Where the reader mistakes the size of the symbol by one module it is told to look
	// again, as a scanner does that is held over the paper and moves.
	var last error
	for _, more := range []layout.Mm{0, -0.5, 0.2, -1} {
		part := page.(interface {
			SubImage(image.Rectangle) image.Image
		}).SubImage(image.Rect(dots(l-left-more), dots(tp-top-more), dots(r-left+more), dots(b-top+more)))
		for _, hints := range []map[gozxing.DecodeHintType]interface{}{nil, {gozxing.DecodeHintType_TRY_HARDER: true, gozxing.DecodeHintType_PURE_BARCODE: true}} {
			bits, err := gozxing.NewBinaryBitmapFromImage(part)
			if err != nil {
				t.Fatal(err)
			}
			got, err := qrcode.NewQRCodeReader().Decode(bits, hints)
			if err == nil {
				return got.GetText()
			}
			last = err
		}
	}
	t.Errorf("a code at %.0f,%.0f mm cannot be read: %v", l, tp, last)
	return ""
}

// TestPageCodesReadBack reads the code beside the foot of every page of a pack: the digest
// of the pack, page and pages, as they are printed on the page.
func TestPageCodesReadBack(t *testing.T) {
	longTest(t)
	t.Parallel()
	for i, starter := range starters(t) {
		for k, paper := range papers {
			if (i+k)%2 != 0 && os.Getenv("CI_OUTSIDE") != "1" {
				continue // in CI both papers, else they take turns
			}
			t.Run(starter+" "+paper.Name, func(t *testing.T) {
				t.Parallel()
				jb, pack := composed(t, starter, templates.Options{Paper: paper})
				pages := pack.Pages.Pages
				const wide, high = 20, 40 // in the margin, at the foot
				top := paper.H - high
				images := rendered(t, painted(t, pack.Pages), 0, top, wide, high)
				if len(images) != len(pages) {
					t.Fatalf("%d pages are rendered, the pack has %d", len(images), len(pages))
				}
				for i, f := range pages {
					want := strings.ToUpper(jb.Digest) + " " + strconv.Itoa(i+1) + " " + strconv.Itoa(len(pages))
					found := 0
					for _, it := range f.Items {
						if _, ok := it.Shape.(layout.Modules); !ok {
							continue
						}
						found++
						if got := decoded(t, images[i], it, 0, top); got != want {
							t.Errorf("page %d: the code says %q, want %q", i+1, got, want)
						}
					}
					if !footed(f, jb.Digest) {
						t.Errorf("page %d does not print the digest", i+1)
					}
					if found != 1 {
						t.Errorf("page %d has %d codes", i+1, found)
					}
					printed := area{0, 0, f.W, f.H}.text(f)
					for _, part := range []string{strconv.Itoa(i+1) + "of" + strconv.Itoa(len(pages)), jb.Order.Number, "rev" + jb.Order.Revision} {
						if !strings.Contains(printed, part) {
							t.Errorf("page %d does not print %q, which its code holds", i+1, part)
						}
					}
				}
			})
		}
	}
}

// footed reports whether a page prints the digest in the typeface of codes.
func footed(f layout.Frame, digest string) bool {
	for _, it := range f.Items {
		if s, ok := it.Shape.(layout.Text); ok && s.Face == layout.Mono && strings.Contains(s.S, digest) {
			return true
		}
	}
	return false
}
