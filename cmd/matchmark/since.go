package main

import (
	"cmp"
	"io/fs"

	"github.com/spf13/pflag"

	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/revise"
	"matchmark/packs/source"
)

// sinceFlags name the revision before, against which print puts change bars.
type sinceFlags struct{ definition, job string }

func (g *sinceFlags) add(f *pflag.FlagSet) {
	f.StringVar(&g.definition, "since", "", "put a bar and the letter of the revision beside what has changed since the definition `OLD`")
	f.StringVar(&g.job, "since-job", "", "the job `FILE` of the old revision; that of --job if not said")
}

// changes are what differs from the revision before; nil where none is named. The problems
// are those of the old files.
func (g *sinceFlags) changes(files fs.FS, in packs.Inputs, now *job.Job) (*job.Since, *job.Job, source.Problems) {
	if g.definition == "" && g.job == "" {
		return nil, nil, nil
	}
	in.Definition, in.Job = cmp.Or(g.definition, in.Definition), cmp.Or(g.job, in.Job)
	old, problems := packs.Load(files, in)
	if problems.Errors() > 0 {
		return nil, old, problems
	}
	if a, b := old.Order.Number, now.Order.Number; a != b {
		problems = append(problems, source.Problem{Pos: source.Pos{File: cmp.Or(in.Job, in.Definition)}, Severity: source.Error, Code: "other-job",
			Message: "change bars stand between two revisions of one job, and this is job " + a + ", not " + b, Help: []string{"give the old revision of " + b + ", or its job file with --since-job"}})
		return nil, old, problems
	}
	return revise.Since(old, now), old, nil
}
