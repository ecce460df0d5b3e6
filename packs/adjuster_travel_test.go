package packs_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// The paper said "one turn moves it 2.500 mm" of the sag of a belt, which the screw of the
// motor slide sets. What a turn moves is told by the thread where the reading is to one face
// of what is turned, along its axis; of any other it is what moves: says, else nothing; and
// moves: at a thread that tells it of all its readings is told. That a nut goes forward by its
// pitch a turn: ISO 5408, lead. That a belt does not: common practice, no source.
func TestWhatATurnMovesIsOfTheFaceThatIsTurned(t *testing.T) {
	t.Parallel()
	sizes := []struct {
		says string
		own  bool
	}{
		{"kind: stand-off, from: {screw: head}, to: {base: lug}", true},
		{"kind: gap, from: {base: lug}, to: {screw: tip}", true},
		{"kind: depth, of: {screw: head}", true},
		{"kind: depth, of: {belt: middle of the span}", false},
		{"kind: gap, from: {motor: foot}, to: {base: lug}", false},
		{"kind: length, from: {screw: head}, to: {screw: tip}", false},
		{"kind: length, of: {screw: shank}", false},
		{"kind: diameter, of: {screw: thread}", false},
		{"kind: runout, of: {screw: head}", false},
	}
	seen := map[[2]bool]int{}
	rapid.Check(t, func(t *rapid.T) {
		size := rapid.SampledFrom(sizes).Draw(t, "size")
		moves := rapid.SampledFrom([]string{"", "1 turn gives 0.40 mm", "1 flat gives 0.10 mm"}).Draw(t, "moves")
		part := "screw: {name: Slide screw, thread: M20x2.5, flats: 6"
		if moves != "" {
			part += ", moves: " + moves
		}
		text := lawHead + "parts: {base: {name: Base}, belt: {name: Belt}, motor: {name: Motor}, " + part + "}}\ndimensions:\n" +
			"  D1: {what: Size, " + size.says + ", nominal: 16.00 mm, left: 12.00 to 20.00 mm, adjust: screw, source: s}\n" +
			"steps:\n  - section: Work\n    steps:\n      - {step: a, do: Measure it., measure: [D1]}\n      - {step: b, do: Set it., set: [D1]}\n"
		jb, problems := loadLaw(text)
		turn, flat := "", ""
		switch {
		case size.own:
			turn, flat = "2.500 mm", "0.42 mm" // pitch 2.5, a sixth of it
		case strings.Contains(moves, "turn"):
			turn, flat = "0.40 mm", "0.07 mm"
		case strings.Contains(moves, "flat"):
			flat = "0.10 mm"
		}
		d := jb.Dims[0]
		got := [2]string{}
		if d.PerTurn != nil {
			got[0] = d.PerTurn.Text()
		}
		if d.PerFlat != nil {
			got[1] = d.PerFlat.Text()
		}
		if want := [2]string{turn, flat}; got != want {
			t.Fatalf("a turn and a flat move %q, want %q\n%s", got, want, text)
		}
		var codes []string
		for _, p := range problems {
			codes = append(codes, p.Code)
		}
		if told := slices.Contains(codes, "two-movements"); told != (size.own && moves != "") {
			t.Fatalf("two-movements is told: %v\n%s", codes, text)
		}
		seen[[2]bool{size.own, moves != ""}]++
	})
	if len(seen) != 4 {
		t.Errorf("only so much was drawn: %v", seen)
	}
}

// What moves: says in millimetres is told in inches beside a reading in inches, and the other way
// round: how many turns there are to go is worked out beside it. 25.4 mm are an inch by definition
// (international yard and pound agreement, 1959).
func TestWhatATurnMovesIsToldInTheUnitOfTheReading(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ left, moves, want string }{
		{"0.500 to 0.600 in", "1 turn gives 2.50 mm", "0.0984 in"},
		{"0.500 to 0.600 in", "1 turn gives 0.10 in", "0.10 in"},
		{"12.00 to 14.00 mm", "1 turn gives 0.1 in", "2.540 mm"},
		{"12.00 to 14.00 mm", "1 turn gives 2.5 mm", "2.5 mm"},
	} {
		jb, problems := loadLaw(lawHead + "parts: {base: {name: Base}, screw: {name: Screw, moves: " + c.moves + "}}\ndimensions:\n" +
			"  D1: {what: Sag, of: {base: belt}, left: " + c.left + ", adjust: screw, source: sheet 1}\nsteps:\n  - section: Work\n    steps:\n      - {step: read, do: Measure the sag., measure: [D1]}\n")
		if problems.Errors() > 0 || jb.Dims[0].PerTurn == nil {
			t.Fatalf("%s, %s: %v", c.left, c.moves, problems)
		}
		if got := jb.Dims[0].PerTurn.Text(); got != c.want {
			t.Errorf("%s, %s: one turn moves it %s, want %s", c.left, c.moves, got, c.want)
		}
	}
}
