package pdf

import (
	"bytes"
	"compress/zlib"
	"crypto/md5"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"regexp"
	"strconv"
	"unicode/utf16"

	"matchmark/layout"
)

// mostAttached is how many bytes one attached file may have: more than any that the
// program reads. It bounds what a forged file can make of a few bytes.
const mostAttached = 8 << 20

// ErrForeign says that a file is not as Write leaves it: no PDF, cut short, or written
// anew by another program.
var ErrForeign = errors.New("this is no PDF as it was printed: it is of another program, or was saved by one")

var (
	rootEntry = regexp.MustCompile(`/Root (\d+) 0 R`)
	afEntry   = regexp.MustCompile(`/AF \[([ 0-9R]*)\]`)
	reference = regexp.MustCompile(`(\d+) 0 R`)
	ufEntry   = regexp.MustCompile(`/UF <FEFF([0-9A-F]*)>`)
	descEntry = regexp.MustCompile(`/Desc <FEFF([0-9A-F]*)>`)
	efEntry   = regexp.MustCompile(`/EF <</F (\d+) 0 R`)
	typeEntry = regexp.MustCompile(`/Subtype /([A-Za-z.+-]+)#2F([A-Za-z.+-]+)`)
	sumEntry  = regexp.MustCompile(`/CheckSum <([0-9a-f]{32})>`)
	lenEntry  = regexp.MustCompile(`/Length (\d+)>>\nstream\n`)
)

// Attached gives the files inside a document that Write has painted, byte for byte. A
// document of another program is refused with ErrForeign.
func Attached(file []byte) ([]layout.Attachment, error) {
	object, err := objectsOf(file)
	if err != nil {
		return nil, err
	}
	trailer := file[max(0, len(file)-1024):]
	m := rootEntry.FindSubmatch(trailer)
	if m == nil {
		return nil, ErrForeign
	}
	list := afEntry.FindSubmatch(object(m[1]))
	if list == nil {
		return nil, nil
	}
	var out []layout.Attachment
	for _, ref := range reference.FindAllSubmatch(list[1], -1) {
		a, err := readAttached(object, object(ref[1]))
		if err != nil {
			return nil, err
		}
		out = append(out, a)
	}
	return out, nil
}

// readAttached reads one file by the object that names it.
func readAttached(object func([]byte) []byte, spec []byte) (a layout.Attachment, err error) {
	name, what, ef := ufEntry.FindSubmatch(spec), descEntry.FindSubmatch(spec), efEntry.FindSubmatch(spec)
	if name == nil || what == nil || ef == nil {
		return a, ErrForeign
	}
	a = layout.Attachment{Name: fromUTF16(name[1]), What: fromUTF16(what[1]), Origin: bytes.Contains(spec, []byte("/AFRelationship /Source"))}
	if !plainName(a.Name) {
		return a, fmt.Errorf("%w: a file inside is called %q", ErrForeign, a.Name)
	}
	body := object(ef[1])
	at := lenEntry.FindSubmatchIndex(body)
	if at == nil {
		return a, ErrForeign
	}
	if t := typeEntry.FindSubmatch(body[:at[0]]); t != nil {
		a.Type = string(t[1]) + "/" + string(t[2])
	}
	n, err := strconv.Atoi(string(body[at[2]:at[3]]))
	if err != nil || n > len(body)-at[1] {
		return a, ErrForeign
	}
	z, err := zlib.NewReader(bytes.NewReader(body[at[1] : at[1]+n]))
	if err != nil {
		return a, fmt.Errorf("%w: %s is damaged", ErrForeign, a.Name)
	}
	if a.Data, err = io.ReadAll(io.LimitReader(z, mostAttached+1)); err != nil || len(a.Data) > mostAttached {
		return a, fmt.Errorf("%w: %s is damaged, or too large", ErrForeign, a.Name)
	}
	sum := sumEntry.FindSubmatch(body[:at[0]])
	if sum == nil || string(sum[1]) != fmt.Sprintf("%x", md5.Sum(a.Data)) {
		return a, fmt.Errorf("%w: %s is damaged", ErrForeign, a.Name)
	}
	return a, nil
}

// objectsOf reads the cross references of a file, and gives what finds the bytes from an
// object's number on to the end of the file; nil for one that is not there.
func objectsOf(file []byte) (func(number []byte) []byte, error) {
	start, ok := numberAfter(file[max(0, len(file)-64):], "startxref\n")
	whole := bytes.HasPrefix(file, []byte("%PDF-")) && bytes.HasSuffix(bytes.TrimRight(file, "\r\n"), []byte("\n%%EOF"))
	if !ok || !whole || start >= len(file) || !bytes.HasPrefix(file[start:], []byte("xref\n0 ")) {
		return nil, ErrForeign
	}
	lines := bytes.SplitN(file[start:], []byte("\n"), 3)
	table := lines[2]
	return func(number []byte) []byte {
		n, err := strconv.Atoi(string(number))
		if err != nil || n < 1 || (n+1)*20 > len(table) {
			return nil
		}
		at, err := strconv.Atoi(string(table[n*20 : n*20+10]))
		if err != nil || at >= start {
			return nil
		}
		body := file[at:start]
		if !bytes.HasPrefix(body, append(bytes.Clone(number), " 0 obj\n"...)) {
			return nil
		}
		if end := bytes.Index(body, []byte("\nendobj\n")); end >= 0 && !bytes.Contains(body[:end], []byte("\nstream\n")) {
			body = body[:end]
		}
		return body
	}, nil
}

// fromUTF16 reads a text string in hexadecimal, without its mark.
func fromUTF16(digits []byte) string {
	raw := make([]byte, hex.DecodedLen(len(digits)))
	n, err := hex.Decode(raw, digits)
	if err != nil {
		return ""
	}
	var units []uint16
	for i := 0; i+1 < n; i += 2 {
		units = append(units, uint16(raw[i])<<8|uint16(raw[i+1]))
	}
	return string(utf16.Decode(units))
}
