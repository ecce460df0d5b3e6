package thread

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"matchmark/packs/phrase"
)

const howToWrite = "write it like M24, M90x2, M90x2 LH, 3/4-10 UNC, or Tr 40x14 (P7) for more than one start"

// The parts of a designation. Numbers are digits with at most one point.
var (
	handEnd  = phrase.Of(`(?i)[\s-]*(LH|left(?:[ -]?hand)?|RH|right(?:[ -]?hand)?)$`)
	classEnd = phrase.Of(`-([1-9][A-Za-z](?:[1-9][A-Za-z])?)$`)

	metricForm = phrase.Of(`^M\s*(\d+(?:\.\d+)?)(?:\s*x\s*(?:Ph\s*(\d+(?:\.\d+)?)\s*P\s*(\d+(?:\.\d+)?)|(\d+(?:\.\d+)?)))?$`)
	trapForm   = phrase.Of(`^T[rR]\s*(\d+)\s*x\s*(\d+(?:\.\d+)?)(?:\s*(?:\(\s*P\s*(\d+(?:\.\d+)?)\s*\)|P\s*(\d+(?:\.\d+)?)))?$`)
	unifForm   = phrase.Of(`^(?:(#|No\.?)\s*)?(\d+[ -]\d+/\d+|\d+/\d+|\d*\.\d+|\d+)\s*(?:"|in\b)?\s*-\s*(\d+[ -]1/2|\d+(?:\.\d+)?)\s*([A-Za-z0-9-]*)$`)
	pipeStart  = phrase.Of(`(?i)^(G|R|Rc|Rp|NPT|NPSM|BSP|BSPT|BSPP|BSW|BSF|W)\s*\d|NPT|BSP|BSW|BSF|Whitworth`)
)

// Parse reads a thread. Hand ("LH", "left", "left-hand") and tolerance class ("-6g",
// "-2A") may follow; a cross or a star may stand for the x. Its error says what the
// standard pairs with the diameter.
func Parse(s string) (Thread, error) {
	text := strings.TrimSpace(strings.NewReplacer("×", "x", "*", "x", "X", "x").Replace(s))
	if strings.Contains(text, ",") {
		return Thread{}, fmt.Errorf("%q has a decimal comma: write a point, as in M12x1.75", s)
	}
	hand := handEnd.FindStringSubmatch(text)
	if hand != nil {
		text = strings.TrimSpace(text[:len(text)-len(hand[0])])
	}
	class := ""
	if m := classEnd.FindStringSubmatch(text); m != nil {
		class, text = m[1], text[:len(text)-len(m[0])]
	}
	t, err := parseForm(s, text)
	if err != nil {
		return Thread{}, err
	}
	t.Class = class
	t.LeftHand = hand != nil && strings.EqualFold(hand[1][:1], "l")
	return t, nil
}

// parseForm reads the designation without hand and class. whole is as written, for
// messages.
func parseForm(whole, text string) (Thread, error) {
	if pipeStart.MatchString(text) {
		return Thread{}, fmt.Errorf("%q: pipe and Whitworth threads are not known here; write stand-offs in mm and leave the thread out", whole)
	}
	if m := metricForm.FindStringSubmatch(text); m != nil {
		return parseMetric(whole, m)
	}
	if m := trapForm.FindStringSubmatch(text); m != nil {
		return parseTrapezoidal(whole, m)
	}
	if m := unifForm.FindStringSubmatch(text); m != nil {
		return parseUnified(whole, m)
	}
	switch {
	case strings.HasPrefix(text, "m") || strings.HasPrefix(text, "tr"):
		return Thread{}, fmt.Errorf("%q: the letter is a capital: M24, Tr 40x7", whole)
	case strings.HasPrefix(text, "M"):
		return Thread{}, fmt.Errorf("%q is no metric thread: write the diameter, an x and the pitch, as in M90x2", whole)
	}
	return Thread{}, fmt.Errorf("%q is no thread known here: %s", whole, howToWrite)
}

// mm reads a number that a pattern has matched; an empty one is 0.
func mm(s string) Mm {
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		return 0
	}
	return Mm(v)
}

// parseMetric reads M, its diameter and its pitch.
func parseMetric(whole string, m []string) (Thread, error) {
	t := Thread{Diameter: mm(m[1]), Pitch: mm(m[4]), Starts: 1, Listed: true}
	row, ok := metricOf(t.Diameter)
	if !ok {
		return Thread{}, fmt.Errorf("%q: ISO 261 has no M%s; the nearest are %s", whole, m[1], nearestMetric(t.Diameter))
	}
	if m[2] != "" {
		var err error
		if t.Starts, err = starts(whole, mm(m[2]), mm(m[3])); err != nil {
			return Thread{}, err
		}
		t.Pitch = mm(m[3])
	}
	switch {
	case m[2] == "" && m[4] == "" && row.coarse == 0:
		return Thread{}, fmt.Errorf("%q: M%s has no coarse pitch, so the pitch must be written; known are %s", whole, m[1], row.known())
	case m[2] == "" && m[4] == "", t.Pitch == row.coarse:
		t.Series, t.Pitch = MetricCoarse, row.coarse
	case contains(row.fine, t.Pitch):
		t.Series = MetricFine
	case finerPermitted(row, t.Pitch):
		t.Series, t.Listed = MetricFine, false
	default:
		return Thread{}, fmt.Errorf("%q: ISO 261 has no pitch %s mm for M%s; known are %s", whole, short(t.Pitch), m[1], row.known())
	}
	return t, nil
}

// starts counts the starts that make a lead of a pitch.
func starts(whole string, lead, pitch Mm) (int, error) {
	n := math.Round(float64(lead / pitch))
	if pitch <= 0 || n < 1 || n > 10 || math.Abs(float64(lead)-n*float64(pitch)) > 1e-9 {
		return 0, fmt.Errorf("%q: a lead of %s mm is no whole number of pitches of %s mm (1 to 10 starts)", whole, short(lead), short(pitch))
	}
	return int(n), nil
}

// metricOf finds the row of a diameter.
func metricOf(d Mm) (metricRow, bool) {
	for _, r := range metricTable {
		if r.diameter == d {
			return r, true
		}
	}
	return metricRow{}, false
}

// nearestMetric names the diameters below and above one that ISO 261 does not have.
func nearestMetric(d Mm) string {
	i := 0
	for i < len(metricTable) && metricTable[i].diameter < d {
		i++
	}
	switch i {
	case 0:
		return "M1 and larger"
	case len(metricTable):
		return "M300 and smaller"
	}
	return "M" + short(metricTable[i-1].diameter) + " and M" + short(metricTable[i].diameter)
}

// known lists the pitches of a row, the coarse one first.
func (r metricRow) known() string {
	list := r.fine
	if r.coarse != 0 {
		list = append([]Mm{r.coarse}, r.fine...)
	}
	return listMm(list)
}

// finerPermitted reports whether ISO 261 permits a pitch finer than the row's finest.
func finerPermitted(r metricRow, p Mm) bool {
	if p >= r.fine[len(r.fine)-1] {
		return false
	}
	for _, f := range finerPitches {
		if f.pitch == p {
			return r.diameter <= f.upTo
		}
	}
	return false
}

// parseTrapezoidal reads Tr, its diameter, its lead and its pitch.
func parseTrapezoidal(whole string, m []string) (Thread, error) {
	t := Thread{Series: Trapezoidal, Diameter: mm(m[1]), Starts: 1, Listed: true}
	lead := mm(m[2])
	t.Pitch = mm(m[3] + m[4])
	var known []Mm
	for _, r := range trapezoidalTable {
		if r.diameter == t.Diameter {
			known = append(known, r.pitches...)
		}
	}
	if known == nil {
		return Thread{}, fmt.Errorf("%q: ISO 2902 has no Tr %s; look the size up again", whole, m[1])
	}
	if t.Pitch == 0 {
		t.Pitch = lead
	}
	if !contains(known, t.Pitch) {
		help := ""
		for _, p := range known {
			if n := float64(lead / p); m[3]+m[4] == "" && n > 1 && n == math.Trunc(n) {
				help = fmt.Sprintf("; for %g starts of %s mm write Tr %sx%s (P%s)", n, short(p), m[1], m[2], short(p))
				break
			}
		}
		return Thread{}, fmt.Errorf("%q: Tr %s has no pitch %s mm; known are %s%s", whole, m[1], short(t.Pitch), listMm(known), help)
	}
	var err error
	t.Starts, err = starts(whole, lead, t.Pitch)
	if err != nil {
		return Thread{}, err
	}
	return t, nil
}

// contains reports whether a list has a pitch. Equal decimals read to equal numbers.
func contains(list []Mm, p Mm) bool {
	for _, v := range list {
		if v == p {
			return true
		}
	}
	return false
}

// listMm writes pitches with commas: "6, 4, 3 and 2 mm".
func listMm(list []Mm) string {
	words := make([]string, len(list))
	for i, v := range list {
		words[i] = short(v)
	}
	return joinAnd(words) + " mm"
}

// joinAnd writes a list with commas and a last "and".
func joinAnd(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:len(words)-1], ", ") + " and " + words[len(words)-1]
}
