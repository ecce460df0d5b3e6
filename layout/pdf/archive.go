package pdf

import (
	"crypto/md5"
	"encoding/xml"
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"matchmark/layout"
)

// What makes the file one for the archive: PDF/A-3, level B (ISO 19005-3:2012). Fonts are
// embedded as they are anyway; here come the metadata in XMP, which must say the same as
// the document information (6.6), the output intent, which says what the tones mean
// (6.2.3), and the files inside, each with what it is to the document (6.8).

// archive adds the objects and gives the entries of the catalogue that lead to them.
func archive(d *layout.Doc, object func([]byte) int, pk *packer) (string, error) {
	meta := object(streamOf("/Type /Metadata /Subtype /XML", metadata(d)))
	profile := object(streamOf("/N 3", sRGB()))
	intent := object(fmt.Appendf(nil, "<</Type /OutputIntent /S /GTS_PDFA1 /OutputConditionIdentifier (sRGB) /Info (sRGB IEC61966-2.1) /DestOutputProfile %d 0 R>>", profile))
	out := fmt.Sprintf(" /Metadata %d 0 R /OutputIntents [%d 0 R]", meta, intent)
	if len(d.Attached) == 0 {
		return out, nil
	}
	files := slices.SortedFunc(slices.Values(d.Attached), func(a, b layout.Attachment) int { return strings.Compare(a.Name, b.Name) })
	var names, all strings.Builder
	for i, a := range files {
		if !plainName(a.Name) || i > 0 && files[i-1].Name == a.Name {
			return "", fmt.Errorf("attach %q: the name is not plain, or stands twice", a.Name)
		}
		spec := attach(d, a, object, pk)
		fmt.Fprintf(&names, " %s %d 0 R", appendUTF16(nil, a.Name), spec)
		fmt.Fprintf(&all, " %d 0 R", spec)
	}
	return out + " /AF [" + all.String() + "] /Names <</EmbeddedFiles <</Names [" + names.String() + "]>>>>", nil
}

// attach adds one file and gives the object that names it.
func attach(d *layout.Doc, a layout.Attachment, object func([]byte) int, pk *packer) int {
	dates := ""
	if d.Date != "" {
		dates = " /ModDate (D:" + strings.ReplaceAll(d.Date, "-", "") + "000000Z)"
	}
	file := object(streamOf(fmt.Sprintf("/Type /EmbeddedFile /Subtype /%s /Filter /FlateDecode /Params <</Size %d /CheckSum <%x>%s>>",
		strings.ReplaceAll(a.Type, "/", "#2F"), len(a.Data), md5.Sum(a.Data), dates), pk.pack(a.Data)))
	relation := "Supplement"
	if a.Origin {
		relation = "Source"
	}
	b := fmt.Appendf(nil, "<</Type /Filespec /F (%s)", strings.Map(oldNameSign, a.Name))
	b = appendUTF16(append(b, " /UF "...), a.Name)
	b = appendUTF16(append(b, " /Desc "...), a.What)
	return object(fmt.Appendf(b, " /AFRelationship /%s /EF <</F %d 0 R /UF %d 0 R>>>>", relation, file, file))
}

// plainName reports whether a name is one of a file, or of one in a folder below, and never
// leads out of the folder that it is written to.
func plainName(s string) bool {
	return fs.ValidPath(s) && s != "." && !strings.ContainsAny(s, "\\:\x00") && checkText(s) == nil
}

// oldNameSign keeps what a name may have for programs that know no Unicode.
func oldNameSign(r rune) rune {
	if r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' || r == '.' || r == '-' {
		return r
	}
	return '_'
}

// streamOf is a stream object with some entries.
func streamOf(entries string, data []byte) []byte {
	b := fmt.Appendf(nil, "<<%s /Length %d>>\nstream\n", entries, len(data))
	return append(append(b, data...), "\nendstream"...)
}

// metadata is the document information in XMP (ISO 16684-1). It is not compressed, so
// that any program finds it.
func metadata(d *layout.Doc) []byte {
	var b strings.Builder
	text := func(format, s string) {
		if s == "" {
			return
		}
		var safe strings.Builder
		xml.EscapeText(&safe, []byte(s))
		fmt.Fprintf(&b, format, safe.String())
	}
	b.WriteString("<?xpacket begin=\"\ufeff\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n" +
		"<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">" +
		"<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\"" +
		" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\">" +
		"<pdfaid:part>3</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance><pdf:Producer>" + producer + "</pdf:Producer>")
	text("<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">%s</rdf:li></rdf:Alt></dc:title>", d.Title)
	text("<dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">%s</rdf:li></rdf:Alt></dc:description>", d.Subject)
	text("<dc:creator><rdf:Seq><rdf:li>%s</rdf:li></rdf:Seq></dc:creator>", d.Author)
	text("<xmp:CreateDate>%sT00:00:00Z</xmp:CreateDate>", d.Date)
	text("<xmp:ModifyDate>%sT00:00:00Z</xmp:ModifyDate>", d.Date)
	b.WriteString("</rdf:Description></rdf:RDF></x:xmpmeta>\n<?xpacket end=\"r\"?>")
	return []byte(b.String())
}
