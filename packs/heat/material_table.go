package heat

// Below 20 °C the curves of EN 1993-1-2 are carried on as they stand, to -20 °C
// and no further: a shaft in an unheated hall in winter. The standard itself
// starts at 20 °C.
//
// Flat coefficients of expansion hold about 20 to 100 °C. Metals expand more
// when hotter, so a hub with a flat coefficient opens a little more than
// computed, which is the safe side; a hot shaft grows a little more as well.

// enElongation, enSpecific and enConducts are the curves for carbon steel of
// EN 1993-1-2, 3.4.1.1 to 3.4.1.3, for 20 to 600 °C. Copies of the standard
// print the slope of the conductivity as 3.3e-2 or 3.33e-2; 3.33e-2 is used.
var (
	enElongation = Curve{-2.416e-4, 1.2e-5, 0.4e-8}
	enSpecific   = Curve{425, 7.73e-1, -1.69e-3, 2.22e-6}
	enConducts   = Curve{54, -3.33e-2}
)

var materials = []Material{
	{
		Name: "carbon steel", Density: 7850,
		Elongation: enElongation, Specific: enSpecific, Conducts: enConducts,
		Young: 210e3, Poisson: 0.3, From: -20, To: 600,
		Source: "EN 1993-1-2, 3.4.1 (growth, heat, conduction over temperature); density and elastic as EN 1993-1-1, from memory",
	},
	{
		// For a cautious plan: hard and alloyed steels grow less than the
		// curve of the fire standard says.
		Name: "carbon steel, cautious", Density: 7850,
		Elongation: flatExpansion(11.5e-6), Specific: enSpecific, Conducts: enConducts,
		Young: 210e3, Poisson: 0.3, From: -20, To: 600,
		Source: "expansion 11.5e-6/K: Swyt, J. Res. NIST 99 (1994); EN 1993-1-2, 3.4.1 (heat, conduction)",
	},
	{
		Name: "stainless steel 304", Density: 7900,
		Elongation: flatExpansion(17.2e-6), Specific: Curve{477}, Conducts: Curve{14.9},
		Young: 193e3, Poisson: 0.29, From: -20, To: 400,
		Source: "Incropera, Fundamentals of Heat and Mass Transfer, Table A.1; expansion 9.6e-6/°F; elastic from memory",
	},
	{
		Name: "stainless steel 316", Density: 8238,
		Elongation: flatExpansion(16e-6), Specific: Curve{468}, Conducts: Curve{13.4},
		Young: 193e3, Poisson: 0.3, From: -20, To: 400,
		Source: "Incropera, Table A.1; expansion and elastic from memory",
	},
	{
		Name: "grey cast iron", Density: 7200,
		Elongation: flatExpansion(10.4e-6), Specific: Curve{490}, Conducts: Curve{50},
		Young: 100e3, Poisson: 0.21, Brittle: true, From: -20, To: 300,
		Source: "expansion (low end of 10.4 to 11.4) and elastic: Gere, Mechanics of Materials, property tables; density, heat, conduction from memory",
	},
	{
		Name: "tin bronze", Density: 8780,
		Elongation: flatExpansion(18e-6), Specific: Curve{355}, Conducts: Curve{54},
		Young: 105e3, Poisson: 0.34, From: -20, To: 250,
		Source: "Incropera, Table A.1 (gear bronze); expansion and elastic: Gere, property tables",
	},
	{
		Name: "aluminium bronze", Density: 8800,
		Elongation: flatExpansion(16e-6), Specific: Curve{420}, Conducts: Curve{52},
		Young: 110e3, Poisson: 0.34, From: -20, To: 250,
		Source: "Incropera, Table A.1 (commercial bronze, 90 Cu 10 Al); expansion, low end of 16 to 18: Gere, property tables; elastic from memory",
	},
	{
		Name: "aluminium 2024", Density: 2770,
		Elongation: flatExpansion(22.9e-6), Specific: Curve{875}, Conducts: Curve{177},
		Young: 72e3, Poisson: 0.33, From: -20, To: 200,
		Source: "Incropera, Table A.1 (2024-T6); expansion and elastic: Gere, property tables",
	},
}
