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
	told := root.Bool("version", false, "tell the version and end")
	if err := root.Parse(args); err != nil {
		return s.usage(err, rootUsage())
	}
	if *told {
		fmt.Fprint(stdout, version())
		return exitDone
	}
	if root.NArg() == 0 {
		fmt.Fprint(stderr, rootUsage())
		return exitUsage
	}
	name, rest := root.Arg(0), root.Args()[1:]
	if name == "help" {
		return help(rest, s)
	}
	c, ok := commandNamed(name)
	if !ok {
		return s.usage(fmt.Errorf("%q is not a command", name), "hint: the commands are "+andList(commandNames())+"\n")
	}
	return c.run(rest, s)
}

// help tells of the whole program, or of one command.
func help(args []string, s streams) int {
	if len(args) == 0 {
		fmt.Fprint(s.out, rootUsage())
		return exitDone
	}
	c, ok := commandNamed(args[0])
	if !ok {
		return s.usage(fmt.Errorf("%q is not a command", args[0]), "hint: the commands are "+andList(commandNames())+"\n")
	}
	return c.run([]string{"--help"}, s)
}

// A command is one word after the program's name: what it takes, what it does in a
// few words, the function that does it, what it says of itself, and its flags.
type command struct {
	name, takes, does string
	run               func(args []string, s streams) int
	usage             string
	flags             func(f *pflag.FlagSet)
}

// commands are all commands, in the order in which the usage shows them.
func commands() []command {
	return []command{
		{"new", "NAME", "a first definition, which passes check", newDefinition, newUsage, func(f *pflag.FlagSet) { new(newFlagSet).add(f) }},
		{"check", "FILE...", "what is wrong with a definition, or silence", check, checkUsage, func(f *pflag.FlagSet) { new(checkFlags).add(f) }},
		{"print", "FILE", "write the pack, the tags and the register", printPack, printUsage, func(f *pflag.FlagSet) { new(printFlags).add(f) }},
		{"fill", "FILE", "write the reassembly sheet with what was found", fill, fillUsage, func(f *pflag.FlagSet) { new(cameBackFlags).addFill(f) }},
		{"report", "FILE", "write what was found and left, for the history", history, historyUsage, func(f *pflag.FlagSet) { new(cameBackFlags).addReport(f) }},
		{"unpack", "PACK", "write the files that a pack was made from", unpack, unpackUsage, func(f *pflag.FlagSet) { new(unpackFlags).add(f) }},
		{"scan", "FILE CODE", "answer what a scanned tag stands for", scan, scanUsage, func(f *pflag.FlagSet) { new(scanFlags).add(f) }},
		{"compare", "OLD NEW", "what differs between two revisions, and what to do about tags and pages", compare, compareUsage, func(f *pflag.FlagSet) { new(compareFlags).add(f) }},
		{"watch", "FILE", "check and print again at each save", watch, watchUsage, func(f *pflag.FlagSet) { new(watchFlags).add(f) }},
		{"explain", "WORD...", "what a key, a problem or the letter of a mark means", explain, explainUsage, nil},
		{"schema", "[KIND]", "the JSON Schema by which editors complete and explain keys", schema, schemaUsage, nil},
		{"completion", "SHELL", "commands and flags, for bash, zsh, fish or PowerShell to complete", completion, completionUsage, nil},
		{"man", "", "the manual page", manPage, manUsage, nil},
	}
}

func commandNamed(name string) (command, bool) {
	for _, c := range commands() {
		if c.name == name {
			return c, true
		}
	}
	return command{}, false
}

func commandNames() []string {
	var names []string
	for _, c := range commands() {
		names = append(names, c.name)
	}
	return names
}

// flagSet is the flags of a command, none for some.
func (c command) flagSet(s streams) *pflag.FlagSet {
	f := newFlags(c.name, s)
	if c.flags != nil {
		c.flags(f)
	}
	return f
}

// rootUsage is what the program says of itself.
func rootUsage() string {
	var out strings.Builder
	out.WriteString("matchmark prints the paper for taking a machine apart and putting it back.\n\n")
	for _, c := range commands() {
		fmt.Fprintf(&out, "  matchmark %-18s %s\n", strings.TrimSpace(c.name+" "+c.takes), c.does)
	}
	out.WriteString("\n'matchmark help COMMAND' tells more; 'matchmark --version' which one this is.\n")
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
