package lift

// A Material is a density with the range in which published values lie.
type Material struct {
	Name      string
	Density   Density
	Low, High Density
	// Source names the table; "from memory" where none was at hand.
	Source string
}

// MaterialNamed finds a material by its name in lower case, such as "steel" or
// "cast iron". Not found means that the author has to write the density.
func MaterialNamed(name string) (Material, bool) {
	for _, m := range materials {
		if m.Name == name {
			return m, true
		}
	}
	return Material{}, false
}

const (
	gere  = "Gere, Mechanics of Materials, 5th ed., table of weights and mass densities"
	iowa  = "Iowa DOT Instructional Memoranda 452.02 and 569"
	navyE = "US Navy ship salvage handbook S0300-A8-HBK-010, table E-1"
	byMem = "from memory, no source at hand"
)

// materials, by name. Where a table gives one number, Low and High are that
// number; where it gives a range, Density is its middle.
var materials = []Material{
	{"aluminium", 2700, 2700, 2700, gere + " (6061-T6)"},
	{"babbitt, lead", 10000, 9500, 10500, byMem},
	{"babbitt, tin", 7350, 7300, 7400, byMem},
	{"brass", 8500, 8400, 8600, gere},
	{"bronze", 8500, 8200, 8800, gere},
	{"cast iron", 7210, 7000, 7400, iowa + "; range " + gere},
	{"concrete", 2300, 2300, 2300, gere},
	{"concrete, reinforced", 2400, 2400, 2400, gere},
	{"copper", 8900, 8900, 8900, gere},
	{"lead", 11340, 11340, 11340, byMem},
	{"nickel", 8800, 8800, 8800, gere},
	{"oil", 875, 850, 900, byMem},
	{"sea water", 1025, 1025, 1025, navyE},
	{"stainless steel", 7950, 7900, 8000, byMem},
	{"steel", 7850, 7850, 7850, iowa + "; " + gere},
	{"titanium", 4500, 4500, 4500, gere},
	{"water", 1000, 1000, 1000, navyE},
}
