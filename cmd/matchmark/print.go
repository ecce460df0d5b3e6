package main

import (
	"cmp"
	"errors"
	"fmt"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
)

// printPack checks one definition and writes its three files.
func printPack(args []string, s streams) int {
	var p printFlags
	var g tagFlags
	flags := newFlags("print", s)
	p.add(flags)
	g.add(flags)
	if err := flags.Parse(args); err != nil {
		return s.usage(err, printUsage+flags.FlagUsages())
	}
	if flags.NArg() != 1 {
		return s.usage(errors.New("print takes one file"), "hint: matchmark print FILE [--out DIR]\n")
	}
	if _, err := paperNamed(p.paper); err != nil {
		return s.usage(err, "hint: --paper a4 or --paper letter\n")
	}
	spares, err := g.blanks()
	if err != nil {
		return s.usage(err, "")
	}
	jb, problems := packs.Load(disk{stdin: s.in}, packs.Inputs{Definition: inputName(flags.Arg(0)), Job: *p.job, Site: *p.site, Last: inputNames(p.last), Spares: spares})
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
	if o.Tags, err = g.options(jb); err != nil {
		return s.usage(err, "")
	}
	if g.test {
		return writeTestPages(templates.TestPages(o), p.out, s)
	}
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
	w := writing{pack: pack, jb: jb, boxes: boxes, stem: stemOf(jb, &p), part: len(p.sheets)+len(p.marks) > 0, utf8: g.utf8}
	if !g.replace && !w.part {
		if err := w.wouldReplace(); err != nil {
			fmt.Fprintf(s.err, "error: %v\nhint: raise the revision of the job, print into another folder with --out, or say --replace\n", err)
			return exitProblems
		}
	}
	return w.write(s)
}

// countedBoxes is counted for boxes, which have another plural.
func countedBoxes(n int) string {
	if n == 1 {
		return "1 box"
	}
	return fmt.Sprintf("%d boxes", n)
}
