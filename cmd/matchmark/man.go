package main

import (
	"fmt"
	"strings"

	"github.com/spf13/pflag"
)

const manUsage = `usage: matchmark man

Writes the manual page: matchmark man > matchmark.1; man ./matchmark.1

`

// manPage writes the manual page, in the macros of man(7), of the table of commands.
func manPage(args []string, s streams) int {
	flags := newFlags("man", s)
	if err := parse(flags, args); err != nil {
		return s.usage(err, manUsage)
	}
	var b strings.Builder
	b.WriteString(".TH MATCHMARK 1\n.SH NAME\nmatchmark \\- prints the paper for taking a machine apart and putting it back\n.SH SYNOPSIS\n")
	for _, c := range commands() {
		fmt.Fprintf(&b, ".B matchmark %s\n.RI \"%s\"\n.br\n", c.name, roff(c.takes))
	}
	b.WriteString(".SH COMMANDS\n")
	for _, c := range commands() {
		_, text, _ := strings.Cut(c.usage, "\n\n") // its first line is the synopsis
		fmt.Fprintf(&b, ".SS %s\n%s\n", c.name, paragraphs(text))
		c.flagSet(s).VisitAll(func(f *pflag.Flag) {
			kind, does := pflag.UnquoteUsage(f)
			fmt.Fprintf(&b, ".TP\n.BI \\-\\-%s \" %s\"\n%s\n", roff(f.Name), roff(kind), roff(does))
		})
	}
	b.WriteString(".SH EXIT STATUS\n0 done, 1 the definition has problems, 2 wrong usage, 3 a file could not be read or written.\n")
	b.WriteString(".SH ENVIRONMENT\nNO_COLOR, if set to anything, takes the colours off the problems on a terminal.\n")
	b.WriteString(".SH FILES\n" + siteBeside + " beside a definition, or in a folder above it, is its site file.\n")
	fmt.Fprint(s.out, b.String())
	return exitDone
}

// roff is a text as troff takes it: no line begins a request, and a dash stays one.
func roff(s string) string {
	s = strings.NewReplacer(`\`, `\e`, "-", `\-`).Replace(s)
	if strings.HasPrefix(s, ".") || strings.HasPrefix(s, "'") {
		s = `\&` + s
	}
	return s
}

// paragraphs is a text of several: what is set in stands as it is.
func paragraphs(text string) string {
	var out []string
	for _, p := range strings.Split(strings.TrimSpace(text), "\n\n") {
		var lines []string
		for _, l := range strings.Split(p, "\n") {
			lines = append(lines, roff(strings.TrimRight(l, " ")))
		}
		joined := strings.Join(lines, "\n")
		if strings.HasPrefix(p, "  ") {
			joined = ".nf\n" + joined + "\n.fi"
		}
		out = append(out, joined)
	}
	return strings.Join(out, "\n.PP\n")
}
