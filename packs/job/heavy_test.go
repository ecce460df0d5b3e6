package job_test

import (
	"testing"

	"matchmark/packs/job"
	"matchmark/packs/units"
)

// What one person may lift alone, with the bound itself and across units of mass: 50 lb are
// 22.68 kg (1 lb = 0.45359237 kg, International Yard and Pound Agreement of 1959). A mass
// that nobody told is neither light nor heavy.
func TestOneLifts(t *testing.T) {
	t.Parallel()
	mass := func(text string) units.Quantity {
		q, err := units.ParseQuantity(text)
		if err != nil {
			t.Fatal(err)
		}
		return q
	}
	for _, row := range []struct {
		heavy, mass string
		may, known  bool
	}{
		{"25 kg", "25 kg", true, true},
		{"25 kg", "25.1 kg", false, true},
		{"25 kg", "24900 g", true, true},
		{"50 lb", "22.6 kg", true, true},
		{"50 lb", "22.7 kg", false, true},
		{"25 kg", "1 t", false, true},
		{"25 kg", "30 mm", false, false},
	} {
		m := mass(row.mass)
		if may, known := (job.Site{Heavy: mass(row.heavy)}).OneLifts(&m); may != row.may || known != row.known {
			t.Errorf("%s where %s is heavy: may %v, known %v, want %v, %v", row.mass, row.heavy, may, known, row.may, row.known)
		}
	}
	if may, known := (job.Site{Heavy: mass("25 kg")}).OneLifts(nil); may || known {
		t.Errorf("no mass told: may %v, known %v", may, known)
	}
	m := mass("5 kg")
	if may, known := (job.Site{}).OneLifts(&m); may || known {
		t.Errorf("a site that says nothing yet: may %v, known %v", may, known)
	}
}
