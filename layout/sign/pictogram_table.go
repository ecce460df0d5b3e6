package sign

// pictograms are the drawings inside the frames, by ISO 7010 number. The names
// are those of the standard's list.
var pictograms = map[string][]part{
	// general warning sign
	"W001": {
		{path: "M 44.5 34 L 55.5 34 L 53 64 L 47 64 Z"},
		{path: "O 50 74.5 5"},
	},
	// magnetic field
	"W006": {
		{path: "M 35 62 L 35 52 C 35 32 65 32 65 52 L 65 62", weight: 9},
		{path: "M 30 66 L 40 66 M 60 66 L 70 66", weight: 5},
		{path: "M 35 74 L 35 81 M 26 72 L 22 78 M 44 72 L 48 78 M 65 74 L 65 81 M 56 72 L 52 78 M 74 72 L 78 78", weight: 2.5},
	},
	// low temperature, freezing conditions
	"W010": {
		{path: "M 50 36 L 50 82 M 32 49 L 68 69 M 32 69 L 68 49", weight: 4},
		{path: "M 45 39 L 50 44 L 55 39 M 45 79 L 50 74 L 55 79", weight: 3},
		{path: "M 31 53 L 37 51.5 L 35.5 45 M 69 53 L 63 51.5 L 64.5 45", weight: 3},
		{path: "M 31 65 L 37 66.5 L 35.5 73 M 69 65 L 63 66.5 L 64.5 73", weight: 3},
	},
	// electricity
	"W012": {
		{path: "M 53 31 L 41 57 L 50 57 L 45 71 L 41 69.5 L 44 82 L 55 75 L 50.5 73 L 60 51 L 51 51 L 59.5 31 Z"},
	},
	// overhead load
	"W015": {
		{path: "M 50 27 L 50 38", weight: 4},
		{path: "M 50 38 C 57 39 58 48 50 48 C 46 48 44 46 44 43", weight: 3.5},
		{path: "M 50 48 L 35 62 M 50 48 L 65 62", weight: 2.5},
		{path: "M 32 62 L 68 62 L 68 80 L 32 80 Z"},
	},
	// hot surface
	"W017": {
		{path: "M 25 76 L 75 76 L 75 82 L 25 82 Z"},
		{path: "M 37 71 C 30 64 44 60 37 51", weight: 4.5},
		{path: "M 50 71 C 41 61 59 53 50 40", weight: 4.5},
		{path: "M 63 71 C 56 64 70 60 63 51", weight: 4.5},
	},
	// crushing
	"W019": {
		{path: "M 27 70 L 33 58 L 33 82 L 24 82 Z M 73 70 L 67 58 L 67 82 L 76 82 Z"},
		{path: "O 50 46 5.5"},
		{path: "M 50 55 L 50 68 M 50 68 L 46 82 M 50 68 L 54 82", weight: 5},
		{path: "M 50 57 L 41 64 L 44 71 M 50 57 L 59 64 L 56 71", weight: 3.5},
	},
	// flammable material
	"W021": {
		{path: "M 51 27 C 52 38 66 46 66 60 C 66 70 59 76 50 76 C 41 76 34 70 34 60 C 34 52 40 48 42 40 C 45 44 46 47 46 51 C 51 45 53 36 51 27 Z"},
		{path: "M 50 73 C 44 73 42 69 43 65 C 45 66 46 66 47 67 C 50 63 50 60 50 56 C 55 60 58 64 57 68 C 56 71 54 73 50 73 Z", white: true},
		{path: "M 30 79 L 70 79 L 70 83 L 30 83 Z"},
	},
	// sharp element
	"W022": {
		{path: "M 52 30 L 62 50 L 42 58 Z"},
		{path: "M 30 66 L 58 66 C 64 66 64 74 58 74 L 52 74 L 52 82 L 30 82 Z"},
		{path: "M 49 60 L 46 66 M 54 58 L 53 65", weight: 2.5},
		{path: "M 62 60 L 66 64 M 66 56 L 71 58", weight: 2.5},
	},
	// crushing of hands
	"W024": {
		{path: "M 26 78 L 74 78 L 74 83 L 26 83 Z"},
		{path: "M 45 34 L 55 34 L 55 42 L 60 42 L 50 52 L 40 42 L 45 42 Z"},
		{path: "M 38 53 L 68 53 L 68 58 L 38 58 Z"},
		{path: "M 28 62 L 42 62 L 46 75 L 24 75 Z"},
		{path: "M 42 64 L 66 64 M 44 68.5 L 69 68.5 M 45 73 L 65 73", weight: 3.6},
	},
	// falling objects
	"W035": {
		{path: "M 42 31 L 53 28 L 56 39 L 45 42 Z M 57 44 L 66 47 L 63 56 L 54 53 Z"},
		{path: "M 40 47 L 47 45 L 49 52 L 42 54 Z"},
		{path: "O 44 65 5"},
		{path: "M 34 82 C 34 72 54 72 54 82 Z"},
	},
	// asphyxiating atmosphere
	"W041": {
		{path: "O 32 73 5"},
		{path: "M 40 75 L 58 75 L 72 79", weight: 6},
		{path: "M 45 74 L 50 82", weight: 3.5},
		{path: "M 38 62 C 43 57 46 66 51 61 C 55 57 58 65 63 61", weight: 3},
		{path: "M 41 52 C 45 47 48 56 52 51 C 55 48 57 54 60 51", weight: 3},
		{path: "M 45 42 C 48 38 50 45 53 41", weight: 3},
	},
	// substance or mixture presenting a health hazard
	"W071": {
		{path: "O 50 42 7"},
		{path: "M 32 82 C 32 58 38 52 50 52 C 62 52 68 58 68 82 Z"},
		{path: "M 50 56 L 52.4 65 L 60 61.5 L 55.5 68.5 L 63 73 L 54.5 73 L 56 81 L 50 75.5 L 44 81 L 45.5 73 L 37 73 L 44.5 68.5 L 40 61.5 L 47.6 65 Z", white: true},
	},
	// refer to instruction manual
	"M002": {
		{path: "M 20 30 C 30 26 42 28 49 34 L 49 74 C 42 68 30 66 20 70 Z", white: true},
		{path: "M 80 30 C 70 26 58 28 51 34 L 51 74 C 58 68 70 66 80 70 Z", white: true},
		{path: "M 27 40 L 42 43 M 27 49 L 42 52 M 27 58 L 42 61 M 73 40 L 58 43 M 73 49 L 58 52 M 73 58 L 58 61", weight: 2.5},
	},
	// wear ear protection
	"M003": {
		{path: "O 50 50 19", white: true},
		{path: "M 28 50 C 28 16 72 16 72 50", weight: 5, white: true},
		{path: "M 21 42 L 31 42 L 31 64 L 21 64 Z M 79 42 L 69 42 L 69 64 L 79 64 Z", white: true},
	},
	// wear eye protection
	"M004": {
		{path: "M 28 46 C 28 16 72 16 72 46 L 72 58 C 72 84 28 84 28 58 Z", white: true},
		{path: "M 25 40 L 75 40 L 75 47 L 72 56 L 55 56 L 51 49 L 49 49 L 45 56 L 28 56 L 25 47 Z"},
		{path: "M 31 44 L 45 44 L 43 52 L 33 52 Z M 55 44 L 69 44 L 67 52 L 57 52 Z", white: true},
		{path: "M 43 68 L 57 68", weight: 3},
	},
	// wear safety footwear
	"M008": {
		{path: "M 32 20 L 54 20 L 54 48 C 62 54 76 54 78 64 L 78 70 L 30 70 C 34 52 32 40 32 20 Z", white: true},
		{path: "M 30 74 L 78 74 L 78 80 L 56 80 L 54 77 L 46 77 L 46 82 L 30 82 Z", white: true},
		{path: "M 62 70 C 64 63 70 60 77 61", weight: 2.5},
	},
	// wear protective gloves
	"M009": {
		{path: "M 36 84 L 36 66 L 22 48 C 20 44 26 41 29 45 L 37 54 L 37 22 C 37 18 44 18 44 22 L 44 44 L 46 44 L 46 18 C 46 14 53 14 53 18 L 53 44 L 55 44 L 55 20 C 55 16 62 16 62 20 L 62 46 L 64 46 L 64 28 C 64 24 71 24 71 28 L 71 58 C 71 66 66 68 66 72 L 66 84 Z", white: true},
		{path: "M 34 76 L 68 76", weight: 3},
	},
	// wear a face shield
	"M013": {
		{path: "M 30 44 C 30 14 70 14 70 44 L 70 56 C 70 84 30 84 30 56 Z", white: true},
		{path: "M 26 38 L 74 38", weight: 5},
		{path: "M 31 42 L 69 42 L 69 60 C 69 80 31 80 31 60 Z", weight: 3},
		{path: "M 40 50 L 46 50 M 54 50 L 60 50 M 43 65 L 57 65", weight: 3},
	},
	// wear head protection
	"M014": {
		{path: "M 24 50 C 24 14 76 14 76 50 Z", white: true},
		{path: "M 18 52 L 82 52 L 82 57 L 18 57 Z", white: true},
		{path: "M 31 61 L 69 61 C 68 88 32 88 31 61 Z", white: true},
		{path: "M 46 22 L 46 46 M 54 22 L 54 46", weight: 2.5},
	},
	// wear respiratory protection
	"M017": {
		{path: "M 30 44 C 30 14 70 14 70 44 L 70 56 C 70 84 30 84 30 56 Z", white: true},
		{path: "M 38 40 L 44 40 M 56 40 L 62 40", weight: 3.5},
		{path: "M 30 50 L 38 56 L 38 68 C 38 76 62 76 62 68 L 62 56 L 70 50", weight: 3},
		{path: "M 39 56 C 44 50 56 50 61 56 L 61 68 C 58 75 42 75 39 68 Z"},
		{path: "O 42 70 6.5 O 58 70 6.5", white: true},
		{path: "M 38 68 L 46 68 M 38 72 L 46 72 M 54 68 L 62 68 M 54 72 L 62 72", weight: 2},
	},
	// disconnect before carrying out maintenance or repair
	"M021": {
		{path: "M 12 47 L 24 47 L 24 36 L 40 36 L 40 64 L 24 64 L 24 53 L 12 53 Z", white: true},
		{path: "M 40 43 L 50 43 M 40 57 L 50 57", weight: 5, white: true},
		{path: "M 58 34 L 74 34 L 74 47 L 88 47 L 88 53 L 74 53 L 74 66 L 58 66 Z", white: true},
		{path: "M 58 43 L 65 43 M 58 57 L 65 57", weight: 4},
	},
	// keep locked
	"M028": {
		{path: "M 27 46 L 73 46 L 73 80 L 27 80 Z", white: true},
		{path: "M 36 46 L 36 34 C 36 14 64 14 64 34 L 64 46", weight: 7, white: true},
		{path: "O 50 59 5"},
		{path: "M 50 60 L 50 71", weight: 4},
	},
	// no open flame; fire, open ignition source and smoking prohibited
	"P003": {
		{path: "M 38 80 L 52 52", weight: 5},
		{path: "M 52 20 C 55 32 66 38 62 50 C 60 56 50 57 46 51 C 43 46 46 42 47 36 C 50 38 51 40 51 43 C 54 36 53 28 52 20 Z"},
	},
	// no access for people with active implanted cardiac devices
	"P007": {
		{path: "M 46 78 C 18 56 22 32 36 32 C 42 32 45 36 46 40 C 47 36 50 32 56 32 C 70 32 74 56 46 78 Z"},
		{path: "M 60 24 L 76 24 L 76 38 L 60 38 Z"},
		{path: "M 60 31 C 50 31 52 50 44 56", weight: 3, white: true},
	},
	// do not walk or stand here
	"P024": {
		{path: "O 53 22 5.5"},
		{path: "M 52 31 L 50 52", weight: 8},
		{path: "M 50 52 L 60 64 L 60 76 M 50 52 L 44 66 L 34 74", weight: 5},
		{path: "M 52 34 L 62 44 L 68 42 M 50 34 L 41 42 L 42 50", weight: 4},
		{path: "M 28 80 L 72 80", weight: 3.5},
	},
}
