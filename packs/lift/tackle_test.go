package lift

import (
	"errors"
	"testing"

	"pgregory.net/rapid"
)

// threePart is a luff tackle with ample gear.
func threePart(w float64) Tackle {
	return Tackle{Mass: Kg(w), Parts: 3, Sheaves: 3, Dynamic: 1, Rope: 1e6, UpperBlock: 1e6, MovingBlock: 1e6, Anchor: 1e6}
}

func haul(t *testing.T, k Tackle) *TackleResult {
	t.Helper()
	r, err := Haul(k)
	if err != nil {
		t.Fatalf("refused: %v", err)
	}
	return r
}

// The pull is never under that of a tackle without friction, the anchor never under
// the load; more sheaves, weight or movement never lower either.
func TestTacklesAreCountedOnTheSafeSide(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		k := threePart(rapid.Float64Range(10, 20000).Draw(t, "mass"))
		k.Block = Kg(rapid.Float64Range(0, 200).Draw(t, "block"))
		k.Parts = rapid.IntRange(1, 8).Draw(t, "parts")
		k.HauledUp = rapid.Bool().Draw(t, "hauled up")
		k.Sheaves = k.Parts + rapid.IntRange(0, 3).Draw(t, "lead")
		k.Dynamic = Ratio(rapid.Float64Range(1, 2).Draw(t, "dynamic"))
		r, err := Haul(k)
		if err != nil {
			t.Fatal(err)
		}
		w := (k.Mass + k.Block) * Kg(k.Dynamic)
		if float64(r.Pull) < float64(w)/float64(k.Parts)*(1-1e-12) || r.Anchor < w || !k.HauledUp && r.Anchor < w+r.Pull-1e-9 {
			t.Fatalf("pull %g and anchor %g for %g on %d parts", r.Pull, r.Anchor, w, k.Parts)
		}
		for _, c := range r.Components {
			if c.Load < r.Pull && c.Field != "anchor" && c.Field != "upperblock" && c.Load < w {
				t.Fatalf("%s carries only %g", c.Name, c.Load)
			}
		}
		more := k
		more.Sheaves++
		if s, err := Haul(more); err != nil || s.Pull <= r.Pull || s.Anchor < r.Anchor {
			t.Fatalf("one sheave more pulls %v after %g: %v", s, r.Pull, err)
		}
	})
}

func TestTacklesAreRefused(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		field  string
		change func(*Tackle)
	}{
		{"mass", func(k *Tackle) { k.Mass = 0 }},
		{"rope", func(k *Tackle) { k.Rope = 0 }},
		{"movingblock", func(k *Tackle) { k.MovingBlock = 0 }},
		{"upperblock", func(k *Tackle) { k.UpperBlock = 0 }},
		{"anchor", func(k *Tackle) { k.Anchor = 0 }},
		{"parts", func(k *Tackle) { k.Parts = 0 }},
		{"sheaves", func(k *Tackle) { k.Sheaves = 2 }},
		{"dynamic", func(k *Tackle) { k.Dynamic = 0 }},
	} {
		k := threePart(600)
		c.change(&k)
		_, err := Haul(k)
		var rs Refusals
		if !errors.As(err, &rs) || rs[0].Field != c.field || rs[0].Help == "" {
			t.Errorf("got %v, want a refusal at %s", err, c.field)
		}
	}
	k := threePart(600)
	k.Anchor = 700
	r := haul(t, k)
	if len(r.Cautions) != 1 || !r.Cautions[0].Stop || r.Components[r.Weakest].Field != "anchor" {
		t.Errorf("an anchor for 700 kg under 860 kg: %+v", r.Cautions)
	}
}

// A lift under a tackle: the crane holds the load and the pull of the line that is
// hauled down, by hand (W + b)(1 + (1 + f n)/N) with f 10 % a sheave. With the pull left
// out the crane was shown with a third less on it.
func TestALiftUnderATackle(t *testing.T) {
	t.Parallel()
	p := good()
	plain := compute(t, p)
	p.Tackle = &Tackle{Block: 12, Parts: 3, Sheaves: 3, Rope: 1500, UpperBlock: 4000, MovingBlock: 3000}
	r := compute(t, p)
	w := float64(plain.HookLoad-p.Crane.Block) + 12
	near(t, "on the crane", float64(r.HookLoad), w*(1+1.3/3)+float64(p.Crane.Block), 1e-6)
	near(t, "pull", float64(r.Tackle.Pull), w*1.3/3*float64(r.Dynamic), 1e-6)
	near(t, "moving block", float64(component(t, r, "tackle.movingblock").Load), w*float64(r.Dynamic), 1e-6)
	near(t, "upper block", float64(component(t, r, "tackle.upperblock").Load), w*(1+1.3/3)*float64(r.Dynamic), 1e-6)
	if r.CraneShare <= plain.CraneShare {
		t.Errorf("the crane is used %s under a tackle and %s without", r.CraneShare.Percent(), plain.CraneShare.Percent())
	}
	p.Tackle.Rope = 100
	if r := compute(t, p); !cautioned(r, Overloaded) || r.Components[r.Weakest].Field != "tackle.rope" {
		t.Errorf("a rope for 100 kg is not overloaded")
	}
	p.Tackle.Parts = 0
	if no := refusalOf(t, p); no.Field != "tackle.parts" {
		t.Errorf("refused at %s", no.Field)
	}
	q := twoHooks()
	q.Tackle = &Tackle{Parts: 3, Sheaves: 3, Rope: 1500, UpperBlock: 4000, MovingBlock: 3000}
	if no := refusalOf(t, q); no.Field != "tackle" {
		t.Errorf("two hooks: refused at %s", no.Field)
	}
}
