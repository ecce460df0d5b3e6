package templates

import (
	"fmt"
	"matchmark/packs/job"
	"math"
	"strconv"
	"strings"

	"matchmark/packs/heat"
)

// A heatUnits writes the figures of a heat in the units that its author uses.
// Figures are rounded to what can be read at the machine, and where rounding has
// a safe side, to that side.
type heatUnits struct{ inch, fahrenheit bool }

func unitsOf(h *job.Heat) heatUnits { return heatUnits{h.Inch, h.Fahrenheit} }

// nbsp joins a number and its unit on one line.
const nbsp = "\u00a0"

// fine is a length of the size of an interference.
func (u heatUnits) fine(v heat.Mm) string {
	if u.inch {
		return signed(fmt.Sprintf("%.4f", float64(v)/25.4)) + nbsp + "in"
	}
	return signed(fmt.Sprintf("%.3f", float64(v))) + nbsp + "mm"
}

// signed writes a true minus.
func signed(s string) string { return strings.Replace(s, "-", "−", 1) }

// long is a length of the size of a part, with no more decimals than it has.
func (u heatUnits) long(v heat.Mm) string {
	if u.inch {
		return strconv.FormatFloat(math.Round(float64(v)/25.4*1000)/1000, 'f', -1, 64) + nbsp + "in"
	}
	return strconv.FormatFloat(math.Round(float64(v)*100)/100, 'f', -1, 64) + nbsp + "mm"
}

// scale turns a temperature into the one printed.
func (u heatUnits) scale(t heat.Celsius) float64 {
	if u.fahrenheit {
		return float64(t)*9/5 + 32
	}
	return float64(t)
}

func (u heatUnits) degree() string {
	if u.fahrenheit {
		return nbsp + "°F"
	}
	return nbsp + "°C"
}

// temp is a temperature to the nearest degree.
func (u heatUnits) temp(t heat.Celsius) string {
	return signed(fmt.Sprintf("%.0f", u.scale(t))) + u.degree()
}

// tempUp is a temperature that must be reached: up to the full degree.
func (u heatUnits) tempUp(t heat.Celsius) string {
	return signed(fmt.Sprintf("%.0f", math.Ceil(u.scale(t)-1e-9))) + u.degree()
}

// atLeast is a temperature that must be passed: up to the next full 5 °C or 10 °F.
func (u heatUnits) atLeast(t heat.Celsius) string {
	step := 5.0
	if u.fahrenheit {
		step = 10
	}
	return fmt.Sprintf("%.0f", step*math.Ceil(u.scale(t)/step-1e-9)) + u.degree()
}

// atMost is a temperature that must not be passed: down to the full degree.
func (u heatUnits) atMost(t heat.Celsius) string {
	return fmt.Sprintf("%.0f", math.Floor(u.scale(t)+1e-9)) + u.degree()
}

// rise is a difference of two temperatures.
func (u heatUnits) rise(k heat.KelvinRise) string {
	if u.fahrenheit {
		return fmt.Sprintf("%.0f", float64(k)*9/5) + u.degree()
	}
	return fmt.Sprintf("%.0f", float64(k)) + u.degree()
}

// force is in kilonewtons, or in pounds where inches are written; two figures are
// all that a friction is known to.
func (u heatUnits) force(n float64) string {
	return u.newtons(n, func(v float64) float64 { return figures(v, 2, math.Round) })
}

// forceUp is what a tool must be good for: two figures, upward.
func (u heatUnits) forceUp(n float64) string {
	return u.newtons(n, func(v float64) float64 { return figures(v-1e-9*v, 2, math.Ceil) })
}

// forceDown is what a tool is good for: three figures, downward, so that a rating
// of so many stays as it was written.
func (u heatUnits) forceDown(n float64) string {
	return u.newtons(n, func(v float64) float64 { return figures(v+1e-9*v, 3, math.Floor) })
}

func (u heatUnits) newtons(n float64, round func(float64) float64) string {
	if u.inch {
		return grouped(round(n/4.4482216152605)) + nbsp + "lbf"
	}
	return grouped(round(n/1000)) + nbsp + "kN"
}

// torqueDown is a torque that is surely there: down to the full hundred.
func (u heatUnits) torqueDown(nm float64) string {
	unit, name := 1.0, "N·m"
	if u.inch {
		unit, name = 1.3558179483314004, "lb-ft"
	}
	return grouped(math.Floor(nm/unit/100)*100) + nbsp + name
}

// stress is a stress or pressure without its sign: whole megapascals, or psi to
// two figures.
func (u heatUnits) stress(mpa float64) string {
	if u.inch {
		return grouped(figures(math.Abs(mpa)/0.006894757293168361, 2, math.Round)) + nbsp + "psi"
	}
	return fmt.Sprintf("%.0f", math.Abs(mpa)) + nbsp + "MPa"
}

// crayon is the mark to put on the skin: the next step below the limit at which
// crayons are sold, 10 °C or 25 °F. Common practice, no source.
func (u heatUnits) crayon(l heat.Limit) string {
	if !u.fahrenheit {
		return u.temp(l.Crayon())
	}
	return fmt.Sprintf("%.0f", 25*(math.Ceil(u.scale(l.At)/25-1e-9)-1)) + u.degree()
}

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

// grouped writes a number with its thousands apart.
func grouped(v float64) string {
	s := strconv.FormatFloat(v, 'f', -1, 64)
	whole, rest, _ := strings.Cut(s, ".")
	var out []string
	for len(whole) > 3 {
		out = append([]string{whole[len(whole)-3:]}, out...)
		whole = whole[:len(whole)-3]
	}
	s = strings.Join(append([]string{whole}, out...), nbsp)
	if rest != "" {
		s += "." + rest
	}
	return s
}

// kilowatts is a power; the band is rounded inward.
func kilowatts(w heat.Watt, round func(float64) float64) string {
	kw := float64(w) / 1000
	if kw < 10 {
		return strconv.FormatFloat(round(kw*10)/10, 'f', 1, 64)
	}
	return strconv.FormatFloat(round(kw), 'f', 0, 64)
}

// clock is a time as on a stop watch: 1:30.
func clock(s heat.Second) string {
	n := int(math.Round(float64(s)))
	return fmt.Sprintf("%d:%02d", n/60, n%60)
}

// lasting is a length of time rounded down, so that nobody counts on more.
func lasting(s heat.Second) string {
	switch n := int(s); {
	case n >= 7200:
		return fmt.Sprintf("%.1f"+nbsp+"h", math.Floor(float64(n)/360)/10)
	case n >= 600:
		return strconv.Itoa(n/60) + nbsp + "min"
	case n >= 60 && n%60 >= 30:
		return strconv.Itoa(n/60) + nbsp + "min 30" + nbsp + "s"
	case n >= 60:
		return strconv.Itoa(n/60) + nbsp + "min"
	case n >= 10:
		return strconv.Itoa(n/5*5) + nbsp + "s"
	default:
		return strconv.Itoa(n) + nbsp + "s"
	}
}

// within is a length of time rounded up, for what takes so long.
func takes(s heat.Second) string {
	if s >= 3600 {
		return fmt.Sprintf("%.1f"+nbsp+"h", math.Ceil(float64(s)/360)/10)
	}
	return fmt.Sprintf("%.0f"+nbsp+"min", math.Ceil(float64(s)/60))
}
