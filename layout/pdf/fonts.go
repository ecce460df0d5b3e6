package pdf

import (
	"bytes"
	"fmt"
	"slices"
	"strings"

	"github.com/go-pdf/fpdf"

	"matchmark/layout"
)

// The library learns which signs of a font to embed only from its own text
// calls, and those cost more than all the rest of painting. So the signs of the
// document are shown to it once, in a template that is never placed and therefore
// never written, and the text of the pages is written directly.

// used collects the signs that the document sets, by face.
type used [layout.NumFaces]map[rune]bool

// add notes the signs of a text.
func (u *used) add(face layout.Face, s string) {
	if u[face] == nil {
		u[face] = make(map[rune]bool, 96)
	}
	for _, r := range s {
		u[face][r] = true
	}
}

// collect notes the signs of all pages and refuses text that cannot be written.
func collect(d *layout.Doc) (u used, err error) {
	for _, f := range d.Pages {
		for _, it := range f.Items {
			face, s := layout.Regular, ""
			switch sh := it.Shape.(type) {
			case layout.Text:
				face, s = sh.Face, sh.S
			case layout.Path:
				s = sh.Alt
			}
			if s == "" {
				continue
			}
			if face >= layout.NumFaces {
				return u, fmt.Errorf("text %q is set in a face that does not exist", s)
			}
			if err := checkText(s); err != nil {
				return u, err
			}
			u.add(face, s)
		}
	}
	return u, nil
}

// embed gives the library the fonts of the faces in use and returns the names by
// which page content calls them.
func embed(f *fpdf.Fpdf, u used) (names [layout.NumFaces]string, err error) {
	for face, runes := range u {
		if runes == nil {
			continue
		}
		all := make([]rune, 0, len(runes))
		for r := range runes {
			all = append(all, r)
		}
		slices.Sort(all)
		family := strings.ReplaceAll(layout.Face(face).String(), "-", "")
		// The library writes to the bytes of monospaced fonts while it reads
		// their widths, so every document gets a copy.
		f.AddUTF8FontFromBytes(family, "", bytes.Clone(files[face]))
		t := f.CreateTemplate(func(t *fpdf.Tpl) {
			t.SetFont(family, "", 1)
			t.Text(0, 0, string(all))
		})
		if err := f.Error(); err != nil {
			return names, fmt.Errorf("embed fonts: %w", err)
		}
		name, ok := fontName(t.Bytes())
		if !ok {
			return names, fmt.Errorf("embed fonts: the PDF library gives %s no name", family)
		}
		names[face] = name
	}
	return names, nil
}

// fontName finds the name of the font in the content "BT /F… 1.00 Tf".
func fontName(content []byte) (string, bool) {
	_, rest, ok := bytes.Cut(content, []byte("BT /"))
	name, _, ok2 := bytes.Cut(rest, []byte(" "))
	return string(name), ok && ok2
}
