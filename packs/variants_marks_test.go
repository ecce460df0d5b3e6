package packs_test

import (
	"strings"
	"testing"
)

// The front sheet told pump P2 and valve V3, parts by their keys, as marks that are not in the pack.
func TestMarksThatAreNotHere(t *testing.T) {
	t.Parallel()
	jb, codes := codesOf(lawHead + `options:
  seal: {what: Seal, fitted: no}
parts:
  rod: {name: Rod}
  P2: {name: Pump 2, fitted: seal}
  V3: {name: Valve 3, fitted: seal}
instruments: {gauge: {name: Depth gauge, range: 0 to 150 mm, reads: 0.01 mm}}
dimensions:
  D1: {what: Rod bore, kind: bore, of: {rod: bore}, by: gauge, found: record to 0.01 mm, nominal: 30 mm}
  D2: {what: Bore of the pump, kind: bore, of: {P2: bore}, by: gauge, found: record to 0.01 mm, nominal: 30 mm, fitted: seal}
isolations:
  Q1: {point: Breaker 3-1, energy: electric, state: racked out, proved: tested dead, fitted: seal}
permits:
  X1: {what: Work permit, fitted: seal}
openings:
  O1: {what: Bore of the valve, cover: taped sheet, fitted: seal}
containers:
  C7: {name: Pump, kind: box, fitted: seal}
joints:
  J4: {what: Pump bolts, parts: V3, torque: 40 N·m, source: sheet 5, fitted: seal}
holds:
  W2: {kind: hold, what: Engineer has seen the pump., releases: engineer}
cautions:
  Z5: {signal: caution, hazard: The pump is oily., avoid: Wipe it first.}
steps:
  - {step: read, do: Measure., measure: [D1]}
  - {step: pump, do: Measure the pump., caution: [Z5], hold: W2, measure: [D2], fitted: seal}
`)
	if got := strings.Join(jb.NotHere, " "); len(codes) > 0 || got != "C7 D2 J4 W2" {
		t.Errorf("not here are %q (told %v), want C7 D2 J4 W2", got, codes)
	}
}
