package figure

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"matchmark/packs/fit"
	"matchmark/packs/heat"
	"matchmark/packs/units"
)

// Ratio is a plain number, as of friction.
func Ratio(r fit.Ratio) string { return fmt.Sprintf("%g", units.Figure(r)) }

// PercentUp is a share in hundredths, rounded up.
func PercentUp(share float64) string {
	return rounded(100*share, units.Percent, units.Percent, 0, units.Up).Number.Print()
}

// Hundredfold is a share of the air, in hundredths with so many decimals.
func Hundredfold(p heat.Percent, decimals int, how units.Rounding) string {
	return rounded(float64(p), units.Percent, units.Percent, decimals, how).Number.Print()
}

// FourFigures writes a figure of a working with four figures.
func FourFigures(v float64) string {
	if math.Abs(v) >= 1e4 {
		return Thousands(math.Round(v))
	}
	return trueMinus(fmt.Sprintf("%.4g", units.Figure(v)))
}

// NBSP joins a number and its unit on one line.
const NBSP = "\u00a0"

// trueMinus writes a true minus.
func trueMinus(s string) string { return strings.Replace(s, "-", "−", 1) }

// Thousands writes a number with its thousands apart.
func Thousands(v float64) string {
	s := strconv.FormatFloat(v, 'f', -1, 64)
	whole, rest, _ := strings.Cut(s, ".")
	var out []string
	for len(whole) > 3 {
		out = append([]string{whole[len(whole)-3:]}, out...)
		whole = whole[:len(whole)-3]
	}
	s = strings.Join(append([]string{whole}, out...), NBSP)
	if rest != "" {
		s += string(units.DecimalMark) + rest
	}
	return s
}

// Hundredths writes a length to two decimals.
func Hundredths(v float64) string { return fmt.Sprintf("%.2f", units.Figure(v)) }

// Kilowatts is a power; the band is rounded inward.
func Kilowatts(w heat.Watt, how units.Rounding) string {
	decimals := 0
	if w < 10000 {
		decimals = 1
	}
	return rounded(float64(w), units.Watt, units.Kilowatt, decimals, how).Number.Print()
}

// Megajoules is an amount of heat that goes in.
func Megajoules(j heat.Joule) string {
	return rounded(float64(j)/1e6, units.None, units.None, 1, units.Up).Number.Print()
}

// Clock is a time as on a stop watch, 1:30: that of a mark, and of what must be waited
// for, so that it is full seconds up.
func Clock(s heat.Second) string {
	n := int(math.Ceil(float64(s) - 1e-6))
	return fmt.Sprintf("%d:%02d", n/60, n%60)
}

// TimeDown is a length of time rounded down, so that nobody counts on more.
func TimeDown(s heat.Second) string {
	switch n := int(s.Told()); {
	case n >= 7200:
		return fmt.Sprintf("%.1f"+NBSP+"h", units.Figure(float64(n)/3600))
	case n >= 60 && n%60 != 0:
		return strconv.Itoa(n/60) + NBSP + "min 30" + NBSP + "s"
	case n >= 60:
		return strconv.Itoa(n/60) + NBSP + "min"
	default:
		return strconv.Itoa(n) + NBSP + "s"
	}
}

// TimeUp is a length of time rounded up, for what takes so long.
func TimeUp(s heat.Second) string {
	if s >= 3600 {
		return fmt.Sprintf("%.1f"+NBSP+"h", units.Figure(math.Ceil(float64(s)/360)/10))
	}
	return fmt.Sprintf("%.0f"+NBSP+"min", math.Ceil(float64(s)/60))
}

// TimeUpShort is a length of time that an act takes: full seconds up, minutes from ten
// on.
func TimeUpShort(s heat.Second) string {
	if s >= 600 {
		return TimeUp(s)
	}
	return told(float64(s), units.Second, units.Second, 0, units.Up)
}

// Term writes a figure of a working with four figures, to its own side.
func Term(t heat.Term) string {
	return inFigures(float64(t.Value), units.None, units.None, 4, t.Toward)
}

// WholeDown is the most of something that may be brought, its thousands apart.
func WholeDown(v float64) string {
	return Quantity(rounded(v, units.None, units.None, 0, units.Down))
}

// Scale is what a drawing is made smaller or larger by, with no more decimals than it has.
func Scale(v float64) string { return units.ForPaper(strconv.FormatFloat(v, 'f', -1, 64)) }
