package heat

import (
	"strings"

	"matchmark/packs/units"
)

// Shrinking the shaft by cold.
//
//	D     joint diameter at 20 °C, mm
//	a_c   mean expansion of the shaft between 20 °C and the coolant, 1/K
//	contraction = D a_c (20 - T_coolant)
//
// The mean must be that of the range: expansion falls as metal gets colder, and
// the room-temperature figure would promise 31 % too much for carbon steel in
// liquid nitrogen. The mean down to 80 K is also used at -78.5 °C where no
// figure was found for that range: it promises too little, the safe side.
//
// Source: mean expansions 293 to 80 K, NOAO note GNIRS SDN0013.02, section 2;
// coolant temperatures, NIOSH Pocket Guide (dry ice) and handbook figures.
// Refused: a material without a figure for the cold.

// A Coolant is what the shaft is laid in.
type Coolant string

// DryIce is solid carbon dioxide at -78.5 °C, LiquidNitrogen boils at -196 °C.
const (
	DryIce         Coolant = "dry ice"
	LiquidNitrogen Coolant = "liquid nitrogen"
)

// contraction is the mean expansion of a material between 20 °C and a coolant.
type contraction struct {
	material string // name in the table of materials
	coolant  Coolant
	mean     PerKelvin
	source   string
}

var contractions = []contraction{
	{"carbon steel", LiquidNitrogen, 8.78e-6, "NOAO GNIRS SDN0013.02, 1075 steel, 293 to 80 K"},
	{"carbon steel", DryIce, 10.5e-6, "20 to -78 °C, from memory"},
	{"carbon steel, cautious", LiquidNitrogen, 8.78e-6, "NOAO GNIRS SDN0013.02, 1075 steel, 293 to 80 K"},
	{"carbon steel, cautious", DryIce, 8.78e-6, "NOAO GNIRS SDN0013.02, 1075 steel, mean of 293 to 80 K, low for dry ice"},
	{"stainless steel 304", LiquidNitrogen, 13.47e-6, "NOAO GNIRS SDN0013.02, 302 steel, 293 to 80 K"},
	{"stainless steel 304", DryIce, 13.47e-6, "NOAO GNIRS SDN0013.02, 302 steel, mean of 293 to 80 K, low for dry ice"},
	{"aluminium 2024", LiquidNitrogen, 18.45e-6, "NOAO GNIRS SDN0013.02, alloy 6061, 293 to 80 K"},
	{"aluminium 2024", DryIce, 18.45e-6, "NOAO GNIRS SDN0013.02, alloy 6061, mean of 293 to 80 K, low for dry ice"},
}

// reaches is the temperature of a shaft that has stopped boiling its coolant.
// Nitrogen boils at -196 °C, but the figures for contraction end at 80 K.
func (c Coolant) reaches() Celsius {
	if c == LiquidNitrogen {
		return 80 - 273.15
	}
	return -78.5
}

// A Chilled is a fit with its shaft cooled.
type Chilled struct {
	Shaft       Celsius // shaft temperature counted with
	Contraction Mm      // how much its diameter shrinks below that of 20 °C
	HubHeated   bool    // whether the hub must still be heated
	Hub         Celsius // hub temperature needed, or that of the air
	Source      string  // of the contraction
	Working     Working
}

// chill computes what cooling the shaft does for a fit, and how warm the hub must be
// besides; air is the temperature of a hub that is not heated. The figures hold at
// the moment the shaft is out; coldfit.go follows it from there.
func chill(f Fit, hub, shaft Material, by Coolant, air Celsius) (Chilled, error) {
	if err := f.check(); err != nil {
		return Chilled{}, within("Fit", err)
	}
	err := firstOf(within("Hub", hub.check()), within("Shaft", shaft.check()),
		temperature("Air", "the air", air), hub.covers("Air", air))
	if err != nil {
		return Chilled{}, err
	}
	cold, err := contractionOf(shaft.Name, by)
	if err != nil {
		return Chilled{}, err
	}
	shrinks := float64(cold.mean) * float64(sizedAt-by.reaches())
	c := Chilled{
		Shaft: by.reaches(), Contraction: Mm(shrinks) * f.Diameter,
		Hub: air, Source: cold.source,
		Working: Working{
			Formula: "contraction = diameter x mean expansion x (20 °C - coolant)",
			Source:  cold.source,
			Terms: []Term{
				{"diameter", Number(f.Diameter), "mm", units.Nearest},
				{"mean expansion", Number(cold.mean * 1e6), "µm/m K", units.Nearest},
				{"coolant", Number(by.reaches()), "°C", units.Nearest},
				{"contraction", Number(shrinks) * Number(f.Diameter), "mm", units.Down},
			},
		},
	}
	if hub.strain(float64(air))+shrinks < float64(f.opening()/f.Diameter) {
		free, err := rise(f, &hub, -shrinks, by.reaches())
		if err != nil {
			return Chilled{}, err
		}
		c.HubHeated, c.Hub = true, free.Hub
	}
	return c, nil
}

func contractionOf(material string, by Coolant) (contraction, error) {
	if by != DryIce && by != LiquidNitrogen {
		return contraction{}, refuse("Coolant", `write "dry ice" or "liquid nitrogen"`, "%q is no coolant known here", string(by))
	}
	var known []string
	for _, c := range contractions {
		if c.coolant != by {
			continue
		}
		if c.material == material {
			return c, nil
		}
		known = append(known, c.material)
	}
	return contraction{}, refuse("Shaft.Name", "heat the hub, or give the maker's figure; known are "+strings.Join(known, "; "),
		"how much %s shrinks in %s is not known, and the figure of a warm shaft promises too much", material, by)
}
