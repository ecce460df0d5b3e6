package pdf

import (
	"fmt"
	"strings"

	"matchmark/layout"
)

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
