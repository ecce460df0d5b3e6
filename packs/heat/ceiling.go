package heat

import (
	"math"
	"strings"
)

// A Limit is a temperature that a part must not pass, and who says so. A site
// or the maker's manual gives its own; Ceilings holds those of common practice.
type Limit struct {
	At     Celsius
	Source string
	// NoFlame says that a flame may not touch the part at all, however short.
	NoFlame bool
}

// A Ceiling is the limit of one kind of part. Where sources differ the lower
// figure of common use stands here and Contested tells the others.
type Ceiling struct {
	Part      string // as a planner would write it
	Limit     Limit
	Contested string
}

// CeilingFor finds the ceiling of a kind of part, without regard to capitals.
// It refuses a part that is not in the table, listing those that are.
func CeilingFor(part string) (Ceiling, error) {
	for _, c := range ceilings {
		if strings.EqualFold(c.Part, strings.TrimSpace(part)) {
			return c, nil
		}
	}
	names := make([]string, len(ceilings))
	for i, c := range ceilings {
		names[i] = c.Part
	}
	return Ceiling{}, refuse("Part", "give the temperature with its source, or write one of "+strings.Join(names, ", "),
		"no highest temperature is known for %q", part)
}

// Ceilings returns the table, hottest first.
func Ceilings() []Ceiling { return append([]Ceiling(nil), ceilings...) }

// check refuses a limit that is missing, or that nobody stands behind.
func (l Limit) check(field, what string) error {
	if l.At == 0 && l.Source == "" {
		return refuse(field, "give the highest temperature and its source: the maker, the site, or the kind of part",
			"the highest temperature of %v is missing", what)
	}
	if strings.TrimSpace(l.Source) == "" {
		return refuse(field+".Source", "name the manual, the site rule or the kind of part it comes from",
			"the limit of %v for %v has no source", l.At, what)
	}
	return temperature(field+".At", "the highest temperature of "+what, l.At)
}

// A Crayon is the scale by which temperature-indicating crayons are sold.
type Crayon string

// InCelsius are sold in steps of 10 °C, InFahrenheit in steps of 25 °F. Common
// practice, no source.
const (
	InCelsius    Crayon = "celsius"
	InFahrenheit Crayon = "fahrenheit"
)

// Crayon is the marking temperature to put on the skin: the next full step below the
// limit, so that the mark melts before the limit is passed. A probe is set to the
// limit itself.
func (l Limit) Crayon(c Crayon) Celsius {
	if c == InFahrenheit {
		return Celsius((belowStep(float64(l.At)*9/5+32, 25) - 32) * 5 / 9)
	}
	return Celsius(belowStep(float64(l.At), 10))
}

// belowStep is the full step below a figure, never the figure itself.
func belowStep(v, step float64) float64 { return step * (math.Ceil(v/step-1e-9) - 1) }

// crayon is Crayon, or the limit itself where there is none.
func (l Limit) crayon(c Crayon) Celsius {
	if c == "" {
		return l.At
	}
	return l.Crayon(c)
}

// stop is the skin at which the heat goes off.
func (p *Pull) stop() Celsius { return p.Skin.crayon(p.Crayon) }

// stops says at what the heat goes off.
func (p *Pull) stops() saying {
	if p.Crayon == "" {
		return say("%v (%v)", p.Skin.At, p.Skin.Source)
	}
	return say("%v, where the crayon for its limit of %v melts (%v)", down(p.stop()), down(p.Skin.At), p.Skin.Source)
}

// A Colour is what a polished carbon steel face shows after a short heating.
// It is an alarm that the part has been too hot, never a thermometer: sources
// differ by 30 K, and time and alloy move it.
type Colour struct {
	Name     string
	From, To Celsius
}

// TemperColours returns the colours, coolest first.
func TemperColours() []Colour { return append([]Colour(nil), temperColours...) }
