package main

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// offeredAmount is an amount in a help text that has to be measured, weighed or looked up.
var offeredAmount = regexp.MustCompile(`[0-9][0-9.]* ?(?:mm2|mm|µm|in|kg|lb|N·m|lb-ft|kN|MPa|bar|°C|°F|C rise|kW|m3|%)(?:[^A-Za-z0-9]|$)`)

// policies are amounts of rules and of common practice, told with the key that they are
// usual for: nobody measures them.
var policies = []string{"heavy: 25 kg", "critical-lift: 75 %", "70 to 75 % is usual", "25 kg or less", "at most 0.00 mm, with 0 in the box when no leaf goes in"}

// forms are the codes of messages about how a number or a limit is written: their help
// is a line that can be read again, and no figure of the machine.
var forms = []string{"blank-in-number", "cut-by-comma", "fraction", "leaves", "marks-in-number", "mixed-forms", "no-split", "one-deviation", "power", "record",
	"slipped-row", "tolerance-size", "too-long", "too-many-figures", "two-points", "two-units", "unfinished", "tolerance", "brackets", "number-form", "dual-widens", "exactly", "no-tolerance", "condition", "two-rules", "two-sides", "label-length"}

// TestHelpOffersNoMeasuredNumber: what a message offers is copied. Of all bad definitions,
// no help text offers an amount that its author has not written and that has to be
// measured, weighed or looked up: the torque of 120 N·m that was offered for screws whose
// torque nobody had said was found on paper.
func TestHelpOffersNoMeasuredNumber(t *testing.T) {
	t.Parallel()
	files, err := filepath.Glob(filepath.Join(testdata, "bad", "*.yaml"))
	if err != nil || len(files) < 150 {
		t.Fatalf("%d definitions, %v", len(files), err)
	}
	helps := 0
	for _, f := range files {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range fileOnce(f).problems {
			for _, h := range p.Help {
				helps++
				if slices.Contains(forms, p.Code) {
					continue
				}
				for _, x := range policies {
					h = strings.ReplaceAll(h, x, "")
				}
				h = workedOut.ReplaceAllString(h, "")
				for _, m := range offeredAmount.FindAllString(h, -1) {
					number, _, _ := strings.Cut(m, " ")
					if strings.Contains(string(data), number) || strings.Contains(p.Message, number) {
						continue // the author's own, in another form
					}
					t.Errorf("%s: %s [%s]: the help offers %q: %s", filepath.Base(f), p.Message, p.Code, m, h)
				}
			}
		}
	}
	if helps < 500 {
		t.Errorf("only %d help texts were read", helps)
	}
}
