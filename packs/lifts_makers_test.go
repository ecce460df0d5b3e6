package packs_test

import (
	"regexp"
	"slices"
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

// A load cell, a swivel and a turnbuckle in the line of a hot chain are no chain, and stop the lift;
// a link and a hook of it do not, nor does anything that its maker gives the heat.
func TestWhatHangsInLineIsHotByItsName(t *testing.T) {
	t.Parallel()
	hot := strings.Replace(rotorJob("", "permit", "lock", "jacks", "plate", "out"), "temperatures: 5 to 40 C", "temperatures: 5 to 300 C", 1)
	for _, x := range []struct {
		what, more string
		stopped    bool
	}{
		{"Coupling link 2 t", "", false}, {"End ring 2 t", "", false}, {"Sling hook 2 t", "", false}, {"Aufhängering 2 t", "", false},
		{"Load cell 2 t", "", true}, {"Load link 2 t", "", true}, {"Swivel 2 t", "", true}, {"Swivel hook 2 t", "", true}, {"Turnbuckle 2 t", "", true}, {"Hook and hook turnbuckle", "", true}, {"Spring scale", "", true},
		{"Load cell 2 t", ", temperatures: -10 to 300 C, temperatures-source: tag", false},
	} {
		text := shackleOfHot.ReplaceAllString(hot, "{what: "+x.what+", kind: link"+x.more+", rated: 2 t")
		jb, problems := loadLaw(text)
		if text == hot || len(jb.Lifts) == 0 || jb.Lifts[0].Result == nil {
			t.Fatalf("%s: %v", x.what, problems)
		}
		stopped := slices.ContainsFunc(jb.Lifts[0].Result.Cautions, func(c lift.Caution) bool { return c.Code == lift.TooHotOrCold })
		if stopped != x.stopped {
			t.Errorf("%s: stopped %t", x.what, stopped)
		}
	}
}

var shackleOfHot = regexp.MustCompile(`\{what: [^,}]*, kind: shackle, rated: 2 t`)
