package joint

// isoRow is one property class over a range of diameters, mm.
type isoRow struct {
	class          string
	over, upTo     float64 // the diameters it holds for
	proof, tensile MPa     // Sp and least Rm
}

// isoTable is ISO 898-1: stress under proof load Sp and minimum tensile strength Rm,
// N/mm². Read in two copies of the table (EN ISO 898-1:2013 at a fastener supplier, and
// the edition of 1999 at another), which agree. Class 9.8 ends at 16 mm. The least
// diameter and the end at M39 are those of the scope, from memory.
//
// Loads are never kept: they are area times stress, because the published tables of loads
// have misprints (class 10.9: M4 91130 N for 9130, M20 250000 N for 255000; class 9.8:
// M12 75200 N for 75900).
var isoTable = []isoRow{
	{"4.6", 0, 39, 225, 400},
	{"4.8", 0, 39, 310, 420},
	{"5.6", 0, 39, 280, 500},
	{"5.8", 0, 39, 380, 520},
	{"6.8", 0, 39, 440, 600},
	{"8.8", 0, 16, 580, 800},
	{"8.8", 16, 39, 600, 830},
	{"9.8", 0, 16, 650, 900},
	{"10.9", 0, 39, 830, 1040},
	{"12.9", 0, 39, 970, 1220},
}

// isoLeast and isoFineLeast are the smallest diameters of ISO 898-1, coarse and fine, mm;
// from memory.
const isoLeast, isoFineLeast = 1.6, 8

// saeRow is one grade over a range of sizes, inches.
type saeRow struct {
	grade          string
	over, upTo     float64
	proof, tensile float64 // ksi
}

// saeTable is SAE J429, UNC and UNF, 1/4 to 1-1/2 in: proof load as a stress, and minimum
// tensile strength, ksi. Grades 1, 2, 5 and 8 read in two suppliers' copies; 5.2, 7 and
// 8.2 from memory. Grade 2 over 3/4 in, and longer than 6 in, is no better than grade 1.
var saeTable = []saeRow{
	{"grade 1", 0.2499, 1.5, 33, 60},
	{"grade 2", 0.2499, 0.75, 55, 74},
	{"grade 2", 0.75, 1.5, 33, 60},
	{"grade 5", 0.2499, 1, 85, 120},
	{"grade 5", 1, 1.5, 74, 105},
	{"grade 5.2", 0.2499, 1, 85, 120},
	{"grade 7", 0.2499, 1.5, 105, 133},
	{"grade 8", 0.2499, 1.5, 120, 150},
	{"grade 8.2", 0.2499, 1, 120, 150},
}
