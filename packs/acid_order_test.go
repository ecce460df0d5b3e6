package packs_test

import (
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"gopkg.in/yaml.v3"

	"matchmark/packs"
)

// The mutants of the order of work: two neighbouring steps, sections or reverse: lines
// changed over, a verb moved to another step, a verb dropped.

// An orderMutant is a definition whose order of work is spoilt in one place.
type orderMutant struct {
	kind string // as "swap steps", "move remove", "drop loosen"
	what string // for the report
	free bool   // the order before says that it may be done so
	text []byte
}

// movedVerbs are the keys of a step that do something, in no order.
var movedVerbs = []string{
	"measure", "set", "remove", "fit", "fit-for-now", "take-out-again", "leave-out", "loosen", "tighten", "open", "close", "lock", "unlock",
	"heat", "lift", "hold", "permit", "judge", "stacks", "match-marks", "empty", "tool-count", "count-all",
}

// orderMutator makes the mutants of one definition.
type orderMutator struct {
	t        *testing.T
	root     *yaml.Node
	sections *yaml.Node
	mayPass  func(lower, upper string) bool // whether a step may go above another, by what is printed
	every    int                            // of each kind the first is made and every so many after it
	seen     map[string]int                 // of each kind, those that could be made
	out      []orderMutant
}

// orderMutants makes mutants of a definition: of each kind the first, and every so many after it.
func orderMutants(t *testing.T, data []byte, every int) []orderMutant {
	t.Helper()
	var doc yaml.Node
	if err := yaml.Unmarshal(data, &doc); err != nil {
		t.Fatal(err)
	}
	m := &orderMutator{t: t, root: doc.Content[0], every: every, seen: map[string]int{}}
	m.sections = entryOf(m.root, "steps")
	if m.sections == nil {
		return nil
	}
	jb, _ := packs.Load(fstest.MapFS{"x": {Data: data}}, packs.Inputs{Definition: "x"})
	m.mayPass = func(lower, upper string) bool {
		any := false
		for _, s := range jb.Sections {
			for _, low := range s.Steps {
				if low.Key != lower || low.Back && low.Undoes != nil {
					continue
				}
				for _, up := range s.Steps {
					if up.Key != upper || up.Index > low.Index {
						continue
					}
					any = true
					lowMay := low.Free != nil && (low.Free.After == nil || low.Free.After.Index < up.Index)
					upMay := up.Free != nil && (up.Free.Before == nil || up.Free.Before.Index > low.Index)
					if !lowMay && !upMay {
						return false
					}
				}
			}
		}
		return any
	}
	m.swapSections()
	for _, s := range m.sections.Content {
		if list := entryOf(s, "steps"); list != nil {
			m.swapSteps(list)
		}
		if list := entryOf(s, "reverse"); list != nil {
			m.swapReverse(list)
		}
	}
	m.verbs()
	m.moves()
	return m.out
}

// entryOf is the value of a key of a map, nil if it has none.
func entryOf(n *yaml.Node, key string) *yaml.Node {
	for i := 0; i+1 < len(n.Content) && n.Kind == yaml.MappingNode; i += 2 {
		if n.Content[i].Value == key {
			return n.Content[i+1]
		}
	}
	return nil
}

// add writes a mutant down as the tree is now, if its turn has come.
func (m *orderMutator) add(kind, what string, free bool) {
	m.seen[kind]++
	if (m.seen[kind]-1)%m.every != 0 {
		return
	}
	text, err := yaml.Marshal(m.root)
	if err != nil {
		m.t.Fatal(err)
	}
	m.out = append(m.out, orderMutant{kind, what, free, text})
}

func stepName(n *yaml.Node) string { return strings.Join(stepNames(n), " ") }

func (m *orderMutator) swapSections() {
	c := m.sections.Content
	for i := 1; i < len(c); i++ {
		c[i], c[i-1] = c[i-1], c[i]
		m.add("swap sections", stepName(c[i-1])+" before "+stepName(c[i]), false)
		c[i], c[i-1] = c[i-1], c[i]
	}
}

func (m *orderMutator) swapSteps(list *yaml.Node) {
	c := list.Content
	for i := 1; i < len(c); i++ {
		upper, lower := stepName(c[i-1]), stepName(c[i])
		c[i], c[i-1] = c[i-1], c[i]
		kind := "swap steps, the lower with after:"
		if entryOf(c[i-1], "after") == nil {
			kind = "swap steps, the lower without after:"
		}
		m.add(kind, lower+" before "+upper, m.mayPass(lower, upper))
		c[i], c[i-1] = c[i-1], c[i]
	}
}

func (m *orderMutator) swapReverse(list *yaml.Node) {
	c := list.Content
	for i := 1; i < len(c); i++ {
		c[i], c[i-1] = c[i-1], c[i]
		m.add("swap reverse", c[i-1].Value+" before "+c[i].Value, false)
		c[i], c[i-1] = c[i-1], c[i]
	}
}

// verbs drops every verb of every step, and moves it to the step above, to the step
// below, and to the first and the last one of the job.
func (m *orderMutator) verbs() {
	var all []*yaml.Node
	for _, s := range m.sections.Content {
		if list := entryOf(s, "steps"); list != nil {
			all = append(all, list.Content...)
		}
	}
	for i, st := range all {
		for _, verb := range movedVerbs {
			if entryOf(st, verb) == nil {
				continue
			}
			taken, was := withoutVerb(st, verb)
			m.add("drop "+verb, stepName(st), false)
			done := map[int]bool{i: true}
			for _, to := range []int{i - 1, i + 1, 0, len(all) - 1} {
				if to < 0 || to >= len(all) || done[to] {
					continue
				}
				done[to] = true
				target := all[to].Content
				if withVerb(all[to], taken) {
					m.add("move "+verb, stepName(st)+" to "+stepName(all[to]), false)
				}
				all[to].Content = target
			}
			st.Content = was
		}
	}
}

// withoutVerb takes a verb out of a step, with what says where its parts go or come
// from, and gives what the step held before.
func withoutVerb(st *yaml.Node, verb string) (taken, was []*yaml.Node) {
	with := map[string]string{"remove": "into", "fit": "from"}[verb]
	was = st.Content
	var kept []*yaml.Node
	for i := 0; i+1 < len(was); i += 2 {
		if k := was[i].Value; k == verb || k == with {
			taken = append(taken, was[i], was[i+1])
		} else {
			kept = append(kept, was[i], was[i+1])
		}
	}
	st.Content = kept
	return taken, was
}

// withVerb puts a verb into a step, as the last it does. One that the step has
// already gets both lists; it reports false where the two cannot be joined.
func withVerb(st *yaml.Node, taken []*yaml.Node) bool {
	content := append([]*yaml.Node{}, st.Content...)
	for i := 0; i < len(taken); i += 2 {
		key, add := taken[i], taken[i+1]
		at := -1
		for k := 0; k+1 < len(content); k += 2 {
			if content[k].Value == key.Value {
				at = k + 1
			}
		}
		if at < 0 {
			content = append(content, key, add)
			continue
		}
		has := content[at]
		if key.Value == "into" {
			has, add = intoEach(entryOf(st, "remove"), has), intoEach(taken[len(taken)-1-i], add)
			if i > 0 {
				add = intoEach(taken[1], taken[i+1])
			}
		}
		if has == nil || add == nil || has.Kind != add.Kind || has.Kind == yaml.ScalarNode {
			return false
		}
		both := *has
		both.Content = append(append([]*yaml.Node{}, has.Content...), add.Content...)
		content[at] = &both
	}
	st.Content = content
	return true
}

// intoEach says of each part where it goes, where one place was said for all.
func intoEach(remove, into *yaml.Node) *yaml.Node {
	if into.Kind != yaml.ScalarNode || remove == nil {
		return into
	}
	out := &yaml.Node{Kind: yaml.MappingNode}
	for _, p := range remove.Content {
		if p.Kind == yaml.MappingNode && len(p.Content) > 0 {
			p = p.Content[0]
		}
		out.Content = append(out.Content, p, into)
	}
	return out
}

// orderFiles are the starters and the good definitions that stand alone.
func orderFiles(t *testing.T) []string {
	t.Helper()
	var out []string
	for _, glob := range []string{"starters/*.yaml", "../testdata/good/field-*.yaml", "../testdata/good/air-compressor.yaml"} {
		files, err := filepath.Glob(filepath.FromSlash(glob))
		if err != nil || len(files) == 0 {
			t.Fatal("no definitions in ", glob, err)
		}
		out = append(out, files...)
	}
	return out
}

// silentAbout reports whether check has nothing to say of a definition.
func silentAbout(text []byte) bool {
	_, problems := packs.Load(fstest.MapFS{"x": {Data: text}}, packs.Inputs{Definition: "x"})
	return len(problems) == 0
}
