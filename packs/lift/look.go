package lift

// What is told: what to look at on a piece before use, where a rule gives a number.
//
//	hook          out of use with its throat opened by more than 15 % or twisted by more
//	              than 10°
//	eyebolt       in a blind hole of steel the thread in by 1.5 diameters or more, a
//	              spacer no thicker than 1/16 of the diameter
//	wire rope     in a critical lift a thimble of 3 rope diameters or more
//
// Sources: 29 CFR 1910.179(j)(2)(iii) as quoted by study notes; WAC
// 296-155-56110(2)(c) and DOE-STD-1090-96, 12.4.c and 12.4.h; DOE-STD-1090-96,
// 11.3.2.3.b item 2.
// Lengths in millimetres; what is needed is rounded up, what is allowed down.

import "fmt"

const (
	throatOpened    Ratio  = 0.15
	hookTwist       Degree = 10
	threadIn        Ratio  = 1.5
	thickestSpacer  Ratio  = 1.0 / 16
	smallestThimble Ratio  = 3
	hookSource             = "29 CFR 1910.179(j)(2)(iii)"
	eyeboltSource          = "WAC 296-155-56110(2)(c), DOE-STD-1090-96 12.4"
	thimbleSource          = "DOE-STD-1090-96, 11.3.2.3.b"
)

// looks lists what to look at, in the order of the pieces.
func (a *account) looks() {
	a.p.pieces(func(field string, s Sling) {
		if s.Fibre == WireRope && a.r.Critical {
			a.look(field, s.Name, s.thimble())
		}
	}, func(field string, h Hardware) { a.look(field, h.Name, h.look()) })
}

func (a *account) look(field, name, what string) {
	if what != "" {
		a.r.Looks = append(a.r.Looks, Look{Field: field, Name: name, What: what})
	}
}

// look says what to look at on a piece of gear, nothing where no rule gives a number.
func (h Hardware) look() string {
	switch {
	case h.Kind == Hook:
		return fmt.Sprintf("out of use with its throat opened by more than %s or twisted by more than %s (%s)", throatOpened.PercentDown(), hookTwist.Down(), hookSource)
	case h.Kind != ShoulderEyebolt && h.Kind != PlainEyebolt:
		return ""
	case h.Thread > 0:
		return fmt.Sprintf("thread in by %s or more, spacer no thicker than %s (%s)",
			Mm(float64(threadIn)*float64(h.Thread)).Up(), Mm(float64(thickestSpacer)*float64(h.Thread)).Down(), eyeboltSource)
	}
	return fmt.Sprintf("thread in by %s diameters or more, spacer no thicker than 1/%.0f of the diameter (%s)", threadIn.FactorUp(), float64(1/thickestSpacer), eyeboltSource)
}

// thimble says how large the thimble of a wire rope sling has to be.
func (s Sling) thimble() string {
	if s.Rope <= 0 {
		return fmt.Sprintf("critical lift: thimbles of %s rope diameters or more (%s)", smallestThimble.FactorUp(), thimbleSource)
	}
	return fmt.Sprintf("critical lift: thimbles of %s or more (%s)", Mm(float64(smallestThimble)*float64(s.Rope)).Up(), thimbleSource)
}
