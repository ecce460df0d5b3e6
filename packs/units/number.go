package units

import (
	"math/big"
	"strconv"
	"strings"
)

// MaxFigures is the most figures that one number, or one side of a fraction, may
// have. No instrument of the trade reads more, and it keeps every sum short.
const MaxFigures = 15

// A Number is an exact number with the form it was typed in: a decimal with so
// many digits behind the point, or a fraction with its denominator. The zero
// Number is 0. Numbers are not comparable with ==; use Cmp.
type Number struct {
	val      *big.Rat // nil is zero; never changed once set
	text     string   // as typed, "" if worked out
	decimals int      // digits behind the point
	den      int64    // denominator of a fraction, 0 for a decimal
}

// Whole gives n as a number without decimals.
func Whole(n int64) Number { return Number{val: new(big.Rat).SetInt64(n)} }

// Exact gives the rational r as a number, to be written with at least so many
// decimals. A negative count of decimals counts as none.
func Exact(r *big.Rat, decimals int) Number {
	return Number{val: new(big.Rat).Set(r), decimals: max(decimals, 0)}
}

// Parts gives the rational r as a fraction of so many parts, as on an inch rule. Of
// none it is a decimal.
func Parts(r *big.Rat, den int64) Number {
	return Number{val: new(big.Rat).Set(r), den: max(den, 0)}
}

// Rat gives the value. The caller may change it.
func (n Number) Rat() *big.Rat {
	if n.val == nil {
		return new(big.Rat)
	}
	return new(big.Rat).Set(n.val)
}

// Denominator gives the denominator as typed of a fraction (16 for 3/16, and for
// 2/16 too), and 0 for a decimal.
func (n Number) Denominator() int64 { return n.den }

// Decimals gives the digits behind the point, as typed or, for a number that was
// worked out, as many as it takes. It is 0 for a fraction, and for a decimal
// without end what Round or Exact asked for: round before asking.
func (n Number) Decimals() int {
	if n.den != 0 || n.text != "" {
		return n.decimals
	}
	if need, ok := n.Rat().FloatPrec(); ok {
		return max(need, n.decimals)
	}
	return n.decimals
}

// Sign is -1, 0 or +1.
func (n Number) Sign() int {
	if n.val == nil {
		return 0
	}
	return n.val.Sign()
}

// Cmp compares two values: -1 when n is the smaller, 0 when they are equal
// whatever their form, +1 when n is the larger.
func (n Number) Cmp(m Number) int { return n.Rat().Cmp(m.Rat()) }

// Text writes the number as it is typed: the digits as they were, or for a number
// that was worked out its decimals, or a mixed fraction when it was worked out
// from fractions or has no end as a decimal. Reading the text of a number that was
// typed or rounded gives the number again.
func (n Number) Text() string {
	if n.text != "" {
		return n.text
	}
	r := n.Rat()
	if n.den == 0 {
		if need, ok := r.FloatPrec(); ok {
			return r.FloatString(max(need, n.decimals))
		}
	}
	return mixed(r)
}

// Print writes the number for paper: as Text, with a true minus sign, the decimal mark,
// and a no-break space before a fraction: 1 7/16 with its 1 on the line above reads 7/16.
func (n Number) Print() string {
	text := strings.ReplaceAll(ForPaper(n.Text()), " ", "\u00a0")
	if behind, minus := strings.CutPrefix(text, "-"); minus {
		return "−" + behind
	}
	return text
}

// mixed writes r in lowest terms: 3/16, 1-3/8, 2.
func mixed(r *big.Rat) string {
	if r.IsInt() {
		return r.Num().String()
	}
	sign := ""
	if r.Sign() < 0 {
		sign = "-"
	}
	top := new(big.Int).Abs(r.Num())
	whole, rest := new(big.Int).QuoRem(top, r.Denom(), new(big.Int))
	frac := rest.String() + "/" + r.Denom().String()
	if whole.Sign() == 0 {
		return sign + frac
	}
	return sign + whole.String() + "-" + frac
}

// Add gives n + m, with the decimals of the finer of the two.
func (n Number) Add(m Number) Number { return n.sum(m, new(big.Rat).Add(n.Rat(), m.Rat())) }

// Sub gives n - m, with the decimals of the finer of the two.
func (n Number) Sub(m Number) Number { return n.sum(m, new(big.Rat).Sub(n.Rat(), m.Rat())) }

// sum wraps a sum or difference of n and m: a fraction stays a fraction only
// among fractions.
func (n Number) sum(m Number, val *big.Rat) Number {
	out := Number{val: val, decimals: max(n.decimals, m.decimals)}
	if n.isFraction() && (m.isFraction() || m.Rat().IsInt()) || m.isFraction() && n.Rat().IsInt() {
		out.den = max(n.den, m.den)
	}
	return out
}

func (n Number) isFraction() bool { return n.den != 0 }

// Mul gives n × m exactly.
func (n Number) Mul(m Number) Number {
	return Number{val: new(big.Rat).Mul(n.Rat(), m.Rat()), decimals: max(n.decimals, m.decimals)}
}

// Quo gives n ÷ m exactly. It panics when m is 0: the caller has to ask first.
func (n Number) Quo(m Number) Number {
	return Number{val: new(big.Rat).Quo(n.Rat(), m.Rat()), decimals: max(n.decimals, m.decimals)}
}

// Neg gives -n.
func (n Number) Neg() Number {
	return Number{val: new(big.Rat).Neg(n.Rat()), decimals: n.decimals, den: n.den}
}

// Abs gives n without its sign.
func (n Number) Abs() Number {
	if n.Sign() < 0 {
		return n.Neg()
	}
	return n
}

// A Rounding says where a number goes that lies between two of the wanted kind.
type Rounding uint8

const (
	// Nearest goes to the nearer one, and from the middle away from zero, as a
	// person rounds.
	Nearest Rounding = iota
	// Up goes to the larger one: a lower limit that was converted, so that
	// rounding never widens the band.
	Up
	// Down goes to the smaller one: an upper limit that was converted.
	Down
)

// Round gives n with so many decimals (0 or more).
func (n Number) Round(decimals int, how Rounding) Number {
	scale := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(max(decimals, 0))), nil)
	x := n.Rat()
	// Floor of the scaled value; what is left over lies in [0, the denominator).
	floor, left := new(big.Int).Mul(x.Num(), scale), new(big.Int)
	floor.DivMod(floor, x.Denom(), left)
	up := false
	switch how {
	case Up:
		up = left.Sign() > 0
	case Nearest:
		half := left.Lsh(left, 1).Cmp(x.Denom())
		up = half > 0 || half == 0 && x.Sign() > 0
	}
	if up {
		floor.Add(floor, big.NewInt(1))
	}
	return Number{val: new(big.Rat).SetFrac(floor, scale), decimals: max(decimals, 0)}
}

// Step gives the smallest difference that the number can tell as it is written:
// 0.01 for 0.05, 1/16 for 3/16, 1 for 12.
func (n Number) Step() Number {
	if n.den != 0 {
		return Number{val: big.NewRat(1, n.den), den: n.den}
	}
	d := n.Decimals()
	bottom := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(d)), nil)
	return Number{val: new(big.Rat).SetFrac(big.NewInt(1), bottom), decimals: d}
}

// Figures gives how many digits stand before the point: 2 for 12.5, 1 for 0.05.
func (n Number) Figures() int {
	r := n.Rat()
	whole := new(big.Int).Quo(r.Num(), r.Denom())
	return len(strings.TrimPrefix(whole.String(), "-"))
}

// ratOf gives the value of digits of which the last so many stand behind the
// point.
func ratOf(digits string, decimals int, neg bool) *big.Rat {
	top, _ := new(big.Int).SetString(digits, 10)
	if neg {
		top.Neg(top)
	}
	return new(big.Rat).SetFrac(top, new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(decimals)), nil))
}

// fraction builds a typed fraction; whole is "" for a plain one.
func fraction(neg bool, whole, top, bottom, text string) Number {
	t, _ := strconv.ParseInt(top, 10, 64)
	b, _ := strconv.ParseInt(bottom, 10, 64)
	val := big.NewRat(t, b)
	if whole != "" {
		w, _ := strconv.ParseInt(whole, 10, 64)
		val.Add(val, new(big.Rat).SetInt64(w))
	}
	if neg {
		val.Neg(val)
	}
	return Number{val: val, text: text, den: b}
}
