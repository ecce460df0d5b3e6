package lift

import (
	"fmt"
	"reflect"
	"slices"
	"sort"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// full is a bridle with every input that it can have.
func full() Plan {
	p := good()
	p.DecidedBy, p.Reason = "", ""
	p.Load.CoGTolerance = Point{X: 40, Y: 5, Z: 5}
	p.Load.MayPress = 5000
	p.Load.Span = &Span{NameA: "A", NameB: "B", A: Point{X: -900}, B: Point{X: 900}}
	p.Load.Outline = []Point{{X: -900, Y: -300, Z: -700}, {X: 900, Y: 300, Z: 100}}
	p.LengthError, p.MaxTilt = 5, 2
	p.Temperatures = &Temperatures{Low: 5, High: 40}
	for i := range p.Legs {
		p.Legs[i].Sling.Rope = 20
	}
	p.Picks[0].Point = &LiftingPoint{What: "lug", Rated: 3000, LeastAngle: 45, Source: "drawing 7"}
	p.Legs[0].Gear = append(p.Legs[0].Gear, Hardware{Name: "hook", Kind: Hook, Rated: 4000, Seat: Saddle, Mass: 2})
	p.Legs[1].Gear = append(p.Legs[1].Gear, Hardware{Name: "eye", Kind: ShoulderEyebolt, Rated: 9000, Axis: Point{Z: 1}, Thread: 30, Mass: 1, Ladder: []Rung{{5, 1}, {45, 0.5}}, LadderSource: "maker's sheet"})
	return p
}

// fullBar is a load under a spreader or a beam, with every input.
func fullBar(rig Rig) Plan {
	p := full()
	p.Rig, p.HookHeight = rig, 0
	p.Bar = Bar{Name: "bar", Length: 1600, Mass: 60, Rated: 5000, Ends: [2]Kg{2500, 2500}, MayBend: 40000}
	for i := range p.Legs {
		p.Legs[i].Length = 1500
		p.Legs[i].Sling.Hitch, p.Legs[i].Sling.Parallel, p.Legs[i].Sling.Around = Basket, true, 600
	}
	p.Picks[0].Point = nil
	p.Bar.Rise = 200
	if rig == Spreader {
		p.Bar.Rise, p.Bar.LeastAngle, p.Bar.TopLugs, p.Bar.MayPress, p.Bar.LugRise = 0, 45, 3000, 2500, 20
		p.Aim = 60
		p.TopLegs = []Leg{straight("top A", 0), straight("top B", 0)}
	}
	return p
}

// twoHooks is the same on two hooks.
func twoHooks() Plan {
	p := full()
	p.Rig, p.HookHeight, p.TopGear, p.Headroom.Stack, p.Headroom.SecondHighHook = TwoHooks, 0, nil, 200, 6000
	p.SecondCrane = Crane{Name: "south", Rated: 4000, Block: 20}
	for i := range p.Legs {
		p.Legs[i].Length = 1500
	}
	p.Picks[0].Point = nil
	p.Legs[0].Sling.Hitch, p.Legs[0].Sling.ChokeAngle = Choker, 130
	return p
}

// omissions gives for each input of a plan, by its path, a change that leaves it out.
func omissions(p Plan) map[string]func(*Plan) {
	out := map[string]func(*Plan){}
	var walk func(path string, v reflect.Value, at func(reflect.Value) reflect.Value)
	walk = func(path string, v reflect.Value, at func(reflect.Value) reflect.Value) {
		leave := func() {
			if !v.IsZero() {
				out[path] = func(q *Plan) { x := at(reflect.ValueOf(q).Elem()); x.Set(reflect.Zero(x.Type())) }
			}
		}
		switch v.Kind() {
		case reflect.Struct:
			for i := range v.NumField() {
				name := strings.ToLower(v.Type().Field(i).Name)
				walk(strings.TrimPrefix(path+"."+name, "."), v.Field(i), func(r reflect.Value) reflect.Value { return at(r).Field(i) })
			}
		case reflect.Slice, reflect.Array:
			if v.Kind() == reflect.Slice {
				leave()
			}
			for i := range v.Len() {
				walk(fmt.Sprintf("%s[%d]", path, i), v.Index(i), func(r reflect.Value) reflect.Value { return at(r).Index(i) })
			}
		case reflect.Pointer:
			leave()
			if !v.IsNil() {
				walk(path, v.Elem(), func(r reflect.Value) reflect.Value { return at(r).Elem() })
			}
		default:
			leave()
		}
	}
	walk("", reflect.ValueOf(p), func(r reflect.Value) reflect.Value { return r })
	return out
}

// mayBeLeft are the inputs without which a lift is still computed, by the end of
// their path: names, what weighs nothing when it is not given and is told as such,
// published figures, and what is told as not looked at.
var mayBeLeft = []string{
	"name", "namea", "nameb", ".what", // names
	"sling.mass", "].mass", "bar.mass", ".block", "masstolerance", // told: the slings and gear are counted as weighing nothing; the mass was weighed
	"dynamic", "maxtilt", "lengtherror", // published or usual figures, told in the working
	"headroom", "maypress", "span", "outline", "temperatures", ".low", ".high", // told as not looked at
	".passover", ".underside", ".stack", // heights that may be nothing
	".rope", ".thread", ".ladder", ".ladder[0].upto", ".polyester", // narrow a figure when known
	"cog.x", "cog.y", "cog.z", "at.x", "at.y", "at.z", ".a.x", ".a.y", ".a.z", ".b.x", ".b.y", ".b.z", // a place may be at nothing
	"].x", "].y", "].z",
	".ends[0]", ".ends[1]", "bar.leastangle", ".toplugs", ".maypress", ".lugrise", ".maybend", ".rise", // half the rating, or asked for by another
	".parallel",       // then worked out from the diameter
	"gear", "topgear", // a sling may take hold by itself
}

// Whatever is left out, the answer is a reason with its field and what to write, or a
// figure; never a panic, and nothing that decides is passed over in silence.
func TestAnyInputLeftOutIsToldOrMayBeLeft(t *testing.T) {
	t.Parallel()
	for name, make := range map[string]func() Plan{
		"bridle": full, "spreader": func() Plan { return fullBar(Spreader) }, "beam": func() Plan { return fullBar(Beam) }, "two hooks": twoHooks,
	} {
		r, err := Compute(make())
		if err != nil || len(r.Unanswered) > 0 {
			t.Fatalf("%s: %v %+v", name, err, r)
		}
		all := omissions(make())
		if len(all) < 60 {
			t.Errorf("%s: only %d inputs", name, len(all))
		}
		var paths []string
		for path := range all {
			paths = append(paths, path)
		}
		sort.Strings(paths)
		for _, path := range paths {
			p := make()
			all[path](&p)
			r, err := Compute(p)
			told := err != nil || len(r.Unanswered) > 0
			if err != nil {
				for _, no := range err.(Refusals) {
					if no.Field == "" || no.Message == "" || no.Help == "" {
						t.Errorf("%s without %s: %+v", name, path, no)
					}
				}
			}
			if !told && !slices.ContainsFunc(mayBeLeft, func(end string) bool { return strings.HasSuffix(path, end) }) {
				t.Errorf("%s: %s is left out, and the lift is computed as if nothing were missing", name, path)
			}
		}
	}
}

// Several inputs left out at once, of any rig, are answered or refused as well.
func TestManyInputsLeftOut(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.SampledFrom([]func() Plan{full, func() Plan { return fullBar(Spreader) }, func() Plan { return fullBar(Beam) }, twoHooks}).Draw(t, "rig")()
		for range rapid.IntRange(1, 5).Draw(t, "how many") {
			all := omissions(p)
			var paths []string
			for path := range all {
				paths = append(paths, path)
			}
			sort.Strings(paths)
			all[rapid.SampledFrom(paths).Draw(t, "left out")](&p)
		}
		if _, err := Compute(p); err != nil && err.Error() == "" {
			t.Fatal("refused without a word")
		}
	})
}

// The same for lifts by hand, floors, tackles and bodies made of sections.
func TestOtherInputsLeftOut(t *testing.T) {
	t.Parallel()
	told := func(what, path string, err error, mayBe ...string) {
		if err == nil && !slices.ContainsFunc(mayBe, func(end string) bool { return strings.HasSuffix(path, end) }) {
			t.Errorf("%s without %s: not told", what, path)
		}
	}
	each := func(v reflect.Value, try func(path string)) {
		for i := range v.NumField() {
			old := reflect.New(v.Field(i).Type()).Elem()
			old.Set(v.Field(i))
			v.Field(i).Set(reflect.Zero(old.Type()))
			try(strings.ToLower(v.Type().Field(i).Name))
			v.Field(i).Set(old)
		}
	}
	h := handled(30, 20, Point{}, Point{X: -300}, Point{X: 300})
	each(reflect.ValueOf(&h).Elem(), func(path string) { _, err := Carry(h); told("a lift by hand", path, err, "decidedby", "reason") })
	each(reflect.ValueOf(&h.Load).Elem(), func(path string) {
		_, err := Carry(h)
		told("a load by hand", path, err, "masstolerance", "span", "outline", "maypress")
	})
	f := Floor{Rated: 20, Pieces: 4, Length: 1200, Width: 150, Most: 0.5}
	each(reflect.ValueOf(&f).Elem(), func(path string) { _, err := LayDown(1000, 1.1, f); told("a floor", path, err) })
	k := threePart(600)
	each(reflect.ValueOf(&k).Elem(), func(path string) { _, err := Haul(k); told("a tackle", path, err, "block", "hauledup") })
	s := Section{Name: "s", Shape: Hollow, Length: 100, Outer: 200, Bore: 50, Density: 7850}
	each(reflect.ValueOf(&s).Elem(), func(path string) {
		_, err := Weigh([]Section{s})
		told("a section", path, err, "name", "at", "outerfar", "count", "each", "tolerance", "cut")
	})
}
