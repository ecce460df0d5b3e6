package main

import (
	"bytes"
	"fmt"
	"html"
	"image"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"sort"
	"strconv"
	"strings"
	"sync"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
)

// tool runs a program that was not made here. Where it is missing the test is
// skipped, unless CI_OUTSIDE=1 says that it must be there.
func tool(t *testing.T, name string, args ...string) string {
	t.Helper()
	path, err := exec.LookPath(name)
	if err != nil {
		if os.Getenv("CI_OUTSIDE") == "1" {
			t.Fatalf("%s is not installed", name)
		}
		t.Skipf("%s is not installed; the paper is not read back with it", name)
	}
	var out, talk bytes.Buffer
	cmd := exec.Command(path, args...)
	cmd.Stdout, cmd.Stderr = &out, &talk
	if err := cmd.Run(); err != nil {
		t.Fatalf("%s: %v\n%.2000s", name, err, talk.String())
	}
	return out.String()
}

var paintings sync.Map // from *layout.Doc to its bytes

// painted writes a document into a file.
func painted(t *testing.T, d *layout.Doc) string {
	t.Helper()
	data, known := paintings.Load(d)
	if !known {
		var b bytes.Buffer
		if err := pdf.Write(&b, d); err != nil {
			t.Fatal(err)
		}
		data, _ = paintings.LoadOrStore(d, b.Bytes())
	}
	name := filepath.Join(t.TempDir(), "file.pdf")
	if err := os.WriteFile(name, data.([]byte), 0o600); err != nil {
		t.Fatal(err)
	}
	return name
}

// printDots is how finely pages are rendered, in dots an inch: an office printer's.
const printDots = 300

// dots turns a length on paper into pixels.
func dots(m layout.Mm) int { return int(float64(m) * printDots / 25.4) }

// rendered gives a strip of every page as printed, from the top left corner on.
func rendered(t *testing.T, file string, left, top, width, height layout.Mm) []image.Image {
	t.Helper()
	return renderedAt(t, file, printDots,
		"-x", strconv.Itoa(dots(left)), "-y", strconv.Itoa(dots(top)), "-W", strconv.Itoa(dots(width)), "-H", strconv.Itoa(dots(height)))
}

// renderedAt gives every page in grey at so many dots an inch, or the part of it
// that args cut out.
func renderedAt(t *testing.T, file string, perInch int, args ...string) []image.Image {
	t.Helper()
	stem := filepath.Join(t.TempDir(), "page")
	tool(t, "pdftoppm", append([]string{"-r", strconv.Itoa(perInch), "-gray"}, append(args, file, stem)...)...)
	names, err := filepath.Glob(stem + "*.pgm")
	if err != nil {
		t.Fatal(err)
	}
	sort.Strings(names) // pdftoppm fills the numbers with zeros
	var pages []image.Image
	for _, n := range names {
		data, err := os.ReadFile(n)
		if err != nil {
			t.Fatal(err)
		}
		pages = append(pages, graymap(t, data))
	}
	return pages
}

// graymap reads a binary portable graymap as pdftoppm writes it: quicker to write
// and to read than a compressed picture.
func graymap(t *testing.T, data []byte) image.Image {
	t.Helper()
	var w, h, most int
	if _, err := fmt.Sscanf(string(data[:min(len(data), 40)]), "P5\n%d %d\n%d", &w, &h, &most); err != nil || len(data) < w*h {
		t.Fatalf("no graymap: %v", err)
	}
	return &image.Gray{Pix: data[len(data)-w*h:], Stride: w, Rect: image.Rect(0, 0, w, h)}
}

// words gives the text of every page as pdftotext finds it.
func words(t *testing.T, file string, pages int) []string {
	t.Helper()
	var out []string
	text := tool(t, "pdftotext", "-raw", "-enc", "UTF-8", file, "-")
	for _, p := range bytes.Split([]byte(text), []byte("\f")) {
		out = append(out, string(p))
	}
	// The last page ends with a form feed as well.
	if len(out) != pages+1 {
		t.Fatalf("pdftotext gives %d pages, want %d", len(out)-1, pages)
	}
	return out[:pages]
}

// A word is one word of a page and the middle of it.
type word struct {
	text string
	x, y layout.Mm
}

// placedWords gives the words of every page as pdftotext finds them, with their
// places.
func placedWords(t *testing.T, file string) [][]word {
	t.Helper()
	at := regexp.MustCompile(`<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*)</word>`)
	var pages [][]word
	for _, p := range strings.Split(tool(t, "pdftotext", "-bbox", "-enc", "UTF-8", file, "-"), "<page ")[1:] {
		var page []word
		for _, m := range at.FindAllStringSubmatch(p, -1) {
			var side [4]float64
			for i := range side {
				f, err := strconv.ParseFloat(m[i+1], 64)
				if err != nil {
					t.Fatal(err)
				}
				side[i] = f
			}
			page = append(page, word{html.UnescapeString(m[5]), layout.Pt((side[0] + side[2]) / 2).Mm(), layout.Pt((side[1] + side[3]) / 2).Mm()})
		}
		pages = append(pages, page)
	}
	return pages
}
