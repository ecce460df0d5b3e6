package main

import (
	"errors"
	"io/fs"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/source"
	"matchmark/templates"
)

// check lists the problems of every file, composed on both papers.
func check(args []string, s streams) int {
	flags := newFlags("check", s)
	job := flags.String("job", "", "take number, revision, tag and the like from `FILE`")
	if err := flags.Parse(args); err != nil {
		return s.usage(err, checkUsage+flags.FlagUsages())
	}
	if flags.NArg() == 0 {
		return s.usage(errors.New("no file to check"), "hint: matchmark check FILE...\n")
	}
	code := exitDone
	for _, arg := range flags.Args() {
		loaded, problems := proof(disk{stdin: s.in}, packs.Inputs{Definition: inputName(arg), Job: *job})
		report(s.out, problems, loaded.Files)
		code = max(code, exitFor(problems))
	}
	return code
}

// proof loads one definition and, when it has no error, composes it on both
// papers: all that can be told of it.
func proof(files fs.FS, in packs.Inputs) (*packs.Job, source.Problems) {
	job, problems := packs.Load(files, in)
	if problems.Errors() > 0 {
		return job, problems
	}
	found := problems
	for _, paper := range []layout.Paper{layout.A4, layout.Letter} {
		_, misfits := templates.Compose(job, templates.Options{Paper: paper}, pdf.NewFaces(), found)
		problems = append(problems, misfits...)
	}
	problems.Sort()
	return job, problems
}

// load reads one definition given on the command line.
func load(arg, job string, s streams) (*packs.Job, source.Problems) {
	return packs.Load(disk{stdin: s.in}, packs.Inputs{Definition: inputName(arg), Job: job})
}
