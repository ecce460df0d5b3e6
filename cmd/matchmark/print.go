package main

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"io"
	"io/fs"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
)

// printPack checks one definition and writes its three files.
func printPack(args []string, s streams) int {
	var p printFlags
	flags := newFlags("print", s)
	p.add(flags)
	if err := parse(flags, args); err != nil {
		return s.usage(err, printUsage+flags.FlagUsages())
	}
	if flags.NArg() != 1 {
		return s.usage(errors.New("print takes one file"), "hint: matchmark print FILE [--out DIR]\n")
	}
	if _, err := paperNamed(p.paper); err != nil {
		return s.usage(err, "hint: --paper a4 or --paper letter\n")
	}
	if err := p.usable(); err != nil {
		return s.usage(err, "")
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

// usable tells of flags that are out of their range or have no meaning together.
func (p *printFlags) usable() error {
	if err := p.together(); err != nil {
		return err
	}
	_, err := p.tags.blanks()
	return err
}

// print makes and writes one pack; the job tells which files it was read from.
func (p *printFlags) print(in packs.Inputs, s streams) (*job.Job, int) {
	made, problems := p.make(disk{stdin: s.in}, in)
	report(s.err, problems, made.job.Files)
	if made.pack == nil {
		return made.job, exitFor(problems)
	}
	if err := p.suits(made, s.err); err != nil {
		return made.job, s.usage(err, "")
	}
	if p.out == "-" {
		return made.job, p.stream(made, s)
	}
	return made.job, p.write(made, s)
}

// suits tells of flags that have no meaning for the job that was made, and keeps of its pack what
// they choose; what is doubtful goes to talk.
func (p *printFlags) suits(m made, talk io.Writer) error {
	if string(p.second) == cmp.Or(m.job.Language, "en") {
		return fmt.Errorf("--second %s: the paper is in that language already", p.second)
	}
	if _, err := p.tagOptions(m.job); err != nil {
		return err
	}
	if err := m.pack.Keep(p.sheets, p.marks); err != nil {
		return err
	}
	if m.since != nil && m.since.Was == m.job.Order.Revision {
		fmt.Fprintf(talk, "both are revision %s: a new revision needs a letter of its own\n", m.since.Was)
	}
	return nil
}

// A made is a job with its pack, nil where an error stands in the way.
type made struct {
	job   *job.Job
	pack  *templates.Pack
	boxes map[string]int // the pages of the boxes of the whole pack
	since *job.Since     // what has changed, nil where no old revision is named
}

// make loads and composes one definition.
func (p *printFlags) make(files fs.FS, in packs.Inputs) (made, source.Problems) {
	in.Last = inputNames(p.last)
	in.Spares, _ = p.tags.blanks() // looked at when the flags were read
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
	o := templates.Options{Paper: paper, Pen: layout.Pen{Gloves: jb.Site.Gloves}, Last: last, Duplex: p.duplex, Stamps: templates.AsksForStamps(p.sheets)}
	if p.second != "" {
		also := in
		also.Language = string(p.second)
		second, told := packs.Load(files, also)
		if told.Errors() > 0 {
			return made{job: second}, told
		}
		o.Second = second
	}
	since, old, told := p.since.changes(files, in, jb)
	if told.Errors() > 0 {
		return made{job: old}, told
	}
	o.Since = since
	jb.PrintAs(p.printing(paper, since, old))
	o.Tags, _ = p.tagOptions(jb) // what is wrong of them is told before anything is written
	faces := facesFor(jb, &problems)
	pack, misfits := compose(jb, o, faces, problems)
	problems = append(problems, misfits...)
	problems.Sort()
	if problems.Errors() > 0 {
		if !p.draft {
			return made{job: jb}, problems
		}
		// Set once more, with the word across each page and all problems in front.
		o.Draft = true
		pack, _ = templates.Compose(jb, o, faces, problems)
	}
	_, row := files.(rowFS)
	pack.Pages.Attached = attached(jb, in, row, p.again())
	return made{job: jb, pack: pack, boxes: pack.Boxes(), since: since}, problems
}

// stream writes one document to standard output: the pages, or the tags if no page is
// left by a selection. A whole pack is held against the one in the usual folder: it may
// have been given out, and what comes out here takes its place.
func (p *printFlags) stream(m made, s streams) int {
	usual := *p
	usual.out = usualOut
	if err := usual.refused(m.writing(stemOf(m.job, &usual))); err != nil {
		return replaceRefused(s, err)
	}
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

// write writes all files of a pack, or the test pages of its stocks, and says what was written.
func (p *printFlags) write(m made, s streams) int {
	tags, err := p.tagOptions(m.job)
	if err != nil {
		return s.usage(err, "")
	}
	if p.tags.test {
		paper, _ := paperNamed(cmp.Or(p.paper, m.job.Site.Paper)) // looked at when it was read
		return writeTestPages(templates.TestPages(templates.Options{Paper: paper, Tags: tags}), p.out, s)
	}
	w := m.writing(stemOf(m.job, p))
	w.part, w.utf8 = p.partial(), p.tags.utf8
	if err := p.refused(w); err != nil {
		return replaceRefused(s, err)
	}
	code := w.write(s)
	if code == exitDone && p.own != nil {
		p.own[w.stem] = true
	}
	return code
}

// partial reports whether only some sheets or tags are printed.
func (p *printFlags) partial() bool { return len(p.sheets)+len(p.marks) > 0 }

// refused tells why a whole pack is not written: one of the same revision and another
// content is there, and nobody has said that it may be replaced.
func (p *printFlags) refused(w *writing) error {
	if p.tags.replace || p.partial() || p.own[w.stem] {
		return nil
	}
	return w.wouldReplace()
}

// replaceRefused tells what stands in the way, and what to do.
func replaceRefused(s streams, err error) int {
	fmt.Fprintf(s.err, "error: %v\nhint: raise the revision of the job, print into another folder with --out, or say --replace\n", err)
	return exitProblems
}

// writing is a pack on its way to files whose names begin with stem.
func (m made) writing(stem string) *writing {
	return &writing{pack: m.pack, jb: m.job, boxes: m.boxes, stem: stem}
}

// countedBoxes is counted for boxes, which have another plural.
func countedBoxes(n int) string {
	if n == 1 {
		return "1 box"
	}
	return fmt.Sprintf("%d boxes", n)
}
