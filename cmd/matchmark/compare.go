package main

import (
	"errors"
	"fmt"
	"io"
	"regexp"
	"strings"

	"github.com/spf13/pflag"

	"matchmark/layout"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/revise"
	"matchmark/packs/source"
	"matchmark/templates"
)

const compareUsage = `usage: matchmark compare OLD NEW [--job FILE] [--site FILE] [--old-job FILE] [--paper PAPER]

Says what differs between two revisions of a job: steps, readings, what to do about
each tag that hangs, and which pages to swap.

`

// compareFlags are the flags of the compare command.
type compareFlags struct {
	inputFlags
	oldJob, paper string
}

func (g *compareFlags) add(f *pflag.FlagSet) {
	g.inputFlags.add(f)
	f.StringVar(&g.oldJob, "old-job", "", "the job file of the old revision; that of --job if not said")
	f.StringVar(&g.paper, "paper", "", "`PAPER` of the pages: a4 or letter")
}

// compare holds two revisions of a job against each other.
func compare(args []string, s streams) int {
	var g compareFlags
	flags := newFlags("compare", s)
	g.add(flags)
	if err := parse(flags, args); err != nil {
		return s.usage(err, compareUsage+flags.FlagUsages())
	}
	if flags.NArg() != 2 {
		return s.usage(errors.New("compare takes two files, the old one and the new one"), "hint: matchmark compare pump-A.yaml pump-B.yaml\n")
	}
	on, err := paperNamed(g.paper)
	if err != nil {
		return s.usage(err, "hint: --paper a4 or --paper letter\n")
	}
	before, after := g.inputs(flags.Arg(0)), g.inputs(flags.Arg(1))
	if g.oldJob != "" {
		before.Job = g.oldJob
	}
	var jobs [2]*job.Job
	var pages [2][]layout.Frame
	for i, in := range []packs.Inputs{before, after} {
		jb, problems := packs.Load(disk{stdin: s.in}, in)
		if problems.Errors() > 0 {
			report(s.err, problems, jb.Files)
			return exitFor(problems)
		}
		pack, _ := templates.Compose(jb, templates.Options{Paper: on, Pen: layout.Pen{Gloves: jb.Site.Gloves}}, facesFor(jb, &source.Problems{}), nil)
		jobs[i], pages[i] = jb, pack.Pages.Pages
	}
	old, now := jobs[0], jobs[1]
	if old.Order.Revision == now.Order.Revision {
		fmt.Fprintf(s.out, "both are revision %s: a new revision needs a letter of its own\n", now.Order.Revision)
	}
	c := revise.Compare(old, now)
	writeChanges(s.out, "steps", c.Steps)
	writeChanges(s.out, "readings", c.Readings)
	writeChanges(s.out, "lifts, heats, joints and lists", c.Others)
	writeTags(s.out, c.Tags)
	writePages(s.out, swaps(old, now, pages[0], pages[1]), len(pages[0]), len(pages[1]))
	return exitDone
}

// writeChanges lists what became of steps or readings.
func writeChanges(w io.Writer, what string, list []revise.Change) {
	fmt.Fprintf(w, "%s:\n", what)
	if len(list) == 0 {
		fmt.Fprintln(w, "  all as they were")
	}
	var moved []string
	for _, c := range list {
		switch c.Kind {
		case revise.Added:
			fmt.Fprintf(w, "  new      %s\n", c.Name)
		case revise.Removed:
			fmt.Fprintf(w, "  gone     %s\n", c.Name)
		case revise.Moved:
			moved = append(moved, c.What[0]+" is "+c.What[1])
		case revise.Changed:
			fmt.Fprintf(w, "  changed  %s\n", c.Name)
			for i := 0; i+1 < len(c.What); i += 2 {
				fmt.Fprintf(w, "             was %s\n             is  %s\n", c.What[i], c.What[i+1])
			}
		}
	}
	if len(moved) > 0 {
		fmt.Fprintf(w, "  renumbered: %s\n", strings.Join(moved, ", "))
	}
}

// fates are the words for what is done about tags, in the order in which they are listed.
var fates = []struct {
	fate revise.Fate
	word string
}{
	{revise.OtherThing, "take off at once, the mark stands for another thing now"},
	{revise.Withdraw, "withdraw"},
	{revise.Reissue, "print again, the key stays"},
	{revise.New, "new"},
	{revise.StepsMoved, "stay true, only the numbers of their steps have moved"},
	{revise.Stays, "stay as they are"},
}

// writeTags lists what is done about each tag.
func writeTags(w io.Writer, list []revise.Verdict) {
	fmt.Fprintln(w, "tags:")
	for _, f := range fates {
		var marks []string
		for _, v := range list {
			if v.Fate == f.fate {
				marks = append(marks, v.Mark)
			}
		}
		if len(marks) == 0 {
			continue
		}
		fmt.Fprintf(w, "  %s: %s\n", f.word, strings.Join(marks, ", "))
		for _, v := range list {
			if v.Fate == f.fate && (f.fate == revise.Reissue || f.fate == revise.OtherThing) {
				fmt.Fprintf(w, "    %s was %s; is %s\n", v.Mark, strings.Join(v.Was, ", "), strings.Join(v.Is, ", "))
			}
		}
	}
}

// A swap is a page of the new pack that is not in the old one as it is.
type swap struct {
	page  int
	sheet string
}

// swaps are the pages whose text, but for revision, date, digest and the number of all
// pages, is on no page of the same number of the old pack.
func swaps(old, now *job.Job, before, after []layout.Frame) []swap {
	var out []swap
	for i, f := range after {
		if i < len(before) && bareText(before[i], old, len(before)) == bareText(f, now, len(after)) {
			continue
		}
		out = append(out, swap{i + 1, f.Sheet})
	}
	return out
}

// bareText is the text of a page without what stands on every page of a revision.
func bareText(f layout.Frame, j *job.Job, total int) string {
	text := layout.Readable(f)
	for _, drop := range []string{j.Digest, strings.ToUpper(j.Digest), j.Order.Issued, "rev " + j.Order.Revision} {
		text = strings.ReplaceAll(text, drop, "")
	}
	return regexp.MustCompile(fmt.Sprintf(`\b%d( of | )%d\b`, f.Number, total)).ReplaceAllString(text, "")
}

// writePages lists the pages to swap.
func writePages(w io.Writer, list []swap, before, after int) {
	fmt.Fprintf(w, "pages: %d of %d to be swapped", len(list), after)
	if before != after {
		fmt.Fprintf(w, ", there were %d", before)
	}
	fmt.Fprintln(w)
	for i := 0; i < len(list); {
		k := i
		for k+1 < len(list) && list[k+1].page == list[k].page+1 && list[k+1].sheet == list[i].sheet {
			k++
		}
		span := fmt.Sprint(list[i].page)
		if k > i {
			span += " to " + fmt.Sprint(list[k].page)
		}
		fmt.Fprintf(w, "  %-9s %s\n", span, list[i].sheet)
		i = k + 1
	}
}
