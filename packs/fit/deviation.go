package fit

// Limit deviations by ISO 286-1 from a size, a letter and a grade.
//
//	es, ei   upper and lower deviation of a shaft, ES, EI of a hole; µm
//	IT(n)    standard tolerance of grade n at this size; µm
//	delta    IT(n) - IT(n-1); µm
//
//	shaft a to h     es = -table,  ei = es - IT
//	shaft k to zc    ei = +table,  es = ei + IT      (k is 0 but for IT4 to IT7)
//	js, JS           ±IT/2; for IT7 to IT11 an odd number of µm is first lowered by one
//	hole A to H      EI = +table of the same shaft letter, ES = EI + IT
//	hole K to ZC     ES = -table, and + delta for K, M, N to IT8 and P to ZC to IT7,
//	                 over 3 up to 500 mm only; EI = ES - IT
//	N over IT8       ES = 0 over 3 up to 500 mm
//	M6 250 to 315    ES = -9 µm, where the rule would give -11
//
// Source: ISO 286-1:2010 4.3 and tables 1 to 5; the rounding of js7 to js11 is the
// footnote of the 1988 edition's tables, which the limits in use follow.
// Valid: over 0 up to and including 3150 mm, IT1 to IT18. Refused: every letter,
// grade or size for which the standard prints no value.

import (
	"fmt"
	"strings"
)

const (
	maxSize  = 3150 * millimetre
	deltaEnd = 500 * millimetre
)

// Zone is one toleranced size: the nominal size and what may be taken from it.
type Zone struct {
	Nominal Nanometre // over 0 up to 3150 mm
	Letter  string    // "m", "js", "ZC": capitals for a hole, small letters for a shaft
	Grade   int       // 1 to 18, as in IT7
	Upper   Nanometre // upper limit less the nominal size
	Lower   Nanometre // lower limit less the nominal size
}

// Hole reports whether z is a hole, bore or any other inside size.
func (z Zone) Hole() bool { return z.Letter != "" && isUpper(z.Letter) }

// Max gives the upper limit of size.
func (z Zone) Max() Nanometre { return z.Nominal + z.Upper }

// Min gives the lower limit of size.
func (z Zone) Min() Nanometre { return z.Nominal + z.Lower }

// String writes z the way it stands on a drawing: "Ø130 m6".
func (z Zone) String() string {
	return fmt.Sprintf("Ø%s %s%d", z.Nominal.plain(), z.Letter, z.Grade)
}

// Lookup gives the limits for a nominal size, a letter and a grade. The error says
// in the words of the standard why it gives no such limits.
func Lookup(nominal Nanometre, letter string, grade int) (Zone, error) {
	it, err := tolerance(nominal, grade)
	if err != nil {
		return Zone{}, err
	}
	if err := knownLetter(letter); err != nil {
		return Zone{}, err
	}
	z := Zone{Nominal: nominal, Letter: letter, Grade: grade}
	if err := z.notToOneMillimetre(); err != nil {
		return Zone{}, err
	}
	switch lower := strings.ToLower(letter); {
	case lower == "js":
		z.Upper = symmetric(it, grade)
		z.Lower = -z.Upper
	case lower == "j":
		err = z.setJ(it)
	case z.Hole():
		err = z.setHole(it)
	default:
		err = z.setShaft(it)
	}
	return z, err
}

// tolerance gives IT(grade) for a size.
func tolerance(nominal Nanometre, grade int) (Nanometre, error) {
	if nominal <= 0 || nominal > maxSize {
		return 0, fmt.Errorf("%s mm: ISO 286 gives limits for sizes over 0 up to 3150 mm", nominal.plain())
	}
	if grade < 1 || grade > 18 {
		return 0, fmt.Errorf("grade %d: limits are given for the grades 1 to 18", grade)
	}
	if nominal <= millimetre && grade >= 14 {
		return 0, fmt.Errorf("grade %d at %s mm: ISO 286 does not use the grades 14 to 18 up to 1 mm", grade, nominal.plain())
	}
	return Nanometre(itMicrons[grade-1][step(nominal, mainEnds)]*1000 + 0.5), nil
}

// step finds the size step of nominal: the first whose end is not below it. It is
// len(ends) for a size beyond the last.
func step(nominal Nanometre, ends []int) int {
	for i, end := range ends {
		if nominal <= Nanometre(end)*millimetre {
			return i
		}
	}
	return len(ends)
}

// symmetric gives half of it for js and JS.
func symmetric(it Nanometre, grade int) Nanometre {
	if grade >= 7 && grade <= 11 && it/micrometre%2 == 1 {
		it -= micrometre
	}
	return it / 2
}

// setShaft fills the deviations of a to h and k to zc.
func (z *Zone) setShaft(it Nanometre) error {
	d, err := z.fundamental()
	if err != nil {
		return err
	}
	if z.Letter[0] <= 'h' {
		z.Upper = -d
		z.Lower = z.Upper - it
		return nil
	}
	if z.Letter == "k" && (z.Grade < 4 || z.Grade > 7) {
		d = 0
	}
	z.Lower = d
	z.Upper = z.Lower + it
	return nil
}

// setHole fills the deviations of A to H and K to ZC.
func (z *Zone) setHole(it Nanometre) error {
	d, err := z.fundamental()
	if err != nil {
		return err
	}
	if z.Letter[0] <= 'H' {
		z.Lower = d
		z.Upper = z.Lower + it
		return nil
	}
	overThree := z.Nominal > 3*millimetre
	toFive := z.Nominal <= deltaEnd
	last := 7 // the coarsest grade that takes the delta
	if strings.Contains("K M N", z.Letter) {
		last = 8
	}
	switch {
	case z.Letter == "K" && z.Grade > 8 && overThree:
		return fmt.Errorf("%s%d at %s mm: over 3 mm ISO 286 defines K only for the grades to 8", z.Letter, z.Grade, z.Nominal.plain())
	case z.Letter == "N" && z.Grade > 8 && overThree && toFive:
		d = 0
	case z.Letter == "M" && z.Grade == 6 && step(z.Nominal, mainEnds) == 10:
		d = 9 * micrometre
	case z.Grade <= last && overThree && toFive:
		if z.Grade < 3 {
			return fmt.Errorf("%s%d at %s mm: ISO 286 gives no values for holes K to ZC in the grades 1 and 2", z.Letter, z.Grade, z.Nominal.plain())
		}
		finer, err := tolerance(z.Nominal, z.Grade-1)
		if err != nil {
			return err
		}
		d -= it - finer
	}
	z.Upper = -d
	z.Lower = z.Upper - it
	return nil
}

// setJ fills the deviations of j and J, which the standard tabulates.
func (z *Zone) setJ(it Nanometre) error {
	table, even, span := shaftJ, "js", "j for the grades 5, 6 and 7 up to 500 mm, and j8 up to 3 mm"
	if z.Hole() {
		table, even, span = holeJ, "JS", "J for the grades 6, 7 and 8 up to 500 mm"
	}
	row := table[z.Grade]
	i := step(z.Nominal, mainEnds)
	if i >= len(row) {
		return fmt.Errorf("%s%d at %s mm: ISO 286 defines %s; for a zone that lies evenly on both sides write %s%d",
			z.Letter, z.Grade, z.Nominal.plain(), span, even, z.Grade)
	}
	d := Nanometre(row[i]) * micrometre
	if z.Hole() {
		z.Upper = d
		z.Lower = z.Upper - it
		return nil
	}
	z.Lower = -d
	z.Upper = z.Lower + it
	return nil
}

// fundamental gives the table value of z's letter, without sign; a hole takes that
// of the same shaft letter.
func (z *Zone) fundamental() (Nanometre, error) {
	row := shaftTable[strings.ToLower(z.Letter)]
	i := step(z.Nominal, row.ends)
	if i < len(row.values) && row.values[i] != none {
		return Nanometre(row.values[i]) * micrometre, nil
	}
	first := 0
	for row.values[first] == none {
		first++
	}
	span := fmt.Sprintf("up to %d mm", row.ends[len(row.values)-1])
	if first > 0 {
		span = fmt.Sprintf("over %d %s", row.ends[first-1], span)
	}
	return 0, fmt.Errorf("%s%d at %s mm: ISO 286 defines %s only for sizes %s", z.Letter, z.Grade, z.Nominal.plain(), z.Letter, span)
}

// notToOneMillimetre refuses what the footnotes of the standard exclude up to 1 mm.
func (z *Zone) notToOneMillimetre() error {
	if z.Nominal > millimetre {
		return nil
	}
	switch l := strings.ToLower(z.Letter); {
	case l == "a" || l == "b":
		return fmt.Errorf("%s%d at %s mm: ISO 286 does not use %s up to 1 mm", z.Letter, z.Grade, z.Nominal.plain(), z.Letter)
	case z.Letter == "N" && z.Grade > 8:
		return fmt.Errorf("%s%d at %s mm: ISO 286 does not use N over grade 8 up to 1 mm", z.Letter, z.Grade, z.Nominal.plain())
	}
	return nil
}
