package templates_test

import (
	"flag"
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"pgregory.net/rapid"

	"matchmark/packs"
	"matchmark/packs/job"
)

// A random definition has dimensions at several places whose limits, words and sources
// differ by place or do not, read in blocks of one place, in one block for all, or in the
// rows of a table; in millimetres, inches and degrees; with parts that come off, in sets,
// with a hand of thread, renewed or not, and the guards of a step.

// freshWords draws a text that is found nowhere else.
func freshWords(t *rapid.T, what string, n *int) string {
	*n++
	nouns := []string{"cold", "warm from the bath", "pushed home", "turned to the mark", "grind it", "ask the owner", "renew it", "sheet", "drawing", "letter of the maker"}
	return fmt.Sprintf("%s %s%03d", rapid.SampledFrom(nouns).Draw(t, what), strings.ToLower(what[:1]), *n)
}

// A drawer draws the texts of one definition.
type drawer struct {
	*rapid.T
	n      int
	labels []string
}

func (d *drawer) chance(what string, in int) bool {
	return rapid.IntRange(0, in-1).Draw(d.T, what) == 0
}

// varying draws a value for all places, or one for each.
func (d *drawer) varying(what string, one func() string) string {
	if len(d.labels) == 0 || !d.chance(what+" by place", 2) {
		return one()
	}
	shared := one()
	var out []string
	for _, l := range d.labels {
		v := shared
		if d.chance("differs", 2) {
			v = one()
		}
		out = append(out, l+": "+v)
	}
	return "{" + strings.Join(out, ", ") + "}"
}

func (d *drawer) words(what string) func() string {
	return func() string { return freshWords(d.T, what, &d.n) }
}

// limit draws a limit in a unit, about a size, all numbers apart from those drawn before.
func (d *drawer) limit(unit string) func() string {
	return func() string {
		d.n++
		low := 1000 + 200*d.n + rapid.IntRange(0, 90).Draw(d.T, "low")
		band := rapid.IntRange(100, 109).Draw(d.T, "band")
		size := func(k int) string {
			switch unit {
			case "in":
				return fmt.Sprintf("%d.%04d", 1+k/10000, k%10000)
			case "°C":
				return fmt.Sprint(k / 10)
			}
			return fmt.Sprintf("%d.%02d", k/100, k%100)
		}
		switch rapid.IntRange(0, 3).Draw(d.T, "kind of limit") {
		case 0:
			return "at most " + size(low+band) + " " + unit
		case 1:
			return "at least " + size(low) + " " + unit
		}
		return size(low) + " to " + size(low+band) + " " + unit
	}
}

// dimension draws one dimension of a part that stands at each place.
func (d *drawer) dimension(mark, part string, table bool) string {
	unit := rapid.SampledFrom([]string{"mm", "mm", "in", "°C"}).Draw(d.T, "unit")
	var b strings.Builder
	line := func(key, value string) { fmt.Fprintf(&b, "    %s: %s\n", key, value) }
	fmt.Fprintf(&b, "  %s:\n", mark)
	line("what", d.varying("What", d.words("What")))
	if len(d.labels) > 0 {
		line("each", "place")
	}
	line("of", "{"+part+": face "+mark+"}")
	at := !table && d.chance("positions", 3)
	if at {
		line("at", "[top, right, bottom, left]")
	}
	switch {
	case at && d.chance("by position", 2):
		line("left", "{top: "+d.limit(unit)()+", others: "+d.limit(unit)()+"}")
	case d.chance("recorded", 6):
		line("found", "record to "+map[string]string{"mm": "0.01 mm", "in": "0.001 in", "°C": "1 °C"}[unit])
		line("nominal", map[string]string{"mm": "20 mm", "in": "2 in", "°C": "90 °C"}[unit])
		if d.chance("left as well", 2) {
			line("left", d.varying("left", d.limit(unit)))
			line("source", d.varying("Source", d.words("Source")))
		}
		return b.String()
	default:
		line("left", d.varying("left", d.limit(unit)))
	}
	line("source", d.varying("Source", d.words("Source")))
	for _, key := range []string{"with", "over", "out"} {
		if d.chance(key, 2) {
			line(key, d.varying(key, d.words(strings.ToUpper(key[:1])+key[1:])))
		}
	}
	if d.chance("note", 3) {
		line("note", d.words("note")())
	}
	return b.String()
}

// definition draws a whole definition.
func definition(t *rapid.T) string {
	d := &drawer{T: t}
	places := ""
	if n := rapid.IntRange(0, 4).Draw(t, "places"); n > 1 {
		names := []string{"DE", "NDE", "TOP", "LOW"}[:n]
		for _, l := range names {
			places += fmt.Sprintf("    %s: {name: end %s, viewed-from: the %s gate}\n", l, strings.ToLower(l), strings.ToLower(l))
		}
		places = "places:\n  place:\n" + places
		d.labels = names
	}
	each := ""
	if len(d.labels) > 0 {
		each = ", each: place"
	}
	var parts, dims, off strings.Builder
	table := len(d.labels) > 0 && d.chance("table", 3)
	alike := len(d.labels) > 0 && !table && d.chance("below one head", 2)
	var measured, removed, into []string
	most := 3
	if table {
		most = 2
	}
	for i := range rapid.IntRange(1, most).Draw(t, "parts") {
		key := fmt.Sprintf("part-%d", i+1)
		extra := ""
		switch rapid.IntRange(0, 3).Draw(t, "sort of part") {
		case 0:
			extra = ", renew: always"
		case 1:
			extra = fmt.Sprintf(", count: %d", rapid.IntRange(2, 9).Draw(t, "count"))
		}
		fmt.Fprintf(&parts, "  %s: {name: Piece %d%s%s}\n", key, i+1, each, extra)
		mark := fmt.Sprintf("D%d", i+1)
		dims.WriteString(d.dimension(mark, key, table))
		measured, removed = append(measured, mark), append(removed, key)
		to := "C1"
		if extra == ", renew: always" && d.chance("at once to scrap", 2) {
			to = "scrap"
		}
		into = append(into, key+": "+to)
	}
	own, section := "", ""
	switch {
	case len(d.labels) == 0:
	case table:
		own = "        each: place\n        as-table: yes\n"
	case alike:
		// What goes beyond a row is printed below one head.
		own = "        each: place\n        as-table: yes\n        hours: 1\n"
	case d.chance("section by place", 2):
		section = "    each: place\n"
	}
	line := func(key, value string) { fmt.Fprintf(&off, "        %s: %s\n", key, value) }
	off.WriteString("      - step: off\n" + own)
	save := d.labels
	if own == "" && section == "" {
		d.labels = nil // the step does not repeat
	}
	line("do", d.varying("Do", d.words("Do")))
	if d.chance("missed", 2) {
		line("missed", d.varying("Missed", d.words("Missed")))
	}
	if d.chance("note", 3) {
		line("note", d.varying("Note", d.words("Note")))
	}
	d.labels = save
	line("measure", "["+strings.Join(measured, ", ")+"]")
	if !table && d.chance("seen", 3) {
		line("seen", "["+d.words("Seen")()+", "+d.words("Seen")()+"]")
	}
	line("remove", "["+strings.Join(removed, ", ")+"]")
	line("into", "{"+strings.Join(into, ", ")+"}")
	container := ""
	if strings.Contains(strings.Join(into, " "), "C1") {
		container = "containers:\n  C1: {name: Small parts, kind: crate, keep: dry and upright" + each + "}\n"
	}
	last, hold := "", ""
	if d.chance("hold", 2) {
		hold = "holds:\n  W1: {kind: " + rapid.SampledFrom([]string{"hold", "witness"}).Draw(t, "kind of hold") + ", what: " + d.words("Hold")() + ", releases: foreman}\n"
		last = "      - step: look\n        do: " + d.words("Look")() + "\n        hold: W1\n"
	}
	return "pack: 1\nequipment: {tag: X-1, name: Machine}\njob: {number: \"1\", title: Law, revision: A, issued: 2026-03-02}\n" + places +
		"parts:\n" + parts.String() + "dimensions:\n" + dims.String() + container + hold +
		"steps:\n  - section: Off\n" + section + "    steps:\n" + off.String() + look(last)
}

func look(steps string) string {
	if steps == "" {
		return ""
	}
	return "  - section: Look\n    steps:\n" + steps
}

// loadText loads a definition given as text.
func loadText(text string) (*job.Job, error) {
	jb, problems := packs.Load(fstest.MapFS{"law.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "law.yaml"})
	if problems.Errors() > 0 {
		return jb, problems
	}
	return jb, nil
}

// The same for random definitions: PAPER_LAW=full looks at two thousand of them.
func TestPaperSaysWhatRandomJobsHold(t *testing.T) {
	t.Parallel()
	var asked, looked, refused int
	check := func(t *rapid.T) {
		text := definition(t)
		jb, err := loadText(text)
		if err != nil {
			refused++
			t.Skip(err)
		}
		looked++
		for _, w := range allWants(jb, paperOf(jb)) {
			if w.want != "" {
				asked++
			}
			if m := w.miss(); m != "" {
				t.Fatalf("%s\n%s", m, text)
			}
		}
	}
	runs := 50
	if os.Getenv("PAPER_LAW") == "full" {
		runs = 2000
	}
	many(t, runs, check)
	t.Logf("%d definitions, %d texts and numbers looked up, %d not in order", looked, asked, refused)
	if looked < runs*3/4 {
		t.Errorf("only %d of %d definitions are in order", looked, runs)
	}
}

// many runs a property so many times.
func many(t *testing.T, runs int, check func(*rapid.T)) {
	t.Helper()
	for name, value := range map[string]string{"rapid.checks": strconv.Itoa(runs), "rapid.shrinktime": "5s", "rapid.nofailfile": "true"} {
		if err := flag.Set(name, value); err != nil {
			t.Fatal(err)
		}
	}
	rapid.Check(t, check)
}
