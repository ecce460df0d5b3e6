package main

import (
	"bytes"
	"fmt"

	"github.com/spf13/pflag"

	"matchmark/layout/pdf"
	"matchmark/packs/filled"
	"matchmark/packs/source"
	"matchmark/templates"
)

const historyUsage = `usage: matchmark report FILE --readings FILE... [--last FILE]... [flags]

Takes the definition and the readings that were typed from the paper, and writes
what was found and left for the history of the machine, as PDF and as CSV: the
verdict on every reading, how far it went since it was left last time, how much
that is in 1000 running hours, and a plot of each that has three outages and more.

`

func (p *cameBackFlags) addReport(f *pflag.FlagSet) {
	f.StringArrayVar(&p.readings, "readings", nil, "read the values from `FILE`; several are of one outage")
	f.StringArrayVar(&p.last, "last", nil, "the readings of an earlier outage from `FILE`; may be given again")
	f.StringVar(&p.out, "out", "out", "write into `DIR`")
	p.inputFlags.add(f)
	f.StringVar(&p.paper, "paper", "", "`PAPER` to print on: a4 or letter; if not said, that of the digest in the readings")
	f.BoolVar(&p.draft, "draft", false, "write in spite of rows that are refused")
	p.addPrinted(f)
}

// history writes the report of what was found and left.
func history(args []string, s streams) int {
	var p cameBackFlags
	flags := newFlags("report", s)
	p.addReport(flags)
	if err := parse(flags, args); err != nil {
		return s.usage(err, historyUsage+flags.FlagUsages())
	}
	c, code := comeBack(flags.Args(), p, "report", s)
	if c == nil {
		return code
	}
	doc, misfits := templates.ComposeReport(c.job, templates.Options{Paper: c.paper, Filled: c.result, Last: c.last}, facesFor(c.job, &source.Problems{}))
	if misfits.Errors() > 0 {
		report(s.err, misfits, c.job.Files)
		return exitProblems
	}
	var table, paper bytes.Buffer
	err := filled.WriteReport(&table, c.result, c.last)
	if err == nil {
		err = pdf.Write(&paper, doc)
	}
	stem := c.stem(p.out) + "-report"
	if err == nil {
		err = writeAll([]output{{path: stem + ".csv", data: &table}, {path: stem + ".pdf", data: &paper}})
	}
	if err != nil {
		fmt.Fprintf(s.err, "error: %v\n", err)
		return exitFiles
	}
	fmt.Fprintf(s.out, "%s: %s\n%s: %s\n", stem+".csv", counted(len(c.result.Lines(c.last)), "line"), stem+".pdf", counted(len(doc.Pages), "page"))
	return code
}
