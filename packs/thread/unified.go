package thread

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// constantPitches are the threads per inch of the constant-pitch series UN (ASME
// B1.1, from memory).
var constantPitches = []float64{4, 6, 8, 12, 16, 20, 28, 32}

// parseUnified reads a size, its threads per inch and, if written, its series. With
// no series the table decides, and a size with a plain number may be meant in inches
// or as a number size: 2-56 is number 2, 2-4.5 is two inches.
func parseUnified(whole string, m []string) (Thread, error) {
	size, tpi := strings.Replace(m[2], " ", "-", 1), threadsPerInch(m[3])
	series, err := seriesOf(whole, m[4])
	if err != nil {
		return Thread{}, err
	}
	if tpi <= 0 {
		return Thread{}, fmt.Errorf("%q: threads per inch must be over 0: %s", whole, howToWrite)
	}
	var sizes []unifiedRow
	for _, r := range unifiedTable {
		if r.size == "#"+size || m[1] == "" && (r.size == size || strings.Contains(size, ".") && r.diameter == decimalInch(size)) {
			sizes = append(sizes, r)
		}
	}
	for _, r := range sizes {
		// UN names the form alone, so "3/4-16 UN" is the UNF thread.
		if found, ok := r.series(tpi); ok && (series == "" || series == found || series == UN) {
			return unified(r, tpi, found, true), nil
		}
	}
	if series == UN || series == UNS {
		return specialUnified(whole, m, size, tpi, series, sizes)
	}
	if len(sizes) == 0 {
		return Thread{}, fmt.Errorf("%q: ASME B1.1 has no size %s in UNC, UNF or 8-UN; for a special thread add UNS", whole, m[1]+m[2])
	}
	var known []string
	for _, r := range sizes {
		known = append(known, r.known()...)
	}
	return Thread{}, fmt.Errorf("%q: known are %s; for a special thread add UNS", whole, joinAnd(known))
}

// unified makes a thread of a table row.
func unified(r unifiedRow, tpi float64, series Series, listed bool) Thread {
	return Thread{Series: series, Diameter: Mm(r.diameter) * inch, Pitch: inch / Mm(tpi), Starts: 1, Listed: listed, size: r.size}
}

// series says in which series a row has this many threads per inch.
func (r unifiedRow) series(tpi float64) (Series, bool) {
	switch {
	case tpi == r.unc:
		return UNC, true
	case tpi == r.unf:
		return UNF, true
	case tpi == 8 && r.un8:
		return UN, true
	}
	return "", false
}

// known lists a row's threads the way they are written.
func (r unifiedRow) known() []string {
	var out []string
	for _, k := range []struct {
		tpi    float64
		series Series
	}{{r.unc, UNC}, {r.unf, UNF}} {
		if k.tpi > 0 {
			out = append(out, fmt.Sprintf("%s-%g %s", r.size, k.tpi, k.series))
		}
	}
	if r.un8 {
		out = append(out, r.size+"-8 UN")
	}
	return out
}

// specialUnified takes a UN or UNS thread as written: the designation itself says
// all that the calculations need, but no table confirms it.
func specialUnified(whole string, m []string, size string, tpi float64, series Series, sizes []unifiedRow) (Thread, error) {
	if series == UN && !containsNumber(constantPitches, tpi) {
		return Thread{}, fmt.Errorf("%q: UN threads have 4, 6, 8, 12, 16, 20, 28 or 32 threads per inch; any other is UNS", whole)
	}
	row := unifiedRow{size: size, diameter: inchesOf(size)}
	for _, r := range sizes {
		switch {
		case r.size[0] != '#':
		case m[1] != "":
			row = r
		case r.diameter*Inch(tpi) >= 4:
			return Thread{}, fmt.Errorf("%q may be number %s or %s in: write #%s, or %s.0 for inches", whole, size, size, size, size)
		}
	}
	d := float64(row.diameter)
	if !(d >= 0.06 && d <= 48) || tpi > 80 || d*tpi < 4 {
		return Thread{}, fmt.Errorf("%q: %s in with %g threads per inch is no thread; look both numbers up again", whole, m[1]+m[2], tpi)
	}
	return unified(row, tpi, series, false), nil
}

// containsNumber reports whether a list has a number.
func containsNumber(list []float64, x float64) bool {
	for _, v := range list {
		if v == x {
			return true
		}
	}
	return false
}

// seriesOf reads the letters after the threads per inch. The rounded-root form (UNRC
// and the like) has the same pitch and stress area.
func seriesOf(whole, s string) (Series, error) {
	switch strings.ToUpper(s) {
	case "":
		return "", nil
	case "UNC", "UNRC", "NC":
		return UNC, nil
	case "UNF", "UNRF", "NF":
		return UNF, nil
	case "UN", "UNR", "8UN", "8-UN":
		return UN, nil
	case "UNS", "NS":
		return UNS, nil
	}
	return "", fmt.Errorf("%q: %s is no series known here; UNC, UNF, UN and UNS are, or leave it out", whole, s)
}

// threadsPerInch reads "10", "4.5", "4-1/2" or "4 1/2".
func threadsPerInch(s string) float64 {
	if whole, ok := strings.CutSuffix(s, "1/2"); ok {
		return float64(mm(strings.TrimRight(whole, " -"))) + 0.5
	}
	return float64(mm(s))
}

// decimalInch reads a size written as a decimal: "0.750", "1.563".
func decimalInch(size string) Inch { return Inch(mm(size)) }

// inchesOf reads "1-5/8", "3/4", "2" or a decimal. A fraction over 0 is 0 in, which
// no caller takes for a size.
func inchesOf(size string) Inch {
	whole, fraction, mixed := strings.Cut(size, "-")
	if !mixed {
		whole, fraction = "0", size
	}
	top, bottom, ok := strings.Cut(fraction, "/")
	if !ok {
		return decimalInch(size)
	}
	t, errT := strconv.Atoi(top)
	b, errB := strconv.Atoi(bottom)
	if errT != nil || errB != nil || b == 0 || t >= b {
		return 0
	}
	return Inch(float64(mm(whole)) + math.Abs(float64(t)/float64(b)))
}
