package main

import (
	"errors"
	"fmt"
	"io"

	"matchmark/packs/def"
)

const schemaUsage = `usage: matchmark schema [definition|job|site]

Writes the JSON Schema (2020-12) of definitions, or of job or site files, with
which editors complete keys, explain them and mark wrong ones. Save it as
matchmark.schema.json, matchmark-job.schema.json or matchmark-site.schema.json
beside the files, and begin each with a line like

  # yaml-language-server: $schema=matchmark.schema.json

`

// schema writes the schema of a kind of file.
func schema(args []string, s streams) int {
	flags := newFlags("schema", s)
	if err := parse(flags, args); err != nil {
		return s.usage(err, schemaUsage)
	}
	if flags.NArg() > 1 {
		return s.usage(errors.New("schema takes one kind of file"), "hint: matchmark schema definition, job or site\n")
	}
	write := map[string]func(io.Writer) error{"": def.Schema, "definition": def.Schema, "job": def.JobSchema, "site": def.SiteSchema}[flags.Arg(0)]
	if write == nil {
		return s.usage(fmt.Errorf("%q is no kind of file", flags.Arg(0)), "hint: matchmark schema definition, job or site\n")
	}
	if err := write(s.out); err != nil {
		fmt.Fprintf(s.err, "error: %v\n", err)
		return exitFiles
	}
	return exitDone
}
