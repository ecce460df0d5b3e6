package main

import (
	"errors"

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
		loaded, problems := load(arg, *job, s)
		if problems.Errors() == 0 {
			for _, paper := range []layout.Paper{layout.A4, layout.Letter} {
				_, misfits := templates.Compose(loaded, templates.Options{Paper: paper}, pdf.NewFaces(), problems)
				problems = append(problems, misfits...)
			}
			problems.Sort()
		}
		report(s.out, problems, loaded.Files)
		code = max(code, exitFor(problems))
	}
	return code
}

// load reads one definition given on the command line.
func load(arg, job string, s streams) (*packs.Job, source.Problems) {
	return packs.Load(disk{stdin: s.in}, packs.Inputs{Definition: inputName(arg), Job: job})
}
