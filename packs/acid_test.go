package packs_test

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
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

// harmless are the kinds of mutants that check may be silent about. They stay
// under a tenth of all.
var harmless = map[string]string{
	"take equipment.serial":   "prints on the front sheet only; many machines have none",
	"take equipment.location": "prints on the front sheet only",
	"take job.scope":          "prints on the front sheet only",

	"take parts.*.mass":   "of a part that one person can carry, without a tag of its own: nothing is worked out from it",
	"take parts.*.thread": "its hand stands, and no reading is set by turning it",
	"take parts.*.holds":  "the caution that it asks for stands all the same",
	"take parts.*.renew":  "the old part goes back then, as found; what the step says and its limit stand",

	"take parts.*.behind":   "the order that is written stands; of another nothing is told then but by after: lines",
	"take parts.*.behind[]": "the order that is written stands; of another nothing is told then but by after: lines",

	"take dimensions.*.at":           "at how many places it is read is the choice of the author",
	"take dimensions.*.at.station":   "at how many places it is read is the choice of the author",
	"take dimensions.*.at.station[]": "at how many places it is read is the choice of the author",
	"take dimensions.*.at.plane":     "at how many places it is read is the choice of the author",
	"take dimensions.*.at.plane[]":   "at how many places it is read is the choice of the author",
	"take dimensions.*.nominal":      "the box is wide enough for the range of the instrument then",
	"take dimensions.*.on-the":       "the kind of the size says it as well; the key only prints it",
	"take dimensions.*.reuse":        "the limit for new parts holds for old ones then, which is stricter",

	"take lay-down.*.floor": "a remark for the rigger; nothing is worked out from it",
	"take sets.*.why":       "the set is kept together all the same",

	"take joints.*.stages[]":   "how many stages there are is the choice of the author",
	"double joints.*.stages[]": "the same stage may come twice, as after slackening",

	"take cautions.*.signs":   "the words stand without their sign",
	"take cautions.*.signs[]": "the words stand without one of their signs",
	"take cautions.*.result":  "hazard and how to avoid it stand",
	"take cautions.*.rule":    "the sentence about site rules stands",

	"take parts.*.guard":    "of a job without an isolation: no lock waits for it",
	"take joints.*.pattern": "of three or four fasteners that one order is told for",

	"take dimensions.*.source":     "of a reading that is only recorded: no limit needs a source",
	"take dimensions.*.lost-by":    "what the author knows of an order and the faces do not show",
	"take dimensions.*.lost-by[]":  "what the author knows of an order and the faces do not show",
	"take dimensions.*.critical":   "it stands on the sheet of critical dimensions as well then",
	"take dimensions.*.why-coarse": "of an instrument that is fine enough without it",

	// What is fetched is a list for the store: which tools a job takes no rule knows,
	// but a torque without a wrench is told.
	"take tools":                    "the words of the steps name them",
	"take tools.tester":             "the words of the step name it",
	"take tools.locks":              "the words of the step ask for them",
	"take tools.locks.count":        "no number stands on the list then",
	"take tools.strap":              "the words of the step name it",
	"take tools.pan":                "the words of the step ask for it",
	"take tools.keys":               "the words of the step ask for them",
	"take tools.thermometer":        "the words of the step name it",
	"take tools.thermometer.size":   "no size stands on the list then",
	"take tools.spanner":            "the words of the joint name it",
	"take tools.puller.only":        "it stands on the list for the put-back row as well then",
	"take tools.heater.only":        "it stands on the list for taking off as well then",
	"take tools.cradle":             "the words of the step name it",
	"take tools.cradle.size":        "no size stands on the list then",
	"take tools.cradle.count":       "no number stands on the list then",
	"take tools.puller":             "the words of the step name it",
	"take tools.puller.size":        "no size stands on the list then",
	"take tools.puller.for":         "it is fetched for the whole job then",
	"take tools.heater":             "the words of the step name it",
	"take spares":                   "fetched in case, which nothing shows",
	"take spares.bearing":           "fetched in case, which nothing shows",
	"take spares.bearing.count":     "no number stands on the list then",
	"take spares.bearing.note":      "a remark",
	"take consumables":              "the words of the steps name them",
	"take consumables.oil":          "the words of the step name it",
	"take consumables.oil.count":    "no amount stands on the list then",
	"take consumables.locker":       "the joint names it",
	"take consumables.locker.count": "no amount stands on the list then",

	"take steps.each":               "a section whose steps have nothing of a place",
	"take steps.steps.caution":      "a hazard note of the author's choice",
	"take steps.steps.missed":       "a hint that nothing else in the definition knows of",
	"take steps.steps.people":       "of work that no heavy part asks for",
	"take steps.steps.check":        "who looks as well is the choice of the author",
	"take steps.steps.back-caution": "the cautions of the step stand at its put-back row as well then",
	"take steps.steps.photo":        "the words of the step ask for it",
	"take steps.steps.each":         "one step for both places, whose moves and boxes are all there",
	"take steps.steps.after.*":      "one of several reasons; the step stays where it is written, below the others",
	"take steps.steps.after":        "without it the step follows the one above, which binds it more",
	"take steps.steps.from":         "where the parts lie is known from where they went",
	"take steps.steps.from[]":       "where the parts lie is known from where they went",
	"take steps.steps.leave-out":    "the words of the step say so, and the part goes back later all the same",
	"take steps.steps.empty":        "the closing row of the section asks for it then",
	"take steps.steps.empty[]":      "the closing row of the section asks for it then",
	"take steps.steps[]":            "a step of words only",
	"take steps.steps.loosen":       "its fasteners come off in the same step",
	"take steps[]":                  "a section of words only",
	"move a step":                   "neither of the two steps says that it comes after the other, and no part, face or hold binds them",
}

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
	if silent*10 >= total {
		t.Errorf("check is silent about %d of %d mutants; under a tenth is allowed", silent, total)
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
	_, problems := packs.Load(fstest.MapFS{"x": {Data: m.out[0].text}}, packs.Inputs{Definition: "x"})
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
