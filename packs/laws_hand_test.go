package packs_test

import (
	"fmt"
	"slices"
	"testing"
	"testing/fstest"

	"pgregory.net/rapid"

	"matchmark/packs"
	"matchmark/packs/lift"
	"matchmark/packs/source"
)

// A team may lift less by hand than the sum of what each may: two people two thirds of it,
// three the half (UK Health and Safety Executive, L23, Manual handling, para. 120). check
// took n times what one may, while the sheet of a lift by hand counted the share.
func TestATeamMayLiftWhatTheSheetSays(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		mass := rapid.IntRange(1, 60).Draw(t, "mass")
		people := rapid.IntRange(0, 6).Draw(t, "people")
		verb := rapid.SampledFrom([]string{"comes off", "goes back"}).Draw(t, "verb")
		write := ""
		if people > 0 {
			write = fmt.Sprintf(", people: %d", people)
		}
		off, on := write, ", people: 3, on-hook: shop crane"
		if verb == "goes back" {
			off, on = on, off
		}
		text := lawHead + fmt.Sprintf("parts: {lid: {name: Lid, mass: %d kg}}\nbig: {B1: {part: lid, keep: dry, support: floor}}\nlay-down: {Y1: {what: Pallet}}\nsteps:\n", mass) +
			"  - {step: off, do: Take the lid off., remove: [lid], into: Y1" + off + "}\n" +
			"  - {step: on, do: Put the lid on., fit: [lid]" + on + "}\n"
		_, codes := codesOf(text)
		may := []float64{25, 25, 100. / 3, 37.5, 37.5, 37.5, 37.5}[people]
		if told := slices.Contains(codes, "too-heavy"); told != (float64(mass) > may) {
			t.Fatalf("%d kg with %d people: told %v, and they may lift %.1f kg\n%s", mass, people, told, may, text)
		}
		if people < 2 || people > lift.MostHands {
			return
		}
		// The sheet of a lift by hand, each with the same share, warns from the same mass on.
		p := lift.HandPlan{Load: lift.Load{Mass: lift.Kg(mass), Source: lift.Weighed, CoG: &lift.Point{}}, MayCarry: 25, DecidedBy: "A. Name", Reason: "its middle is known"}
		for _, at := range []lift.Point{{X: -300, Y: -100}, {X: 300, Y: -100}, {X: 0, Y: 200}}[:people] {
			if people == 2 {
				at.Y = 0
			}
			p.Grips = append(p.Grips, lift.Pick{Name: "grip", At: at})
		}
		r, err := lift.Carry(p)
		over := err != nil
		if err == nil {
			over = slices.ContainsFunc(r.Cautions, func(c lift.Caution) bool { return c.Code == lift.OverTeam })
		}
		if over != (float64(mass) > may) {
			t.Fatalf("the sheet says over: %v (%v) of %d kg for %d people, and they may lift %.1f kg", over, err, mass, people, may)
		}
	})
}

// What a team may is the same whatever unit the site writes its bound in: two people of whom
// each may 25 kg lift 33.3 kg (L23, para. 120), and a tonne was rounded down to none.
func TestATeamMayTheSameInEveryUnit(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		heavy, mass string
		people      int
		told        bool
	}{
		{"25 kg", "33.3 kg", 2, false},
		{"25 kg", "33.4 kg", 2, true},
		{"0.025 t", "33.3 kg", 2, false},
		{"0.025 t", "33.4 kg", 2, true},
		{"0.025 t", "37.5 kg", 3, false},
		{"25000 g", "33.3 kg", 2, false},
		{"25000 g", "33.4 kg", 2, true},
		{"51 lb", "68.0 lb", 2, false},
		{"51 lb", "68.1 lb", 2, true},
	} {
		text := lawHead + fmt.Sprintf("parts: {lid: {name: Lid, mass: %s}}\nbig: {B1: {part: lid, keep: dry, support: floor}}\nlay-down: {Y1: {what: Pallet}}\nsteps:\n", x.mass) +
			fmt.Sprintf("  - {step: off, do: Take the lid off., remove: [lid], into: Y1, people: %d}\n", x.people) +
			"  - {step: on, do: Put the lid on., fit: [lid], on-hook: shop crane}\n"
		files := fstest.MapFS{"law.yaml": {Data: []byte(text)}, "law.site.yaml": {Data: []byte("company: Site\nheavy: " + x.heavy + "\n")}}
		_, problems := packs.Load(files, packs.Inputs{Definition: "law.yaml", Site: "law.site.yaml"})
		if told := slices.ContainsFunc(problems, func(p source.Problem) bool { return p.Code == "too-heavy" }); told != x.told {
			t.Errorf("heavy: %s, %s with %d people: told %v\n%s", x.heavy, x.mass, x.people, told, text)
		}
	}
}
