package main

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/keep"
	"path/filepath"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
)

// printPack checks one definition and writes its three files.
func printPack(args []string, s streams) int {
	var p printFlags
	flags := newFlags("print", s)
	p.add(flags)
	if err := flags.Parse(args); err != nil {
		return s.usage(err, printUsage+flags.FlagUsages())
	}
	if flags.NArg() != 1 {
		return s.usage(errors.New("print takes one file"), "hint: matchmark print FILE [--out DIR]\n")
	}
	if _, err := paperNamed(p.paper); err != nil {
		return s.usage(err, "hint: --paper a4 or --paper letter\n")
	}
	jb, problems := packs.Load(disk{stdin: s.in}, packs.Inputs{Definition: inputName(flags.Arg(0)), Job: *p.job, Site: *p.site, Last: inputNames(p.last)})
	if problems.Errors() > 0 && (!p.draft || exitFor(problems) == exitFiles) {
		report(s.err, problems, jb.Files)
		return exitFor(problems)
	}
	last, earlier := lastTime(jb, p.last)
	problems = append(problems, earlier...)
	paper, err := paperNamed(cmp.Or(p.paper, jb.Site.Paper))
	if err != nil {
		return s.usage(err, "")
	}
	o := templates.Options{Paper: paper, Pen: layout.Pen{Gloves: jb.Site.Gloves}, Last: last}
	pack, misfits := templates.Compose(jb, o, pdf.NewFaces(), problems)
	problems = append(problems, misfits...)
	problems.Sort()
	report(s.err, problems, jb.Files)
	if problems.Errors() > 0 {
		if !p.draft {
			return exitFor(problems)
		}
		// Set once more, with the word across each page and all problems in front.
		o.Draft = true
		pack, _ = templates.Compose(jb, o, pdf.NewFaces(), problems)
	}
	boxes := pack.Boxes()
	if err := pack.Keep(p.sheets, p.marks); err != nil {
		return s.usage(err, "")
	}
	return writePack(pack, jb, boxes, p.out, s)
}

// writePack paints the pack in memory, writes all files and says what was written;
// boxes are the pages of the boxes of the whole pack. A document with no page left by a selection is not written.
func writePack(pack *templates.Pack, jb *job.Job, boxes map[string]int, dir string, s streams) int {
	stem := filepath.Join(dir, fileName(jb.Order.Number+"-"+jb.Order.Revision))
	var files []output
	var said []string
	paint := func(name string, doc *layout.Doc, what string) error {
		if len(doc.Pages) == 0 {
			return nil
		}
		var data bytes.Buffer
		if err := pdf.Write(&data, doc); err != nil {
			return err
		}
		files = append(files, output{path: stem + name, data: &data})
		said = append(said, fmt.Sprintf("%s: %s", stem+name, what))
		return nil
	}
	var register, readings bytes.Buffer
	err := errors.Join(
		keep.WriteRegister(&register, jb),
		filled.WriteBlank(&readings, jb, boxes),
		paint("-tags.pdf", pack.Tags, fmt.Sprintf("%s on %s", counted(pack.TagCount, "tag"), counted(len(pack.Tags.Pages), "page"))),
	)
	files = append(files, output{path: stem + "-register.csv", data: &register})
	said = append(said, fmt.Sprintf("%s: %s", stem+"-register.csv", counted(len(jb.Tags), "line")))
	files = append(files, output{path: stem + "-readings.csv", data: &readings})
	said = append(said, fmt.Sprintf("%s: %s", stem+"-readings.csv", countedBoxes(len(jb.Blanks()))))
	err = errors.Join(err, paint("-pack.pdf", pack.Pages, counted(len(pack.Pages.Pages), "page")))
	if err == nil {
		err = writeAll(files)
	}
	if err != nil {
		fmt.Fprintf(s.err, "error: %v\n", err)
		return exitFiles
	}
	for _, line := range said {
		fmt.Fprintln(s.out, line)
	}
	return exitDone
}

// countedBoxes is counted for boxes, which have another plural.
func countedBoxes(n int) string {
	if n == 1 {
		return "1 box"
	}
	return fmt.Sprintf("%d boxes", n)
}
