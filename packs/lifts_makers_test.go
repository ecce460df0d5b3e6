package packs_test

import (
	"strings"
	"testing"

	"matchmark/packs/lift"
)

// Gear at 300 °C is stopped with a shackle of the usual kind; where its maker gives it that heat, the
// lift is worked out by the whole rating, and the paper names the maker's sheet.
func TestGearHoldsAsItsMakerSays(t *testing.T) {
	t.Parallel()
	hot := strings.Replace(rotorJob("", "permit", "lock", "jacks", "plate", "out"), "temperatures: 5 to 40 C", "temperatures: 5 to 300 C", 1)
	const chain, shackle = "kind: chain, rated: 2 t", "kind: shackle, rated: 2 t"
	by := func(band string) string {
		return strings.NewReplacer(chain, chain+band, shackle, shackle+band).Replace(hot)
	}
	for text, stopped := range map[string]bool{hot: true, by(", temperatures: -10 to 572 F, temperatures-source: tag"): false, by(", temperatures: -10 to 299 C, temperatures-source: tag"): true} {
		jb, problems := loadLaw(text)
		l := jb.Lifts[0]
		if l.Result == nil {
			t.Fatalf("%v", problems)
		}
		told := false
		for _, c := range l.Result.Cautions {
			told = told || c.Code == lift.TooHotOrCold
		}
		if told != stopped || strings.Contains(l.Result.Heat.HighPiece, "(tag)") == (text == hot) {
			t.Errorf("stopped %t, want %t: %+v", told, stopped, l.Result.Heat)
		}
	}
	for band, code := range map[string]string{
		", temperatures: -10 to 300 C": "not-computed", ", temperatures: 300 to -10 C, temperatures-source: tag": "range-order",
		", temperatures-source: tag": "not-used", ", temperatures: 1 to 3 mm, temperatures-source: tag": "wrong-quantity",
	} {
		if !strings.Contains(strings.Join(codesTold(by(band)), " "), code) {
			t.Errorf("%s: told %v", band, codesTold(by(band)))
		}
	}
}
