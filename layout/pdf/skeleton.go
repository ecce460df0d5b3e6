package pdf

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"slices"
	"strings"
	"time"

	"github.com/go-pdf/fpdf"

	"matchmark/layout"
)

// The library is good at two things that are long to write: cutting fonts down to
// the signs in use and storing pictures. It learns what to store only from its
// own calls for text and pictures. So it is given the pages blank, but for the
// first, where every sign of each face and every picture is set once. What it
// writes there is read for the names that it gave to fonts and pictures, and then
// thrown away: finish puts the real content of each page in its place.
//
// Painting through the library would cost four times as much and bring in its
// faults: round rectangles that leave a clip open, lengths that are no numbers
// written as words, a compressor made anew for every page.

// skeleton is the library's file and the names in it.
type skeleton struct {
	raw   []byte
	fonts [layout.NumFaces]string
	// renamed lists the library's names of the fonts themselves and proper ones
	// in turn, for a strings.Replacer: a font that holds only some of its signs
	// must say so in its name.
	renamed []string
	// pictures names the stored pictures by the digest of their content.
	pictures map[[sha256.Size]byte]string
}

// needs is what a document sets: signs by face, and pictures.
type needs struct {
	signs    [layout.NumFaces]map[rune]struct{}
	pictures []layout.Image
	digests  [][sha256.Size]byte
}

// collect looks through all pages and refuses text that cannot be written.
func collect(d *layout.Doc) (n needs, err error) {
	for _, f := range d.Pages {
		for _, it := range f.Items {
			switch s := it.Shape.(type) {
			case layout.Text:
				err = n.addText(s.Face, s.S)
			case layout.Path:
				if s.Alt != "" {
					err = n.addText(layout.Regular, s.Alt)
				}
			case layout.Image:
				n.addPicture(s)
			}
			if err != nil {
				return n, err
			}
		}
	}
	return n, nil
}

func (n *needs) addText(face layout.Face, s string) error {
	if face >= layout.NumFaces {
		return fmt.Errorf("text %q is set in a face that does not exist", s)
	}
	if err := checkText(s); err != nil {
		return err
	}
	if n.signs[face] == nil {
		n.signs[face] = map[rune]struct{}{' ': {}} // between words, spaces.go
	}
	for _, r := range s {
		n.signs[face][r] = struct{}{}
	}
	return nil
}

func (n *needs) addPicture(p layout.Image) {
	sum := sha256.Sum256(p.Data)
	if !slices.Contains(n.digests, sum) {
		n.pictures = append(n.pictures, p)
		n.digests = append(n.digests, sum)
	}
}

// build lets the library write its file.
func build(d *layout.Doc, n needs) (s skeleton, err error) {
	f := newFile(d)
	f.AddPageFormat("P", sizeOf(d.Pages[0]))
	var faces []layout.Face
	fonts := facesOf(d)
	for face, signs := range n.signs {
		if signs == nil {
			continue
		}
		faces = append(faces, layout.Face(face))
		family := strings.ReplaceAll(layout.Face(face).String(), "-", "")
		// The library writes to the bytes of monospaced fonts while it reads
		// their widths, so every document gets a copy.
		f.AddUTF8FontFromBytes(family, "", bytes.Clone(fonts.file(layout.Face(face))))
		f.SetFont(family, "", 1)
		all := sorted(signs)
		f.Text(0, 0, all)
		kind := "Go-"
		if fonts.own[face] != nil {
			kind = "Site-"
		}
		s.renamed = append(s.renamed, "/utf8"+family, "/"+subsetTag(all)+"+"+kind+family)
	}
	for i, p := range n.pictures {
		name := fmt.Sprintf("%x", n.digests[i])
		opt := fpdf.ImageOptions{ImageType: p.Kind}
		f.RegisterImageOptionsReader(name, opt, bytes.NewReader(p.Data))
		f.ImageOptions(name, 0, 0, 1, 1, false, opt, 0, "")
	}
	links := linksTo(f, d)
	links(0)
	for i, fr := range d.Pages[1:] {
		f.AddPageFormat("P", sizeOf(fr))
		links(i + 1)
	}
	var raw bytes.Buffer
	if err := f.Output(&raw); err != nil {
		return s, fmt.Errorf("embed fonts and pictures: %w", err)
	}
	s.raw = raw.Bytes()
	return s, s.readNames(faces, n.digests)
}

// linksTo gives a function that puts the links of a page, counted from 0, on the page
// that the library is at. A link to a page that the document has not is left out.
func linksTo(f *fpdf.Fpdf, d *layout.Doc) func(page int) {
	at := map[int]int{} // the library's page by the number printed on it
	for i, fr := range d.Pages {
		if fr.Number > 0 {
			at[fr.Number] = i + 1
		}
	}
	ids := map[int]int{}
	return func(page int) {
		for _, l := range d.Pages[page].Links {
			to, ok := at[l.Page]
			if !ok {
				continue
			}
			if _, known := ids[to]; !known {
				ids[to] = f.AddLink()
				f.SetLink(ids[to], 0, to)
			}
			f.Link(float64(l.Left)*ptPerMm, float64(l.Top)*ptPerMm, float64(l.Right-l.Left)*ptPerMm, float64(l.Bottom-l.Top)*ptPerMm, ids[to])
		}
	}
}

// newFile starts the library's file. Its unit is the point, its margins and page
// breaks are off.
func newFile(d *layout.Doc) *fpdf.Fpdf {
	f := fpdf.NewCustom(&fpdf.InitType{OrientationStr: "P", UnitStr: "pt", Size: sizeOf(d.Pages[0])})
	f.SetMargins(0, 0, 0)
	f.SetAutoPageBreak(false, 0)
	// The names must be readable; finish compresses the real content.
	f.SetCompression(false)
	// Fonts are kept in a map and would be written in any order.
	f.SetCatalogSort(true)
	// The dates are cut off again, but unset ones would ask for the time of day.
	f.SetCreationDate(time.Unix(0, 0).UTC())
	f.SetModificationDate(time.Unix(0, 0).UTC())
	return f
}

func sizeOf(fr layout.Frame) fpdf.SizeType {
	return fpdf.SizeType{Wd: float64(fr.W) * ptPerMm, Ht: float64(fr.H) * ptPerMm}
}

// sorted gives the signs in the order of their codes.
func sorted(signs map[rune]struct{}) string {
	all := make([]rune, 0, len(signs))
	for r := range signs {
		all = append(all, r)
	}
	slices.Sort(all)
	return string(all)
}

// subsetTag makes the six capitals that begin the name of a cut font, from the
// signs that it holds (ISO 32000-1, 9.6.4).
func subsetTag(signs string) string {
	sum := sha256.Sum256([]byte(signs))
	tag := make([]byte, 6)
	for i := range tag {
		tag[i] = 'A' + sum[i]%26
	}
	return string(tag)
}

// readNames finds the names in the first page's content: "BT /F… 1.00 Tf ET" for
// each font and "/I… Do Q" for each picture, in the order of the calls.
func (s *skeleton) readNames(faces []layout.Face, pictures [][sha256.Size]byte) error {
	_, content, _ := bytes.Cut(s.raw, []byte("\n4 0 obj\n"))
	for _, face := range faces {
		_, rest, ok := bytes.Cut(content, []byte("BT /F"))
		name, after, ok2 := bytes.Cut(rest, []byte(" 1.00 Tf ET\n"))
		if !ok || !ok2 {
			return fmt.Errorf("embed fonts: the PDF library gives %s no name", face)
		}
		s.fonts[face] = "F" + string(name)
		content = after
	}
	s.pictures = make(map[[sha256.Size]byte]string, len(pictures))
	for _, sum := range pictures {
		_, rest, ok := bytes.Cut(content, []byte(" cm /I"))
		name, after, ok2 := bytes.Cut(rest, []byte(" Do Q"))
		if !ok || !ok2 {
			return fmt.Errorf("embed pictures: the PDF library gives a picture no name")
		}
		s.pictures[sum] = "I" + string(name)
		content = after
	}
	return nil
}
