package main

import (
	"fmt"
	"strings"

	"github.com/spf13/pflag"

	"matchmark/layout"
)

const checkUsage = `usage: matchmark check FILE... [--job FILE] [--site FILE] [--order] [--json|--sarif]

Lists all problems of each definition, composed on A4 and on Letter, one after
the other by their place; says nothing when there are none. With --order it
shows the order of work as well.

`

const printUsage = `usage: matchmark print FILE [flags]

Checks the definition, then writes four files named after the job and its
revision: the pack (PDF), the tags (PDF), the register of tags (CSV) and the file
in which the readings come back (CSV). With --out - the pack alone goes to
standard output, or the tags with --sheets tags.

`

// newFlags is an empty flag set that reports errors instead of ending the
// program, and keeps flags in the order they are added.
func newFlags(name string, s streams) *pflag.FlagSet {
	f := pflag.NewFlagSet(name, pflag.ContinueOnError)
	f.SortFlags = false
	f.Usage = func() {}
	f.SetOutput(s.err)
	return f
}

// inputFlags are the files that go with a definition.
type inputFlags struct {
	job, site string
	language  language
}

func (i *inputFlags) add(f *pflag.FlagSet) {
	f.StringVar(&i.job, "job", "", "take number, revision, tag, options and the like from `FILE`")
	f.StringVar(&i.site, "site", "", "take what holds for all jobs of the site from `FILE`; matchmark-site.yaml beside the definition if it is there")
	f.Var(&i.language, "language", "the language of the paper, one of de, en, es, fr, pl; `LANGUAGE` of the site if not said, else en")
}

// checkFlags are the flags of the check command.
type checkFlags struct {
	inputFlags
	order, json, sarif bool
}

func (c *checkFlags) add(f *pflag.FlagSet) {
	c.inputFlags.add(f)
	f.BoolVar(&c.order, "order", false, "show the order of work: what binds each step, and which may be moved")
	f.BoolVar(&c.json, "json", false, "write the problems for programs, one object of JSON a line")
	f.BoolVar(&c.sarif, "sarif", false, "write the problems as SARIF 2.1.0, which forges and editors show")
}

// printFlags are the flags of the print command.
type printFlags struct {
	own map[string]bool // how the names of the files begin that watch has printed itself; nil of print

	inputFlags
	out, paper    string
	sheets, marks []string
	last          []string
	second        language
	jobs, shard   string
	draft, duplex bool
	since         sinceFlags
	tags          tagFlags
}

// usualOut is the folder that packs are written into where none is named.
const usualOut = "out"

func (p *printFlags) add(f *pflag.FlagSet) {
	f.StringVar(&p.out, "out", usualOut, "write into `DIR`, or with - the pack to standard output")
	p.inputFlags.add(f)
	f.StringVar(&p.paper, "paper", "", "`PAPER` to print on: a4 or letter; a4 if the site file does not say")
	f.BoolVar(&p.draft, "draft", false, "print in spite of errors, with DRAFT across each page")
	f.StringArrayVar(&p.last, "last", nil, "print what was read last beside the boxes, from `FILE` of an earlier outage; may be given again")
	f.Var(&p.second, "second", "print what is done, cautions and holds small in this second `LANGUAGE` too")
	f.BoolVar(&p.duplex, "duplex", false, "for paper printed on both sides: sections of work begin on the right")
	p.since.add(f)
	p.tags.add(f)
	f.StringVar(&p.jobs, "jobs", "", "print a whole outage: a job for each row of a `CSV`, or for each job file of a folder")
	f.StringVar(&p.shard, "shard", "", "with --jobs, print only the third of eight equal shares: `3/8`")
	f.StringSliceVar(&p.sheets, "sheets", nil, "print only the sheets of these `NAMES`, crew for those of the mechanics; page numbers stay")
	f.StringSliceVar(&p.marks, "marks", nil, "print only the tags of these `MARKS`; tag numbers stay")
}

// paperNamed finds a paper by its name.
func paperNamed(name string) (layout.Paper, error) {
	switch strings.ToLower(name) {
	case "a4", "":
		return layout.A4, nil
	case "letter":
		return layout.Letter, nil
	}
	return layout.Paper{}, fmt.Errorf("--paper %s is not known", name)
}
