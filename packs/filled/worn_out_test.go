package filled_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs"
	"matchmark/packs/filled"
	"matchmark/packs/job"
)

// bushing has limits as TM 10-4320-307-24 p. 4-12 prints that of a seal bushing, in the
// three ways in which new, old and mended parts can have ends on different sides.
const bushing = `
pack: 1
equipment: {tag: PU-2, name: Fire pump}
job: {number: WO-31, title: Bushing, revision: A, issued: 2026-03-02}
parts: {sleeve: {name: Shaft sleeve}, bushing: {name: Seal bushing}}
dimensions:
  D1: {what: Clearance, kind: clearance, from: {bushing: bore}, to: {sleeve: outside}, lost-by: nothing, left: at least 0.015 in, LIMITS, over: renew both, under: bore the bushing, source: p. 4-12}
steps:
  - {step: read, do: Measure the clearance., measure: [D1]}
  - {step: set, after: {read: it is known}, do: Measure the clearance again., set: [D1]}
`

// TestWornOut: a reading that new parts may have for want of an end, and old parts may not,
// is worn out. A bushing at 0.040 in under "at least 0.015 in, old part at most 0.031 in"
// came back as in limits, and the report did not say to renew it.
func TestWornOut(t *testing.T) {
	for _, x := range []struct {
		limits, value string
		want          filled.Outcome
		action        string
	}{
		{"reuse: at most 0.031 in", "0.014 in", filled.Out, "bore the bushing"},
		{"reuse: at most 0.031 in", "0.015 in", filled.In, ""},
		{"reuse: at most 0.031 in", "0.031 in", filled.In, ""},
		{"reuse: at most 0.031 in", "0.032 in", filled.Out, "renew both"},
		{"repair: at most 0.031 in", "0.032 in", filled.Out, "renew both"},
		{"repair: at most 0.031 in", "0.031 in", filled.In, ""},
		{"reuse: at most 0.031 in, repair: at most 0.040 in", "0.032 in", filled.Mend, "renew both"},
		{"reuse: at most 0.031 in, repair: at most 0.040 in", "0.041 in", filled.Out, "renew both"},
		{"reuse: at most 0.031 in, repair: at most 0.040 in", "0.014 in", filled.Out, "bore the bushing"},
		{"reuse: 0.012 to 0.031 in", "0.013 in", filled.OldIn, ""},
		{"reuse: 0.012 to 0.031 in", "0.011 in", filled.Out, "bore the bushing"},
		{"reuse: 0.012 to 0.031 in", "0.040 in", filled.Out, "renew both"},
	} {
		text := strings.Replace(bushing, "LIMITS", x.limits, 1)
		jb, problems := packs.Load(fstest.MapFS{"x.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "x.yaml"})
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		for _, side := range []string{"found", "left"} {
			r, told := worked(t, jb, "D1,,"+side+","+x.value+",L. Again\n")
			when := job.AsFound
			if side == "left" {
				when = job.AsLeft
			}
			v, _ := r.Verdict(dim(t, jb, "D1"), when)
			if told != "" || v.Outcome != x.want || strings.Join(v.Actions, "; ") != x.action || v.Bad() && len(v.Findings) == 0 {
				t.Errorf("%s as %s, %s: judged %d (%s) with %d findings, want %d (%s); told %s", x.value, side, x.limits, v.Outcome, strings.Join(v.Actions, "; "), len(v.Findings), x.want, x.action, told)
			}
			for _, l := range r.Lines(nil) {
				is := l.FoundVerdict
				if side == "left" {
					is = l.LeftVerdict
				}
				if is != x.want {
					t.Errorf("%s as %s, %s: the report says %d, want %d", x.value, side, x.limits, is, x.want)
				}
			}
		}
	}
}
