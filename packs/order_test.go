package packs_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/job"
)

// The laws of order over random piles: parts that are behind each other, with joints,
// readings and marks, taken apart and put together in any order. The tests find by
// themselves whether an order can be done, and check must say the same.

// A pileAct is one act at one part of a pile.
type pileAct struct {
	verb string // mark, measure, loosen, remove, fit, tighten, set
	part int
}

// A pile is a machine whose parts lie in front of each other.
type pile struct {
	behind [][]int // of each part, those in front of it
	has    []map[string]bool
	sets   []int       // of each part, the part that sets its reading, -1 for none
	steps  [][]pileAct // what each step does, in its order
	hold   int         // the step with a hold, -1 for none
}

var pileVerbs = []string{"mark", "measure", "loosen", "remove", "fit", "tighten", "set"}

// drawPile makes a pile and the one order that is sure to do: the parts in the order
// of their numbers, and back again.
func drawPile(t *rapid.T) *pile {
	p := &pile{hold: -1}
	n := rapid.IntRange(1, 4).Draw(t, "parts")
	for i := range n {
		var front []int
		for k := range i {
			if rapid.IntRange(0, 2).Draw(t, "in front") == 0 {
				front = append(front, k)
			}
		}
		p.behind = append(p.behind, front)
		has := map[string]bool{"remove": true, "fit": true}
		has["mark"] = rapid.Bool().Draw(t, "marked")
		has["measure"] = rapid.Bool().Draw(t, "measured")
		has["set"] = has["measure"]
		has["loosen"] = rapid.Bool().Draw(t, "jointed")
		has["tighten"] = has["loosen"]
		p.has = append(p.has, has)
		p.sets = append(p.sets, -1)
	}
	for i := range n - 1 {
		// An adjuster with no reading of its own, which to set the other would spoil.
		if k := rapid.IntRange(i+1, n-1).Draw(t, "adjuster"); p.has[i]["measure"] && !p.has[k]["measure"] && !slices.Contains(p.sets, k) {
			p.sets[i] = k
		}
	}
	add := func(i int, verbs []string) {
		for _, v := range verbs {
			if p.has[i][v] {
				p.steps = append(p.steps, []pileAct{{v, i}})
			}
		}
	}
	for i := range n {
		add(i, pileVerbs[:4])
	}
	for i := n - 1; i >= 0; i-- {
		add(i, pileVerbs[4:])
	}
	return p
}

// text writes the pile as a definition.
func (p *pile) text() string {
	var parts, joints, dims, steps strings.Builder
	for i, front := range p.behind {
		fmt.Fprintf(&parts, "  part-%d: {name: Part %d, thread: M20x1.5", i, i)
		for k, f := range front {
			parts.WriteString(map[bool]string{true: ", behind: [", false: ", "}[k == 0])
			fmt.Fprintf(&parts, "part-%d", f)
		}
		parts.WriteString(map[bool]string{true: "]}\n", false: "}\n"}[len(front) > 0])
		if p.has[i]["loosen"] {
			fmt.Fprintf(&joints, "  J%d: {what: Joint %d, parts: [part-%d], torque: 90 N·m}\n", i+1, i, i)
		}
		if p.has[i]["measure"] {
			fmt.Fprintf(&dims, "  D%d: {what: Gap %d, kind: gap, from: {part-%d: face}, to: {base: face}, nominal: 5.0 mm, left: 4.0 to 6.0 mm, source: sheet", i+1, i, i)
			if k := p.sets[i]; k >= 0 {
				fmt.Fprintf(&dims, ", adjust: part-%d", k)
			}
			dims.WriteString("}\n")
		}
	}
	for i, acts := range p.steps {
		fmt.Fprintf(&steps, "      - step: s-%d\n        after: {start: so it is}\n        do: Do it.\n", i)
		for _, a := range acts {
			switch a.verb {
			case "mark":
				fmt.Fprintf(&steps, "        match-marks: [part-%d]\n", a.part)
			case "remove":
				fmt.Fprintf(&steps, "        remove: [part-%d]\n        into: bench\n", a.part)
			case "fit":
				fmt.Fprintf(&steps, "        fit: [part-%d]\n", a.part)
			case "measure", "set":
				fmt.Fprintf(&steps, "        %s: [D%d]\n", a.verb, a.part+1)
			default:
				fmt.Fprintf(&steps, "        %s: [J%d]\n", a.verb, a.part+1)
			}
		}
		if i == p.hold {
			steps.WriteString("        hold: W1\n")
		}
	}
	out := "pack: 1\nequipment: {tag: X-1, name: Machine}\njob: {number: \"1\", title: Law, revision: A, issued: 2026-03-02}\nparts:\n  base: {name: Base}\n" + parts.String()
	if joints.Len() > 0 {
		out += "joints:\n" + joints.String()
	}
	if dims.Len() > 0 {
		out += "dimensions:\n" + dims.String()
	}
	if p.hold >= 0 {
		out += "holds:\n  W1: {kind: hold, what: Seen., releases: foreman}\n"
	}
	return out + "steps:\n  - section: Work\n    steps:\n      - {step: start, after: {}, do: Lock it.}\n" + steps.String()
}

// cannot tells what is wrong with the order of a pile, found without the program;
// empty if it can be done.
func (p *pile) cannot() string {
	at, step := map[pileAct]int{}, map[pileAct]int{}
	n := 0
	for s, acts := range p.steps {
		for _, a := range acts {
			at[a], step[a] = n, s
			n++
		}
	}
	for i, has := range p.has {
		// A mark is made while the part stands where it ran: not when it is off, nor back.
		if m := at[pileAct{"mark", i}]; has["mark"] && m > at[pileAct{"remove", i}] {
			return fmt.Sprintf("part %d is marked when it has come off", i)
		}
		for v := 2; v < len(pileVerbs); v++ {
			for u := 1; u < v; u++ {
				first, then := pileAct{pileVerbs[u], i}, pileAct{pileVerbs[v], i}
				if !has[first.verb] || !has[then.verb] || first.verb == "measure" && then.verb != "loosen" && then.verb != "remove" && then.verb != "set" {
					continue
				}
				if at[first] > at[then] {
					return fmt.Sprintf("%s of part %d comes after its %s", first.verb, i, then.verb)
				}
			}
		}
		// What an adjuster sets reads otherwise from its turning on, and is set when it stays.
		if k := p.sets[i]; k >= 0 {
			for _, v := range []string{"loosen", "remove"} {
				if p.has[k][v] && at[pileAct{"measure", i}] > at[pileAct{v, k}] {
					return fmt.Sprintf("part %d is measured after the %s of part %d, which sets it", i, v, k)
				}
			}
			for _, v := range []string{"fit", "tighten"} {
				if p.has[k][v] && at[pileAct{"set", i}] < at[pileAct{v, k}] {
					return fmt.Sprintf("part %d is set before the %s of part %d, which sets it", i, v, k)
				}
			}
		}
		for _, f := range p.behind[i] {
			out := step[pileAct{"remove", f}] // the first step with the front part off
			in := step[pileAct{"fit", f}]     // the last step with it off
			for _, v := range []string{"loosen", "remove", "fit", "tighten"} {
				if s := step[pileAct{v, i}]; has[v] && (s < out || s > in) {
					return fmt.Sprintf("part %d is in front at the %s of part %d", f, v, i)
				}
			}
		}
	}
	return ""
}

// told lists the errors of a pile.
func (p *pile) told(t *rapid.T) (*job.Job, error) {
	jb, err := load(p.text())
	if len(jb.Sections) == 0 {
		t.Fatalf("%v\n%s", err, p.text())
	}
	return jb, err
}

// TestOrdersThatCannotBeDoneAreTold: steps changed over at random, and steps put
// together with their verbs in any order.
func TestOrdersThatCannotBeDoneAreTold(t *testing.T) {
	t.Parallel()
	good, bad := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		p := drawPile(t)
		for range rapid.IntRange(0, 3).Draw(t, "swaps") {
			i, k := rapid.IntRange(0, len(p.steps)-1).Draw(t, "one"), rapid.IntRange(0, len(p.steps)-1).Draw(t, "other")
			p.steps[i], p.steps[k] = p.steps[k], p.steps[i]
		}
		for i := len(p.steps) - 1; i > 0; i-- {
			a, b := p.steps[i-1], p.steps[i]
			// A step has each verb once; what one step does of its own fit and remove of
			// one part is no work.
			if a[0].part == b[0].part && !slices.ContainsFunc(a, func(x pileAct) bool { return x.verb == "remove" || x.verb == "fit" }) && rapid.Bool().Draw(t, "one step") {
				both := append(slices.Clone(a), b...)
				if rapid.IntRange(0, 3).Draw(t, "turned") == 0 {
					slices.Reverse(both)
				}
				p.steps = slices.Replace(p.steps, i-1, i+1, both)
			}
		}
		_, err := p.told(t)
		why := p.cannot()
		if (err != nil) != (why != "") {
			t.Fatalf("check says %v, and by hand: %q\n%s", err, why, p.text())
		}
		if why == "" {
			good++
		} else {
			bad++
		}
	})
	if good < 5 || bad < 5 {
		t.Errorf("only %d orders that can be done and %d that cannot were tried", good, bad)
	}
}

// TestFreeRanges: a step may be moved anywhere in the range that is printed; moved
// past its end it breaks a law or a line of its author, or passes a hold.
func TestFreeRanges(t *testing.T) {
	t.Parallel()
	inside, outside := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		p := drawPile(t)
		if rapid.Bool().Draw(t, "hold") {
			p.hold = rapid.IntRange(0, len(p.steps)-1).Draw(t, "place of the hold")
		}
		jb, err := p.told(t)
		if err != nil {
			t.Fatalf("%v\n%s", err, p.text())
		}
		all := jb.Sections[0].Steps
		st := all[rapid.IntRange(1, len(all)-1).Draw(t, "step")]
		if st.Free == nil {
			t.Skip("bound on both sides")
		}
		low, high := 0, len(all)-1 // of the places in all, the step itself taken out
		if st.Free.After != nil {
			low = st.Free.After.Index + 1
		}
		if st.Free.Before != nil {
			high = st.Free.Before.Index - 1
		}
		for to := low; to <= high; to++ {
			if _, err := p.moved(st.Index, to).told(t); err != nil {
				t.Fatalf("step %s is free from %d to %d, and at %d: %v\n%s", st.No, low, high, to, err, p.text())
			}
			inside++
		}
		for to, why := range map[int]*job.Bind{low - 1: st.Free.AfterBind, high + 1: st.Free.BeforeBind} {
			if why == nil || why.Kind == job.BoundHold || to < 1 {
				continue // the start stands first; its line is the author's own
			}
			if silentAbout([]byte(p.moved(st.Index, to).text())) {
				t.Fatalf("step %s is free from %d to %d (%s), and nothing is said at %d\n%s", st.No, low, high, why.Why(), to, p.text())
			}
			outside++
		}
	})
	if inside < 50 || outside < 50 {
		t.Errorf("only %d places inside a range and %d outside were tried", inside, outside)
	}
}

// moved is the pile with the step at one place of the job, the start counted, at
// another.
func (p *pile) moved(from, to int) *pile {
	q := *p
	q.steps = slices.Delete(slices.Clone(p.steps), from-1, from)
	q.steps = slices.Insert(q.steps, max(to-1, 0), p.steps[from-1])
	if h := p.hold; h >= 0 {
		q.hold = slices.IndexFunc(q.steps, func(s []pileAct) bool { return s[0] == p.steps[h][0] })
	}
	return &q
}
