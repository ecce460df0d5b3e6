package main

import (
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates"
)

// stepPage is a step with its page as the sheets name it; turnedAt the steps that turn a joint,
// in its heading; ticksAt the page of its ticks, in a step that tightens it.
var (
	stepPage = regexp.MustCompile(`(?:^|[^\pL\pN.])(R?[0-9]+\.[0-9]+) p\. ([0-9]+)`)
	turnedAt = regexp.MustCompile(`(J[0-9]+)(?:/[^\s:]+)? (?:[^()J]|J[^0-9])* \([0-9]+ pieces?\) (tightened|loosened) at ((?:R?[0-9]+\.[0-9]+ p\. [0-9]+(?:, )?)+)(?: · loosened at ((?:R?[0-9]+\.[0-9]+ p\. [0-9]+(?:, )?)+))?`)
	ticksAt  = regexp.MustCompile(`tighten (J[0-9]+)(?:/\S+)? .*?ticks: p\. ([0-9]+)`)
)

// textOf is all text of a page in the order in which it is set, the ends of lines as blanks.
func textOf(f layout.Frame) string {
	var out []string
	for _, it := range f.Items {
		if t, ok := it.Shape.(layout.Text); ok {
			out = append(out, t.S)
		}
	}
	return strings.Join(strings.Fields(strings.ReplaceAll(strings.Join(out, " "), "\u00a0", " ")), " ")
}

// TestPagesPointedTo: the sheet of all steps sent the reader to the row of a place while what
// is done stood on the page before, a joint's heading to the page on which its step began and
// not to its line, and a step to the heading of a joint whose ticks stood on the next page. On
// the page that is named stands the step with its number, with its words where it is the first
// of like ones; the joint that is turned there; the ticks.
func TestPagesPointedTo(t *testing.T) {
	t.Parallel()
	for _, name := range starters(t) {
		for _, paper := range []layout.Paper{layout.A4, layout.Letter} {
			j, pack := composed(t, name, templates.Options{Paper: paper})
			p := pointed{t, name + " on " + paper.Name, j, map[string]string{}, map[string][]string{}}
			for _, f := range pack.Pages.Pages {
				n := strconv.Itoa(f.Number)
				p.texts[n] = textOf(f)
				for _, x := range f.Parts {
					p.sheets[n] = append(p.sheets[n], x.Sheet)
				}
			}
			p.steps()
			p.joints()
		}
	}
}

type pointed struct {
	t      *testing.T
	where  string
	j      *job.Job
	texts  map[string]string   // by page
	sheets map[string][]string // of a page
}

// fail tells of a page that is pointed to and has not what it is pointed to for.
func (p pointed) fail(page, what, at string) {
	p.t.Errorf("%s: %s is to be found on p. %s, and is not there (told on p. %s)", p.where, what, page, at)
}

// steps looks for each step on each page that is named for it.
func (p pointed) steps() {
	all := map[string]*job.Step{}
	for _, st := range p.j.Steps() {
		all[st.No] = st
	}
	n := 0
	for _, at := range slices.Sorted(maps.Keys(p.texts)) {
		for _, m := range stepPage.FindAllStringSubmatch(p.texts[at], -1) {
			st, text := all[m[1]], p.texts[m[2]]
			n++
			switch {
			case st == nil || p.pointsElsewhere(at):
			case !names(text, st.No):
				p.fail(m[2], st.No, at)
			case slices.Contains(p.sheets[at], "openings"): // the page of the tick, which may stand below its words
			case !p.likeTheOneBefore(st) && !strings.Contains(text, p.beginning(st)):
				p.fail(m[2], st.No+" “"+p.beginning(st)+"”", at)
			}
		}
	}
	if n == 0 {
		p.t.Errorf("%s: no step with its page", p.where)
	}
}

// pointsElsewhere reports whether a page has sheets that name a step with the page of one of its
// boxes or joints, which may stand below its words.
func (p pointed) pointsElsewhere(at string) bool {
	return slices.ContainsFunc(p.sheets[at], func(s string) bool { return s == "tightening" || s == "critical" || s == "dimensions" })
}

// likeTheOneBefore reports whether a step may stand below the words of the one before it.
func (p pointed) likeTheOneBefore(st *job.Step) bool {
	all := p.j.Steps()
	i := slices.Index(all, st)
	return i > 0 && all[i-1].Section == st.Section && all[i-1].Place.Label != st.Place.Label && p.beginning(all[i-1]) == p.beginning(st)
}

// beginning is the first words of a step.
func (p pointed) beginning(st *job.Step) string {
	words := strings.Fields(st.Do)
	return strings.Join(words[:min(3, len(words))], " ")
}

// runsOn reports whether the ticks of a joint begin on a page and go on below its heading on the
// next one, where it is written who did them.
func (p pointed) runsOn(page string, heading *regexp.Regexp) bool {
	n, _ := strconv.Atoi(page)
	next := p.texts[strconv.Itoa(n+1)]
	return strings.Contains(p.texts[page], " order 1 2 3 ") && heading.MatchString(next) && strings.Contains(next, "final by")
}

// joints looks for each joint on the pages on which it is turned, and for its ticks.
func (p pointed) joints() {
	turned, ticked := 0, 0
	for _, at := range slices.Sorted(maps.Keys(p.texts)) {
		text := p.texts[at]
		for _, m := range turnedAt.FindAllStringSubmatch(text, -1) {
			for i, list := range m[3:] {
				for _, x := range stepPage.FindAllStringSubmatch(list, -1) {
					turned++
					verb := ""
					if m[2] == "loosened" || i == 1 {
						verb = "loosen "
					}
					if mark := regexp.MustCompile(verb + m[1] + `\b`); !mark.MatchString(p.texts[x[2]]) {
						p.fail(x[2], verb+m[1], at)
					}
				}
			}
		}
		for _, m := range ticksAt.FindAllStringSubmatch(text, -1) {
			ticked++
			if mark := regexp.MustCompile(m[1] + `(?:/[^\s:]+)? (?:[^()J]|J[^0-9])* \([0-9]+ pieces?\) (?:tightened|loosened) at`); !mark.MatchString(p.texts[m[2]]) || !strings.Contains(p.texts[m[2]], "final by") && !p.runsOn(m[2], mark) {
				p.fail(m[2], "the ticks of "+m[1], at)
			}
		}
	}
	if turned < 10 || ticked < 4 {
		p.t.Errorf("%s: only %d pages of joints and %d of ticks were looked at", p.where, turned, ticked)
	}
}
