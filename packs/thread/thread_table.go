package thread

// metricRow pairs one diameter with its pitches, mm.
type metricRow struct {
	diameter Mm
	coarse   Mm // 0: the diameter has no coarse pitch
	fine     []Mm
}

// Fine pitches shared by several diameters, named after the first of them or by what
// they hold.
var (
	from70     = []Mm{6, 4, 3, 2, 1.5}
	from85     = []Mm{6, 4, 3, 2}
	from155    = []Mm{6, 4, 3}
	from255    = []Mm{6, 4}
	with8      = []Mm{8, 6, 4, 3, 2}
	with8to3   = []Mm{8, 6, 4, 3}
	with8to4   = []Mm{8, 6, 4}
	fourDown   = []Mm{4, 3, 2, 1.5}
	threeDown  = []Mm{3, 2, 1.5}
	twoDown    = []Mm{2, 1.5, 1}
	fifteenOne = []Mm{1.5, 1}
)

// metricTable is ISO 261:1998 (ISO 262 and ISO 724 are parts of it). Typed from
// memory and compared with GB/T 193-2003, which is the same table
// (testdata/outside/thread.txt). M30x3 and M33x3, which it brackets, are in; M14x1.25
// is meant for spark plugs and M35x1.5 for bearing lock nuts.
var metricTable = []metricRow{
	{1, 0.25, []Mm{0.2}}, {1.1, 0.25, []Mm{0.2}}, {1.2, 0.25, []Mm{0.2}}, {1.4, 0.3, []Mm{0.2}},
	{1.6, 0.35, []Mm{0.2}}, {1.8, 0.35, []Mm{0.2}}, {2, 0.4, []Mm{0.25}}, {2.2, 0.45, []Mm{0.25}},
	{2.5, 0.45, []Mm{0.35}}, {3, 0.5, []Mm{0.35}}, {3.5, 0.6, []Mm{0.35}}, {4, 0.7, []Mm{0.5}},
	{4.5, 0.75, []Mm{0.5}}, {5, 0.8, []Mm{0.5}}, {5.5, 0, []Mm{0.5}}, {6, 1, []Mm{0.75}},
	{7, 1, []Mm{0.75}}, {8, 1.25, []Mm{1, 0.75}}, {9, 1.25, []Mm{1, 0.75}}, {10, 1.5, []Mm{1.25, 1, 0.75}},
	{11, 1.5, []Mm{1, 0.75}}, {12, 1.75, []Mm{1.5, 1.25, 1}}, {14, 2, []Mm{1.5, 1.25, 1}}, {15, 0, fifteenOne},
	{16, 2, fifteenOne}, {17, 0, fifteenOne}, {18, 2.5, twoDown}, {20, 2.5, twoDown}, {22, 2.5, twoDown},
	{24, 3, twoDown}, {25, 0, twoDown}, {26, 0, []Mm{1.5}}, {27, 3, twoDown}, {28, 0, twoDown},
	{30, 3.5, []Mm{3, 2, 1.5, 1}}, {32, 0, []Mm{2, 1.5}}, {33, 3.5, threeDown}, {35, 0, []Mm{1.5}},
	{36, 4, threeDown}, {38, 0, []Mm{1.5}}, {39, 4, threeDown}, {40, 0, threeDown},
	{42, 4.5, fourDown}, {45, 4.5, fourDown}, {48, 5, fourDown}, {50, 0, threeDown}, {52, 5, fourDown},
	{55, 0, fourDown}, {56, 5.5, fourDown}, {58, 0, fourDown}, {60, 5.5, fourDown}, {62, 0, fourDown},
	{64, 6, fourDown}, {65, 0, fourDown}, {68, 6, fourDown}, {70, 0, from70}, {72, 0, from70},
	{75, 0, fourDown}, {76, 0, from70}, {78, 0, []Mm{2}}, {80, 0, from70}, {82, 0, []Mm{2}},
	{85, 0, from85}, {90, 0, from85}, {95, 0, from85}, {100, 0, from85}, {105, 0, from85},
	{110, 0, from85}, {115, 0, from85}, {120, 0, from85}, {125, 0, with8}, {130, 0, with8},
	{135, 0, from85}, {140, 0, with8}, {145, 0, from85}, {150, 0, with8}, {155, 0, from155},
	{160, 0, with8to3}, {165, 0, from155}, {170, 0, with8to3}, {175, 0, from155}, {180, 0, with8to3},
	{185, 0, from155}, {190, 0, with8to3}, {195, 0, from155}, {200, 0, with8to3}, {205, 0, from155},
	{210, 0, with8to3}, {215, 0, from155}, {220, 0, with8to3}, {225, 0, from155}, {230, 0, with8to3},
	{235, 0, from155}, {240, 0, with8to3}, {245, 0, from155}, {250, 0, with8to3}, {255, 0, from255},
	{260, 0, with8to4}, {265, 0, from255}, {270, 0, with8to4}, {275, 0, from255}, {280, 0, with8to4},
	{285, 0, from255}, {290, 0, with8to4}, {295, 0, from255}, {300, 0, with8to4},
}

// finerPitches are the pitches that ISO 261 permits beyond its table, each up to a
// greatest diameter, for a pitch finer than any the table pairs with the diameter.
// Read in GB/T 193-2003 (3 to 0.5 mm).
var finerPitches = []struct{ pitch, upTo Mm }{
	{3, 300}, {2, 200}, {1.5, 150}, {1, 80}, {0.75, 33}, {0.5, 22},
}

// trapezoidalRow pairs one diameter with its pitches, mm.
type trapezoidalRow struct {
	diameter Mm
	pitches  []Mm
}

// trapezoidalTable is the general plan of ISO 2902, read in a thread supplier's
// sheet of 2007, and below it the threads of bearing lock nuts by ISO 2982-2, from
// memory.
var trapezoidalTable = []trapezoidalRow{
	{8, []Mm{1.5}}, {9, []Mm{2, 1.5}}, {10, []Mm{2, 1.5}}, {11, []Mm{3, 2}}, {12, []Mm{3, 2}}, {14, []Mm{3, 2}},
	{16, []Mm{4, 2}}, {18, []Mm{4, 2}}, {20, []Mm{4, 2}}, {22, []Mm{8, 5, 3}}, {24, []Mm{8, 5, 3}},
	{26, []Mm{8, 5, 3}}, {28, []Mm{8, 5, 3}}, {30, []Mm{10, 6, 3}}, {32, []Mm{10, 6, 3}}, {34, []Mm{10, 6, 3}},
	{36, []Mm{10, 6, 3}}, {38, []Mm{10, 7, 3}}, {40, []Mm{10, 7, 3}}, {42, []Mm{10, 7, 3}}, {44, []Mm{12, 7, 3}},
	{46, []Mm{12, 8, 3}}, {48, []Mm{12, 8, 3}}, {50, []Mm{12, 8, 3}}, {52, []Mm{12, 8, 3}}, {55, []Mm{14, 9, 3}},
	{60, []Mm{14, 9, 3}}, {65, []Mm{16, 10, 4}}, {70, []Mm{16, 10, 4}}, {75, []Mm{16, 10, 4}}, {80, []Mm{16, 10, 4}},
	{85, []Mm{18, 12, 4}}, {90, []Mm{18, 12, 4}}, {95, []Mm{18, 12, 4}}, {100, []Mm{20, 12, 4}}, {105, []Mm{20, 12, 4}},
	{110, []Mm{20, 12, 4}}, {115, []Mm{22, 14, 6}}, {120, []Mm{22, 14, 6}}, {125, []Mm{22, 14, 6}}, {130, []Mm{22, 14, 6}},
	{135, []Mm{24, 14, 6}}, {140, []Mm{24, 14, 6}}, {145, []Mm{24, 14, 6}}, {150, []Mm{24, 16, 6}}, {155, []Mm{24, 16, 6}},
	{160, []Mm{28, 16, 6}}, {165, []Mm{28, 16, 6}}, {170, []Mm{28, 16, 6}}, {175, []Mm{28, 16, 8}}, {180, []Mm{28, 18, 8}},
	{185, []Mm{32, 18, 8}}, {190, []Mm{32, 18, 8}}, {195, []Mm{32, 18, 8}}, {200, []Mm{32, 18, 8}}, {210, []Mm{36, 20, 8}},
	{220, []Mm{36, 20, 8}}, {230, []Mm{36, 20, 8}}, {240, []Mm{36, 22, 8}}, {250, []Mm{40, 22, 12}}, {260, []Mm{40, 22, 12}},
	{270, []Mm{40, 24, 12}}, {280, []Mm{40, 24, 12}}, {290, []Mm{44, 24, 12}}, {300, []Mm{44, 24, 12}},

	{220, []Mm{4}}, {240, []Mm{4}}, {260, []Mm{4}}, {280, []Mm{4}}, {300, []Mm{4}}, {320, []Mm{5}}, {340, []Mm{5}},
	{360, []Mm{5}}, {380, []Mm{5}}, {400, []Mm{5}}, {420, []Mm{5}}, {440, []Mm{5}}, {460, []Mm{5}}, {480, []Mm{5}},
	{500, []Mm{5}}, {530, []Mm{6}}, {560, []Mm{6}}, {600, []Mm{6}}, {630, []Mm{6}}, {670, []Mm{6}}, {710, []Mm{7}},
	{750, []Mm{7}}, {800, []Mm{7}}, {850, []Mm{7}}, {900, []Mm{7}}, {950, []Mm{8}}, {1000, []Mm{8}},
}

// unifiedRow is one unified size: its number or fraction, its diameter in inches and
// its threads per inch, 0 where the series has none.
type unifiedRow struct {
	size     string
	diameter Inch
	unc, unf float64
	un8      bool // listed with 8 threads per inch in the 8-UN series
}

// unifiedTable is ASME B1.1, series UNC and UNF (compared with printed tables,
// testdata/outside/thread.txt) and 8-UN (from memory). Number sizes are 0.060 in and
// 0.013 in more for each number.
var unifiedTable = []unifiedRow{
	{"#0", 0.060, 0, 80, false}, {"#1", 0.073, 64, 72, false}, {"#2", 0.086, 56, 64, false}, {"#3", 0.099, 48, 56, false},
	{"#4", 0.112, 40, 48, false}, {"#5", 0.125, 40, 44, false}, {"#6", 0.138, 32, 40, false}, {"#8", 0.164, 32, 36, false},
	{"#10", 0.190, 24, 32, false}, {"#12", 0.216, 24, 28, false},
	{"1/4", 0.25, 20, 28, false}, {"5/16", 0.3125, 18, 24, false}, {"3/8", 0.375, 16, 24, false}, {"7/16", 0.4375, 14, 20, false},
	{"1/2", 0.5, 13, 20, false}, {"9/16", 0.5625, 12, 18, false}, {"5/8", 0.625, 11, 18, false}, {"3/4", 0.75, 10, 16, false},
	{"7/8", 0.875, 9, 14, false}, {"1", 1, 8, 12, false}, {"1-1/8", 1.125, 7, 12, true}, {"1-1/4", 1.25, 7, 12, true},
	{"1-3/8", 1.375, 6, 12, true}, {"1-1/2", 1.5, 6, 12, true}, {"1-5/8", 1.625, 0, 0, true}, {"1-3/4", 1.75, 5, 0, true},
	{"1-7/8", 1.875, 0, 0, true}, {"2", 2, 4.5, 0, true}, {"2-1/4", 2.25, 4.5, 0, true}, {"2-1/2", 2.5, 4, 0, true},
	{"2-3/4", 2.75, 4, 0, true}, {"3", 3, 4, 0, true}, {"3-1/4", 3.25, 4, 0, true}, {"3-1/2", 3.5, 4, 0, true},
	{"3-3/4", 3.75, 4, 0, true}, {"4", 4, 4, 0, true},
}
