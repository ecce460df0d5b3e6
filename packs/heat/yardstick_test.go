package heat

import "math"

// Analytic solutions that the finite volumes are held against. They are checked
// themselves against published tables in transient_test.go.

// root finds where f changes sign between two points.
func root(f func(float64) float64, a, b float64) float64 {
	fa := f(a)
	for range 100 {
		m := (a + b) / 2
		if fm := f(m); (fm > 0) == (fa > 0) {
			a, fa = m, fm
		} else {
			b = m
		}
	}
	return (a + b) / 2
}

// zerosOfJ1 are the first zeros of J1 above zero.
func zerosOfJ1(n int) []float64 {
	z := make([]float64, n)
	for i := range z {
		guess := (float64(i) + 1.25) * math.Pi
		z[i] = root(math.J1, guess-0.5, guess+0.5)
	}
	return z
}

// convective is theta of an infinite cylinder cooled by a film: sum of
// C exp(-z² Fo) J0(z x), z J1(z) = Bi J0(z), C = 2 J1/(z (J0² + J1²)).
// Carslaw and Jaeger; Cengel, Heat Transfer, section 4-2.
func convective(bi float64, terms int) func(fo, x float64) float64 {
	ends := append([]float64{1e-9}, zerosOfJ1(terms)...)
	z, c := make([]float64, terms), make([]float64, terms)
	for i := range terms {
		z[i], c[i] = convectiveTerm(bi, ends[i], ends[i+1])
	}
	return func(fo, x float64) float64 {
		sum := 0.0
		for i := range terms {
			sum += c[i] * math.Exp(-z[i]*z[i]*fo) * math.J0(z[i]*x)
		}
		return sum
	}
}

func convectiveTerm(bi, from, to float64) (z, c float64) {
	z = root(func(z float64) float64 { return z*math.J1(z) - bi*math.J0(z) }, from+1e-9, to-1e-9)
	j0, j1 := math.J0(z), math.J1(z)
	return z, 2 * j1 / (z * (j0*j0 + j1*j1))
}

// heated is (T-Ti) k/(q R) of a solid cylinder with constant flux q:
// 2 Fo + x²/2 - 1/4 - 2 sum exp(-l² Fo) J0(l x)/(l² J0(l)), J1(l) = 0.
// Carslaw and Jaeger, 7.8, from memory.
func heated(fo, x float64) float64 {
	sum := 2*fo + x*x/2 - 0.25
	for _, l := range zerosOfJ1(60) {
		sum -= 2 * math.Exp(-l*l*fo) * math.J0(l*x) / (l * l * math.J0(l))
	}
	return sum
}
