package main

import (
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"

	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/keep"
)

const scanUsage = `usage: matchmark scan FILE CODE [--job FILE] [--site FILE]

Answers the scan of a tag: what it hangs on, what is in it, where it comes off and
goes back, and whether the tag is still true. CODE is the text of the code, its
key, or the mark alone; its blanks need no quotes.

`

// scanFlags are the flags of the scan command.
type scanFlags struct{ inputFlags }

// scan answers what a scanned tag stands for.
func scan(args []string, s streams) int {
	var g scanFlags
	flags := newFlags("scan", s)
	g.add(flags)
	if err := parse(flags, args); err != nil {
		return s.usage(err, scanUsage+flags.FlagUsages())
	}
	if flags.NArg() < 2 {
		return s.usage(errors.New("scan takes a definition and the text of a code"), "hint: matchmark scan pump.yaml P03 WO2408 C4 NDE XBVT TRT\n")
	}
	jb, problems := packs.Load(disk{stdin: s.in}, g.inputs(flags.Arg(0)))
	if problems.Errors() > 0 {
		report(s.err, problems, jb.Files)
		return exitFor(problems)
	}
	text := strings.Join(flags.Args()[1:], " ")
	found := keep.Scanned(jb, text)
	if found == nil {
		fmt.Fprintf(s.out, "%q is no tag of %s, job %s revision %s%s\n", text, jb.Equipment.Tag, jb.Order.Number, jb.Order.Revision, ofPlaces(jb, text))
		return exitProblems
	}
	answer(s.out, jb, found)
	if found.Other || found.Changed {
		return exitProblems
	}
	return exitDone
}

// ofPlaces lists the tags of a mark that hangs at several places; nothing for another text.
func ofPlaces(j *job.Job, text string) string {
	var marks []string
	for _, t := range j.Tags {
		if strings.EqualFold(t.Base, strings.TrimSpace(text)) {
			marks = append(marks, t.Mark)
		}
	}
	if len(marks) == 0 {
		return ""
	}
	return "; with their places there are " + strings.Join(marks, ", ")
}

// answer writes what is known of a tag, a line each.
func answer(w io.Writer, j *job.Job, f *keep.Scan) {
	t := f.Tag
	say := func(what, text string) {
		if text != "" {
			fmt.Fprintf(w, "%-11s %s\n", what, text)
		}
	}
	say("tag", t.Mark+", "+nth(t))
	say("machine", j.Equipment.Tag+" "+j.Equipment.Name)
	say("job", j.Order.Number+" revision "+j.Order.Revision)
	say("what", t.Name)
	say("place", t.PlaceName)
	if t.Pocket != "" {
		say("lies in", t.Container.Mark+" "+t.Container.Name)
	}
	var parts []string
	for _, x := range job.Contents(t.In) {
		parts = append(parts, strconv.Itoa(x.N)+" "+x.Name)
	}
	for _, m := range t.Later {
		parts = append(parts, "later, at "+m.OldOne().Step.No+": "+strconv.Itoa(m.N)+" old "+m.Part.Name)
	}
	say("in it", strings.Join(parts, ", "))
	if c := t.Container; c != nil && t.Pocket == "" && len(c.Pockets) > 0 {
		say("in all", counted(job.Pieces(c.In), "piece")+", with the bags "+strings.Join(c.Pockets, ", "))
	}
	say("off at", steps(t.All()))
	say("back at", steps(t.Out))
	say("keep", t.Keep)
	say("note", t.Note)
	say("still true", verdict(f))
}

// nth is which of the tags it is.
func nth(t *job.Tag) string {
	if t.Spare {
		return "a spare"
	}
	return strconv.Itoa(t.N) + " of " + strconv.Itoa(t.Of)
}

// steps are the numbers and words of the steps of some moves, each once.
func steps(ms []*job.Move) string {
	var out []string
	last := ""
	for _, m := range ms {
		if m.Step.No != last {
			last = m.Step.No
			out = append(out, last)
		}
	}
	return strings.Join(out, ", ")
}

// verdict says whether the tag that was scanned may go on hanging.
func verdict(f *keep.Scan) string {
	text := "yes"
	switch {
	case f.Other:
		return "NO: the code is of another machine or job, or a letter of it is wrong"
	case f.Changed:
		return "NO: what the tag says has changed since it was printed; print it again with --marks " + f.Tag.Mark
	case !f.Letters:
		text = "not known: the letters of the content, the last three of the code, were not scanned"
	}
	if f.Keyboard != "" {
		text += "; the scanner types as on an English keyboard and the computer has a " + f.Keyboard + " one"
	}
	return text
}
