package pdf

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
)

// finish takes the library's file apart, gives the pages their content, and
// writes anew all that comes behind the last font. The library's own ending stamps the time of day, counts no outline
// entries, aims bookmarks by the height of the last page, cannot name itself by
// its title, and has no identifier; none of that can be set through its calls.
//
// The library writes objects one after the other, the document information and
// the catalogue last, and a plain table of cross references; that much is relied
// on and checked.
func finish(s *skeleton, d *layout.Doc, contents [][]byte, tags *tags) ([]byte, error) {
	t, err := takeApart(s, contents)
	if err != nil {
		return nil, fmt.Errorf("finish the file: %w", err)
	}
	out := t.body
	var at []int // offsets of the objects that are added, from t.next on
	object := func(body []byte) int {
		n := t.next + len(at)
		at = append(at, len(out))
		out = fmt.Appendf(out, "%d 0 obj\n%s\nendobj\n", n, body)
		return n
	}
	root := addOutline(d, t.next, func(body []byte) { object(body) })
	keep, err := archive(d, object)
	if err != nil {
		return nil, err
	}
	keep += tags.write(t.next+len(at), func(body []byte) { object(body) })
	info := object(information(d))
	catalog := object(catalogue(d, root, keep))

	xref := len(out)
	out = fmt.Appendf(out, "xref\n0 %d\n0000000000 65535 f \n", t.next+len(at))
	for _, o := range t.offsets {
		out = fmt.Appendf(out, "%010d 00000 n \n", o)
	}
	for _, o := range at {
		out = fmt.Appendf(out, "%010d 00000 n \n", o)
	}
	// The identifier is made of the content, so that the same document has the
	// same one.
	id := sha256.Sum256(out)
	return fmt.Appendf(out, "trailer\n<</Size %d /Root %d 0 R /Info %d 0 R /ID [<%x> <%x>]>>\nstartxref\n%d\n%%%%EOF\n",
		t.next+len(at), catalog, info, id[:16], id[:16], xref), nil
}

// header begins the file: the version that knows the printing preferences, and
// four bytes that tell mail programs that this is not text.
const header = "%PDF-1.7\n%\xe2\xe3\xcf\xd3\n"

// parts is a file without its end.
type parts struct {
	body    []byte // header and objects
	offsets []int  // of objects 1 to next-1
	next    int    // number of the first object to be added
}

// takeApart copies all objects before the document information behind a new
// header, the content of each page put in place of the library's and the fonts
// named as subsets.
func takeApart(s *skeleton, contents [][]byte) (parts, error) {
	size := len(s.raw)
	for _, c := range contents {
		size += len(c) + 128
	}
	p := parts{body: make([]byte, 0, size)}
	places, info, err := objects(s.raw)
	if err != nil {
		return p, err
	}
	p.next = info
	p.offsets = make([]int, info-1)
	p.body = append(p.body, header...)
	names := strings.NewReplacer(s.renamed...)
	for i, o := range places {
		if o.number == info {
			return p, nil
		}
		p.offsets[o.number-1] = len(p.body)
		if page := o.number/2 - 2; page >= 0 && page < len(contents) && o.number == pageObject(page)+1 {
			c := contents[page]
			p.body = fmt.Appendf(p.body, "%d 0 obj\n<</Filter /FlateDecode /Length %d>>\nstream\n", o.number, len(c))
			p.body = append(append(p.body, c...), "\nendstream\nendobj\n"...)
			continue
		}
		object := s.raw[o.at:places[i+1].at]
		if page := (o.number - 3) / 2; o.number == pageObject(page) && page < len(contents) {
			object = bytes.Replace(object, []byte("/Type /Page\n"), fmt.Appendf(nil, "/Type /Page /StructParents %d\n", page), 1)
			// Links are printed, which changes nothing on paper: ISO 19005-3, 6.3.2.
			object = bytes.ReplaceAll(object, []byte("/Subtype /Link "), []byte("/Subtype /Link /F 4 "))
		}
		if bytes.Contains(object, []byte("/utf8")) && !bytes.Contains(object, []byte("\nstream\n")) {
			object = []byte(names.Replace(string(object)))
		}
		p.body = append(p.body, object...)
	}
	return p, fmt.Errorf("no document information")
}

// place is where an object begins.
type place struct{ number, at int }

// objects lists the file's objects in the order in which they are written, up to
// the catalogue, the cross references as the last, and the number of the document
// information.
func objects(raw []byte) (os []place, info int, err error) {
	tail := raw[max(0, len(raw)-512):]
	start, ok := numberAfter(tail, "startxref\n")
	if !ok || start >= len(raw) || !bytes.HasPrefix(raw[start:], []byte("xref\n")) {
		return nil, 0, fmt.Errorf("no cross references")
	}
	if info, ok = numberAfter(tail, "/Info "); !ok {
		return nil, 0, fmt.Errorf("no document information")
	}
	// "xref", "0 N", the free entry, then one line an object.
	lines := bytes.Split(raw[start:], []byte("\n"))
	for n := 1; n <= info; n++ {
		if n+2 >= len(lines) || len(lines[n+2]) < 10 {
			return nil, 0, fmt.Errorf("object %d has no place", n)
		}
		at, err := strconv.Atoi(string(lines[n+2][:10]))
		if err != nil || at <= 0 || at >= start {
			return nil, 0, fmt.Errorf("object %d has no place", n)
		}
		os = append(os, place{n, at})
	}
	os = append(os, place{0, start})
	slices.SortFunc(os, func(a, b place) int { return a.at - b.at })
	return os, info, nil
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

// producer names the program in the file.
const producer = "matchmark"

// information is the document's title and dates.
func information(d *layout.Doc) []byte {
	b := []byte("<</Producer ")
	b = appendUTF16(b, producer)
	for _, e := range []struct{ key, value string }{
		{"Title", d.Title}, {"Subject", d.Subject}, {"Author", d.Author},
	} {
		if e.value != "" {
			b = appendUTF16(fmt.Appendf(b, " /%s ", e.key), e.value)
		}
	}
	if d.Date != "" {
		day := strings.ReplaceAll(d.Date, "-", "")
		b = fmt.Appendf(b, " /CreationDate (D:%s000000Z) /ModDate (D:%s000000Z)", day, day)
	}
	return append(b, ">>"...)
}

// catalogue is the root of the file. Printing without scaling is asked for,
// because the write-in boxes and the check bar count in millimetres.
func catalogue(d *layout.Doc, outline int, keep string) []byte {
	b := []byte("<</Type /Catalog /Pages 1 0 R")
	if d.Lang != "" {
		b = fmt.Appendf(b, " /Lang (%s)", d.Lang)
	}
	sides := "Simplex"
	if d.BothSides {
		sides = "DuplexFlipLongEdge"
	}
	b = append(b, " /ViewerPreferences <</DisplayDocTitle true /PrintScaling /None /Duplex /"+sides+">>"...)
	if labels := pageLabels(d); labels != "" {
		b = append(b, labels...)
	}
	if outline > 0 {
		b = fmt.Appendf(b, " /Outlines %d 0 R /PageMode /UseOutlines", outline)
	}
	return append(append(b, keep...), ">>"...)
}

// pageLabels makes a viewer count pages as the paper does, when only some sheets
// of a pack are in the file. Empty when both agree anyway.
func pageLabels(d *layout.Doc) string {
	var b strings.Builder
	same := true
	for i, f := range d.Pages {
		if f.Number == 0 {
			return ""
		}
		same = same && f.Number == i+1
		if i == 0 || f.Number != d.Pages[i-1].Number+1 {
			fmt.Fprintf(&b, " %d <</S /D /St %d>>", i, f.Number)
		}
	}
	if same {
		return ""
	}
	return " /PageLabels <</Nums [" + b.String() + "]>>"
}
