package figure

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"matchmark/packs/fit"
	"matchmark/packs/heat"
)

// Ratio is a plain number, as of friction.
func Ratio(r fit.Ratio) string { return fmt.Sprintf("%g", float64(r)) }

// PercentUp is a share in hundredths, rounded up.
func PercentUp(share float64) string { return fmt.Sprintf("%.0f", math.Ceil(share*100-1e-9)) }

// FourFigures writes a figure of a working with four figures.
func FourFigures(v float64) string {
	if math.Abs(v) >= 1e4 {
		return Thousands(math.Round(v))
	}
	return trueMinus(fmt.Sprintf("%.4g", v))
}

// NBSP joins a number and its unit on one line.
const NBSP = "\u00a0"

// trueMinus writes a true minus.
func trueMinus(s string) string { return strings.Replace(s, "-", "−", 1) }

// figures rounds one way to so many figures.
func figures(v float64, n int, round func(float64) float64) float64 {
	if v == 0 {
		return 0
	}
	power := int(math.Floor(math.Log10(math.Abs(v)))) - n + 1
	step := math.Pow(10, math.Abs(float64(power)))
	if power < 0 {
		// Divided, so that a tenth is written as a tenth.
		return round(v*step) / step
	}
	return round(v/step) * step
}

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
		s += "." + rest
	}
	return s
}

// Kilowatts is a power; the band is rounded inward.
func Kilowatts(w heat.Watt, round func(float64) float64) string {
	kw := float64(w) / 1000
	if kw < 10 {
		return strconv.FormatFloat(round(kw*10)/10, 'f', 1, 64)
	}
	return strconv.FormatFloat(round(kw), 'f', 0, 64)
}

// Clock is a time as on a stop watch: 1:30.
func Clock(s heat.Second) string {
	n := int(math.Round(float64(s)))
	return fmt.Sprintf("%d:%02d", n/60, n%60)
}

// TimeDown is a length of time rounded down, so that nobody counts on more.
func TimeDown(s heat.Second) string {
	switch n := int(s); {
	case n >= 7200:
		return fmt.Sprintf("%.1f"+NBSP+"h", math.Floor(float64(n)/360)/10)
	case n >= 600:
		return strconv.Itoa(n/60) + NBSP + "min"
	case n >= 60 && n%60 >= 30:
		return strconv.Itoa(n/60) + NBSP + "min 30" + NBSP + "s"
	case n >= 60:
		return strconv.Itoa(n/60) + NBSP + "min"
	case n >= 10:
		return strconv.Itoa(n/5*5) + NBSP + "s"
	default:
		return strconv.Itoa(n) + NBSP + "s"
	}
}

// TimeUp is a length of time rounded up, for what takes so long.
func TimeUp(s heat.Second) string {
	if s >= 3600 {
		return fmt.Sprintf("%.1f"+NBSP+"h", math.Ceil(float64(s)/360)/10)
	}
	return fmt.Sprintf("%.0f"+NBSP+"min", math.Ceil(float64(s)/60))
}
