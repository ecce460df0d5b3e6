package packs_test

import (
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// A matched set does not say that its two parts lie against each other: the mark of a gear is
// not across its joint with the pinion, that of a coupling half not across the spacer. Where
// one is behind the other, one joint holds both, or the step says so, it is. Common practice,
// no source.
func TestAcrossIsGuessedOnlyWhereTwoPartsMeet(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		parts, do string
		want      bool
	}{
		{"gear: {name: Gear, set: S1}, pinion: {name: Pinion, set: S1}", "Mark the gear to its shaft, draw it.", false},
		{"gear: {name: Gear, set: S1}, pinion: {name: Pinion, set: S1}", "Mark the gear. Leave the pinion where it is.", false},
		{"gear: {name: Gear, set: S1}, pinion: {name: Pinion, set: S1}", "Mark gear and pinion at the teeth that mesh, draw the gear.", true},
		{"gear: {name: Gear, set: S1}, pinion: {name: Pinion, set: S1, behind: [gear]}", "Mark it, draw it.", true},
		{"gear: {name: Gear half, set: S1, behind: [bolt]}, pinion: {name: Pinion half, set: S1, behind: [bolt]}, bolt: {name: Bolt, count: 8}", "Mark it, draw it.", true},
		{"gear: {name: Gear half, set: S1, behind: [bolt]}, spacer: {name: Spacer, behind: [bolt]}, pinion: {name: Pinion half, set: S1, behind: [bolt]}, bolt: {name: Bolt, count: 8}", "Mark it, draw it.", false},
	} {
		jb, problems := packs.Load(fstest.MapFS{"law.yaml": {Data: []byte(lawHead + "parts: {" + x.parts + ", nut: {name: Nut, count: 2}" + `}
containers: {C1: {name: Parts, kind: crate, keep: dry}}
sets: {S1: {what: Both, why: run together}}
` + strings.ReplaceAll("joints: {J1: {what: Bolts, parts: [FAST], torque: 40 N·m, source: sheet 1}}\n", "FAST", map[bool]string{true: "bolt", false: "nut"}[strings.Contains(x.parts, "bolt:")]) + `steps:
  - {step: off, do: "` + x.do + `", match-marks: [gear]}
`)}}, packs.Inputs{Definition: "law.yaml"})
		i := slices.IndexFunc(jb.Parts, func(p *job.Part) bool { return p.Key == "gear" })
		if i < 0 || (jb.Parts[i].Across != nil) != x.want {
			t.Errorf("%s, %q: across %v, want %t\n%v", x.parts, x.do, i >= 0 && jb.Parts[i].Across != nil, x.want, problems)
		}
	}
}

// The partner of a mark that has come off above is an error where the author names it, and a
// warning where it is a guess.
func TestNoErrorRisesFromAGuessedPartner(t *testing.T) {
	t.Parallel()
	for mark, want := range map[string]source.Severity{"cap": source.Warning, "{cap: foot}": source.Error} {
		_, problems := packs.Load(fstest.MapFS{"law.yaml": {Data: []byte(lawHead + `parts: {cap: {name: Cap, set: S1, behind: [foot]}, foot: {name: Foot, set: S1}}
containers: {C1: {name: Parts, kind: crate, keep: dry}}
sets: {S1: {what: Both, why: bored together}}
steps:
  - {step: foot, do: "Foot off.", remove: [foot], into: C1}
  - {step: cap, do: "Mark it, cap off.", match-marks: [` + mark + `], remove: [cap], into: C1}
  - {step: cap-on, do: "Cap on.", fit: [cap]}
  - {step: foot-on, do: "Foot on.", fit: [foot]}
`)}}, packs.Inputs{Definition: "law.yaml"})
		i := slices.IndexFunc(problems, func(p source.Problem) bool { return p.Code == "marked-late" })
		if i < 0 || problems[i].Severity != want {
			t.Errorf("%s: marked-late at %d, want severity %d:\n%v", mark, i, want, problems)
		}
	}
}
