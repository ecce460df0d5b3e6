package main

import (
	"errors"
	"fmt"
	"io"

	"github.com/spf13/pflag"
)

// Exit codes.
const (
	exitDone     = 0
	exitProblems = 1
	exitUsage    = 2
	exitFiles    = 3
)

// streams are the three streams of a run. Results go to out, talk to err: lower
// case and without a full stop; wrong usage says "error:" and then "hint:" with
// what was probably meant.
type streams struct {
	in       io.Reader
	out, err io.Writer
}

// run is the whole program: arguments and streams in, exit code out.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	s := streams{in: stdin, out: stdout, err: stderr}
	root := newFlags("matchmark", s)
	root.SetInterspersed(false)
	if err := root.Parse(args); err != nil {
		return s.usage(err, rootUsage)
	}
	if root.NArg() == 0 {
		fmt.Fprint(stderr, rootUsage)
		return exitUsage
	}
	name, rest := root.Arg(0), root.Args()[1:]
	switch name {
	case "check":
		return check(rest, s)
	case "print":
		return printPack(rest, s)
	case "help":
		fmt.Fprint(stdout, rootUsage)
		return exitDone
	}
	return s.usage(fmt.Errorf("%q is not a command", name), "hint: the commands are check and print\n")
}

// usage answers a wrong call, or a call for help.
func (s streams) usage(err error, hint string) int {
	if errors.Is(err, pflag.ErrHelp) {
		fmt.Fprint(s.out, hint)
		return exitDone
	}
	fmt.Fprintf(s.err, "error: %v\n%s", err, hint)
	return exitUsage
}
