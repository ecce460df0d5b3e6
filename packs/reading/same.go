package reading

import "matchmark/packs/units"

// Same reports whether two limits allow the same, however they are written: 0.30 mm +/- 0.05 mm
// is 0.25 to 0.35 mm. Tests that hang on other readings are the same where they read the same,
// and so are lines that are no limits of numbers.
func Same(a, b *Limit) bool {
	if a == nil || b == nil {
		return a == b
	}
	if a.Kind != Measured || b.Kind != Measured || len(a.Tests) != len(b.Tests) {
		return a.Text() == b.Text()
	}
	for i := range a.Tests {
		if !sameTest(&a.Tests[i], &b.Tests[i]) {
			return false
		}
	}
	return true
}

func sameTest(a, b *Test) bool {
	lowA, highA, okA := a.Limits()
	lowB, highB, okB := b.Limits()
	if !okA || !okB {
		return okA == okB && a.Group == b.Group && a.ruleText() == b.ruleText()
	}
	return a.Group == b.Group && (a.Rule == Exactly) == (b.Rule == Exactly) && sameEnd(lowA, lowB) && sameEnd(highA, highB)
}

func sameEnd(a, b *units.Quantity) bool {
	if a == nil || b == nil {
		return a == b
	}
	c, err := a.Cmp(*b)
	return err == nil && c == 0
}
