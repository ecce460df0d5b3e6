package job

import "testing"

// A permit for breaking into a line, or one that allows no entry, had the enclosed space for
// its hazard. Common practice, no source.
func TestEntryPermits(t *testing.T) {
	for _, x := range []struct {
		key, what string
		entry     bool
	}{
		{"entry", "Permit of the mill", true},
		{"tank-entry", "Permit 3", true},
		{"confined-space", "Permit 3", true},
		{"e1", "Entry permit", true},
		{"e1", "Entry permit for casing and branches", true},
		{"e1", "Permit for entry", true},
		{"e1", "Permit for confined space entry", true},
		{"e1", "Permit to enter the pit", true},
		{"e1", "Confined space permit", true},
		{"e1", "Confined-space permit", true},
		{"e1", "Vessel entry", true},
		{"e1", "Entry into the sump", true},
		{"e1", "Entry", true},
		{"e1", "Entry permit, no entry without attendant", true},
		{"e1", "Permit to work, no entry before the gas test", true},
		{"line", "Line-entry permit", false},
		{"line-entry", "Permit to open a line", false},
		{"line", "Line entry permit", false},
		{"work", "Permit to work, no entry", false},
		{"work", "Permit to work (no vessel entry)", false},
		{"work", "Permit to work, not for entry", false},
		{"no-entry", "Permit to work", false},
		{"gate", "Permit for entry to the site", false},
		{"lift", "Lifting permit", false},
		{"data", "Permit with data entry by the office", false},
	} {
		if got := (&Job{}).IsEntry(&Permit{Key: x.key, What: x.what}); got != x.entry {
			t.Errorf("%s, %q: entry %v, want %v", x.key, x.what, got, x.entry)
		}
	}
	german := &Job{Language: "de", English: map[string]string{"Befahrerlaubnis": "Entry permit"}}
	if !german.IsEntry(&Permit{Key: "b", What: "Befahrerlaubnis"}) {
		t.Error("the English beside a permit's words is not read")
	}
	for _, x := range []struct {
		says  []string
		entry bool
	}{{[]string{"entry"}, true}, {[]string{"hot work", "entry"}, true}, {[]string{"hot work"}, false}, {[]string{"work"}, false}} {
		if got := german.IsEntry(&Permit{Key: "b", What: "Befahrerlaubnis", For: x.says}); got != x.entry {
			t.Errorf("said to be for %v: entry %v, want %v", x.says, got, x.entry)
		}
	}
}
