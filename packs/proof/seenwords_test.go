package proof

import "testing"

// What a mechanic sees with the machine shut, what only with his head in it, and what with
// the hands within its reach. Common practice, no source.
func TestWordsOfWhatIsLookedAt(t *testing.T) {
	for _, x := range []struct {
		words           string
		inside, closeTo bool
	}{
		{"nothing left inside", true, true},
		{"nobody inside", true, true},
		{"nobody and nothing left inside", true, true},
		{"nothing left in it", true, true},
		{"nothing left in", true, true},
		{"nothing left in the casing", true, true},
		{"nobody is in the vessel", true, true},
		{"no tools left in the casing", true, true},
		{"no tools or rags left in the casing", true, true},
		{"no rag in the pump", true, true},
		{"no rag left in the suction branch", true, true},
		{"no loose parts in the upper casing", true, true},
		{"casing free of chips", true, true},
		{"Casing clean and free of chips", true, true},
		{"bore free from swarf and dirt", true, true},
		{"casing clean and empty", true, true},
		{"receiver clean inside", true, true},
		{"drum is clean", true, true},
		{"all rags out of the suction branch", true, true},
		{"nobody is working in the machine", true, true},
		{"nobody near or in the machine", true, true},
		{"nothing is left inside the drum", true, true},
		{"nobody inside, report signed", true, true},
		{"guard on and tight", false, true},
		{"flange clean and dry", false, true},
		{"tools away", false, true},
		{"tools out", false, true},
		{"casing clean", false, true},
		{"nobody at the machine", false, false},
		{"nobody near the machine", false, false},
		{"no one is near the pump", false, false},
		{"nobody inside the fence", false, false},
		{"nobody inside the safety barrier", false, false},
		{"All readings inside their limits.", false, false},
		{"Bearing temperature inside 70 °C at the trial run.", false, false},
		{"float inside the tolerance", false, false},
		{"figures inside the given range", false, false},
		{"runout inside its band", false, false},
		{"All stubs are inside the folder.", false, false},
		{"Engineer has read the report: nothing was found inside.", false, true},
		{"nobody stands within the barrier", false, false},
		{"no leak in the suction pipe", false, false},
		{"no pressure left in the line", false, false},
		{"no play left in the coupling", false, false},
		{"no tools left in the walkway", false, false},
		{"no loose bolts in the casing", false, false},
		{"casing free of leaks", false, false},
		{"oil in it to the middle of the glass", false, false},
		{"tank empty by the gauge", false, false},
		{"discharge valve open", false, false},
	} {
		if got := seesInside(x.words); got != x.inside {
			t.Errorf("%q: seen inside %v, want %v", x.words, got, x.inside)
		}
		if got := seesCloseTo(x.words); got != x.closeTo {
			t.Errorf("%q: seen close to the machine %v, want %v", x.words, got, x.closeTo)
		}
	}
}
