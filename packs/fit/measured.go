package fit

// Interference from measured sizes.
//
//	L, T    size as read and temperature of the part; mm, °C
//	a       mean expansion of the part's material between T and 20 °C; 1/K
//	L20     size at 20 °C; mm
//
//	L20 = L / (1 + a (T - 20))
//	d   = seat20 - bore20
//
// Source: ISO 1 (sizes hold at 20 °C); Swyt, J. Res. NIST 99 (1994), for the
// expansion of steel and aluminium. The instrument is taken to read true: a
// steel micrometer as warm as a steel part needs no correction at all, so state
// 20 °C for a part that was compared with a gauge of its own material at its own
// temperature.
// Valid: -20 to 100 °C, where one expansion will do. Refused: expansions outside 1
// to 50 µm/m·K, bores and seats that differ by over 5 ‰.

// Measured is a bore and a seat as read, each with the temperature of its part.
type Measured struct {
	Bore, Seat           Mm
	BoreAt, SeatAt       Celsius
	HubAlpha, ShaftAlpha PerKelvin
}

// Interference gives the interference on diameter at 20 °C; below zero it is a
// clearance. Its error is a *FieldError.
func (m Measured) Interference() (Micron, []Step, error) {
	for _, p := range []struct {
		field, name string
		size        Mm
		at          Celsius
		alpha       PerKelvin
		atField     string
		alphaField  string
	}{
		{"Bore", "bore", m.Bore, m.BoreAt, m.HubAlpha, "BoreAt", "HubAlpha"},
		{"Seat", "seat", m.Seat, m.SeatAt, m.ShaftAlpha, "SeatAt", "ShaftAlpha"},
	} {
		switch {
		case !(p.size > 0 && p.size <= 3150):
			return 0, nil, wrong(p.field, "%s %g mm: over 0 up to 3150 mm is wanted", p.name, p.size)
		case !(p.at >= -20 && p.at <= 100):
			return 0, nil, wrong(p.atField, "%s measured at %g °C: -20 to 100 °C can be corrected to 20 °C; let it come nearer to that and measure again", p.name, p.at)
		case !(p.alpha >= 1e-6 && p.alpha <= 50e-6):
			return 0, nil, wrong(p.alphaField, "expansion for the %s %g 1/K: 0.000001 to 0.00005 is wanted", p.name, p.alpha)
		}
	}
	if gap := m.Seat - m.Bore; gap > maxInterference*m.Bore || gap < -maxInterference*m.Bore {
		return 0, nil, wrong("Seat", "seat %g mm and bore %g mm differ by over 5 µm in each mm: look for a slipped digit", m.Seat, m.Bore)
	}
	bore, boreStep := at20("bore", m.Bore, m.BoreAt, m.HubAlpha)
	seat, seatStep := at20("seat", m.Seat, m.SeatAt, m.ShaftAlpha)
	d := Micron(seat-bore) * 1000
	return d, []Step{boreStep, seatStep, {
		Formula: "d = seat20 - bore20",
		Source:  "by definition",
		In:      []Value{{"seat20", "seat at 20 °C", Number(seat), "mm"}, {"bore20", "bore at 20 °C", Number(bore), "mm"}},
		Out:     Value{"d", "interference on diameter", Number(d), "µm"},
	}}, nil
}

// at20 brings one size to 20 °C.
func at20(name string, size Mm, at Celsius, alpha PerKelvin) (Mm, Step) {
	l := size / Mm(1+float64(alpha)*(float64(at)-20))
	return l, Step{
		Formula: "L20 = L / (1 + a (T - 20))",
		Source:  "ISO 1",
		In: []Value{
			{"L", name + " as read", Number(size), "mm"},
			{"T", "temperature of the part", Number(at), "°C"},
			{"a", "expansion", Number(alpha), "1/K"},
		},
		Out: Value{"L20", name + " at 20 °C", Number(l), "mm"},
	}
}
