package heat

// Highest temperatures of common practice. "memory" marks what was not read. The
// last field of a limit says that no flame may touch the part.
var ceilings = []Ceiling{
	{Part: "plain carbon steel hub",
		Limit:     Limit{300, "common practice for hubs that are not hardened, from memory", false},
		Contested: "315 °C (600 °F) is also used; one table of steels asks for care from 200 °C; makers of couplings set 232 °C (450 °F) or 135 °C"},
	{Part: "coupling hub",
		Limit:     Limit{232, "a coupling owner's manual: do not pass 450 °F, no open flame", true},
		Contested: "the same manual heats to 350 °F (177 °C) for fitting"},
	{Part: "grey cast iron hub",
		Limit: Limit{200, "common practice: slow and even, cast iron cracks; from memory", false}},
	{Part: "hardened or tempered part",
		Limit:     Limit{150, "stay below the tempering temperature; often 150 to 180 °C, from memory", true},
		Contested: "the maker's tempering temperature rules"},
	{Part: "aluminium part",
		Limit: Limit{150, "age-hardened alloys soften near their ageing temperature, 160 to 190 °C; from memory", true}},
	{Part: "geared coupling hub",
		Limit: Limit{135, "a coupling maker's manual for hubs with hardened teeth", true}},
	{Part: "rolling bearing",
		Limit:     Limit{120, "bearing makers: never a flame, never above 120 to 125 °C", true},
		Contested: "110, 120, 121 (8 h) and 125 °C are printed; 93 °C for 24 h"},
	{Part: "bearing cover",
		Limit: Limit{100, "common practice, so that the bearing and its oil behind stay below 93 to 120 °C; from memory", true}},
	{Part: "rubber seal",
		Limit:     Limit{100, "nitrile rubber in steady heat, from memory", true},
		Contested: "fluorinated rubber stands more; the seal's own data rule"},
	{Part: "greased bearing",
		Limit: Limit{93, "a bearing maker's table: 93 °C for 24 h; sealed and greased bearings lower if their maker says so", true}},
	{Part: "precision bearing",
		Limit: Limit{66, "a bearing maker's table: 66 °C for precision bearings", true}},
}

// Temper colours of polished carbon steel after a short heating; the range
// spans the sources (Dooley and three others).
var temperColours = []Colour{
	{"pale yellow", 221, 230},
	{"straw", 238, 238},
	{"dark straw", 249, 249},
	{"brown", 255, 260},
	{"purple", 271, 288},
	{"dark blue", 288, 300},
	{"pale blue", 320, 337},
	{"grey", 330, 350},
}
