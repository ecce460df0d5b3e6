package main

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"
	"strconv"

	"github.com/spf13/pflag"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
)

const fillUsage = `usage: matchmark fill FILE --readings FILE... [flags]

Takes the definition and the readings that were typed from the paper into the file
that print wrote, and writes the reassembly sheet filled: what was found in its
boxes, sums, targets and shims worked out, what is out with what to do, and what is
still missing. What is to be written by hand stays blank. A row that may have been
misread is refused, with what to write; --draft prints all the same and leaves its
box blank.

`

// cameBackFlags are the flags of the commands that take readings back.
type cameBackFlags struct {
	inputFlags
	out, paper     string
	readings, last []string
	draft          bool
	spares         map[string]int
	since          sinceFlags
}

// addPrinted adds the flags that the pack was printed with and that are not read from its digest.
func (p *cameBackFlags) addPrinted(f *pflag.FlagSet) {
	f.StringToIntVar(&p.spares, "spares", nil, "blank tags, as given to print, as `hang=4,box=2,bag=6`")
	f.StringVar(&p.since.definition, "since", "", "the definition `OLD` that the change bars stand against, as given to print")
	f.StringVar(&p.since.job, "since-job", "", "the job `FILE` of the old revision, as given to print")
}

func (p *cameBackFlags) addFill(f *pflag.FlagSet) {
	f.StringArrayVar(&p.readings, "readings", nil, "read the values from `FILE`; several are of one outage")
	f.StringVar(&p.out, "out", "out", "write into `DIR`")
	p.inputFlags.add(f)
	f.StringArrayVar(&p.last, "last", nil, "the readings of an earlier outage, as given to print, from `FILE`")
	f.StringVar(&p.paper, "paper", "", "`PAPER` that the pack was printed on: a4 or letter; if not said, that of its digest in the readings")
	f.BoolVar(&p.draft, "draft", false, "print in spite of rows that are refused")
	p.addPrinted(f)
}

// fill writes the sheets that the readings which came back are printed on.
func fill(args []string, s streams) int {
	var p cameBackFlags
	flags := newFlags("fill", s)
	p.addFill(flags)
	if err := parse(flags, args); err != nil {
		return s.usage(err, fillUsage+flags.FlagUsages())
	}
	c, code := comeBack(flags.Args(), p, "fill", s)
	if c == nil {
		return code
	}
	o := templates.Options{Paper: c.paper, Pen: layout.Pen{Gloves: c.job.Site.Gloves}, Last: c.last, Duplex: c.duplex, Second: c.second, Since: c.since}
	faces := facesFor(c.job, &source.Problems{})
	paper := o
	o.Since = nil // no bars on what is printed filled
	if c.bare {
		paper.Last = nil
	}
	blank, _ := templates.Compose(c.job, paper, faces, nil)
	on, further := blank.Printed(c.pages)
	if o.Printed = on; further {
		fmt.Fprintln(s.err, "the paper has change bars, and more pages than without them: what stands before its first box, as the cautions, may lie on another page than is told; give --since as to print")
	}
	o.Filled = c.result
	pack, misfits := templates.Compose(c.job, o, faces, nil)
	if misfits.Errors() > 0 {
		report(s.err, misfits, c.job.Files)
		return exitProblems
	}
	pack.KeepFilled()
	var data bytes.Buffer
	if err := pdf.Write(&data, pack.Pages); err != nil {
		fmt.Fprintf(s.err, "error: %v\n", err)
		return exitFiles
	}
	path := c.stem(p.out) + "-filled.pdf"
	if err := writeAll([]output{{path: path, data: &data}}); err != nil {
		fmt.Fprintf(s.err, "error: %v\n", err)
		return exitFiles
	}
	fmt.Fprintf(s.out, "%s: %s, %s of %s filled, %s\n", path, counted(len(pack.Pages.Pages), "page"), strconv.Itoa(c.result.Values.Boxes()), countedBoxes(len(c.job.Blanks())), c.out())
	return code
}

// A returned job is one with the readings that came back.
type returned struct {
	job    *job.Job
	paper  layout.Paper
	duplex bool           // printed on both sides
	since  *job.Since     // what its change bars stand beside, nil where that was not said
	second *job.Job       // in the second language of the paper, nil for none
	bare   bool           // nothing that was read last stood on the paper
	pages  map[string]int // of the boxes on the paper, as the readings tell them; nil where they are those of the definition
	result *filled.Result
	last   *filled.History
}

// stem is the beginning of the names of its files.
func (c *returned) stem(dir string) string {
	return filepath.Join(dir, fileName(c.job.Order.Number+"-"+c.job.Order.Revision))
}

// out counts what is out of limits, and apart from it what can be mended and what was found
// out and is set later on the job.
func (c *returned) out() string {
	out, mend, later := 0, 0, 0
	for _, v := range c.result.Verdicts {
		switch {
		case v.Outcome == filled.Mend:
			mend++
		case v.SetLater() != nil:
			later++
		case v.Bad():
			out++
		}
	}
	text := fmt.Sprintf("%d out of limits", out)
	if mend > 0 {
		text += fmt.Sprintf(", %d to be mended", mend)
	}
	if later > 0 {
		text += fmt.Sprintf(", and %d more found out and set later", later)
	}
	return text
}

// comeBack loads the definition, reads the values and works them out. Where it is nil
// the exit code says why; else the code is that for when all is written.
func comeBack(args []string, p cameBackFlags, name string, s streams) (*returned, int) {
	if len(args) == 0 {
		return nil, s.usage(fmt.Errorf("%s takes a definition", name), "hint: matchmark "+name+" FILE --readings FILE\n")
	}
	p.readings = append(p.readings, args[1:]...) // --readings a.csv b.csv
	if len(p.readings) == 0 {
		return nil, s.usage(errors.New("no file of readings"), "hint: matchmark "+name+" FILE --readings FILE\n")
	}
	if _, err := paperNamed(p.paper); err != nil {
		return nil, s.usage(err, "hint: --paper a4 or --paper letter\n")
	}
	disk := disk{stdin: s.in}
	in := p.inputs(args[0])
	in.Last = inputNames(p.last)
	spares, err := (&tagFlags{spares: p.spares}).blanks()
	if err != nil {
		return nil, s.usage(err, "")
	}
	in.Spares = spares
	jb, problems := packs.Load(disk, in)
	if problems.Errors() > 0 {
		report(s.err, problems, jb.Files)
		return nil, exitFor(problems)
	}
	paper, err := paperNamed(cmp.Or(p.paper, jb.Site.Paper))
	if err != nil {
		return nil, s.usage(err, "")
	}
	without := jb
	if len(in.Last) > 0 { // they need not have stood on the paper that came back
		plain := in
		plain.Last = nil
		without, _ = packs.Load(disk, plain)
		jb.AlsoOf(without)
	}
	jb.PrintAs(job.Printing{Letter: paper == layout.Letter})
	c := &returned{job: jb, paper: paper}
	files, told := c.files(disk, inputNames(p.readings), without)
	if no := c.asPrinted(disk, in, files, p); no.Errors() > 0 {
		report(s.err, no, jb.Files)
		return nil, exitFor(no)
	}
	var earlier source.Problems
	c.last, earlier = lastTime(jb, p.last)
	values, conflicts := filled.Merge(files)
	c.result = filled.Work(jb, values)
	last, late := c.last.Before(values)
	c.last, earlier = last, append(earlier, late...)
	told = append(append(append(told, conflicts...), c.result.Problems...), earlier...)
	told.Sort()
	report(s.err, told, jb.Files)
	if told.Errors() > 0 && (!p.draft || exitFor(told) == exitFiles) {
		return nil, exitFor(told)
	}
	return c, exitDone
}

// files reads the files of readings; without is the job without what was read last.
func (c *returned) files(disk fs.FS, names []string, without *job.Job) (files []*filled.File, told source.Problems) {
	for _, name := range names {
		data, no := source.Read(disk, name)
		if told = append(told, no...); len(no) > 0 {
			continue
		}
		c.job.Files[name] = data
		f := filled.Read(name, data, c.job)
		told, files = append(told, f.Told...), append(files, f)
		c.bare = c.bare || without.SameContent(f.Pack)
	}
	return files, told
}

// inputNames are the names under which files on the command line are read.
func inputNames(args []string) []string {
	var out []string
	for _, a := range args {
		out = append(out, inputName(a))
	}
	return out
}

// lastTime reads the files of earlier outages, which Load has taken in. What stands in
// them is history: what is wrong there is told and left out, and stops nothing. Nil where
// there is none.
func lastTime(jb *job.Job, last []string) (*filled.History, source.Problems) {
	if len(last) == 0 {
		return nil, nil
	}
	var told source.Problems
	var files []*filled.File
	for _, name := range inputNames(last) {
		data, there := jb.Files[name]
		if !there {
			continue // told by Load
		}
		f := filled.Read(name, data, jb)
		if told = append(told, f.Unsaid(jb)...); !f.Other {
			files = append(files, f)
		}
		for _, p := range f.Told {
			if f.Other && p.Code != "other-machine" {
				continue // of a file that is left out nothing else is said
			}
			if p.Code == "other-job" || p.Code == "other-revision" || p.Code == "other-pack" {
				continue // an earlier outage is another job
			}
			p.Severity = source.Warning
			told = append(told, p)
		}
	}
	if len(files) == 0 {
		return nil, told
	}
	return filled.NewHistory(jb, files), told
}
