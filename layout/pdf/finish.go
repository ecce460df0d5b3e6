package pdf

import (
	"crypto/sha256"
	"fmt"
	"strconv"

	"matchmark/layout"
)

// The file around the content of the pages. The library's own has a page of its own, stamps
// the time of day, counts no outline entries, aims bookmarks by the height of the last page,
// cannot name itself by its title, and has no identifier; none of that can be set through
// its calls. So all but its fonts and pictures is written here.

// header begins the file: the version that knows the printing preferences, and
// four bytes that tell mail programs that this is not text.
const header = "%PDF-1.7\n%\xe2\xe3\xcf\xd3\n"

// A file is written object by object.
type file struct {
	out []byte
	at  []int // where each object begins, that with number 1 first
}

// next is the number of the next object.
func (f *file) next() int { return len(f.at) + 1 }

// begin begins the next object and gives its number.
func (f *file) begin() int {
	f.at = append(f.at, len(f.out))
	f.out = append(strconv.AppendInt(f.out, int64(len(f.at)), 10), " 0 obj\n"...)
	return len(f.at)
}

func (f *file) end() { f.out = append(f.out, "\nendobj\n"...) }

// object writes the next object and gives its number.
func (f *file) object(body []byte) int {
	n := f.begin()
	f.out = append(f.out, body...)
	f.end()
	return n
}

// close writes the cross references and the trailer.
func (f *file) close(catalog, info int) []byte {
	xref := len(f.out)
	f.out = fmt.Appendf(f.out, "xref\n0 %d\n0000000000 65535 f \n", f.next())
	for _, at := range f.at {
		f.out = fmt.Appendf(f.out, "%010d 00000 n \n", at)
	}
	// The identifier is made of the content, so that the same document has the
	// same one.
	id := sha256.Sum256(f.out)
	return fmt.Appendf(f.out, "trailer\n<</Size %d /Root %d 0 R /Info %d 0 R /ID [<%x> <%x>]>>\nstartxref\n%d\n%%%%EOF\n",
		f.next(), catalog, info, id[:16], id[:16], xref)
}

// finish writes the file: pages, fonts and pictures, and what leads to them.
func finish(d *layout.Doc, n needs, s *store, contents [][]byte, tags *tags, pk *packer) ([]byte, error) {
	// About what fonts, elements with their references, and pages take.
	size := 1<<17 + 128*len(tags.elements)
	for _, c := range contents {
		size += len(c) * 5 / 4
	}
	f := &file{out: append(make([]byte, 0, size), header...)}
	f.pages(d, s, contents)
	f.stored(n, s)
	root := addOutline(d, f.next(), func(body []byte) { f.object(body) })
	keep, err := archive(d, f.object, pk)
	if err != nil {
		return nil, err
	}
	keep += tags.write(f.next(), func(body []byte) { f.object(body) })
	info := f.object(information(d))
	return f.close(f.object(catalogue(d, root, keep)), info), nil
}

// resources is the number of the object that names fonts and pictures, behind that of the
// pages.
const resources = 2

// pageObject is the number of a page's object, pages counted from 0. Its content is behind
// it.
func pageObject(page int) int { return resources + 1 + 2*page }

// pages writes the list of pages, leaves room for the resources, and writes each page with
// its content.
func (f *file) pages(d *layout.Doc, s *store, contents [][]byte) {
	kids := []byte("<</Type /Pages /Kids [")
	for i := range d.Pages {
		kids = fmt.Appendf(kids, "%d 0 R ", pageObject(i))
	}
	f.object(fmt.Appendf(kids, "] /Count %d>>", len(d.Pages)))
	f.at = append(f.at, 0) // resources
	links := newLinks(d)
	for i, fr := range d.Pages {
		b := fmt.Appendf(nil, "<</Type /Page /StructParents %d /Parent 1 0 R /MediaBox [0 0 %.2f %.2f] /Resources %d 0 R",
			i, float64(fr.W)*ptPerMm, float64(fr.H)*ptPerMm, resources)
		b = links.of(b, fr)
		f.object(fmt.Appendf(b, "%s /Contents %d 0 R>>", s.group, pageObject(i)+1))
		f.begin()
		f.out = fmt.Appendf(f.out, "<</Filter /FlateDecode /Length %d>>%s", len(contents[i]), streamMark)
		f.out = append(append(f.out, contents[i]...), "\nendstream"...)
		f.end()
	}
}

// stored writes the fonts and pictures that the document sets, and the resources.
func (f *file) stored(n needs, s *store) {
	put := func(p piece) int {
		by := f.next() - p.first
		for _, o := range p.objects {
			f.begin()
			f.out = appendMoved(f.out, o, by)
			f.end()
		}
		return p.first + by
	}
	b := []byte("<</Font <<")
	for face, signs := range n.signs {
		if signs != nil {
			b = fmt.Appendf(b, "/%s %d 0 R ", fontName(layout.Face(face)), put(s.fonts[face]))
		}
	}
	b = append(b, ">> /XObject <<"...)
	for i, sum := range n.digests {
		b = fmt.Appendf(b, "/%s %d 0 R ", pictureName(i), put(s.pictures[sum]))
	}
	f.at[resources-1] = len(f.out)
	f.out = fmt.Appendf(f.out, "%d 0 obj\n%s>>>>", resources, b)
	f.end()
}

// fontName is what the content of a page calls a face, pictureName what it calls the i-th
// picture of its document.
func fontName(face layout.Face) string { return "F" + strconv.Itoa(int(face)+1) }
func pictureName(i int) string         { return "I" + strconv.Itoa(i+1) }

// links are the pages of a document by the numbers printed on them.
type links struct {
	pages []layout.Frame
	at    map[int]int
}

func newLinks(d *layout.Doc) links {
	l := links{d.Pages, map[int]int{}}
	for i, fr := range d.Pages {
		if fr.Number > 0 {
			l.at[fr.Number] = i
		}
	}
	return l
}

// of writes the links of a page, each to the top of another one. One to a page that the
// document has not is left out. Links are printed, which changes nothing on paper: ISO
// 19005-3, 6.3.2.
func (l links) of(b []byte, fr layout.Frame) []byte {
	pt := func(m layout.Mm) float64 { return float64(m) * ptPerMm }
	open := false
	for _, link := range fr.Links {
		to, ok := l.at[link.Page]
		if !ok {
			continue
		}
		if !open {
			b, open = append(b, " /Annots ["...), true
		}
		b = fmt.Appendf(b, "<</Type /Annot /Subtype /Link /F 4 /Rect [%.2f %.2f %.2f %.2f] /Border [0 0 0] /Dest [%d 0 R /XYZ 0 %.2f null]>>",
			pt(link.Left), pt(fr.H-link.Top), pt(link.Right), pt(fr.H-link.Bottom), pageObject(to), pt(l.pages[to].H))
	}
	if open {
		b = append(b, ']')
	}
	return b
}
