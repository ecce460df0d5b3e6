package main

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/units"
	"matchmark/templates"
)

// TestAnyKeyOfALiftLeftOut: whatever is left out of what is written of a lift, its gear
// and its crane, check tells of it or the lift is worked out, and the draft prints what is
// known, says what is not, and invents nothing: each amount on the sheet of a lift without
// figures stands in the definition. A key that was missing printed no reason but "a key
// that it needs is not written", and left mass and centre of gravity out without a word.
func TestAnyKeyOfALiftLeftOut(t *testing.T) {
	longTest(t)
	t.Parallel()
	without := 0
	for _, x := range eachKeyLeftOut(t, 100, ownWith(t, 8, "lifts"), "lifts", "gear", "cranes") {
		d := drafted(x.text(), layout.A4)
		checkLiftHelp(t, x.where, d.problems)
		for _, l := range d.jb.Lifts {
			if !l.Computed() {
				without++
				checkLiftDraft(t, x.where, l, x.text(), d.pack, d.problems)
			}
		}
	}
	if without < 40 {
		t.Errorf("only %d lifts had no figures", without)
	}
}

// offered is an amount in a help text.
var offered = regexp.MustCompile(`[0-9] ?(kg|t|lb|mm|m|in|%|°|kN|N|C|F|kN/m2)\b|[0-9]°`)

// checkLiftHelp sees that what is told of a lift says what to do about it, and offers no
// number that has to be weighed, measured or looked up.
func checkLiftHelp(t *testing.T, where string, problems source.Problems) {
	t.Helper()
	for _, p := range problems {
		if !slices.Contains([]string{"not-computed", "not-known", "must-not-lift", "look-at-lift", "no-headroom", "missing-key"}, p.Code) {
			continue
		}
		help := strings.Join(p.Help, " ")
		if strings.TrimSpace(help) == "" {
			t.Errorf("%s: nothing says what to do about: %s", where, p.Message)
		}
		// The aim, the published limits and the name of a sling are no measured numbers.
		for _, known := range []string{"60° is the aim", "over 15°", "30° to under 90°", "Round sling 3 t", "round-3t"} {
			help = strings.ReplaceAll(help, known, "")
		}
		if offered.MatchString(help) {
			t.Errorf("%s: %s: the help offers a number: %s", where, p.Message, help)
		}
	}
}

// checkLiftDraft sees that the sheet of a lift without figures says why, and that its
// amounts are written in the definition.
func checkLiftDraft(t *testing.T, where string, l *job.Lift, text string, pack *templates.Pack, problems source.Problems) {
	t.Helper()
	if problems.Errors() == 0 {
		t.Errorf("%s: %s has no figures, and check is silent", where, l.Mark)
	}
	sheet := liftText(pack, l)
	reasons := ""
	for _, why := range l.Reasons(nil) {
		why = units.Pointed(why)
		reasons += " " + why
		if !strings.Contains(unspaced(sheet), unspaced(why)) {
			t.Errorf("%s: the sheet of %s does not say: %s\n%s", where, l.Mark, why, sheet)
		}
	}
	if reasons == "" {
		t.Errorf("%s: %s has no figures and no reason", where, l.Mark)
	}
	for name, missing := range map[string]bool{"Mass: not written": l.Load().Mass <= 0, "Centre of gravity: not written": l.Load().CoG == nil} {
		if missing && !strings.Contains(unspaced(sheet), unspaced(name)) {
			t.Errorf("%s: the sheet of %s does not say %q\n%s", where, l.Mark, name, sheet)
		}
	}
	known := writtenAmounts(l, text+reasons)
	for _, a := range printedAmounts(sheet) {
		if !slices.ContainsFunc(known, func(k float64) bool { return math.Abs(k-a.value) <= a.step+1e-9 }) {
			t.Errorf("%s: the sheet of %s prints %s, which is not written\n%s", where, l.Mark, a.text, sheet)
		}
	}
}

// writtenAmounts are the numbers in a text, as they are and in the units of the sheet.
func writtenAmounts(l *job.Lift, text string) []float64 {
	out := []float64{25} // the mass above which nobody lifts alone, if a site does not say
	if l.Body != nil {
		out = append(out, float64(l.Body.Mass), float64(l.Body.MassTolerance), float64(l.Load().CoG.X), float64(l.Load().CoGTolerance.X))
	}
	mass := float64(l.Load().Mass)
	for _, m := range regexp.MustCompile(`-?[0-9]+(\.[0-9]+)?(/[0-9]+)?`).FindAllString(text, -1) {
		top, bottom, _ := strings.Cut(m, "/")
		x, err := strconv.ParseFloat(top, 64)
		if err != nil {
			continue
		}
		if y, err := strconv.ParseFloat(bottom, 64); err == nil && y != 0 {
			x /= y
		}
		// t and m in kg and mm, t in lb; a tolerance in per cent of the mass.
		out = append(out, x, 1000*x, x/0.00045359237, x/100*mass, x/100*mass/0.45359237)
	}
	return out
}

var amountText = regexp.MustCompile(`([−-]?[0-9]+(?:\.[0-9]+)?)[ \x{a0}]?(kg/m³|kg mm|kg\b|lb/ft²|lb\b|mm\b|in\b|kN/m²|%|°C|°F|°)`)

// printedAmounts lists the amounts of a text; step is the smallest that each can tell.
func printedAmounts(text string) []amount {
	var out []amount
	for _, m := range amountText.FindAllStringSubmatch(text, -1) {
		number := strings.Replace(m[1], "−", "-", 1)
		x, err := strconv.ParseFloat(number, 64)
		if err != nil {
			continue
		}
		_, decimals, _ := strings.Cut(number, ".")
		out = append(out, amount{text: m[0], unit: m[2], value: x, step: math.Pow(10, -float64(len(decimals)))})
	}
	return out
}

// liftText is what stands on the pages of a lift, without their heads and feet.
func liftText(pack *templates.Pack, l *job.Lift) string {
	var out strings.Builder
	for _, p := range pack.Pages.BySheet() {
		for _, it := range p.Items {
			if s, ok := it.Shape.(layout.Text); ok && it.Ref == layout.Ref(l.At) && p.Sheet == "lifts" {
				out.WriteString(s.S + " ")
			}
		}
	}
	return out.String()
}
