package main

import (
	"math"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates"
)

// heatAmount is an amount as it stands on a heat sheet, clockTime a time of a watch in a
// sentence.
var (
	heatAmount = regexp.MustCompile(`([−-]?[0-9][0-9\x{a0}]*(?:\.[0-9]+)?)[ \x{a0}](mm|in|°C|°F|kN|lbf|N·m|lb-ft|MPa|psi|kW|MJ|%|min 30\x{a0}s|min|s|h)(?:[^A-Za-z·/²]|$)`)
	clockTime  = regexp.MustCompile(`(?:by|about|after|and|before) ([0-9]+):([0-9]{2})`)
)

// heatAmounts lists the amounts of a heat sheet; times are in seconds.
func heatAmounts(text string) []amount {
	var out []amount
	for _, m := range heatAmount.FindAllStringSubmatch(text, -1) {
		number := strings.NewReplacer("−", "-", "\u00a0", "").Replace(m[1])
		x, err := strconv.ParseFloat(number, 64)
		if err != nil {
			continue
		}
		_, decimals, _ := strings.Cut(number, ".")
		a := amount{text: m[0], unit: m[2], value: x, step: math.Pow(10, -float64(len(decimals)))}
		switch {
		case a.unit == "min" || a.unit == "h" || strings.HasPrefix(a.unit, "min 30"):
			per := map[string]float64{"min": 60, "h": 3600}[a.unit]
			if per == 0 {
				per, a.value = 60, a.value+0.5
			}
			a.value, a.step, a.unit = a.value*per, a.step*per, "s"
		case a.unit == "s":
			a.step = 5 // from ten seconds on, the paper has full fives
		case strings.Contains("°C °F", a.unit) && math.Mod(x, 5) == 0:
			a.step = 10 // what must be passed is told in full fives or tens
		case strings.Contains("kN lbf N·m lb-ft psi", a.unit):
			a.step = math.Max(a.step, math.Abs(x)/9) // two figures
		}
		out = append(out, a)
	}
	for _, m := range clockTime.FindAllStringSubmatch(text, -1) {
		minutes, _ := strconv.Atoi(m[1])
		seconds, _ := strconv.Atoi(m[2])
		out = append(out, amount{text: m[0], unit: "s", value: float64(60*minutes + seconds), step: 1})
	}
	return out
}

// heatConstants are amounts on a heat sheet that are no figures of the heat.
var heatConstants = regexp.MustCompile(`0\.6 % of the growth|1\.2 % of the growth|\(20 °C - coolant\)|20 to -78 °C`)

// checkHeatFigures compares every amount on the sheet of a heat with what was worked out.
func checkHeatFigures(t interface{ Errorf(string, ...any) }, where string, all []*job.Heat, h *job.Heat, sheet, own string) int {
	known := map[string][]exact{}
	for _, x := range all {
		if x.At == h.At { // the same heat at another place, on the same pages
			for unit, list := range heatExacts(x) {
				known[unit] = append(known[unit], list...)
			}
		}
	}
	for _, a := range heatAmounts(own) {
		known[a.unit] = append(known[a.unit], exact{"as written", a.value, eitherSide})
	}
	n := 0
	for _, a := range heatAmounts(heatConstants.ReplaceAllString(sheet, "")) {
		n++
		good, near := standsFor(a, known[a.unit])
		if !good {
			t.Errorf("%s: %s is printed as %s for%s", where, h.Mark, a.text, near)
		}
	}
	return n
}

// netPower is the power that an author writes.
var netPower = regexp.MustCompile(`net: [0-9.]+ kW`)

// writtenWords are the texts of a heat in which its author may write amounts.
func writtenWords(h *job.Heat) string {
	out := []string{h.Note, h.NothingNear, h.FireWatch.Print(), h.Limit.Source, h.What}
	for _, n := range h.Neighbours {
		out = append(out, n.KeptCool, n.MeasuredWith, n.Limit.Source)
	}
	if p := h.Pull; p != nil {
		out = append(out, p.Puller, p.Shield, p.IfStuck, p.Workable.Reason)
	}
	for _, st := range []*job.Step{h.PulledAt, h.PutOnAt} {
		if st == nil {
			continue
		}
		for _, c := range st.Cautions {
			out = append(out, c.Short, c.Avoid, c.Hazard)
		}
	}
	return strings.Join(out, " ")
}

// TestHeatFiguresOfTheProject: each amount on the heat sheets of the starters and the good
// definitions stands for a figure of the heat, on its safe side. Printed were 610 kN for a
// pull of 614 kN, and a window of 15 s for one of 14.8 s.
func TestHeatFiguresOfTheProject(t *testing.T) {
	longTest(t)
	t.Parallel()
	n := 0
	for _, f := range ownWith(t, 6, "heats") {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		jb, pack := composedFile(t, f, templates.Options{Paper: layout.Letter})
		n += checkHeatsOf(t, f, string(data), jb, pack)
	}
	if n < 300 {
		t.Errorf("only %d amounts were looked at", n)
	}
}

// checkHeatsOf looks at the figures of the heats of a definition on paper.
func checkHeatsOf(t interface{ Errorf(string, ...any) }, where, text string, jb *job.Job, pack *templates.Pack) int {
	n := 0
	for _, h := range jb.Heats {
		if withoutHoles(h) {
			n += checkHeatFigures(t, where, jb.Heats, h, heatSheet(pack, h), writtenWords(h)+" "+strings.Join(netPower.FindAllString(text, -1), " "))
		}
	}
	return n
}

// TestHeatFiguresOfAnyHeat: the same for heats drawn by chance, in millimetres and °C and
// in inches and °F, with a shaft cooled or not, at work or not.
func TestHeatFiguresOfAnyHeat(t *testing.T) {
	longTest(t)
	t.Parallel()
	seen := 0
	rapid.Check(t, func(t *rapid.T) {
		text := drawnHeat(t)
		d := drafted(text, layout.Letter)
		if len(d.misfits) > 0 {
			t.Errorf("%s: %v", text, d.misfits)
		}
		seen += checkHeatsOf(t, text, text, d.jb, d.pack)
	})
	if seen < 1000 {
		t.Errorf("only %d amounts were looked at", seen)
	}
}
