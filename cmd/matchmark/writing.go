package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"unicode/utf16"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/keep"
	"matchmark/templates"
)

// A writing is a pack on its way to the disk.
type writing struct {
	pack  *templates.Pack
	jb    *job.Job
	boxes map[string]int // the pages of the boxes of the whole pack
	stem  string
	part  bool // only some sheets or tags
	utf8  bool // the register begins with the mark of UTF-8

	files []output
	said  []string
}

// most of a chosen name in the name of a file.
const mostChosen = 40

// stemOf is how the names of the files begin: number and revision; of a part of the pack
// also what was chosen, and of a draft that it is one, so that neither takes the place of
// the whole.
func stemOf(jb *job.Job, p *printFlags) string {
	return filepath.Join(p.out, fileName(jb.Order.Number+"-"+jb.Order.Revision+p.chosen()))
}

// chosen is what the name of a file says of a draft and of a part of a pack.
func (p *printFlags) chosen() (name string) {
	if p.draft {
		name = "-draft"
	}
	if chosen := append(append([]string{}, p.sheets...), p.marks...); len(chosen) > 0 {
		part := strings.Join(chosen, "+")
		if len(part) > mostChosen {
			part = part[:mostChosen]
		}
		name += "-only-" + strings.ReplaceAll(part, "/", "-")
	}
	return name
}

// add takes one file that is complete in memory.
func (w *writing) add(name string, data *bytes.Buffer, what string) {
	w.files = append(w.files, output{path: w.stem + name, data: data})
	w.said = append(w.said, fmt.Sprintf("%s: %s", w.stem+name, what))
}

// paint adds a document as PDF, if a selection has left a page of it.
func (w *writing) paint(name string, doc *layout.Doc, what string) error {
	if len(doc.Pages) == 0 {
		return nil
	}
	var data bytes.Buffer
	if err := pdf.Write(&data, doc); err != nil {
		return err
	}
	w.add(name, &data, what)
	return nil
}

// collect makes all files in memory, the pack last. A part of a pack has no lists of the
// whole.
func (w *writing) collect() error {
	pages := func(n int) string {
		return fmt.Sprintf("%s on %s", counted(w.pack.TagCount, "tag"), counted(n, "page"))
	}
	if err := w.paint("-tags.pdf", w.pack.Tags, pages(len(w.pack.Tags.Pages))); err != nil {
		return err
	}
	for _, r := range w.pack.Rolls {
		if err := w.paint("-tags-"+fileName(r.Name)+".pdf", r.Doc, counted(len(r.Doc.Pages), "page")); err != nil {
			return err
		}
	}
	if !w.part {
		var register, readings bytes.Buffer
		if err := keep.WriteRegister(&register, w.jb, w.utf8); err != nil {
			return err
		}
		w.add("-register.csv", &register, counted(len(w.jb.Tags), "line"))
		if err := filled.WriteBlank(&readings, w.jb, w.boxes); err != nil {
			return err
		}
		w.add("-readings.csv", &readings, countedBoxes(len(w.jb.Blanks())))
	}
	return w.paint("-pack.pdf", w.pack.Pages, counted(len(w.pack.Pages.Pages), "page"))
}

// write paints the pack in memory, writes all files and says what was written.
func (w *writing) write(s streams) int {
	err := w.collect()
	if err == nil {
		err = writeAll(w.files)
	}
	if err != nil {
		fmt.Fprintf(s.err, "error: %v\n", err)
		return exitFiles
	}
	for _, line := range w.said {
		fmt.Fprintln(s.out, line)
	}
	return exitDone
}

// wouldReplace tells of a pack of the same number and revision that is there already and
// was made from something else: its tags may hang, and its pages be filled in.
func (w *writing) wouldReplace() error {
	name := w.stem + "-pack.pdf"
	data, err := os.ReadFile(name)
	if err != nil || !bytes.HasPrefix(data, []byte("%PDF-")) {
		return nil // none is there, or writing tells what is wrong
	}
	if holdsText(data, w.jb.Digest) {
		return nil
	}
	return fmt.Errorf("%s is there with the same revision %s and another content: its digest is not %s", name, w.jb.Order.Revision, w.jb.Digest)
}

// holdsText reports whether a PDF has a text in its description: as it is, or as the
// UTF-16 in hexadecimal figures in which descriptions with other letters are written.
func holdsText(data []byte, text string) bool {
	var wide strings.Builder
	for _, u := range utf16.Encode([]rune(text)) {
		fmt.Fprintf(&wide, "%04X", u)
	}
	return bytes.Contains(data, []byte(text)) || bytes.Contains(data, []byte(wide.String()))
}

// writeTestPages writes a page of each stock with its outlines and rulers.
func writeTestPages(pages []templates.Roll, dir string, s streams) int {
	w := writing{stem: filepath.Join(dir, "test")}
	for _, r := range pages {
		if err := w.paint("-"+fileName(r.Name)+".pdf", r.Doc, "outlines and rulers: lay it on a sheet of labels against the light"); err != nil {
			fmt.Fprintf(s.err, "error: %v\n", err)
			return exitFiles
		}
	}
	if err := writeAll(w.files); err != nil {
		fmt.Fprintf(s.err, "error: %v\n", err)
		return exitFiles
	}
	for _, line := range w.said {
		fmt.Fprintln(s.out, line)
	}
	return exitDone
}
