package main

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// pictureDots is how finely the pictures of pages are rendered, in dots an inch.
const pictureDots = 90

// TestPicture keeps the picture of a page that the README shows like the page that
// is printed. Other versions of pdftoppm smooth edges otherwise, so one pixel in a
// hundred may differ. With -update the picture is rendered anew.
func TestPicture(t *testing.T) {
	if !*update && os.Getenv("CI_OUTSIDE") != "1" {
		t.Skip("the picture is compared with CI_OUTSIDE=1 and rendered with -update")
	}
	_, pack := composed(t, "storm-pump.yaml", templates.Options{Paper: layout.A4})
	page := slices.IndexFunc(pack.Pages.Pages, func(f layout.Frame) bool {
		text := area{0, 0, f.W, f.H}.text(f)
		return f.Sheet == "traveler" && strings.Contains(text, "D31DE")
	})
	if page < 0 {
		t.Fatal("no page of the traveler has D31/DE")
	}
	one := pack.Pages.Only(func(f layout.Frame) bool { return f.Number == pack.Pages.Pages[page].Number })
	is := renderedAt(t, painted(t, one), pictureDots)[0]
	name := filepath.Join(testdata, "pictures", "traveler.png")
	data, err := os.ReadFile(name)
	if err == nil && alike(t, data, is) {
		return
	}
	if !*update {
		t.Fatal("testdata/pictures/traveler.png does not show the page that is printed (go test ./cmd/matchmark -update renders it)")
	}
	var b bytes.Buffer
	enc := png.Encoder{CompressionLevel: png.BestCompression}
	if err := enc.Encode(&b, sixteenTones(is)); err != nil {
		t.Fatal(err)
	}
	if b.Len() > 200_000 {
		t.Errorf("the picture has %d bytes, over 200 kB", b.Len())
	}
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, b.Bytes(), 0o644); err != nil {
		t.Fatal(err)
	}
	t.Log("rewritten: testdata/pictures/traveler.png")
}

// sixteenTones is a picture in sixteen tones of grey, which halves the file.
func sixteenTones(from image.Image) image.Image {
	var tones color.Palette
	for i := range 16 {
		tones = append(tones, color.Gray{Y: uint8(i * 17)})
	}
	to := image.NewPaletted(from.Bounds(), tones)
	for y := range from.Bounds().Dy() {
		for x := range from.Bounds().Dx() {
			to.SetColorIndex(x, y, uint8((int(grey(from, x, y))+8)/17))
		}
	}
	return to
}

func grey(m image.Image, x, y int) uint8 { return color.GrayModel.Convert(m.At(x, y)).(color.Gray).Y }

// alike reports whether a stored picture shows the same page.
func alike(t *testing.T, stored []byte, is image.Image) bool {
	t.Helper()
	was, err := png.Decode(bytes.NewReader(stored))
	if err != nil {
		t.Fatal(err)
	}
	if was.Bounds() != is.Bounds() {
		return false
	}
	w, h := is.Bounds().Dx(), is.Bounds().Dy()
	different := 0
	for y := range h {
		for x := range w {
			if d := int(grey(was, x, y)) - int(grey(is, x, y)); d > 100 || d < -100 {
				different++
			}
		}
	}
	return different*100 < w*h
}
