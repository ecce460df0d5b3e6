package lift

import (
	"testing"

	"pgregory.net/rapid"
)

// A pair of trunnions under a bar, the other end on a second hook: the advice was to leave the second
// hook out or call the rig two hooks, and then to leave the bar out or call it a beam. Whatever rig it
// is called, it is refused once, for the three points that it hangs from. Common practice,
// no source.
func TestABarAndASecondHookAreRefusedOnce(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		p := good()
		p.Rig = rapid.SampledFrom([]Rig{Spreader, Beam, TwoHooks}).Draw(t, "rig")
		p.Bar = Bar{Name: "bar", Rated: 9000, Length: 2000}
		turned := rapid.Bool().Draw(t, "turned")
		if turned {
			p.Turn = &Turn{Upper: 0}
		}
		if second := p.Rig == TwoHooks || rapid.Bool().Draw(t, "second hook"); second {
			p.SecondCrane = Crane{Name: "tail", Rated: 9000}
		} else if !turned {
			t.Skip("an ordinary lift under a bar")
		}
		for range rapid.IntRange(0, 1).Draw(t, "tail leg") {
			p.Picks, p.Legs = append(p.Picks, Pick{Name: "tail", At: Point{X: 9000}}), append(p.Legs, p.Legs[0])
		}
		want := map[bool]string{true: "turn", false: map[bool]string{true: "bar", false: "secondcrane"}[p.Rig == TwoHooks]}[turned]
		_, err := Compute(p)
		rs, _ := err.(Refusals)
		n := 0
		for _, no := range rs {
			switch no.Field {
			case want:
				n++
			case "picks", "legs", "rig", "toplegs", "secondcrane", "bar", "turn":
				t.Errorf("%+v besides", no)
			}
		}
		if n != 1 {
			t.Fatalf("refused %d times at %s: %v", n, want, err)
		}
	})
}
