package proof

import "testing"

// A function that binds under a name that no law has would never be asked.
func TestBindingsBelongToLaws(t *testing.T) {
	laws := map[string]bool{}
	for _, l := range Laws {
		if laws[l.Name] {
			t.Errorf("two laws are called %s", l.Name)
		}
		laws[l.Name] = true
	}
	for name := range binding {
		if !laws[name] {
			t.Errorf("%s binds steps and is no law", name)
		}
	}
}
