package main

import (
	"errors"
	"fmt"
	"strings"

	"matchmark/packs/codes"
	"matchmark/packs/def"
	"matchmark/packs/nearest"
)

const explainUsage = `usage: matchmark explain WORD...

Tells what a WORD means: a key of a definition, with an example; the code of a
problem, as check prints it in brackets, with its cause and its cure; or the
letter of a mark, as D. "explain limit" shows forty things that procedures ask
for, each with the line that says it.

`

// explain tells what keys, codes and letters of marks mean.
func explain(args []string, s streams) int {
	flags := newFlags("explain", s)
	if err := parse(flags, args); err != nil {
		return s.usage(err, explainUsage)
	}
	if flags.NArg() == 0 {
		return s.usage(errors.New("no word to explain"), "hint: matchmark explain measure, or matchmark explain never-measured\n")
	}
	for _, word := range flags.Args() {
		if !explained(word, s) {
			return s.usage(fmt.Errorf("%q is no key, no code of a problem and no letter of a mark", word), nearHint(word))
		}
	}
	return exitDone
}

// explained writes all that one word means; false if it means nothing.
func explained(word string, s streams) bool {
	word = strings.TrimSuffix(strings.Trim(word, "[]"), ":")
	found := false
	if word == "limit" || word == "limits" {
		def.ExplainLimits(s.out)
		found = true
	}
	if def.Explain(s.out, word) {
		found = true
	}
	if e, ok := codes.Find(word); ok {
		fmt.Fprintf(s.out, "[%s], a problem that check tells\n  %s\n  %s\n", e.Code, e.Cause, e.Cure)
		found = true
	}
	return def.ExplainMark(s.out, strings.TrimRight(word, "0123456789")) || found
}

// nearHint names the word that was probably meant.
func nearHint(word string) string {
	if near := def.NearestWord(word); near != "" {
		return "hint: did you mean " + near + "?\n"
	}
	if near := nearest.Word(word, codes.Names()); near != "" {
		return "hint: did you mean " + near + "?\n"
	}
	return "hint: matchmark explain KEY, CODE or the letter of a mark\n"
}
