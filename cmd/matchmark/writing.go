package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"slices"
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

// A paper is a document on its way to a file.
type paper struct {
	name string
	doc  *layout.Doc
	what string
	file []byte
}

// paintAll makes the PDF of each paper of which a selection has left a page.
func paintAll(papers []paper) ([]paper, error) {
	papers = slices.DeleteFunc(papers, func(p paper) bool { return len(p.doc.Pages) == 0 })
	docs := make([]*layout.Doc, len(papers))
	last := len(papers) - 1
	for i, p := range papers {
		docs[last-i] = p.doc // the pack comes first: its bytes don't hang on which tags are printed
	}
	files, err := pdf.WriteAll(docs...)
	for i := range files {
		papers[last-i].file = files[i]
	}
	return papers, err
}

// collect makes all files in memory, the pack last. A part of a pack has no lists of the
// whole.
func (w *writing) collect() error {
	pages := func(doc *layout.Doc) string { return counted(len(doc.Pages), "page") }
	pack := w.pack
	papers := []paper{{name: "-tags.pdf", doc: pack.Tags, what: counted(pack.TagCount, "tag") + " on " + pages(pack.Tags)}}
	for _, r := range pack.Rolls {
		papers = append(papers, paper{name: "-tags-" + fileName(r.Name) + ".pdf", doc: r.Doc, what: pages(r.Doc)})
	}
	papers, err := paintAll(append(papers, paper{name: "-pack.pdf", doc: pack.Pages, what: pages(pack.Pages)}))
	if err != nil {
		return err
	}
	for _, p := range papers {
		if p.doc == pack.Pages && !w.part {
			if err := w.lists(); err != nil {
				return err
			}
		}
		w.add(p.name, bytes.NewBuffer(p.file), p.what)
	}
	return nil
}

// lists adds the register, what is issued and the file for the readings.
func (w *writing) lists() error {
	var register, readings bytes.Buffer
	if err := keep.WriteRegister(&register, w.jb, w.utf8); err != nil {
		return err
	}
	w.add("-register.csv", &register, counted(len(w.jb.Tags), "line"))
	if n := keep.Issued(w.jb); n > 0 {
		var issued bytes.Buffer
		if err := keep.WriteIssued(&issued, w.jb, w.utf8); err != nil {
			return err
		}
		w.add("-issued.csv", &issued, counted(n, "line"))
	}
	if err := filled.WriteBlank(&readings, w.jb, w.boxes); err != nil {
		return err
	}
	w.add("-readings.csv", &readings, countedBoxes(len(w.jb.Blanks())))
	return nil
}

// write paints the pack in memory, writes all files and says what was written.
func (w *writing) write(s streams) int { return w.finish(w.collect(), s) }

// finish writes all files, unless something went wrong before, and says what was written.
func (w *writing) finish(err error, s streams) int {
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
	return fmt.Errorf("%s is there with the same revision %s and another digest than %s: it was made from something else, or printed on other paper or sides, with another second language or other change bars",
		name, w.jb.Order.Revision, w.jb.Digest)
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
	var papers []paper
	for _, r := range pages {
		papers = append(papers, paper{name: "-" + fileName(r.Name) + ".pdf", doc: r.Doc, what: "outlines and rulers: lay it on a sheet of labels against the light"})
	}
	papers, err := paintAll(papers)
	for _, p := range papers {
		w.add(p.name, bytes.NewBuffer(p.file), p.what)
	}
	return w.finish(err, s)
}
