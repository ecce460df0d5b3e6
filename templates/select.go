package templates

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// Keep leaves only the named sheets of the pack and the tags of the marks named,
// unchanged: page and tag numbers stay those of the whole pack. Names of sheets
// leave out the tags unless "tags" is among them or marks are named; marks alone
// leave out the pack. It refuses a name that no sheet has and a mark that no tag
// has.
func (p *Pack) Keep(sheets, marks []string) error {
	if len(sheets) == 0 && len(marks) == 0 {
		return nil
	}
	sheets = withCrew(sheets)
	for _, name := range sheets {
		if name != "tags" && !slices.ContainsFunc(kinds(), func(k kind) bool { return k.name == name }) {
			return fmt.Errorf("no sheet is called %q; the sheets are %s, tags; crew is all that a mechanic carries", name, strings.Join(sheetNames(), ", "))
		}
	}
	p.Pages = p.Pages.OnlySheets(func(sheet string) bool { return slices.Contains(sheets, sheet) })
	if len(marks) == 0 && !slices.Contains(sheets, "tags") {
		p.Tags = p.Tags.OnlySheets(func(string) bool { return false })
		p.TagCount = 0
		return nil
	}
	if len(marks) > 0 {
		return p.keepTags(marks)
	}
	return nil
}

// AsksForStamps reports whether the list for metal tags is among the names of sheets.
func AsksForStamps(sheets []string) bool { return slices.Contains(sheets, stampSheet) }

// crew is the name for all sheets that a mechanic carries to the machine.
const crew = "crew"

// withCrew puts the sheets that a mechanic carries in the place of the name for them:
// where to turn, the cautions, the work with all its sheets, and the lines for what
// nobody planned. What stays with planner, store and permit office is left out.
func withCrew(names []string) []string {
	var out []string
	for _, n := range names {
		if n != crew {
			out = append(out, n)
			continue
		}
		out = append(out, "steps", "cautions", "isolations", "holds", "openings", "traveler", "readings", "critical",
			"lifts", "heats", "tightening", "alignment", "reassembly", "found", "deviations")
	}
	return out
}

func sheetNames() []string {
	var out []string
	for _, k := range kinds() {
		out = append(out, k.name)
	}
	return out
}

// keepTags leaves the tags of some marks: C4, C4/DE for one place, C4-C9 for all between.
func (p *Pack) keepTags(marks []string) error {
	used := map[string]bool{}
	chosen := func(mark string) bool {
		for _, m := range marks {
			if mark == m || strings.HasPrefix(mark, m+"/") || inRange(mark, m) {
				used[m] = true
				return true
			}
		}
		return false
	}
	p.retag(chosen)
	for _, m := range marks {
		if !used[m] {
			return fmt.Errorf("no tag has the mark %q", m)
		}
	}
	return nil
}

// between is a range of marks of one letter.
var between = regexp.MustCompile(`^([A-Z])([0-9]+)-([A-Z]?)([0-9]+)$`)

// inRange reports whether a mark lies in a range: C5/DE in C4-C9.
func inRange(mark, span string) bool {
	m := between.FindStringSubmatch(span)
	if m == nil || m[3] != "" && m[3] != m[1] || !strings.HasPrefix(mark, m[1]) {
		return false
	}
	base, _, _ := strings.Cut(mark[1:], "/")
	n, err := strconv.Atoi(base)
	low, errLow := strconv.Atoi(m[2])
	high, errHigh := strconv.Atoi(m[4])
	return err == nil && errLow == nil && errHigh == nil && low <= n && n <= high
}
