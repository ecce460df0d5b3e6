package main

import (
	"fmt"
	"strings"

	"github.com/spf13/pflag"

	"matchmark/layout"
)

const checkUsage = `usage: matchmark check FILE... [--job FILE] [--site FILE] [--order]

Lists all problems of each definition, composed on A4 and on Letter, one after
the other by their place; says nothing when there are none. With --order it
shows the order of work as well.

`

const printUsage = `usage: matchmark print FILE [flags]

Checks the definition, then writes four files named after the job and its
revision: the pack (PDF), the tags (PDF), the register of tags (CSV) and the file
in which the readings come back (CSV).

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

// inputFlags adds the files that go with a definition.
func inputFlags(f *pflag.FlagSet) (job, site *string) {
	job = f.String("job", "", "take number, revision, tag, options and the like from `FILE`")
	site = f.String("site", "", "take paper, roles, heavy mass, fire watch and gloves from `FILE`")
	return job, site
}

// printFlags are the flags of the print command.
type printFlags struct {
	out, paper    string
	job, site     *string
	sheets, marks []string
	last          []string
	draft         bool
}

func (p *printFlags) add(f *pflag.FlagSet) {
	f.StringVar(&p.out, "out", "out", "write into `DIR`")
	p.job, p.site = inputFlags(f)
	f.StringVar(&p.paper, "paper", "", "`PAPER` to print on: a4 or letter; a4 if the site file does not say")
	f.BoolVar(&p.draft, "draft", false, "print in spite of errors, with DRAFT across each page")
	f.StringArrayVar(&p.last, "last", nil, "print what was read last beside the boxes, from `FILE` of an earlier outage; may be given again")
	f.StringSliceVar(&p.sheets, "sheets", nil, "print only the sheets of these `NAMES`; page numbers stay")
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
