package pdf

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"slices"
	"strconv"
	"time"

	"github.com/go-pdf/fpdf"

	"matchmark/layout"
)

// The library is good at one more thing that is long to write: storing pictures. It learns
// what to store only from its own calls. So it is given one page, where every picture is set
// once. What it writes of pictures is taken out of its file, and the rest thrown away. A
// document that is written behind another and needs nothing else shares its pictures, and each
// font of it: to read and to cut a font costs more than some pages.
//
// Painting through the library would cost four times as much and bring in its
// faults: round rectangles that leave a clip open, lengths that are no numbers
// written as words, a compressor made anew for every page.

// store is what is stored of some faces, and for what needs.
type store struct {
	faces    *Faces
	holds    needs
	fonts    [layout.NumFaces]piece
	pictures map[[sha256.Size]byte]piece // by the digest of their content
	group    string                      // what each page says of pictures that let shine through
}

// A piece is a font or a picture: objects one behind the other, the first of which has the
// number first. They name none but each other.
type piece struct {
	first   int
	objects [][]byte
}

// storeOf embeds the fonts, and lets the library store the pictures, unless those of a document
// before will do.
func storeOf(n needs, faces *Faces, before []*store, pk *packer) (*store, error) {
	s := &store{faces: faces, holds: n}
	for face, signs := range n.signs {
		if signs == nil || s.shareFont(face, before) {
			continue
		}
		p, err := faces.embedded(layout.Face(face), sorted(signs), pk)
		if err != nil {
			return nil, fmt.Errorf("embed the font %s: it %w", layout.Face(face), err)
		}
		s.fonts[face] = p
	}
	if len(n.pictures) == 0 || s.sharePictures(before) {
		return s, nil
	}
	if err := s.storePictures(); err != nil {
		return nil, fmt.Errorf("embed pictures: %w", err)
	}
	return s, nil
}

// shareFont takes the font of a face from a store that has all signs needed of it, if there is one.
func (s *store) shareFont(face int, before []*store) bool {
	for _, b := range before {
		if b.faces == s.faces && b.holds.haveSigns(face, s.holds.signs[face]) {
			s.fonts[face], s.holds.signs[face] = b.fonts[face], b.holds.signs[face]
			return true
		}
	}
	return false
}

// sharePictures takes the pictures from a store that has all of them, if there is one.
func (s *store) sharePictures(before []*store) bool {
	for _, b := range before {
		if b.holds.havePictures(s.holds.digests) {
			s.pictures, s.group = b.pictures, b.group
			return true
		}
	}
	return false
}

// storePictures lets the library store the pictures.
func (s *store) storePictures() error {
	s.pictures = make(map[[sha256.Size]byte]piece, len(s.holds.digests))
	f := newFile()
	for i, p := range s.holds.pictures {
		name := fmt.Sprintf("%x", s.holds.digests[i])
		opt := fpdf.ImageOptions{ImageType: p.Kind}
		f.RegisterImageOptionsReader(name, opt, bytes.NewReader(p.Data))
		f.ImageOptions(name, 0, 0, 1, 1, false, opt, 0, "")
	}
	var raw bytes.Buffer
	if err := f.Output(&raw); err != nil {
		return err
	}
	return s.takeApart(raw.Bytes(), s.holds.digests)
}

// newFile starts the library's file, with its one page. Its unit is the point, its margins
// and page breaks are off.
func newFile() *fpdf.Fpdf {
	size := fpdf.SizeType{Wd: 595, Ht: 842} // any will do
	f := fpdf.NewCustom(&fpdf.InitType{OrientationStr: "P", UnitStr: "pt", Size: size})
	f.SetMargins(0, 0, 0)
	f.SetAutoPageBreak(false, 0)
	// The names of pictures must be readable.
	f.SetCompression(false)
	// Pictures are kept in a map and would be written in any order.
	f.SetCatalogSort(true)
	// The dates are cut off again, but unset ones would ask for the time of day.
	f.SetCreationDate(time.Unix(0, 0).UTC())
	f.SetModificationDate(time.Unix(0, 0).UTC())
	f.AddPage()
	return f
}

// takeApart finds the pictures in the library's file. The library writes the page as object 3
// and its content as 4, then the objects of each picture one behind the other, and the
// resources, which name the first of each, behind them; that much is relied on and checked.
func (s *store) takeApart(raw []byte, pictures [][sha256.Size]byte) error {
	objects, err := objectsIn(raw)
	if err != nil {
		return err
	}
	if bytes.Contains(objects[3], []byte("\n/Group ")) {
		s.group = " /Group <</Type /Group /S /Transparency /CS /DeviceRGB>>"
	}
	picture := make([]int, len(pictures))
	content := objects[4]
	for i := range pictures { // set in this order
		_, rest, _ := bytes.Cut(content, []byte(" cm /I"))
		name, after, _ := bytes.Cut(rest, []byte(" Do Q"))
		picture[i], _ = numberAfter(objects[2], "/I"+string(name)+" ")
		content = after
	}
	firsts := slices.Sorted(slices.Values(picture))
	if firsts[0] < 5 {
		return fmt.Errorf("the PDF library has not stored one of them")
	}
	for i, sum := range pictures {
		end := len(objects)
		if k, _ := slices.BinarySearch(firsts, picture[i]+1); k < len(firsts) {
			end = firsts[k]
		}
		s.pictures[sum] = piece{picture[i], objects[picture[i]:end]}
	}
	return nil
}

// streamMark parts the entries of an object from its data.
const streamMark = "\nstream\n"

// objectsIn gives the objects of the library's file by their numbers, up to the document
// information; 0 is none.
func objectsIn(raw []byte) (objects [][]byte, err error) {
	tail := raw[max(0, len(raw)-512):]
	start, ok := numberAfter(tail, "startxref\n")
	if !ok || start >= len(raw) || !bytes.HasPrefix(raw[start:], []byte("xref\n")) {
		return nil, fmt.Errorf("no cross references")
	}
	info, ok := numberAfter(tail, "/Info ")
	if !ok || info < 5 {
		return nil, fmt.Errorf("no document information")
	}
	// "xref", "0 N", the free entry, then one line an object.
	lines := bytes.Split(raw[start:], []byte("\n"))
	places := make([]int, info+1)
	for n := range places {
		if n+2 >= len(lines) || len(lines[n+2]) < 10 {
			return nil, fmt.Errorf("object %d has no place", n)
		}
		places[n], err = strconv.Atoi(string(lines[n+2][:10]))
		if err != nil || places[n] >= start {
			return nil, fmt.Errorf("object %d has no place", n)
		}
	}
	objects = make([][]byte, info)
	inOrder := slices.Sorted(slices.Values(places))
	for n := 1; n < info; n++ {
		next, _ := slices.BinarySearch(inOrder, places[n]+1)
		body, begins := bytes.CutPrefix(raw[places[n]:inOrder[next]], fmt.Appendf(nil, "%d 0 obj\n", n))
		body, ends := bytes.CutSuffix(body, []byte("\nendobj\n"))
		if !begins || !ends {
			return nil, fmt.Errorf("object %d is not at its place", n)
		}
		objects[n] = body
	}
	return objects, nil
}

// numberAfter reads the whole number behind the last place of key.
func numberAfter(b []byte, key string) (int, bool) {
	i := bytes.LastIndex(b, []byte(key))
	if i < 0 {
		return 0, false
	}
	b = b[i+len(key):]
	n := 0
	for n < len(b) && b[n] >= '0' && b[n] <= '9' {
		n++
	}
	v, err := strconv.Atoi(string(b[:n]))
	return v, err == nil
}

// appendMoved writes an object of a piece, its references moved on by so many numbers.
func appendMoved(b, object []byte, by int) []byte {
	head := object
	if i := bytes.Index(object, []byte(streamMark)); i >= 0 {
		head = object[:i]
	}
	data := object[len(head):]
	for {
		end := bytes.Index(head, []byte(" 0 R"))
		if end < 0 {
			return append(append(b, head...), data...)
		}
		from := end
		for from > 0 && head[from-1] >= '0' && head[from-1] <= '9' {
			from--
		}
		n, _ := strconv.Atoi(string(head[from:end])) // figures alone
		b = strconv.AppendInt(append(b, head[:from]...), int64(n+by), 10)
		b, head = append(b, " 0 R"...), head[end+len(" 0 R"):]
	}
}
