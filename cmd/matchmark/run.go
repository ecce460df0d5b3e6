package main

import (
	"errors"
	"fmt"
	"io"
	"strings"

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
		return s.usage(err, rootUsage())
	}
	if root.NArg() == 0 {
		fmt.Fprint(stderr, rootUsage())
		return exitUsage
	}
	name, rest := root.Arg(0), root.Args()[1:]
	for _, c := range commands() {
		if c.name == name {
			return c.run(rest, s)
		}
	}
	if name == "help" {
		fmt.Fprint(stdout, rootUsage())
		return exitDone
	}
	var names []string
	for _, c := range commands() {
		names = append(names, c.name)
	}
	return s.usage(fmt.Errorf("%q is not a command", name), "hint: the commands are "+andList(names)+"\n")
}

// A command is one word after the program's name: what it takes, what it does in a
// few words, and the function that does it.
type command struct {
	name, takes, does string
	run               func(args []string, s streams) int
}

// commands are all commands, in the order in which the usage shows them.
func commands() []command {
	return []command{
		{"check", "FILE...", "what is wrong with a definition, or silence", check},
		{"print", "FILE", "write the pack, the tags and the register", printPack},
		{"explain", "WORD...", "what a key, a problem or the letter of a mark means", explain},
		{"fill", "FILE", "write the reassembly sheet with what was found", fill},
		{"report", "FILE", "write what was found and left, for the history", history},
	}
}

// rootUsage is what the program says of itself.
func rootUsage() string {
	var out strings.Builder
	out.WriteString("matchmark prints the paper for taking a machine apart and putting it back.\n\n")
	var more []string
	for _, c := range commands() {
		fmt.Fprintf(&out, "  matchmark %-18s %s\n", c.name+" "+c.takes, c.does)
		more = append(more, "'matchmark "+c.name+" --help'")
	}
	out.WriteString("\n" + andList(more) + " tell more.\n")
	return out.String()
}

// andList joins names with commas, and the last with "and".
func andList(names []string) string {
	n := len(names)
	if n < 2 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:n-1], ", ") + " and " + names[n-1]
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
