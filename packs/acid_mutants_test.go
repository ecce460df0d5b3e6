package packs_test

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"gopkg.in/yaml.v3"
)

// A mutator makes the mutants of one definition from its tree. It changes the
// tree in place, encodes it, and changes it back.
type mutator struct {
	t     *testing.T
	root  *yaml.Node
	names map[string]bool // everything that has a name or mark
	out   []mutant
}

func mutants(t *testing.T, data []byte) []mutant {
	t.Helper()
	var doc yaml.Node
	if err := yaml.Unmarshal(data, &doc); err != nil {
		t.Fatal(err)
	}
	m := &mutator{t: t, root: doc.Content[0], names: map[string]bool{}}
	m.collect(m.root, 0)
	m.add("untouched", "", nil, nil)
	_, problems := loadLaw(m.out[0].text)
	if len(problems) > 0 {
		t.Fatalf("check speaks about the whole definition: %v", problems)
	}
	m.out = nil
	m.walk(m.root, "", nil, nil, nil)
	m.moveSteps()
	return m.out
}

// collect gathers the names and marks of things: the keys of the maps below the
// top, and the names of steps.
func (m *mutator) collect(n *yaml.Node, depth int) {
	for i := 0; i+1 < len(n.Content) && n.Kind == yaml.MappingNode; i += 2 {
		k, v := n.Content[i], n.Content[i+1]
		if depth == 1 || k.Value == "step" || k.Value == "section" {
			m.names[k.Value] = true
			if v.Kind == yaml.ScalarNode {
				m.names[v.Value] = true
			}
		}
		m.collect(v, depth+1)
	}
	for i := 0; i < len(n.Content) && n.Kind == yaml.SequenceNode; i++ {
		m.collect(n.Content[i], 9)
	}
}

// add encodes the tree as it is now.
func (m *mutator) add(kind, what string, path []int, tokens []string) {
	text, err := yaml.Marshal(m.root)
	if err != nil {
		m.t.Fatal(err)
	}
	m.out = append(m.out, mutant{kind, what, slices.Clone(path), slices.Clone(tokens), text})
}

// named lists the names and marks within a node.
func (m *mutator) named(n *yaml.Node) []string {
	var out []string
	if n.Kind == yaml.ScalarNode {
		if base, _, _ := strings.Cut(n.Value, "/"); m.names[base] {
			out = append(out, base)
		}
	}
	for _, c := range n.Content {
		out = append(out, m.named(c)...)
	}
	return out
}

// owned are the maps whose keys are names of the author, so that the path of a
// kind has a star there.
var owned = regexp.MustCompile(`^(places(\.\*)?|parts|instruments|dimensions|containers|big|lay-down|sets|joints|holds|isolations|openings|cautions)$`)

// walk spoils every place below a node. path leads to the node, owner to the thing
// with a name or mark that it belongs to.
func (m *mutator) walk(n *yaml.Node, kind string, path, owner []int, tokens []string) {
	switch n.Kind {
	case yaml.MappingNode:
		for i := 0; i+1 < len(n.Content); i += 2 {
			m.entry(n, i, kind, path, owner, tokens)
		}
	case yaml.SequenceNode:
		for i := range n.Content {
			m.item(n, i, kind, path, owner, tokens)
		}
	}
}

func (m *mutator) entry(n *yaml.Node, i int, kind string, path, owner []int, tokens []string) {
	spoilt := owner
	k, v := n.Content[i], n.Content[i+1]
	name := strings.TrimPrefix(kind+"."+k.Value, ".")
	inner := slices.Clone(tokens)
	if owned.MatchString(kind) {
		name = kind + ".*"
		inner = append(inner, k.Value)
		owner = append(slices.Clone(path), i+1)
	} else if slices.Contains([]string{"after", "into", "left", "source", "hand", "missed"}, last(kind)) {
		name = kind + ".*"
	}
	was := n.Content
	all := append(append(slices.Clone(inner), m.named(k)...), m.named(v)...)

	n.Content = append(slices.Clone(was[:i]), was[i+2:]...)
	m.add("take "+name, k.Value, spoilt, all)
	if name == kind+".*" {
		n.Content = append(slices.Clone(was), k, v)
		m.add("double "+name, k.Value, spoilt, all)
	}
	n.Content = was

	if v.Kind == yaml.ScalarNode {
		m.scalar(v, name, owner, all)
	}
	m.walk(v, name, append(slices.Clone(path), i+1), owner, inner)
}

func last(kind string) string { return kind[strings.LastIndex(kind, ".")+1:] }

func (m *mutator) item(n *yaml.Node, i int, kind string, path, owner []int, tokens []string) {
	v := n.Content[i]
	inner := append(slices.Clone(tokens), stepNames(v)...)
	all := append(slices.Clone(inner), m.named(v)...)
	was := n.Content
	what := strings.Join(m.named(v), " ")
	n.Content = append(slices.Clone(was[:i]), was[i+1:]...)
	m.add("take "+kind+"[]", what, owner, all)
	n.Content = slices.Insert(slices.Clone(was), i, v)
	m.add("double "+kind+"[]", what, owner, all)
	n.Content = was
	if len(stepNames(v)) > 0 {
		owner = append(slices.Clone(path), i)
	}
	m.walk(v, kind, append(slices.Clone(path), i), owner, inner)
}

// stepNames is the name of a step or section, by which its place is known.
func stepNames(n *yaml.Node) []string {
	for i := 0; i+1 < len(n.Content) && n.Kind == yaml.MappingNode; i += 2 {
		if k := n.Content[i].Value; k == "step" || k == "section" {
			return []string{n.Content[i+1].Value}
		}
	}
	return nil
}

var (
	limitKey = regexp.MustCompile(`\.(left|reuse|found|range|reads|mass|torque|thread)(\.\*)?$|\.stages$`)
	numbers  = regexp.MustCompile(`[-+]?\d+(\.\d+)?`)
	unit     = regexp.MustCompile(`(\d) (mm|kg|N·m|in)\b`)
)

// scalar spoils one limit or quantity: its unit left out, its first two numbers
// turned round.
func (m *mutator) scalar(v *yaml.Node, name string, path []int, tokens []string) {
	if !limitKey.MatchString(name) {
		return
	}
	was := v.Value
	if bare := unit.ReplaceAllString(was, "$1"); bare != was {
		v.Value = bare
		m.add("unit "+name, was, path, tokens)
	}
	if at := numbers.FindAllStringIndex(was, -1); len(at) > 1 {
		a, b := was[at[0][0]:at[0][1]], was[at[1][0]:at[1][1]]
		if name == "dimensions.*.left" && strings.Contains(was, "+") && !strings.Contains(was, "to") && len(at) > 2 {
			// Nominal with two deviations: these two are the numbers to turn round.
			a, b = was[at[1][0]:at[1][1]], was[at[2][0]:at[2][1]]
			at = at[1:]
		}
		v.Value = was[:at[0][0]] + b + was[at[0][1]:at[1][0]] + a + was[at[1][1]:]
		m.add("swap "+name, was+" to "+v.Value, path, tokens)
	}
	v.Value = was
}

// moveSteps moves every step up and down by one within its section, and over the
// end of the section into the next one that repeats over the same places.
func (m *mutator) moveSteps() {
	var sections *yaml.Node
	for i := 0; i+1 < len(m.root.Content); i += 2 {
		if m.root.Content[i].Value == "steps" {
			sections = m.root.Content[i+1]
		}
	}
	type place struct{ list *yaml.Node }
	var lists []place
	each := map[*yaml.Node]string{}
	for _, s := range sections.Content {
		over := ""
		for i := 0; i+1 < len(s.Content); i += 2 {
			switch s.Content[i].Value {
			case "each":
				over = s.Content[i+1].Value
			case "steps":
				lists = append(lists, place{s.Content[i+1]})
				each[s.Content[i+1]] = over
			}
		}
	}
	for k, p := range lists {
		for i, st := range p.list.Content {
			tokens := m.named(st)
			if i > 0 {
				c := p.list.Content
				c[i], c[i-1] = c[i-1], c[i]
				m.add("move a step", fmt.Sprintf("%s before %s", stepNames(st), stepNames(c[i])), []int{}, tokens)
				c[i], c[i-1] = c[i-1], c[i]
			} else if k > 0 && each[lists[k-1].list] == each[p.list] && len(p.list.Content) > 1 {
				above := lists[k-1].list
				was, wasAbove := p.list.Content, above.Content
				p.list.Content = was[1:]
				above.Content = append(slices.Clone(wasAbove[:len(wasAbove)-1]), st, wasAbove[len(wasAbove)-1])
				m.add("move a step", fmt.Sprintf("%s into the section above", stepNames(st)), []int{}, tokens)
				p.list.Content, above.Content = was, wasAbove
			}
		}
	}
}
