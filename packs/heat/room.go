package heat

// What the gas of a coolant does to the air of a room.
//
//	V_g  gas at 20 °C and 1 bar, m³: 0.697 per litre of liquid nitrogen, 0.547
//	     per kg of dry ice
//	V    free volume of the room, m³
//	oxygen = 20.9 (1 - V_g/V) percent;  carbon dioxide = V_CO2/V
//
// Source: displacement of a well mixed, closed room; gas volumes from the gas
// law and suppliers' figures (0.694 to 0.696 for nitrogen, counted up). Limits: oxygen 19.5 %
// 29 CFR 1910.146(b); carbon dioxide 0.5 % for 8 h and 3 % for 15 min, 4 %
// dangerous to life, NIOSH Pocket Guide. Validity: a mixed room. Cold gas lies
// low, carbon dioxide weighs 1.53 times air: near the floor and in pits it is
// worse than computed. Refused: no room, no coolant, more gas than room.

import "math"

const (
	nitrogenGas = 0.697 // m³ per litre
	iceGas      = 0.547 // m³ per kg

	freshOxygen   = 20.9 // percent
	leastOxygen   = Percent(19.5)
	longCarbonic  = Percent(0.5)
	shortCarbonic = Percent(3)
)

// An Air is the air of a closed, mixed room after all coolant has turned to gas.
type Air struct {
	Oxygen   Percent
	Carbonic Percent // carbon dioxide
	// MostNitrogen and MostIce alone would bring the room to the lowest oxygen
	// and to the carbon dioxide of 15 minutes.
	MostNitrogen Litre
	MostIce      Kg
	Warnings     []Warning
}

// RoomAfter computes the air of a room of the given free volume after that much
// liquid nitrogen and dry ice have turned to gas in it with the doors closed.
func RoomAfter(room M3, nitrogen Litre, ice Kg) (Air, error) {
	err := firstOf(
		positive("Room", "the volume of the room", float64(room), "m³"),
		notNegative("Nitrogen", "the liquid nitrogen", float64(nitrogen), "litres"),
		notNegative("Ice", "the dry ice", float64(ice), "kg"),
	)
	if err != nil {
		return Air{}, err
	}
	if nitrogen == 0 && ice == 0 {
		return Air{}, refuse("Nitrogen", "give the litres of nitrogen or the kilograms of dry ice brought into the room",
			"how much coolant is used is missing")
	}
	carbonic := float64(ice) * iceGas / float64(room)
	pushed := float64(nitrogen)*nitrogenGas/float64(room) + carbonic
	if pushed >= 1 {
		return Air{}, refuse("Room", "cool the part in the open, or bring less",
			"the coolant makes %.0f m³ of gas, more than the room of %.0f m³ holds", math.Ceil(pushed*float64(room)), math.Floor(float64(room)))
	}
	a := Air{
		Oxygen:       Percent(freshOxygen * (1 - pushed)),
		Carbonic:     Percent(100 * carbonic),
		MostNitrogen: Litre(float64(room) * (1 - float64(leastOxygen)/freshOxygen) / nitrogenGas),
		MostIce:      Kg(float64(room) * float64(shortCarbonic) / 100 / iceGas),
	}
	a.Warnings = a.judge()
	return a, nil
}

func (a *Air) judge() []Warning {
	w := []Warning{warn("low-gas", "Room", "cold gas lies low: near the floor and in pits the air is worse than these figures")}
	if a.Oxygen < leastOxygen {
		w = append(w, warn("oxygen", "Nitrogen", "oxygen falls below 19.5 %: not in this room with the doors closed; work in the open or with forced air and an oxygen meter on the chest"))
	}
	switch {
	case a.Carbonic > shortCarbonic:
		w = append(w, warn("carbonic-short", "Ice", "carbon dioxide passes 3 %, the limit for 15 minutes: not in this room with the doors closed; an oxygen meter does not warn of it, carry a carbon dioxide meter"))
	case a.Carbonic > longCarbonic:
		w = append(w, warn("carbonic-shift", "Ice", "carbon dioxide passes 0.5 %, the limit for a shift: doors open, fan on, carry a carbon dioxide meter"))
	}
	return w
}
