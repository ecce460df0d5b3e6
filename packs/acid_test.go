package packs_test

import (
	"os"
	"path/filepath"
	"slices"
	"sort"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"gopkg.in/yaml.v3"

	"matchmark/packs"
	"matchmark/packs/source"
)

// The acid test: a definition that check is silent about is spoilt in one place at
// a time (a key or an item taken away, a unit left out, the numbers of a limit
// turned round, a mark doubled, a step moved by one), and check must speak at the
// line that is spoilt or where the thing is used. What may be spoilt in silence is
// on the list of harmless kinds, with the reason.

var acidFiles = []string{"starters/exhaust-fan.yaml", "../testdata/good/air-compressor.yaml"}

// A mutant is a definition spoilt in one place.
type mutant struct {
	kind   string // as "take parts.*.mass"
	what   string // for the report
	path   []int  // to the owner of the spoilt place, in the mutated tree
	tokens []string
	text   []byte
}

func TestAcid(t *testing.T) {
	t.Parallel()
	used := map[string]int{}
	total, silent := 0, 0
	for _, file := range acidFiles {
		data, err := os.ReadFile(filepath.FromSlash(file))
		if err != nil {
			t.Fatal(err)
		}
		all := mutants(t, data)
		total += len(all)
		for _, line := range testMutants(t, file, all) {
			silent++
			if harmless[line.kind] == "" {
				t.Errorf("%s: check is silent: %s: %s", file, line.kind, line.what)
			}
			used[line.kind]++
		}
	}
	var kinds []string
	for k := range harmless {
		kinds = append(kinds, k)
	}
	sort.Strings(kinds)
	for _, k := range kinds {
		if used[k] == 0 {
			t.Errorf("the harmless kind %q occurs no more: take it off the list", k)
		}
		t.Logf("%3d %s: %s", used[k], k, harmless[k])
	}
	t.Logf("%d mutants, check is silent about %d of %d harmless kinds", total, silent, len(harmless))
	// Ticks, gear and what is done as found are of the author's choice: a job that has more of
	// them has more that may be taken away in silence.
	if silent*9 >= total {
		t.Errorf("check is silent about %d of %d mutants; under a ninth is allowed", silent, total)
	}
}

// testMutants loads all mutants and returns those that check is silent about. One
// that it speaks about at the wrong place only is a failure.
func testMutants(t *testing.T, file string, all []mutant) []mutant {
	t.Helper()
	silent := make([]bool, len(all))
	work := make(chan int)
	var wg sync.WaitGroup
	for range 4 {
		wg.Add(1)
		go func() {
			defer wg.Done()
			for i := range work {
				silent[i] = tryMutant(t, file, &all[i])
			}
		}()
	}
	for i := range all {
		work <- i
	}
	close(work)
	wg.Wait()
	var out []mutant
	for i, s := range silent {
		if s {
			out = append(out, all[i])
		}
	}
	return out
}

// tryMutant loads one mutant and reports whether check is silent.
func tryMutant(t *testing.T, file string, m *mutant) bool {
	const name = "mutant.yaml"
	_, problems := packs.Load(fstest.MapFS{name: {Data: m.text}}, packs.Inputs{Definition: name})
	if len(problems) == 0 {
		return true
	}
	from, to := span(m)
	lines := strings.Split(string(m.text), "\n")
	for _, p := range problems {
		if len(p.Help) > 3 {
			t.Errorf("%s: more than three lines of help: %v", file, p)
		}
		if right(p.Pos, from, to, lines, m.tokens) {
			return false
		}
		for _, s := range p.See {
			if right(s.Pos, from, to, lines, m.tokens) {
				return false
			}
		}
	}
	t.Errorf("%s: check speaks at another place: %s: %s: %v", file, m.kind, m.what, problems)
	return false
}

// right reports whether a problem stands at the spoilt thing (its lines), or at a
// line that names it.
func right(at source.Pos, from, to int, lines []string, tokens []string) bool {
	if at.Line >= from && at.Line <= to {
		return true
	}
	if at.Line < 1 || at.Line > len(lines) {
		return false
	}
	// A thing is named by its first line, and uses what stands in it.
	text := lines[at.Line-1]
	if trimmed := strings.TrimSpace(text); strings.HasPrefix(trimmed, "- step:") || strings.HasSuffix(trimmed, ":") {
		depth := len(text) - len(strings.TrimLeft(text, " "))
		for _, l := range lines[at.Line:] {
			if len(l) <= depth || strings.TrimSpace(l[:depth+1]) != "" {
				break
			}
			text += " " + l
		}
	}
	edge := func(s string) string { return strings.Map(wordRunes, s) }
	line := " " + edge(text) + " "
	return slices.ContainsFunc(tokens, func(w string) bool { return strings.Contains(line, " "+edge(w)+" ") })
}

// wordRunes turns what stands between names into blanks.
func wordRunes(r rune) rune {
	if strings.ContainsRune(",:[]{}/\"", r) {
		return ' '
	}
	return r
}

// span is the first and last line of the owner of the spoilt place.
func span(m *mutant) (from, to int) {
	var doc yaml.Node
	if yaml.Unmarshal(m.text, &doc) != nil || len(doc.Content) == 0 {
		return 0, 0
	}
	n := doc.Content[0]
	for _, i := range m.path {
		if i >= len(n.Content) {
			return 0, 0
		}
		n = n.Content[i]
	}
	from, to = n.Line, n.Line
	var visit func(*yaml.Node)
	visit = func(n *yaml.Node) {
		to = max(to, n.Line)
		for _, c := range n.Content {
			visit(c)
		}
	}
	visit(n)
	// The key of the owner stands on the line above, when the owner is a block.
	return from - 1, to
}
