package main

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/keep"
	"matchmark/packs/source"
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
	if p.jobs != "" {
		return p.outage(flags.Arg(0), s)
	}
	if p.shard != "" {
		return s.usage(errors.New("--shard is a share of --jobs"), "hint: --jobs CSV --shard 3/8\n")
	}
	_, code := p.print(p.inputs(flags.Arg(0)), s)
	return code
}

// print makes and writes one pack; the job tells which files it was read from.
func (p *printFlags) print(in packs.Inputs, s streams) (*job.Job, int) {
	made, problems := p.make(disk{stdin: s.in}, in)
	report(s.err, problems, made.job.Files)
	if made.pack == nil {
		return made.job, exitFor(problems)
	}
	if err := made.pack.Keep(p.sheets, p.marks); err != nil {
		return made.job, s.usage(err, "")
	}
	if p.out == "-" {
		return made.job, made.stream(s)
	}
	return made.job, made.write(p.out, s)
}

// A made is a job with its pack, nil where an error stands in the way.
type made struct {
	job   *job.Job
	pack  *templates.Pack
	boxes map[string]int // the pages of the boxes of the whole pack
}

// make loads and composes one definition.
func (p *printFlags) make(files fs.FS, in packs.Inputs) (made, source.Problems) {
	in.Last = inputNames(p.last)
	jb, problems := packs.Load(files, in)
	if problems.Errors() > 0 && (!p.draft || exitFor(problems) == exitFiles) {
		return made{job: jb}, problems
	}
	last, earlier := lastTime(jb, p.last)
	problems = append(problems, earlier...)
	paper, err := paperNamed(cmp.Or(p.paper, jb.Site.Paper))
	if err != nil {
		return made{job: jb}, problems // the site file's paper has been looked at when it was read
	}
	o := templates.Options{Paper: paper, Pen: layout.Pen{Gloves: jb.Site.Gloves}, Last: last, Duplex: p.duplex}
	if p.second != "" {
		in.Language = string(p.second)
		second, told := packs.Load(files, in)
		if told.Errors() > 0 {
			return made{job: second}, told
		}
		o.Second = second
	}
	pack, misfits := templates.Compose(jb, o, pdf.NewFaces(), problems)
	problems = append(problems, misfits...)
	problems.Sort()
	if problems.Errors() > 0 {
		if !p.draft {
			return made{job: jb}, problems
		}
		// Set once more, with the word across each page and all problems in front.
		o.Draft = true
		pack, _ = templates.Compose(jb, o, pdf.NewFaces(), problems)
	}
	return made{jb, pack, pack.Boxes()}, problems
}

// stream writes one document to standard output: the pages, or the tags if no page is
// left by a selection.
func (m made) stream(s streams) int {
	doc := m.pack.Pages
	if len(doc.Pages) == 0 {
		doc = m.pack.Tags
	}
	var data bytes.Buffer
	err := pdf.Write(&data, doc)
	if err == nil {
		_, err = s.out.Write(data.Bytes())
	}
	if err != nil {
		fmt.Fprintf(s.err, "error: %v\n", err)
		return exitFiles
	}
	return exitDone
}

// write paints the pack in memory, writes all files into a folder and says what was
// written. A document with no page left by a selection is not written.
func (m made) write(dir string, s streams) int {
	files, said, err := m.paint(filepath.Join(dir, fileName(m.job.Order.Number+"-"+m.job.Order.Revision)))
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

// paint makes the files of a pack, whose names begin with stem, the pack last; said
// tells of each in a line.
func (m made) paint(stem string) (files []output, said []string, err error) {
	add := func(name string, doc *layout.Doc, what string) {
		if len(doc.Pages) == 0 || err != nil {
			return
		}
		var data bytes.Buffer
		if err = pdf.Write(&data, doc); err == nil {
			files = append(files, output{path: stem + name, data: &data})
			said = append(said, stem+name+": "+what)
		}
	}
	add("-tags.pdf", m.pack.Tags, fmt.Sprintf("%s on %s", counted(m.pack.TagCount, "tag"), counted(len(m.pack.Tags.Pages), "page")))
	var register, readings bytes.Buffer
	err = errors.Join(err, keep.WriteRegister(&register, m.job), filled.WriteBlank(&readings, m.job, m.boxes))
	files = append(files, output{path: stem + "-register.csv", data: &register})
	said = append(said, stem+"-register.csv: "+counted(len(m.job.Tags), "line"))
	files = append(files, output{path: stem + "-readings.csv", data: &readings})
	said = append(said, stem+"-readings.csv: "+countedBoxes(len(m.job.Blanks())))
	add("-pack.pdf", m.pack.Pages, counted(len(m.pack.Pages.Pages), "page"))
	return files, said, err
}

// countedBoxes is counted for boxes, which have another plural.
func countedBoxes(n int) string {
	if n == 1 {
		return "1 box"
	}
	return fmt.Sprintf("%d boxes", n)
}
