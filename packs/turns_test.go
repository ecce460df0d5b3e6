package packs_test

import (
	"slices"
	"strings"
	"testing"

	"matchmark/packs/source"
)

// turns is a shaft on two stands: PUT says whose turn it is to take its sleeve off.
const turns = `pack: 1
equipment: {tag: PU-2, name: Rinse pump}
job: {number: WO-31, revision: A, issued: 2026-03-02, title: Sleeves}
places:
  end: {DE: {name: drive end, viewed-from: the motor}, NDE: {name: non-drive end, viewed-from: the motor}}
parts:
  sleeve: {name: Shaft sleeve, each: end}
  ring: {name: Snap ring, each: end, behind: [sleeve]}
containers:
  C1: {name: Sleeves, kind: box, each: end}
steps:
  - section: Off
    each: end
    steps:
      - {step: sleeve, where: bench, after: {PUT: the shaft lies on the other stand}, do: Draw the sleeve., remove: [sleeve], into: C1}
      - {step: ring, where: bench, after: {sleeve: it is behind the sleeve}, do: Take the ring out., remove: [ring], into: C1}
  - section: On
    each: end
    steps:
      - {step: ring-on, where: bench, do: Put the ring in., fit: [ring]}
      - {step: sleeve-on, where: bench, after: {ring-on: it is behind the sleeve}, do: Push the sleeve on., fit: [sleeve], empty: [C1]}
`

// A step that is done at both ends and names itself at one of them is done there first, and
// nothing is in the way of the other for that: the first end may be whole again before. Common
// practice, no source: of two stands one is taken away at a time.
func TestTurns(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		put  string
		told bool // that it comes after itself
	}{{"sleeve/DE", false}, {"sleeve/NDE", false}, {"sleeve", true}} {
		jb, problems := loadLaw(strings.Replace(turns, "PUT", c.put, 1))
		if told := slices.ContainsFunc(problems, func(p source.Problem) bool { return p.Code == "after-itself" }); told != c.told {
			t.Errorf("after: {%s: …}: told that it comes after itself %t, want %t", c.put, told, c.told)
		}
		if slices.ContainsFunc(problems, func(p source.Problem) bool { return p.Code == "back-order" }) {
			t.Errorf("after: {%s: …}: %v", c.put, problems)
		}
		if c.put != "sleeve/DE" {
			continue
		}
		if st := jb.Sections[1].Steps[0]; len(st.After) != 1 || st.After[0].Step != jb.Sections[0].Steps[0] {
			t.Errorf("%s comes after %v, want the same step at the drive end", st.Name(), st.After)
		}
		if first := jb.Sections[0].Steps[0]; len(first.After) != 0 {
			t.Errorf("%s, which goes first, comes after %v", first.Name(), first.After)
		}
	}
}
