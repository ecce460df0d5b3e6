package main

import (
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"sync"

	"matchmark/layout"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
)

// check lists the problems of every file, composed on both papers.
func check(args []string, s streams) int {
	var c checkFlags
	flags := newFlags("check", s)
	c.add(flags)
	if err := parse(flags, args); err != nil {
		return s.usage(err, checkUsage+flags.FlagUsages())
	}
	switch {
	case flags.NArg() == 0:
		return s.usage(errors.New("no file to check"), "hint: matchmark check FILE...\n")
	case c.json && c.sarif || c.order && (c.json || c.sarif):
		return s.usage(errors.New("--json, --sarif and --order are three ways to answer"), "hint: take one of them\n")
	}
	code := exitDone
	var told []checked
	for _, arg := range flags.Args() {
		loaded, problems := proof(disk{stdin: s.in}, c.inputs(arg))
		code = max(code, exitFor(problems))
		told = append(told, checked{problems, loaded.Files})
		if c.json || c.sarif {
			continue
		}
		report(s.out, problems, loaded.Files)
		if c.order && exitFor(problems) != exitFiles {
			if err := templates.WriteOrder(s.out, loaded); err != nil {
				fmt.Fprintf(s.err, "error: %v\n", err)
				return exitFiles
			}
		}
	}
	if err := c.write(s, told); err != nil {
		fmt.Fprintf(s.err, "error: %v\n", err)
		return exitFiles
	}
	return code
}

// write tells the problems to a program, if one asked.
func (c *checkFlags) write(s streams, told []checked) error {
	switch {
	case c.json:
		return writeJSON(s.out, told)
	case c.sarif:
		return writeSARIF(s.out, told)
	}
	return nil
}

// proof loads one definition and, when it has no error, composes it on both
// papers, at once where it is not too large: all that can be told of it.
func proof(files fs.FS, in packs.Inputs) (*job.Job, source.Problems) {
	jb, problems := packs.Load(files, in)
	if problems.Errors() > 0 {
		return jb, problems
	}
	faces := facesFor(jb, &problems)
	on := func(p layout.Paper) source.Problems {
		_, misfits := compose(jb, templates.Options{Paper: p, Pen: layout.Pen{Gloves: jb.Site.Gloves}}, faces, problems)
		return misfits
	}
	tooMany := func(p source.Problem) bool { return p.Code == "too-many" }
	var onA4, onLetter source.Problems
	if large(jb) {
		onLetter = on(layout.Letter) // the shorter paper first, which has more pages
		if slices.ContainsFunc(onLetter, tooMany) {
			problems = append(problems, onLetter...)
			problems.Sort()
			return jb, problems
		}
		onA4 = on(layout.A4)
	} else {
		var letter sync.WaitGroup
		letter.Go(func() { onLetter = on(layout.Letter) })
		onA4 = on(layout.A4)
		letter.Wait()
	}
	if slices.ContainsFunc(onA4, tooMany) {
		problems = append(problems, onA4...) // a hundred pages more or less on Letter
	} else {
		problems = append(problems, onBoth(onA4, onLetter)...)
	}
	problems.Sort()
	return jb, problems
}

// large reports whether a job is so large that its packs for both papers would take too
// much memory at one time.
func large(jb *job.Job) bool {
	n := len(jb.Dims)
	for _, s := range jb.Sections {
		n += len(s.Steps)
	}
	return n > mostAtOnce
}

// mostAtOnce is how many steps and dimensions a job may have together for that, more than
// any starter has.
const mostAtOnce = 1000

// onBoth joins the problems of the two papers: one that both have is told once,
// one of a single paper says which.
func onBoth(a4, letter source.Problems) source.Problems {
	type same struct {
		at   source.Pos
		code string
	}
	places := func(ps source.Problems) map[same]bool {
		m := map[same]bool{}
		for _, p := range ps {
			m[same{p.Pos, p.Code}] = true
		}
		return m
	}
	var out source.Problems
	onA4, onLetter := places(a4), places(letter)
	for _, p := range a4 {
		if !onLetter[same{p.Pos, p.Code}] {
			p.Message += ", on A4"
		}
		out = append(out, p)
	}
	for _, p := range letter {
		if !onA4[same{p.Pos, p.Code}] {
			p.Message += ", on Letter"
			out = append(out, p)
		}
	}
	return out
}
